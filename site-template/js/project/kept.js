// Plans kept in this browser, as the reader meets them: the list, the question that is asked when a name
// is taken by another plan, and the way back for a plan that was forgotten. Nothing is written over unasked.

import { el } from '../page/dom.js';
import * as desk from './desk.js';
import * as planFile from './plan-file.js';
import * as running from './running.js';
import * as saved from './saved.js';

const words = document.getElementById('plan-taken');
const choice = document.getElementById('plan-taken-choice');
const replace = document.getElementById('plan-replace');
const both = document.getElementById('plan-both');
const keepButton = document.getElementById('plan-keep');
let opened = plan => {}; // what opens a plan of the list
const gone = []; // forgotten since the page was opened, in that order: {plan, at}

function now() {
  return { name: desk.name(), address: desk.fields().address(), run: running.ticks() || undefined };
}

// ---- a name that is taken

// An address as the plan file it stands for: fields that don't count in it make no other plan.
function file(plan) {
  return planFile.of(desk.fields().readAddress(plan.address).values);
}

function same(a, b) {
  return JSON.stringify([file(a), a.run || null]) === JSON.stringify([file(b), b.run || null]);
}

function taken(plan) {
  const there = saved.find(plan.name);
  return there !== null && !running.owns(plan.name) && !same(there, plan);
}

function put(plan) {
  quiet();
  const problem = saved.keep(plan);
  if (!problem) {
    running.own(plan.name);
  }
  desk.say(problem || '“' + plan.name + '” is kept in this browser.');
  list();
}

export function keep() {
  if (taken(now())) {
    ask();
  } else {
    put(now());
  }
}

// Asked beside the name, where it can be put right as well.
function ask() {
  const name = now().name;
  words.textContent =
    'A plan named “' +
    name +
    '” is kept here already, and it is not the same as this one. ' +
    'Keep both, and this one becomes “' +
    saved.free(name) +
    '”. Nothing is changed until you choose.';
  choice.hidden = false;
  choice.scrollIntoView({ block: 'center' });
  both.focus({ preventScroll: true });
}

export function quiet() {
  words.textContent = '';
  choice.hidden = true;
}

function answered(name) {
  if (name !== desk.name()) {
    rename(name);
  }
  put(now());
  keepButton.focus();
}

// A plan that goes by another name is another plan in a calendar and as a file too.
function rename(name) {
  desk.fields().set({ title: name, id: '' });
}

// The name a run may keep its ticks under. The same plan, kept to be run later, gives way to its run.
export function claim() {
  const name = desk.name();
  const there = saved.find(name);
  if (there && ((there.run && there.run.done && there.run.done.length) || !sameButStart(there, now()))) {
    rename(saved.free(name));
    desk.say('Another plan named “' + name + '” is kept here, so this one is kept as “' + desk.name() + '”.');
  }
  return desk.name();
}

function sameButStart(a, b) {
  return (
    JSON.stringify(Object.assign(file(a), { start: '' })) === JSON.stringify(Object.assign(file(b), { start: '' }))
  );
}

// ---- the list

export function list() {
  const read = saved.read();
  if (read.aside) {
    desk.say(
      'Plans kept here could not be read. They are not lost: they stand aside in this browser as “' + read.aside + '”.'
    );
  }
  const items = read.plans.map(item);
  gone
    .slice()
    .reverse()
    .forEach(g => {
      items.splice(g.at, 0, goneItem(g));
    });
  document.getElementById('plan-list').replaceChildren.apply(document.getElementById('plan-list'), items);
  document.getElementById('plan-kept').hidden = items.length === 0;
}

function item(plan) {
  const open = el('button', { type: 'button', 'data-name': plan.name }, plan.name);
  const drop = el('button', { type: 'button', class: 'quiet-button', 'aria-label': 'Forget ' + plan.name }, 'Forget');
  open.addEventListener('click', () => {
    quiet();
    opened(plan);
  });
  drop.addEventListener('click', () => {
    forget(plan.name);
  });
  return el('li', null, open, drop);
}

function goneItem(g) {
  const undo = el(
    'button',
    { type: 'button', class: 'plan-undo', 'aria-label': 'Undo: bring ' + g.plan.name + ' back' },
    'Undo'
  );
  undo.addEventListener('click', () => {
    bringBack(g);
  });
  g.undo = undo;
  return el('li', { class: 'plan-gone' }, el('span', null, '“' + g.plan.name + '” is forgotten.'), undo);
}

function named(plan, name) {
  if (name === plan.name) {
    return plan;
  }
  const rest = plan.address.split('&').filter(pair => pair && !/^(title|id)=/.test(pair));
  return Object.assign({}, plan, { name: name, address: ['title=' + encodeURIComponent(name)].concat(rest).join('&') });
}

// The page keeps what is forgotten until it is left; where the plan stood, the way back stands.
function forget(name) {
  const g = saved.forget(name);
  if (g) {
    gone.push(g);
  }
  list();
  desk.say(g ? '“' + name + '” is forgotten. Undo stands in its place.' : '“' + name + '” could not be forgotten.');
  if (g) {
    g.undo.focus();
  }
}

function bringBack(g) {
  const plan = named(g.plan, saved.free(g.plan.name));
  const problem = saved.keepAt(plan, g.at);
  if (!problem) {
    gone.splice(gone.indexOf(g), 1);
  }
  list();
  desk.say(problem || '“' + plan.name + '” is back.');
  const back = Array.from(document.querySelectorAll('#plan-list [data-name]')).find(b => b.dataset.name === plan.name);
  if (back) {
    back.focus();
  }
}

export function check() {
  if (taken(now())) {
    ask();
  }
}

// Makes the list and its buttons live; called once, with what opens a plan.
export function ready(open) {
  opened = open;
  replace.addEventListener('click', () => answered(desk.name()));
  both.addEventListener('click', () => answered(saved.free(desk.name())));
  desk.fields().element('title').addEventListener('input', quiet);
  list();
}
