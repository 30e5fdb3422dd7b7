// What a plan file may hold, by the plan's own schema (benchlore.data.planFile, the one the command line
// checks with): every key and every word, at any depth. What is not known is refused, never passed over,
// since a word that is passed over can be the pilot light in a room full of vapour.
//   benchlore.planRules.problems(file)   {forms, bounds}, lines in words: forms are keys, words and
//     sorts of values; bounds are numbers too small or too large, which the form's own fields tell better

import { data } from '../planner/records.js';

const rules = data.planFile;
const MOST_LISTED = 12;
const LONGEST = 40; // letters of a strange word shown

const SORTS = {
  number: 'Write a number, without quotes and without a unit.',
  integer: 'Write a whole number, without quotes.',
  string: 'Write text; put quotes round it if it looks like a number.',
  boolean: 'Write true or false.',
  array: 'Write a list: [one, two].',
  object: 'Write fields: { name: value }.'
};

// ---- words

function quoted(value) {
  const text = typeof value === 'string' ? value : JSON.stringify(value);
  return '“' + (text.length > LONGEST ? text.slice(0, LONGEST) + '…' : text) + '”';
}

// Letters to change, add or take away to make one word of another.
function distance(a, b) {
  const row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    let corner = row[0];
    row[0] = i;
    for (let j = 1; j <= b.length; j++) {
      const above = row[j];
      row[j] = Math.min(above + 1, row[j - 1] + 1, corner + (a[i - 1] === b[j - 1] ? 0 : 1));
      corner = above;
    }
  }
  return row[b.length];
}

// The accepted word fewest letters away, if no more than a quarter of the letters differ.
function nearest(word, accepted) {
  let best = null;
  let least = Infinity;
  accepted.forEach(candidate => {
    const limit = Math.max(1, Math.floor(Math.max(word.length, candidate.length) / 4));
    const far = Math.abs(word.length - candidate.length) > limit ? Infinity : distance(word, candidate);
    if (far <= limit && far < least) {
      least = far;
      best = candidate;
    }
  });
  return best;
}

function todo(word, accepted) {
  const near = nearest(String(word).slice(0, 2 * LONGEST), accepted);
  const mean = near === null ? '' : 'Did you mean “' + near + '”? ';
  return mean && accepted.length > MOST_LISTED ? mean.trim() : mean + 'Accepted: ' + accepted.join(', ') + '.';
}

// ---- values

function sort(value) {
  if (value === null) {
    return 'null';
  }
  if (Array.isArray(value)) {
    return 'array';
  }
  return typeof value;
}

function fits(value, type) {
  if (type === 'integer') {
    return Number.isInteger(value);
  }
  return sort(value) === type && (type !== 'number' || isFinite(value));
}

function wanted(rule) {
  return rule.description && rule.pattern ? 'Write ' + rule.description + '.' : SORTS[rule.type];
}

function has(object, key) {
  return Object.prototype.hasOwnProperty.call(object, key);
}

class Check {
  constructor() {
    this.forms = [];
    this.bounds = [];
  }

  form(at, text) {
    this.forms.push((at ? at + ': ' : '') + text);
  }

  value(value, rule, at) {
    if (rule.enum) {
      if (rule.enum.indexOf(value) < 0) {
        this.form(
          at,
          quoted(value) + ' is not accepted here. ' + todo(typeof value === 'string' ? value : '', rule.enum)
        );
      }
    } else if (!fits(value, rule.type)) {
      this.form(
        at,
        (value === null ? 'nothing is written here. ' : quoted(value) + ' stands where something else belongs. ') +
          wanted(rule)
      );
    } else if (rule.type === 'object') {
      this.object(value, rule, at);
    } else if (rule.type === 'array') {
      this.array(value, rule, at);
    } else {
      this.plain(value, rule, at);
    }
  }

  plain(value, rule, at) {
    if (rule.pattern && !new RegExp(rule.pattern, 'u').test(value)) {
      this.form(at, quoted(value) + ' has the wrong form. ' + wanted(rule));
    } else if (rule.minLength > value.length) {
      this.form(at, 'this text is too short. Write it out.');
    } else if (rule.minimum > value) {
      this.bounds.push(at + ': ' + value + ' is too small. The least accepted is ' + rule.minimum + '.');
    } else if (rule.maximum < value) {
      this.bounds.push(at + ': ' + value + ' is too large. The most accepted is ' + rule.maximum + '.');
    }
  }

  array(list, rule, at) {
    if (rule.minItems > list.length) {
      this.form(at, 'this list is too short. The least is ' + rule.minItems + '.');
    }
    if (rule.maxItems < list.length) {
      this.form(at, 'this list is too long. The most is ' + rule.maxItems + '.');
      return;
    }
    list.forEach((item, i) => {
      this.value(item, rule.items, at + ', item ' + (i + 1));
    });
  }

  object(object, rule, at) {
    const known = Object.keys(rule.properties);
    const keys = Object.keys(object);
    const sound = keys.filter(key => has(rule.properties, key));
    keys.forEach(key => {
      if (!has(rule.properties, key)) {
        this.form(at, quoted(key) + ' is not known ' + (at ? 'here' : 'in a plan file') + '. ' + todo(key, known));
      }
    });
    (rule.required || []).forEach(key => {
      if (!has(object, key)) {
        this.form(at, '“' + key + '” is missing. ' + hint(rule.properties[key]));
      }
    });
    if (rule.minProperties > keys.length || rule.maxProperties < keys.length) {
      this.form(at, 'this takes exactly one of its fields: ' + known.join(', ') + '.');
    }
    sound.forEach(key => {
      this.value(object[key], rule.properties[key], at ? at + ', ' + key : key);
    });
  }
}

function hint(rule) {
  return rule.enum ? 'Accepted: ' + rule.enum.join(', ') + '.' : wanted(rule);
}

export function problems(file) {
  const check = new Check();
  if (!rules || !rules.properties) {
    check.form('', 'This page was made without the rules of a plan file, so it can\u2019t open one.');
  } else if (sort(file) !== 'object') {
    check.form('', 'This is no plan file: it holds no names with values.');
  } else {
    check.value(file, rules, '');
  }
  return { forms: check.forms, bounds: check.bounds };
}
