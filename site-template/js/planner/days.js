// Days as bars from midnight to midnight, as the engine lays them out: night shaded, shop hours outlined, work as
// numbered blocks, wet film as a line, recoat windows and other stretches as bands. The same picture as a planned
// project's page has.

import { svg } from '../page/dom.js';
import * as dates from './dates.js';
import * as draw from './drawing.js';

const WIDTH = 430;
const LEFT = 84;
const HOUR = (WIDTH - LEFT - 8) / 24;
const ROW = 34;
const GAP_ROW = 24;
const TOP = 26;
const LATE = 15 * 60; // minutes; later a word stands left of its moment

// Each kind of band: its style, how far below the bar's top, how tall.
const BANDS = {
  DARK: ['lad-night', 0, ROW - 10],
  OTHERWISE: ['lad-otherwise', 0, ROW - 10],
  SHOP: ['lad-shop', 0, ROW - 10],
  WINDOW: ['lad-window', ROW - 10, 4],
  WET: ['lad-wet', -3, 3],
  CLAMPED: ['lad-clamped', 2, ROW - 14]
};
const BLOCKS = { WORK: 'lad-work', COAT: 'lad-coat' };

function x(minute) {
  return LEFT + (minute / 60) * HOUR;
}

function round(v) {
  return Math.round(v * 100) / 100;
}

// One drawing of days, filled from top to bottom.
class Ladder {
  constructor(out) {
    this.out = out;
    this.y = TOP;
  }

  rect(style, left, width, y, tall) {
    this.out.append(svg('rect', { class: style, x: round(left), y: round(y), width: round(width), height: tall }));
  }

  path(style, d) {
    this.out.append(svg('path', { class: style, d }));
  }

  text(left, y, anchor, words, style = 'drw-text') {
    this.out.append(svg('text', { class: style, x: round(left), y: round(y), 'text-anchor': anchor }, words));
  }

  // The days before, on which nothing is done.
  gap(days) {
    if (days > 0) {
      this.path('lad-wait', 'M' + (LEFT + 2) + ' ' + (this.y + 10) + 'h18');
      this.text(LEFT + 28, this.y + 15, 'start', days === 1 ? '1 day passes' : days + ' days pass');
      this.y += GAP_ROW;
    }
  }

  day(row) {
    this.gap(row.daysPassed);
    this.rect('lad-day', LEFT, 24 * HOUR, this.y, ROW - 10);
    this.text(4, this.y + 16, 'start', dates.shortDay(row.date));
    row.bars.forEach(bar => this.bar(bar));
    this.y += ROW;
  }

  bar(bar) {
    if (BANDS[bar.kind]) {
      const [style, below, tall] = BANDS[bar.kind];
      this.rect(style, x(bar.fromMinute), x(bar.toMinute) - x(bar.fromMinute), this.y + below, tall);
    } else if (BLOCKS[bar.kind]) {
      this.block(bar);
    } else if (bar.kind === 'COLDEST') {
      this.coldest(bar);
    } else {
      this.moment(bar);
    }
  }

  block({ kind, fromMinute, toMinute, label }) {
    const width = Math.max(x(toMinute) - x(fromMinute), 4);
    this.rect(BLOCKS[kind], x(fromMinute), width, this.y + 2, ROW - 14);
    if (label && width >= (label.length < 2 ? 10 : 15)) {
      this.text(x(fromMinute) + width / 2, this.y + 17, 'middle', label, 'lad-number');
    }
  }

  coldest({ fromMinute, figure }) {
    const at = round(x(fromMinute));
    this.path('lad-coldest', 'M' + at + ' ' + (this.y + ROW - 11) + 'l-4 -7h8Z');
    this.out.append(draw.figure(at - 6, this.y + 16, figure.value, figure.unit, { 'text-anchor': 'end' }));
  }

  moment({ fromMinute, label }) {
    const late = fromMinute > LATE;
    this.path('lad-moment', 'M' + round(x(fromMinute)) + ' ' + (this.y - 2) + 'v' + (ROW - 6));
    this.text(x(fromMinute) + (late ? -4 : 4), this.y + 16, late ? 'end' : 'start', label);
  }
}

/**
 * The picture of the days an answer has.
 * @param {!Array<!DayRow>} rows
 */
export function days(title, rows) {
  const work = rows.flatMap(row => row.bars).filter(bar => BLOCKS[bar.kind]).length;
  const height = TOP + rows.length * ROW + rows.filter(row => row.daysPassed > 0).length * GAP_ROW + 4;
  const each = ' days, each day a bar from midnight to midnight.';
  const words = work + ' pieces of work on ' + rows.length + each;
  const ladder = new Ladder(draw.drawing(WIDTH, height, title, words));
  [0, 6, 12, 18, 24].forEach(h => ladder.text(LEFT + h * HOUR, TOP - 10, 'middle', String(h)));
  rows.forEach(row => ladder.day(row));
  return ladder.out;
}
