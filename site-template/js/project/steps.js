// A project's plan as the reader sees it: at a glance, day by day, what to have ready, every step with
// its cautions, notes and working. Made from the engine's answer alone.

import { el } from '../page/dom.js';
import * as dates from '../planner/dates.js';
import * as ladders from '../planner/days.js';
import * as view from '../planner/view.js';

export function end(plan) {
  return plan.steps.reduce((last, s) => {
    const e = s.slots[s.slots.length - 1].end;
    return e > last ? e : last;
  }, '');
}

function seconds(slot) {
  return (Date.parse(slot.end + 'Z') - Date.parse(slot.start + 'Z')) / 1000;
}

export function handsOn(plan) {
  return plan.steps.reduce(
    (sum, s) => (s.kind === 'WORK' ? s.slots.reduce((t, slot) => t + seconds(slot), sum) : sum),
    0
  );
}

export function plus(iso, s) {
  return new Date(Date.parse(iso + 'Z') + s * 1000).toISOString().slice(0, 19);
}

/** @param {!Plan} plan */
export function ladder(plan) {
  const otherwise = plan.days.some(day => day.bars.some(bar => bar.kind === 'OTHERWISE'));
  const keys = [
    ['work', 'work'],
    ['coat', 'a coat'],
    ['wet', 'film wet'],
    ['window', 'recoat window'],
    ['shop', 'shop hours']
  ];
  return el(
    'figure',
    { class: 'ladder' },
    ladders.days('The days of this plan', plan.days),
    el(
      'figcaption',
      null,
      keys
        .concat(otherwise ? [['otherwise', 'a colder or warmer night']] : [])
        .map(k => [el('span', { class: 'key key-' + k[0] }), ' ' + k[1] + ' '])
    )
  );
}

// What is bought; the adhesive by its name, finishes come with theirs.
export function bought(p, names) {
  return (p.item.kind === 'ADHESIVE' ? names.adhesive : p.what) + (p.detail ? ', ' + p.detail : '');
}

export function shopping(plan, names) {
  return el(
    'ul',
    { class: 'shopping' },
    plan.shopping.map(p => {
      const what = bought(p, names);
      return el(
        'li',
        null,
        el(
          'label',
          null,
          el('input', { type: 'checkbox' }),
          el(
            'span',
            null,
            what + ': ',
            el('strong', null, view.quantity(p.amount)),
            p.remark ? el('span', { class: 'quiet' }, ' (' + p.remark + ')') : null
          )
        )
      );
    })
  );
}

// Stretches that follow each other without a pause, as one.
function joined(slots) {
  const list = [];
  slots.forEach(s => {
    const last = list[list.length - 1];
    if (last && last.end === s.start) {
      last.end = s.end;
    } else {
      list.push({ start: s.start, end: s.end });
    }
  });
  return list;
}

export function when(step) {
  if (step.isByTheDay) {
    return dates.shortDay(step.slots[0].start) + ' to ' + dates.shortDay(step.slots[step.slots.length - 1].end);
  }
  const slots = joined(step.slots);
  return slots
    .map((slot, i) => {
      const before = i > 0 ? slots[i - 1] : null;
      const lead =
        before && before.start.slice(0, 10) === slot.start.slice(0, 10) ? '' : dates.shortDay(slot.start) + ' ';
      const last =
        slot.end.slice(0, 10) === slot.start.slice(0, 10)
          ? dates.clock(slot.end)
          : dates.shortDay(slot.end) + ' ' + dates.clock(slot.end);
      return (i ? ', ' : '') + lead + dates.clock(slot.start) + '–' + last;
    })
    .join('');
}

function window_(w) {
  if (!w) {
    return null;
  }
  return el(
    'p',
    { class: 'step-window' },
    'Window: from ',
    dates.moment(w.opens),
    w.closes ? [' to ', dates.moment(w.closes), '. After that, scuff first.'] : ' on.'
  );
}

function step(s, i) {
  return el(
    'li',
    { id: 'step-' + s.id, class: s.kind === 'WORK' ? 'step-work' : 'step-wait' },
    el(
      'div',
      { class: 'step-head' },
      el('span', { class: 'step-number', 'aria-hidden': 'true' }, String(i + 1)),
      el('div', null, el('h4', null, s.title), el('p', { class: 'step-when' }, when(s)))
    ),
    window_(s.window),
    s.notes.length
      ? el(
          'ul',
          { class: 'step-notes' },
          s.notes.map(n => el('li', null, view.note(n)))
        )
      : null,
    view.cautions(s.cautions),
    view.working(s.working)
  );
}

export function days(plan) {
  const list = [];
  plan.steps.forEach((s, i) => {
    const day = s.slots[0].start.slice(0, 10);
    if (!list.length || list[list.length - 1].day !== day) {
      list.push({ day: day, steps: [] });
    }
    list[list.length - 1].steps.push(step(s, i));
  });
  return list.map(d =>
    el('section', { class: 'day' }, el('h3', null, dates.day(d.day)), el('ul', { class: 'plan-steps' }, d.steps))
  );
}
