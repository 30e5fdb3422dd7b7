// What every part of the project planner works at: the form's fields, the line that tells what happened, and the
// way out as a file.

import { el } from '../page/dom.js';

const KEPT_MILLIS = 10000; // a file handed out is let go after so long
let seated = null;

// Called once, before anything else here.
export function seat(fields) {
  seated = fields;
}

export function fields() {
  return seated;
}

// The plan is laid out anew from what stands in the form.
export function again() {
  seated.set({});
}

export function say(...words) {
  document.getElementById('plan-tell').replaceChildren(...words);
}

export function name() {
  return seated.values.title.trim() || 'A plan of mine';
}

export function download(name, type, text) {
  const a = el('a', { href: window.URL.createObjectURL(new window.Blob([text], { type: type })), download: name });
  document.body.append(a);
  a.click();
  a.remove();
  window.setTimeout(() => {
    window.URL.revokeObjectURL(a.href);
  }, KEPT_MILLIS);
}
