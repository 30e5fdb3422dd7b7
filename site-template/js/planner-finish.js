// The project planner: boards to finished parts, in the reader's hours. Keeps plans in this browser,
// reads and writes the generator's own plan file, makes a calendar and a card for the wall.
(function () {
  'use strict';

  var view = window.benchlore.view;
  var el = view.el;
  var data = window.benchlore.data;
  var saved = window.benchlore.saved;
  var planFile = window.benchlore.planFile;
  var steps = window.benchlore.steps;
  var kept = window.benchlore.kept;
  var run = window.benchlore.run;
  var nights = window.benchlore.nights;
  var tell = document.getElementById('plan-tell');
  var current = null; // {file, request, answer} of the plan shown
  var fields;

  function names(v) { return { finish: data.finish(v.finish).title, adhesive: data.adhesive(v.adhesive).title, species: data.species(v.species).title }; }

  function show(answer, v) {
    var plan = answer.value;
    var n = names(v);
    var card = window.benchlore.card(current.file.title, plan, n, window.location.href);
    if (run.active()) { return [run.screen(plan, current.request.shop), card]; }
    return [
      view.glance([
        view.figure('Starts', view.day(plan.steps[0].slots[0].start)),
        view.figure('Fully cured', view.day(steps.end(plan))),
        view.figure('Hands-on', view.q(steps.handsOn(plan), 'second')),
        view.figure('Made of', [view.record(data.species(v.species)), ', ', view.record(data.adhesive(v.adhesive)), ', ', view.record(data.finish(v.finish))])
      ]),
      view.cautions(answer.cautions, true),
      el('h2', null, 'Day by day'), steps.ladder(plan, current.request.shop.week, nights.marks(plan, current.request.shop.climate)), nights.listed(v.nights),
      el('h2', null, 'Have ready'), steps.shopping(plan, n),
      el('h2', null, 'Steps'), steps.days(plan),
      el('p', { 'class': 'note' }, 'Waits are worked out for the shop\u2019s temperature and humidity over the day. The label on the tin or bottle wins.'),
      card
    ];
  }

  function say(words) { tell.replaceChildren(words); }

  function name() { return fields.values.title.trim() || 'A plan of mine'; }

  // A kept plan, with its ticks if it was being run.
  function openKept(p) {
    run.leave();
    fields.fromAddress(p.address);
    fields.set({});
    if (p.run) { run.resume(p); }
    say('“' + p.name + '” is open.');
  }

  // ---- files

  function download(name, type, text) {
    var a = el('a', { href: window.URL.createObjectURL(new window.Blob([text], { type: type })), download: name });
    document.body.append(a);
    a.click();
    a.remove();
    window.setTimeout(function () { window.URL.revokeObjectURL(a.href); }, 10000);
  }

  function open(file) {
    file.text().then(function (text) {
      var read = saved.fromYaml(text);
      if (read.problem) { say(read.problem + ' Nothing was changed.'); return; }
      // A run has looked for a free name already.
      if (take(read.file) && !run.active()) { kept.check(); }
    }).catch(function () { say('The file could not be read. Nothing was changed.'); });
  }

  // What the form would hold, once all of a file has been found sound; else what is wrong with it. Changes nothing.
  function prepared(file) {
    var read = planFile.values(file);
    var problems = read.problems.concat(read.problems.length ? [] : fields.problems(read.values));
    if (!problems.length) { problems = read.bounds; }
    if (problems.length) { return { problems: problems }; }
    var values = Object.assign({}, fields.defaults, read.values);
    // A rule may refuse the plan, and the page says why; but a request it can't even read is no plan.
    var answer = window.benchlore.plan(planFile.request(planFile.of(values)));
    return { values: values, run: read.run, problems: answer.broken ? ['It can\u2019t be planned: ' + answer.broken + '.'] : [] };
  }

  // A fault of ours in reading a file is told like one of the file's, so the page stays as it was and alive.
  function safely(make) {
    try { return make(); } catch (e) { return { problems: ['It can\u2019t be read: ' + e.message + '.'] }; }
  }

  // All of a file or none of it.
  function take(file) {
    var before = Object.assign({}, fields.values);
    var ready = safely(function () { return prepared(file); });
    if (!ready.problems.length) {
      run.leave();
      kept.quiet();
      ready = safely(function () { put(ready.values); return ready; });
      if (ready.problems.length) { put(before); }
    }
    if (ready.problems.length) {
      tell.replaceChildren(el('p', null, 'This plan file can\u2019t be used; nothing was changed.'), el('ul', null, ready.problems.map(function (p) { return el('li', null, p); })));
      return false;
    }
    say('“' + ready.values.title + '” is open.');
    if (ready.run) { run.resumeFile(ready.run); }
    return true;
  }

  function put(values) {
    fields.set(values);
    fields.answerNow();
  }

  function button(id, f) {
    var b = document.getElementById(id);
    if (b) { b.addEventListener('click', f); }
  }

  // A plan that came with the site, by name in the address: #begin=day-boat-cabin-panels.
  var begun = window.benchlorePlanFiles || [];
  var wanted = /^#begin=([a-z0-9-]+)$/.exec(window.location.hash);
  if (wanted) { window.history.replaceState(null, '', window.location.pathname); }

  function begin(id) {
    var plan = begun.find(function (p) { return p.id === id; });
    if (plan) { take(saved.fromYaml(plan.text).file); } else { say('There is no plan of that name here.'); }
  }

  // Another finish is laid on in its usual coats; a way or a sheen it does not come in gives way to one it does.
  function usualCoats(id, v) {
    var finish = data.finish(id).finish;
    function word(constant) { return constant.toLowerCase().replace(/_/g, '-'); }
    var methods = finish.methods.map(word);
    var sheens = finish.sheens.map(word);
    return {
      coats: view.usualCoats(finish),
      method: methods.indexOf(v.method) >= 0 ? v.method : methods[0],
      sheen: !sheens.length || sheens.indexOf(v.sheen) >= 0 ? v.sheen : sheens[0]
    };
  }

  fields = window.benchlore.planner({
    follows: { finish: usualCoats },
    ask: function (v) {
      var file = planFile.of(v);
      current = { file: file, request: planFile.request(file), answer: null };
      if (run.active()) { current.request.progress = run.progress(); }
      return current.request;
    },
    answer: function (request) {
      current.answer = window.benchlore.plan(request);
      return current.answer;
    },
    show: show,
    besides: function () { return run.active() ? run.rescue() : null; },
    say: function (answer) {
      var plan = answer.value;
      return plan.steps.length + ' steps, from ' + view.day(plan.steps[0].slots[0].start) + ' to ' + view.day(steps.end(plan)) + '.';
    }
  });

  planFile.shop(planFile.of(fields.defaults));
  button('plan-keep', kept.keep);
  button('plan-calendar', function () {
    if (current.answer.given) {
      download(current.file.id + '.ics', 'text/calendar', window.benchlore.calendar(current.file.id, current.file.title, current.answer.value));
    } else {
      say('There is no plan to put in a calendar yet.');
    }
  });
  button('plan-save', function () { var file = run.inFile(); download(file.id + '.yaml', 'text/yaml', saved.toYaml(file)); });
  button('plan-open', function () { document.getElementById('plan-file').click(); });
  document.getElementById('plan-file').addEventListener('change', function (e) {
    if (e.target.files.length) { open(e.target.files[0]); }
    e.target.value = '';
  });
  button('plan-print', function () { window.print(); });
  var chooser = document.getElementById('plan-begin');
  begun.forEach(function (p) { chooser.append(el('option', { value: p.id }, p.title)); });
  chooser.addEventListener('change', function () {
    if (chooser.value) { begin(chooser.value); }
    chooser.value = '';
  });
  run.use({
    fields: fields,
    again: function () { fields.set({}); },
    say: say,
    name: name,
    download: download
  });
  kept.use({ fields: fields, say: say, open: openKept, name: name });
  if (wanted) { begin(wanted[1]); }

  window.benchlore.project = {
    current: function () { return current; },
    take: take,
    fields: fields,
    say: say,
    download: download,
    names: function () { return names(fields.values); }
  };
}());
