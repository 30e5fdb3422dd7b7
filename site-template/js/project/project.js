// The project planner: boards to finished parts, in the reader's hours. Keeps plans in this browser,
// reads and writes the generator's own plan file, makes a calendar and a card for the wall.

import '../page/page.js';
import { el } from '../page/dom.js';
import { offer } from '../page/names.js';
import * as units from '../page/units.js';
import * as dates from '../planner/dates.js';
import * as engine from '../planner/engine.js';
import { publish } from '../planner/names.js';
import { planner } from '../planner/page.js';
import { data } from '../planner/records.js';
import * as view from '../planner/view.js';
import { card } from './card.js';
import * as desk from './desk.js';
import * as finishFields from './finish-fields.js';
import * as kept from './kept.js';
import * as nightWords from './night-words.js';
import * as nights from './nights.js';
import * as planFile from './plan-file.js';
import * as planRequest from './plan-request.js';
import * as run from './run.js';
import * as running from './running.js';
import * as saved from './saved.js';
import * as steps from './steps.js';
import * as ticks from './ticks.js';
import * as unkept from './unkept.js';

let current = null; // {file, request, answer} of the plan shown

function names(v) {
  return {
    finish: finishFields
      .chosen(v)
      .map(f => f.title)
      .join(', '),
    adhesive: data.adhesive(v.adhesive).title,
    species: data.species(v.species).title
  };
}

function show(answer, v) {
  const plan = answer.value;
  const n = names(v);
  const onPaper = card(current.file.title, plan, n, window.location.href);
  if (running.active()) {
    return [run.screen(plan), onPaper];
  }
  return [
    view.glance([
      view.figure('Starts', dates.day(plan.steps[0].slots[0].start)),
      view.figure('Fully cured', dates.day(steps.end(plan))),
      view.figure('Hands-on', view.q(steps.handsOn(plan), 'second')),
      view.figure('Made of', [
        view.record(data.species(v.species)),
        ', ',
        view.record(data.adhesive(v.adhesive)),
        finishFields.chosen(v).map(f => [', ', view.record(f)])
      ])
    ]),
    el('h2', null, 'Day by day'),
    steps.ladder(plan),
    nights.listed(v.nights),
    el('h2', null, 'Have ready'),
    steps.shopping(plan, n),
    el('h2', null, 'Steps'),
    steps.days(plan),
    el(
      'p',
      { class: 'note' },
      'Waits are worked out for the shop\u2019s temperature and humidity over the day. The label on the tin' +
        ' or bottle wins.'
    ),
    onPaper
  ];
}

// A kept plan, with its ticks if it was being run.
function openKept(p) {
  run.leave();
  fields.fromAddress(p.address);
  fields.set({});
  if (p.run) {
    run.resume(p);
  }
  desk.say('“' + p.name + '” is open.');
}

// ---- files

function open(file) {
  file
    .text()
    .then(text => {
      const read = saved.fromYaml(text);
      if (read.problem) {
        desk.say(read.problem + ' Nothing was changed.');
        return;
      }
      // A run has looked for a free name already.
      if (take(read.file) && !running.active()) {
        kept.check();
      }
    })
    .catch(() => {
      desk.say('The file could not be read. Nothing was changed.');
    });
}

// What the form would hold, once all of a file has been found sound; else what is wrong with it. Changes nothing.
function prepared(file) {
  const read = planFile.values(file);
  let problems = read.problems.concat(read.problems.length ? [] : fields.problems(read.values));
  if (!problems.length) {
    problems = read.bounds;
  }
  if (problems.length) {
    return { problems: problems };
  }
  const values = Object.assign({}, fields.defaults, read.values);
  // A rule may refuse the plan, and the page says why; but a request it can't even read is no plan.
  const answer = engine.plan(planRequest.request(planFile.of(values)));
  return {
    values: values,
    run: read.run,
    problems: answer.broken ? ['It can\u2019t be planned: ' + answer.broken + '.'] : []
  };
}

// A fault of ours in reading a file is told like one of the file's, so the page stays as it was and alive.
function safely(make) {
  try {
    return make();
  } catch (e) {
    return { problems: ['It can\u2019t be read: ' + e.message + '.'] };
  }
}

// All of a file or none of it.
function take(file) {
  const before = Object.assign({}, fields.values);
  let ready = safely(() => prepared(file));
  if (!ready.problems.length) {
    run.leave();
    kept.quiet();
    ready = safely(() => {
      put(ready.values);
      return ready;
    });
    if (ready.problems.length) {
      put(before);
    }
  }
  if (ready.problems.length) {
    desk.say(
      el('p', null, 'This plan file can\u2019t be used; nothing was changed.'),
      el(
        'ul',
        null,
        ready.problems.map(p => el('li', null, p))
      )
    );
    return false;
  }
  desk.say('“' + ready.values.title + '” is open.');
  if (ready.run) {
    run.resumeFile(ready.run);
  }
  return true;
}

function put(values) {
  fields.set(values);
  fields.answerNow();
}

// What is wrong with the nights of an address.
function nightsWrong(text) {
  try {
    nightWords.read(text);
  } catch (problem) {
    return 'can\u2019t be used: ' + problem.message;
  }
  return '';
}

function ask(v, fields) {
  finishFields.askSheens(v, fields);
  const file = planFile.of(v);
  current = { file, request: planRequest.request(file), answer: null };
  if (running.active()) {
    current.request.progress = running.progress();
  }
  return current.request;
}

function inShort(answer) {
  const plan = answer.value;
  const days = dates.day(plan.steps[0].slots[0].start) + ' to ' + dates.day(steps.end(plan));
  return plan.steps.length + ' steps, from ' + days + '.';
}

// ---- what can be pressed

function onPress(id, f) {
  document.getElementById(id).addEventListener('click', f);
}

// The plan as the text of a calendar file, in the reader's units.
function calendar() {
  const { id, title } = current.file;
  const system = units.system().toUpperCase();
  return engine.calendar({ id, title, system, request: current.request }).value.text;
}

function takeCalendar() {
  const { file, answer } = current;
  if (answer.given) {
    desk.download(file.id + '.ics', 'text/calendar', calendar());
  } else {
    desk.say('There is no plan to put in a calendar yet.');
  }
}

function takeFile() {
  const file = ticks.inFile();
  desk.download(file.id + '.yaml', 'text/yaml', saved.toYaml(file));
}

function buttons() {
  const chosen = document.getElementById('plan-file');
  onPress('plan-keep', kept.keep);
  onPress('plan-calendar', takeCalendar);
  onPress('plan-save', takeFile);
  onPress('plan-open', () => chosen.click());
  onPress('plan-print', () => window.print());
  chosen.addEventListener('change', () => {
    if (chosen.files.length) {
      open(chosen.files[0]);
    }
    chosen.value = '';
  });
}

// Plans that came with the site; one of them may stand in the address: #begin=day-boat-cabin-panels.
function plansToBegin() {
  const plans = window.benchlorePlanFiles || [];
  const chooser = document.getElementById('plan-begin');
  plans.forEach(p => chooser.append(el('option', { value: p.id }, p.title)));
  chooser.addEventListener('change', () => {
    if (chooser.value) {
      beginFrom(plans, chooser.value);
    }
    chooser.value = '';
  });
  if (wanted) {
    beginFrom(plans, wanted[1]);
  }
}

function beginFrom(plans, id) {
  const plan = plans.find(p => p.id === id);
  if (plan) {
    take(saved.fromYaml(plan.text).file);
  } else {
    desk.say('There is no plan of that name here.');
  }
}

const wanted = /^#begin=([a-z0-9-]+)$/.exec(window.location.hash);
if (wanted) {
  window.history.replaceState(null, '', window.location.pathname);
}

const fields = planner({
  follows: finishFields.follows(),
  checks: { nights: nightsWrong },
  ask,
  answer: request => {
    current.answer = engine.plan(request);
    return current.answer;
  },
  show,
  besides: () => (running.active() ? run.rescue() : null),
  say: inShort
});

function begin() {
  desk.seat(fields);
  planFile.startFrom(planFile.of(fields.defaults));
  unkept.ready();
  run.ready();
  kept.ready(openKept);
  buttons();
  plansToBegin();
}

publish();
offer({
  card,
  saved: { read: saved.read, find: saved.find, keep: saved.keep, toYaml: saved.toYaml, fromYaml: saved.fromYaml },
  kept: { list: kept.list },
  steps: { plus: steps.plus },
  project: { current: () => current, calendar, fields, take, say: desk.say, names: () => names(fields.values) }
});
begin();
