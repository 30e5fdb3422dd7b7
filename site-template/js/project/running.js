// The run of a plan, while there is one: what is done and when, and the name its ticks are kept under.

import * as dates from '../planner/dates.js';

let run = null; // {done: [{step, slots}]} while a plan is run
let mine = null; // the name it is kept under, which is this run's own

export function now() {
  return dates.minute(new Date()) + ':00';
}

export function active() {
  return run !== null;
}

// The ticks as they are kept; null where no plan is run.
export function ticks() {
  return run;
}

export function done() {
  return run.done;
}

export function isDone(id) {
  return run.done.some(d => d.step === id);
}

// What the engine is asked to go on from.
export function progress() {
  return run ? { resume: now(), done: run.done } : null;
}

export function begin(done, name) {
  run = { done };
  mine = name;
}

export function end() {
  run = null;
  mine = null;
}

export function ownName() {
  return mine;
}

export function owns(name) {
  return run !== null && name === mine;
}

// From now on the ticks are kept under this name.
export function own(name) {
  if (run) {
    mine = name;
  }
}
