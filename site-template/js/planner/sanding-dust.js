// The dust a sanding leaves in the air of the room, against its limit.

import { el, heading } from '../page/dom.js';
import * as engine from './engine.js';
import * as figureText from './figure-text.js';
import * as view from './view.js';

// The room as a request takes it.
export function room(v) {
  return {
    volume: v.volume,
    outdoorFlow: (v.volume * v.changes) / 3600,
    mixingFactor: v.mixing,
    celsius: v.celsius
  };
}

// The question: what was sanded off, how long it took, what catches it.
export function ask(totals, v) {
  return {
    room: room(v),
    source: v.dust,
    removedKilogram: totals.dustKilogram,
    sandingSecond: totals.seconds,
    capture: v.capture,
    airborneShare: null
  };
}

function times(index) {
  return figureText.text(index, index, 'ratio') + ' × the limit';
}

function clear(second) {
  if (second === null || second === undefined) {
    return 'not in sixty days: air the room';
  }
  return second > 0 ? view.q(second, 'second') : 'at once';
}

function figures(answer) {
  const value = answer.value;
  const air = 'airborne-kilogram-per-cubic-metre';
  return view.glance([
    view.figure(
      'In the air at the end',
      view.q(value.peakKilogramPerCubicMetre, air),
      view.line(answer, 'HIGHEST_DUST_IN_THE_AIR'),
      ' ' + times(value.peakIndex)
    ),
    view.figure('Over eight hours', times(value.eightHourIndex), view.line(answer, 'DUST_EIGHT_HOUR_SHARE')),
    view.figure('The limit', view.q(value.limitKilogramPerCubicMetre, air), null, ' ' + view.from(value.limitFrom)),
    view.figure('Mask', value.respirator.words),
    view.figure('Keep it on after', clear(value.clearSecond), view.line(answer, 'CLEAR_AFTER_SANDING')),
    view.figure(
      'Air needed',
      view.q(value.flowNeeded, 'cubic-metre-per-second'),
      view.line(answer, 'DUST_OUTDOOR_AIR_NEEDED')
    )
  ]);
}

// What the dust of a sanding does to the air: figures, what to do, the working; or why not to sand it.
export function dust(totals, v) {
  const title = heading('Dust in the air');
  if (totals.seconds < 1) {
    return null;
  }
  const answer = engine.dust(ask(totals, v));
  return [title, answer.given ? told(answer) : view.refused(answer)];
}

// The answer: figures, what to do, the working.
export function told(answer) {
  const rough = 'How much of the dust hangs in the air is a rough figure: a limit missed by little is a limit missed.';
  return [
    figures(answer),
    view.cautions(answer.cautions),
    el('p', { class: 'note' }, rough),
    view.working(answer.working)
  ];
}
