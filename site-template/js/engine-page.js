// The engine for pages: plain objects in, plain objects out, and the records as it takes them.
//
// Load it after engine.js (the engine) and planner-data.js (the records), all as classic scripts.
// It adds to window.benchlore:
//
//   plan(request), sanding, machineOrSand, drying, sheen, glueUp, air, fit, cutting, surfacing
//     Each takes an object whose keys are the components of the engine's request, in SI units, and
//     gives {given: true, value, working, cautions}, or {given: false, reasons} where a rule refuses,
//     or {given: false, broken: 'what is wrong'} where it is no request. None of them ever throws,
//     and none changes what it is given.
//   data.species(id), .finish(id), .adhesive(id), .bit(id), .place(id)
//     One record with the objects that go into a request; null for an unknown id.
//   data.ids(kind)  {id, title, url} of every record: species, finishes, adhesives, bits
//   data.planFile
//     What a plan file may hold: its schema.
//   data.shop, .places, .grades, .trim, .tapes
//     The shop (null if the content has none) and the engine's tables.
//   data.climate(low, high, humidity[, heating[, nights]]), .room(volume, changes, mixing, celsius), .pace(people)
//     Parts of a request that the engine works out; null where it can't.
//
// Every object handed out is a fresh copy: change it as you like.
(function () {
  'use strict';

  var FUNCTIONS = ['plan', 'sanding', 'machineOrSand', 'drying', 'sheen', 'glueUp', 'air', 'fit', 'cutting', 'surfacing'];

  function message(error) {
    try { return 'the engine failed: ' + String(error && error.message || error); } catch (e) { return 'the engine failed'; }
  }

  function call(name, request) {
    try {
      return window.EngineEntry[name](request === undefined ? null : request);
    } catch (error) {
      return { given: false, broken: message(error) };
    }
  }

  var benchlore = window.benchlore = window.benchlore || {};
  FUNCTIONS.forEach(function (name) {
    benchlore[name] = function (request) { return call(name, request); };
  });

  var packed = window.benchlorePlanner;
  if (!packed) { return; }

  function source(place) {
    var from = packed.sources[place];
    return { kind: from[0], title: from[1], where: from[2] };
  }

  // A figure is [value, unit, source] or [low, high, unit, source]; a source alone is {'~': place}.
  function unfold(value) {
    if (Array.isArray(value)) {
      if (typeof value[0] !== 'number') { return value.map(unfold); }
      var n = value.length;
      return { low: value[0], high: value[n - 3], unit: packed.units[value[n - 2]], from: source(value[n - 1]) };
    }
    if (!value || typeof value !== 'object') { return value; }
    if ('~' in value) { return source(value['~']); }
    var whole = {};
    Object.keys(value).forEach(function (key) { whole[key] = unfold(value[key]); });
    return whole;
  }

  function row(table, i) {
    var whole = {};
    table.keys.forEach(function (key, k) { whole[key] = unfold(table.rows[i][k]); });
    return whole;
  }

  function rows(table) {
    return table.rows.map(function (r, i) { return row(table, i); });
  }

  function head(kind, i) {
    var h = packed[kind].heads[i];
    return { id: h[0], title: h[1], url: h[2] };
  }

  // Finds a record by its id and adds what `parts` makes of its place.
  function record(kind, id, parts) {
    for (var i = 0; i < packed[kind].heads.length; i++) {
      if (packed[kind].heads[i][0] === id) { return Object.assign(head(kind, i), parts(i)); }
    }
    return null;
  }

  function share(part) {
    return record('solvents', part.solvent, function (i) {
      return { share: { solvent: row(packed.solvents.data, i), massShare: part.massShare } };
    }).share;
  }

  function grade(g) { return { label: g[0], micron: g[1], grit: unfold(g[2]) }; }

  function value(answer) { return answer.given ? answer.value : null; }

  var data = {
    ids: function (kind) {
      var known = Object.prototype.hasOwnProperty.call(packed, kind) && packed[kind] && packed[kind].heads;
      return known ? known.map(function (h, i) { return head(kind, i); }) : [];
    },
    species: function (id) {
      return record('species', id, function (i) {
        return { wood: row(packed.species.data, i), sanding: row(packed.species.sanding, i) };
      });
    },
    finish: function (id) {
      return record('finishes', id, function (i) {
        var finish = row(packed.finishes.data, i);
        return {
          finish: finish,
          shares: packed.finishes.shares[i].map(share),
          between: packed.finishes.sanded[i] ? finish.betweenCoatGrade : null
        };
      });
    },
    adhesive: function (id) {
      return record('adhesives', id, function (i) { return { adhesive: row(packed.adhesives.data, i) }; });
    },
    bit: function (id) {
      return record('bits', id, function (i) { return { bit: row(packed.bits.data, i) }; });
    },
    place: function (id) {
      return data.places.filter(function (p) { return p.id === id; })[0] || null;
    },
    climate: function (low, high, humidity, heating, nights) {
      return value(call('climate',
        { lowCelsius: low, highCelsius: high, relativeHumidityPercent: humidity, heating: heating, nights: nights }));
    },
    room: function (volume, changes, mixing, celsius) {
      return value(call('room',
        { volume: volume, changesPerHour: changes, mixingFactor: mixing, celsius: celsius }));
    },
    pace: function (people) { return Object.assign(unfold(packed.pace), { people: people }); }
  };
  function fresh(name, make) { Object.defineProperty(data, name, { enumerable: true, get: make }); }
  fresh('shop', function () { return unfold(packed.shop); });
  fresh('places', function () { return packed.places.map(unfold); });
  fresh('planFile', function () { return JSON.parse(JSON.stringify(packed.planFile || {})); });
  fresh('grades', function () { return packed.grades.map(grade); });
  fresh('trim', function () { return unfold(packed.trim); });
  fresh('tapes', function () { return rows(packed.tapes); });
  benchlore.data = data;
})();
