// Narrows the faults down by toggles and words; what is chosen lives in the address.
(function () {
  'use strict';

  var FIRST_CAUSES = 8;
  var IDLE = new Set('a an and are as at be but by for from in is it its like my of off on or so that the there they this to up was when where with'.split(' '));

  var form = document.getElementById('faults-form');
  var text = document.getElementById('faults-text');
  var note = document.getElementById('faults-note');
  var status = document.getElementById('faults-status');
  var index = document.getElementById('faults-index');
  var all = document.getElementById('faults-all');
  var title = document.getElementById('faults-all-title');
  var causes = document.getElementById('faults-causes');
  var causeList = document.getElementById('faults-causes-list');
  var more = document.getElementById('faults-more');
  var showEvery = false;

  function array(list) { return Array.prototype.slice.call(list); }
  function count(n, one) { return n + ' ' + one + (n === 1 ? '' : 's'); }

  // The bare word: an ending more or less makes no difference.
  function bare(word) {
    return word.length > 4 ? word.replace(/(ing|ed|es|s|y)$/, '') : word;
  }

  function words(string) {
    return (string.toLowerCase().match(/[a-z0-9]+/g) || []).filter(function (w) { return !IDLE.has(w); }).map(bare);
  }

  function field(weight, string) { return { weight: weight, words: words(string) }; }

  var rows = array(form.querySelectorAll('[data-row]')).map(function (row) {
    return {
      name: row.getAttribute('data-row'),
      buttons: array(row.querySelectorAll('button'))
    };
  });

  var faults = array(all.querySelectorAll('article')).map(function (article, at) {
    var facts = {};
    rows.forEach(function (row) { facts[row.name] = article.getAttribute('data-' + row.name).split(' '); });
    return {
      article: article,
      at: at,
      facts: facts,
      title: article.querySelector('h3').textContent,
      width: rows.reduce(function (n, row) { return n * facts[row.name].length; }, 1),
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
    var on = row.buttons.filter(function (b) { return b.getAttribute('aria-pressed') === 'true'; })[0];
    return on ? on.getAttribute('data-word') : '';
  }

  function press(row, word) {
    row.buttons.forEach(function (b) {
      b.setAttribute('aria-pressed', String(word !== '' && b.getAttribute('data-word') === word));
    });
  }

  // Does every row but one fit?
  function fits(fault, but) {
    return rows.every(function (row) {
      var word = pressed(row);
      return row === but || !word || fault.facts[row.name].indexOf(word) >= 0;
    });
  }

  // How well the words fit: nothing where one of them is nowhere.
  function score(fault, asked) {
    var sum = 0;
    for (var i = 0; i < asked.length; i++) {
      var best = 0;
      fault.fields.forEach(function (f) {
        f.words.forEach(function (w) {
          if (w.indexOf(asked[i]) === 0) { best = Math.max(best, f.weight + (w === asked[i] ? 0.5 : 0)); }
        });
      });
      if (best === 0) { return 0; }
      sum += best;
    }
    return asked.length === 0 ? 1 : sum;
  }

  // Best words first, then the faults that show at fewest times and places.
  function order(a, b) {
    return b.score - a.score || a.fault.width - b.fault.width || a.fault.at - b.fault.at;
  }

  function listCauses(hits) {
    var list = [];
    hits.forEach(function (hit, at) {
      hit.fault.causes.forEach(function (li, rank) { list.push({ li: li, rank: rank, at: at, title: hit.fault.title }); });
    });
    list.sort(function (a, b) { return a.rank - b.rank || a.at - b.at; });
    causeList.textContent = '';
    list.slice(0, showEvery ? list.length : FIRST_CAUSES).forEach(function (cause) {
      var li = cause.li.cloneNode(true);
      var of = document.createElement('span');
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
    rows.forEach(function (row) {
      row.buttons.forEach(function (b) {
        var n = faults.filter(function (fault, i) {
          return scores[i] > 0 && fits(fault, row) && fault.facts[row.name].indexOf(b.getAttribute('data-word')) >= 0;
        }).length;
        b.querySelector('.faults-count').textContent = n;
        b.classList.toggle('faults-none', n === 0);
      });
    });
  }

  function show() {
    var asked = words(text.value);
    var chosen = asked.length > 0 || rows.some(pressed);
    var scores = faults.map(function (fault) { return score(fault, asked); });
    var hits = faults.map(function (fault, i) { return { fault: fault, score: scores[i] }; }).filter(function (hit) {
      return hit.score > 0 && fits(hit.fault, null);
    });
    hits.sort(chosen ? order : function (a, b) { return a.fault.at - b.fault.at; });
    faults.forEach(function (fault) { fault.article.hidden = true; });
    hits.forEach(function (hit) { hit.fault.article.hidden = false; all.appendChild(hit.fault.article); });
    index.hidden = true;
    // One fault alone has its causes in its own box.
    causes.hidden = !chosen || hits.length < 2;
    var n = listCauses(chosen ? hits : []);
    title.textContent = !chosen ? 'Every fault' : hits.length === 1 ? 'What it is, most likely' : 'What it may be';
    status.textContent = !chosen ? count(hits.length, 'fault') + '. Choose when, where or what you see.' :
      hits.length === 0 ? 'No fault here fits all of that. Take one answer back.' : count(hits.length, 'fault') + ', ' + count(n, 'cause') + '.';
    showCounts(scores);
  }

  function address() {
    var q = new URLSearchParams();
    rows.forEach(function (row) { if (pressed(row)) { q.set(row.name, pressed(row)); } });
    if (text.value.trim()) { q.set('words', text.value.trim()); }
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
    var hash = location.hash.slice(1);
    var plain = hash.indexOf('=') < 0;
    var q = new URLSearchParams(plain ? '' : hash);
    var strange = false;
    rows.forEach(function (row) {
      var word = q.get(row.name) || '';
      var known = row.buttons.some(function (b) { return b.getAttribute('data-word') === word; });
      strange = strange || (word !== '' && !known);
      press(row, known ? word : '');
    });
    q.forEach(function (value, name) {
      strange = strange || (name !== 'words' && !rows.some(function (row) { return row.name === name; }));
    });
    var target = plain && hash ? document.getElementById(hash) : null;
    strange = strange || (plain && hash !== '' && !target);
    text.value = (q.get('words') || '').slice(0, 80);
    note.textContent = strange ? 'Part of that address means nothing here, so it is left out.' : '';
    showEvery = false;
    show();
    if (target) { target.scrollIntoView(); }
  }

  rows.forEach(function (row) {
    row.buttons.forEach(function (b) {
      b.addEventListener('click', function () {
        var word = b.getAttribute('data-word');
        press(row, pressed(row) === word ? '' : word);
        changed();
      });
    });
  });
  text.addEventListener('input', changed);
  form.addEventListener('submit', function (event) { event.preventDefault(); });
  document.getElementById('faults-clear').addEventListener('click', function () {
    rows.forEach(function (row) { press(row, ''); });
    text.value = '';
    changed();
    text.focus();
  });
  more.addEventListener('click', function () {
    showEvery = true;
    show();
    var next = causeList.children[FIRST_CAUSES];
    if (next) { next.querySelector('summary').focus(); }
  });
  window.addEventListener('hashchange', fromAddress);
  form.hidden = false;
  fromAddress();
})();
