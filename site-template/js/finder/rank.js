// The name finder's ranking: which records answer what someone typed, in their words, and whether any does.

import * as reader from './asked.js';
import * as index from './words.js';

const PHRASE = 1.1; // weight of one phrase of the record against all its words
const KIND = 0.12; // and of each hint at its kind
const LEAST = 0.3; // least share of what was asked that a record must meet to be looked at
const LEAST_RARE = 1.6; // and by at least one word no commoner than this
const MOST_COMPARED = 200; // records whose names are compared with the whole question, those that meet most of it

// Whether the best record is an answer at all: what speaks for it, against the share of the question that it meets.
// Set by logistic regression on the questions in generator/src/test/resources/finder, the half held back apart.
const ENOUGH = 1.62; // least sum of all
const FIT = 0.58; // how well one of its phrases fits
const OURS = 0.17; // how often our things are called by the words asked, in powers of e
const LENGTH = 0.32; // how many things are asked, in the same
const STRANGE = 1.5; // a word no record knows, against the rarest known one

const data = window.benchloreFinder;

const stem = index.stem;
const numbers = new Map(); // a record's number by its id
const known = []; // each record's names and phrases in stems, once asked for

export function prepare() {
  reader.prepare();
  if (!numbers.size) {
    data.documents.forEach((d, i) => {
      numbers.set(d.id, i);
    });
  }
}

// A record's names as they are said, and the stems of its names and lay phrases.
function callings(number) {
  if (!known[number]) {
    const d = data.documents[number];
    const names = [d.title].concat(d.names, d.misspelt);
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
  let best = 0;
  phrases.forEach(phrase => {
    let common = 0;
    let all = 0;
    phrase.forEach(s => {
      const weight = rarity(s);
      all += weight;
      common += meant.has(s) ? weight : 0;
    });
    if (common > 0) {
      best = Math.max(best, (2 * common) / (all + meant.whole));
    }
  });
  return best;
}

// The stems that would answer, each with its weight.
function wordsMeant(asked) {
  const words = new Map();
  asked.forEach(c => {
    c.typed.forEach(t => {
      words.set(stem(t), Math.max(words.get(stem(t)) || 0, c.rarity / c.typed.length));
    });
    c.means.forEach(t => {
      if (!words.has(stem(t))) {
        words.set(stem(t), (0.6 * c.rarity) / c.means.length);
      }
    });
    c.instead.forEach(o => {
      if (!words.has(o.stem)) {
        words.set(o.stem, (o.quality * c.rarity) / c.typed.length);
      }
    });
  });
  words.whole = asked.reduce((sum, c) => sum + c.rarity, 0);
  return words;
}

// The records that meet enough of what was asked, most first.
function likely(asked, whole, kind) {
  const sums = new Map();
  asked.forEach(concept => {
    concept.matches.forEach((value, number) => {
      let sum = sums.get(number);
      if (!sum) {
        sums.set(number, (sum = { number: number, share: 0, rare: 0 }));
      }
      sum.share += (value * concept.rarity) / whole;
      if (value >= 0.4) {
        sum.rare = Math.max(sum.rare, concept.rarity);
      }
    });
  });
  // A question in common words alone is met by common words.
  const rarest = asked.reduce((most, c) => Math.max(most, c.known ? c.rarity : 0), 0);
  const least = Math.min(LEAST_RARE, 0.8 * rarest);
  const list = [];
  sums.forEach(sum => {
    if (sum.share >= LEAST && sum.rare >= least && (!kind || data.documents[sum.number].kind === kind)) {
      list.push(sum);
    }
  });
  return list.sort((a, b) => b.share - a.share || a.number - b.number).slice(0, MOST_COMPARED);
}

function rank(words, kind) {
  prepare();
  const asked = reader.read(words);
  if (!asked.length) {
    return [];
  }
  const meant = wordsMeant(asked);
  const rarity = s => (meant.has(s) ? meant.get(s) : Math.min(reader.most(), reader.rarityOf(index.holding(s).size)));
  const kinds = reader.kinds(words);
  const said = whole(words);
  const list = likely(asked, meant.whole, kind);
  list.forEach(hit => {
    const d = data.documents[hit.number];
    const called = callings(hit.number);
    hit.fit = phraseFit(called.phrases, meant, rarity);
    hit.named = named(called.names, said);
    hit.score = (hit.share + PHRASE * hit.fit) * (1 + KIND * (kinds.get(d.kind) || 0)) + hit.named;
  });
  list.sort((a, b) => b.score - a.score || a.number - b.number);
  return list.length && fits(list[0], asked) ? list.filter(hit => hit.score > 0.3 * list[0].score).slice(0, 40) : [];
}

// What was typed is one of its names: the trade's first.
function named(names, said) {
  const at = names.indexOf(said);
  return at < 0 ? 0 : at === 0 ? 2.5 : 2;
}

// Whether a record answers the question, and the question is one for a shop. A word still being typed does
// not count against it.
function fits(hit, asked) {
  const last = asked[asked.length - 1];
  return (
    hit.named > 0 || enough(hit, asked) || (last.unfinished && (asked.length === 1 || enough(hit, asked.slice(0, -1))))
  );
}

// For a record speak: how much of the question it meets, where a word that no record knows weighs most; how well one
// of its phrases fits the whole; how much of the question is in words that many records are called by; and that it's
// long, since a long question is never met in full.
function enough(hit, asked) {
  if (asked.length === 1 && asked[0].spoken > 0) {
    return true; // one word alone gives no ground for doubt
  }
  let met = 0;
  let all = 0;
  let ours = 0;
  asked.forEach(c => {
    const weight = c.known || c.elsewhere ? c.rarity : c.measure ? 0 : STRANGE * reader.most();
    all += weight;
    met += weight * (c.matches.get(hit.number) || 0);
    ours += Math.log(1 + c.spoken) / asked.length;
  });
  return met / all + FIT * hit.fit + OURS * ours + LENGTH * Math.log(asked.length) >= ENOUGH;
}

/** Ranked answers to what someone typed, of one kind if given; none if nothing fits. */
export function find(words, kind) {
  return rank(String(words == null ? '' : words).slice(0, 300), kind || '').map(hit => {
    const d = data.documents[hit.number];
    return {
      id: d.id,
      kind: d.kind,
      title: d.title,
      names: [d.title].concat(d.names, d.misspelt),
      url: d.url,
      score: hit.score
    };
  });
}

// The name or lay phrase that answers best, to say why a record is shown.
export function why(id, words) {
  const asked = new Set();
  reader.concepts(words).forEach(c => {
    c.typed.concat(c.means).forEach(t => {
      asked.add(stem(t));
    });
  });
  const d = data.documents[numbers.get(id)];
  let found = null;
  let most = 0;
  [
    ['also called', d.names.concat(d.misspelt)],
    ['people say', d.lay],
    ['looks like', [d.looks]]
  ].forEach(group => {
    group[1].forEach(text => {
      const all = reader.stems(text);
      const score = all.filter(t => asked.has(t)).length / Math.sqrt(3 + all.length);
      if (score > most) {
        most = score;
        found = group[0] + ': \u201c' + text + '\u201d';
      }
    });
  });
  return found || '';
}

export function record(id) {
  return data.documents[numbers.get(id)];
}
