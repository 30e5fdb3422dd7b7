// Words as the finder sees them, and which records hold them: reads the index that was made with the site.
(function () {
  'use strict';

  var ALPHABET = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz-_';
  var data = window.benchloreFinder;
  var fields = data.fields.length;
  var digits = new Map();
  ALPHABET.split('').forEach(function (c, i) { digits.set(c, i); });
  var words = null;          // every word of the library, in order
  var places = null;         // the places of each, as written
  var spelt = new Map();     // the words of each stem, by number
  var byLength = [];         // stems with the set of their letters, by length
  var held = new Map();      // the places of each stem, once asked for
  var stemmed = new Map();

  // The generator's Tokens does the same.
  function plain(text) {
    return text.toLowerCase().normalize('NFD').replace(/[\u0300-\u036f'\u2019]/g, '');
  }

  function tokens(text) {
    return plain(text).split(/[^a-z0-9]+/).filter(Boolean);
  }

  function stem(term) {
    var known = stemmed.get(term);
    if (known === undefined) {
      known = window.stemmer(term);
      stemmed.set(term, known);
    }
    return known;
  }

  function letters(term) {
    var set = 0;
    for (var i = 0; i < term.length; i++) { set |= 1 << (digits.get(term[i]) % 31); }
    return set;
  }

  function prepare() {
    if (words) {
      return;
    }
    words = data.words.split(' ');
    places = data.places.split(' ');
    words.forEach(function (word, i) {
      var s = stem(word);
      if (spelt.has(s)) {
        spelt.get(s).push(i);
        return;
      }
      spelt.set(s, [i]);
      (byLength[s.length] = byLength[s.length] || []).push({ stem: s, letters: letters(s) });
    });
  }

  // Adds the places of one word: by record the first, most telling field.
  function read(number, found) {
    var run = places[number];
    var at = 0;
    var n = 0;
    var unit = 1;
    for (var i = 0; i < run.length; i++) {
      var digit = digits.get(run[i]);
      n += (digit % 32) * unit;
      unit *= 32;
      if (digit < 32) {
        at += Math.floor(n / fields);
        var before = found.get(at);
        if (before === undefined || n % fields < before) { found.set(at, n % fields); }
        n = 0;
        unit = 1;
      }
    }
  }

  // The records that hold a stem, each with the field that says most.
  function holding(s) {
    var found = held.get(s);
    if (!found) {
      found = new Map();
      (spelt.get(s) || []).forEach(function (number) { read(number, found); });
      held.set(s, found);
    }
    return found;
  }

  // Stems of the words that begin so.
  function begun(start) {
    var low = 0;
    var high = words.length;
    while (low < high) {
      var middle = (low + high) >> 1;
      if (words[middle] < start) { low = middle + 1; } else { high = middle; }
    }
    var found = new Set();
    for (; low < words.length && words[low].startsWith(start); low++) { found.add(stem(words[low])); }
    return Array.from(found);
  }

  function bits(n) {
    var count = 0;
    for (; n; n &= n - 1) { count++; }
    return count;
  }

  // Letters to change, add, drop or swap with the next to make one word of another; more than most is not counted out.
  function apart(a, b, most) {
    var older = [];
    var old = [];
    for (var j = 0; j <= b.length; j++) { old.push(j); }
    for (var i = 1; i <= a.length; i++) {
      var row = [i];
      var least = i;
      for (j = 1; j <= b.length; j++) {
        var d = Math.min(old[j] + 1, row[j - 1] + 1, old[j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1));
        if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) { d = Math.min(d, older[j - 2] + 1); }
        row.push(d);
        least = Math.min(least, d);
      }
      if (least > most) {
        return most + 1;
      }
      older = old;
      old = row;
    }
    return old[b.length];
  }

  // Stems so few letters apart from this one.
  function alike(s, most) {
    var set = letters(s);
    var found = [];
    for (var length = Math.max(1, s.length - most); length <= s.length + most; length++) {
      (byLength[length] || []).forEach(function (other) {
        if (bits(set ^ other.letters) <= 2 * most && apart(s, other.stem, most) <= most) { found.push(other.stem); }
      });
    }
    return found;
  }

  window.benchlore = window.benchlore || {};
  window.benchlore.words = {
    tokens: tokens, stem: stem, prepare: prepare, holding: holding, begun: begun, alike: alike,
    all: function () { return words; }
  };
})();
