// The engine for pages: plain objects in, plain objects out. Each function takes an object whose keys are
// the components of the engine's request, in SI units, and gives {given: true, value, working, cautions},
// or {given: false, reasons} where a rule refuses, or {given: false, broken: 'what is wrong'} where it is
// no request. None of them ever throws, and none changes what it is given. Below them, what a page shows of figures.

function message(error) {
  try {
    return 'the engine failed: ' + String((error && error.message) || error);
  } catch (e) {
    return 'the engine failed';
  }
}

function call(name, request) {
  try {
    return window.EngineEntry[name](request === undefined ? null : request);
  } catch (error) {
    return { given: false, broken: message(error) };
  }
}

// What a page writes and reads of figures: text and numbers in, a text or a number out. Theirs is the one table
// of units.
function words(name, ...given) {
  return window.EngineEntry[name](...given);
}

export const plan = request => call('plan', request);
export const sanding = request => call('sanding', request);
export const machineOrSand = request => call('machineOrSand', request);
export const shelfGap = request => call('shelfGap', request);
export const drying = request => call('drying', request);
export const dew = request => call('dew', request);
export const coats = request => call('coats', request);
export const grade = request => call('grade', request);
export const dust = request => call('dust', request);
export const mist = request => call('mist', request);
export const sheen = request => call('sheen', request);
export const glueUp = request => call('glueUp', request);
export const air = request => call('air', request);
export const fit = request => call('fit', request);
export const cutting = request => call('cutting', request);
export const reach = request => call('reach', request);
export const tabs = request => call('tabs', request);
export const surfacing = request => call('surfacing', request);
export const planFile = request => call('planFile', request);
export const calendar = request => call('calendar', request);
export const climate = request => call('climate', request);
export const room = request => call('room', request);
export const planForms = file => words('planForms', file);
export const sentence = request => call('sentence', request);
export const days = request => call('days', request);
export const figure = (low, high, unit, system) => words('figure', low, high, unit, system);
export const number = value => words('number', value);
export const setting = (low, high, field, system) => words('setting', low, high, field, system);
export const typed = (text, field, system) => words('typed', text, field, system);
export const shown = (value, field, system) => words('shown', value, field, system);
export const unitOf = (field, system) => words('unitOf', field, system);
export const inEngineUnit = (value, field) => words('inEngineUnit', value, field);
