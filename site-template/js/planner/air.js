// The air planner: how much solvent gets into the room, against what people may breathe and what can
// catch fire; the flow it takes, and when the room is fit to sit in again.

import { el, svg } from '../page/dom.js';
import * as draw from './drawing.js';
import * as engine from './engine.js';
import * as figureText from './figure-text.js';
import { overspray } from './overspray.js';
import { data } from './records.js';
import * as sanding from './sanding-dust.js';
import * as view from './view.js';

const SOURCES = [
  'PILOT_LIGHT',
  'UNVENTED_FUEL_HEATER',
  'OPEN_ELEMENT_HEATER',
  'WELDING_OR_GRINDING',
  'SMOKING',
  'BRUSHED_MOTOR',
  'UNRATED_ELECTRICAL',
  'STATIC'
];
// Where there is no time to tell, what stands in its place.
const BACK = {
  NEVER_OVER: 'within every limit there is; window open until the film is dry',
  WITHIN_WORK: 'thickest while you work; window open until the film is dry',
  NOT_COUNTED: 'not told: stay out until the film is hard (isocyanate or formaldehyde)',
  UNKNOWN: 'not told: stay out until dry and the smell is gone'
};

const DUST = 'DUST';

function dustAsked(v, f) {
  return sanding.ask({ dustKilogram: f.si('removed'), seconds: f.si('sanding') }, v);
}

function ask(v, f) {
  return v.airs === DUST ? dustAsked(v, f) : coatAsked(v, f);
}

function coatAsked(v, f) {
  const finish = data.finish(v.finish);
  const voc = finish.finish.voc;
  const kilogram = (f.si('liquid') * (voc.low + voc.high)) / 2;
  const releases = [];
  for (let i = 0; i < v.rounds; i++) {
    releases.push({
      startSecond: i * f.si('between'),
      volatileKilogram: kilogram,
      shares: finish.shares,
      method: v.method,
      curve: null,
      workSecond: f.si('work'),
      flashPointCelsius: finish.finish['flash-point'] ? finish.finish['flash-point'].low : null
    });
  }
  return {
    room: sanding.room(v),
    releases: releases,
    ignitionSources: SOURCES.filter(s => v[s]),
    isocyanate: finish.finish.isocyanate,
    formaldehyde: finish.finish.formaldehyde,
    selfHeatingRags: finish.finish['self-heating-rags']
  };
}

const LOW = -2; // the least share of the limit that is drawn, as a power of ten

// The share of what may be breathed (1 is the limit) and of the danger level, over the hours.
function curve(value, told) {
  const points = value.curve;
  const last = points[points.length - 1].second;
  const most = Math.max(...points.map(p => p.index || 0), 1.2);
  const top = Math.log10(most * 1.3);
  const x = s => 44 + (376 * s) / last;
  const y = index => 20 + (180 * (top - Math.log10(Math.max(index, Math.pow(10, LOW))))) / (top - LOW);
  const line = points.map((q, i) => (i ? 'L' : 'M') + x(q.second).toFixed(1) + ' ' + y(q.index || 0).toFixed(1));
  const out = draw.drawing(
    430,
    232,
    'Vapour in the room over time',
    'The mixture index from the first coat on, on a scale of tenfold steps; 1 is the limit for breathing.'
  );
  out.append(...powers(top, y), ...draw.ticks(0, last / 3600, 5).map(h => hour(x, h)));
  out.append(
    svg('path', { class: 'plan-limit', d: 'M44 ' + y(1).toFixed(1) + 'H420' }),
    draw.words(416, y(1) - 5, 'limit for 8 hours', { 'text-anchor': 'end' }),
    svg('path', { class: 'plan-line-hand', d: line.join('') })
  );
  if (told) {
    out.append(...value.reEntries.filter(r => drawn(r, last)).flatMap(r => reEntry(x(r.second))));
  }
  const words = 'How many times the limit for 8 hours is in the air at a moment, tenfold from line to line.';
  return el('figure', { class: 'ladder' }, out, el('figcaption', null, words));
}

function drawn(entry, last) {
  return entry.second !== null && entry.second !== undefined && entry.second < last;
}

function reEntry(x) {
  return [
    svg('path', { class: 'plan-now', d: 'M' + x.toFixed(1) + ' 20V200' }),
    draw.words(x + 3, 32, 'fit to sit in')
  ];
}

function hour(x, h) {
  return draw.words(x(h * 3600), 220, figureText.text(h * 3600, h * 3600, 'second'), { 'text-anchor': 'middle' });
}

// A line for each power of ten.
function powers(top, y) {
  const lines = [];
  for (let p = LOW; p <= top; p++) {
    const v = Math.pow(10, p);
    const text = p < 0 ? String(v) : String(Math.round(v));
    lines.push(svg('path', { class: 'plan-grid', d: 'M44 ' + y(v).toFixed(1) + 'H420' }));
    lines.push(draw.words(40, y(v) + 4, text, { 'text-anchor': 'end' }));
  }
  return lines;
}

const ENOUGH =
  '. That is enough, if the air enters on the other side of the room and leaves past the wet work, ' +
  'not past your face.';
const TOO_LITTLE = '. More air, less liquid at a time, a brush instead of a gun, or another finish.';

function room(v, need, enough, tooLittle) {
  const have = (v.volume * v.changes) / 3600;
  return el(
    'p',
    { class: have >= need ? 'note' : 'caution-line' },
    'Your fan moves ',
    view.q(have, 'cubic-metre-per-second'),
    '; this takes ',
    view.q(need, 'cubic-metre-per-second'),
    have >= need ? enough : tooLittle
  );
}

// The working of the flow that governs.
function governing(answer, flow) {
  if (flow.governs === 'FIRE') {
    return view.line(answer, 'FLOW_FOR_FIRE_TENTH');
  }
  return flow.healthEightHour > flow.healthShort
    ? view.line(answer, 'FLOW_FOR_HEALTH_OVER_8_HOURS')
    : view.line(answer, 'FLOW_FOR_HEALTH');
}

function figures(answer, verdict) {
  const { flow, reEntries, peaks, respirator, eightHour } = answer.value;
  const entry = reEntries[reEntries.length - 1];
  const after = verdict === 'AFTER';
  const governs = governing(answer, flow);
  const changes = ' ' + figureText.text(flow.changesPerHour, flow.changesPerHour, 'per-hour') + ' changes';
  const times = value => figureText.text(value, value, 'ratio') + ' × the limit';
  const known = eightHour.index !== null && eightHour.index !== undefined;
  const share = peaks.percentLowerExplosive ? view.q(peaks.percentLowerExplosive.value, 'percent') : 'not known';
  return view.glance([
    view.figure('Air needed', view.q(flow.governing, 'cubic-metre-per-second'), governs, changes),
    view.figure(
      'Fit to sit in after',
      after ? view.q(entry.second, 'second') : BACK[verdict],
      after ? view.line(answer, 'RE_ENTRY') : null
    ),
    view.figure(
      'Over 8 hours',
      known ? times(eightHour.index) : 'no limit known',
      known ? view.line(answer, 'EIGHT_HOUR_MIXTURE_INDEX') : null
    ),
    view.figure(
      'In the worst quarter hour',
      peaks.quarterHour ? times(peaks.quarterHour.value) : 'no limit known',
      peaks.quarterHour ? view.line(answer, 'QUARTER_HOUR_INDEX') : null
    ),
    view.figure('Of the explosive limit', share, view.line(answer, 'HIGHEST_SHARE_OF_THE_LOWER_EXPLOSIVE_LIMIT')),
    view.figure('Mask', respirator.words)
  ]);
}

function brushed(value, v) {
  if (value.brushedIndex === null || v.method !== 'SPRAY') {
    return null;
  }
  const times = figureText.text(value.brushedIndex, value.brushedIndex, 'ratio');
  return el('p', null, 'Brushed instead of sprayed, the same coat would reach ' + times + ' × the limit.');
}

const DUST_ENOUGH = '. That is enough over a working day; close to the sander there is far more.';
const DUST_TOO_LITTLE = '. Catch more at the sander, give more air, or sand outdoors.';

function show(answer, v, f) {
  return v.airs === DUST
    ? [sanding.told(answer), room(v, answer.value.flowNeeded, DUST_ENOUGH, DUST_TOO_LITTLE)]
    : coat(answer, v, f);
}

function coat(answer, v, f) {
  const value = answer.value;
  const entry = value.reEntries[value.reEntries.length - 1];
  const verdict = entry.verdict;
  const wins = 'The safety data sheet and your local codes win. A mask stands in for no air: it comes on top.';
  return [
    figures(answer, verdict),
    view.cautions(answer.cautions),
    curve(value, verdict === 'AFTER'),
    room(v, value.flow.governing, ENOUGH, TOO_LITTLE),
    brushed(value, v),
    overspray(data.finish(v.finish).finish, v, f),
    el('p', { class: 'note' }, wins),
    view.working(answer.working)
  ];
}

export const page = {
  ask: ask,
  answer: request => (request.releases ? engine.air(request) : engine.dust(request)),
  show: show,
  say: (answer, v) => {
    const need = v.airs === DUST ? answer.value.flowNeeded : answer.value.flow.governing;
    return 'Air needed: ' + view.q(need, 'cubic-metre-per-second').textContent + '.';
  }
};
