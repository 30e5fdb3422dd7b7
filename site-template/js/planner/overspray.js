// What a gun sprays past the part, and how long it hangs in the room.

import { heading } from '../page/dom.js';
import * as engine from './engine.js';
import * as figureText from './figure-text.js';
import { room } from './sanding-dust.js';
import * as view from './view.js';

function figures(answer) {
  const value = answer.value;
  const times = figureText.text(value.peakIndex, value.peakIndex, 'ratio') + ' × the limit for dust';
  const clear = value.clearSecond > 0 ? view.q(value.clearSecond, 'second') : 'at once';
  return view.glance([
    view.figure('Past the part', view.q(value.mistKilogram, 'kilogram'), view.line(answer, 'MIST_MADE'), ' of solids'),
    view.figure('Floating in the room', times, view.line(answer, 'MIST_HIGHEST_SHARE')),
    view.figure('Down to that limit after', clear, view.line(answer, 'CLEAR_AFTER_SPRAYING'))
  ]);
}

// The overspray of one coat; nothing for a coat that is not sprayed.
export function overspray(finish, v, f) {
  if (v.method !== 'SPRAY') {
    return null;
  }
  const answer = engine.mist({
    room: room(v),
    gun: v.gun,
    sprayed: { liquidCubicMetre: f.si('liquid'), solidsByVolume: finish['solids-by-volume'] },
    sprayingSecond: f.si('spraying'),
    transfer: null,
    isocyanate: finish.isocyanate
  });
  return [
    heading('Overspray of one coat'),
    answer.given
      ? [figures(answer), view.cautions(answer.cautions), view.working(answer.working)]
      : view.refused(answer)
  ];
}
