// The form of a planner: what stands in it, what the address says of it, and the reader's units.
// The state is an object of names to values: a word for a choice, true or false for a box, a number
// in the field's own metric unit (data-unit: mm, h, °C ...) for a measure. The address after # holds
// what differs from the defaults, so a plan can be bookmarked and sent.

import * as units from '../page/units.js';
import { wrong } from './checks.js';
import * as measure from './measure.js';

const MOST_ADDRESS = 8000;
const STEPS = 200; // of a slider, from end to end

function isMeasure(e) {
  return e.dataset.unit !== undefined;
}

function read(e) {
  if (e.type === 'checkbox') {
    return e.checked;
  }
  return isMeasure(e) ? measure.parse(e.value, e.dataset.unit) : e.value;
}

// A choice that was a box once: an address of then still means what it meant.
function asNow(e, word) {
  const was = Array.from(e.options || []).find(option => option.getAttribute('data-was') === word);
  return was ? was.value : word;
}

// A word of an address as a value of the field.
function fromWord(e, word) {
  if (e.type === 'checkbox') {
    return { true: true, false: false }[word];
  }
  if (!isMeasure(e)) {
    return asNow(e, word);
  }
  return word.trim() === '' ? NaN : Number(word);
}

function plain(text) {
  try {
    return decodeURIComponent(text);
  } catch (e) {
    return null;
  }
}

// The bare slider of a field; the field beside it takes the same values from the keyboard and for a screen reader.
function bareSlider(e) {
  const s = document.createElement('input');
  const low = Number(e.dataset.low);
  const high = Number(e.dataset.slideTo || e.dataset.high);
  s.type = 'range';
  s.className = 'slider';
  s.min = String(low);
  s.max = String(high);
  s.step = String(e.dataset.step || (high - low) / STEPS);
  s.tabIndex = -1;
  s.setAttribute('aria-hidden', 'true');
  return s;
}

// The fields of a form, their values and their defaults.
export class Fields {
  // changed() is called after every change that leaves a value good to use; checks are the page's own, by name.
  constructor(form, changed, checks) {
    this.form = form;
    this.changed = changed;
    this.checks = checks;
    this.list = Array.from(form.elements).filter(e => e.name);
    this.byName = new Map(this.list.map(e => [e.name, e]));
    this.values = {};
    this.defaults = {};
    this.sliders = new Map();
    // What a page does once a script has set fields, and how it answers at once: it puts its own in their place.
    this.wasSet = () => {};
    this.answerNow = () => {};
    this.list.forEach(e => this.begin(e));
    form.addEventListener('submit', event => event.preventDefault());
    units.onChange(() => this.relabel());
  }

  begin(e) {
    const first = isMeasure(e) ? measure.metric(e.value, e.dataset.unit) : read(e);
    this.values[e.name] = first;
    this.defaults[e.name] = first;
    if (isMeasure(e) && e.dataset.slide !== undefined) {
      this.slide(e);
    }
    e.addEventListener(e.tagName === 'SELECT' || e.type === 'checkbox' ? 'change' : 'input', () => {
      if (this.take(e)) {
        this.settle();
      }
    });
    if (isMeasure(e)) {
      e.addEventListener('change', () => {
        if (this.take(e)) {
          this.write(e, this.values[e.name]);
        }
      });
    }
  }

  slide(e) {
    const s = bareSlider(e);
    s.addEventListener('input', () => {
      const value = Number(Number(s.value).toPrecision(4));
      e.value = measure.shown(value, e.dataset.unit);
      this.tell(e, '');
      this.values[e.name] = value;
      this.settle();
    });
    e.parentNode.insertAdjacentElement('afterend', s);
    this.sliders.set(e, s);
  }

  write(e, value) {
    if (e.type === 'checkbox') {
      e.checked = value;
    } else if (!isMeasure(e)) {
      e.value = value;
    } else {
      e.value = measure.shown(value, e.dataset.unit);
      this.slideTo(e, value);
    }
  }

  slideTo(e, value) {
    if (this.sliders.has(e)) {
      this.sliders.get(e).value = value;
    }
  }

  name(e) {
    const l = this.form.querySelector('label[for="' + e.id + '"]');
    return l ? l.textContent.trim() : e.dataset.called || e.name;
  }

  tell(e, problem) {
    const line = document.getElementById(e.id + '-wrong');
    e.setAttribute('aria-invalid', problem ? 'true' : 'false');
    if (line) {
      line.textContent = problem ? this.name(e) + ' ' + problem + '.' : '';
    }
  }

  take(e) {
    const value = read(e);
    const problem = wrong(e, value, this.checks);
    this.tell(e, problem);
    if (problem) {
      return false;
    }
    this.values[e.name] = value;
    this.slideTo(e, value);
    return true;
  }

  // What the address holds after its #.
  address() {
    const names = Object.keys(this.values);
    const changed = names.some(n => this.values[n] !== this.defaults[n]);
    // A start left at "tomorrow" would mean another day tomorrow: an address always names it.
    const named = n => this.values[n] !== this.defaults[n] || (changed && this.byName.get(n).type === 'datetime-local');
    const pair = n => encodeURIComponent(n) + '=' + encodeURIComponent(this.values[n]);
    return names.filter(named).map(pair).join('&');
  }

  settle() {
    const text = '#' + this.address();
    try {
      window.history.replaceState(null, '', text === '#' ? window.location.pathname : text);
    } catch (e) {
      window.location.replace(text);
    }
    this.changed();
  }

  // What an address says of every field, and what of it could not be used, in words.
  readAddress(text) {
    const problems = [];
    const values = Object.assign({}, this.defaults);
    let raw = text.replace(/^#/, '');
    if (raw.length > MOST_ADDRESS) {
      problems.push('The address is too long to be one of ours.');
      raw = '';
    }
    raw
      .split('&')
      .filter(Boolean)
      .forEach(pair => {
        const problem = this.readPair(pair, values);
        if (problem) {
          problems.push(problem);
        }
      });
    return { values, problems };
  }

  readPair(pair, values) {
    const at = pair.indexOf('=');
    const key = plain(at < 0 ? pair : pair.slice(0, at));
    const word = at < 0 ? '' : plain(pair.slice(at + 1));
    const e = key === null ? undefined : this.byName.get(key);
    if (!e || word === null) {
      return '“' + pair.slice(0, 40) + '” means nothing to this page.';
    }
    const value = fromWord(e, word);
    const problem = wrong(e, value, this.checks);
    if (problem) {
      return this.name(e) + ' ' + problem + '.';
    }
    values[key] = value;
    return '';
  }

  // Takes what an address says; returns what it could not use.
  fromAddress(text) {
    const told = this.readAddress(text);
    Object.assign(this.values, told.values);
    this.list.forEach(e => {
      this.write(e, this.values[e.name]);
      this.tell(e, '');
    });
    this.relabel();
    return told.problems;
  }

  relabel() {
    this.form.querySelectorAll('[data-unit-of]').forEach(s => {
      s.textContent = measure.label(this.byName.get(s.dataset.unitOf).dataset.unit);
    });
    this.list.filter(isMeasure).forEach(e => this.write(e, this.values[e.name]));
  }

  // What a script sets, it sets of every field it means: nothing follows from it.
  set(more) {
    this.follow(more);
    this.wasSet();
  }

  // Values that follow from another field; names the form does not know are passed over.
  follow(more) {
    Object.keys(more)
      .filter(n => this.byName.has(n))
      .forEach(n => {
        this.values[n] = more[n];
        this.write(this.byName.get(n), more[n]);
        this.tell(this.byName.get(n), '');
      });
    this.settle();
  }

  setDefault(n, value) {
    this.defaults[n] = value;
    this.values[n] = value;
    this.write(this.byName.get(n), value);
  }

  // What is wrong with values that come from elsewhere, a line each.
  problems(more) {
    return Object.keys(more)
      .filter(n => this.byName.has(n))
      .map(n => {
        const e = this.byName.get(n);
        const problem = wrong(e, more[n], this.checks);
        return problem ? this.name(e) + ' ' + problem + '.' : '';
      })
      .filter(Boolean);
  }

  element(n) {
    return this.byName.get(n);
  }

  // The value of a measure in SI units.
  si(n) {
    return measure.si(this.values[n], this.byName.get(n).dataset.unit);
  }
}
