// The front page's finder: shows the ranking as someone types.

import { offer } from '../page/names.js';
import '../page/page.js';
import * as finder from './rank.js';
import * as words from './words.js';

const root = document.documentElement.getAttribute('data-root') || '';

function element(name, className = '', text = '') {
  const e = document.createElement(name);
  if (className) {
    e.className = className;
  }
  if (text) {
    e.textContent = text;
  }
  return e;
}

// What the first answer is easily taken for, and the difference.
function nearMisses(d) {
  return d.near.slice(0, 2).map(near => {
    const other = finder.record(near[0]);
    const p = element('p', 'hit-near', 'Not quite? ');
    const a = element('a', '', other.title);
    a.href = root + other.url;
    p.appendChild(a);
    p.appendChild(document.createTextNode(': ' + near[1]));
    return p;
  });
}

function item(hit, words, first) {
  const d = finder.record(hit.id);
  const li = element('li', first ? 'hit hit-first' : 'hit');
  const a = element('a');
  a.href = root + d.url;
  if (d.picture) {
    const img = element('img', 'hit-picture');
    img.src = root + 'drawings/' + d.id + '.svg';
    img.alt = '';
    img.width = 56;
    img.height = 56;
    a.appendChild(img);
  }
  const body = element('span', 'hit-body');
  body.appendChild(element('span', 'hit-kind', d.one));
  body.appendChild(element('strong', 'hit-title', d.title));
  body.appendChild(element('span', 'hit-does', d.does));
  const reason = finder.why(hit.id, words);
  if (reason) {
    body.appendChild(element('span', 'hit-why', reason));
  }
  a.appendChild(body);
  li.appendChild(a);
  if (first) {
    nearMisses(d).forEach(p => {
      li.appendChild(p);
    });
  }
  return li;
}

function show(words, list, status, kinds) {
  list.textContent = '';
  if (!words.trim()) {
    status.textContent = '';
    return;
  }
  const hits = finder.find(words, kinds.value).slice(0, 12);
  hits.forEach((hit, i) => {
    list.appendChild(item(hit, words, i === 0));
  });
  status.textContent =
    hits.length === 0
      ? 'Nothing here fits. Try what it looks like, what it leaves behind, or what went wrong.'
      : hits.length === 1
        ? '1 answer'
        : hits.length + ' answers, best first';
}

// What stands in the address of the page: the words and the kind.
function address(words, kind) {
  const q = new URLSearchParams();
  if (words.trim()) {
    q.set('find', words.trim());
  }
  if (kind) {
    q.set('kind', kind);
  }
  return '#' + q.toString();
}

// The arrow keys go from the words to the answers, and up and down among them.
function arrows(input, list) {
  input.addEventListener('keydown', event => {
    const first = list.querySelector('a');
    if (event.key === 'ArrowDown' && first) {
      event.preventDefault();
      first.focus();
    }
  });
  list.addEventListener('keydown', event => {
    const links = Array.from(list.querySelectorAll('li > a'));
    const at = links.indexOf(document.activeElement);
    if (event.key === 'ArrowDown' && at >= 0 && at + 1 < links.length) {
      event.preventDefault();
      links[at + 1].focus();
    }
    if (event.key === 'ArrowUp' && at >= 0) {
      event.preventDefault();
      (links[at - 1] || input).focus();
    }
  });
}

function start(input) {
  const list = document.getElementById('finder-answers');
  const status = document.getElementById('finder-status');
  const kinds = document.getElementById('finder-kind');
  const form = document.getElementById('finder');
  const update = () => {
    show(input.value, list, status, kinds);
    history.replaceState(null, '', address(input.value, kinds.value));
  };
  const fromAddress = () => {
    const q = new URLSearchParams(location.hash.slice(1));
    const kind = q.get('kind') || '';
    input.value = q.get('find') || '';
    kinds.value = Array.from(kinds.options).some(o => o.value === kind) ? kind : '';
    show(input.value, list, status, kinds);
  };
  form.hidden = false;
  input.addEventListener('input', update);
  kinds.addEventListener('change', update);
  window.addEventListener('hashchange', fromAddress);
  form.addEventListener('submit', event => {
    event.preventDefault();
    const first = list.querySelector('a');
    if (first) {
      first.click();
    }
  });
  arrows(input, list);
  fromAddress();
  // The index is made while the reader thinks, so that the first letter answers at once.
  window.setTimeout(finder.prepare, 30);
}

offer({
  find: finder.find,
  words: { tokens: words.tokens, stem: words.stem, prepare: words.prepare, holding: words.holding, all: words.all }
});
const input = document.getElementById('finder-words');
if (input) {
  start(input);
}
