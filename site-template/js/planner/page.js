// One planner page: the form, the address, and the answer that follows every change.

import { el } from '../page/dom.js';
import { offer } from '../page/names.js';
import * as units from '../page/units.js';
import * as dates from './dates.js';
import { Fields } from './fields.js';
import * as view from './view.js';

const QUIET_MILLIS = 700; // a screen reader is told once the dragging has stopped

// Fields that another field calls for: data-when="surface=Planed,Sawn" or "groups>=2".
function whichFields(form, values) {
  form.querySelectorAll('[data-when]').forEach(group => {
    const m = /^([^=>]+)(>?=)(.*)$/.exec(group.dataset.when);
    const value = values[m[1]];
    group.hidden = m[2] === '>=' ? value < Number(m[3]) : m[3].split(',').indexOf(String(value)) < 0;
  });
}

// Each chosen record is one tap away.
function abouts(form) {
  form.querySelectorAll('select[data-kind]').forEach(s => {
    const link = s.parentNode.querySelector('.about');
    const title = s.options[s.selectedIndex].text.replace(/^[A-Z](?=[a-z])/, c => c.toLowerCase());
    link.href = document.documentElement.dataset.root + s.dataset.kind + '/' + s.value + '.html';
    link.textContent = 'About ' + title;
    link.hidden = false;
  });
}

class PlannerPage {
  constructor(page) {
    this.page = page;
    this.follows = page.follows || {};
    this.form = document.getElementById('planner');
    this.out = document.getElementById('answer');
    this.said = document.getElementById('said');
    this.strange = document.getElementById('strange');
    this.gist = document.getElementById('gist');
    this.waiting = 0;
    this.quiet = 0;
    this.followed = {};
    this.fields = new Fields(this.form, () => this.soon(), page.checks || {});
    this.fields.wasSet = () => this.followNothing();
    this.fields.answerNow = () => this.now();
  }

  begin() {
    this.startDays();
    this.startFollowing();
    this.form.hidden = false;
    this.gist.addEventListener('click', () => this.out.scrollIntoView());
    window.addEventListener('hashchange', () => this.fromAddress());
    units.onChange(() => this.work());
    this.fromAddress();
  }

  // So many days from today, at nine in the morning.
  startDays() {
    this.form.querySelectorAll('[data-day]').forEach(e => {
      const d = new Date();
      d.setDate(d.getDate() + Number(e.dataset.day));
      this.fields.setDefault(e.name, dates.minute(d).slice(0, 10) + 'T09:00');
    });
  }

  startFollowing() {
    Object.keys(this.follows).forEach(name => {
      const usual = this.follows[name](this.fields.values[name], this.fields.values);
      Object.keys(usual).forEach(n => this.fields.setDefault(n, usual[n]));
    });
  }

  soon() {
    if (!this.waiting) {
      this.waiting = window.requestAnimationFrame(() => this.work());
    }
  }

  // The answer to what has just been set, without waiting for the next frame.
  now() {
    if (this.waiting) {
      window.cancelAnimationFrame(this.waiting);
      this.work();
    }
  }

  work() {
    this.waiting = 0;
    this.follow();
    whichFields(this.form, this.fields.values);
    abouts(this.form);
    const request = this.page.ask(this.fields.values, this.fields);
    const answer = request === null ? null : this.page.answer(request);
    const open = this.openFolds();
    this.out.replaceChildren(...this.nodes(answer).flat(9).filter(Boolean));
    this.openAgain(open);
    this.gist.textContent = this.words(answer);
    window.clearTimeout(this.quiet);
    this.quiet = window.setTimeout(() => this.speak(answer), QUIET_MILLIS);
    offer({ last: { request, answer } });
  }

  nodes(answer) {
    const values = this.fields.values;
    if (answer === null) {
      return [];
    }
    if (answer.given === false) {
      return [view.refused(answer), this.page.besides ? this.page.besides(values) : null];
    }
    return [this.page.show(answer, values, this.fields)];
  }

  follow() {
    Object.keys(this.follows).forEach(name => {
      const value = this.fields.values[name];
      if (value !== this.followed[name]) {
        this.followed[name] = value;
        this.fields.follow(this.follows[name](value, this.fields.values));
      }
    });
  }

  // An address says what it wants of every field: nothing follows from it.
  followNothing() {
    Object.keys(this.follows).forEach(name => {
      this.followed[name] = this.fields.values[name];
    });
  }

  // What the reader has opened stays open while the figures change below.
  openFolds() {
    return Array.from(this.out.querySelectorAll('details')).map(d => d.open);
  }

  openAgain(open) {
    const now = Array.from(this.out.querySelectorAll('details'));
    if (now.length === open.length) {
      now.forEach((d, i) => {
        d.open = open[i];
      });
    }
  }

  words(answer) {
    if (answer === null) {
      return '';
    }
    return answer.given === false ? 'This can\u2019t be done as asked.' : this.page.say(answer, this.fields.values);
  }

  speak(answer) {
    const text = this.words(answer);
    if (this.said.textContent !== text) {
      this.said.textContent = text;
    }
  }

  fromAddress() {
    const problems = this.fields.fromAddress(window.location.hash);
    this.strange.hidden = problems.length === 0;
    this.strange.replaceChildren();
    if (problems.length) {
      const words = 'Not everything in the address could be used; the usual values stand in its place.';
      this.strange.append(
        el('p', null, words),
        el(
          'ul',
          null,
          problems.map(p => el('li', null, p))
        )
      );
    }
    this.followNothing();
    this.work();
  }
}

// Begins a page: ask(values, fields) is its request, or null where there is nothing to ask; answer(request)
// what the engine says to it; show(answer, values, fields) the nodes for #answer; say(answer, values) one line
// for a screen reader; follows names fields whose change gives others a new value; besides(values) are nodes
// beside a refusal; checks are checks of fields by name. Gives the fields.
export function planner(page) {
  const made = new PlannerPage(page);
  made.begin();
  return made.fields;
}
