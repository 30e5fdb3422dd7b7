// Reads what someone typed: the things asked for, and how well each record answers to each of them.

import * as index from './words.js';

const STOP_WORDS =
  'a about after all also am an and any are as at be because been but by can cant could did do does doesnt ' +
  'doing dont for from get gets getting go goes going got had has have help hi how i if in into is isnt it its ' +
  'ive just keep keeps kind like look looks make makes making me mine my need needs no not of ok on one ones or ' +
  'other our please really said say says should so some something sort stuff such tell thanks that the their ' +
  'them then there these they thing things this those through to told too try trying us use used using very vs ' +
  'want wants was wasnt we were what whats when where which while who why wich will with without wont would you ' +
  'your called call name know proper right way';
const STOP = new Set(STOP_WORDS.split(' '));
// How much a match in each field says that this is the thing meant.
const FIELDS = {
  title: 1,
  names: 0.95,
  misspelt: 0.95,
  lay: 0.9,
  symptom: 0.75,
  does: 0.7,
  looks: 0.7,
  one: 0.45,
  more: 0.4
};
const SPOKEN = FIELDS.lay; // fields from here on up hold what people call things
const BEGUN = 0.8; // a word begun, against the whole word
const MISSPELT = 0.75; // a word misspelt, against the right one
const FORGIVEN = 5; // letters from which on a word may be misspelt by one, and from eight on by two
const SHORT = 3; // letters of a word that may be the beginning of another although a record knows it
const MEANT = 0.85; // a word of the trade that may be meant, against the word typed
const UNKNOWN = 0.45; // a word no record knows, against the rarest known one
const ELSEWHERE = 2; // a word of another world (a recipe, a concert), against the same
const OFTEN_USED = 4; // records that use a word of another world, from which on it is ours too

const data = window.benchloreFinder;

const tokens = index.tokens;
const stem = index.stem;
const weights = data.fields.map(name => FIELDS[name]);
const lexicon = [];
const hints = new Map();
const elsewhere = new Set();
const spoken = new Map();
const lookedUp = new Map();

export function stems(text) {
  return tokens(text)
    .filter(t => !STOP.has(t))
    .map(stem);
}

export function prepare() {
  if (lexicon.length) {
    return;
  }
  index.prepare();
  data.lexicon.forEach(group => {
    group.say.forEach(say => {
      lexicon.push({ say: tokens(say).map(stem), means: [].concat.apply([], group.means.map(tokens)) });
    });
  });
  lexicon.sort((a, b) => b.say.length - a.say.length);
  // A word that the records use themselves says nothing about where it comes from.
  data.elsewhere
    .map(word => stem(tokens(word)[0]))
    .forEach(s => {
      if (index.holding(s).size < OFTEN_USED) {
        elsewhere.add(s);
      }
    });
  data.hints.forEach(hint => {
    hint.say.forEach(say => {
      hints.set(stem(tokens(say)[0]), hint.kind);
    });
  });
}

// Each thing asked for: what was typed, and the trade words that may be meant by it.
export function concepts(words) {
  const typed = tokens(words).slice(0, 40);
  const stemmed = typed.map(stem);
  const used = typed.map(() => false);
  const found = [];
  lexicon.forEach(entry => {
    for (let i = 0; i + entry.say.length <= stemmed.length; i++) {
      const fits = entry.say.every((s, k) => stemmed[i + k] === s && !used[i + k]);
      if (fits) {
        found.push({
          at: i,
          typed: typed.slice(i, i + entry.say.length).filter(t => !STOP.has(t)),
          means: entry.means
        });
        entry.say.forEach((s, k) => {
          used[i + k] = true;
        });
      }
    }
  });
  typed.forEach((term, i) => {
    if (!used[i] && !STOP.has(term)) {
      found.push({ at: i, typed: [term], means: [] });
    }
  });
  return found.sort((a, b) => a.at - b.at);
}

// In how many records of every thousand a stem stands where people call things by name.
function spokenOf(s) {
  if (!spoken.has(s)) {
    let count = 0;
    index.holding(s).forEach(field => {
      count += weights[field] >= SPOKEN ? 1 : 0;
    });
    spoken.set(s, (1000 * count) / data.documents.length);
  }
  return spoken.get(s);
}

// How well each record answers to a word, 0 to 1: as it stands; else begun; else misspelt.
function lookUp(term, last) {
  const key = term + (last ? '*' : '');
  if (!lookedUp.has(key)) {
    if (lookedUp.size > 500) {
      lookedUp.clear();
    }
    lookedUp.set(key, searched(term, last));
  }
  return lookedUp.get(key);
}

function searched(term, last) {
  const hits = new Map();
  hits.spoken = 0;
  hits.instead = [];
  function add(s, quality) {
    index.holding(s).forEach((field, number) => {
      hits.set(number, Math.max(hits.get(number) || 0, quality * weights[field]));
    });
    hits.spoken = Math.max(hits.spoken, spokenOf(s));
  }
  function instead(other, quality) {
    if (!exact) {
      hits.instead.push({ stem: other, quality: quality });
    }
  }
  const s = stem(term);
  add(s, 1);
  const exact = hits.size > 0;
  if (exact && !(last && term.length > 2)) {
    return hits;
  }
  if (term.length > 2 && (last || term.length > 4)) {
    index.begun(term).forEach(longer => {
      if (longer !== s) {
        add(longer, exact ? 0.5 : BEGUN);
        instead(longer, BEGUN);
      }
    });
  }
  if (!exact && term.length >= FORGIVEN) {
    index.alike(s, term.length > 7 ? 2 : 1).forEach(other => {
      add(other, MISSPELT);
      instead(other, MISSPELT);
    });
  }
  return hits;
}

// The best match of each record for one thing asked, 0 to 1.
function answersTo(concept, last) {
  const said = new Map();
  const meant = new Map();
  concept.spoken = 0;
  concept.instead = [];
  concept.typed.forEach(term => {
    const hits = lookUp(term, last);
    hits.forEach((value, number) => {
      said.set(number, Math.min(1, (said.get(number) || 0) + value / concept.typed.length));
    });
    concept.spoken = Math.max(concept.spoken, hits.spoken);
    concept.instead = concept.instead.concat(hits.instead);
  });
  concept.means.forEach(term => {
    const hits = lookUp(term, false);
    hits.forEach((value, number) => {
      meant.set(number, Math.max(meant.get(number) || 0, MEANT * value));
    });
    concept.spoken = Math.max(concept.spoken, hits.spoken);
  });
  concept.hits = Math.min(said.size || meant.size, meant.size || said.size);
  said.forEach((value, number) => {
    meant.set(number, Math.max(value, meant.get(number) || 0));
  });
  concept.known = meant.size > 0;
  return meant;
}

// How much a word says that so many records hold.
export function rarityOf(count) {
  return Math.log(1 + data.documents.length / (1 + count));
}

// The most a word can say: so a word does that three records hold.
export function most() {
  return rarityOf(3);
}

// Whether this is one word that may yet become another: it stops at the end of what was typed and begins a word.
function begins(concept, end) {
  const held = index.holding(stem(end)).size > 0;
  return (
    concept.typed.length === 1 &&
    concept.typed[0] === end &&
    (!held || end.length <= SHORT) &&
    index.begun(end).length > (held ? 1 : 0)
  );
}

/** Each thing asked for, with its matches by record and its rarity; a word nobody knows counts for less. */
export function read(words) {
  prepare();
  const asked = concepts(words);
  const end = /[a-z0-9]+$/.exec(words.toLowerCase());
  asked.forEach((concept, n) => {
    concept.measure = concept.typed.length === 1 && /^[0-9]/.test(concept.typed[0]);
    concept.matches = answersTo(concept, n === asked.length - 1);
    concept.unfinished = Boolean(end) && n === asked.length - 1 && begins(concept, end[0]);
    concept.rarity = concept.known ? Math.min(most(), rarityOf(concept.hits)) : UNKNOWN * most();
    if (concept.typed.some(t => elsewhere.has(stem(t)))) {
      concept.matches.clear();
      concept.rarity = ELSEWHERE * most();
      concept.known = false;
      concept.elsewhere = true;
      concept.spoken = 0;
    }
  });
  return asked;
}

/** How often what was typed hints at each kind of record. */
export function kinds(words) {
  const found = new Map();
  tokens(words)
    .map(stem)
    .forEach(s => {
      if (hints.has(s)) {
        found.set(hints.get(s), (found.get(hints.get(s)) || 0) + 1);
      }
    });
  return found;
}
