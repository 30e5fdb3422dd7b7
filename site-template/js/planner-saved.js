// Plans kept in this browser: a versioned list; what can't be read is set aside under another name
// and never lost. Also the plan file as YAML, the same that the generator reads.
(function () {
  'use strict';

  var KEY = 'benchlore.plans';
  var ASIDE = 'benchlore.plans.aside.';
  var VERSION = 1;
  var MOST = 200;
  var LONGEST = 80; // letters of a name, as in the form
  var yaml = window.jsyaml;

  function storage() {
    try { return window.localStorage; } catch (e) { return null; }
  }

  // Whether a run is one as it is kept: the engine and the page take every step and moment of it on trust.
  function soundRun(run) {
    return run !== null && typeof run === 'object' && Array.isArray(run.done) && run.done.every(function (d) {
      return d !== null && typeof d === 'object' && typeof d.step === 'string' && d.step !== '' && Array.isArray(d.slots) && d.slots.length > 0 &&
        d.slots.every(function (s) { return s !== null && typeof s === 'object' && moment(s.start) && moment(s.end) && s.start <= s.end; });
    });
  }

  function moment(text) {
    return typeof text === 'string' && /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d$/.test(text) && window.benchlore.isDay(text.slice(0, 10)) && !isNaN(Date.parse(text));
  }

  function good(list) {
    return list !== null && typeof list === 'object' && list.version === VERSION && Array.isArray(list.plans) &&
      list.plans.every(function (p) {
        return p !== null && typeof p === 'object' && typeof p.name === 'string' && typeof p.address === 'string' &&
          (p.run === undefined || soundRun(p.run));
      });
  }

  // {plans, aside}: aside is the name under which unreadable storage was put, else empty.
  function read() {
    var s = storage();
    var text = s && s.getItem(KEY);
    if (!text) { return { plans: [], aside: '' }; }
    try {
      var list = JSON.parse(text);
      if (good(list)) { return { plans: list.plans, aside: '' }; }
    } catch (e) {
      // not JSON: set aside below
    }
    var name = ASIDE + 1;
    for (var n = 2; s.getItem(name) !== null; n++) { name = ASIDE + n; }
    try {
      s.setItem(name, text);
    } catch (e) {
      return { plans: [], aside: KEY }; // no room for a copy: it stays where it is, and no plan is kept over it
    }
    s.removeItem(KEY);
    return { plans: [], aside: name };
  }

  // True if it was kept.
  function write(plans) {
    var s = storage();
    if (!s) { return false; }
    try {
      s.setItem(KEY, JSON.stringify({ version: VERSION, plans: plans }));
      return true;
    } catch (e) {
      return false; // storage full or switched off
    }
  }

  // The plan of a name, or null.
  function find(name) { return read().plans.find(function (p) { return p.name === name; }) || null; }

  // A name no kept plan has: the name itself, else "Cabinet 2", "Cabinet 3" and so on.
  function free(name) {
    if (!find(name)) { return name; }
    var m = /^(.*\S) ([2-9]|[1-9]\d)$/.exec(name);
    var base = m && find(m[1]) ? m[1] : name;
    for (var n = 2; ; n++) {
      var next = base.slice(0, LONGEST - 1 - String(n).length).trim() + ' ' + n;
      if (!find(next)) { return next; }
    }
  }

  // Keeps a plan under its name, in the place of one of the same name. Empty if it was kept, else why not.
  function keep(plan) { return keepAt(plan, 0); }

  function keepAt(plan, at) {
    var kept = read();
    var plans = kept.plans.filter(function (p) { return p.name !== plan.name; });
    if (plans.length >= MOST) { return 'There are ' + MOST + ' plans here already: forget one first, or save this one as a file.'; }
    plans.splice(at, 0, plan);
    return kept.aside !== KEY && write(plans) ? '' : 'This browser keeps nothing for a page: save the plan as a file instead.';
  }

  // Takes a plan out of the list: {plan, at}, so that it can be put back; null if it could not be.
  function forget(name) {
    var plans = read().plans;
    var at = plans.findIndex(function (p) { return p.name === name; });
    if (at < 0) { return null; }
    var gone = { plan: plans[at], at: at };
    plans.splice(at, 1);
    return write(plans) ? gone : null;
  }

  function toYaml(file) {
    return '# yaml-language-server: $schema=../schema/plans.schema.json\n' +
      yaml.dump(file, { lineWidth: 100, noRefs: true, quotingType: '"', flowLevel: 3, schema: yaml.CORE_SCHEMA });
  }

  // The file's data; an error names the line.
  function fromYaml(text) {
    if (text.length > 200000) { return { problem: 'The file is too large to be a plan.' }; }
    try {
      return { file: yaml.load(text, { schema: yaml.JSON_SCHEMA }) };
    } catch (e) {
      var at = e.mark ? 'Line ' + (e.mark.line + 1) + ', column ' + (e.mark.column + 1) + ': ' : '';
      return { problem: at + 'this is no YAML: ' + (e.reason || 'it can\u2019t be read') + '.' };
    }
  }

  window.benchlore.saved = { soundRun: soundRun, read: read, find: find, free: free, keep: keep, keepAt: keepAt, forget: forget, toYaml: toYaml, fromYaml: fromYaml };
}());
