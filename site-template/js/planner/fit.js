// Fit and movement: how much a part moves through the year, the gap to leave at the test-fit and the
// tape that makes it, and whether it may be screwed down fast.

import { el, heading, listOf, svg } from '../page/dom.js';
import * as draw from './drawing.js';
import * as engine from './engine.js';
import * as figureText from './figure-text.js';
import { data, rings } from './records.js';
import * as view from './view.js';

function ask(v, f) {
  const finish = data.finish(v.finish).finish;
  function film(coats) {
    return { coats: coats, wetFilmMicron: v.wet, solidsByVolumePercent: finish['solids-by-volume'].high };
  }
  return {
    wood: data.species(v.species).wood,
    rings: rings(v.rings),
    widthMetre: f.si('width'),
    thicknessMetre: f.si('thickness'),
    moisturePercent: v.moisture,
    shop: { celsius: v.celsius, relativeHumidityPercent: v.humidity },
    seasons: data.place(v.place).seasons,
    opening: v.fits
      ? {
          partFilm: film(v.coats),
          openingFilm: film(v.openingCoats),
          slipMetre: f.si('slip'),
          hanging: v.hanging,
          tapes: data.tapes
        }
      : null,
    panel: v.fixed
      ? {
          screwMetre: f.si('screw'),
          distancesMetre: Array.from(new Set([f.si('near'), f.si('far')])).sort((a, b) => a - b)
        }
      : null
  };
}

// The gap in section, with the layers of tape that make it; thicknesses to one scale.
function gap(clearance) {
  const stack = clearance.stacks[0];
  if (!stack) {
    return null;
  }
  const wide = 130;
  const each = wide / stack.layers;
  const layers = stack.layers + ' layers of ' + stack.tape.name;
  const middle = { 'text-anchor': 'middle' };
  const out = draw.drawing(
    320,
    130,
    'The gap at the test-fit',
    layers + ' between the part and its opening make the gap.'
  );
  out.append(
    svg('rect', { class: 'drw-stock', x: 4, y: 20, width: 90, height: 100 }),
    svg('rect', { class: 'drw-stock', x: 94 + wide, y: 20, width: 90, height: 100 })
  );
  for (let i = 0; i < stack.layers; i++) {
    const tape = i % 2 ? 'plan-tape' : 'plan-tape plan-tape-odd';
    out.append(svg('rect', { class: tape, x: 94 + i * each, y: 20, width: each, height: 100 }));
  }
  out.append(
    draw.words(49, 74, 'part', middle),
    draw.words(139 + wide, 74, 'opening', middle),
    draw.figure(94 + wide / 2, 12, clearance.gapMetre, 'metre', middle)
  );
  const words = 'Tape on the moving edge, dry fit, then peel it off: ' + layers + '.';
  return el('figure', { class: 'drawing' }, out, el('figcaption', null, words));
}

// The width through the year, drawn larger than life.
function year(value) {
  const out = draw.drawing(
    320,
    116,
    'The width through the year',
    'Narrowest in the driest season, widest in the dampest.'
  );
  const most = Math.max(Math.abs(value.movement.swellMetre), Math.abs(value.movement.shrinkMetre), 1e-9);
  [
    ['driest', -Math.abs(value.movement.shrinkMetre), value.movement.shrinkMetre],
    ['as it is', 0, 0],
    ['dampest', Math.abs(value.movement.swellMetre), value.movement.swellMetre]
  ].forEach((row, i) => {
    const width = 150 + (24 * row[1]) / most;
    out.append(
      svg('rect', { class: 'drw-stock', x: 64, y: 6 + i * 36, width: width, height: 26 }),
      svg('text', { class: 'drw-text', x: 60, y: 24 + i * 36, 'text-anchor': 'end' }, row[0])
    );
    if (i !== 1) {
      out.append(
        svg(
          'text',
          { class: 'drw-text', x: 70 + width, y: 24 + i * 36 },
          row[1] < 0 ? '\u2212' : '+',
          svg(
            'tspan',
            figureText.carried(Math.abs(row[2]), Math.abs(row[2]), 'metre'),
            figureText.text(Math.abs(row[2]), Math.abs(row[2]), 'metre')
          )
        )
      );
    }
  });
  return el(
    'figure',
    { class: 'drawing' },
    out,
    el('figcaption', null, 'Change from today\u2019s width, drawn larger than life.')
  );
}

function figures(answer) {
  const { movement, clearance: c, settling } = answer.value;
  const settles =
    settling.highSecond > 0 ? view.range(settling.lowSecond, settling.highSecond, 'second') : 'it is settled';
  const metres = value => view.q(value, 'metre');
  return view.glance([
    view.figure('Moves in a year', metres(movement.yearMetre), view.line(answer, 'MOVEMENT_COEFFICIENT')),
    c ? view.figure('Gap on each moving side', metres(c.gapMetre), view.line(answer, 'GAP_ON_EACH_MOVING_SIDE')) : null,
    c ? view.figure('Cut it smaller than the opening by', metres(c.openingMinusPartMetre)) : null,
    c ? view.figure('Gap in the driest week', metres(c.drySeasonGapMetre)) : null,
    view.figure('Wood settles in', settles, view.line(answer, 'LONGEST_TIME_TO_SETTLE'))
  ]);
}

function tapes(c) {
  return [
    heading('Tape for the test-fit'),
    listOf(c.stacks, s => [
      s.layers + (s.layers === 1 ? ' layer of ' : ' layers of ') + s.tape.name + ': ',
      view.q(s.gapMicron, 'micron')
    ])
  ];
}

function slot(s) {
  const metres = value => view.q(value, 'metre');
  const ends = [metres(s.outwardMetre), ' outward, ', metres(s.inwardMetre), ' inward.'];
  return ['At ', metres(s.distanceMetre), ' a slot ', metres(s.lengthMetre), ' long: ', ends];
}

function fixing(x) {
  return [
    heading('Fixing'),
    x.rigidAllowed
      ? el('p', null, 'It moves so little at these screws that plain holes will do.')
      : [el('p', null, 'Screw one line fast, the rest in slots across the grain:'), listOf(x.slots, slot)]
  ];
}

function moistures(answer) {
  const { dryPercent, dampPercent, shopPercent } = answer.value.moisture;
  const figure = (name, value, line) => view.figure(name, view.q(value, 'percent'), line);
  return view.glance([
    figure('Moisture in the driest season', dryPercent, view.line(answer, 'MOISTURE_IN_THE_DRY_SEASON')),
    figure('in the dampest', dampPercent, view.line(answer, 'MOISTURE_IN_THE_DAMP_SEASON')),
    figure('in this shop', shopPercent, view.line(answer, 'MOISTURE_OF_THE_SHOP'))
  ]);
}

function show(answer) {
  const { clearance: c, fixing: x } = answer.value;
  return [
    figures(answer),
    view.cautions(answer.cautions),
    el('div', { class: 'drawings' }, year(answer.value), c ? gap(c) : null),
    c && c.stacks.length ? tapes(c) : null,
    x ? fixing(x) : null,
    moistures(answer),
    view.working(answer.working)
  ];
}

// A finish brings its usual film and coats along.
function film(id) {
  const finish = data.finish(id).finish;
  const coats = view.usualCoats(finish);
  return { wet: view.usual(finish['wet-film']), coats: coats, openingCoats: coats };
}

export const page = {
  follows: { finish: film },
  ask: ask,
  answer: request => engine.fit(request),
  show: show,
  say: answer => {
    const value = answer.value;
    return (
      'It moves ' +
      view.q(value.movement.yearMetre, 'metre').textContent +
      ' in a year.' +
      (value.clearance ? ' Leave ' + view.q(value.clearance.gapMetre, 'metre').textContent + ' at the test-fit.' : '')
    );
  }
};
