// Days and moments in the reader's own way, and the device's clock as the engine has it.

import { el } from '../page/dom.js';

// Local wall-clock times, written the reader's way: the language of the browser decides on 12 or 24 hours.
export function date(iso) {
  return new Date(iso.length > 10 ? iso : iso + 'T00:00');
}
export function two(n) {
  return String(n).padStart(2, '0');
}
// A moment of this device's clock as the engine has it: local, no zone, to the minute.
export function minute(d) {
  return (
    d.getFullYear() +
    '-' +
    two(d.getMonth() + 1) +
    '-' +
    two(d.getDate()) +
    'T' +
    two(d.getHours()) +
    ':' +
    two(d.getMinutes())
  );
}
const DAY = new Intl.DateTimeFormat(undefined, { weekday: 'short', day: 'numeric', month: 'short' });
const DAY_AND_YEAR = new Intl.DateTimeFormat(undefined, {
  weekday: 'short',
  day: 'numeric',
  month: 'short',
  year: 'numeric'
});
const CLOCK = new Intl.DateTimeFormat(undefined, { hour: 'numeric', minute: '2-digit' });
export function shortDay(iso) {
  return DAY.format(date(iso));
}
// The year is said where it is not this one.
export function day(iso) {
  return date(iso).getFullYear() === new Date().getFullYear() ? shortDay(iso) : DAY_AND_YEAR.format(date(iso));
}
export function clock(iso) {
  return CLOCK.format(date(iso));
}
export function moment(iso) {
  return el('time', { datetime: iso, class: 'q' }, day(iso) + ', ' + clock(iso));
}

// A browser reads 30 February as 2 March; a calendar has no such day.
export function isDay(text) {
  const at = Date.parse(text + 'T00:00Z');
  return !isNaN(at) && new Date(at).toISOString().slice(0, 10) === text;
}
