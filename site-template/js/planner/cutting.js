// Speed, feed and passes for a bit, what it takes beside them, and the ridges a ball leaves.

import { el, svg } from '../page/dom.js';
import { beside } from './cutting-beside.js';
import * as draw from './drawing.js';
import * as engine from './engine.js';
import * as figureText from './figure-text.js';
import { data } from './records.js';
import * as view from './view.js';

// Another bit brings its own usual measures along; what the reader then changes stays.
function measures(id) {
  const bit = data.bit(id).bit;
  return {
    diameter: mm(bit.diameterMetre),
    flutes: bit.flutes,
    edge: mm(bit.cuttingLengthMetre),
    shank: mm(bit.shankDiameterMetre),
    long: mm(bit.shankLengthMetre),
    wide: mm(bit.diameterMetre),
    marked: 0
  };
}

function mm(metre) {
  return Number((metre * 1000).toPrecision(6));
}

function ask(v, f) {
  const known = data.bit(v.record).bit;
  return {
    stock: v.stock,
    bit: {
      diameterMetre: f.si('diameter'),
      flutes: v.flutes,
      cuttingLengthMetre: f.si('edge'),
      shankDiameterMetre: f.si('shank'),
      shankLengthMetre: f.si('long'),
      markedRpm: v.marked > 0 ? v.marked : null,
      bearing: known.bearing
    },
    machine: { kind: v.machine, lowestRpm: v.slowest, highestRpm: v.fastest, highestFeedMetrePerSecond: f.si('feed') },
    side: v.side,
    depthMetre: f.si('depth'),
    wantedPassMetre: null,
    trim: Object.assign(data.trim, { leftMetre: f.si('left') }),
    wantedRpm: null
  };
}

// The passes in section: slice by slice to the full depth.
function passes(value, f) {
  const depth = f.si('depth');
  const wide = f.si('diameter');
  const scale = Math.min(130 / depth, 120 / wide);
  const out = draw.drawing(320, 190, 'The passes', value.passes.depthPasses + ' passes to the full depth.');
  out.append(svg('rect', { class: 'drw-stock', x: 10, y: 30, width: 300, height: 150 }));
  const left = 160 - (wide * scale) / 2;
  for (let i = 0; i < value.passes.depthPasses; i++) {
    const tall = (depth * scale) / value.passes.depthPasses;
    out.append(svg('rect', { class: 'plan-pass', x: left, y: 30 + i * tall, width: wide * scale, height: tall }));
  }
  out.append(
    draw.figure(
      left - 6,
      30 + (depth * scale) / value.passes.depthPasses / 2 + 4,
      value.passes.depthMetre,
      'metre',
      { 'text-anchor': 'end' }
    )
  );
  return el(
    'figure',
    { class: 'drawing' },
    out,
    el(
      'figcaption',
      null,
      value.passes.depthPasses + (value.passes.depthPasses === 1 ? ' pass' : ' passes, each '),
      value.passes.depthPasses === 1 ? '' : view.q(value.passes.depthMetre, 'metre'),
      ' deep.'
    )
  );
}

function figures(answer, driven) {
  const { speed, passes: cut, feed: moves } = answer.value;
  const never = ' never above ' + view.q(speed.highestRpm, 'rpm').textContent;
  const deep = ' of ' + view.q(cut.depthMetre, 'metre').textContent;
  const chip = view.range(moves.lowChipMetre, moves.highChipMetre, 'metre');
  return view.glance([
    view.figure('Set the speed to', view.q(speed.rpm, 'rpm'), view.line(answer, 'SPEED_TO_SET'), never),
    view.figure(driven ? 'Feed' : 'Move at', feed(answer.value), view.line(answer, 'FEED')),
    view.figure('Passes', String(cut.depthPasses), view.line(answer, 'DEPTH_PASSES'), deep),
    cut.trimPasses > 0 ? trims(cut, view.line(answer, 'TRIM_PASSES')) : null,
    view.figure('Chip', chip, view.line(answer, 'CHIP_LOAD')),
    view.figure('Rim speed', view.q(speed.rimMetrePerSecond, 'metre-per-second'), view.line(answer, 'RIM_SPEED'))
  ]);
}

function trims(cut, line) {
  const bite = ' of ' + view.q(cut.biteMetre, 'metre').textContent;
  return view.figure('Trim passes', String(cut.trimPasses), line, bite);
}

function show(answer, v, f) {
  const driven = v.machine === 'LIGHT_CNC' || v.machine === 'RIGID_CNC';
  const sanding = 'sanding.html#ball=' + v.ball + '&stepover=' + v.stepover;
  const listen = 'Listen: a scream means slower or deeper chips, a rumble means a lighter cut.';
  return [
    figures(answer, driven),
    view.cautions(answer.cautions),
    el('p', { class: 'caution-line' }, view.note(answer.value.direction.how)),
    el(
      'div',
      { class: 'drawings' },
      passes(answer.value, f),
      draw.ridges(f.si('ball'), f.si('stepover'), el('a', { href: sanding }, 'What sanding them takes'))
    ),
    view.working(answer.working),
    beside(answer.value, ask(v, f), v, f),
    el('p', { class: 'note' }, 'The speed marked on the bit wins. ' + listen)
  ];
}

// Feeds are set in millimetres or inches a minute on every controller.
function feed(value) {
  const { lowMetrePerSecond: low, highMetrePerSecond: high } = value.feed;
  return engine.setting(low, high, 'mm/min', figureText.system());
}

export const page = {
  follows: { record: measures },
  ask: ask,
  answer: request => engine.cutting(request),
  show: show,
  say: answer =>
    view.q(answer.value.speed.rpm, 'rpm').textContent +
    ', ' +
    feed(answer.value) +
    ', ' +
    answer.value.passes.depthPasses +
    ' passes.'
};
