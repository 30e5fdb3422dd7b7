// Ticks of a run that this browser could not keep: said for as long as it is so, with a way out as a file.
// The plan is held here as it was ticked, so that stopping the run or opening another plan loses nothing either.

import * as desk from './desk.js';
import * as saved from './saved.js';

const banner = document.getElementById('run-unkept');
const words = document.getElementById('run-unkept-words');
let held = []; // plan files with their ticks, one of a title
let out = false; // whether they have been handed out as they stand

function others(title) {
  return held.filter(file => file.title !== title);
}

function titles() {
  return held.map(file => '“' + file.title + '”').join(' and ');
}

export function show(file, problem) {
  held = others(file.title).concat([file]);
  out = false;
  tell('The ticks of ' + titles() + ' are not kept: they are lost when this page is closed. ' + problem);
}

// Said again only if it is something else: a screen reader is told each time the words are set.
function tell(text) {
  if (words.textContent !== text) {
    words.textContent = text;
  }
  banner.hidden = held.length === 0;
}

// The ticks of this plan are kept now.
export function clear(title) {
  const rest = others(title);
  if (rest.length < held.length) {
    held = rest;
    tell(held.length ? 'The ticks of ' + titles() + ' are not kept: they are lost when this page is closed.' : '');
  }
}

function save() {
  held.forEach(file => {
    desk.download(file.id + '.yaml', 'text/yaml', saved.toYaml(file));
  });
  out = true;
  tell(
    'The ticks of ' + titles() + ' are handed out as a file, but this browser still keeps none. Open the file to go on.'
  );
}

export function stands() {
  return held.length > 0;
}

// Watches over them until the page is left; called once.
export function ready() {
  document.getElementById('run-unkept-save').addEventListener('click', save);
  window.addEventListener('beforeunload', e => {
    if (held.length && !out) {
      e.preventDefault();
    }
  });
}
