// Plans kept in this browser, as the reader meets them: the list, the question that is asked when a name
// is taken by another plan, and the way back for a plan that was forgotten. Nothing is written over unasked.
(function () {
  'use strict';

  var saved = window.benchlore.saved;
  var planFile = window.benchlore.planFile;
  var el = window.benchlore.view.el;
  var words = document.getElementById('plan-taken');
  var choice = document.getElementById('plan-taken-choice');
  var replace = document.getElementById('plan-replace');
  var both = document.getElementById('plan-both');
  var keepButton = document.getElementById('plan-keep');
  var project = null;
  var gone = []; // forgotten since the page was opened, in that order: {plan, at}

  function run() { return window.benchlore.run; }

  function now() { return { name: project.name(), address: project.fields.address(), run: run().kept() || undefined }; }

  // ---- a name that is taken

  // An address as the plan file it stands for: fields that don't count in it make no other plan.
  function file(plan) { return planFile.of(project.fields.readAddress(plan.address).values); }

  function same(a, b) {
    return JSON.stringify([file(a), a.run || null]) === JSON.stringify([file(b), b.run || null]);
  }

  function taken(plan) {
    var there = saved.find(plan.name);
    return there !== null && !run().owns(plan.name) && !same(there, plan);
  }

  function put(plan) {
    quiet();
    var problem = saved.keep(plan);
    if (!problem) { run().own(plan.name); }
    project.say(problem || '“' + plan.name + '” is kept in this browser.');
    list();
  }

  function keep() {
    if (taken(now())) { ask(); } else { put(now()); }
  }

  // Asked beside the name, where it can be put right as well.
  function ask() {
    var name = now().name;
    words.textContent = 'A plan named “' + name + '” is kept here already, and it is not the same as this one. ' +
      'Keep both, and this one becomes “' + saved.free(name) + '”. Nothing is changed until you choose.';
    choice.hidden = false;
    choice.scrollIntoView({ block: 'center' });
    both.focus({ preventScroll: true });
  }

  function quiet() {
    words.textContent = '';
    choice.hidden = true;
  }

  function answered(name) {
    if (name !== project.name()) { rename(name); }
    put(now());
    keepButton.focus();
  }

  // A plan that goes by another name is another plan in a calendar and as a file too.
  function rename(name) { project.fields.set({ title: name, id: '' }); }

  // The name a run may keep its ticks under. The same plan, kept to be run later, gives way to its run.
  function claim() {
    var name = project.name();
    var there = saved.find(name);
    if (there && (there.run && there.run.done && there.run.done.length || !sameButStart(there, now()))) {
      rename(saved.free(name));
      project.say('Another plan named “' + name + '” is kept here, so this one is kept as “' + project.name() + '”.');
    }
    return project.name();
  }

  function sameButStart(a, b) {
    return JSON.stringify(Object.assign(file(a), { start: '' })) === JSON.stringify(Object.assign(file(b), { start: '' }));
  }

  // ---- the list

  function list() {
    var read = saved.read();
    if (read.aside) { project.say('Plans kept here could not be read. They are not lost: they stand aside in this browser as “' + read.aside + '”.'); }
    var items = read.plans.map(item);
    gone.slice().reverse().forEach(function (g) { items.splice(g.at, 0, goneItem(g)); });
    document.getElementById('plan-list').replaceChildren.apply(document.getElementById('plan-list'), items);
    document.getElementById('plan-kept').hidden = items.length === 0;
  }

  function item(plan) {
    var open = el('button', { type: 'button', 'data-name': plan.name }, plan.name);
    var drop = el('button', { type: 'button', 'class': 'quiet-button', 'aria-label': 'Forget ' + plan.name }, 'Forget');
    open.addEventListener('click', function () { quiet(); project.open(plan); });
    drop.addEventListener('click', function () { forget(plan.name); });
    return el('li', null, open, drop);
  }

  function goneItem(g) {
    var undo = el('button', { type: 'button', 'class': 'plan-undo', 'aria-label': 'Undo: bring ' + g.plan.name + ' back' }, 'Undo');
    undo.addEventListener('click', function () { bringBack(g); });
    g.undo = undo;
    return el('li', { 'class': 'plan-gone' }, el('span', null, '“' + g.plan.name + '” is forgotten.'), undo);
  }

  function named(plan, name) {
    if (name === plan.name) { return plan; }
    var rest = plan.address.split('&').filter(function (pair) { return pair && !/^(title|id)=/.test(pair); });
    return Object.assign({}, plan, { name: name, address: ['title=' + encodeURIComponent(name)].concat(rest).join('&') });
  }

  // The page keeps what is forgotten until it is left; where the plan stood, the way back stands.
  function forget(name) {
    var g = saved.forget(name);
    if (g) { gone.push(g); }
    list();
    project.say(g ? '“' + name + '” is forgotten. Undo stands in its place.' : '“' + name + '” could not be forgotten.');
    if (g) { g.undo.focus(); }
  }

  function bringBack(g) {
    var plan = named(g.plan, saved.free(g.plan.name));
    var problem = saved.keepAt(plan, g.at);
    if (!problem) { gone.splice(gone.indexOf(g), 1); }
    list();
    project.say(problem || '“' + plan.name + '” is back.');
    var back = Array.from(document.querySelectorAll('#plan-list [data-name]')).find(function (b) { return b.dataset.name === plan.name; });
    if (back) { back.focus(); }
  }

  window.benchlore.kept = {
    use: function (p) {
      project = p;
      replace.addEventListener('click', function () { answered(project.name()); });
      both.addEventListener('click', function () { answered(saved.free(project.name())); });
      project.fields.element('title').addEventListener('input', quiet);
      list();
    },
    list: list,
    keep: keep,
    // For a plan that came from a file: the question at once, if there is one.
    check: function () { if (taken(now())) { ask(); } },
    quiet: quiet,
    claim: claim
  };
}());
