// The engine for pages: plain objects in, plain objects out. Each function takes an object whose keys are
// the components of the engine's request, in SI units, and gives {given: true, value, working, cautions},
// or {given: false, reasons} where a rule refuses, or {given: false, broken: 'what is wrong'} where it is
// no request. None of them ever throws, and none changes what it is given.

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

export const plan = request => call('plan', request);
export const sanding = request => call('sanding', request);
export const machineOrSand = request => call('machineOrSand', request);
export const shelfGap = request => call('shelfGap', request);
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
