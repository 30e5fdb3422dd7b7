// Days as bars from midnight to midnight: night shaded, shop hours outlined, work as numbered blocks,
// wet film as a line, recoat windows and other stretches as bands. The same picture as a planned
// project's page has, drawn from an answer of the engine.

import { svg } from '../page/dom.js';
import * as dates from './dates.js';
import * as draw from './drawing.js';

const WIDTH = 430;
const LEFT = 84;
const HOUR = (WIDTH - LEFT - 8) / 24;
const ROW = 34;
const GAP_ROW = 24;
const TOP = 26;
const NIGHT_ENDS = 7;
const NIGHT_BEGINS = 21;
const DAY_MILLIS = 86400000;

// Local time without zones: days and hours are counted as if in UTC, where no clock is put forward.
function millis(iso) {
  return Date.parse(iso + (iso.length === 10 ? 'T00:00Z' : 'Z'));
}
function dayOf(iso) {
  return iso.slice(0, 10);
}
function hours(day, iso) {
  return (millis(iso) - millis(day)) / 3600000;
}

function everyDay(blocks, more) {
  const days = new Set();
  blocks.forEach(b => {
    days.add(dayOf(b.from));
  });
  (more || []).forEach(iso => {
    days.add(dayOf(iso));
  });
  return Array.from(days).sort();
}

// One drawing of days, filled from top to bottom.
class Ladder {
  constructor(out, request) {
    this.out = out;
    this.request = request;
    this.y = TOP;
  }

  rect(style, x, width, y, tall) {
    this.out.append(svg('rect', { class: style, x: round(x), y: round(y), width: round(width), height: tall }));
  }

  text(x, y, anchor, words, style = 'drw-text') {
    this.out.append(svg('text', { class: style, x: round(x), y: round(y), 'text-anchor': anchor }, words));
  }

  // What of a stretch lies on a day.
  band(style, b, day, y, tall) {
    const from = Math.max(0, hours(day, b.from));
    const to = Math.min(24, hours(day, b.to));
    if (to > from) {
      this.rect(style, LEFT + from * HOUR, (to - from) * HOUR, y, tall);
    }
  }

  // The days in between, on which nothing is done.
  gap(days) {
    if (days > 0) {
      this.out.append(svg('path', { class: 'lad-wait', d: 'M' + (LEFT + 2) + ' ' + (this.y + 10) + 'h18' }));
      this.text(LEFT + 28, this.y + 15, 'start', days === 1 ? '1 day passes' : days + ' days pass');
      this.y += GAP_ROW;
    }
  }

  day(day) {
    const y = this.y;
    this.rect('lad-day', LEFT, 24 * HOUR, y, ROW - 10);
    this.rect('lad-night', LEFT, NIGHT_ENDS * HOUR, y, ROW - 10);
    this.rect('lad-night', LEFT + NIGHT_BEGINS * HOUR, (24 - NIGHT_BEGINS) * HOUR, y, ROW - 10);
    this.text(4, y + 16, 'start', dates.shortDay(day));
    this.request.nights.forEach(n => this.band('lad-otherwise', n, day, y, ROW - 10));
    this.request.bands.forEach(b => {
      const [style, below, tall] = BANDS[b.kind];
      this.band(style, b, day, y + below, tall);
    });
    this.request.blocks.filter(b => dayOf(b.from) === day).forEach(b => this.block(b, day));
    this.request.nights.filter(n => dayOf(n.at) === day).forEach(n => this.coldest(n, day));
    this.request.moments.filter(m => dayOf(m.at) === day).forEach(m => this.moment(m, day));
    this.y += ROW;
  }

  block(b, day) {
    const from = hours(day, b.from);
    const width = Math.max((Math.min(24, hours(day, b.to)) - from) * HOUR, 4);
    this.rect(b.coat ? 'lad-coat' : 'lad-work', LEFT + from * HOUR, width, this.y + 2, ROW - 14);
    if (b.number && width >= (b.number < 10 ? 10 : 15)) {
      this.text(LEFT + from * HOUR + width / 2, this.y + 17, 'middle', String(b.number), 'lad-number');
    }
  }

  coldest(n, day) {
    const x = round(LEFT + hours(day, n.at) * HOUR);
    const d = 'M' + x + ' ' + (this.y + ROW - 11) + 'l-4 -7h8Z';
    this.out.append(svg('path', { class: 'lad-coldest', d }));
    this.text(x - 6, this.y + 16, 'end', n.label);
  }

  moment(m, day) {
    const x = LEFT + hours(day, m.at) * HOUR;
    const late = hours(day, m.at) > 15;
    const d = 'M' + round(x) + ' ' + (this.y - 2) + 'v' + (ROW - 6);
    this.out.append(svg('path', { class: 'lad-moment', d }));
    this.text(x + (late ? -4 : 4), this.y + 16, late ? 'end' : 'start', m.label);
  }
}

// Each kind of band: its style, how far below the bar's top, how tall.
const BANDS = {
  shop: ['lad-shop', 0, ROW - 10],
  window: ['lad-window', ROW - 10, 4],
  wet: ['lad-wet', -3, 3],
  clamped: ['lad-clamped', 2, ROW - 14]
};

// blocks: {from, to, number, coat}; bands: {from, to, kind: 'window' | 'wet' | 'shop' | 'clamped'};
// moments: {at, label}, each a tick on its day; nights: {from, to, at, label}, each a band over two days with
// its figure at its coldest hour.
export function days(title, { blocks, bands = [], moments = [], nights = [] }) {
  const list = everyDay(
    blocks,
    moments.concat(nights).map(m => m.at)
  );
  const gaps = list.map((d, i) => (i === 0 ? 0 : Math.round((millis(d) - millis(list[i - 1])) / DAY_MILLIS) - 1));
  const height = TOP + list.length * ROW + gaps.filter(Boolean).length * GAP_ROW + 4;
  const each = ' days, each day a bar from midnight to midnight.';
  const words = blocks.length + ' pieces of work on ' + list.length + each;
  const ladder = new Ladder(draw.drawing(WIDTH, height, title, words), { blocks, bands, moments, nights });
  [0, 6, 12, 18, 24].forEach(h => ladder.text(LEFT + h * HOUR, TOP - 10, 'middle', String(h)));
  list.forEach((day, i) => {
    ladder.gap(gaps[i]);
    ladder.day(day);
  });
  return ladder.out;
}

function round(v) {
  return Math.round(v * 100) / 100;
}
