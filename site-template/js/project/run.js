// Running a plan: the next thing to do and its countdown on one screen, big enough for arm's length.
// Steps are ticked off; one done late, or a night that was colder than planned, moves what follows:
// the engine lays out the rest again from what is done and from now.

import { el } from '../page/dom.js';
import * as dates from '../planner/dates.js';
import * as view from '../planner/view.js';
import * as desk from './desk.js';
import * as nights from './nights.js';
import * as running from './running.js';
import * as steps from './steps.js';
import * as ticks from './ticks.js';
import * as unkept from './unkept.js';

let ticking = 0;

function next(plan) {
  return plan.steps.find(s => s.kind === 'WORK' && !running.isDone(s.id)) || null;
}

function apart(from, to) {
  return (Date.parse(to + 'Z') - Date.parse(from + 'Z')) / 1000;
}

// A step done at a moment: its planned stretches, moved so that the last ends then.
function tick(step, at) {
  const last = step.slots[step.slots.length - 1];
  const shift = apart(last.end, at);
  running.done().push({
    step: step.id,
    slots: step.slots.map(s => ({ start: steps.plus(s.start, shift), end: steps.plus(s.end, shift) }))
  });
  nights.quiet();
  ticks.keep();
  desk.again();
  desk.say('“' + step.title + '” is done' + (unkept.stands() ? ', but that is not kept in this browser.' : '.'));
}

function undo() {
  running.done().pop();
  nights.quiet();
  ticks.keep();
  desk.again();
  desk.say('The last tick is taken back' + (unkept.stands() ? ', but that is not kept in this browser.' : '.'));
}

function start() {
  if (running.active()) {
    stop();
    return;
  }
  running.begin([], null);
  desk.fields().set({ start: running.now().slice(0, 16) });
  ticks.keep();
  begin();
}

// Goes on with a plan whose ticks were kept.
export function resume(plan) {
  running.begin(plan.run.done, plan.name);
  begin();
}

// Goes on with ticks that come from a file: from now on they are kept here too, under a name that is free.
export function resumeFile(more) {
  running.begin(more.done, null);
  ticks.keep();
  begin();
}

function begin() {
  document.body.classList.add('running');
  document.getElementById('plan-run').textContent = 'Stop running';
  window.clearInterval(ticking);
  ticking = window.setInterval(beat, 1000);
  desk.again();
  document.getElementById('answer').scrollIntoView();
}

function stop() {
  running.end();
  nights.forget();
  window.clearInterval(ticking);
  document.body.classList.remove('running');
  document.getElementById('plan-run').textContent = 'Start now';
  desk.again();
}

let beats = 0;
function beat() {
  const clock = document.getElementById('run-clock');
  if (clock) {
    clock.textContent = countdown(clock.dataset.to);
  }
  beats++;
  // Room may have been made meanwhile.
  if (beats % 60 === 0 && unkept.stands()) {
    ticks.keep();
  }
  // Every minute the plan is laid out again: what is late moves on. Not while someone types in it.
  if (beats % 60 === 0 && !document.getElementById('answer').contains(document.activeElement)) {
    desk.again();
  }
}

function countdown(to) {
  const left = Math.round((new Date(to).getTime() - Date.now()) / 1000);
  if (left <= 0) {
    return 'now';
  }
  if (left >= 172800) {
    return Math.floor(left / 86400) + ' days ' + Math.floor((left % 86400) / 3600) + ' h';
  }
  return Math.floor(left / 3600) + ':' + dates.two(Math.floor((left % 3600) / 60)) + ':' + dates.two(left % 60);
}

function waiting(plan, step) {
  const at = running.now();
  const wait = plan.steps.find(
    s => s.kind === 'WAIT' && s.slots[0].start <= at && s.slots[0].end > at && s.slots[0].end <= step.slots[0].start
  );
  return wait ? wait.title : '';
}

// Why not yet: a joint that is not set, a coat that is not ready. The button stays, the reason stands above it.
function tooSoon(step, wait) {
  const opens = step.window && step.window.opens > running.now() ? step.window.opens : wait ? step.slots[0].start : '';
  return opens > running.now()
    ? el(
        'p',
        { class: 'caution-line' },
        'Not before ',
        dates.moment(opens),
        wait ? ': ' + wait.charAt(0).toLowerCase() + wait.slice(1) + '.' : '.'
      )
    : null;
}

// Rags, vapour and glue do not stop being dangerous when a step is ticked off: what can hurt stays in sight
// until the next work begins.
function still(plan) {
  const last = running.done().length
    ? plan.steps.find(s => s.id === running.done()[running.done().length - 1].step)
    : null;
  const list = last
    ? last.cautions.filter(c => c.severity !== 'WORK').map(c => Object.assign({}, c, { again: false }))
    : [];
  return list.length
    ? el('details', { open: '' }, el('summary', null, 'Still true after “' + last.title + '”'), view.cautions(list))
    : null;
}

function doneButton(step) {
  const b = el('button', { type: 'button', class: 'run-done' }, 'Done now');
  b.addEventListener('click', () => {
    tick(step, running.now());
  });
  return b;
}

function doneAt(step) {
  const input = el('input', { type: 'datetime-local', id: 'run-at', value: running.now().slice(0, 16) });
  const b = el('button', { type: 'button' }, 'Done then');
  b.addEventListener('click', () => {
    if (/^\d{4}-\d\d-\d\dT\d\d:\d\d$/.test(input.value)) {
      tick(step, input.value + ':00');
    }
  });
  return el(
    'details',
    null,
    el('summary', null, 'It was done at another time'),
    el('p', { class: 'run-at' }, el('label', { for: 'run-at' }, 'Done at'), input, b)
  );
}

// The moment the run began: its start, or its first step if that was done earlier.
function begun() {
  return running
    .done()
    .reduce((first, d) => (d.slots[0].start < first ? d.slots[0].start : first), desk.fields().values.start);
}

function cold() {
  return nights.control(running.now(), begun());
}

function allDone(plan) {
  return el(
    'section',
    { class: 'run' },
    el('h2', null, 'All done'),
    el('p', { class: 'run-title' }, 'Fully cured ' + dates.day(steps.end(plan)) + '.'),
    undoButton()
  );
}

function clock(begins) {
  const left = el('span', { id: 'run-clock', 'data-to': begins }, countdown(begins));
  return el('p', { class: 'run-clock', role: 'timer', 'aria-live': 'off' }, left);
}

function beginBefore(window_) {
  if (!window_ || !window_.closes) {
    return null;
  }
  return el('p', { class: 'step-window' }, 'Begin before ', dates.moment(window_.closes), ', or scuff first.');
}

export function screen(plan) {
  const step = next(plan);
  if (!step) {
    return [allDone(plan)];
  }
  const begins = step.slots[0].start;
  const wait = waiting(plan, step);
  const notes = step.notes.map(n => el('li', null, view.note(n)));
  const thing = el(
    'section',
    { class: 'run', 'aria-label': 'The next thing to do' },
    el('p', { class: 'run-when' }, apart(running.now(), begins) > 0 ? 'Next, ' + steps.when(step) : 'Now'),
    el('p', { class: 'run-title' }, step.title),
    clock(begins),
    wait ? el('p', { class: 'run-wait' }, 'Until then: ' + wait) : null,
    tooSoon(step, wait),
    still(plan),
    beginBefore(step.window),
    notes.length ? el('ul', { class: 'step-notes' }, notes) : null,
    view.cautions(step.cautions),
    el('p', { class: 'run-buttons' }, doneButton(step), undoButton()),
    doneAt(step),
    cold()
  );
  return [thing, list(plan)];
}

function undoButton() {
  if (!running.done().length) {
    return null;
  }
  const b = el('button', { type: 'button', class: 'run-undo' }, 'Take the last tick back');
  b.addEventListener('click', undo);
  return b;
}

// Beside a refusal: what follows can't be laid out from what is done, so the way back stays in reach.
export function rescue() {
  return el(
    'section',
    { class: 'run', 'aria-label': 'Take it up again' },
    el(
      'p',
      null,
      'What is left can\u2019t be laid out from what is done. Take the last tick back, or put a night ' +
        'right. Stop running to change the room in the form.'
    ),
    el('p', { class: 'run-buttons' }, undoButton()),
    cold()
  );
}

function list(plan) {
  return el(
    'section',
    null,
    el('h2', null, 'All steps'),
    el(
      'ol',
      { class: 'run-list' },
      plan.steps.map(s => {
        const done = s.kind === 'WORK' ? running.isDone(s.id) : s.slots[0].end <= running.now();
        return el(
          'li',
          { class: done ? 'run-is-done' : s.kind === 'WORK' ? '' : 'run-is-wait' },
          el('span', { class: 'run-mark', 'aria-hidden': 'true' }, done ? '✓' : s.kind === 'WORK' ? '○' : '…'),
          el(
            'span',
            null,
            s.title,
            done ? el('span', { class: 'hidden' }, ' (done)') : '',
            el('br'),
            el('span', { class: 'quiet' }, steps.when(s))
          )
        );
      })
    ),
    steps.ladder(plan)
  );
}

export function leave() {
  if (running.active()) {
    stop();
  }
}

// Makes the button live; called once.
export function ready() {
  document.getElementById('plan-run').addEventListener('click', start);
}
