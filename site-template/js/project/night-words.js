// Nights that were otherwise: in the form and its address a word, "2027-02-28_4_21" for the night that begins
// on that day, its coldest and its warmest; then the humidity, if it is known, or nothing; then "off" if the heater
// stood still. Nights are joined by "~", in order.

import { isDay } from '../planner/dates.js';
import * as measure from '../planner/measure.js';

const NIGHTS = 60;

const NIGHT = /^(\d{4}-\d\d-\d\d)_(-?\d+(?:\.\d+)?)_(-?\d+(?:\.\d+)?)(?:_(\d+(?:\.\d+)?)?)?(_off)?$/;

// What is wrong with a night, in words; empty if nothing is.
function nightWrong(n) {
  if (!isDay(n.date)) {
    return '“' + n.date + '” is no day';
  }
  const bad = [n.low, n.high].find(c => !(c >= -30 && c <= 60));
  if (bad !== undefined) {
    return 'the night of ' + n.date + ' can\u2019t have been at ' + bad + ' °C: -30 to 60 °C';
  }
  if (n.low > n.high) {
    return 'in the night of ' + n.date + ' the coldest, ' + n.low + ' °C, is above the warmest';
  }
  return n.humidity === undefined || (n.humidity >= 1 && n.humidity <= 100)
    ? ''
    : 'in the night of ' + n.date + ' the humidity has to be 1 to 100 %';
}

// The nights as an address has them; throws what is wrong.
export function read(text) {
  return sound(
    String(text)
      .split('~')
      .filter(Boolean)
      .map(word => {
        const m = NIGHT.exec(word);
        if (!m) {
          throw new Error('“' + word.slice(0, 30) + '” is no night such as 2027-02-28_4_21');
        }
        const n = { date: m[1], low: Number(m[2]), high: Number(m[3]) };
        if (m[4] !== undefined) {
          n.humidity = Number(m[4]);
        }
        if (m[5]) {
          n.heated = false;
        }
        return n;
      })
  );
}

// Nights in order, if each is sound and stands there once; throws what is wrong.
function sound(nights) {
  if (nights.length > NIGHTS) {
    throw new Error('more than ' + NIGHTS + ' nights');
  }
  const list = nights.slice().sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  list.forEach((n, i) => {
    const wrong =
      nightWrong(n) || (i > 0 && list[i - 1].date === n.date ? 'the night of ' + n.date + ' stands there twice' : '');
    if (wrong) {
      throw new Error(wrong);
    }
  });
  return list;
}

export function written(nights) {
  return sound(nights)
    .map(n => {
      const humidity = n.humidity === undefined ? '' : n.humidity;
      return (
        [n.date, n.low, n.high].join('_') +
        (n.heated === false ? '_' + humidity + '_off' : humidity === '' ? '' : '_' + humidity)
      );
    })
    .join('~');
}

export function inFile(n) {
  const night = { date: n.date, low: n.low + ' °C', high: n.high + ' °C' };
  if (n.humidity !== undefined) {
    night.humidity = n.humidity + ' %';
  }
  if (n.heated === false) {
    night.heated = false;
  }
  return night;
}

export function fromFile(n) {
  const night = { date: n.date.trim(), low: measure.inUnit(n.low, '°C'), high: measure.inUnit(n.high, '°C') };
  if (n.humidity !== undefined) {
    night.humidity = measure.inUnit(n.humidity, '%');
  }
  if (n.heated === false) {
    night.heated = false;
  }
  return night;
}
