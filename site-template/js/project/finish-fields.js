// The finishes of a plan in the form and in the file: the first on the wood has fields without a number (finish,
// sheen ...), as addresses have had since a plan took one; those over it have finish-2 and so on.

import * as measure from '../planner/measure.js';
import { data } from '../planner/records.js';

export const MOST = 6;

function field(what, n) {
  return n === 1 ? what : what + '-' + n;
}

// The names of the fields that choose a finish.
export function choosers() {
  return Array.from({ length: MOST }, (none, i) => field('finish', i + 1));
}

// Those a form's values put on, the first on the wood first.
export function chosen(v) {
  return choosers()
    .slice(0, v.layers)
    .map(name => data.finish(v[name]));
}

function one(v, n) {
  const finish = {
    record: v[field('finish', n)],
    sheen: v[field('sheen', n)],
    coats: v[field('coats', n)],
    method: v[field('method', n)]
  };
  if (v[field('film', n)] > 0) {
    finish['wet-film'] = v[field('film', n)] + ' µm';
  }
  return finish;
}

// One finish is a finish in the file, several are a list.
export function inFile(v) {
  const all = chosen(v).map((finish, i) => one(v, i + 1));
  return all.length === 1 ? { finish: all[0] } : { finishes: all };
}

export function ofFile(file) {
  return file.finishes || [file.finish];
}

function word(x) {
  return x.toLowerCase().replace(/_/g, '-');
}

// What a file leaves out is as the record has it.
export function values(file, v) {
  const all = ofFile(file);
  v.layers = all.length;
  all.forEach((finish, i) => {
    const n = i + 1;
    const record = data.finish(finish.record);
    if (!record) {
      throw new Error('there is no finish “' + finish.record + '” that goes on in coats');
    }
    v[field('finish', n)] = finish.record;
    v[field('sheen', n)] = finish.sheen || word(record.usual.sheen);
    v[field('coats', n)] = finish.coats || record.usual.coats;
    v[field('method', n)] = finish.method || word(record.usual.method);
    v[field('film', n)] = finish['wet-film'] === undefined ? 0 : measure.inUnit(finish['wet-film'], 'µm');
  });
}

// Another finish is laid on in its usual coats; a way or a sheen it does not come in gives way to one it does.
function usual(name) {
  const n = choosers().indexOf(name) + 1;
  return (id, v) => {
    const record = data.finish(id);
    const finish = record.finish;
    const values = {};
    const method = v[field('method', n)];
    const sheen = v[field('sheen', n)];
    values[field('coats', n)] = record.usual.coats;
    values[field('method', n)] = finish.methods.indexOf(method) >= 0 ? method : finish.methods[0];
    values[field('sheen', n)] =
      !finish.sheens.length || finish.sheens.indexOf(sheen) >= 0 ? sheen : finish.sheens[0];
    return values;
  };
}

export function follows() {
  const all = {};
  choosers().forEach(name => {
    all[name] = usual(name);
  });
  return all;
}

// A sheen is asked only of what comes in several: a film, or an oil or wax sold in more than one.
export function askSheens(v, fields) {
  chosen(v).forEach((record, i) => {
    fields.element(field('sheen', i + 1)).parentNode.hidden = record.finish.sheens.length < 2;
  });
}
