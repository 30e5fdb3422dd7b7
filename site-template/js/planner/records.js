// The records as the engine takes them. data.species(id), .finish(id), .adhesive(id), .bit(id) and .place(id) are
// one record with the objects that go into a request, null for an unknown id; data.shop, .places, .grades, .trim
// and .tapes are the shop (null if the content has none) and the engine's tables; data.planWords are words of a
// plan file that each have a field in the form; data.suits is what the tables say of every record, each at its
// number. data.climate, .room and .pace are parts of a request that the engine
// works out, null where it can't. All are fresh copies: change them as you like.

import * as engine from './engine.js';

const packed = window.benchlorePlanner;

function source(place) {
  const from = packed.sources[place];
  return { kind: from[0], title: from[1], where: from[2] };
}

// A figure is [value, unit, source] or [low, high, unit, source]; a source alone is {'~': place}.
function unfold(value) {
  if (Array.isArray(value)) {
    if (typeof value[0] !== 'number') {
      return value.map(unfold);
    }
    const n = value.length;
    return { low: value[0], high: value[n - 3], unit: packed.units[value[n - 2]], from: source(value[n - 1]) };
  }
  if (!value || typeof value !== 'object') {
    return value;
  }
  if ('~' in value) {
    return source(value['~']);
  }
  const whole = {};
  Object.keys(/** @type {!Object} */ (value)).forEach(key => {
    whole[key] = unfold(value[key]);
  });
  return whole;
}

function row(table, i) {
  const whole = {};
  table.keys.forEach((key, k) => {
    whole[key] = unfold(table.rows[i][k]);
  });
  return whole;
}

function rows(table) {
  return table.rows.map((r, i) => row(table, i));
}

function head(kind, i) {
  const h = packed[kind].heads[i];
  return { id: h[0], title: h[1], url: h[2], number: i };
}

// Finds a record by its id and adds what `parts` makes of its place.
function record(kind, id, parts) {
  for (let i = 0; i < packed[kind].heads.length; i++) {
    if (packed[kind].heads[i][0] === id) {
      return Object.assign(head(kind, i), parts(i));
    }
  }
  return null;
}

function share(part) {
  return record('solvents', part.solvent, i => ({
    share: { solvent: row(packed.solvents.data, i), massShare: part.massShare }
  })).share;
}

function grade(g) {
  return { label: g[0], micron: g[1], grit: unfold(g[2]) };
}

function value(answer) {
  return answer.given ? answer.value : null;
}

export const data = {
  species: id =>
    record('species', id, i => ({ wood: row(packed.species.data, i), sanding: row(packed.species.sanding, i) })),
  finish: id =>
    record('finishes', id, i => {
      const finish = row(packed.finishes.data, i);
      return {
        finish: finish,
        usual: unfold(packed.finishes.usual[i]),
        shares: packed.finishes.shares[i].map(share),
        between: packed.finishes.sanded[i] ? finish['between-coat-grade'] : null
      };
    }),
  adhesive: id => record('adhesives', id, i => ({ adhesive: row(packed.adhesives.data, i) })),
  bit: id => record('bits', id, i => ({ bit: row(packed.bits.data, i) })),
  place: id => data.places.filter(p => p.id === id)[0] || null,
  climate: (low, high, humidity, heating = undefined, nights = undefined) =>
    value(
      engine.climate({
        lowCelsius: low,
        highCelsius: high,
        relativeHumidityPercent: humidity,
        heating: heating,
        nights: nights
      })
    ),
  room: (volume, changes, mixing, celsius) =>
    value(engine.room({ volume: volume, changesPerHour: changes, mixingFactor: mixing, celsius: celsius })),
  pace: people => Object.assign(unfold(packed.pace), { people: people }),
  get shop() {
    return unfold(packed.shop);
  },
  get places() {
    return packed.places.map(unfold);
  },
  get planWords() {
    return packed.planWords;
  },
  get suits() {
    const s = packed.suits;
    return Object.assign({}, s, {
      over: rows(s.over),
      barriers: rows(s.barriers),
      sentence: i => unfold(s.said[i])
    });
  },
  get grades() {
    return packed.grades.map(grade);
  },
  get trim() {
    return unfold(packed.trim);
  },
  get tapes() {
    return rows(packed.tapes);
  }
};

// How boards are sawn, as the engine's RingAngle has it: degrees of the rings to the face.
export function rings(sawn) {
  const low = { flat: 0, rift: 30, quarter: 60 }[sawn];
  return { lowDegrees: low, highDegrees: low + 30 };
}
