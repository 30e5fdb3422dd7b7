// The name finder's ranking: which records answer what someone typed, in their words.
(function () {
  'use strict';

  var STOP = new Set(('a about after all also am an and any are as at be because been but by can cant could did do does doesnt ' +
    'doing dont for from get gets getting go goes going got had has have help hi how i if in into is isnt it its ive just keep ' +
    'keeps kind like look looks make makes making me mine my need needs no not of ok on one ones or other our please ' +
    'really should so some something sort stuff such thanks that the their them then there these they thing things this those ' +
    'through to too try trying us use used using very want wants was we were what whats when where which while who why will ' +
    'with without wont would you your called call name know proper right way').split(' '));
  // How much a match in each field says that this is the thing meant.
  var FIELDS = { title: 1, names: 0.95, misspelt: 0.95, lay: 0.9, symptom: 0.75, does: 0.7, looks: 0.7, one: 0.45, more: 0.4 };
  var PHRASE = 1.1;      // weight of one phrase of the record against all its words
  var LEAST = 0.5;       // least share of what was asked that an answer must meet
  var LEAST_RARE = 1.6;  // and by at least one word no commoner than this
  var ELSEWHERE = 2;     // a word of another world (a recipe, a concert), against the same
  var OFTEN_USED = 4;    // records that use a word of another world, from which on it is ours too
  var UNKNOWN = 0.45;    // a word no record knows, against the rarest known one

  var MOST_COMPARED = 400; // records whose names are compared with the whole question, those that meet most of it

  var data = window.benchloreFinder;
  var index = window.benchlore.words;
  var tokens = index.tokens;
  var stem = index.stem;
  var weights = data.fields.map(function (name) { return FIELDS[name]; });
  var numbers = new Map();  // a record's number by its id
  var phrases = [];         // the stems of each record's names and lay phrases, once asked for
  var lexicon = [];
  var hints = new Map();
  var elsewhere = new Set();
  var lookedUp = new Map();

  function stems(text) {
    return tokens(text).filter(function (t) { return !STOP.has(t); }).map(stem);
  }

  // A name as it is said, every word of it.
  function whole(text) {
    return tokens(text).map(stem).join(' ');
  }

  function prepare() {
    if (numbers.size) {
      return;
    }
    index.prepare();
    data.documents.forEach(function (d, i) { numbers.set(d.id, i); });
    data.lexicon.forEach(function (group) {
      group.say.forEach(function (say) {
        lexicon.push({ say: tokens(say).map(stem), means: [].concat.apply([], group.means.map(tokens)) });
      });
    });
    lexicon.sort(function (a, b) { return b.say.length - a.say.length; });
    // A word that the records use themselves says nothing about where it comes from.
    data.elsewhere.map(function (word) { return stem(tokens(word)[0]); }).forEach(function (s) {
      if (count(s) < OFTEN_USED) { elsewhere.add(s); }
    });
    data.hints.forEach(function (hint) {
      hint.say.forEach(function (say) { hints.set(stem(tokens(say)[0]), hint.kind); });
    });
  }

  // In how many records a stem stands.
  function count(s) {
    return index.holding(s).size;
  }

  function phrasesOf(number) {
    if (!phrases[number]) {
      var d = data.documents[number];
      phrases[number] = [d.title].concat(d.names, d.misspelt, d.lay).map(stems);
    }
    return phrases[number];
  }

  // Each thing asked for: what was typed, and the trade words that may be meant by it.
  function concepts(words) {
    var typed = tokens(words).slice(0, 40);
    var stemmed = typed.map(stem);
    var used = typed.map(function () { return false; });
    var found = [];
    lexicon.forEach(function (entry) {
      for (var i = 0; i + entry.say.length <= stemmed.length; i++) {
        var fits = entry.say.every(function (s, k) { return stemmed[i + k] === s && !used[i + k]; });
        if (fits) {
          found.push({ at: i, typed: typed.slice(i, i + entry.say.length).filter(function (t) { return !STOP.has(t); }), means: entry.means });
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

  // How well each record answers to a word, 0 to 1: as it stands; else begun; else misspelt.
  function lookUp(term, last) {
    var key = term + (last ? '*' : '');
    if (!lookedUp.has(key)) {
      if (lookedUp.size > 500) { lookedUp.clear(); }
      lookedUp.set(key, searched(term, last));
    }
    return lookedUp.get(key);
  }

  function searched(term, last) {
    var hits = new Map();
    function add(s, quality) {
      index.holding(s).forEach(function (field, number) {
        hits.set(number, Math.max(hits.get(number) || 0, quality * weights[field]));
      });
    }
    var s = stem(term);
    add(s, 1);
    var exact = hits.size > 0;
    if (exact && !(last && term.length > 2)) {
      return hits;
    }
    if (term.length > 2 && (last || term.length > 4)) {
      index.begun(term).forEach(function (longer) { if (longer !== s) { add(longer, exact ? 0.5 : 0.8); } });
    }
    if (!exact && term.length > 3) {
      index.alike(s, term.length > 7 ? 2 : 1).forEach(function (other) { add(other, 0.75); });
    }
    return hits;
  }

  // The best match of each record for one thing asked, 0 to 1.
  function answersTo(concept, last) {
    var said = new Map();
    concept.typed.forEach(function (term) {
      lookUp(term, last).forEach(function (value, number) {
        said.set(number, Math.min(1, (said.get(number) || 0) + value / concept.typed.length));
      });
    });
    var meant = new Map();
    concept.means.forEach(function (term) {
      lookUp(term, false).forEach(function (value, number) {
        meant.set(number, Math.max(meant.get(number) || 0, 0.85 * value));
      });
    });
    concept.hits = Math.min(said.size || meant.size, meant.size || said.size);
    said.forEach(function (value, number) { meant.set(number, Math.max(value, meant.get(number) || 0)); });
    concept.known = meant.size > 0;
    return meant;
  }

  // How well one phrase of a record and what was asked cover each other, rare words counting most.
  function phraseFit(phrases, asked, rarity) {
    var best = 0;
    phrases.forEach(function (phrase) {
      var common = 0;
      var whole = 0;
      phrase.forEach(function (s) {
        var weight = rarity(s);
        whole += weight;
        common += asked.has(s) ? weight : 0;
      });
      if (common > 0) {
        best = Math.max(best, 2 * common / (whole + asked.whole));
      }
    });
    return best;
  }

  function rarityOf(count) {
    return Math.log(1 + data.documents.length / (1 + count));
  }

  // Each thing asked with its matches and its rarity; a word nobody knows counts for less.
  function weigh(asked) {
    var most = rarityOf(3);
    asked.forEach(function (concept, n) {
      concept.matches = answersTo(concept, n === asked.length - 1);
      concept.rarity = concept.known ? Math.min(most, rarityOf(concept.hits)) : UNKNOWN * most;
      if (concept.typed.some(function (t) { return elsewhere.has(stem(t)); })) {
        concept.matches.clear();
        concept.rarity = ELSEWHERE * most;
        concept.elsewhere = true;
      }
    });
    return asked.reduce(function (sum, c) { return sum + c.rarity; }, 0);
  }

  function wordsAsked(asked) {
    var words = new Map();
    asked.forEach(function (c) {
      c.typed.forEach(function (t) { words.set(stem(t), Math.max(words.get(stem(t)) || 0, c.rarity / c.typed.length)); });
      c.means.forEach(function (t) { if (!words.has(stem(t))) { words.set(stem(t), 0.6 * c.rarity / c.means.length); } });
    });
    words.elsewhere = asked.some(function (c) { return c.elsewhere; });
    words.rarest = asked.reduce(function (most, c) { return Math.max(most, c.known ? c.rarity : 0); }, 0);
    words.whole = asked.reduce(function (sum, c) { return sum + c.rarity; }, 0);
    return words;
  }

  function kindMeant(words) {
    var kinds = new Map();
    tokens(words).map(stem).forEach(function (s) {
      if (hints.has(s)) { kinds.set(hints.get(s), (kinds.get(hints.get(s)) || 0) + 1); }
    });
    return kinds;
  }

  function rank(words, kind) {
    prepare();
    var asked = concepts(words);
    if (!asked.length) {
      return [];
    }
    var all = weigh(asked);
    var meant = wordsAsked(asked);
    var rarity = function (s) {
      return meant.has(s) ? meant.get(s) : Math.min(rarityOf(3), rarityOf(count(s)));
    };
    var sums = new Map();
    asked.forEach(function (concept) {
      concept.matches.forEach(function (value, number) {
        var sum = sums.get(number);
        if (!sum) { sums.set(number, sum = { number: number, score: 0, rare: 0 }); }
        sum.score += value * concept.rarity;
        if (value >= 0.4) { sum.rare = Math.max(sum.rare, concept.rarity); }
      });
    });
    return best(likely(sums, all, meant, kind), meant, rarity, words);
  }

  // The records that meet enough of what was asked, most first.
  function likely(sums, all, asked, kind) {
    // A question in common words alone is met by common words.
    var least = Math.min(LEAST_RARE, 0.8 * asked.rarest);
    var list = [];
    sums.forEach(function (sum) {
      sum.share = sum.score / all;
      if (sum.share >= LEAST * 0.6 && sum.rare >= least && (!kind || data.documents[sum.number].kind === kind)) { list.push(sum); }
    });
    return list.sort(function (a, b) { return b.share - a.share || a.number - b.number; }).slice(0, MOST_COMPARED);
  }

  function best(list, asked, rarity, words) {
    var kinds = kindMeant(words);
    var said = whole(words);
    list.forEach(function (hit) {
      var d = data.documents[hit.number];
      var fit = phraseFit(phrasesOf(hit.number), asked, rarity);
      hit.score = (hit.share + PHRASE * fit) * (1 + 0.12 * (kinds.get(d.kind) || 0)) + named(d, said);
      hit.share += asked.elsewhere ? 0 : 0.5 * fit;
    });
    list.sort(function (a, b) { return b.score - a.score || a.number - b.number; });
    var top = list.length ? list[0].share : 0;
    return top < LEAST ? [] : list.filter(function (hit) { return hit.score > 0.3 * list[0].score; }).slice(0, 40);
  }

  // What was typed is one of its names: the trade's first.
  function named(d, said) {
    var at = [d.title].concat(d.names, d.misspelt).findIndex(function (name) { return whole(name) === said; });
    return at < 0 ? 0 : at === 0 ? 2.5 : 2;
  }

  /** Ranked answers to what someone typed, of one kind if given; none if nothing fits. */
  function find(words, kind) {
    return rank(String(words == null ? '' : words).slice(0, 300), kind || '').map(function (hit) {
      var d = data.documents[hit.number];
      return { id: d.id, kind: d.kind, title: d.title, names: [d.title].concat(d.names, d.misspelt), url: d.url, score: hit.score };
    });
  }

  // The name or lay phrase that answers best, to say why a record is shown.
  function why(id, words) {
    var asked = new Set();
    concepts(words).forEach(function (c) { c.typed.concat(c.means).forEach(function (t) { asked.add(stem(t)); }); });
    var d = data.documents[numbers.get(id)];
    var found = null;
    var most = 0;
    [['also called', d.names.concat(d.misspelt)], ['people say', d.lay], ['looks like', [d.looks]]].forEach(function (group) {
      group[1].forEach(function (text) {
        var all = stems(text);
        var score = all.filter(function (t) { return asked.has(t); }).length / Math.sqrt(3 + all.length);
        if (score > most) { most = score; found = group[0] + ': \u201c' + text + '\u201d'; }
      });
    });
    return found || '';
  }

  window.benchlore = window.benchlore || {};
  window.benchlore.find = find;
  window.benchlore.finder = { prepare: prepare, why: why, record: function (id) { return data.documents[numbers.get(id)]; } };
})();
