// Narrows the faults down by toggles and words; what is chosen lives in the address.

import './page.js';

const FIRST_CAUSES = 8;
const IDLE_WORDS =
  'a an and are as at be but by for from in is it its like my of off on or so that the there they this to up was ' +
  'when where with';
const IDLE = new Set(IDLE_WORDS.split(' '));

const form = document.getElementById('faults-form');
const text = document.getElementById('faults-text');
const note = document.getElementById('faults-note');
const status = document.getElementById('faults-status');
const index = document.getElementById('faults-index');
const all = document.getElementById('faults-all');
const title = document.getElementById('faults-all-title');
const causes = document.getElementById('faults-causes');
const causeList = document.getElementById('faults-causes-list');
const more = document.getElementById('faults-more');
let showEvery = false;

function array(list) {
  return Array.prototype.slice.call(list);
}
function count(n, one) {
  return n + ' ' + one + (n === 1 ? '' : 's');
}

// The bare word: an ending more or less makes no difference.
function bare(word) {
  return word.length > 4 ? word.replace(/(ing|ed|es|s|y)$/, '') : word;
}

function words(string) {
  return (string.toLowerCase().match(/[a-z0-9]+/g) || []).filter(w => !IDLE.has(w)).map(bare);
}

function field(weight, string) {
  return { weight: weight, words: words(string) };
}

const rows = array(form.querySelectorAll('[data-row]')).map(row => ({
  name: row.getAttribute('data-row'),
  buttons: array(row.querySelectorAll('button'))
}));

const faults = array(all.querySelectorAll('article')).map((article, at) => {
  const facts = {};
  rows.forEach(row => {
    facts[row.name] = article.getAttribute('data-' + row.name).split(' ');
  });
  return {
    article: article,
    at: at,
    facts: facts,
    title: article.querySelector('h3').textContent,
    width: rows.reduce((n, row) => n * facts[row.name].length, 1),
    causes: array(article.querySelectorAll('.fault-causes > li')),
    fields: [
      field(4, article.querySelector('h3').textContent + ' ' + article.getAttribute('data-names')),
      field(3, article.getAttribute('data-lay')),
      field(2, article.querySelector('.fault-symptom').textContent),
      field(1, article.querySelector('.fault-looks').textContent)
    ]
  };
});

function pressed(row) {
  const on = row.buttons.filter(b => b.getAttribute('aria-pressed') === 'true')[0];
  return on ? on.getAttribute('data-word') : '';
}

function press(row, word) {
  row.buttons.forEach(b => {
    b.setAttribute('aria-pressed', String(word !== '' && b.getAttribute('data-word') === word));
  });
}

// Does every row but one fit?
function fits(fault, but) {
  return rows.every(row => {
    const word = pressed(row);
    return row === but || !word || fault.facts[row.name].indexOf(word) >= 0;
  });
}

// How well the words fit: nothing where one of them is nowhere.
function score(fault, asked) {
  let sum = 0;
  for (let i = 0; i < asked.length; i++) {
    let best = 0;
    fault.fields.forEach(f => {
      f.words.forEach(w => {
        if (w.indexOf(asked[i]) === 0) {
          best = Math.max(best, f.weight + (w === asked[i] ? 0.5 : 0));
        }
      });
    });
    if (best === 0) {
      return 0;
    }
    sum += best;
  }
  return asked.length === 0 ? 1 : sum;
}

// Best words first, then the faults that show at fewest times and places.
function order(a, b) {
  return b.score - a.score || a.fault.width - b.fault.width || a.fault.at - b.fault.at;
}

function listCauses(hits) {
  const list = [];
  hits.forEach((hit, at) => {
    hit.fault.causes.forEach((li, rank) => {
      list.push({ li: li, rank: rank, at: at, title: hit.fault.title });
    });
  });
  list.sort((a, b) => a.rank - b.rank || a.at - b.at);
  causeList.textContent = '';
  list.slice(0, showEvery ? list.length : FIRST_CAUSES).forEach(cause => {
    const li = cause.li.cloneNode(true);
    const of = document.createElement('span');
    of.className = 'fault-of';
    of.textContent = cause.title;
    li.querySelector('summary').appendChild(of);
    causeList.appendChild(li);
  });
  more.hidden = showEvery || list.length <= FIRST_CAUSES;
  more.textContent = 'Show all ' + list.length + ' causes';
  return list.length;
}

function showCounts(scores) {
  rows.forEach(row => {
    row.buttons.forEach(b => {
      const n = faults.filter(
        (fault, i) =>
          scores[i] > 0 && fits(fault, row) && fault.facts[row.name].indexOf(b.getAttribute('data-word')) >= 0
      ).length;
      b.querySelector('.faults-count').textContent = n;
      b.classList.toggle('faults-none', n === 0);
    });
  });
}

function show() {
  const asked = words(text.value);
  const chosen = asked.length > 0 || rows.some(pressed);
  const scores = faults.map(fault => score(fault, asked));
  const hits = faults
    .map((fault, i) => ({ fault: fault, score: scores[i] }))
    .filter(hit => hit.score > 0 && fits(hit.fault, null));
  hits.sort(chosen ? order : (a, b) => a.fault.at - b.fault.at);
  faults.forEach(fault => {
    fault.article.hidden = true;
  });
  hits.forEach(hit => {
    hit.fault.article.hidden = false;
    all.appendChild(hit.fault.article);
  });
  index.hidden = true;
  // One fault alone has its causes in its own box.
  causes.hidden = !chosen || hits.length < 2;
  const n = listCauses(chosen ? hits : []);
  title.textContent = !chosen ? 'Every fault' : hits.length === 1 ? 'What it is, most likely' : 'What it may be';
  status.textContent = !chosen
    ? count(hits.length, 'fault') + '. Choose when, where or what you see.'
    : hits.length === 0
      ? 'No fault here fits all of that. Take one answer back.'
      : count(hits.length, 'fault') + ', ' + count(n, 'cause') + '.';
  showCounts(scores);
}

function address() {
  const q = new URLSearchParams();
  rows.forEach(row => {
    if (pressed(row)) {
      q.set(row.name, pressed(row));
    }
  });
  if (text.value.trim()) {
    q.set('words', text.value.trim());
  }
  return q.toString();
}

function changed() {
  showEvery = false;
  note.textContent = '';
  history.replaceState(null, '', '#' + address());
  show();
}

// Whatever stands in the address, only answers that are on the page are taken from it.
function fromAddress() {
  const hash = location.hash.slice(1);
  const plain = hash.indexOf('=') < 0;
  const q = new URLSearchParams(plain ? '' : hash);
  let strange = false;
  rows.forEach(row => {
    const word = q.get(row.name) || '';
    const known = row.buttons.some(b => b.getAttribute('data-word') === word);
    strange = strange || (word !== '' && !known);
    press(row, known ? word : '');
  });
  q.forEach((value, name) => {
    strange = strange || (name !== 'words' && !rows.some(row => row.name === name));
  });
  const target = plain && hash ? document.getElementById(hash) : null;
  strange = strange || (plain && hash !== '' && !target);
  text.value = (q.get('words') || '').slice(0, 80);
  note.textContent = strange ? 'Part of that address means nothing here, so it is left out.' : '';
  showEvery = false;
  show();
  if (target) {
    target.scrollIntoView();
  }
}

rows.forEach(row => {
  row.buttons.forEach(b => {
    b.addEventListener('click', () => {
      const word = b.getAttribute('data-word');
      press(row, pressed(row) === word ? '' : word);
      changed();
    });
  });
});
text.addEventListener('input', changed);
form.addEventListener('submit', event => {
  event.preventDefault();
});
document.getElementById('faults-clear').addEventListener('click', () => {
  rows.forEach(row => {
    press(row, '');
  });
  text.value = '';
  changed();
  text.focus();
});
more.addEventListener('click', () => {
  showEvery = true;
  show();
  const next = causeList.children[FIRST_CAUSES];
  if (next) {
    next.querySelector('summary').focus();
  }
});
window.addEventListener('hashchange', fromAddress);
form.hidden = false;
fromAddress();
