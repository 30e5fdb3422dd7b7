// The glue-up planner: how long you have, how many clamps and where, when they come off.

import { el, heading, listOf, svg } from '../page/dom.js';
import { bench } from './bench.js';
import * as dates from './dates.js';
import { days } from './days.js';
import * as draw from './drawing.js';
import * as engine from './engine.js';
import { labelled } from './label.js';
import { data } from './records.js';
import * as view from './view.js';

const PIECE = 320; // width of the drawing

function ask(v, fields) {
  const wood = data.species(v.species).wood;
  const moisture = v.moisture;
  return {
    adhesive: labelled(data.adhesive(v.adhesive).adhesive, v.label),
    joints: [
      {
        name: 'joint',
        lengthMetre: fields.si('length'),
        widthMetre: fields.si('thickness'),
        count: v.joints,
        arrangement: v.arrangement,
        backingMetre: fields.si('board'),
        gapMetre: fields.si('gap')
      }
    ],
    wood: {
      // At the lower end: lighter wood takes less pressure.
      densityKilogramPerCubicMetre: wood['specific-gravity'].low * 1000 * (1 + moisture / 100),
      oily: wood.oily,
      moisturePercents: [moisture, moisture],
      sinceMachinedSecond: fields.si('fresh')
    },
    clamps: {
      count: v.clamps,
      forceNewton: v.force,
      caulDepthMetre: fields.si('caul'),
      headMetre: data.shop.clamps.headMetre
    },
    climate: data.climate(v.low, v.high, v.humidity),
    start: v.start,
    pace: data.pace(v.people)
  };
}

function clamp(x, tall, under) {
  return [
    svg('path', { class: under ? 'plan-clamp-under' : 'plan-clamp', d: 'M' + x + ' 12V' + (tall + 32) }),
    svg('rect', { class: 'drw-metal', x: x - 6, y: 10, width: 12, height: 10, rx: 2 }),
    svg('rect', { class: 'drw-metal', x: x - 6, y: tall + 24, width: 12, height: 10, rx: 2 })
  ];
}

function boardsOf(boards, left, long, tall) {
  const parts = [];
  for (let i = 0; i < boards; i++) {
    const y = 22 + (i * tall) / boards;
    parts.push(svg('rect', { class: 'drw-stock', x: left, y, width: long, height: tall / boards }));
  }
  for (let i = 1; i < boards; i++) {
    const y = 22 + (i * tall) / boards;
    parts.push(svg('path', { class: 'plan-glue', d: 'M' + left + ' ' + y + 'h' + long }));
  }
  return parts;
}

function panel(rows, v, fields) {
  const positions = rows[0].positions;
  const length = fields.si('length');
  const boards = v.joints + 1;
  const width = boards * fields.si('board');
  const scale = Math.min((PIECE - 20) / length, 260 / width);
  const tall = width * scale;
  const long = length * scale;
  const left = (PIECE - long) / 2;
  const over = positions.filter(p => !p.under).length;
  const clamps =
    positions.length + ' clamps across them: ' + over + ' on top, ' + (positions.length - over) + ' below.';
  const words = boards + ' boards edge to edge, ' + clamps;
  const out = draw.drawing(PIECE, tall + 56, 'Clamps on the panel', words);
  out.append(
    ...boardsOf(boards, left, long, tall),
    ...positions.flatMap(p => clamp(left + p.alongMetre * scale, tall, p.under)),
    draw.figure(left + long / 2, tall + 52, length, 'metre', { 'text-anchor': 'middle' })
  );
  const caption = 'To scale. Solid: clamps on top; dashed: below, so that the panel stays flat.';
  return el('figure', { class: 'drawing' }, out, el('figcaption', null, caption));
}

function batches(value) {
  return el(
    'ol',
    { class: 'batches' },
    value.batches.map(b =>
      el(
        'li',
        null,
        dates.moment(b.start),
        ': ',
        b.shares.map(s => s.count + (s.count === 1 ? ' joint' : ' joints')).join(', '),
        ' with ' + b.clamps + ' clamps; spread in ',
        view.q(b.spreadSecond, 'second'),
        ', closed in ',
        view.q(b.closeSecond, 'second'),
        '. Clamps off ',
        dates.moment(b.clampsOff),
        '.'
      )
    )
  );
}

function figures(answer) {
  const { assembly, batches: rounds, rows, clampsOff, machine, fullLoad, glue } = answer.value;
  const clamps = String(rounds.reduce((n, b) => Math.max(n, b.clamps), 0));
  const each = ' at ' + view.q(rows[0].forceEachNewton, 'newton').textContent + ' each';
  const bead = ' from the first bead to the last clamp';
  return view.glance([
    view.figure('You have', view.q(assembly.totalSecond, 'second'), view.line(answer, 'TOTAL_ASSEMBLY_TIME'), bead),
    view.figure('Clamps', clamps, view.line(answer, 'JOINT_CLAMPS'), each),
    view.figure('Clamps off', dates.moment(clampsOff.at), view.line(answer, 'BATCH_IN_CLAMPS', rounds.length)),
    view.figure('Machine from', dates.moment(machine.at), view.line(answer, 'MACHINE_AFTER')),
    view.figure('Full load', dates.moment(fullLoad.at), view.line(answer, 'FULL_LOAD_AFTER')),
    view.figure(
      'Adhesive',
      view.q(glue.volumeCubicMetre, 'cubic-metre-liquid'),
      view.line(answer, 'ADHESIVE_VOLUME'),
      ' squeeze-out and the pot counted'
    )
  ]);
}

function byTheClock(value) {
  const mark = (kind, from, to, label) => ({ kind, from, to, label });
  const marks = value.batches.flatMap((b, i) => [
    mark('WORK', b.start, b.tight, String(i + 1)),
    mark('CLAMPED', b.tight, b.clampsOff, '')
  ]);
  marks.push(mark('MOMENT', value.machine.at, value.machine.at, 'machine'));
  marks.push(mark('MOMENT', value.fullLoad.at, value.fullLoad.at, 'full load'));
  const keys = [
    el('span', { class: 'key key-work' }),
    ' spread and close ',
    el('span', { class: 'key key-clamped' }),
    ' in clamps'
  ];
  const drawn = days('The glue-up by the clock', engine.days({ marks }).value.rows);
  return el('figure', { class: 'ladder' }, drawn, el('figcaption', null, keys));
}

function haveReady(glue, value) {
  const ready = [
    [view.record(glue), ', ', view.q(value.glue.volumeCubicMetre, 'cubic-metre-liquid')],
    value.batches[0].clamps + ' clamps and cauls, waxed or taped where glue may reach them',
    'A spreader or brush, a damp rag or scraper for the squeeze-out, a straight edge, a clock'
  ];
  return [heading('Have ready'), listOf(ready, words => words)];
}

function inRounds(count) {
  const words = 'Not all at once: this is more than you can close in time. Glue it in ' + count + ' rounds.';
  return count > 1 ? el('p', { class: 'caution-line' }, words) : null;
}

function show(answer, v, fields) {
  const value = answer.value;
  const inLine = v.arrangement === 'IN_LINE' && value.rows[0].positions.length > 0;
  return [
    figures(answer),
    view.cautions(answer.cautions),
    inRounds(value.batches.length),
    inLine ? panel(value.rows, v, fields) : null,
    heading('When'),
    byTheClock(value),
    batches(value),
    bench(data.adhesive(v.adhesive).adhesive),
    haveReady(data.adhesive(v.adhesive), value),
    view.working(answer.working),
    el('p', { class: 'note' }, 'The label on the bottle wins. Do it dry first: every clamp set, every caul in place.')
  ];
}

export const page = {
  ask: ask,
  answer: request => engine.glueUp(request),
  show: show,
  say: answer => {
    const v = answer.value;
    return (
      'You have ' +
      view.q(v.assembly.totalSecond, 'second').textContent +
      ', ' +
      v.batches[0].clamps +
      ' clamps. Clamps off ' +
      dates.moment(v.clampsOff.at).textContent +
      '.'
    );
  }
};
