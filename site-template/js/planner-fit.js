// Fit and movement: how much a part moves through the year, the gap to leave at the test-fit and the
// tape that makes it, and whether it may be screwed down fast.
(function () {
  'use strict';

  var view = window.benchlore.view;
  var el = view.el;
  var svg = view.svg;
  var data = window.benchlore.data;

  function ask(v, f) {
    var finish = data.finish(v.finish).finish;
    function film(coats) { return { coats: coats, wetFilmMicron: v.wet, solidsByVolumePercent: finish.solidsVolumePercent.high }; }
    return {
      wood: data.species(v.species).wood,
      rings: window.benchlore.rings(v.rings),
      widthMetre: f.si('width'),
      thicknessMetre: f.si('thickness'),
      moisturePercent: v.moisture,
      shop: { celsius: v.celsius, relativeHumidityPercent: v.humidity },
      seasons: data.place(v.place).seasons,
      opening: v.fits ? { partFilm: film(v.coats), openingFilm: film(v.openingCoats), slipMetre: f.si('slip'), hanging: v.hanging, tapes: data.tapes } : null,
      panel: v.fixed ? { screwMetre: f.si('screw'), distancesMetre: Array.from(new Set([f.si('near'), f.si('far')])).sort(function (a, b) { return a - b; }) } : null
    };
  }

  // The gap in section, with the layers of tape that make it; thicknesses to one scale.
  function gap(clearance) {
    var stack = clearance.stacks[0];
    if (!stack) { return null; }
    var wide = 130;
    var each = wide / stack.layers;
    var out = view.drawing(320, 130, 'The gap at the test-fit', stack.layers + ' layers of ' + stack.tape.name + ' between the part and its opening make the gap.');
    out.append(svg('rect', { 'class': 'drw-stock', x: 4, y: 20, width: 90, height: 100 }),
      svg('rect', { 'class': 'drw-stock', x: 94 + wide, y: 20, width: 90, height: 100 }));
    for (var i = 0; i < stack.layers; i++) {
      out.append(svg('rect', { 'class': i % 2 ? 'plan-tape' : 'plan-tape plan-tape-odd', x: 94 + i * each, y: 20, width: each, height: 100 }));
    }
    out.append(svg('text', { 'class': 'drw-text', x: 49, y: 74, 'text-anchor': 'middle' }, 'part'),
      svg('text', { 'class': 'drw-text', x: 139 + wide, y: 74, 'text-anchor': 'middle' }, 'opening'),
      svg('text', { 'class': 'drw-text', x: 94 + wide / 2, y: 12, 'text-anchor': 'middle', 'data-q': clearance.gapMetre, 'data-u': 'metre' },
        window.benchlore.units.text(clearance.gapMetre, clearance.gapMetre, 'metre')));
    return el('figure', { 'class': 'drawing' }, out, el('figcaption', null, 'Tape on the moving edge, dry fit, then peel it off: ' + stack.layers + ' layers of ' + stack.tape.name + '.'));
  }

  // The width through the year, drawn larger than life.
  function year(value, v) {
    var out = view.drawing(320, 116, 'The width through the year', 'Narrowest in the driest season, widest in the dampest.');
    var most = Math.max(Math.abs(value.movement.swellMetre), Math.abs(value.movement.shrinkMetre), 1e-9);
    [['driest', -Math.abs(value.movement.shrinkMetre), value.movement.shrinkMetre], ['as it is', 0, 0], ['dampest', Math.abs(value.movement.swellMetre), value.movement.swellMetre]].forEach(function (row, i) {
      var width = 150 + 24 * row[1] / most;
      out.append(svg('rect', { 'class': 'drw-stock', x: 64, y: 6 + i * 36, width: width, height: 26 }),
        svg('text', { 'class': 'drw-text', x: 60, y: 24 + i * 36, 'text-anchor': 'end' }, row[0]));
      if (i !== 1) {
        out.append(svg('text', { 'class': 'drw-text', x: 70 + width, y: 24 + i * 36 },
          (row[1] < 0 ? '\u2212' : '+'), svg('tspan', { 'data-q': Math.abs(row[2]), 'data-u': 'metre' }, window.benchlore.units.text(Math.abs(row[2]), Math.abs(row[2]), 'metre'))));
      }
    });
    return el('figure', { 'class': 'drawing' }, out, el('figcaption', null, 'Change from today\u2019s width, drawn larger than life.'));
  }

  function show(answer, v) {
    var value = answer.value;
    var c = value.clearance;
    var x = value.fixing;
    return [
      view.glance([
        view.figure('Moves in a year', view.q(value.movement.yearMetre, 'metre'), view.line(answer, 'movement of this board')),
        c ? view.figure('Gap on each moving side', view.q(c.gapMetre, 'metre'), view.line(answer, 'gap on each moving side')) : null,
        c ? view.figure('Cut it smaller than the opening by', view.q(c.openingMinusPartMetre, 'metre')) : null,
        c ? view.figure('Gap in the driest week', view.q(c.drySeasonGapMetre, 'metre')) : null,
        view.figure('Wood settles in', value.settling.highSecond > 0 ? view.range(value.settling.lowSecond, value.settling.highSecond, 'second') : 'it is settled', view.line(answer, 'longest time to settle'))
      ]),
      view.cautions(answer.cautions),
      el('div', { 'class': 'drawings' }, year(value, v), c ? gap(c) : null),
      c && c.stacks.length ? [el('h2', null, 'Tape for the test-fit'), el('ul', null, c.stacks.map(function (s) {
        return el('li', null, s.layers + (s.layers === 1 ? ' layer of ' : ' layers of ') + s.tape.name + ': ', view.q(s.gapMicron, 'micron'));
      }))] : null,
      x ? [el('h2', null, 'Fixing'), x.rigidAllowed ? el('p', null, 'It moves so little at these screws that plain holes will do.') : [
        el('p', null, 'Screw one line fast, the rest in slots across the grain:'),
        el('ul', null, x.slots.map(function (s) {
          return el('li', null, 'At ', view.q(s.distanceMetre, 'metre'), ' a slot ', view.q(s.lengthMetre, 'metre'), ' long: ', view.q(s.outwardMetre, 'metre'), ' outward, ', view.q(s.inwardMetre, 'metre'), ' inward.');
        }))]] : null,
      view.glance([
        view.figure('Moisture in the driest season', view.q(value.moisture.dryPercent, 'percent'), view.line(answer, 'moisture in the dry season')),
        view.figure('in the dampest', view.q(value.moisture.dampPercent, 'percent'), view.line(answer, 'moisture in the damp season')),
        view.figure('in this shop', view.q(value.moisture.shopPercent, 'percent'), view.line(answer, 'moisture of the shop'))
      ]),
      view.working(answer.working)
    ];
  }

  // A finish brings its usual film and coats along.
  function film(id) {
    var finish = data.finish(id).finish;
    var coats = view.usualCoats(finish);
    return { wet: view.usual(finish.wetFilmMicron), coats: coats, openingCoats: coats };
  }

  window.benchlore.planner({
    follows: { finish: film },
    ask: ask,
    answer: function (request) { return window.benchlore.fit(request); },
    show: show,
    say: function (answer) {
      var value = answer.value;
      return 'It moves ' + view.q(value.movement.yearMetre, 'metre').textContent + ' in a year.' + (value.clearance ? ' Leave ' + view.q(value.clearance.gapMetre, 'metre').textContent + ' at the test-fit.' : '');
    }
  });
}());
