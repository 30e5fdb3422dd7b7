// The sanding planner: the grades worth using, how long each takes, and whether the machine should
// run longer so that hands sand less.

import { el, heading, listOf, svg } from '../page/dom.js';
import * as draw from './drawing.js';
import * as engine from './engine.js';
import * as figureText from './figure-text.js';
import { data } from './records.js';
import { dust } from './sanding-dust.js';
import * as view from './view.js';

const MOST_OFFERS = 3; // of grades worth buying
const TOOLS = { RANDOM_ORBIT: 'random-orbit sander', BLOCK: 'block', BELT: 'belt sander', HAND_PROFILE: 'by hand' };

function surface(v, f) {
  switch (v.surface) {
    case 'BallNose':
      return { surface: 'BallNose', ballDiameterMetre: f.si('ball'), stepoverMetre: f.si('stepover') };
    case 'StraightCut':
      return { surface: 'StraightCut', bitDiameterMetre: f.si('bit'), feedPerFluteMetre: f.si('chip') };
    case 'Planed':
      return { surface: 'Planed', knifePitchMetre: f.si('pitch'), cutterRadiusMetre: f.si('cutter') };
    case 'Sawn':
      return { surface: 'Sawn', by: v.saw };
    case 'SandedTo':
      return { surface: 'SandedTo', grit: grit(v.sanded) };
    case 'TornGrain':
      return { surface: 'TornGrain', depthMicron: v.torn };
    default:
      return { surface: 'OldFilm', filmMicron: v.film, fate: v.fate };
  }
}

// What the finish will look like, as far as the last grade hangs on it.
function look(role, sheen) {
  return role === 'film' ? sheen : role === 'penetrating' ? 'OILED' : 'AS_STATED';
}

function label(grit) {
  return (grit.system === 'FEPA_P' ? 'P' : '') + grit.number;
}

function grit(label) {
  return { system: 'FEPA_P', number: Number(label.slice(1)) };
}

function picked(v, prefix) {
  return Object.keys(v)
    .filter(n => n.indexOf(prefix) === 0 && v[n])
    .map(n => n.slice(prefix.length));
}

function ask(v, f) {
  const species = data.species(v.species);
  const chosen = data.finish(v.finish);
  const finish = chosen.finish;
  return {
    start: surface(v, f),
    wood: Object.assign({}, species.sanding, { figured: v.figured }),
    area: { totalSquareMetre: v.area, endGrainSquareMetre: v.ends, pieces: v.pieces },
    wanted: {
      finalGrade: finish['final-grade'],
      look: look(finish.role, v.sheen),
      betweenCoatGrade: chosen.between,
      coats: v.coats,
      raisesGrain: finish['raises-grain'],
      poresFilled: v.pores
    },
    shop: {
      shelf: picked(v, 'shelf-').map(grit),
      tools: picked(v, 'tool-'),
      jumpLimitRatio: data.shop.sanding.jumpLimitRatio
    }
  };
}

// The grades as steps down a ladder, each as wide as the minutes it takes.
function ladder(passes) {
  const longest = Math.max.apply(
    null,
    passes.map(p => p.seconds)
  );
  const out = draw.drawing(
    430,
    passes.length * 40 + 8,
    'The grades, coarse to fine',
    passes.map(p => label(p.grit)).join(', then ')
  );
  passes.forEach((p, i) => {
    const y = i * 40 + 4;
    const width = Math.max(3, (250 * p.seconds) / longest);
    out.append(
      svg('text', { class: 'drw-text', x: 4, y: y + 21 }, label(p.grit)),
      svg('rect', { class: 'lad-work', x: 62, y: y, width: width, height: 30, rx: 3 }),
      draw.figure(68 + width, y + 21, p.seconds, 'second')
    );
  });
  return el(
    'figure',
    { class: 'ladder' },
    out,
    el('figcaption', null, 'As wide as the time it takes: ' + passes.map(p => label(p.grit)).join(', ') + '.')
  );
}

function row(name, p) {
  return el(
    'tr',
    null,
    el('th', { scope: 'row' }, name),
    el('td', null, TOOLS[p.tool] || p.tool),
    el('td', null, view.q(p.seconds, 'second')),
    el('td', null, String(p.discs)),
    el('td', null, view.q(p.removedMicron, 'micron'))
  );
}

function extraRows(extras) {
  const rows = [];
  const add = (name, pass) => rows.push(row(name + label(pass.grit), pass));
  if (extras.endGrain) {
    add('End grain, ', extras.endGrain);
  }
  if (extras.grainRaising) {
    add('Wet, dry, knock off the fuzz, ', extras.grainRaising.knockOff);
  }
  if (extras.poreFilling) {
    add('Level the filler, ', extras.poreFilling.level);
  }
  if (extras.betweenCoats) {
    add('Between coats, ' + extras.betweenCoats.times + ' times, ', extras.betweenCoats.each);
  }
  return rows;
}

function passes(value) {
  const heads = ['Grade', 'With', 'Time', 'Discs or sheets', 'Takes off'];
  const head = el(
    'thead',
    null,
    el(
      'tr',
      null,
      heads.map(h => el('th', { scope: 'col' }, h))
    )
  );
  const rows = value.passes.map(p => row(label(p.grit), p)).concat(extraRows(value.extras));
  return el(
    'div',
    { class: 'scroll', role: 'region', tabindex: '0', 'aria-label': 'The passes' },
    el('table', null, head, el('tbody', null, rows))
  );
}

function machineOrSand(v, f, request) {
  if (v.surface !== 'BallNose') {
    return null;
  }
  const answer = engine.machineOrSand({
    milling: {
      ballDiameterMetre: f.si('ball'),
      feedMetrePerSecond: f.si('feed'),
      finestStepoverMetre: f.si('finest'),
      coarsestStepoverMetre: f.si('coarsest'),
      machineWeight: v.weight
    },
    sanding: request
  });
  if (!answer.given) {
    return [el('h2', null, 'Machine longer, or sand longer?'), view.refused(answer)];
  }
  const best = answer.value.best;
  return [
    el('h2', null, 'Machine longer, or sand longer?'),
    view.glance([
      view.figure('Best stepover', view.q(best.stepoverMetre, 'metre'), view.line(answer, 'WEIGHTED_TIME')),
      view.figure('Machine', view.q(best.machineSeconds, 'second'), view.line(answer, 'MACHINE_TIME')),
      view.figure('Sanding', view.q(best.sandingSeconds, 'second'))
    ]),
    curve(answer.value, f),
    view.cautions(answer.cautions),
    view.working(answer.working)
  ];
}

const LEFT = 50;
const BOTTOM = 200;

// Where a stepover and a time stand in the drawing: stepovers tenfold by tenfold, times evenly.
function scales(points) {
  const high = Math.max(...points.map(p => p.machineSeconds + p.sandingSeconds));
  const low = points[0].stepoverMetre;
  const wide = points[points.length - 1].stepoverMetre;
  const x = s => LEFT + (360 * Math.log(s / low)) / Math.log(wide / low);
  const y = t => BOTTOM - (180 * t) / high;
  return { high, low, wide, x, y };
}

function axes({ high, low, wide, x, y }) {
  const times = draw
    .ticks(0, high, 4)
    .flatMap(t => [
      svg('path', { class: 'plan-grid', d: 'M' + LEFT + ' ' + y(t) + 'H410' }),
      draw.words(46, y(t) + 4, figureText.text(t, t, 'second'), { 'text-anchor': 'end' })
    ]);
  const stepovers = [low, Math.sqrt(low * wide), wide];
  return times.concat(stepovers.map(s => draw.figure(x(s), 220, s, 'metre', { 'text-anchor': 'middle' })));
}

function curve(value, f) {
  const scale = scales(value.points);
  const { low, wide, x, y } = scale;
  const at = (p, seconds) => x(p.stepoverMetre).toFixed(1) + ' ' + y(seconds).toFixed(1);
  const path = pick => value.points.map((p, i) => (i ? 'L' : 'M') + at(p, pick(p))).join('');
  const words = 'Machine time falls and sanding time rises as the stepover widens; the best is at the dot.';
  const out = draw.drawing(430, 240, 'Time against stepover', words);
  out.append(
    ...axes(scale),
    svg('path', { class: 'plan-line-machine', d: path(p => p.machineSeconds) }),
    svg('path', { class: 'plan-line-hand', d: path(p => p.sandingSeconds) }),
    svg('circle', { class: 'plan-dot', cx: x(value.best.stepoverMetre), cy: y(value.best.sandingSeconds), r: 5 })
  );
  const now = f.si('stepover');
  if (now >= low && now <= wide) {
    out.append(svg('path', { class: 'plan-now', d: 'M' + x(now) + ' 14V200' }), draw.words(x(now) + 3, 14, 'yours'));
  }
  const key = name => el('span', { class: 'key key-' + name });
  const caption = el('figcaption', null, key('machine'), ' machine ', key('hand'), ' sanding');
  return el('figure', { class: 'ladder' }, out, caption);
}

// The grades that would save time if they lay on the shelf, the best first.
function worthBuying(request) {
  const answer = engine.shelfGap(request);
  const offers = answer.given ? answer.value.offers : [];
  if (!offers.length) {
    return null;
  }
  const now = answer.value.nowSeconds;
  const saved = o =>
    now === null || now === undefined
      ? ['the faces take ', view.q(o.thenSeconds, 'second'), '; without it there is no way']
      : ['saves ', view.q(now - o.thenSeconds, 'second'), ' on the faces'];
  return [
    heading('A grade worth buying'),
    listOf(offers.slice(0, MOST_OFFERS), o => [el('strong', null, label(o.grit)), ': ', saved(o), '.']),
    view.working(answer.working)
  ];
}

// What to ask for where paper is sold by the other scale.
function otherScale(passes) {
  const rows = passes.map(p => [p, engine.grade({ grit: p.grit, system: 'CAMI' })]).filter(r => r[1].given);
  return rows.length
    ? [
        heading('Where paper is marked without a P'),
        listOf(rows, r => [
          label(r[0].grit),
          ' is nearest to ',
          el('strong', null, String(r[1].value.grit.number)),
          '.'
        ])
      ]
    : null;
}

function show(answer, v, f) {
  const value = answer.value;
  return [
    view.glance([
      view.figure('Hands-on', view.q(value.totals.seconds, 'second')),
      view.figure('To take off', view.q(value.startDepthMicron, 'micron'), view.line(answer, 'DEPTH_TO_REMOVE')),
      view.figure('Discs or sheets', String(value.totals.discs)),
      view.figure('Dust', view.q(value.totals.dustKilogram, 'kilogram'), view.line(answer, 'DUST_MADE'))
    ]),
    view.cautions(answer.cautions),
    value.passes.length
      ? ladder(value.passes)
      : el('p', null, 'Nothing to do: the finish asks for no finer. Open the wood with a few light strokes.'),
    passes(value),
    v.surface === 'BallNose' ? draw.ridges(f.si('ball'), f.si('stepover')) : null,
    worthBuying(ask(v, f)),
    otherScale(value.passes),
    dust(value.totals, v),
    machineOrSand(v, f, ask(v, f)),
    view.working(answer.working)
  ];
}

export const page = {
  follows: { finish: id => ({ coats: view.usualCoats(data.finish(id).finish) }) },
  ask: ask,
  answer: request => engine.sanding(request),
  show: show,
  say: answer =>
    answer.value.passes.map(p => label(p.grit)).join(', ') +
    '; ' +
    view.q(answer.value.totals.seconds, 'second').textContent +
    ' of sanding.'
};
