// Amounts as someone types them, in a field's own metric unit (mm, h, °C ...) and in what stands in its
// place by inches.

import * as engine from './engine.js';
import { system } from './figure-text.js';

// What was typed, in the field's metric unit; a unit typed behind the number wins over the switch. NaN for
// anything else.
export function parse(typed, unit) {
  return engine.typed(String(typed), unit, system());
}

// A metric amount as a form or a plan file has it, in the field's unit.
export function metric(text, unit) {
  return engine.typed(String(text), unit, 'METRIC');
}

// An amount of a plan file in the field's unit; throws if it is none.
export function inUnit(text, unit) {
  const value = metric(text, unit);
  if (isNaN(value)) {
    throw new Error('“' + String(text).slice(0, 30) + '” is not an amount such as 18 ' + unit);
  }
  return value;
}

// A value of the field as the reader's rule, thermometer or tape would read it, without the unit.
export function shown(value, unit) {
  return engine.shown(value, unit, system());
}

export function label(unit) {
  return engine.unitOf(unit, system());
}

// A value of the field in the engine's unit.
export function si(value, unit) {
  return engine.inEngineUnit(value, unit);
}
