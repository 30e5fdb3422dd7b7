// Plans kept in this browser: a versioned list; what can't be read is set aside under another name
// and never lost. Also the plan file as YAML, the same that the generator reads.

import { isDay } from '../planner/dates.js';

const KEY = 'benchlore.plans';
const ASIDE = 'benchlore.plans.aside.';
const VERSION = 1;
const MOST = 200;
const LONGEST = 80; // letters of a name, as in the form
const yaml = window.jsyaml;

function storage() {
  try {
    return window.localStorage;
  } catch (e) {
    return null;
  }
}

// Whether a run is one as it is kept: the engine and the page take every step and moment of it on trust.
export function soundRun(run) {
  return (
    run !== null &&
    typeof run === 'object' &&
    Array.isArray(run.done) &&
    run.done.every(
      d =>
        d !== null &&
        typeof d === 'object' &&
        typeof d.step === 'string' &&
        d.step !== '' &&
        Array.isArray(d.slots) &&
        d.slots.length > 0 &&
        d.slots.every(s => s !== null && typeof s === 'object' && moment(s.start) && moment(s.end) && s.start <= s.end)
    )
  );
}

function moment(text) {
  return (
    typeof text === 'string' &&
    /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d$/.test(text) &&
    isDay(text.slice(0, 10)) &&
    !isNaN(Date.parse(text))
  );
}

function good(list) {
  return (
    list !== null &&
    typeof list === 'object' &&
    list.version === VERSION &&
    Array.isArray(list.plans) &&
    list.plans.every(
      p =>
        p !== null &&
        typeof p === 'object' &&
        typeof p.name === 'string' &&
        typeof p.address === 'string' &&
        (p.run === undefined || soundRun(p.run))
    )
  );
}

// {plans, aside}: aside is the name under which unreadable storage was put, else empty.
export function read() {
  const s = storage();
  const text = s && s.getItem(KEY);
  if (!text) {
    return { plans: [], aside: '' };
  }
  try {
    const list = JSON.parse(text);
    if (good(list)) {
      return { plans: list.plans, aside: '' };
    }
  } catch (e) {
    // not JSON: set aside below
  }
  let name = ASIDE + 1;
  for (let n = 2; s.getItem(name) !== null; n++) {
    name = ASIDE + n;
  }
  try {
    s.setItem(name, text);
  } catch (e) {
    return { plans: [], aside: KEY }; // no room for a copy: it stays where it is, and no plan is kept over it
  }
  s.removeItem(KEY);
  return { plans: [], aside: name };
}

// True if it was kept.
function write(plans) {
  const s = storage();
  if (!s) {
    return false;
  }
  try {
    s.setItem(KEY, JSON.stringify({ version: VERSION, plans: plans }));
    return true;
  } catch (e) {
    return false; // storage full or switched off
  }
}

// The plan of a name, or null.
export function find(name) {
  return read().plans.find(p => p.name === name) || null;
}

// A name no kept plan has: the name itself, else "Cabinet 2", "Cabinet 3" and so on.
export function free(name) {
  if (!find(name)) {
    return name;
  }
  const m = /^(.*\S) ([2-9]|[1-9]\d)$/.exec(name);
  const base = m && find(m[1]) ? m[1] : name;
  for (let n = 2; ; n++) {
    const next = base.slice(0, LONGEST - 1 - String(n).length).trim() + ' ' + n;
    if (!find(next)) {
      return next;
    }
  }
}

// Keeps a plan under its name, in the place of one of the same name. Empty if it was kept, else why not.
export function keep(plan) {
  return keepAt(plan, 0);
}

export function keepAt(plan, at) {
  const kept = read();
  const plans = kept.plans.filter(p => p.name !== plan.name);
  if (plans.length >= MOST) {
    return 'There are ' + MOST + ' plans here already: forget one first, or save this one as a file.';
  }
  plans.splice(at, 0, plan);
  return kept.aside !== KEY && write(plans)
    ? ''
    : 'This browser keeps nothing for a page: save the plan as a file instead.';
}

// Takes a plan out of the list: {plan, at}, so that it can be put back; null if it could not be.
export function forget(name) {
  const plans = read().plans;
  const at = plans.findIndex(p => p.name === name);
  if (at < 0) {
    return null;
  }
  const gone = { plan: plans[at], at: at };
  plans.splice(at, 1);
  return write(plans) ? gone : null;
}

export function toYaml(file) {
  return (
    '# yaml-language-server: $schema=../schema/plans.schema.json\n' +
    yaml.dump(file, { lineWidth: 100, noRefs: true, quotingType: '"', flowLevel: 3, schema: yaml.CORE_SCHEMA })
  );
}

// The file's data; an error names the line.
export function fromYaml(text) {
  if (text.length > 200000) {
    return { problem: 'The file is too large to be a plan.' };
  }
  try {
    return { file: yaml.load(text, { schema: yaml.JSON_SCHEMA }) };
  } catch (e) {
    const at = e.mark ? 'Line ' + (e.mark.line + 1) + ', column ' + (e.mark.column + 1) + ': ' : '';
    return { problem: at + 'this is no YAML: ' + (e.reason || 'it can\u2019t be read') + '.' };
  }
}
