// Figures as the engine writes them. Units are the engine's words, in any dress: metre, SQUARE_METRE, square-metre.

import * as units from '../page/units.js';
import * as engine from './engine.js';

function written(low, high, unit, system) {
  return engine.figure(low, high, unit.toUpperCase().replace(/-/g, '_'), system);
}

// A figure or a range in the reader's units: text(0.019, 0.019, 'metre') is "19 mm" or "3/4 in".
export function text(low, high, unit) {
  return written(low, high, unit, system());
}

// What an element carries whose text is such a figure, for the units switch.
export function carried(low, high, unit) {
  return { 'data-metric': written(low, high, unit, 'METRIC'), 'data-imperial': written(low, high, unit, 'IMPERIAL') };
}

// The reader's units, as the engine calls them.
export function system() {
  return units.system().toUpperCase();
}
