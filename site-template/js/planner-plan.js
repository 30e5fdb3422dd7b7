// A plan as three things: the fields of the form, the plan file that the generator reads too, and the
// request the engine takes. Pure: no page, no storage.
//   values -> file:    benchlore.planFile.of(values)      a plain object with the plan file's own keys
//   file -> values:    benchlore.planFile.values(file)    {values, problems, bounds}; of a file that is wrong in form, no values
//   file -> request:   benchlore.planFile.request(file)   as benchlore.plan takes it
(function () {
  'use strict';

  var data = window.benchlore.data;
  var PER = window.benchlore.units.per;
  var shopFile = {}; // what the form says by itself, for what a plan file leaves out
  var grades = data.grades.map(function (g) { return g.label; });
  var GROUPS = 8; // groups of like parts the form holds
  // The words come from the plan's schema, so what it accepts has a place in the form and nothing else has.
  var accepted = data.planFile.properties;
  var DAYS = Object.keys(accepted.hours.properties);
  var IGNITION = accepted.ignition.items['enum'];
  var SANDERS = accepted.sanders.items['enum'];
  var SIZES = { mm: 1e-3, m: 1, 'in': PER.inch, 'min': 60, h: 3600, d: 86400, '°C': 1, '%': 1, N: 1, lbf: PER.poundForce, 'µm': 1, mil: 25.4, m3: 1 };

  // A size is worked out in one way everywhere, so that the same file always asks the same of the engine.
  function si(text) {
    var m = /^(-?[0-9]+(?:\.[0-9]+)?) (\S+)$/.exec(String(text));
    if (!m || SIZES[m[2]] === undefined) { throw new Error('“' + String(text).slice(0, 30) + '” is not an amount such as 18 mm'); }
    return Number(m[1]) * SIZES[m[2]];
  }

  // The number of an amount in another unit of its kind, without the dust of binary fractions.
  function inUnit(text, unit) {
    var m = /^(-?[0-9]+(?:\.[0-9]+)?) (\S+)$/.exec(String(text));
    return m && m[2] === unit ? Number(m[1]) : Number((si(text) / SIZES[unit]).toPrecision(9));
  }

  function constant(word) { return word.toUpperCase().replace(/-/g, '_'); }

  function slug(title) {
    var s = title.toLowerCase().normalize('NFKD').replace(/[\u0300-\u036f]/g, '').replace(/[^a-z0-9]+/g, '-').replace(/^-+|-+$/g, '');
    return /^[a-z]/.test(s) ? s.slice(0, 60) : 'plan-' + (s || 'of-mine').slice(0, 50);
  }

  // ---- nights that were otherwise: in the form and its address a word, "2027-02-28_4_21" for the night that begins
  // on that day, its coldest and its warmest; then the humidity, if it is known, or nothing; then "off" if the heater
  // stood still. Nights are joined by "~", in order.

  var NIGHTS = 60;
  var NIGHT = /^(\d{4}-\d\d-\d\d)_(-?\d+(?:\.\d+)?)_(-?\d+(?:\.\d+)?)(?:_(\d+(?:\.\d+)?)?)?(_off)?$/;

  // What is wrong with a night, in words; empty if nothing is.
  function nightWrong(n) {
    if (!window.benchlore.isDay(n.date)) { return '“' + n.date + '” is no day'; }
    var bad = [n.low, n.high].find(function (c) { return !(c >= -30 && c <= 60); });
    if (bad !== undefined) { return 'the night of ' + n.date + ' can\u2019t have been at ' + bad + ' °C: -30 to 60 °C'; }
    if (n.low > n.high) { return 'in the night of ' + n.date + ' the coldest, ' + n.low + ' °C, is above the warmest'; }
    return n.humidity === undefined || n.humidity >= 1 && n.humidity <= 100 ? '' : 'in the night of ' + n.date + ' the humidity has to be 1 to 100 %';
  }

  // The nights as an address has them; throws what is wrong.
  function nightsOf(text) {
    return sound(String(text).split('~').filter(Boolean).map(function (word) {
      var m = NIGHT.exec(word);
      if (!m) { throw new Error('“' + word.slice(0, 30) + '” is no night such as 2027-02-28_4_21'); }
      var n = { date: m[1], low: Number(m[2]), high: Number(m[3]) };
      if (m[4] !== undefined) { n.humidity = Number(m[4]); }
      if (m[5]) { n.heated = false; }
      return n;
    }));
  }

  // Nights in order, if each is sound and stands there once; throws what is wrong.
  function sound(nights) {
    if (nights.length > NIGHTS) { throw new Error('more than ' + NIGHTS + ' nights'); }
    var list = nights.slice().sort(function (a, b) { return a.date < b.date ? -1 : a.date > b.date ? 1 : 0; });
    list.forEach(function (n, i) {
      var wrong = nightWrong(n) || (i > 0 && list[i - 1].date === n.date ? 'the night of ' + n.date + ' stands there twice' : '');
      if (wrong) { throw new Error(wrong); }
    });
    return list;
  }

  function nightsText(nights) {
    return sound(nights).map(function (n) {
      var humidity = n.humidity === undefined ? '' : n.humidity;
      return [n.date, n.low, n.high].join('_') + (n.heated === false ? '_' + humidity + '_off' : humidity === '' ? '' : '_' + humidity);
    }).join('~');
  }

  function nightInFile(n) {
    var night = { date: n.date, low: n.low + ' °C', high: n.high + ' °C' };
    if (n.humidity !== undefined) { night.humidity = n.humidity + ' %'; }
    if (n.heated === false) { night.heated = false; }
    return night;
  }

  function nightFromFile(n) {
    var night = { date: words(n.date), low: inUnit(n.low, '°C'), high: inUnit(n.high, '°C') };
    if (n.humidity !== undefined) { night.humidity = inUnit(n.humidity, '%'); }
    if (n.heated === false) { night.heated = false; }
    return night;
  }

  function nightAsked(n) {
    return {
      date: n.date,
      lowCelsius: si(n.low),
      highCelsius: si(n.high),
      afternoonHumidityPercent: n.humidity === undefined ? undefined : si(n.humidity),
      heated: n.heated !== false
    };
  }

  // ---- a run: {done: [{step, slots: [{start, end}]}]} in the page; in the file, each slot is a line

  function runInFile(run, now) {
    function word(iso) { return iso.replace('T', ' '); }
    return {
      saved: word(now.slice(0, 16)),
      done: run.done.map(function (d) { return { step: d.step, at: d.slots.map(function (s) { return word(s.start) + ' to ' + word(s.end); }) }; })
    };
  }

  function runFromFile(told) {
    var run = { done: told.done.map(function (d) { return { step: d.step, slots: d.at.map(slotFromFile) }; }) };
    if (!window.benchlore.isDay(told.saved.slice(0, 10)) || !window.benchlore.saved.soundRun(run)) { throw new Error('a step is done at a time that is in no calendar, or ends before it begins'); }
    return run;
  }

  function slotFromFile(text) {
    var ends = text.split(' to ');
    return { start: ends[0].replace(' ', 'T'), end: ends[1].replace(' ', 'T') };
  }

  // ---- values -> file

  function surfaceOf(v, n) {
    switch (v['surface-' + n]) {
      case 'ball-nose': return { 'ball-nose': { diameter: v['a-' + n] + ' mm', stepover: v['b-' + n] + ' mm' } };
      case 'straight-cut': return { 'straight-cut': { diameter: v['a-' + n] + ' mm', 'chip-load': v['b-' + n] + ' mm' } };
      case 'planed': return { planed: { pitch: v['b-' + n] + ' mm', radius: v['a-' + n] + ' mm' } };
      case 'sanded': return { sanded: v['grade-' + n] };
      default: return { sawn: v['surface-' + n] };
    }
  }

  function partOf(v, n) {
    return {
      name: v['name-' + n].trim() || 'part ' + n,
      count: v['count-' + n],
      length: v['length-' + n] + ' mm',
      width: v['width-' + n] + ' mm',
      thickness: v['thickness-' + n] + ' mm',
      grain: v['grain-' + n],
      boards: v['boards-' + n],
      surface: surfaceOf(v, n),
      machining: v['machining-' + n] + ' min',
      moves: v['moves-' + n]
    };
  }

  function spans(text) { return text.split(',').map(function (s) { return s.trim().replace(/\s*[-–]\s*/, '-'); }).filter(Boolean); }

  function of(v) {
    var file = {
      id: slug(v.id || v.title),
      title: v.title.trim() || 'A plan of mine',
      intro: v.intro.trim() || v.title.trim() || 'A plan of mine',
      start: v.start.replace('T', ' '),
      species: v.species,
      adhesive: v.adhesive,
      finish: { record: v.finish, sheen: v.sheen, coats: v.coats, method: v.method },
      place: v.place,
      boards: { settled: v.settled, moisture: v.moisture + ' %' },
      climate: { low: v.low + ' °C', high: v.high + ' °C', humidity: v.humidity + ' %' },
      hours: {},
      'days-off': spans(v.off),
      volume: v.volume + ' m3',
      'air-changes': v.changes,
      'mixing-factor': v.mixing,
      ignition: IGNITION.filter(function (s) { return v['ignition-' + s]; }),
      grades: grades.filter(function (g) { return v['shelf-' + g]; }),
      sanders: SANDERS.filter(function (s) { return v['sander-' + s]; }),
      clamps: { count: v.clamps, force: v.force + ' N', caul: v.caul + ' mm', jaw: v.jaw + ' mm' },
      people: v.people,
      parts: []
    };
    if (v.film > 0) { file.finish['wet-film'] = v.film + ' µm'; }
    if (v.heated) { file.climate.heating = { from: v['heat-from'] + ' h', to: v['heat-to'] + ' h', at: v['heat-at'] + ' °C' }; }
    var nights = nightsOf(v.nights || '');
    if (nights.length) { file.climate.nights = nights.map(nightInFile); }
    DAYS.forEach(function (d) { if (spans(v[d]).length) { file.hours[d] = spans(v[d]); } });
    for (var n = 1; n <= v.groups; n++) { file.parts.push(partOf(v, n)); }
    return file;
  }

  // ---- file -> values

  function partValues(part, n, v) {
    var s = part.surface;
    var kind = Object.keys(s)[0];
    v['name-' + n] = part.name;
    v['count-' + n] = part.count;
    ['length', 'width', 'thickness'].forEach(function (k) { v[k + '-' + n] = inUnit(part[k], 'mm'); });
    v['grain-' + n] = part.grain || 'flat';
    v['boards-' + n] = part.boards;
    v['machining-' + n] = inUnit(part.machining, 'min');
    v['moves-' + n] = part.moves;
    v['surface-' + n] = kind === 'sawn' ? s.sawn : kind;
    if (kind === 'ball-nose') { v['a-' + n] = inUnit(s[kind].diameter, 'mm'); v['b-' + n] = inUnit(s[kind].stepover, 'mm'); }
    if (kind === 'straight-cut') { v['a-' + n] = inUnit(s[kind].diameter, 'mm'); v['b-' + n] = inUnit(s[kind]['chip-load'], 'mm'); }
    if (kind === 'planed') { v['a-' + n] = inUnit(s[kind].radius, 'mm'); v['b-' + n] = inUnit(s[kind].pitch, 'mm'); }
    if (kind === 'sanded') { v['grade-' + n] = s.sanded; }
  }

  function values(file) {
    var v = {};
    var run = null;
    var problems = [];
    function take(what, f) {
      try { f(); } catch (e) { problems.push(what + ': ' + (e instanceof TypeError ? 'it is missing or not what stands here in a plan file.' : e.message + '.')); }
    }
    var check = window.benchlore.planRules.problems(file);
    if (check.forms.length) { return { values: v, problems: check.forms }; }
    take('id', function () { v.id = words(file.id); });
    take('title', function () { v.title = words(file.title); v.intro = words(file.intro); });
    take('start', function () { v.start = words(file.start).replace(' ', 'T'); });
    take('species, adhesive and place', function () { v.species = words(file.species); v.adhesive = words(file.adhesive); v.place = words(file.place); });
    take('finish', function () {
      v.finish = words(file.finish.record);
      v.sheen = words(file.finish.sheen);
      v.coats = file.finish.coats;
      v.method = words(file.finish.method);
      v.film = file.finish['wet-film'] === undefined ? 0 : inUnit(file.finish['wet-film'], 'µm');
    });
    take('boards', function () { v.settled = file.boards.settled; v.moisture = inUnit(file.boards.moisture, '%'); });
    take('climate', function () {
      var c = file.climate || shopFile.climate;
      v.low = inUnit(c.low, '°C'); v.high = inUnit(c.high, '°C'); v.humidity = inUnit(c.humidity, '%');
      v.heated = c.heating !== undefined;
      v.nights = nightsText((c.nights || []).map(nightFromFile));
      if (v.heated) { v['heat-from'] = inUnit(c.heating.from, 'h'); v['heat-to'] = inUnit(c.heating.to, 'h'); v['heat-at'] = inUnit(c.heating.at, '°C'); }
    });
    take('hours', function () {
      var h = file.hours || shopFile.hours;
      DAYS.forEach(function (d) { v[d] = (h[d] || []).join(', '); });
      v.off = (file['days-off'] || shopFile['days-off'] || []).map(words).join(', ');
    });
    take('volume and air', function () {
      v.volume = inUnit(shop(file, 'volume'), 'm3');
      v.changes = shop(file, 'air-changes');
      v.mixing = shop(file, 'mixing-factor');
      IGNITION.forEach(function (s) { v['ignition-' + s] = shop(file, 'ignition').indexOf(s) >= 0; });
    });
    take('grades and sanders', function () {
      grades.forEach(function (g) { v['shelf-' + g] = shop(file, 'grades').indexOf(g) >= 0; });
      SANDERS.forEach(function (s) { v['sander-' + s] = shop(file, 'sanders').indexOf(s) >= 0; });
      var strange = shop(file, 'grades').filter(function (g) { return grades.indexOf(g) < 0; });
      if (strange.length) { throw new Error('“' + strange[0] + '” is no FEPA P grade'); }
    });
    take('clamps and people', function () {
      var c = shop(file, 'clamps');
      v.clamps = c.count; v.force = inUnit(c.force, 'N'); v.caul = inUnit(c.caul, 'mm'); v.jaw = inUnit(c.jaw, 'mm');
      v.people = shop(file, 'people');
    });
    take('run', function () { run = file.run === undefined ? null : runFromFile(file.run); });
    take('parts', function () {
      if (file.parts.length > GROUPS) { throw new Error('this page holds ' + GROUPS + ' groups of parts, the file has ' + file.parts.length); }
      v.groups = file.parts.length;
      file.parts.forEach(function (p, i) { partValues(p, i + 1, v); });
    });
    // The form tells of a number that is too large in the reader's own words and units; the schema of any it let by.
    return { values: v, problems: problems, bounds: check.bounds, run: run };
  }

  function words(x) {
    if (typeof x !== 'string') { throw new TypeError('no words'); }
    return x.trim();
  }

  function shop(file, key) { return file[key] === undefined ? shopFile[key] : file[key]; }

  // ---- file -> request

  function surface(s) {
    var kind = Object.keys(s)[0];
    var x = s[kind];
    switch (kind) {
      case 'ball-nose': return { surface: 'BallNose', ballDiameterMetre: si(x.diameter), stepoverMetre: si(x.stepover) };
      case 'straight-cut': return { surface: 'StraightCut', bitDiameterMetre: si(x.diameter), feedPerFluteMetre: si(x['chip-load']) };
      case 'planed': return { surface: 'Planed', knifePitchMetre: si(x.pitch), cutterRadiusMetre: si(x.radius) };
      case 'sanded': return { surface: 'SandedTo', grit: grit(x) };
      default: return { surface: 'Sawn', by: constant(x) };
    }
  }

  function grit(label) { return { system: 'FEPA_P', number: Number(label.slice(1)) }; }

  function mean(climate) {
    return climate.hours.reduce(function (sum, h) { return sum + h.celsius; }, 0) / climate.hours.length;
  }

  function minute(clock) { return Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3)); }

  function week(hours, off) {
    var days = DAYS.map(function (d) {
      return (hours[d] || []).map(function (s) {
        return { fromMinuteInclusive: minute(s.slice(0, s.indexOf('-'))), toMinuteExclusive: minute(s.slice(s.indexOf('-') + 1)) };
      });
    });
    return { days: days, daysOff: off };
  }

  function request(file) {
    var finish = data.finish(file.finish.record);
    var c = file.climate || shopFile.climate;
    var climate = data.climate(si(c.low), si(c.high), si(c.humidity),
      c.heating && { fromHour: inUnit(c.heating.from, 'h'), toHour: inUnit(c.heating.to, 'h'), celsius: si(c.heating.at) },
      (c.nights || []).map(nightAsked));
    var clamps = shop(file, 'clamps');
    return {
      start: file.start.replace(' ', 'T'),
      parts: file.parts.map(function (p) {
        return {
          name: p.name,
          count: p.count,
          lengthMetre: si(p.length),
          widthMetre: si(p.width),
          thicknessMetre: si(p.thickness),
          rings: window.benchlore.rings(p.grain || 'flat'),
          boards: p.boards,
          surface: surface(p.surface),
          machiningSecond: si(p.machining),
          moves: p.moves
        };
      }),
      materials: {
        wood: data.species(file.species).wood,
        adhesive: data.adhesive(file.adhesive).adhesive,
        finish: finish.finish,
        solvents: finish.shares
      },
      coats: {
        coats: file.finish.coats,
        wetFilmMicron: file.finish['wet-film'] ? si(file.finish['wet-film']) : window.benchlore.view.usual(finish.finish.wetFilmMicron),
        method: constant(file.finish.method),
        sheen: constant(file.finish.sheen)
      },
      shop: {
        week: week(file.hours || shopFile.hours, file['days-off'] || shopFile['days-off'] || []),
        climate: climate,
        room: data.room(si(shop(file, 'volume')), shop(file, 'air-changes'), shop(file, 'mixing-factor'), mean(climate)),
        ignition: shop(file, 'ignition').map(constant),
        sanding: { shelf: shop(file, 'grades').map(grit), tools: shop(file, 'sanders').map(constant), jumpLimitRatio: data.shop.sanding.jumpLimitRatio },
        clamps: { count: clamps.count, forceNewton: si(clamps.force), caulDepthMetre: si(clamps.caul), headMetre: si(clamps.jaw) },
        people: shop(file, 'people')
      },
      place: data.place(file.place).seasons,
      settled: file.boards.settled,
      moisturePercent: si(file.boards.moisture)
    };
  }

  window.benchlore.planFile = {
    of: of,
    values: values,
    request: request,
    runInFile: runInFile,
    shop: function (file) { shopFile = file; },
    nights: nightsOf,
    nightsText: nightsText,
    GROUPS: GROUPS
  };
}());
