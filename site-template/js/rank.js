// The name finder's ranking: which records answer what someone typed, in their words, and whether any does.
(function () {
  'use strict';

  var PHRASE = 1.1;        // weight of one phrase of the record against all its words
  var KIND = 0.12;         // and of each hint at its kind
  var LEAST = 0.3;         // least share of what was asked that a record must meet to be looked at
  var LEAST_RARE = 1.6;    // and by at least one word no commoner than this
  var MOST_COMPARED = 200; // records whose names are compared with the whole question, those that meet most of it

  // Whether the best record is an answer at all: what speaks for it, against the share of the question that it meets.
  // Set by logistic regression on the questions in generator/src/test/resources/finder, the half held back apart.
  var ENOUGH = 1.62;       // least sum of all
  var FIT = 0.58;          // how well one of its phrases fits
  var OURS = 0.17;         // how often our things are called by the words asked, in powers of e
  var LENGTH = 0.32;       // how many things are asked, in the same
  var STRANGE = 1.5;       // a word no record knows, against the rarest known one

  var data = window.benchloreFinder;
  var index = window.benchlore.words;
  var reader = window.benchlore.asked;
  var stem = index.stem;
  var numbers = new Map(); // a record's number by its id
  var known = [];          // each record's names and phrases in stems, once asked for

  function prepare() {
    reader.prepare();
    if (!numbers.size) {
      data.documents.forEach(function (d, i) { numbers.set(d.id, i); });
    }
  }

  // A record's names as they are said, and the stems of its names and lay phrases.
  function callings(number) {
    if (!known[number]) {
      var d = data.documents[number];
      var names = [d.title].concat(d.names, d.misspelt);
      known[number] = { names: names.map(whole), phrases: names.concat(d.lay).map(reader.stems) };
    }
    return known[number];
  }

  // A name as it is said, every word of it.
  function whole(text) {
    return index.tokens(text).map(stem).join(' ');
  }

  // How well one phrase of a record and what was asked cover each other, rare words counting most.
  function phraseFit(phrases, meant, rarity) {
    var best = 0;
    phrases.forEach(function (phrase) {
      var common = 0;
      var all = 0;
      phrase.forEach(function (s) {
        var weight = rarity(s);
        all += weight;
        common += meant.has(s) ? weight : 0;
      });
      if (common > 0) {
        best = Math.max(best, 2 * common / (all + meant.whole));
      }
    });
    return best;
  }

  // The stems that would answer, each with its weight.
  function wordsMeant(asked) {
    var words = new Map();
    asked.forEach(function (c) {
      c.typed.forEach(function (t) { words.set(stem(t), Math.max(words.get(stem(t)) || 0, c.rarity / c.typed.length)); });
      c.means.forEach(function (t) { if (!words.has(stem(t))) { words.set(stem(t), 0.6 * c.rarity / c.means.length); } });
      c.instead.forEach(function (o) { if (!words.has(o.stem)) { words.set(o.stem, o.quality * c.rarity / c.typed.length); } });
    });
    words.whole = asked.reduce(function (sum, c) { return sum + c.rarity; }, 0);
    return words;
  }

  // The records that meet enough of what was asked, most first.
  function likely(asked, whole, kind) {
    var sums = new Map();
    asked.forEach(function (concept) {
      concept.matches.forEach(function (value, number) {
        var sum = sums.get(number);
        if (!sum) { sums.set(number, sum = { number: number, share: 0, rare: 0 }); }
        sum.share += value * concept.rarity / whole;
        if (value >= 0.4) { sum.rare = Math.max(sum.rare, concept.rarity); }
      });
    });
    // A question in common words alone is met by common words.
    var rarest = asked.reduce(function (most, c) { return Math.max(most, c.known ? c.rarity : 0); }, 0);
    var least = Math.min(LEAST_RARE, 0.8 * rarest);
    var list = [];
    sums.forEach(function (sum) {
      if (sum.share >= LEAST && sum.rare >= least && (!kind || data.documents[sum.number].kind === kind)) { list.push(sum); }
    });
    return list.sort(function (a, b) { return b.share - a.share || a.number - b.number; }).slice(0, MOST_COMPARED);
  }

  function rank(words, kind) {
    prepare();
    var asked = reader.read(words);
    if (!asked.length) {
      return [];
    }
    var meant = wordsMeant(asked);
    var rarity = function (s) {
      return meant.has(s) ? meant.get(s) : Math.min(reader.most(), reader.rarityOf(index.holding(s).size));
    };
    var kinds = reader.kinds(words);
    var said = whole(words);
    var list = likely(asked, meant.whole, kind);
    list.forEach(function (hit) {
      var d = data.documents[hit.number];
      var called = callings(hit.number);
      hit.fit = phraseFit(called.phrases, meant, rarity);
      hit.named = named(called.names, said);
      hit.score = (hit.share + PHRASE * hit.fit) * (1 + KIND * (kinds.get(d.kind) || 0)) + hit.named;
    });
    list.sort(function (a, b) { return b.score - a.score || a.number - b.number; });
    return list.length && fits(list[0], asked) ? list.filter(function (hit) { return hit.score > 0.3 * list[0].score; }).slice(0, 40) : [];
  }

  // What was typed is one of its names: the trade's first.
  function named(names, said) {
    var at = names.indexOf(said);
    return at < 0 ? 0 : at === 0 ? 2.5 : 2;
  }

  // Whether a record answers the question, and the question is one for a shop. A word still being typed does
  // not count against it.
  function fits(hit, asked) {
    var last = asked[asked.length - 1];
    return hit.named > 0 || enough(hit, asked) || last.unfinished && (asked.length === 1 || enough(hit, asked.slice(0, -1)));
  }

  // For a record speak: how much of the question it meets, where a word that no record knows weighs most; how well one
  // of its phrases fits the whole; how much of the question is in words that many records are called by; and that it's
  // long, since a long question is never met in full.
  function enough(hit, asked) {
    if (asked.length === 1 && asked[0].spoken > 0) {
      return true; // one word alone gives no ground for doubt
    }
    var met = 0;
    var all = 0;
    var ours = 0;
    asked.forEach(function (c) {
      var weight = c.known || c.elsewhere ? c.rarity : c.measure ? 0 : STRANGE * reader.most();
      all += weight;
      met += weight * (c.matches.get(hit.number) || 0);
      ours += Math.log(1 + c.spoken) / asked.length;
    });
    return met / all + FIT * hit.fit + OURS * ours + LENGTH * Math.log(asked.length) >= ENOUGH;
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
    reader.concepts(words).forEach(function (c) { c.typed.concat(c.means).forEach(function (t) { asked.add(stem(t)); }); });
    var d = data.documents[numbers.get(id)];
    var found = null;
    var most = 0;
    [['also called', d.names.concat(d.misspelt)], ['people say', d.lay], ['looks like', [d.looks]]].forEach(function (group) {
      group[1].forEach(function (text) {
        var all = reader.stems(text);
        var score = all.filter(function (t) { return asked.has(t); }).length / Math.sqrt(3 + all.length);
        if (score > most) { most = score; found = group[0] + ': \u201c' + text + '\u201d'; }
      });
    });
    return found || '';
  }

  window.benchlore.find = find;
  window.benchlore.finder = { prepare: prepare, why: why, record: function (id) { return data.documents[numbers.get(id)]; } };
})();
