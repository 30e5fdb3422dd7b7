// What is wrong with the value of a field, in words; empty if nothing is. A value from elsewhere may be of any sort.

import { isDay } from './dates.js';
import * as measure from './measure.js';

const SPAN = /^([01]\d|2[0-3]):[0-5]\d\s*[-–]\s*(([01]\d|2[0-3]):[0-5]\d|24:00)$/;
const MOMENT = /^\d{4}-\d\d-\d\dT\d\d:\d\d$/;
const DAY = /^\d{4}-\d\d-\d\d$/;
const MOST_LETTERS = 200;

function order(span) {
  const ends = span.trim().split(/\s*[-–]\s*/);
  return ends[0] < ends[1];
}

function every(list, fits) {
  return list.split(',').every(item => item.trim() === '' || fits(item.trim()));
}

function measureWrong(e, value) {
  const unit = e.dataset.unit;
  const low = Number(e.dataset.low);
  const high = Number(e.dataset.high);
  if (!isFinite(value)) {
    return 'is not a number with a unit we know';
  }
  if (e.dataset.whole !== undefined && value !== Math.floor(value)) {
    return 'has to be a whole number';
  }
  const range = measure.shown(low, unit) + ' to ' + measure.shown(high, unit) + ' ' + measure.label(unit);
  return value >= low && value <= high ? '' : 'has to be ' + range;
}

function momentWrong(value) {
  const sound = MOMENT.test(value) && isDay(value.slice(0, 10)) && !isNaN(Date.parse(value));
  return sound ? '' : 'is not a date and time';
}

function spansWrong(value) {
  const sound = every(value, span => SPAN.test(span) && order(span));
  return sound ? '' : 'has to be hours such as 18:30-21:30, more with commas between';
}

function daysWrong(value) {
  const sound = every(value, day => DAY.test(day) && isDay(day));
  return sound ? '' : 'has to be days such as 2027-04-02, more with commas between';
}

function textWrong(e, value) {
  if (e.pattern && value !== '' && !new RegExp('^(?:' + e.pattern + ')$').test(value)) {
    return 'may hold letters, digits, spaces and , . - \u2019 only';
  }
  return value.length <= (e.maxLength > 0 ? e.maxLength : MOST_LETTERS) ? '' : 'is too long';
}

function wordsWrong(e, value, more) {
  if (e.type === 'datetime-local') {
    return momentWrong(value);
  }
  if (e.dataset.spans !== undefined) {
    return spansWrong(value);
  }
  if (e.dataset.days !== undefined) {
    return daysWrong(value);
  }
  return e.dataset.check === undefined ? textWrong(e, value) : more[e.dataset.check](value);
}

// more: checks of the page's own, by the name that stands in a field's data-check.
export function wrong(e, value, more) {
  const sort = e.dataset.unit === undefined ? 'string' : 'number';
  if (e.type === 'checkbox') {
    return typeof value === 'boolean' ? '' : 'is yes or no';
  }
  if (typeof value !== sort) {
    return sort === 'string' ? 'has to be text' : 'has to be a number';
  }
  if (e.tagName === 'SELECT') {
    return Array.from(e.options).some(o => o.value === value) ? '' : 'is none of the choices';
  }
  return sort === 'number' ? measureWrong(e, value) : wordsWrong(e, value, more);
}
