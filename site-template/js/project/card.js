// The shop card: a plan on one sheet of paper, Letter or A4, with boxes to tick, and, where the page is
// served, a code that opens it on a phone. It is on the page all the time and shows in print alone.

import { el, svg } from '../page/dom.js';
import * as dates from '../planner/dates.js';
import * as view from '../planner/view.js';
import * as steps from './steps.js';

const MOST_CODE = 1200; // characters a phone still reads off paper

// Smaller type for longer plans, so that the card stays one sheet.
function size(count) {
  if (count <= 12) {
    return 'card-few';
  }
  if (count <= 20) {
    return 'card-some';
  }
  return count <= 30 ? 'card-many' : 'card-most';
}

function code(address) {
  if (!/^https?:/.test(address) || address.length > MOST_CODE) {
    return null;
  }
  const qr = window.qrcode(0, 'L');
  qr.addData(address);
  qr.make();
  const n = qr.getModuleCount();
  let d = '';
  for (let y = 0; y < n; y++) {
    for (let x = 0; x < n; x++) {
      if (qr.isDark(y, x)) {
        d += 'M' + (x + 4) + ' ' + (y + 4) + 'h1v1h-1z';
      }
    }
  }
  return svg(
    'svg',
    {
      class: 'card-code',
      viewBox: '0 0 ' + (n + 8) + ' ' + (n + 8),
      role: 'img',
      'aria-label': 'A code that opens this plan'
    },
    svg('rect', { width: n + 8, height: n + 8, fill: '#fff' }),
    svg('path', { d: d, fill: '#000' })
  );
}

// The dangers of the whole plan, each once.
function dangers(plan) {
  const seen = new Set();
  const list = [];
  plan.steps.forEach(s => {
    s.cautions.forEach(c => {
      if (c.severity !== 'WORK' && !seen.has(c.code)) {
        seen.add(c.code);
        list.push(el('li', null, c.severity === 'DANGER' ? [view.note(c.what), ' '] : null, view.note(c.measure)));
      }
    });
  });
  return list;
}

// Open times, amounts, clamps, grades, gaps: what is looked up at the bench, each figure where it is new.
const FIGURES = { glue: 3, 'dry-fit': 3 };

function figures(s, told) {
  const notes = s.kind === 'WORK' ? s.notes.filter(n => n.quantities.length > 0 && !told.has(JSON.stringify(n))) : [];
  const shown = notes.slice(0, FIGURES[s.task] || 1);
  shown.forEach(n => told.add(JSON.stringify(n)));
  return shown.length ? el('span', { class: 'card-figures' }, shown.flatMap(n => [view.note(n), ' '])) : null;
}

function row(s, told) {
  const window_ =
    s.window && s.window.closes
      ? ' · before ' + dates.shortDay(s.window.closes) + ' ' + dates.clock(s.window.closes)
      : '';
  return el(
    'li',
    { class: s.kind === 'WORK' ? '' : 'card-wait' },
    el('span', { class: 'card-box', 'aria-hidden': 'true' }),
    el('span', null, el('strong', null, s.title), el('br'), steps.when(s) + window_, figures(s, told))
  );
}

function head(title, plan, names, address) {
  const days = dates.day(plan.steps[0].slots[0].start) + ' to ' + dates.day(steps.end(plan));
  const madeOf = [names.species, names.adhesive, names.finish].join(', ');
  return el(
    'div',
    { class: 'card-head' },
    el('div', null, el('p', { class: 'card-title' }, title), el('p', null, days + '. ' + madeOf + '.')),
    code(address)
  );
}

function bought(p, names) {
  return el('li', null, steps.bought(p, names) + ': ', view.quantity(p.amount));
}

export function card(title, plan, names, address) {
  const shopping = plan.shopping.map(p => bought(p, names));
  const told = new Set();
  return el(
    'section',
    { class: 'card-print ' + size(plan.steps.length), 'aria-hidden': 'true' },
    head(title, plan, names, address),
    el('ul', { class: 'card-steps' }, plan.steps.map(s => row(s, told))),
    el(
      'div',
      { class: 'card-foot' },
      el('ul', { class: 'card-shopping' }, shopping),
      el('ul', { class: 'card-dangers' }, dangers(plan)),
      el('p', null, 'The label, the safety data sheet and local codes win.')
    )
  );
}
