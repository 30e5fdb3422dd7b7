// The form of a planner: what stands in it, what the address says of it, and the reader's units.
// The state is an object of names to values: a word for a choice, true or false for a box, a number
// in the field's own metric unit (data-unit: mm, h, °C ...) for a measure. The address after # holds
// what differs from the defaults, so a plan can be bookmarked and sent.
(function () {
  'use strict';

  var units = window.benchlore.units;
  var MOST_ADDRESS = 8000;
  var STEPS = 200; // of a slider, from end to end

  // A metric field unit: SI per unit, the engine's unit, and what stands in its place by inches.
  var PER = units.per;
  var INCH = { label: 'in', per: PER.inch };
  var UNITS = {
    'mm': { per: 1e-3, si: 'metre', other: INCH },
    'm': { per: 1, si: 'metre', other: { label: 'ft', per: PER.foot } },
    'm²': { per: 1, si: 'square-metre', other: { label: 'ft²', per: PER.foot * PER.foot } },
    'm³': { per: 1, si: 'cubic-metre', other: { label: 'ft³', per: Math.pow(PER.foot, 3) } },
    'm³/h': { per: 1 / 3600, si: 'cubic-metre-per-second', other: { label: 'cfm', per: Math.pow(PER.foot, 3) / 60 } },
    'mm/min': { per: 1e-3 / 60, si: 'metre-per-second', other: { label: 'in/min', per: PER.inch / 60 } },
    'L': { per: 1e-3, si: 'cubic-metre-liquid', other: { label: 'US qt', per: PER.quart } },
    'kg': { per: 1, si: 'kilogram', other: { label: 'lb', per: PER.pound } },
    'N': { per: 1, si: 'newton', other: { label: 'lbf', per: PER.poundForce } },
    'µm': { per: 1, si: 'micron', other: { label: 'mil', per: 25.4 } },
    '°C': { per: 1, si: 'celsius', other: { label: '°F', per: 5 / 9, shift: 32 } },
    '%': { per: 1, si: 'percent' },
    '°': { per: 1, si: 'degree' },
    'min': { per: 60, si: 'second' },
    'h': { per: 3600, si: 'second' },
    'rpm': { per: 1, si: 'rpm' },
    'per hour': { per: 1, si: 'per-hour' },
    '': { per: 1, si: 'count' }
  };

  var SPAN = /^([01]\d|2[0-3]):[0-5]\d\s*[-–]\s*(([01]\d|2[0-3]):[0-5]\d|24:00)$/;

  // A browser reads 30 February as 2 March; a calendar has no such day.
  function isDay(text) {
    var at = Date.parse(text + 'T00:00Z');
    return !isNaN(at) && new Date(at).toISOString().slice(0, 10) === text;
  }

  function order(span) {
    var ends = span.trim().split(/\s*[-–]\s*/);
    return ends[0] < ends[1];
  }

  // "3/4", "1 1/2", "1-1/2", "18", "18,5" and "18.5" as a number; NaN for anything else.
  function amount(text) {
    var m = /^([-+\u2212]?)(?:(\d+)[ -]+)?(\d+)\/(\d+)$/.exec(text);
    if (m) {
      var value = Number(m[2] || 0) + Number(m[3]) / Number(m[4]);
      return m[1] && m[1] !== '+' ? -value : value;
    }
    return /^[-+\u2212]?(\d+([.,]\d*)?|[.,]\d+)$/.test(text)
      ? Number(text.replace('\u2212', '-').replace(',', '.')) : NaN;
  }

  // What was typed, in the field's metric unit; a unit typed behind the number wins over the switch.
  function parse(typed, unit) {
    var text = String(typed).trim().replace(/\s+/g, ' ');
    var u = UNITS[unit];
    var m = /^([-+\u2212\d.,\/ ]*\d[.,]?)\s*([^\d\s].*)?$/.exec(text);
    if (!m) { return NaN; }
    var label = (m[2] || '').trim().replace(/^"$|^inch(es)?$|^''$/, 'in').replace(/^'$|^feet$|^foot$/, 'ft')
      .replace(/^C$/, '°C').replace(/^F$/, '°F').replace(/^um$/, 'µm').replace(/^hours?$/, 'h');
    var size = amount(m[1].trim());
    // An inch is no whole number of binary fractions of a millimetre: without the dust.
    return Number(inUnit(size, label, u).toPrecision(12));
  }

  function inUnit(size, label, u) {
    if (label === '') { return units.system() === 'imperial' ? fromOther(size, u) : size; }
    if (u.other && label === u.other.label) { return fromOther(size, u); }
    if (label === 'in' && u.si === 'metre') { return size * INCH.per / u.per; }
    var own = UNITS[label];
    return own && own.si === u.si ? size * own.per / u.per : NaN;
  }

  function fromOther(size, u) {
    return u.other ? (size - (u.other.shift || 0)) * u.other.per / u.per : size;
  }

  // A value of the field as the reader's rule, thermometer or tape would read it, without the unit.
  function shown(value, unit) {
    var u = UNITS[unit];
    if (units.system() === 'metric' || !u.other) { return trimmed(value); }
    if (u.other === INCH) { return units.text(value * u.per, value * u.per, 'metre').replace(/\u00a0?(in|ft)$/, ''); }
    return trimmed(value * u.per / u.other.per + (u.other.shift || 0));
  }

  function trimmed(value) { return String(Number(value.toPrecision(4))); }

  function label(unit) {
    var u = UNITS[unit];
    return units.system() === 'imperial' && u.other ? u.other.label : unit;
  }

  // Fields of a form. changed() is called after every change that leaves a value good to use.
  function fields(form, changed) {
    var list = Array.from(form.elements).filter(function (e) { return e.name; });
    var byName = new Map(list.map(function (e) { return [e.name, e]; }));
    var values = {};
    var defaults = {};
    var sliders = new Map();

    function read(e) {
      if (e.type === 'checkbox') { return e.checked; }
      return e.dataset.unit === undefined ? e.value : parse(e.value, e.dataset.unit);
    }

    function write(e, value) {
      if (e.type === 'checkbox') {
        e.checked = value;
      } else if (e.dataset.unit === undefined) {
        e.value = value;
      } else {
        e.value = shown(value, e.dataset.unit);
        if (sliders.has(e)) { sliders.get(e).value = value; }
      }
    }

    // What is wrong with a value, in words; empty if nothing is. A value from elsewhere may be of any sort.
    function wrong(e, value) {
      if (e.type === 'checkbox') { return typeof value === 'boolean' ? '' : 'is yes or no'; }
      if (typeof value !== (e.dataset.unit === undefined ? 'string' : 'number')) { return e.dataset.unit === undefined ? 'has to be text' : 'has to be a number'; }
      if (e.tagName === 'SELECT') {
        var fits = Array.from(e.options).some(function (o) { return o.value === value; });
        return fits ? '' : 'is none of the choices';
      }
      if (e.dataset.unit !== undefined) {
        var low = Number(e.dataset.low);
        var high = Number(e.dataset.high);
        if (!isFinite(value)) { return 'is not a number with a unit we know'; }
        if (e.dataset.whole !== undefined && value !== Math.floor(value)) { return 'has to be a whole number'; }
        return value >= low && value <= high ? ''
          : 'has to be ' + shown(low, e.dataset.unit) + ' to ' + shown(high, e.dataset.unit) + ' ' + label(e.dataset.unit);
      }
      if (e.type === 'datetime-local') {
        return /^\d{4}-\d\d-\d\dT\d\d:\d\d$/.test(value) && isDay(value.slice(0, 10)) && !isNaN(Date.parse(value)) ? '' : 'is not a date and time';
      }
      if (e.dataset.spans !== undefined) {
        return value.split(',').every(function (span) { return span.trim() === '' || SPAN.test(span.trim()) && order(span); })
          ? '' : 'has to be hours such as 18:30-21:30, more with commas between';
      }
      if (e.dataset.days !== undefined) {
        return value.split(',').every(function (d) { return d.trim() === '' || /^\d{4}-\d\d-\d\d$/.test(d.trim()) && isDay(d.trim()); })
          ? '' : 'has to be days such as 2027-04-02, more with commas between';
      }
      if (e.dataset.nights !== undefined) {
        try { window.benchlore.planFile.nights(value); } catch (problem) { return 'can\u2019t be used: ' + problem.message; }
        return '';
      }
      if (e.pattern && value !== '' && !new RegExp('^(?:' + e.pattern + ')$').test(value)) { return 'may hold letters, digits, spaces and , . - \u2019 only'; }
      return value.length <= (e.maxLength > 0 ? e.maxLength : 200) ? '' : 'is too long';
    }

    function name(e) {
      var l = form.querySelector('label[for="' + e.id + '"]');
      return l ? l.textContent.trim() : e.dataset.called || e.name;
    }

    function tell(e, problem) {
      var line = document.getElementById(e.id + '-wrong');
      e.setAttribute('aria-invalid', problem ? 'true' : 'false');
      if (line) { line.textContent = problem ? name(e) + ' ' + problem + '.' : ''; }
    }

    function take(e) {
      var value = read(e);
      var problem = wrong(e, value);
      tell(e, problem);
      if (problem) { return false; }
      values[e.name] = value;
      if (sliders.has(e)) { sliders.get(e).value = value; }
      return true;
    }

    function slider(e) {
      var s = document.createElement('input');
      var low = Number(e.dataset.low);
      var high = Number(e.dataset.slideTo || e.dataset.high);
      s.type = 'range';
      s.className = 'slider';
      s.min = low;
      s.max = high;
      s.step = e.dataset.step || (high - low) / STEPS;
      // The field beside it takes the same values from the keyboard and for a screen reader.
      s.tabIndex = -1;
      s.setAttribute('aria-hidden', 'true');
      s.addEventListener('input', function () {
        var value = Number(Number(s.value).toPrecision(4));
        e.value = shown(value, e.dataset.unit);
        tell(e, '');
        values[e.name] = value;
        settle();
      });
      e.parentNode.insertAdjacentElement('afterend', s);
      sliders.set(e, s);
    }

    function address() {
      var changed_ = Object.keys(values).filter(function (n) { return values[n] !== defaults[n]; });
      // A start left at "tomorrow" would mean another day tomorrow: an address always names it.
      return Object.keys(values).filter(function (n) {
        return values[n] !== defaults[n] || changed_.length > 0 && byName.get(n).type === 'datetime-local';
      })
        .map(function (n) { return encodeURIComponent(n) + '=' + encodeURIComponent(values[n]); }).join('&');
    }

    function settle() {
      var text = '#' + address();
      try {
        window.history.replaceState(null, '', text === '#' ? window.location.pathname : text);
      } catch (e) {
        window.location.replace(text);
      }
      changed(values);
    }

    // What an address says of every field, and what of it could not be used, in words.
    function readAddress(text) {
      var problems = [];
      var said = {};
      var raw = text.replace(/^#/, '');
      list.forEach(function (e) { said[e.name] = defaults[e.name]; });
      if (raw.length > MOST_ADDRESS) {
        problems.push('The address is too long to be one of ours.');
        raw = '';
      }
      raw.split('&').filter(Boolean).forEach(function (pair) {
        var at = pair.indexOf('=');
        var key = plain(at < 0 ? pair : pair.slice(0, at));
        var word = at < 0 ? '' : plain(pair.slice(at + 1));
        var e = key === null ? undefined : byName.get(key);
        if (!e || word === null) {
          problems.push('“' + pair.slice(0, 40) + '” means nothing to this page.');
          return;
        }
        var value = e.type === 'checkbox' ? { 'true': true, 'false': false }[word]
          : e.dataset.unit !== undefined ? (word.trim() === '' ? NaN : Number(word)) : word;
        var problem = wrong(e, value);
        if (problem) {
          problems.push(name(e) + ' ' + problem + '.');
        } else {
          said[key] = value;
        }
      });
      return { values: said, problems: problems };
    }

    // Takes what an address says; returns what it could not use.
    function fromAddress(text) {
      var read_ = readAddress(text);
      Object.assign(values, read_.values);
      list.forEach(function (e) { write(e, values[e.name]); tell(e, ''); });
      return read_.problems;
    }

    function plain(text) {
      try { return decodeURIComponent(text); } catch (e) { return null; }
    }

    function relabel() {
      form.querySelectorAll('[data-unit-of]').forEach(function (s) {
        s.textContent = label(byName.get(s.dataset.unitOf).dataset.unit);
      });
      list.forEach(function (e) { if (e.dataset.unit !== undefined) { write(e, values[e.name]); } });
    }

    list.forEach(function (e) {
      var metric = e.dataset.unit === undefined ? read(e) : amount(e.value);
      values[e.name] = metric;
      defaults[e.name] = metric;
      if (e.dataset.unit !== undefined && e.dataset.slide !== undefined) { slider(e); }
      e.addEventListener(e.tagName === 'SELECT' || e.type === 'checkbox' ? 'change' : 'input', function () {
        if (take(e)) { settle(); }
      });
      if (e.dataset.unit !== undefined) {
        e.addEventListener('change', function () { if (take(e)) { write(e, values[e.name]); } });
      }
    });
    form.addEventListener('submit', function (event) { event.preventDefault(); });
    units.onChange(relabel);

    return {
      values: values,
      defaults: defaults,
      fromAddress: function (text) { var p = fromAddress(text); relabel(); return p; },
      readAddress: readAddress,
      set: function (more) {
        Object.keys(more).filter(function (n) { return byName.has(n); }).forEach(function (n) { values[n] = more[n]; write(byName.get(n), more[n]); tell(byName.get(n), ''); });
        settle();
      },
      setDefault: function (n, value) { defaults[n] = value; values[n] = value; write(byName.get(n), value); },
      // What is wrong with values that come from elsewhere, a line each.
      problems: function (more) {
        return Object.keys(more).filter(function (n) { return byName.has(n); }).map(function (n) {
          var e = byName.get(n);
          var problem = wrong(e, more[n]);
          return problem ? name(e) + ' ' + problem + '.' : '';
        }).filter(Boolean);
      },
      address: address,
      element: function (n) { return byName.get(n); },
      si: function (n) { return values[n] * UNITS[byName.get(n).dataset.unit].per; }
    };
  }

  window.benchlore.fields = fields;
  window.benchlore.isDay = isDay;
  window.benchlore.parseMeasure = parse;
}());
