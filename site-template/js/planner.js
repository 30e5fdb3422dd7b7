// One planner page: the form, the address, and the answer that follows every change.
// A page calls benchlore.planner(page) with
//   ask(values, fields)  -> the request, or null where there is nothing to ask
//   answer(request)      -> what the engine says to it
//   show(answer, values, fields) -> nodes for #answer
//   say(answer, values)  -> one line for a screen reader
//   follows: {name: function (value, values)}: fields that take a new value when the reader changes another
//   besides(values): where a page has it, nodes beside a refusal
(function () {
  'use strict';

  var QUIET_MILLIS = 700; // a screen reader is told once the dragging has stopped
  var view = window.benchlore.view;

  function planner(page) {
    var form = document.getElementById('planner');
    var out = document.getElementById('answer');
    var said = document.getElementById('said');
    var strange = document.getElementById('strange');
    var gist = document.getElementById('gist');
    var waiting = 0;
    var followed = {};
    var quiet = 0;
    var fields = window.benchlore.fields(form, function () {
      if (!waiting) { waiting = window.requestAnimationFrame(work); }
    });

    function work() {
      waiting = 0;
      follow();
      whichFields();
      abouts();
      var request = page.ask(fields.values, fields);
      var answer = request === null ? null : page.answer(request);
      var open = openFolds();
      out.replaceChildren.apply(out, [].concat(answer === null ? [] :
        answer.given === false ? [view.refused(answer), page.besides ? page.besides(fields.values) : null] : page.show(answer, fields.values, fields)).flat(9).filter(Boolean));
      openAgain(open);
      gist.textContent = words(answer);
      window.clearTimeout(quiet);
      quiet = window.setTimeout(function () { speak(answer); }, QUIET_MILLIS);
      window.benchlore.last = { request: request, answer: answer };
    }

    // What a script sets, it sets of every field it means; what the reader changes, others follow.
    var set = fields.set;
    fields.set = function (more) {
      set(more);
      followNothing();
    };

    function follow() {
      Object.keys(page.follows || {}).forEach(function (name) {
        var value = fields.values[name];
        if (value !== followed[name]) {
          followed[name] = value;
          set(page.follows[name](value, fields.values));
        }
      });
    }

    // An address says what it wants of every field: nothing follows from it.
    function followNothing() {
      Object.keys(page.follows || {}).forEach(function (name) { followed[name] = fields.values[name]; });
    }

    // Fields that another field calls for: data-when="surface=Planed,Sawn" or "groups>=2".
    function whichFields() {
      form.querySelectorAll('[data-when]').forEach(function (group) {
        var m = /^([^=>]+)(>?=)(.*)$/.exec(group.dataset.when);
        var value = fields.values[m[1]];
        group.hidden = m[2] === '>=' ? value < Number(m[3]) : m[3].split(',').indexOf(String(value)) < 0;
      });
    }

    // Each chosen record is one tap away.
    function abouts() {
      form.querySelectorAll('select[data-kind]').forEach(function (s) {
        var link = s.parentNode.querySelector('.about');
        link.href = document.documentElement.dataset.root + s.dataset.kind + '/' + s.value + '.html';
        link.textContent = 'About ' + s.options[s.selectedIndex].text.replace(/^[A-Z](?=[a-z])/, function (c) { return c.toLowerCase(); });
        link.hidden = false;
      });
    }

    // What the reader has opened stays open while the figures change below.
    function openFolds() {
      return Array.from(out.querySelectorAll('details')).map(function (d) { return d.open; });
    }

    function openAgain(open) {
      var now = Array.from(out.querySelectorAll('details'));
      if (now.length === open.length) { now.forEach(function (d, i) { d.open = open[i]; }); }
    }

    function words(answer) {
      return answer === null ? '' : answer.given === false ? 'This can\u2019t be done as asked.' : page.say(answer, fields.values);
    }

    function speak(answer) {
      var text = words(answer);
      if (said.textContent !== text) { said.textContent = text; }
    }

    function fromAddress() {
      var problems = fields.fromAddress(window.location.hash);
      strange.hidden = problems.length === 0;
      strange.replaceChildren();
      if (problems.length) {
        strange.append(view.el('p', null, 'Not everything in the address could be used; the usual values stand in its place.'),
          view.el('ul', null, problems.map(function (p) { return view.el('li', null, p); })));
      }
      followNothing();
      work();
    }

    // So many days from today, at nine in the morning.
    form.querySelectorAll('[data-day]').forEach(function (e) {
      var d = new Date();
      d.setDate(d.getDate() + Number(e.dataset.day));
      fields.setDefault(e.name, view.minute(d).slice(0, 10) + 'T09:00');
    });
    Object.keys(page.follows || {}).forEach(function (name) {
      var usual = page.follows[name](fields.values[name], fields.values);
      Object.keys(usual).forEach(function (n) { fields.setDefault(n, usual[n]); });
    });
    form.hidden = false;
    gist.addEventListener('click', function () { out.scrollIntoView(); });
    window.addEventListener('hashchange', fromAddress);
    window.benchlore.units.onChange(work);
    // The answer to what has just been set, without waiting for the next frame.
    fields.answerNow = function () {
      if (waiting) {
        window.cancelAnimationFrame(waiting);
        work();
      }
    };
    fromAddress();
    return fields;
  }

  window.benchlore.planner = planner;
}());
