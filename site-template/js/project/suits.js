// What the tables say of the records of a plan file: with what a finish agrees where the parts will live, an
// adhesive with its use and its wood, and what goes over what. Decided by the build; looked up here.

import { data } from '../planner/records.js';

function pairing(subject, title, column, i) {
  const cell = column.cells[i];
  if (cell === undefined) {
    return null; // there is no such table
  }
  const pair = title + column.after;
  if (cell === 0) {
    return { subject, pair, verdict: 'GOOD', why: [], instead: [] };
  }
  return { subject, pair, verdict: cell[0], why: cell[1].map(data.suits.sentence), instead: cell[2] };
}

/** @return {!Suits} */
export function of(file, finishes) {
  const tables = data.suits;
  const adhesive = data.adhesive(file.adhesive);
  const species = data.species(file.species);
  const at = tables.atPlace[file.place];
  const use = tables.inUse[file.place];
  const wood = tables.onWood[species.number];
  return {
    glue: [
      pairing('ADHESIVE_IN_USE', adhesive.title, use, adhesive.number),
      pairing('ADHESIVE_ON_WOOD', adhesive.title, wood, adhesive.number)
    ].filter(Boolean),
    finishes: finishes.map(f => pairing('FINISH_AT_PLACE', f.title, at, f.number)).filter(Boolean),
    over: tables.over,
    barriers: tables.barriers
  };
}
