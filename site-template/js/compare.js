// Two to four records of one kind side by side; the choice lives in the address.
(function () {
  'use strict';

  var records = window.benchloreCompare;
  var byId = new Map(records.map(function (r) { return [r.id, r]; }));
  var form = document.getElementById('compare');
  var choices = document.getElementById('compare-choices');
  var table = document.getElementById('compare-table');
  var tell = document.getElementById('compare-tell');
  var selects = [];

  function make(name, text) {
    var e = document.createElement(name);
    if (text) { e.textContent = text; }
    return e;
  }

  function select(n) {
    var label = make('label');
    label.appendChild(make('span', ['First', 'Second', 'Third', 'Fourth'][n]));
    var s = make('select');
    s.appendChild(make('option', n < 2 ? 'Choose one' : 'No more')).value = '';
    records.forEach(function (r) { s.appendChild(make('option', r.title)).value = r.id; });
    s.addEventListener('change', function () {
      location.replace('#of=' + chosen().map(function (r) { return r.id; }).join(','));
      show();
    });
    label.appendChild(s);
    choices.appendChild(label);
    return s;
  }

  function chosen() {
    var seen = new Set();
    return selects.map(function (s) { return byId.get(s.value); }).filter(function (r) {
      return r && !seen.has(r.id) && seen.add(r.id);
    });
  }

  // Tools that are all drawn stand at one scale, the largest this many pixels.
  var LARGEST = 132;

  function atOneScale(list) {
    return list.length > 1 && list.every(function (r) { return r.side; });
  }

  function pictureSize(r, list) {
    var most = Math.max.apply(null, list.map(function (other) { return other.side; }));
    return atOneScale(list) ? Math.max(12, Math.round(LARGEST * r.side / most)) : 72;
  }

  function head(list) {
    var row = make('tr');
    var corner = make('td', atOneScale(list) ? 'Drawn at one scale' : '');
    corner.className = 'scale-note';
    row.appendChild(corner);
    list.forEach(function (r) {
      var th = make('th');
      th.scope = 'col';
      if (r.picture) {
        var img = make('img');
        img.src = r.picture;
        img.alt = '';
        img.width = pictureSize(r, list);
        img.height = img.width;
        th.appendChild(img);
      }
      var a = make('a', r.title);
      a.href = r.url;
      th.appendChild(a);
      row.appendChild(th);
    });
    var thead = make('thead');
    thead.appendChild(row);
    return thead;
  }

  // The cells are pages' own markup, made with the site.
  function body(list) {
    var labels = [];
    var values = list.map(function (r) {
      var map = new Map(r.rows);
      r.rows.forEach(function (row) { if (labels.indexOf(row[0]) < 0) { labels.push(row[0]); } });
      return map;
    });
    var tbody = make('tbody');
    labels.forEach(function (label) {
      var tr = make('tr');
      var th = make('th', label);
      th.scope = 'row';
      tr.appendChild(th);
      var cells = values.map(function (v) { return v.get(label) || '\u2013'; });
      var same = cells.every(function (c) { return c === cells[0]; });
      if (list.length > 1) { tr.className = same ? 'same' : 'differs'; }
      cells.forEach(function (c) { var td = make('td'); td.innerHTML = c; tr.appendChild(td); });
      tbody.appendChild(tr);
    });
    return tbody;
  }

  function showTell(list) {
    tell.textContent = '';
    var told = new Set();
    list.forEach(function (a) {
      list.forEach(function (b) {
        if (a !== b && a.tell[b.id] && !told.has(b.id + ' ' + a.id)) {
          told.add(a.id + ' ' + b.id);
          var p = make('p');
          p.className = 'tell';
          p.appendChild(make('strong', a.title + ' or ' + b.title.toLowerCase() + '? '));
          var span = make('span');
          span.innerHTML = a.tell[b.id];
          p.appendChild(span);
          tell.appendChild(p);
        }
      });
    });
  }

  function show() {
    var list = chosen();
    table.textContent = '';
    showTell(list);
    if (list.length) {
      table.appendChild(head(list));
      table.appendChild(body(list));
    }
  }

  function fromAddress() {
    var ids = (new URLSearchParams(location.hash.slice(1)).get('of') || '').split(',').filter(function (id) { return byId.has(id); });
    selects.forEach(function (s, n) { s.value = ids[n] || ''; });
    show();
  }

  for (var n = 0; n < 4; n++) { selects.push(select(n)); }
  form.hidden = false;
  form.addEventListener('submit', function (event) { event.preventDefault(); });
  window.addEventListener('hashchange', fromAddress);
  fromAddress();
})();
