// The name finder: ranks records for what someone typed, in their words, and says why.
(function () {
  'use strict';

  var STOP = new Set(('a an and are as at be but by can do does for from get has have how i if in into is it its ' +
    'like look looks make makes me my of on one or so some that the their them then there thing things this to up use ' +
    'used want wants was what when where which who why will with would you your called call name').split(' '));
  var WEIGHT = { title: 9, names: 8, misspelt: 6, lay: 6, one: 1, does: 2.5, looks: 2, more: 0.6 };
  var LEAST_COVER = 0.55;

  var data = window.benchloreFinder;
  var root = document.documentElement.getAttribute('data-root') || '';
  var byId = new Map();
  var lexicon = [];
  var index = null;

  function plain(text) {
    return text.toLowerCase().normalize('NFD').replace(/[\u0300-\u036f]/g, '').replace(/['\u2019]/g, '');
  }

  function tokens(text) {
    return plain(text).split(/[^a-z0-9]+/).filter(Boolean);
  }

  function stem(term) {
    return window.stemmer(term);
  }

  function prepare() {
    if (index) {
      return;
    }
    index = new window.MiniSearch({
      fields: Object.keys(WEIGHT),
      storeFields: [],
      tokenize: tokens,
      processTerm: stem
    });
    data.documents.forEach(function (d) {
      byId.set(d.id, d);
      index.add({
        id: d.id, title: d.title, names: d.names.join(' / '), misspelt: d.misspelt.join(' / '),
        lay: d.lay.join(' / '), one: d.one, does: d.does, looks: d.looks, more: d.more
      });
    });
    data.lexicon.forEach(function (group) {
      group.say.forEach(function (say) {
        lexicon.push({ say: tokens(say).map(stem), means: group.means.reduce(function (all, m) { return all.concat(tokens(m)); }, []) });
      });
    });
    lexicon.sort(function (a, b) { return b.say.length - a.say.length; });
  }

  // Each thing asked for: what was typed, and the trade words that may be meant by it.
  function concepts(words) {
    var typed = tokens(words);
    var stems = typed.map(stem);
    var used = typed.map(function () { return false; });
    var found = [];
    lexicon.forEach(function (entry) {
      for (var i = 0; i + entry.say.length <= stems.length; i++) {
        var fits = entry.say.every(function (s, k) { return stems[i + k] === s && !used[i + k]; });
        if (fits) {
          found.push({ at: i, typed: typed.slice(i, i + entry.say.length), means: entry.means });
          entry.say.forEach(function (s, k) { used[i + k] = true; });
        }
      }
    });
    typed.forEach(function (term, i) {
      if (!used[i] && !STOP.has(term)) {
        found.push({ at: i, typed: [term], means: [] });
      }
    });
    return found.sort(function (a, b) { return a.at - b.at; });
  }

  function branch(terms, boost, last) {
    return {
      queries: terms, combineWith: 'OR',
      fuzzy: function (term) { return term.length > 7 ? 2 : term.length > 3 ? 1 : 0; },
      prefix: function (term) { return term.length > 3 || (last && term.length > 1); },
      weights: { fuzzy: 0.25, prefix: 0.35 },
      boost: Object.keys(WEIGHT).reduce(function (all, f) { all[f] = WEIGHT[f] * boost; return all; }, {})
    };
  }

  // How many of the things asked for one record answers to, rare words counting most.
  function matches(asked) {
    var found = new Map();
    asked.forEach(function (concept, n) {
      var queries = [branch(concept.typed, 1, n === asked.length - 1)];
      if (concept.means.length) {
        queries.push(branch(concept.means, 0.8, false));
      }
      var hits = index.search({ queries: queries, combineWith: 'OR' });
      concept.rarity = Math.log(1 + data.documents.length / (1 + hits.length));
      hits.forEach(function (hit) {
        var record = found.get(hit.id) || { score: 0, cover: 0, fields: {} };
        record.score += hit.score;
        record.cover += concept.rarity * Math.min(1, strength(hit, concept));
        hit.terms.forEach(function (t) { hit.match[t].forEach(function (f) { record.fields[f] = (record.fields[f] || 0) + 1; }); });
        found.set(hit.id, record);
      });
    });
    return found;
  }

  // A word misspelt counts a little less than the word itself, one in passing less still.
  function strength(hit, concept) {
    var wanted = concept.typed.concat(concept.means).map(stem);
    var exact = hit.terms.some(function (t) { return wanted.indexOf(t) >= 0; });
    var inName = hit.terms.some(function (t) {
      return hit.match[t].some(function (f) { return f !== 'more'; });
    });
    return (exact ? 1 : 0.7) * (inName ? 1 : 0.5);
  }

  function rank(words) {
    prepare();
    var asked = concepts(words);
    if (!asked.length) {
      return [];
    }
    var found = matches(asked);
    var whole = asked.reduce(function (sum, c) { return sum + c.rarity; }, 0);
    var said = tokens(words).map(stem).join(' ');
    var list = [];
    found.forEach(function (record, id) {
      var d = byId.get(id);
      var cover = record.cover / whole;
      if (cover < LEAST_COVER) {
        return;
      }
      var score = record.score * cover * cover;
      var named = [d.title].concat(d.names, d.misspelt).some(function (n) { return tokens(n).map(stem).join(' ') === said; });
      list.push({ id: id, score: named ? score * 4 + 1000 : score, cover: cover, fields: record.fields });
    });
    return list.sort(function (a, b) { return b.score - a.score || (a.id < b.id ? -1 : 1); });
  }

  function find(words) {
    return rank(String(words == null ? '' : words).slice(0, 300)).map(function (hit) {
      var d = byId.get(hit.id);
      return { id: d.id, kind: d.kind, title: d.title, names: [d.title].concat(d.names, d.misspelt), url: d.url, score: hit.score };
    });
  }

  window.benchlore = window.benchlore || {};
  window.benchlore.find = find;

  // ---- the page ----

  function element(name, className, text) {
    var e = document.createElement(name);
    if (className) { e.className = className; }
    if (text) { e.textContent = text; }
    return e;
  }

  // The line of the record that answers best: the name, lay phrase or sentence sharing most words.
  function why(d, words) {
    var asked = new Set();
    concepts(words).forEach(function (c) { c.typed.concat(c.means).forEach(function (t) { asked.add(stem(t)); }); });
    var best = null;
    var most = 0;
    [['also called', d.names.concat(d.misspelt)], ['people say', d.lay], ['', [d.does]], ['looks like', [d.looks]]].forEach(function (group) {
      group[1].forEach(function (text) {
        var score = tokens(text).map(stem).filter(function (t) { return asked.has(t); }).length / Math.sqrt(4 + tokens(text).length);
        if (score > most) { most = score; best = { label: group[0], text: text }; }
      });
    });
    return best && best.label ? best.label + ': \u201c' + best.text + '\u201d' : '';
  }

  function item(hit, words, first) {
    var d = byId.get(hit.id);
    var li = element('li', first ? 'hit hit-first' : 'hit');
    var a = element('a');
    a.href = root + d.url;
    if (d.kind === 'router-bits') {
      var img = element('img', 'hit-picture');
      img.src = root + 'drawings/' + d.id + '.svg';
      img.alt = '';
      img.width = 56;
      img.height = 56;
      a.appendChild(img);
    }
    var body = element('span', 'hit-body');
    body.appendChild(element('span', 'hit-kind', d.one));
    body.appendChild(element('strong', 'hit-title', d.title));
    body.appendChild(element('span', 'hit-does', d.does));
    var reason = why(d, words);
    if (reason) { body.appendChild(element('span', 'hit-why', reason)); }
    a.appendChild(body);
    li.appendChild(a);
    return li;
  }

  function show(words, list, status, kinds) {
    list.textContent = '';
    if (!words.trim()) {
      status.textContent = '';
      return;
    }
    var hits = find(words).filter(function (h) { return !kinds.value || h.kind === kinds.value; }).slice(0, 12);
    hits.forEach(function (hit, i) { list.appendChild(item(hit, words, i === 0)); });
    status.textContent = hits.length === 0 ? 'Nothing here fits. Try what it looks like, what it leaves behind, or what went wrong.' :
      hits.length === 1 ? '1 answer' : hits.length + ' answers, best first';
  }

  function start() {
    var input = document.getElementById('finder-words');
    if (!input) {
      return;
    }
    var list = document.getElementById('finder-answers');
    var status = document.getElementById('finder-status');
    var kinds = document.getElementById('finder-kind');
    document.getElementById('finder').hidden = false;
    var update = function () {
      show(input.value, list, status, kinds);
      var q = new URLSearchParams();
      if (input.value.trim()) { q.set('find', input.value.trim()); }
      if (kinds.value) { q.set('kind', kinds.value); }
      history.replaceState(null, '', '#' + q.toString());
    };
    var fromAddress = function () {
      var q = new URLSearchParams(location.hash.slice(1));
      input.value = q.get('find') || '';
      var kind = q.get('kind') || '';
      kinds.value = Array.prototype.some.call(kinds.options, function (o) { return o.value === kind; }) ? kind : '';
      show(input.value, list, status, kinds);
    };
    input.addEventListener('input', update);
    kinds.addEventListener('change', update);
    window.addEventListener('hashchange', fromAddress);
    document.getElementById('finder').addEventListener('submit', function (event) {
      event.preventDefault();
      var first = list.querySelector('a');
      if (first) { first.click(); }
    });
    input.addEventListener('keydown', function (event) {
      var first = list.querySelector('a');
      if (event.key === 'ArrowDown' && first) { event.preventDefault(); first.focus(); }
    });
    list.addEventListener('keydown', function (event) {
      var links = Array.prototype.slice.call(list.querySelectorAll('a'));
      var at = links.indexOf(document.activeElement);
      if (event.key === 'ArrowDown' && at >= 0 && at + 1 < links.length) { event.preventDefault(); links[at + 1].focus(); }
      if (event.key === 'ArrowUp' && at >= 0) { event.preventDefault(); (links[at - 1] || input).focus(); }
    });
    fromAddress();
  }

  start();
})();
