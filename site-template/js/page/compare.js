// Two to four records of one kind side by side; the choice lives in the address.

import './page.js';

const records = window.benchloreCompare;
const byId = new Map(records.map(r => [r.id, r]));
const form = document.getElementById('compare');
const choices = document.getElementById('compare-choices');
const table = document.getElementById('compare-table');
const tell = document.getElementById('compare-tell');
const selects = [];

function make(name, text = '') {
  const e = document.createElement(name);
  if (text) {
    e.textContent = text;
  }
  return e;
}

function select(n) {
  const label = make('label');
  label.appendChild(make('span', ['First', 'Second', 'Third', 'Fourth'][n]));
  const s = make('select');
  s.appendChild(make('option', n < 2 ? 'Choose one' : 'No more')).value = '';
  records.forEach(r => {
    s.appendChild(make('option', r.title)).value = r.id;
  });
  s.addEventListener('change', () => {
    location.replace(
      '#of=' +
        chosen()
          .map(r => r.id)
          .join(',')
    );
    show();
  });
  label.appendChild(s);
  choices.appendChild(label);
  return s;
}

function chosen() {
  const seen = new Set();
  return selects.map(s => byId.get(s.value)).filter(r => r && !seen.has(r.id) && seen.add(r.id));
}

// Tools that are all drawn stand at one scale, the largest this many pixels.
const LARGEST = 132;

function atOneScale(list) {
  return list.length > 1 && list.every(r => r.side);
}

function pictureSize(r, list) {
  const most = Math.max.apply(
    null,
    list.map(other => other.side)
  );
  return atOneScale(list) ? Math.max(12, Math.round((LARGEST * r.side) / most)) : 72;
}

function head(list) {
  const row = make('tr');
  const corner = make('td', atOneScale(list) ? 'Drawn at one scale' : '');
  corner.className = 'scale-note';
  row.appendChild(corner);
  list.forEach(r => {
    const th = make('th');
    th.scope = 'col';
    if (r.picture) {
      const img = make('img');
      img.src = r.picture;
      img.alt = '';
      img.width = pictureSize(r, list);
      img.height = img.width;
      th.appendChild(img);
    }
    const a = make('a', r.title);
    a.href = r.url;
    th.appendChild(a);
    row.appendChild(th);
  });
  const thead = make('thead');
  thead.appendChild(row);
  return thead;
}

// The cells are pages' own markup, made with the site.
function body(list) {
  const labels = [];
  const values = list.map(r => {
    const map = new Map(r.rows);
    r.rows.forEach(row => {
      if (labels.indexOf(row[0]) < 0) {
        labels.push(row[0]);
      }
    });
    return map;
  });
  const tbody = make('tbody');
  labels.forEach(label => {
    const tr = make('tr');
    const th = make('th', label);
    th.scope = 'row';
    tr.appendChild(th);
    const cells = values.map(v => v.get(label) || '\u2013');
    const same = cells.every(c => c === cells[0]);
    if (list.length > 1) {
      tr.className = same ? 'same' : 'differs';
    }
    cells.forEach(c => {
      const td = make('td');
      td.innerHTML = c;
      tr.appendChild(td);
    });
    tbody.appendChild(tr);
  });
  return tbody;
}

function showTell(list) {
  tell.textContent = '';
  const told = new Set();
  list.forEach(a => {
    list.forEach(b => {
      if (a !== b && a.tell[b.id] && !told.has(b.id + ' ' + a.id)) {
        told.add(a.id + ' ' + b.id);
        const p = make('p');
        p.className = 'tell';
        p.appendChild(make('strong', a.title + ' or ' + b.title.toLowerCase() + '? '));
        const span = make('span');
        span.innerHTML = a.tell[b.id];
        p.appendChild(span);
        tell.appendChild(p);
      }
    });
  });
}

function show() {
  const list = chosen();
  table.textContent = '';
  showTell(list);
  if (list.length) {
    table.appendChild(head(list));
    table.appendChild(body(list));
  }
}

function fromAddress() {
  const ids = (new URLSearchParams(location.hash.slice(1)).get('of') || '').split(',').filter(id => byId.has(id));
  selects.forEach((s, n) => {
    s.value = ids[n] || '';
  });
  show();
}

for (let n = 0; n < 4; n++) {
  selects.push(select(n));
}
form.hidden = false;
form.addEventListener('submit', event => {
  event.preventDefault();
});
window.addEventListener('hashchange', fromAddress);
fromAddress();
