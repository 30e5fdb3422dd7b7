// Speed, feed and passes for a bit, and the ridges a ball leaves.
(function () {
  'use strict';

  var view = window.benchlore.view;
  var el = view.el;
  var svg = view.svg;
  var data = window.benchlore.data;

  // Another bit brings its own usual measures along; what the reader then changes stays.
  function measures(id) {
    var bit = data.bit(id).bit;
    return { diameter: mm(bit.diameterMetre), flutes: bit.flutes, edge: mm(bit.cuttingLengthMetre), shank: mm(bit.shankDiameterMetre), marked: 0 };
  }

  function mm(metre) { return Number((metre * 1000).toPrecision(6)); }

  function ask(v, f) {
    var known = data.bit(v.record).bit;
    return {
      stock: v.stock,
      bit: {
        diameterMetre: f.si('diameter'),
        flutes: v.flutes,
        cuttingLengthMetre: f.si('edge'),
        shankDiameterMetre: f.si('shank'),
        shankLengthMetre: known.shankLengthMetre,
        markedRpm: v.marked > 0 ? v.marked : null,
        bearing: known.bearing
      },
      machine: { kind: v.machine, lowestRpm: v.slowest, highestRpm: v.fastest, highestFeedMetrePerSecond: f.si('feed') },
      side: v.side,
      depthMetre: f.si('depth'),
      wantedPassMetre: null,
      trim: Object.assign(data.trim, { leftMetre: f.si('left') }),
      wantedRpm: null
    };
  }

  // The passes in section: slice by slice to the full depth.
  function passes(value, f) {
    var depth = f.si('depth');
    var wide = f.si('diameter');
    var scale = Math.min(130 / depth, 120 / wide);
    var out = view.drawing(320, 190, 'The passes', value.passes.depthPasses + ' passes to the full depth.');
    out.append(svg('rect', { 'class': 'drw-stock', x: 10, y: 30, width: 300, height: 150 }));
    var left = 160 - wide * scale / 2;
    for (var i = 0; i < value.passes.depthPasses; i++) {
      var tall = depth * scale / value.passes.depthPasses;
      out.append(svg('rect', { 'class': 'plan-pass', x: left, y: 30 + i * tall, width: wide * scale, height: tall }));
    }
    out.append(svg('text', { 'class': 'drw-text', x: left - 6, y: 30 + depth * scale / value.passes.depthPasses / 2 + 4, 'text-anchor': 'end', 'data-q': value.passes.depthMetre, 'data-u': 'metre' },
      window.benchlore.units.text(value.passes.depthMetre, value.passes.depthMetre, 'metre')));
    return el('figure', { 'class': 'drawing' }, out, el('figcaption', null, value.passes.depthPasses + (value.passes.depthPasses === 1 ? ' pass' : ' passes, each ') , value.passes.depthPasses === 1 ? '' : view.q(value.passes.depthMetre, 'metre'), ' deep.'));
  }

  function show(answer, v, f) {
    var value = answer.value;
    var driven = v.machine === 'LIGHT_CNC' || v.machine === 'RIGID_CNC';
    return [
      view.glance([
        view.figure('Set the speed to', view.q(value.speed.rpm, 'rpm'), view.line(answer, 'speed to set'), ' never above ' + view.q(value.speed.highestRpm, 'rpm').textContent),
        view.figure(driven ? 'Feed' : 'Move at', feed(value), view.line(answer, 'feed, high end')),
        view.figure('Passes', String(value.passes.depthPasses), view.line(answer, 'depth passes'), ' of ' + view.q(value.passes.depthMetre, 'metre').textContent),
        value.passes.trimPasses > 0 ? view.figure('Trim passes', String(value.passes.trimPasses), view.line(answer, 'trim passes'), ' of ' + view.q(value.passes.biteMetre, 'metre').textContent) : null,
        view.figure('Chip', view.range(value.feed.lowChipMetre, value.feed.highChipMetre, 'metre'), view.line(answer, 'chip load, high end')),
        view.figure('Rim speed', view.q(value.speed.rimMetrePerSecond, 'metre-per-second'), view.line(answer, 'rim speed'))
      ]),
      view.cautions(answer.cautions),
      el('p', { 'class': 'caution-line' }, view.note(value.direction.how)),
      el('div', { 'class': 'drawings' }, passes(value, f), view.ridges(f.si('ball'), f.si('stepover'), el('a', { href: 'sanding.html#ball=' + v.ball + '&stepover=' + v.stepover }, 'What sanding them takes'))),
      view.working(answer.working),
      el('p', { 'class': 'note' }, 'The speed marked on the bit wins. Listen: a scream means slower or deeper chips, a rumble means a lighter cut.')
    ];
  }

  // Feeds are set in millimetres or inches a minute on every controller.
  function feed(value) {
    var low = value.feed.lowMetrePerSecond * 60;
    var high = value.feed.highMetrePerSecond * 60;
    var per = window.benchlore.units.system() === 'imperial' ? 0.0254 : 0.001;
    var from = window.benchlore.units.number(Math.round(low / per));
    var to = window.benchlore.units.number(Math.round(high / per));
    return (from === to ? to : from + '–' + to) + (per === 0.001 ? '\u00a0mm/min' : '\u00a0in/min');
  }

  window.benchlore.planner({
    follows: { record: measures },
    ask: ask,
    answer: function (request) { return window.benchlore.cutting(request); },
    show: show,
    say: function (answer) { return view.q(answer.value.speed.rpm, 'rpm').textContent + ', ' + feed(answer.value) + ', ' + answer.value.passes.depthPasses + ' passes.'; }
  });
}());
