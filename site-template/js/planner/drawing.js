// The bones of a chart, and drawings that stand in more than one planner.

import { el, svg } from '../page/dom.js';
import * as figureText from './figure-text.js';
import * as view from './view.js';

// Round steps for an axis: about so many of 1, 2 or 5 times a power of ten.
export function ticks(low, high, about) {
  const raw = (high - low) / about;
  const power = Math.pow(10, Math.floor(Math.log10(raw)));
  const step = [1, 2, 5, 10].map(m => m * power).find(s => s >= raw);
  const list = [];
  for (let i = Math.ceil(low / step); i * step <= high + step * 1e-9; i++) {
    list.push(i * step);
  }
  return list;
}

// A drawing with its title and description for those who can't see it.
let drawn = 0;
export function drawing(width, height, title, text) {
  drawn++;
  const id = 'drawn-' + drawn;
  return svg(
    'svg',
    {
      class: 'drw plan-drawing',
      viewBox: '0 0 ' + width + ' ' + height,
      role: 'img',
      'aria-labelledby': id + '-t ' + id + '-d'
    },
    svg('title', { id: id + '-t' }, title),
    svg('desc', { id: id + '-d' }, text)
  );
}

// Words in a drawing; more are attributes beside the usual ones.
export function words(x, y, text, more = {}) {
  return svg('text', Object.assign({ class: 'drw-text', x, y }, more), text);
}

// A figure in a drawing, that follows the units switch.
export function figure(x, y, value, unit, more = {}) {
  return words(x, y, figureText.text(value, value, unit), Object.assign(figureText.carried(value, value, unit), more));
}

// The ridges a ball leaves from track to track, to scale; their height is plain geometry.
export function ridges(ballMetre, stepMetre, more = null) {
  const r = ballMetre / 2;
  const step = Math.min(stepMetre, ballMetre);
  const height = r - Math.sqrt(Math.max(0, r * r - (step * step) / 4));
  const scale = 290 / (3 * step);
  const out = drawing(
    320,
    92,
    'Ridges between the tracks of the ball',
    'Round furrows side by side with ridges between them, to scale.'
  );
  let d = 'M15 44';
  for (let i = 0; i < 3; i++) {
    d += 'a' + r * scale + ' ' + r * scale + ' 0 0 0 ' + step * scale + ' 0';
  }
  out.append(svg('path', { class: 'drw-stock', d: d + 'V86H15Z' }));
  return el(
    'figure',
    { class: 'drawing' },
    out,
    el(
      'figcaption',
      null,
      'Ridges ',
      view.q(height * 1e6, 'micron'),
      ' high, ',
      view.q(step, 'metre'),
      ' apart; to scale. ',
      more,
      el('span', { class: 'remark' }, 'height = r − √(r² − (stepover / 2)²), geometry')
    )
  );
}
