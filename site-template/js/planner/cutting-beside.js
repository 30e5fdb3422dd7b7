// What a cut takes beside speed and passes: does the bit reach, tabs to hold the part, flattening a face.

import { el, listOf } from '../page/dom.js';
import * as engine from './engine.js';
import * as figureText from './figure-text.js';
import * as view from './view.js';

function reach(cut, bit, f, v) {
  const bearing =
    v.bearing === 'NONE' ? null : { seat: v.bearing, diameterMetre: f.si('wide'), heightMetre: f.si('tall') };
  return engine.reach({
    bit: Object.assign({}, bit, { bearing: bearing }),
    depthMetre: f.si('depth'),
    colletMetre: f.si('collet'),
    noseToWorkMetre: f.si('nose'),
    templateMetre: bearing ? f.si('template') : null,
    firstPassMetre: cut.passes.depthMetre
  });
}

function reached(answer) {
  const value = answer.value;
  return [
    value.problems.length ? listOf(value.problems, p => view.note(p)) : null,
    view.glance([
      view.figure('Out of the collet', view.q(value.stickOutMetre, 'metre'), view.line(answer, 'STICK_OUT')),
      view.figure(
        'Shank held',
        view.q(Math.max(0, value.gripMetre), 'metre'),
        view.line(answer, 'LEAST_GRIP'),
        [' at least ', view.q(value.neededGripMetre, 'metre')]
      )
    ])
  ];
}

function tabs(request, v, f) {
  return engine.tabs({
    lengthMetre: f.si('part-long'),
    widthMetre: f.si('part-wide'),
    thicknessMetre: f.si('depth'),
    bitDiameterMetre: request.bit.diameterMetre,
    inside: v.inside
  });
}

function tabbed(answer) {
  const value = answer.value;
  const width = view.q(value.programmedWidthMetre, 'metre');
  return [
    view.glance([
      view.figure(
        'Tabs',
        String(value.count),
        view.line(answer, 'TAB_COUNT'),
        [' one every ', view.q(value.spacingMetre, 'metre')]
      ),
      view.figure('Height', view.q(value.heightMetre, 'metre'), view.line(answer, 'TAB_HEIGHT')),
      view.figure(
        'Width to enter',
        width,
        view.line(answer, 'TAB_WIDTH_TO_ENTER'),
        [' leaves ', view.q(value.widthMetre, 'metre')]
      )
    ]),
    el(
      'ol',
      null,
      value.order.map(o => el('li', null, view.note(o)))
    )
  ];
}

function flatten(cut, request, v, f) {
  return engine.surfacing({
    lengthMetre: f.si('face-long'),
    acrossMetre: f.si('face-wide'),
    bitDiameterMetre: request.bit.diameterMetre,
    overlapPercent: v.overlap,
    removeMetre: f.si('remove'),
    passMetre: f.si('layer'),
    feedMetrePerSecond: cut.feed.highMetrePerSecond
  });
}

function flattened(answer) {
  const value = answer.value;
  const deep = [' of ', view.q(value.layerMetre, 'metre')];
  const apart = value.strokes > 1 ? [' ', view.q(value.stepMetre, 'metre'), ' apart'] : '';
  return [
    view.glance([
      view.figure('Strokes', String(value.strokes), view.line(answer, 'SURFACING_STROKES'), apart),
      view.figure('Layers', String(value.layers), view.line(answer, 'SURFACING_LAYERS'), deep),
      view.figure('Time in the cut', view.q(value.seconds, 'second'), view.line(answer, 'SURFACING_TIME'))
    ]),
    el(
      'p',
      { class: 'note' },
      'At the feed worked out above, without lifting and going back. This bit never turns above ',
      view.q(value.highestRpm, 'rpm'),
      ' here.'
    )
  ];
}

function count(n, one, many) {
  return n + ' ' + (n === 1 ? one : many);
}

function length(metre) {
  return figureText.text(metre, metre, 'metre');
}

// The folded sections under a cut's answer.
export function beside(cut, request, v, f) {
  const driven = v.machine === 'LIGHT_CNC' || v.machine === 'RIGID_CNC';
  return [
    view.fold(
      'Does it reach?',
      reach(cut, request.bit, f, v),
      value => (value.reaches ? 'Yes, ' + length(value.stickOutMetre) + ' out of the collet.' : 'No.'),
      reached
    ),
    driven
      ? view.fold(
          'Tabs to hold the part:',
          tabs(request, v, f),
          value => count(value.count, 'tab', 'tabs') + ', ' + length(value.heightMetre) + ' high.',
          tabbed
        )
      : null,
    view.fold(
      'Flatten a face:',
      flatten(cut, request, v, f),
      value =>
        count(value.strokes, 'stroke', 'strokes') +
        ' in ' +
        count(value.layers, 'layer', 'layers') +
        ', ' +
        figureText.text(value.seconds, value.seconds, 'second') +
        '.',
      flattened
    )
  ];
}
