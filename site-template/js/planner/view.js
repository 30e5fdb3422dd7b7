// How an answer of the engine looks: quantities, sentences, cautions, the working behind a figure.

import { el } from '../page/dom.js';
import * as engine from './engine.js';
import * as figureText from './figure-text.js';

// A figure, or a range, that follows the units switch.
export function range(low, high, unit) {
  return el(
    'span',
    Object.assign({ class: 'q' }, figureText.carried(low, high, unit)),
    figureText.text(low, high, unit)
  );
}

export function q(value, unit) {
  return range(value, value, unit);
}

export function quantity(x) {
  return q(x.value, x.unit);
}

// A sentence of the engine, with its figures.
export function note(n) {
  return engine.sentence(n).value.parts.map(part => (part.isFigure ? figureOf(part) : part.metric));
}

function figureOf({ metric, imperial }) {
  const carried = { class: 'q', 'data-metric': metric, 'data-imperial': imperial };
  return el('span', carried, figureText.system() === 'METRIC' ? metric : imperial);
}

// Cautions where the step is; they can't be folded away but for those an earlier step has told, which stand by
// their names.
export function cautions(list) {
  if (!list || !list.length) {
    return null;
  }
  const fresh = list.filter(c => !c.again);
  const told = list.filter(c => c.again);
  return [fresh.length ? inFull(fresh) : null, told.length ? again(told) : null];
}

function inFull(list) {
  return el(
    'ul',
    { class: 'step-cautions' },
    list.map(c =>
      el(
        'li',
        { class: 'care-' + c.severity.toLowerCase() },
        note(c.what),
        ' ',
        el('strong', null, note(c.measure))
      )
    )
  );
}

function again(list) {
  const names = list.map(c => c.name).join('; ');
  return el('details', { class: 'step-again' }, el('summary', null, 'As before: ' + names + '.'), inFull(list));
}

export function from(p) {
  if (p.kind === 'SOURCE') {
    return [p.title, p.where].filter(Boolean).join(', ');
  }
  const words =
    {
      COMMON_PRACTICE: 'common practice',
      FROM_MEMORY: 'from memory, not checked',
      INPUT: 'you said so',
      COMPUTED: 'worked out here'
    }[p.kind] || '';
  return [words, p.title, p.where].filter(Boolean).join('; ');
}

// One line of working, opened by "Why 31 h?".
export function why(line) {
  const r = line.result;
  return el('details', { class: 'why-line' }, el('summary', null, 'Why ', quantity(r.quantity || r), '?'), steps(line));
}

function steps(line) {
  return el(
    'div',
    { class: 'working' },
    el(
      'p',
      null,
      el('strong', null, line.result.name + ': ', quantity(line.result.quantity || line.result)),
      el('br'),
      el('code', null, line.formula),
      ' ',
      el('span', { class: 'quiet' }, from(line.rule))
    ),
    line.inputs.length
      ? el(
          'ul',
          null,
          line.inputs.map(i =>
            el('li', null, i.name + ': ', quantity(i.quantity || i), ' ', el('span', { class: 'quiet' }, from(i.from)))
          )
        )
      : null
  );
}

// All the working of an answer, in one fold.
export function working(lines) {
  if (!lines || !lines.length) {
    return null;
  }
  return el('details', { class: 'all-working' }, el('summary', null, 'How these figures came about'), lines.map(steps));
}

// Why the engine gives no answer, and what to change.
export function refused(answer) {
  if (answer.broken !== undefined) {
    return el(
      'div',
      { class: 'caution danger' },
      el('h2', null, 'This can\u2019t be worked out'),
      el('p', null, 'The page asked the engine something it does not understand: ' + answer.broken)
    );
  }
  return el(
    'section',
    { class: 'caution danger' },
    el('h2', null, 'This can\u2019t be done as asked'),
    el(
      'ul',
      null,
      answer.reasons.map(r => el('li', null, note(r.problem), ' ', el('strong', null, note(r.remedy))))
    )
  );
}

// A big figure with its name, and why.
export function figure(name, value, line = null, remark = '') {
  return el(
    'div',
    null,
    el('dt', null, name),
    el('dd', null, value, remark ? el('span', { class: 'remark' }, remark) : null, line ? why(line) : null)
  );
}

export function glance(figures) {
  return el('dl', { class: 'glance' }, figures);
}

// The line of working of this key; where several bear it, the first or the one asked for, from 1.
export function line(answer, key, number = 1) {
  return (answer.working || []).filter(l => l.key === key)[number - 1] || null;
}

// The middle of a record's range, and its usual number of coats: where a form starts.
export function usual(datum) {
  return 0.5 * (datum.low + datum.high);
}
export function usualCoats(finish) {
  return Math.max(1, Math.round(usual(finish.coats)));
}

// A link to a record's page.
export function record(r) {
  return el('a', { href: document.documentElement.dataset.root + r.url }, r.title);
}

// A folded section whose heading carries the answer.
export function fold(question, answer, words, body) {
  return el(
    'details',
    { class: 'all-working' },
    el('summary', null, question, ' ', el('strong', null, answer.given ? words(answer.value) : 'Not as asked.')),
    answer.given
      ? [body(answer), cautions(answer.cautions), working(answer.working)]
      : refused(answer)
  );
}
