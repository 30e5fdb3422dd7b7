// Nights that were colder or warmer than planned: chosen from those of the run, added, listed, taken out.
// After each change the plan is laid out again and one line says what moved.
(function () {
  'use strict';

  var view = window.benchlore.view;
  var planFile = window.benchlore.planFile;
  var steps = window.benchlore.steps;
  var el = view.el;
  var AHEAD = 2; // nights after tonight that can be chosen
  var MOST = 60;
  var COLDEST = 5; // the hour
  var project = null;
  var opened = false; // whether the fold is open: it is made anew with each answer
  var told = ''; // what the last change moved

  function nights() { return planFile.nights(project.fields.values.nights); }

  function find(date) { return nights().find(function (n) { return n.date === date; }) || null; }

  function celsius(value) { return view.q(value, 'celsius'); }

  // ---- which nights

  function shifted(date, days) { return new Date(Date.parse(date + 'T00:00Z') + days * 86400000).toISOString().slice(0, 10); }

  // From the night before the run began, whose morning may still be cold, to the next two; the newest first.
  function choices(now, begun) {
    var list = [];
    var last = shifted(now.slice(0, 10), AHEAD);
    var first = shifted(begun.slice(0, 10), -1);
    for (var d = last; d >= first && list.length < MOST; d = shifted(d, -1)) { list.push(d); }
    return list;
  }

  function called(date) { return view.shortDay(date) + ' to ' + view.shortDay(shifted(date, 1)); }

  function option(date, now) {
    var name = date === shifted(now.slice(0, 10), -1) ? ' (last night)' : date === now.slice(0, 10) ? ' (tonight)' : '';
    return el('option', { value: date }, called(date) + name);
  }

  // ---- what moved

  function laid(text) {
    var request = planFile.request(planFile.of(Object.assign({}, project.fields.values, { nights: text })));
    if (project.progress()) { request.progress = project.progress(); }
    return window.benchlore.plan(request);
  }

  function done(step) {
    var progress = project.progress();
    return progress !== null && progress.done.some(function (d) { return d.step === step.id; });
  }

  // "at 11:40 instead of 8:15" on one day, else both with their days.
  function instead(now, before) {
    if (now.slice(0, 10) !== before.slice(0, 10)) { return view.shortDay(now) + ' at ' + view.clock(now) + ' instead of ' + view.shortDay(before) + ' at ' + view.clock(before); }
    return view.shortDay(now) + ' at ' + view.clock(now) + ' instead of ' + view.clock(before);
  }

  function moved(before, after) {
    if (!after.given) { return 'With this, what is left can\u2019t be laid out: the reasons stand below.'; }
    if (!before.given) { return 'The plan is laid out again.'; }
    var was = new Map(before.value.steps.map(function (s) { return [s.id, s.slots[0].start]; }));
    var first = after.value.steps.find(function (s) { return s.kind === 'WORK' && !done(s) && was.has(s.id) && was.get(s.id) !== s.slots[0].start; });
    var ends = [steps.end(after.value), steps.end(before.value)];
    var cured = ends[0] === ends[1] ? '' : 'All is fully cured ' + instead(ends[0], ends[1]) + '.';
    if (first) { return first.title + (first.task === 'COAT' ? ' can go on ' : ' can begin ') + instead(first.slots[0].start, was.get(first.id)) + '.' + (cured ? ' ' + cured : ''); }
    return cured || 'Nothing in the plan moves.';
  }

  // ---- changing

  function put(list, focus) {
    var text = planFile.nightsText(list);
    var before = laid(project.fields.values.nights);
    told = moved(before, laid(text));
    project.fields.set({ nights: text });
    project.keep();
    project.fields.answerNow();
    project.say(told);
    var next = document.getElementById(focus);
    if (next) { next.focus(); }
  }

  function without(date) { return nights().filter(function (n) { return n.date !== date; }); }

  function remove(date) { put(without(date), 'night-date'); }

  function add() {
    var date = document.getElementById('night-date').value;
    var low = read('night-low');
    var high = read('night-high');
    var still = document.getElementById('night-still');
    var there = find(date);
    var night = { date: date, low: low, high: high };
    if (there && there.humidity !== undefined) { night.humidity = there.humidity; }
    if (still && still.checked) { night.heated = false; }
    var wrong = document.getElementById('night-wrong');
    try {
      if (isNaN(low) || isNaN(high)) { throw new Error('the coldest and the warmest have to be temperatures such as ' + shown(4)); }
      var list = without(date).concat([night]);
      planFile.nightsText(list);
      put(list, 'night-add');
    } catch (problem) {
      wrong.textContent = problem.message.charAt(0).toUpperCase() + problem.message.slice(1) + '.';
    }
  }

  function read(id) { return window.benchlore.parseMeasure(document.getElementById(id).value, '°C'); }

  // A temperature as the reader's thermometer shows it, with its unit.
  function shown(value) { return window.benchlore.units.text(value, value, 'celsius').replace(/\u00a0/g, ' '); }

  // ---- what stands on the page

  function item(n) {
    var b = el('button', { type: 'button', 'aria-label': 'Remove the night ' + called(n.date) }, 'Remove');
    b.addEventListener('click', function () { remove(n.date); });
    return el('li', null, el('span', null, called(n.date) + ': ', celsius(n.low), ' at the coldest, ', celsius(n.high), ' the afternoon before',
      n.humidity === undefined ? '' : [' at ', view.q(n.humidity, 'percent')], n.heated === false ? ', heater off' : ''), b);
  }

  function list(all) {
    return all.length ? el('ul', { 'class': 'night-list', 'aria-label': 'Nights colder or warmer than planned' }, all.map(item)) : null;
  }

  function box(id, words, value) {
    return el('p', null, el('label', { 'for': id }, words), el('input', { id: id, inputmode: 'text', autocomplete: 'off', value: shown(value) }));
  }

  // The control in a plan that is run: now and begun are moments.
  function control(now, begun) {
    var v = project.fields.values;
    var select = el('select', { id: 'night-date' }, choices(now, begun).map(function (d) { return option(d, now); }));
    var last = shifted(now.slice(0, 10), -1); // always there: the list begins no later
    select.value = last;
    var low = box('night-low', 'Coldest, towards morning', v.low);
    var high = box('night-high', 'Warmest, the afternoon before', v.high);
    var still = v.heated ? el('label', { 'class': 'night-still' }, el('input', { type: 'checkbox', id: 'night-still' }), ' The heater was off') : null;
    var button = el('button', { type: 'button', id: 'night-add' }, 'Add');
    function fill() {
      var n = find(select.value) || v;
      low.lastChild.value = shown(n.low);
      high.lastChild.value = shown(n.high);
      if (still) { still.firstChild.checked = n.heated === false; }
    }
    select.addEventListener('change', fill);
    fill();
    button.addEventListener('click', add);
    var fold = el('details', { 'class': 'nights' }, el('summary', null, 'Was a night colder (or warmer) than planned?'),
      el('div', { 'class': 'night-add' }, el('p', null, el('label', { 'for': 'night-date' }, 'The night'), select), low, high, still, el('p', null, button)),
      el('p', { id: 'night-wrong', 'class': 'field-wrong', role: 'alert' }),
      told ? el('p', { 'class': 'night-told' }, told) : null,
      list(nights()),
      el('p', { 'class': 'quiet' }, 'It counts from that afternoon, by way of the coldest hour at five, to the next afternoon. Every other day stays as planned; to change the room for good, stop running and change the form.'));
    fold.open = opened;
    fold.addEventListener('toggle', function () { opened = fold.open; });
    return fold;
  }

  // Under a plan that is not run: only if there are any. Takes the nights as the address has them.
  function listed(text) {
    var there = list(planFile.nights(text));
    return there ? el('section', { 'class': 'nights' }, el('h2', null, 'Nights colder or warmer than planned'), there) : null;
  }

  // For the drawing of the days: those the plan passes through, as cold as the engine takes them to be.
  function marks(plan, climate) {
    return climate.otherwise.filter(function (d) { return d.hours[COLDEST].celsius !== climate.hours[COLDEST].celsius; }).map(function (d) {
      return { from: shifted(d.date, -1) + 'T21:00:00', at: d.date + 'T05:00:00', to: d.date + 'T07:00:00', label: shown(d.hours[COLDEST].celsius) };
    }).filter(function (m) { return m.at > plan.steps[0].slots[0].start && m.at < steps.end(plan); });
  }

  window.benchlore.nights = {
    use: function (p) { project = p; },
    // What moved is told until something else happens.
    quiet: function () { told = ''; },
    forget: function () { told = ''; opened = false; },
    control: control,
    listed: listed,
    marks: marks
  };
}());
