// Words as the finder sees them, and which records hold them: reads the index that was made with the site.

const ALPHABET = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz-_';
const data = window.benchloreFinder;
const fields = data.fields.length;
const digits = new Map();
ALPHABET.split('').forEach((c, i) => {
  digits.set(c, i);
});
let words = null; // every word of the library, in order
let places = null; // the places of each, as written
const spelt = new Map(); // the words of each stem, by number
const byLength = []; // stems with the set of their letters, by length
const held = new Map(); // the places of each stem, once asked for
const stemmed = new Map();

// The generator's Tokens does the same.
function plain(text) {
  return text
    .toLowerCase()
    .normalize('NFD')
    .replace(/[\u0300-\u036f'\u2019]/g, '');
}

export function tokens(text) {
  return plain(text)
    .split(/[^a-z0-9]+/)
    .filter(Boolean);
}

export function stem(term) {
  let known = stemmed.get(term);
  if (known === undefined) {
    known = window.stemmer(term);
    stemmed.set(term, known);
  }
  return known;
}

function letters(term) {
  let set = 0;
  for (let i = 0; i < term.length; i++) {
    set |= 1 << digits.get(term[i]) % 31;
  }
  return set;
}

export function prepare() {
  if (words) {
    return;
  }
  words = data.words.split(' ');
  places = data.places.split(' ');
  words.forEach((word, i) => {
    const s = stem(word);
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
  const run = places[number];
  let at = 0;
  let n = 0;
  let unit = 1;
  for (let i = 0; i < run.length; i++) {
    const digit = digits.get(run[i]);
    n += (digit % 32) * unit;
    unit *= 32;
    if (digit < 32) {
      at += Math.floor(n / fields);
      const before = found.get(at);
      if (before === undefined || n % fields < before) {
        found.set(at, n % fields);
      }
      n = 0;
      unit = 1;
    }
  }
}

// The records that hold a stem, each with the field that says most.
export function holding(s) {
  let found = held.get(s);
  if (!found) {
    found = new Map();
    (spelt.get(s) || []).forEach(number => {
      read(number, found);
    });
    held.set(s, found);
  }
  return found;
}

// Stems of the words that begin so.
export function begun(start) {
  let low = 0;
  let high = words.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (words[middle] < start) {
      low = middle + 1;
    } else {
      high = middle;
    }
  }
  const found = new Set();
  for (; low < words.length && words[low].startsWith(start); low++) {
    found.add(stem(words[low]));
  }
  return Array.from(found);
}

function bits(n) {
  let count = 0;
  for (; n; n &= n - 1) {
    count++;
  }
  return count;
}

// Letters to change, add, drop or swap with the next to make one word of another; more than most is not counted out.
function apart(a, b, most) {
  let older = [];
  let old = [];
  for (let j = 0; j <= b.length; j++) {
    old.push(j);
  }
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      let d = Math.min(old[j] + 1, row[j - 1] + 1, old[j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        d = Math.min(d, older[j - 2] + 1);
      }
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
export function alike(s, most) {
  const set = letters(s);
  const found = [];
  for (let length = Math.max(1, s.length - most); length <= s.length + most; length++) {
    (byLength[length] || []).forEach(other => {
      if (bits(set ^ other.letters) <= 2 * most && apart(s, other.stem, most) <= most) {
        found.push(other.stem);
      }
    });
  }
  return found;
}

export function all() {
  return words;
}
