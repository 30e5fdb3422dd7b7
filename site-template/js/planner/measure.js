// Amounts as someone types them, in a field's own metric unit (mm, h, °C ...) and in what stands in its
// place by inches.

import * as units from '../page/units.js';

// A metric field unit: SI per unit, the engine's unit, and what stands in its place by inches.
const PER = units.per;
const INCH = { label: 'in', per: PER.inch };
const UNITS = {
  mm: { per: 1e-3, si: 'metre', other: INCH },
  m: { per: 1, si: 'metre', other: { label: 'ft', per: PER.foot } },
  'm²': { per: 1, si: 'square-metre', other: { label: 'ft²', per: PER.foot * PER.foot } },
  'm³': { per: 1, si: 'cubic-metre', other: { label: 'ft³', per: Math.pow(PER.foot, 3) } },
  'm³/h': { per: 1 / 3600, si: 'cubic-metre-per-second', other: { label: 'cfm', per: Math.pow(PER.foot, 3) / 60 } },
  'mm/min': { per: 1e-3 / 60, si: 'metre-per-second', other: { label: 'in/min', per: PER.inch / 60 } },
  L: { per: 1e-3, si: 'cubic-metre-liquid', other: { label: 'US qt', per: PER.quart } },
  kg: { per: 1, si: 'kilogram', other: { label: 'lb', per: PER.pound } },
  N: { per: 1, si: 'newton', other: { label: 'lbf', per: PER.poundForce } },
  µm: { per: 1, si: 'micron', other: { label: 'mil', per: 25.4 } },
  '°C': { per: 1, si: 'celsius', other: { label: '°F', per: 5 / 9, shift: 32 } },
  '%': { per: 1, si: 'percent' },
  '°': { per: 1, si: 'degree' },
  min: { per: 60, si: 'second' },
  h: { per: 3600, si: 'second' },
  rpm: { per: 1, si: 'rpm' },
  'per hour': { per: 1, si: 'per-hour' },
  '': { per: 1, si: 'count' }
};

// "3/4", "1 1/2", "1-1/2", "18", "18,5" and "18.5" as a number; NaN for anything else.
export function amount(text) {
  const m = /^([-+\u2212]?)(?:(\d+)[ -]+)?(\d+)\/(\d+)$/.exec(text);
  if (m) {
    const value = Number(m[2] || 0) + Number(m[3]) / Number(m[4]);
    return m[1] && m[1] !== '+' ? -value : value;
  }
  return /^[-+\u2212]?(\d+([.,]\d*)?|[.,]\d+)$/.test(text)
    ? Number(text.replace('\u2212', '-').replace(',', '.'))
    : NaN;
}

// What was typed, in the field's metric unit; a unit typed behind the number wins over the switch.
export function parse(typed, unit) {
  const text = String(typed).trim().replace(/\s+/g, ' ');
  const u = UNITS[unit];
  const m = /^([-+\u2212\d.,\/ ]*\d[.,]?)\s*([^\d\s].*)?$/.exec(text);
  if (!m) {
    return NaN;
  }
  const label = (m[2] || '')
    .trim()
    .replace(/^"$|^inch(es)?$|^''$/, 'in')
    .replace(/^'$|^feet$|^foot$/, 'ft')
    .replace(/^C$/, '°C')
    .replace(/^F$/, '°F')
    .replace(/^um$/, 'µm')
    .replace(/^hours?$/, 'h');
  const size = amount(m[1].trim());
  // An inch is no whole number of binary fractions of a millimetre: without the dust.
  return Number(inUnit(size, label, u).toPrecision(12));
}

function inUnit(size, label, u) {
  if (label === '') {
    return units.system() === 'imperial' ? fromOther(size, u) : size;
  }
  if (u.other && label === u.other.label) {
    return fromOther(size, u);
  }
  if (label === 'in' && u.si === 'metre') {
    return (size * INCH.per) / u.per;
  }
  const own = UNITS[label];
  return own && own.si === u.si ? (size * own.per) / u.per : NaN;
}

function fromOther(size, u) {
  return u.other ? ((size - (u.other.shift || 0)) * u.other.per) / u.per : size;
}

// A value of the field as the reader's rule, thermometer or tape would read it, without the unit.
export function shown(value, unit) {
  const u = UNITS[unit];
  if (units.system() === 'metric' || !u.other) {
    return trimmed(value);
  }
  if (u.other === INCH) {
    return units.text(value * u.per, value * u.per, 'metre').replace(/\u00a0?(in|ft)$/, '');
  }
  return trimmed((value * u.per) / u.other.per + (u.other.shift || 0));
}

function trimmed(value) {
  return String(Number(value.toPrecision(4)));
}

export function label(unit) {
  const u = UNITS[unit];
  return units.system() === 'imperial' && u.other ? u.other.label : unit;
}

// SI per unit of a field.
export function perUnit(unit) {
  return UNITS[unit].per;
}
