// The glue-up planner: how long you have, how many clamps and where, when they come off.
(function () {
  'use strict';

  var view = window.benchlore.view;
  var el = view.el;
  var svg = view.svg;
  var data = window.benchlore.data;
  var PIECE = 320; // width of the drawing

  function ask(v, fields) {
    var wood = data.species(v.species).wood;
    var moisture = v.moisture;
    return {
      adhesive: data.adhesive(v.adhesive).adhesive,
      joints: [{
        name: 'joint',
        lengthMetre: fields.si('length'),
        widthMetre: fields.si('thickness'),
        count: v.joints,
        arrangement: v.arrangement,
        backingMetre: fields.si('board'),
        gapMetre: fields.si('gap')
      }],
      wood: {
        // At the lower end: lighter wood takes less pressure.
        densityKilogramPerCubicMetre: wood.specificGravity.low * 1000 * (1 + moisture / 100),
        oily: wood.oily,
        moisturePercents: [moisture, moisture],
        sinceMachinedSecond: fields.si('fresh')
      },
      clamps: { count: v.clamps, forceNewton: v.force, caulDepthMetre: fields.si('caul'), headMetre: data.shop.clamps.headMetre },
      climate: data.climate(v.low, v.high, v.humidity),
      start: v.start,
      pace: data.pace(v.people)
    };
  }

  function panel(rows, v, fields) {
    var row = rows[0];
    var length = fields.si('length');
    var boards = v.joints + 1;
    var width = boards * fields.si('board');
    var scale = Math.min((PIECE - 20) / length, 260 / width);
    var tall = width * scale;
    var long = length * scale;
    var left = (PIECE - long) / 2;
    var over = row.positions.filter(function (p) { return !p.under; }).length;
    var out = view.drawing(PIECE, tall + 56, 'Clamps on the panel',
      boards + ' boards edge to edge, ' + row.positions.length + ' clamps across them: ' + over + ' on top, ' + (row.positions.length - over) + ' below.');
    for (var i = 0; i < boards; i++) {
      out.append(svg('rect', { 'class': 'drw-stock', x: left, y: 22 + i * tall / boards, width: long, height: tall / boards }));
    }
    for (i = 1; i < boards; i++) {
      out.append(svg('path', { 'class': 'plan-glue', d: 'M' + left + ' ' + (22 + i * tall / boards) + 'h' + long }));
    }
    row.positions.forEach(function (p) {
      var x = left + p.alongMetre * scale;
      out.append(svg('path', { 'class': p.under ? 'plan-clamp-under' : 'plan-clamp', d: 'M' + x + ' 12V' + (tall + 32) }),
        svg('rect', { 'class': 'drw-metal', x: x - 6, y: 10, width: 12, height: 10, rx: 2 }),
        svg('rect', { 'class': 'drw-metal', x: x - 6, y: tall + 24, width: 12, height: 10, rx: 2 }));
    });
    out.append(svg('text', { 'class': 'drw-text', x: left + long / 2, y: tall + 52, 'text-anchor': 'middle', 'data-q': length, 'data-u': 'metre' },
      window.benchlore.units.text(length, length, 'metre')));
    return el('figure', { 'class': 'drawing' }, out,
      el('figcaption', null, 'To scale. Solid: clamps on top; dashed: below, so that the panel stays flat.'));
  }

  function batches(value) {
    return el('ol', { 'class': 'batches' }, value.batches.map(function (b) {
      return el('li', null, view.moment(b.start), ': ',
        b.shares.map(function (s) { return s.count + (s.count === 1 ? ' joint' : ' joints'); }).join(', '),
        ' with ' + b.clamps + ' clamps; spread in ', view.q(b.spreadSecond, 'second'), ', closed in ', view.q(b.closeSecond, 'second'),
        '. Clamps off ', view.moment(b.clampsOff), '.');
    }));
  }

  function show(answer, v, fields) {
    var value = answer.value;
    var first = value.batches[0];
    var row = value.rows[0];
    var glue = data.adhesive(v.adhesive);
    var blocks = value.batches.map(function (b, i) { return { from: b.start, to: b.tight, number: i + 1 }; });
    var bands = value.batches.map(function (b) { return { from: b.tight, to: b.clampsOff, kind: 'clamped' }; });
    return [
      view.glance([
        view.figure('You have', view.q(value.assembly.totalSecond, 'second'), view.line(answer, 'total assembly time'), ' from the first bead to the last clamp'),
        view.figure('Clamps', String(value.batches.reduce(function (n, b) { return Math.max(n, b.clamps); }, 0)), view.line(answer, 'joint: clamps'), ' at ' + view.q(row.forceEachNewton, 'newton').textContent + ' each'),
        view.figure('Clamps off', view.moment(value.clampsOff.at), view.line(answer, 'batch ' + value.batches.length + ': in clamps')),
        view.figure('Machine from', view.moment(value.machine.at), view.line(answer, 'machine after')),
        view.figure('Full load', view.moment(value.fullLoad.at), view.line(answer, 'full load after')),
        view.figure('Adhesive', view.q(value.glue.volumeCubicMetre, 'cubic-metre-liquid'), view.line(answer, 'volume'), ' squeeze-out and the pot counted')
      ]),
      view.cautions(answer.cautions),
      value.batches.length > 1 ? el('p', { 'class': 'caution-line' }, 'Not all at once: this is more than you can close in time. Glue it in ' + value.batches.length + ' rounds.') : null,
      v.arrangement === 'IN_LINE' && row.positions.length ? panel(value.rows, v, fields) : null,
      el('h2', null, 'When'),
      el('figure', { 'class': 'ladder' }, window.benchlore.days('The glue-up by the clock', { blocks: blocks, bands: bands, moments: [
        { at: value.machine.at, label: 'machine' }, { at: value.fullLoad.at, label: 'full load' }] }),
      el('figcaption', null, el('span', { 'class': 'key key-work' }), ' spread and close ', el('span', { 'class': 'key key-clamped' }), ' in clamps')),
      batches(value),
      el('h2', null, 'Have ready'),
      el('ul', null, el('li', null, view.record(glue), ', ', view.q(value.glue.volumeCubicMetre, 'cubic-metre-liquid')),
        el('li', null, first.clamps + ' clamps and cauls, waxed or taped where glue may reach them'),
        el('li', null, 'A spreader or brush, a damp rag or scraper for the squeeze-out, a straight edge, a clock')),
      view.working(answer.working),
      el('p', { 'class': 'note' }, 'The label on the bottle wins. Do it dry first: every clamp set, every caul in place.')
    ];
  }

  window.benchlore.planner({
    ask: ask,
    answer: function (request) { return window.benchlore.glueUp(request); },
    show: show,
    say: function (answer) {
      var v = answer.value;
      return 'You have ' + view.q(v.assembly.totalSecond, 'second').textContent + ', ' + v.batches[0].clamps + ' clamps. Clamps off ' + view.moment(v.clampsOff.at).textContent + '.';
    }
  });
}());
