// A plan as the fields of the form and as the plan file that the generator reads too. No page, no storage.
//   of(values) is a plain object with the plan file's own keys; values(file) is {values, problems, bounds, run},
//   of a file that is wrong in form no values.

import { isDay } from '../planner/dates.js';
import * as engine from '../planner/engine.js';
import * as measure from '../planner/measure.js';
import { data } from '../planner/records.js';
import * as finishFields from './finish-fields.js';
import * as nightWords from './night-words.js';
import * as saved from './saved.js';

let shopFile = {}; // what the form says by itself, for what a plan file leaves out
const grades = data.grades.map(g => g.label);
export const GROUPS = 8; // groups of like parts the form holds
// What a file accepts has a place in the form, and nothing else has.
export const DAYS = data.planWords.hours;
const IGNITION = data.planWords.ignition;
const SANDERS = data.planWords.sanders;

// ---- a run: {done: [{step, slots: [{start, end}]}]} in the page; in the file, each slot is a line

export function runInFile(run, now) {
  function word(iso) {
    return iso.replace('T', ' ');
  }
  return {
    saved: word(now.slice(0, 16)),
    done: run.done.map(d => ({ step: d.step, at: d.slots.map(s => word(s.start) + ' to ' + word(s.end)) }))
  };
}

function runFromFile(told) {
  const run = { done: told.done.map(d => ({ step: d.step, slots: d.at.map(slotFromFile) })) };
  if (!isDay(told.saved.slice(0, 10)) || !saved.soundRun(run)) {
    throw new Error('a step is done at a time that is in no calendar, or ends before it begins');
  }
  return run;
}

function slotFromFile(text) {
  const ends = text.split(' to ');
  return { start: ends[0].replace(' ', 'T'), end: ends[1].replace(' ', 'T') };
}

// ---- values -> file

function slug(title) {
  const s = title
    .toLowerCase()
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  return /^[a-z]/.test(s) ? s.slice(0, 60) : 'plan-' + (s || 'of-mine').slice(0, 50);
}

function surfaceOf(v, n) {
  switch (v['surface-' + n]) {
    case 'ball-nose':
      return { 'ball-nose': { diameter: v['a-' + n] + ' mm', stepover: v['b-' + n] + ' mm' } };
    case 'straight-cut':
      return { 'straight-cut': { diameter: v['a-' + n] + ' mm', 'chip-load': v['b-' + n] + ' mm' } };
    case 'planed':
      return { planed: { pitch: v['b-' + n] + ' mm', radius: v['a-' + n] + ' mm' } };
    case 'sanded':
      return { sanded: v['grade-' + n] };
    default:
      return { sawn: v['surface-' + n] };
  }
}

function partOf(v, n) {
  return {
    name: v['name-' + n].trim() || 'part ' + n,
    count: v['count-' + n],
    length: v['length-' + n] + ' mm',
    width: v['width-' + n] + ' mm',
    thickness: v['thickness-' + n] + ' mm',
    grain: v['grain-' + n],
    boards: v['boards-' + n],
    surface: surfaceOf(v, n),
    machining: v['machining-' + n] + ' min',
    moves: v['moves-' + n]
  };
}

function spans(text) {
  return text
    .split(',')
    .map(s => s.trim().replace(/\s*[-–]\s*/, '-'))
    .filter(Boolean);
}

// The words whose fields are ticked, in the order of the form.
function ticked(v, what) {
  return Object.keys(v)
    .filter(name => name.startsWith(what) && v[name])
    .map(name => name.slice(what.length));
}

function shopOf(v) {
  const shop = {
    climate: climateOf(v),
    hours: hoursOf(v),
    'days-off': spans(v.off),
    volume: v.volume + ' m3',
    'air-changes': v.changes,
    'mixing-factor': v.mixing,
    ignition: ticked(v, 'ignition-'),
    grades: grades.filter(g => v['shelf-' + g]),
    sanders: ticked(v, 'sander-'),
    clamps: { count: v.clamps, force: v.force + ' N', caul: v.caul + ' mm', jaw: v.jaw + ' mm' },
    people: v.people
  };
  if (v.settles > 0) {
    shop['glue-settles'] = v.settles + ' h';
  }
  return shop;
}

function climateOf(v) {
  const climate = { low: v.low + ' °C', high: v.high + ' °C', humidity: v.humidity + ' %' };
  if (v.heated) {
    climate.heating = { from: v['heat-from'] + ' h', to: v['heat-to'] + ' h', at: v['heat-at'] + ' °C' };
  }
  const nights = nightWords.read(v.nights || '');
  if (nights.length) {
    climate.nights = nights.map(nightWords.inFile);
  }
  return climate;
}

function hoursOf(v) {
  const hours = {};
  DAYS.filter(d => spans(v[d]).length).forEach(d => {
    hours[d] = spans(v[d]);
  });
  return hours;
}

export function of(v) {
  const title = v.title.trim() || 'A plan of mine';
  const parts = [];
  for (let n = 1; n <= v.groups; n++) {
    parts.push(partOf(v, n));
  }
  const head = {
    id: slug(v.id || v.title),
    title,
    intro: v.intro.trim() || title,
    start: v.start.replace('T', ' '),
    species: v.species,
    adhesive: v.adhesive
  };
  if (v.transfer > 0) {
    head.transfer = v.transfer + ' %';
  }
  if (v.label > 0) {
    head['adhesive-minimum'] = v.label + ' °C';
  }
  const rest = { place: v.place, boards: { settled: v.settled, moisture: v.moisture + ' %' } };
  return Object.assign(head, finishFields.inFile(v), rest, shopOf(v), { parts });
}

// ---- file -> values

// Older files say only whether a part moves.
function movesOf(word) {
  return word === true ? 'hinged' : word === false ? 'fixed' : words(word);
}

function partValues(part, n, v) {
  const s = part.surface;
  const kind = Object.keys(s)[0];
  v['name-' + n] = part.name;
  v['count-' + n] = part.count;
  ['length', 'width', 'thickness'].forEach(k => {
    v[k + '-' + n] = measure.inUnit(part[k], 'mm');
  });
  v['grain-' + n] = part.grain || 'flat';
  v['boards-' + n] = part.boards;
  v['machining-' + n] = measure.inUnit(part.machining, 'min');
  v['moves-' + n] = movesOf(part.moves);
  v['surface-' + n] = kind === 'sawn' ? s.sawn : kind;
  if (kind === 'ball-nose') {
    v['a-' + n] = measure.inUnit(s[kind].diameter, 'mm');
    v['b-' + n] = measure.inUnit(s[kind].stepover, 'mm');
  }
  if (kind === 'straight-cut') {
    v['a-' + n] = measure.inUnit(s[kind].diameter, 'mm');
    v['b-' + n] = measure.inUnit(s[kind]['chip-load'], 'mm');
  }
  if (kind === 'planed') {
    v['a-' + n] = measure.inUnit(s[kind].radius, 'mm');
    v['b-' + n] = measure.inUnit(s[kind].pitch, 'mm');
  }
  if (kind === 'sanded') {
    v['grade-' + n] = s.sanded;
  }
}

function climateValues(c, v) {
  v.low = measure.inUnit(c.low, '°C');
  v.high = measure.inUnit(c.high, '°C');
  v.humidity = measure.inUnit(c.humidity, '%');
  v.heated = c.heating !== undefined;
  v.nights = nightWords.written((c.nights || []).map(nightWords.fromFile));
  if (v.heated) {
    v['heat-from'] = measure.inUnit(c.heating.from, 'h');
    v['heat-to'] = measure.inUnit(c.heating.to, 'h');
    v['heat-at'] = measure.inUnit(c.heating.at, '°C');
  }
}

function shelfValues(file, v) {
  const shelf = shop(file, 'grades');
  grades.forEach(g => {
    v['shelf-' + g] = shelf.indexOf(g) >= 0;
  });
  SANDERS.forEach(s => {
    v['sander-' + s] = shop(file, 'sanders').indexOf(s) >= 0;
  });
  const strange = shelf.filter(g => grades.indexOf(g) < 0);
  if (strange.length) {
    throw new Error('“' + strange[0] + '” is no FEPA P grade');
  }
}

function clampValues(file, v) {
  const c = shop(file, 'clamps');
  v.clamps = c.count;
  v.force = measure.inUnit(c.force, 'N');
  v.caul = measure.inUnit(c.caul, 'mm');
  v.jaw = measure.inUnit(c.jaw, 'mm');
  v.people = shop(file, 'people');
  v.transfer = file.transfer === undefined ? 0 : measure.inUnit(file.transfer, '%');
  const settles = shop(file, 'glue-settles');
  v.settles = settles === undefined ? 0 : measure.inUnit(settles, 'h');
}

function partsValues(file, v) {
  if (file.parts.length > GROUPS) {
    throw new Error('this page holds ' + GROUPS + ' groups of parts, the file has ' + file.parts.length);
  }
  v.groups = file.parts.length;
  file.parts.forEach((p, i) => partValues(p, i + 1, v));
}

function headValues(file, v) {
  v.title = words(file.title);
  v.intro = words(file.intro);
}

/** The least temperature on the label, °C; 0 where the plan says none. */
export function labelOf(file) {
  const label = file['adhesive-minimum'];
  return label === undefined ? 0 : measure.inUnit(label, '°C');
}

function recordValues(file, v) {
  v.species = words(file.species);
  v.adhesive = words(file.adhesive);
  v.label = labelOf(file);
  v.place = words(file.place);
}

function boardValues(boards, v) {
  v.settled = boards.settled;
  v.moisture = measure.inUnit(boards.moisture, '%');
}

function hourValues(file, v) {
  const hours = shop(file, 'hours');
  DAYS.forEach(d => {
    v[d] = (hours[d] || []).join(', ');
  });
  v.off = (shop(file, 'days-off') || []).map(words).join(', ');
}

function roomValues(file, v) {
  v.volume = measure.inUnit(shop(file, 'volume'), 'm3');
  v.changes = shop(file, 'air-changes');
  v.mixing = shop(file, 'mixing-factor');
  IGNITION.forEach(s => {
    v['ignition-' + s] = shop(file, 'ignition').indexOf(s) >= 0;
  });
}

function finishesValues(file, v) {
  if (finishFields.ofFile(file).length > finishFields.MOST) {
    throw new Error('this page holds ' + finishFields.MOST + ' finishes, the file has ' + file.finishes.length);
  }
  finishFields.values(file, v);
}

// What is read of a file, and how it is called where it can't be.
const READERS = [
  ['id', (file, v) => (v.id = words(file.id))],
  ['title', headValues],
  ['start', (file, v) => (v.start = words(file.start).replace(' ', 'T'))],
  ['species, adhesive and place', recordValues],
  ['finish', finishesValues],
  ['boards', (file, v) => boardValues(file.boards, v)],
  ['climate', (file, v) => climateValues(shop(file, 'climate'), v)],
  ['hours', hourValues],
  ['volume and air', roomValues],
  ['grades and sanders', shelfValues],
  ['clamps and people', clampValues],
  ['run', (file, v, out) => (out.run = file.run === undefined ? null : runFromFile(file.run))],
  ['parts', partsValues]
];

function problem(what, e) {
  const words = e instanceof TypeError ? 'it is missing or not what stands here in a plan file.' : e.message + '.';
  return what + ': ' + words;
}

// What is wrong in the form of a file, in words: "parts, item 1, count: “0” is too small. The least is 1."
function told({ path, what, todo }) {
  const at = path.map(part => (/^\d+$/.test(part) ? 'item ' + (Number(part) + 1) : part)).join(', ');
  const words = (what + '. ' + todo).replace(/`([^`]*)`/g, '“$1”');
  return (at ? at + ': ' : '') + words;
}

export function values(file) {
  const wrong = engine.planForms(file);
  const forms = wrong.filter(p => !p.isOutOfBounds).map(told);
  const out = { values: {}, problems: [], bounds: wrong.map(told), run: null };
  if (forms.length) {
    return { values: out.values, problems: forms };
  }
  READERS.forEach(([what, reader]) => {
    try {
      reader(file, out.values, out);
    } catch (e) {
      out.problems.push(problem(what, e));
    }
  });
  // The form tells of a number that is too large in the reader's own words and units; the schema of any it let by.
  return out;
}

function words(x) {
  if (typeof x !== 'string') {
    throw new TypeError('no words');
  }
  return x.trim();
}

// What the form says of the shop by itself.
export function ownShop() {
  return shopFile;
}

// What a file says of the shop, or what the form says by itself.
export function shop(file, key) {
  return file[key] === undefined ? shopFile[key] : file[key];
}

// What stands in the form by itself, as a file: it fills in what a plan file leaves out.
export function startFrom(file) {
  shopFile = file;
}
