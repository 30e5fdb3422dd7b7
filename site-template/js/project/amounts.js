// The amounts, words and names of a plan file.

import * as units from '../page/units.js';

const SIZES = {
  mm: 1e-3,
  m: 1,
  in: units.per.inch,
  min: 60,
  h: 3600,
  d: 86400,
  '°C': 1,
  '%': 1,
  N: 1,
  lbf: units.per.poundForce,
  µm: 1,
  mil: 25.4,
  m3: 1
};

// A size is worked out in one way everywhere, so that the same file always asks the same of the engine.
export function si(text) {
  const m = /^(-?[0-9]+(?:\.[0-9]+)?) (\S+)$/.exec(String(text));
  if (!m || SIZES[m[2]] === undefined) {
    throw new Error('“' + String(text).slice(0, 30) + '” is not an amount such as 18 mm');
  }
  return Number(m[1]) * SIZES[m[2]];
}

// The number of an amount in another unit of its kind, without the dust of binary fractions.
export function inUnit(text, unit) {
  const m = /^(-?[0-9]+(?:\.[0-9]+)?) (\S+)$/.exec(String(text));
  return m && m[2] === unit ? Number(m[1]) : Number((si(text) / SIZES[unit]).toPrecision(9));
}

export function constant(word) {
  return word.toUpperCase().replace(/-/g, '_');
}

export function slug(title) {
  const s = title
    .toLowerCase()
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  return /^[a-z]/.test(s) ? s.slice(0, 60) : 'plan-' + (s || 'of-mine').slice(0, 50);
}
