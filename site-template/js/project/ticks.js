// Keeps the ticks of a run in this browser, and says so where it can't.

import * as desk from './desk.js';
import * as kept from './kept.js';
import * as planFile from './plan-file.js';
import * as running from './running.js';
import * as saved from './saved.js';
import * as unkept from './unkept.js';

// Nothing while no plan is run.
export function keep() {
  if (!running.active()) {
    return;
  }
  if (desk.name() !== running.ownName()) {
    running.own(kept.claim());
  }
  const problem = saved.keep({ name: running.ownName(), address: desk.fields().address(), run: running.ticks() });
  if (problem) {
    unkept.show(inFile(), problem);
  } else {
    unkept.clear(inFile().title);
  }
  kept.list();
}

// The plan as a file, with its ticks while it is run.
export function inFile() {
  const file = planFile.of(desk.fields().values);
  if (running.active()) {
    file.run = planFile.runInFile(running.ticks(), running.now());
  }
  return file;
}
