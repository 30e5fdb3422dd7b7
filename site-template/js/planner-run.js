// Running a plan: the next thing to do and its countdown on one screen, big enough for arm's length.
// Steps are ticked off; one done late, or a night that was colder than planned, moves what follows:
// the engine lays out the rest again from what is done and from now.
(function () {
  'use strict';

  var view = window.benchlore.view;
  var steps = window.benchlore.steps;
  var saved = window.benchlore.saved;
  var kept = window.benchlore.kept;
  var nights = window.benchlore.nights;
  var planFile = window.benchlore.planFile;
  var unkept = window.benchlore.unkept;
  var el = view.el;
  var run = null; // {done: [{step, slots}]} while a plan is run
  var mine = null; // the name it is kept under, which is this run's own
  var project = null;
  var ticking = 0;

  function now() { return view.minute(new Date()) + ':00'; }

  function progress() { return run ? { resume: now(), done: run.done } : null; }

  function isDone(id) { return run.done.some(function (d) { return d.step === id; }); }

  function next(plan) { return plan.steps.find(function (s) { return s.kind === 'WORK' && !isDone(s.id); }) || null; }

  function apart(from, to) { return (Date.parse(to + 'Z') - Date.parse(from + 'Z')) / 1000; }

  // A step done at a moment: its planned stretches, moved so that the last ends then.
  function tick(step, at) {
    var last = step.slots[step.slots.length - 1];
    var shift = apart(last.end, at);
    run.done.push({ step: step.id, slots: step.slots.map(function (s) { return { start: steps.plus(s.start, shift), end: steps.plus(s.end, shift) }; }) });
    nights.quiet();
    keep();
    project.again();
    project.say('“' + step.title + '” is done' + (unkept.stands() ? ', but that is not kept in this browser.' : '.'));
  }

  function undo() {
    run.done.pop();
    nights.quiet();
    keep();
    project.again();
    project.say('The last tick is taken back' + (unkept.stands() ? ', but that is not kept in this browser.' : '.'));
  }

  function keep() {
    if (project.name() !== mine) { mine = kept.claim(); }
    var problem = saved.keep({ name: mine, address: project.fields.address(), run: run });
    if (problem) { unkept.show(inFile(), problem); } else { unkept.clear(inFile().title); }
    kept.list();
  }

  function start() {
    if (run) { stop(); return; }
    run = { done: [] };
    project.fields.set({ start: now().slice(0, 16) });
    keep();
    begin();
  }

  // The plan as a file, with its ticks while it is run.
  function inFile() {
    var file = planFile.of(project.fields.values);
    if (run) { file.run = planFile.runInFile(run, now()); }
    return file;
  }

  // Goes on with a plan whose ticks were kept.
  function resume(plan) {
    run = { done: plan.run.done };
    mine = plan.name;
    begin();
  }

  // Goes on with ticks that come from a file: from now on they are kept here too, under a name that is free.
  function resumeFile(more) {
    run = { done: more.done };
    mine = null;
    keep();
    begin();
  }

  function begin() {
    document.body.classList.add('running');
    document.getElementById('plan-run').textContent = 'Stop running';
    window.clearInterval(ticking);
    ticking = window.setInterval(beat, 1000);
    project.again();
    document.getElementById('answer').scrollIntoView();
  }

  function stop() {
    run = null;
    mine = null;
    nights.forget();
    window.clearInterval(ticking);
    document.body.classList.remove('running');
    document.getElementById('plan-run').textContent = 'Start now';
    project.again();
  }

  var beats = 0;
  function beat() {
    var clock = document.getElementById('run-clock');
    if (clock) { clock.textContent = countdown(clock.dataset.to); }
    beats++;
    // Room may have been made meanwhile.
    if (beats % 60 === 0 && unkept.stands()) { keep(); }
    // Every minute the plan is laid out again: what is late moves on. Not while someone types in it.
    if (beats % 60 === 0 && !document.getElementById('answer').contains(document.activeElement)) { project.again(); }
  }

  function countdown(to) {
    var left = Math.round((new Date(to).getTime() - Date.now()) / 1000);
    if (left <= 0) { return 'now'; }
    if (left >= 172800) { return Math.floor(left / 86400) + ' days ' + Math.floor(left % 86400 / 3600) + ' h'; }
    return Math.floor(left / 3600) + ':' + view.two(Math.floor(left % 3600 / 60)) + ':' + view.two(left % 60);
  }

  function waiting(plan, step) {
    var at = now();
    var wait = plan.steps.find(function (s) { return s.kind === 'WAIT' && s.slots[0].start <= at && s.slots[0].end > at && s.slots[0].end <= step.slots[0].start; });
    return wait ? wait.title : '';
  }

  // Why not yet: a joint that is not set, a coat that is not ready. The button stays, the reason stands above it.
  function tooSoon(step, wait) {
    var opens = step.window && step.window.opens > now() ? step.window.opens : wait ? step.slots[0].start : '';
    return opens > now() ? el('p', { 'class': 'caution-line' }, 'Not before ', view.moment(opens), wait ? ': ' + wait.charAt(0).toLowerCase() + wait.slice(1) + '.' : '.') : null;
  }

  // Rags, vapour and glue do not stop being dangerous when a step is ticked off: what can hurt stays in sight
  // until the next work begins.
  function still(plan) {
    var last = run.done.length ? plan.steps.find(function (s) { return s.id === run.done[run.done.length - 1].step; }) : null;
    var list = last ? last.cautions.filter(function (c) { return c.severity !== 'WORK'; }) : [];
    return list.length ? el('details', { open: '' }, el('summary', null, 'Still true after “' + last.title + '”'), view.cautions(list)) : null;
  }

  function doneButton(step) {
    var b = el('button', { type: 'button', 'class': 'run-done' }, 'Done now');
    b.addEventListener('click', function () { tick(step, now()); });
    return b;
  }

  function doneAt(step) {
    var input = el('input', { type: 'datetime-local', id: 'run-at', value: now().slice(0, 16) });
    var b = el('button', { type: 'button' }, 'Done then');
    b.addEventListener('click', function () {
      if (/^\d{4}-\d\d-\d\dT\d\d:\d\d$/.test(input.value)) { tick(step, input.value + ':00'); }
    });
    return el('details', null, el('summary', null, 'It was done at another time'), el('p', { 'class': 'run-at' }, el('label', { 'for': 'run-at' }, 'Done at'), input, b));
  }

  // The moment the run began: its start, or its first step if that was done earlier.
  function begun() {
    return run.done.reduce(function (first, d) { return d.slots[0].start < first ? d.slots[0].start : first; }, project.fields.values.start);
  }

  function cold() { return nights.control(now(), begun()); }

  function screen(plan, shop) {
    var step = next(plan);
    if (!step) {
      return [el('section', { 'class': 'run' }, el('h2', null, 'All done'), el('p', { 'class': 'run-title' }, 'Fully cured ' + view.day(steps.end(plan)) + '.'), undoButton())];
    }
    var begins = step.slots[0].start;
    var wait = waiting(plan, step);
    return [el('section', { 'class': 'run', 'aria-label': 'The next thing to do' },
      el('p', { 'class': 'run-when' }, apart(now(), begins) > 0 ? 'Next, ' + steps.when(step) : 'Now'),
      el('p', { 'class': 'run-title' }, step.title),
      el('p', { 'class': 'run-clock', role: 'timer', 'aria-live': 'off' }, el('span', { id: 'run-clock', 'data-to': begins }, countdown(begins))),
      wait ? el('p', { 'class': 'run-wait' }, 'Until then: ' + wait) : null,
      tooSoon(step, wait),
      still(plan),
      step.window && step.window.closes ? el('p', { 'class': 'step-window' }, 'Begin before ', view.moment(step.window.closes), ', or scuff first.') : null,
      view.cautions(step.cautions),
      step.notes.length ? el('ul', { 'class': 'step-notes' }, step.notes.map(function (n) { return el('li', null, view.note(n)); })) : null,
      el('p', { 'class': 'run-buttons' }, doneButton(step), undoButton()), doneAt(step), cold()),
    list(plan, shop)];
  }

  function undoButton() {
    if (!run.done.length) { return null; }
    var b = el('button', { type: 'button', 'class': 'run-undo' }, 'Take the last tick back');
    b.addEventListener('click', undo);
    return b;
  }

  // Beside a refusal: what follows can't be laid out from what is done, so the way back stays in reach.
  function rescue() {
    return el('section', { 'class': 'run', 'aria-label': 'Take it up again' },
      el('p', null, 'What is left can\u2019t be laid out from what is done. Take the last tick back, or put a night right. Stop running to change the room in the form.'),
      el('p', { 'class': 'run-buttons' }, undoButton()), cold());
  }

  function list(plan, shop) {
    return el('section', null, el('h2', null, 'All steps'), el('ol', { 'class': 'run-list' }, plan.steps.map(function (s) {
      var done = s.kind === 'WORK' ? isDone(s.id) : s.slots[0].end <= now();
      return el('li', { 'class': done ? 'run-is-done' : s.kind === 'WORK' ? '' : 'run-is-wait' }, el('span', { 'class': 'run-mark', 'aria-hidden': 'true' }, done ? '✓' : s.kind === 'WORK' ? '○' : '…'),
        el('span', null, s.title, done ? el('span', { 'class': 'hidden' }, ' (done)') : '', el('br'), el('span', { 'class': 'quiet' }, steps.when(s))));
    })), steps.ladder(plan, shop.week, nights.marks(plan, shop.climate)));
  }

  window.benchlore.run = {
    use: function (p) {
      project = p;
      unkept.use(p);
      nights.use({ fields: p.fields, say: p.say, progress: progress, keep: function () { if (run) { keep(); } } });
      document.getElementById('plan-run').addEventListener('click', start);
    },
    active: function () { return run !== null; },
    kept: function () { return run; },
    owns: function (name) { return run !== null && name === mine; },
    own: function (name) { if (run) { mine = name; } },
    leave: function () { if (run) { stop(); } },
    progress: progress,
    screen: screen,
    rescue: rescue,
    resume: resume,
    resumeFile: resumeFile,
    inFile: inFile
  };
}());
