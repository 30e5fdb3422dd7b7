// A project's plan as the reader sees it: at a glance, day by day, what to have ready, every step with
// its cautions, notes and working. Made from the engine's answer alone.
(function () {
  'use strict';

  var view = window.benchlore.view;
  var el = view.el;

  function end(plan) {
    return plan.steps.reduce(function (last, s) {
      var e = s.slots[s.slots.length - 1].end;
      return e > last ? e : last;
    }, '');
  }

  function seconds(slot) { return (Date.parse(slot.end + 'Z') - Date.parse(slot.start + 'Z')) / 1000; }

  function handsOn(plan) {
    return plan.steps.reduce(function (sum, s) {
      return s.kind === 'WORK' ? s.slots.reduce(function (t, slot) { return t + seconds(slot); }, sum) : sum;
    }, 0);
  }

  function blocks(plan) {
    var list = [];
    plan.steps.forEach(function (s, i) {
      if (s.kind !== 'WORK') { return; }
      joined(s.slots).forEach(function (slot) {
        list.push({ from: slot.start, to: slot.end, number: i + 1, coat: s.task === 'COAT' });
      });
    });
    return list;
  }

  function stage(drying, name) {
    var s = drying.stages.find(function (x) { return x.stage === name; });
    return s ? plus(drying.start, s.planned) : null;
  }

  function plus(iso, s) { return new Date(Date.parse(iso + 'Z') + s * 1000).toISOString().slice(0, 19); }

  function bands(plan, week) {
    var list = [];
    plan.coats.coats.forEach(function (coat, i) {
      var touch = stage(coat.drying, 'TOUCH_DRY');
      var opens = stage(coat.drying, 'RECOAT_OPENS');
      var closes = stage(coat.drying, 'RECOAT_CLOSES');
      if (touch) { list.push({ kind: 'wet', from: coat.drying.start, to: touch }); }
      if (opens && closes && i < plan.coats.coats.length - 1) { list.push({ kind: 'window', from: opens, to: closes }); }
    });
    var days = new Set(blocks(plan).map(function (b) { return b.from.slice(0, 10); }));
    days.forEach(function (day) {
      var weekday = (new Date(day + 'T00:00Z').getUTCDay() + 6) % 7;
      if (week.daysOff.indexOf(day) >= 0) { return; }
      week.days[weekday].forEach(function (span) {
        list.push({ kind: 'shop', from: plus(day + 'T00:00:00', span.fromMinuteInclusive * 60), to: plus(day + 'T00:00:00', span.toMinuteExclusive * 60) });
      });
    });
    return list;
  }

  // nights: those that were otherwise, {from, to, at, label}.
  function ladder(plan, week, nights) {
    var keys = [['work', 'work'], ['coat', 'a coat'], ['wet', 'film wet'], ['window', 'recoat window'], ['shop', 'shop hours']];
    return el('figure', { 'class': 'ladder' },
      window.benchlore.days('The days of this plan', { blocks: blocks(plan), bands: bands(plan, week), nights: nights }),
      el('figcaption', null, keys.concat(nights.length ? [['otherwise', 'a colder or warmer night']] : []).map(function (k) {
        return [el('span', { 'class': 'key key-' + k[0] }), ' ' + k[1] + ' '];
      })));
  }

  function shopping(plan, names) {
    return el('ul', { 'class': 'shopping' }, plan.shopping.map(function (p) {
      var what = p.what.replace(/^finish\b/, names.finish).replace(/^adhesive\b/, names.adhesive);
      return el('li', null, el('label', null, el('input', { type: 'checkbox' }), el('span', null, what + ': ', el('strong', null, view.quantity(p.amount)),
        p.remark ? el('span', { 'class': 'quiet' }, ' (' + p.remark + ')') : null)));
    }));
  }

  // Stretches that follow each other without a pause, as one.
  function joined(slots) {
    var list = [];
    slots.forEach(function (s) {
      var last = list[list.length - 1];
      if (last && last.end === s.start) { last.end = s.end; } else { list.push({ start: s.start, end: s.end }); }
    });
    return list;
  }

  function when(step) {
    var slots = joined(step.slots);
    return slots.map(function (slot, i) {
      var before = i > 0 ? slots[i - 1] : null;
      var lead = before && before.start.slice(0, 10) === slot.start.slice(0, 10) ? '' : view.shortDay(slot.start) + ' ';
      var last = slot.end.slice(0, 10) === slot.start.slice(0, 10) ? view.clock(slot.end) : view.shortDay(slot.end) + ' ' + view.clock(slot.end);
      return (i ? ', ' : '') + lead + view.clock(slot.start) + '–' + last;
    }).join('');
  }

  function window_(w) {
    if (!w) { return null; }
    return el('p', { 'class': 'step-window' }, 'Window: from ', view.moment(w.opens), w.closes ? [' to ', view.moment(w.closes), '. After that, scuff first.'] : ' on.');
  }

  function step(s, i, more) {
    return el('li', { id: 'step-' + s.id, 'class': s.kind === 'WORK' ? 'step-work' : 'step-wait' },
      el('div', { 'class': 'step-head' }, el('span', { 'class': 'step-number', 'aria-hidden': 'true' }, String(i + 1)),
        el('div', null, el('h4', null, s.title), el('p', { 'class': 'step-when' }, when(s)))),
      window_(s.window), view.cautions(s.cautions),
      s.notes.length ? el('ul', { 'class': 'step-notes' }, s.notes.map(function (n) { return el('li', null, view.note(n)); })) : null,
      view.working(s.working), more ? more(s) : null);
  }

  function days(plan, more) {
    var list = [];
    plan.steps.forEach(function (s, i) {
      var day = s.slots[0].start.slice(0, 10);
      if (!list.length || list[list.length - 1].day !== day) { list.push({ day: day, steps: [] }); }
      list[list.length - 1].steps.push(step(s, i, more));
    });
    return list.map(function (d) {
      return el('section', { 'class': 'day' }, el('h3', null, view.day(d.day)), el('ul', { 'class': 'plan-steps' }, d.steps));
    });
  }

  window.benchlore.steps = { joined: joined, end: end, handsOn: handsOn, ladder: ladder, shopping: shopping, days: days, when: when, stage: stage, plus: plus };
}());
