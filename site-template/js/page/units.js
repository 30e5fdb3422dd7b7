// Figures in the reader's units. Every figure in a page carries its SI value (data-q, data-h for the
// end of a range, data-u for the unit); this shows it metric, as the page was written, or in inches,
// pounds and degrees Fahrenheit. One switch for every page, remembered in this browser.

const KEY = 'benchlore.units';
const GAP = '\u00a0';
const listeners = [];
let chosen = remembered();

// Inch fractions stop where a steel rule stops; smaller lengths are thousandths.
const FINEST = 64;
const INCH = 0.0254;
const FOOT = 12 * INCH;
const POUND = 0.45359237;
const OUNCE = POUND / 16;
const POUND_FORCE = 4.4482216152605;
const PSI = 6894.757293168361;
const FLUID_OUNCE = 29.5735295625e-6;
const QUART = 32 * FLUID_OUNCE;
const GALLON = 4 * QUART;

function remembered() {
  try {
    return window.localStorage.getItem(KEY) === 'imperial' ? 'imperial' : 'metric';
  } catch (e) {
    return 'metric'; // storage switched off: the page still works, it only forgets
  }
}

function unitName(unit) {
  return String(unit).toLowerCase().replace(/_/g, '-');
}

// The digits of the shortest decimal that reads back as the number: {digits, point}.
function decimal(size) {
  const text = size.toExponential();
  const e = text.indexOf('e');
  return { digits: text.slice(0, e).replace('.', ''), point: Number(text.slice(e + 1)) + 1 };
}

// Half up at a decimal place, on the decimal digits themselves.
function rounded(size, places) {
  const d = decimal(size);
  const keep = d.point + places;
  if (keep < 0) {
    return '0';
  }
  let digits = d.digits;
  let point = d.point;
  if (digits.length > keep) {
    const up = digits.charAt(keep) >= '5';
    digits = digits.slice(0, keep);
    if (up) {
      let i = digits.length - 1;
      while (i >= 0 && digits.charAt(i) === '9') {
        i--;
      }
      digits = i < 0 ? '1' : digits.slice(0, i) + String(Number(digits.charAt(i)) + 1);
      if (i < 0) {
        point++;
      }
    }
  }
  digits = digits.replace(/0+$/, '');
  if (!digits) {
    return '0';
  }
  if (point <= 0) {
    return '0.' + '0'.repeat(-point) + digits;
  }
  if (digits.length <= point) {
    return digits + '0'.repeat(point - digits.length);
  }
  return digits.slice(0, point) + '.' + digits.slice(point);
}

// Three figures, more for whole numbers, no trailing zeros, no exponent.
export function number(value) {
  const size = Math.abs(value);
  if (!isFinite(value)) {
    return '\u2013';
  }
  let text = size === 0 ? '0' : rounded(size, size >= 100 ? 0 : 3 - decimal(size).point);
  const dot = text.indexOf('.') < 0 ? text.length : text.indexOf('.');
  if (dot > 4) {
    text = text.slice(0, dot).replace(/\B(?=(\d{3})+$)/g, '\u202f') + text.slice(dot);
  }
  return (value < 0 && text !== '0' ? '\u2212' : '') + text;
}

function duration(value) {
  const grain = Math.abs(value) < 9.95 ? 10 : 1;
  return number(Math.floor(value * grain + 0.5) / grain);
}

// size: engine units in one shown unit; add: taken off before (Fahrenheit).
function as(size, label, say = number) {
  return { size, label, say };
}

function time(size) {
  if (size < 90) {
    return as(1, 's', duration);
  }
  if (size < 7200) {
    return as(60, 'min', duration);
  }
  return size <= 172800 ? as(3600, 'h', duration) : as(86400, 'days', duration);
}

function pressure(size) {
  if (size < 1e3) {
    return as(1, 'Pa');
  }
  return size < 1e6 ? as(1e3, 'kPa') : as(1e6, 'MPa');
}

const METRIC = {
  ratio: () => as(1, ''),
  count: () => as(1, ''),
  percent: () => as(1, '%'),
  second: time,
  metre: v => (v < 1 && v > 0 ? as(1e-3, 'mm') : as(1, 'm')),
  'square-metre': () => as(1, 'm²'),
  'cubic-metre': () => as(1, 'm³'),
  'cubic-metre-liquid': v => (v < 1e-3 ? as(1e-6, 'mL') : as(1e-3, 'L')),
  kilogram: v => (v < 1 ? as(1e-3, 'g') : as(1, 'kg')),
  'kilogram-per-cubic-metre': () => as(1, 'kg/m³'),
  'kilogram-per-square-metre': () => as(1e-3, 'g/m²'),
  'airborne-kilogram-per-cubic-metre': () => as(1e-6, 'mg/m³'),
  'kilogram-per-mole': () => as(1e-3, 'g/mol'),
  celsius: () => as(1, '°C'),
  'celsius-difference': () => as(1, '°C'),
  pascal: pressure,
  newton: v => (v < 1e4 ? as(1, 'N') : as(1e3, 'kN')),
  micron: v => (v < 1000 ? as(1, 'µm') : as(1e3, 'mm')),
  ppm: () => as(1, 'ppm'),
  'cubic-metre-per-second': () => as(1 / 3600, 'm³/h'),
  'metre-per-second': () => as(1, 'm/s'),
  rpm: () => as(1, 'rpm'),
  'per-hour': () => as(1, 'per hour'),
  'square-metre-per-cubic-metre': () => as(1e3, 'm²/L'),
  'second-per-square-metre': () => as(60, 'min/m²'),
  'per-percent-moisture': () => as(1e-2, '% per point of moisture'),
  degree: () => as(1, '°'),
  'gloss-unit': () => as(1, 'gloss units')
};

function inches(size) {
  if (size >= 8 * FOOT) {
    return as(FOOT, 'ft');
  }
  if (size < INCH / FINEST) {
    return as(INCH, 'in');
  }
  return as(INCH, 'in', fraction);
}

// 1 3/16, with a plus or minus sixty-fourth lost only where the inch is not a whole fraction.
function fraction(value) {
  const size = Math.abs(value);
  let parts = size >= 24 ? 16 : size >= 4 ? 32 : FINEST;
  const all = Math.round(size * parts);
  const whole = Math.floor(all / parts);
  let top = all - whole * parts;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    parts /= 2;
  }
  const text = top === 0 ? String(whole) : (whole ? whole + ' ' : '') + top + '/' + parts;
  return (value < 0 && all > 0 ? '\u2212' : '') + text;
}

function gallons(size) {
  if (size < QUART) {
    return as(FLUID_OUNCE, 'US fl oz');
  }
  return size < GALLON ? as(QUART, 'US qt') : as(GALLON, 'US gal');
}

const IMPERIAL = {
  metre: inches,
  'square-metre': () => as(FOOT * FOOT, 'ft²'),
  'cubic-metre': () => as(FOOT * FOOT * FOOT, 'ft³'),
  'cubic-metre-liquid': gallons,
  kilogram: v => (v < POUND ? as(OUNCE, 'oz') : as(POUND, 'lb')),
  'kilogram-per-cubic-metre': () => as(POUND / (FOOT * FOOT * FOOT), 'lb/ft³'),
  'kilogram-per-square-metre': () => as(POUND / (1000 * FOOT * FOOT), 'lb per 1000 ft²'),
  celsius: () => ({ size: 5 / 9, shift: 32, label: '°F', say: number }),
  'celsius-difference': () => as(5 / 9, '°F'),
  pascal: () => as(PSI, 'psi'),
  newton: () => as(POUND_FORCE, 'lbf'),
  micron: () => as(25.4, 'mil'),
  'cubic-metre-per-second': () => as((FOOT * FOOT * FOOT) / 60, 'cfm'),
  'metre-per-second': v => (v < 1 ? as(INCH / 60, 'in/min') : as(FOOT / 60, 'ft/min')),
  'square-metre-per-cubic-metre': () => as((FOOT * FOOT) / GALLON, 'ft²/US gal'),
  'second-per-square-metre': () => as(60 / (FOOT * FOOT), 'min/ft²')
};

function shown(high, unit) {
  const table = chosen === 'imperial' && IMPERIAL[unit] ? IMPERIAL : METRIC;
  const make = table[unit];
  return make ? make(Math.abs(high)) : as(1, unit);
}

// A figure or a range as words: text(0.019, 0.019, 'metre') is "19 mm" or "3/4 in".
export function text(low, high, unit) {
  const s = shown(high, unitName(unit));
  const shift = s.shift || 0;
  const from = s.say(low / s.size + shift);
  const to = s.say(high / s.size + shift);
  const gap = s.label === '' || s.label === '%' || s.label === '°' ? '' : GAP;
  return (from === to ? to : from + '–' + to) + gap + s.label;
}

// Shows every figure below a node; the words the page came with return with the metric system.
export function show(root) {
  root.querySelectorAll('[data-q]').forEach(e => {
    if (e.dataset.metric === undefined) {
      e.dataset.metric = e.textContent;
    }
    const low = Number(e.dataset.q);
    const high = e.dataset.h === undefined ? low : Number(e.dataset.h);
    const words = chosen === 'metric' ? e.dataset.metric : text(low, high, e.dataset.u);
    if (e.textContent !== words) {
      e.textContent = words;
    }
  });
}

export function set(next) {
  chosen = next === 'imperial' ? 'imperial' : 'metric';
  try {
    window.localStorage.setItem(KEY, chosen);
  } catch (e) {
    // storage switched off: the choice holds for this page
  }
  show(document);
  label();
  listeners.forEach(f => {
    f(chosen);
  });
}

const button = document.getElementById('units');

function label() {
  if (button) {
    button.textContent = chosen === 'metric' ? 'mm' : 'inch';
    button.setAttribute(
      'aria-label',
      button.textContent + ' (' + (chosen === 'metric' ? 'metric' : 'inches and Fahrenheit') + '): change the units'
    );
  }
}

export const per = { inch: INCH, foot: FOOT, pound: POUND, poundForce: POUND_FORCE, quart: QUART };
export function system() {
  return chosen;
}
export function onChange(f) {
  listeners.push(f);
}

// Makes the switch live and shows the page in the units chosen before; called once.
export function ready() {
  if (button) {
    button.hidden = false;
    button.addEventListener('click', () => set(chosen === 'metric' ? 'imperial' : 'metric'));
  }
  label();
  if (chosen === 'imperial') {
    show(document);
  }
}
