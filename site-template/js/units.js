// Figures in the reader's units. Every figure in a page carries its SI value (data-q, data-h for the
// end of a range, data-u for the unit); this shows it metric, as the page was written, or in inches,
// pounds and degrees Fahrenheit. One switch for every page, remembered in this browser.
(function () {
  'use strict';

  var KEY = 'benchlore.units';
  var GAP = '\u00a0';
  var listeners = [];
  var system = remembered();

  // Inch fractions stop where a steel rule stops; smaller lengths are thousandths.
  var FINEST = 64;
  var INCH = 0.0254;
  var FOOT = 12 * INCH;
  var POUND = 0.45359237;
  var OUNCE = POUND / 16;
  var POUND_FORCE = 4.4482216152605;
  var PSI = 6894.757293168361;
  var FLUID_OUNCE = 29.5735295625e-6;
  var QUART = 32 * FLUID_OUNCE;
  var GALLON = 4 * QUART;

  function remembered() {
    try {
      return window.localStorage.getItem(KEY) === 'imperial' ? 'imperial' : 'metric';
    } catch (e) {
      return 'metric'; // storage switched off: the page still works, it only forgets
    }
  }

  function unitName(unit) { return String(unit).toLowerCase().replace(/_/g, '-'); }

  // The digits of the shortest decimal that reads back as the number: {digits, point}.
  function decimal(size) {
    var text = size.toExponential();
    var e = text.indexOf('e');
    return { digits: text.slice(0, e).replace('.', ''), point: Number(text.slice(e + 1)) + 1 };
  }

  // Half up at a decimal place, on the decimal digits themselves.
  function rounded(size, places) {
    var d = decimal(size);
    var keep = d.point + places;
    if (keep < 0) { return '0'; }
    var digits = d.digits;
    var point = d.point;
    if (digits.length > keep) {
      var up = digits.charAt(keep) >= '5';
      digits = digits.slice(0, keep);
      if (up) {
        var i = digits.length - 1;
        while (i >= 0 && digits.charAt(i) === '9') { i--; }
        digits = i < 0 ? '1' : digits.slice(0, i) + String(Number(digits.charAt(i)) + 1);
        if (i < 0) { point++; }
      }
    }
    digits = digits.replace(/0+$/, '');
    if (!digits) { return '0'; }
    if (point <= 0) { return '0.' + '0'.repeat(-point) + digits; }
    if (digits.length <= point) { return digits + '0'.repeat(point - digits.length); }
    return digits.slice(0, point) + '.' + digits.slice(point);
  }

  // Three figures, more for whole numbers, no trailing zeros, no exponent.
  function number(value) {
    var size = Math.abs(value);
    if (!isFinite(value)) { return '\u2013'; }
    var text = size === 0 ? '0' : rounded(size, size >= 100 ? 0 : 3 - decimal(size).point);
    var dot = text.indexOf('.') < 0 ? text.length : text.indexOf('.');
    if (dot > 4) {
      text = text.slice(0, dot).replace(/\B(?=(\d{3})+$)/g, '\u202f') + text.slice(dot);
    }
    return (value < 0 && text !== '0' ? '\u2212' : '') + text;
  }

  function duration(value) {
    var grain = Math.abs(value) < 9.95 ? 10 : 1;
    return number(Math.floor(value * grain + 0.5) / grain);
  }

  // size: engine units in one shown unit; add: taken off before (Fahrenheit).
  function as(size, label, say) { return { size: size, label: label, say: say || number }; }

  function time(size) {
    if (size < 90) { return as(1, 's', duration); }
    if (size < 7200) { return as(60, 'min', duration); }
    return size <= 172800 ? as(3600, 'h', duration) : as(86400, 'days', duration);
  }

  function pressure(size) {
    if (size < 1e3) { return as(1, 'Pa'); }
    return size < 1e6 ? as(1e3, 'kPa') : as(1e6, 'MPa');
  }

  var METRIC = {
    'ratio': function () { return as(1, ''); },
    'count': function () { return as(1, ''); },
    'percent': function () { return as(1, '%'); },
    'second': time,
    'metre': function (v) { return v < 1 && v > 0 ? as(1e-3, 'mm') : as(1, 'm'); },
    'square-metre': function () { return as(1, 'm²'); },
    'cubic-metre': function () { return as(1, 'm³'); },
    'cubic-metre-liquid': function (v) { return v < 1e-3 ? as(1e-6, 'mL') : as(1e-3, 'L'); },
    'kilogram': function (v) { return v < 1 ? as(1e-3, 'g') : as(1, 'kg'); },
    'kilogram-per-cubic-metre': function () { return as(1, 'kg/m³'); },
    'kilogram-per-square-metre': function () { return as(1e-3, 'g/m²'); },
    'airborne-kilogram-per-cubic-metre': function () { return as(1e-6, 'mg/m³'); },
    'kilogram-per-mole': function () { return as(1e-3, 'g/mol'); },
    'celsius': function () { return as(1, '°C'); },
    'celsius-difference': function () { return as(1, '°C'); },
    'pascal': pressure,
    'newton': function (v) { return v < 1e4 ? as(1, 'N') : as(1e3, 'kN'); },
    'micron': function (v) { return v < 1000 ? as(1, 'µm') : as(1e3, 'mm'); },
    'ppm': function () { return as(1, 'ppm'); },
    'cubic-metre-per-second': function () { return as(1 / 3600, 'm³/h'); },
    'metre-per-second': function () { return as(1, 'm/s'); },
    'rpm': function () { return as(1, 'rpm'); },
    'per-hour': function () { return as(1, 'per hour'); },
    'square-metre-per-cubic-metre': function () { return as(1e3, 'm²/L'); },
    'second-per-square-metre': function () { return as(60, 'min/m²'); },
    'per-percent-moisture': function () { return as(1e-2, '% per point of moisture'); },
    'degree': function () { return as(1, '°'); },
    'gloss-unit': function () { return as(1, 'gloss units'); }
  };

  function inches(size) {
    if (size >= 8 * FOOT) { return as(FOOT, 'ft'); }
    if (size < INCH / FINEST) { return as(INCH, 'in'); }
    return as(INCH, 'in', fraction);
  }

  // 1 3/16, with a plus or minus sixty-fourth lost only where the inch is not a whole fraction.
  function fraction(value) {
    var size = Math.abs(value);
    var parts = size >= 24 ? 16 : size >= 4 ? 32 : FINEST;
    var all = Math.round(size * parts);
    var whole = Math.floor(all / parts);
    var top = all - whole * parts;
    while (top > 0 && top % 2 === 0) { top /= 2; parts /= 2; }
    var text = top === 0 ? String(whole) : (whole ? whole + ' ' : '') + top + '/' + parts;
    return (value < 0 && all > 0 ? '\u2212' : '') + text;
  }

  function gallons(size) {
    if (size < QUART) { return as(FLUID_OUNCE, 'US fl oz'); }
    return size < GALLON ? as(QUART, 'US qt') : as(GALLON, 'US gal');
  }

  var IMPERIAL = {
    'metre': inches,
    'square-metre': function () { return as(FOOT * FOOT, 'ft²'); },
    'cubic-metre': function () { return as(FOOT * FOOT * FOOT, 'ft³'); },
    'cubic-metre-liquid': gallons,
    'kilogram': function (v) { return v < POUND ? as(OUNCE, 'oz') : as(POUND, 'lb'); },
    'kilogram-per-cubic-metre': function () { return as(POUND / (FOOT * FOOT * FOOT), 'lb/ft³'); },
    'kilogram-per-square-metre': function () { return as(POUND / (1000 * FOOT * FOOT), 'lb per 1000 ft²'); },
    'celsius': function () { return { size: 5 / 9, shift: 32, label: '°F', say: number }; },
    'celsius-difference': function () { return as(5 / 9, '°F'); },
    'pascal': function () { return as(PSI, 'psi'); },
    'newton': function () { return as(POUND_FORCE, 'lbf'); },
    'micron': function () { return as(25.4, 'mil'); },
    'cubic-metre-per-second': function () { return as(FOOT * FOOT * FOOT / 60, 'cfm'); },
    'metre-per-second': function (v) { return v < 1 ? as(INCH / 60, 'in/min') : as(FOOT / 60, 'ft/min'); },
    'square-metre-per-cubic-metre': function () { return as(FOOT * FOOT / GALLON, 'ft²/US gal'); },
    'second-per-square-metre': function () { return as(60 / (FOOT * FOOT), 'min/ft²'); }
  };

  function shown(high, unit) {
    var table = system === 'imperial' && IMPERIAL[unit] ? IMPERIAL : METRIC;
    var make = table[unit];
    return make ? make(Math.abs(high)) : as(1, unit);
  }

  // A figure or a range as words: text(0.019, 0.019, 'metre') is "19 mm" or "3/4 in".
  function text(low, high, unit) {
    var s = shown(high, unitName(unit));
    var shift = s.shift || 0;
    var from = s.say(low / s.size + shift);
    var to = s.say(high / s.size + shift);
    var gap = s.label === '' || s.label === '%' || s.label === '°' ? '' : GAP;
    return (from === to ? to : from + '–' + to) + gap + s.label;
  }

  // Shows every figure below a node; the words the page came with return with the metric system.
  function show(root) {
    root.querySelectorAll('[data-q]').forEach(function (e) {
      if (e.dataset.metric === undefined) { e.dataset.metric = e.textContent; }
      var low = Number(e.dataset.q);
      var high = e.dataset.h === undefined ? low : Number(e.dataset.h);
      var words = system === 'metric' ? e.dataset.metric : text(low, high, e.dataset.u);
      if (e.textContent !== words) { e.textContent = words; }
    });
  }

  function set(next) {
    system = next === 'imperial' ? 'imperial' : 'metric';
    try {
      window.localStorage.setItem(KEY, system);
    } catch (e) {
      // storage switched off: the choice holds for this page
    }
    show(document);
    label();
    listeners.forEach(function (f) { f(system); });
  }

  var button = document.getElementById('units');

  function label() {
    if (button) {
      button.textContent = system === 'metric' ? 'mm' : 'inch';
      button.setAttribute('aria-label', button.textContent + ' (' + (system === 'metric' ? 'metric' : 'inches and Fahrenheit') + '): change the units');
    }
  }

  // Dates and times the way the reader's browser is set; the day of the week is never left out.
  var FORMS = {
    day: { weekday: 'short', day: 'numeric', month: 'long', year: 'numeric' },
    short: { weekday: 'short', day: 'numeric', month: 'short' },
    moment: { weekday: 'short', day: 'numeric', month: 'short', hour: 'numeric', minute: '2-digit' },
    clock: { hour: 'numeric', minute: '2-digit' }
  };

  // <time datetime> in the text, data-at on the words of a drawing: each comes with British words and is rewritten here.
  function localTimes() {
    document.querySelectorAll('[data-as]').forEach(function (t) {
      var iso = t.dataset.at || t.getAttribute('datetime');
      var at = new Date(iso.length > 10 ? iso : iso + 'T00:00');
      if (!isNaN(at)) { t.textContent = new Intl.DateTimeFormat(undefined, FORMS[t.dataset.as]).format(at); }
    });
  }

  localTimes();

  window.benchlore = window.benchlore || {};
  window.benchlore.units = {
    text: text,
    number: number,
    per: { inch: INCH, foot: FOOT, pound: POUND, poundForce: POUND_FORCE, quart: QUART },
    show: show,
    set: set,
    system: function () { return system; },
    onChange: function (f) { listeners.push(f); }
  };

  if (button) {
    button.hidden = false;
    button.addEventListener('click', function () { set(system === 'metric' ? 'imperial' : 'metric'); });
  }
  label();
  if (system === 'imperial') { show(document); }
}());
