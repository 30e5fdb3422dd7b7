// The sheen planner: two sheens side by side before you commit, every way to the one you want from the
// film there is, and the way back.

import { el } from '../page/dom.js';
import { bench } from './bench.js';
import * as dates from './dates.js';
import * as engine from './engine.js';
import { data } from './records.js';
import { beside } from './sheen-beside.js';
import * as view from './view.js';

const swatches = document.getElementById('swatches');

const WAYS = {
  LEAVE: 'Leave it: it has that sheen',
  LAST_COAT: 'One more coat, of that sheen',
  RUB_OUT: 'Rub out the cured film'
};
const WORK = {
  LEVEL: 'Sand the film level',
  REFINE: 'Refine the scratch',
  EVEN_PAD: 'Even the scratch along the grain with finest wool or a grey pad, lubricated',
  PUMICE: 'Rub with pumice in oil or water',
  POLISH: 'Polish with rottenstone or compound',
  SCUFF: 'Scuff it dull all over, wipe clean',
  COAT: 'Put on one more coat'
};
const NAMES = { MATT: 'matt', SATIN: 'satin', SEMI_GLOSS: 'semi-gloss', GLOSS: 'gloss' };

function ask(v) {
  return {
    job: {
      finish: data.finish(v.finish).finish,
      area: { faceSquareMetre: v.area, edgeSquareMetre: 0, bothFaces: false },
      coats: v.coats,
      wetFilmMicron: v.wet,
      method: v.method,
      gun: 'HVLP'
    },
    lastCoat: v.last,
    today: v.today,
    climate: data.climate(v.low, v.high, v.humidity),
    existing: v.existing === 'NEW' ? null : v.existing,
    wanted: v.wanted
  };
}

function swatch(sheen) {
  const from = swatches && swatches.querySelector('[data-sheen="' + sheen + '"]');
  if (!from) {
    return null;
  }
  const copy = from.cloneNode(true);
  // A copy needs names of its own for its gradients, or both would take the first one's.
  const mark = '-shown-' + sheen.toLowerCase();
  copy.querySelectorAll('[id]').forEach(e => {
    e.id += mark;
  });
  copy.querySelectorAll('*').forEach(e => {
    ['fill', 'stroke', 'clip-path', 'mask', 'filter'].forEach(a => {
      const value = e.getAttribute(a);
      if (value && /^url\(#/.test(value)) {
        e.setAttribute(a, value.replace(')', mark + ')'));
      }
    });
    ['aria-labelledby', 'href'].forEach(a => {
      const value = e.getAttribute(a);
      if (value && (a === 'aria-labelledby' || value.charAt(0) === '#')) {
        e.setAttribute(
          a,
          value
            .split(' ')
            .map(w => w + mark)
            .join(' ')
        );
      }
    });
  });
  return copy;
}

function sideBySide(v) {
  const chosen = v.wanted === v.beside ? [v.wanted] : [v.wanted, v.beside];
  return el('div', { class: 'drawings swatches' }, chosen.map(swatch));
}

function supplies(s) {
  const list = [];
  if (s.liquidCubicMetre > 0) {
    list.push(['finish ', view.q(s.liquidCubicMetre, 'cubic-metre-liquid')]);
  }
  if (s.sheets > 0) {
    list.push([engine.number(Math.ceil(s.sheets)) + (s.sheets > 1 ? ' sheets' : ' sheet')]);
  }
  if (s.compoundKilogram > 0) {
    list.push(['compound ', view.q(s.compoundKilogram, 'kilogram')]);
  }
  return list.map((x, i) => [i ? ', ' : '', x]);
}

function way(w, i) {
  const seconds = w.steps.reduce((sum, s) => sum + s.seconds, 0);
  return el(
    'section',
    { class: 'sheen-way' },
    el('h3', null, (i === 0 ? 'Least work: ' : 'Or: ') + WAYS[w.kind]),
    w.steps.length
      ? [
          el('p', null, 'From ', dates.moment(w.from), ', ', view.q(seconds, 'second'), ' of work.'),
          el(
            'ol',
            null,
            w.steps.map(s => {
              const use = supplies(s.supplies);
              return el(
                'li',
                null,
                WORK[s.what] + (s.grade ? ', P' + s.grade : '') + (s.sheen ? ' (' + NAMES[s.sheen] + ')' : '') + ': ',
                view.q(s.seconds, 'second'),
                use.length ? ['; ', use] : ''
              );
            })
          )
        ]
      : el('p', null, 'Nothing to do.')
  );
}

function change(v) {
  if (v.existing === 'NEW') {
    return el(
      'p',
      { class: 'note' },
      'If you change your mind later, set “It is now” to what you have: the way back is worked out from ' +
        'there. Build the film in gloss and only the last coat in the sheen you want: every way stays open.'
    );
  }
  return el(
    'p',
    { class: 'note' },
    'Try it on an offcut with the same coats first. Rubbing takes film off: edges wear through before faces do.'
  );
}

function show(answer, v) {
  return [
    sideBySide(v),
    view.glance([
      view.figure(
        'It should read',
        view.range(answer.value.glossUnits.low, answer.value.glossUnits.high, answer.value.glossUnits.unit),
        null,
        ' at 60 degrees; ' + view.from(answer.value.glossUnits.from)
      ),
      view.figure('Over', view.record(data.finish(v.finish)))
    ]),
    view.cautions(answer.cautions),
    el('h2', null, 'How to get there'),
    answer.value.ways.map(way),
    change(v),
    bench(data.finish(v.finish).finish),
    view.working(answer.working),
    beside(v)
  ];
}

export const page = {
  follows: { finish: id => ({ wet: view.usual(data.finish(id).finish['wet-film']) }) },
  ask: ask,
  answer: request => engine.sheen(request),
  show: show,
  besides: sideBySide,
  say: answer => WAYS[answer.value.ways[0].kind] + '.'
};
