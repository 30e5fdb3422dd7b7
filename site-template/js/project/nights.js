// Nights that were colder or warmer than planned: chosen from those of the run, added, listed, taken out.
// After each change the plan is laid out again and one line says what moved.

import { el } from '../page/dom.js';
import * as dates from '../planner/dates.js';
import * as engine from '../planner/engine.js';
import * as figureText from '../planner/figure-text.js';
import { parse } from '../planner/measure.js';
import * as view from '../planner/view.js';
import * as desk from './desk.js';
import * as nightWords from './night-words.js';
import * as planFile from './plan-file.js';
import * as planRequest from './plan-request.js';
import * as running from './running.js';
import * as steps from './steps.js';
import * as ticks from './ticks.js';

const AHEAD = 2; // nights after tonight that can be chosen
const MOST = 60;
let opened = false; // whether the fold is open: it is made anew with each answer
let told = ''; // what the last change moved

function nights() {
  return nightWords.read(desk.fields().values.nights);
}

function find(date) {
  return nights().find(n => n.date === date) || null;
}

function celsius(value) {
  return view.q(value, 'celsius');
}

// ---- which nights

function shifted(date, days) {
  return new Date(Date.parse(date + 'T00:00Z') + days * 86400000).toISOString().slice(0, 10);
}

// From the night before the run began, whose morning may still be cold, to the next two; the newest first.
function choices(now, begun) {
  const list = [];
  const last = shifted(now.slice(0, 10), AHEAD);
  const first = shifted(begun.slice(0, 10), -1);
  for (let d = last; d >= first && list.length < MOST; d = shifted(d, -1)) {
    list.push(d);
  }
  return list;
}

function called(date) {
  return dates.shortDay(date) + ' to ' + dates.shortDay(shifted(date, 1));
}

function option(date, now) {
  const name = date === shifted(now.slice(0, 10), -1) ? ' (last night)' : date === now.slice(0, 10) ? ' (tonight)' : '';
  return el('option', { value: date }, called(date) + name);
}

// ---- what moved

function laid(text) {
  const request = planRequest.request(planFile.of(Object.assign({}, desk.fields().values, { nights: text })));
  if (running.progress()) {
    request.progress = running.progress();
  }
  return engine.plan(request);
}

function done(step) {
  const progress = running.progress();
  return progress !== null && progress.done.some(d => d.step === step.id);
}

// "at 11:40 instead of 8:15" on one day, else both with their days.
function instead(now, before) {
  if (now.slice(0, 10) !== before.slice(0, 10)) {
    return (
      dates.shortDay(now) +
      ' at ' +
      dates.clock(now) +
      ' instead of ' +
      dates.shortDay(before) +
      ' at ' +
      dates.clock(before)
    );
  }
  return dates.shortDay(now) + ' at ' + dates.clock(now) + ' instead of ' + dates.clock(before);
}

function moved(before, after) {
  if (!after.given) {
    return 'With this, what is left can\u2019t be laid out: the reasons stand below.';
  }
  if (!before.given) {
    return 'The plan is laid out again.';
  }
  const was = new Map(before.value.steps.map(s => [s.id, s.slots[0].start]));
  const first = after.value.steps.find(
    s => s.kind === 'WORK' && !done(s) && was.has(s.id) && was.get(s.id) !== s.slots[0].start
  );
  const ends = [steps.end(after.value), steps.end(before.value)];
  const cured = ends[0] === ends[1] ? '' : 'All is fully cured ' + instead(ends[0], ends[1]) + '.';
  if (first) {
    return (
      first.title +
      (first.task === 'COAT' ? ' can go on ' : ' can begin ') +
      instead(first.slots[0].start, was.get(first.id)) +
      '.' +
      (cured ? ' ' + cured : '')
    );
  }
  return cured || 'Nothing in the plan moves.';
}

// ---- changing

function put(list, focus) {
  const text = nightWords.written(list);
  const before = laid(desk.fields().values.nights);
  told = moved(before, laid(text));
  desk.fields().set({ nights: text });
  ticks.keep();
  desk.fields().answerNow();
  desk.say(told);
  const next = document.getElementById(focus);
  if (next) {
    next.focus();
  }
}

function without(date) {
  return nights().filter(n => n.date !== date);
}

function remove(date) {
  put(without(date), 'night-date');
}

function add() {
  const date = document.getElementById('night-date').value;
  const low = read('night-low');
  const high = read('night-high');
  const still = document.getElementById('night-still');
  const there = find(date);
  const night = { date: date, low: low, high: high };
  if (there && there.humidity !== undefined) {
    night.humidity = there.humidity;
  }
  if (still && still.checked) {
    night.heated = false;
  }
  const wrong = document.getElementById('night-wrong');
  try {
    if (isNaN(low) || isNaN(high)) {
      throw new Error('the coldest and the warmest have to be temperatures such as ' + shown(4));
    }
    const list = without(date).concat([night]);
    nightWords.written(list);
    put(list, 'night-add');
  } catch (problem) {
    wrong.textContent = problem.message.charAt(0).toUpperCase() + problem.message.slice(1) + '.';
  }
}

function read(id) {
  return parse(document.getElementById(id).value, '°C');
}

// A temperature as the reader's thermometer shows it, with its unit.
function shown(value) {
  return figureText.text(value, value, 'celsius').replace(/\u00a0/g, ' ');
}

// ---- what stands on the page

function item(n) {
  const b = el('button', { type: 'button', 'aria-label': 'Remove the night ' + called(n.date) }, 'Remove');
  b.addEventListener('click', () => {
    remove(n.date);
  });
  return el(
    'li',
    null,
    el(
      'span',
      null,
      called(n.date) + ': ',
      celsius(n.low),
      ' at the coldest, ',
      celsius(n.high),
      ' the afternoon before',
      n.humidity === undefined ? '' : [' at ', view.q(n.humidity, 'percent')],
      n.heated === false ? ', heater off' : ''
    ),
    b
  );
}

function list(all) {
  return all.length
    ? el('ul', { class: 'night-list', 'aria-label': 'Nights colder or warmer than planned' }, all.map(item))
    : null;
}

function box(id, words, value) {
  return el(
    'p',
    null,
    el('label', { for: id }, words),
    el('input', { id: id, inputmode: 'text', autocomplete: 'off', value: shown(value) })
  );
}

const COUNTS =
  'It counts from that afternoon, by way of the coldest hour at five, to the next afternoon. Every other day stays ' +
  'as planned; to change the room for good, stop running and change the form.';

// The fields of a night; the values follow the night that is chosen.
function inputs(now, begun) {
  const v = desk.fields().values;
  const select = el(
    'select',
    { id: 'night-date' },
    choices(now, begun).map(d => option(d, now))
  );
  select.value = shifted(now.slice(0, 10), -1); // always there: the list begins no later
  const low = box('night-low', 'Coldest, towards morning', v.low);
  const high = box('night-high', 'Warmest, the afternoon before', v.high);
  const tick = el('input', { type: 'checkbox', id: 'night-still' });
  const fill = () => {
    const n = find(select.value) || v;
    low.lastChild.value = shown(n.low);
    high.lastChild.value = shown(n.high);
    tick.checked = n.heated === false;
  };
  select.addEventListener('change', fill);
  fill();
  const still = v.heated ? el('label', { class: 'night-still' }, tick, ' The heater was off') : null;
  return [el('p', null, el('label', { for: 'night-date' }, 'The night'), select), low, high, still];
}

// The control in a plan that is run: now and begun are moments.
export function control(now, begun) {
  const button = el('button', { type: 'button', id: 'night-add' }, 'Add');
  button.addEventListener('click', add);
  const fold = el(
    'details',
    { class: 'nights' },
    el('summary', null, 'Was a night colder (or warmer) than planned?'),
    el('div', { class: 'night-add' }, inputs(now, begun), el('p', null, button)),
    el('p', { id: 'night-wrong', class: 'field-wrong', role: 'alert' }),
    told ? el('p', { class: 'night-told' }, told) : null,
    list(nights()),
    el('p', { class: 'quiet' }, COUNTS)
  );
  fold.open = opened;
  fold.addEventListener('toggle', () => {
    opened = fold.open;
  });
  return fold;
}

// Under a plan that is not run: only if there are any. Takes the nights as the address has them.
export function listed(text) {
  const there = list(nightWords.read(text));
  return there
    ? el('section', { class: 'nights' }, el('h2', null, 'Nights colder or warmer than planned'), there)
    : null;
}

export function quiet() {
  told = '';
}
export function forget() {
  told = '';
  opened = false;
}
