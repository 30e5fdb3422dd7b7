// The air planner: how much solvent gets into the room, against what people may breathe and what can
// catch fire; the flow it takes, and when the room is fit to sit in again.
(function () {
  'use strict';

  var view = window.benchlore.view;
  var el = view.el;
  var svg = view.svg;
  var data = window.benchlore.data;
  var text = window.benchlore.units.text;
  var SOURCES = ['PILOT_LIGHT', 'UNVENTED_FUEL_HEATER', 'OPEN_ELEMENT_HEATER', 'WELDING_OR_GRINDING', 'SMOKING', 'BRUSHED_MOTOR', 'UNRATED_ELECTRICAL', 'STATIC'];
  var MASKS = {
    NONE: 'none for this vapour',
    DUST_HALF_MASK: 'half mask, particle filter',
    DUST_FULL_FACE: 'full face, particle filter',
    VAPOUR_HALF_MASK: 'half mask, organic vapour cartridges',
    VAPOUR_HALF_MASK_PREFILTER: 'half mask, organic vapour cartridges with particle prefilters',
    FULL_FACE_VAPOUR: 'full face, organic vapour cartridges',
    SUPPLIED_AIR: 'supplied air: not a job for a garage'
  };

  // Where there is no time to tell, what stands in its place.
  var BACK = {
    NEVER_OVER: 'within the limits all the time; window open until the film is dry',
    WITHIN_WORK: 'over the limits while you work; window open until the film is dry',
    NOT_COUNTED: 'not told: stay out until the film is hard (isocyanate or formaldehyde)',
    UNKNOWN: 'not told: stay out until dry and the smell is gone'
  };

  function ask(v, f) {
    var finish = data.finish(v.finish);
    var kilogram = f.si('liquid') * finish.finish.voc.high;
    var releases = [];
    for (var i = 0; i < v.rounds; i++) {
      releases.push({ startSecond: i * f.si('between'), volatileKilogram: kilogram, shares: finish.shares, method: v.method, curve: null });
    }
    return {
      room: { volume: v.volume, outdoorFlow: v.volume * v.changes / 3600, mixingFactor: v.mixing, celsius: v.celsius },
      releases: releases,
      ignitionSources: SOURCES.filter(function (s) { return v[s]; }),
      isocyanate: finish.finish.isocyanate,
      selfHeatingRags: finish.finish.selfHeatingRags
    };
  }

  // The share of what may be breathed (1 is the limit) and of the danger level, over the hours.
  function curve(value, told) {
    var points = value.curve;
    var last = points[points.length - 1].second;
    var most = Math.max.apply(null, points.map(function (p) { return p.index || 0; }).concat([1.2]));
    var top = Math.log10(Math.max(most, 1.2) * 1.3);
    var low = -2;
    function x(s) { return 44 + 376 * s / last; }
    function y(index) { return 20 + 180 * (top - Math.log10(Math.max(index, Math.pow(10, low)))) / (top - low); }
    var out = view.drawing(430, 232, 'Vapour in the room over time', 'The mixture index from the first coat on, on a scale of tenfold steps; 1 is the limit for breathing.');
    for (var p = Math.ceil(low); p <= top; p++) {
      var v = Math.pow(10, p);
      out.append(svg('path', { 'class': 'plan-grid', d: 'M44 ' + y(v).toFixed(1) + 'H420' }),
        svg('text', { 'class': 'drw-text', x: 40, y: y(v) + 4, 'text-anchor': 'end' }, p < 0 ? String(v) : String(Math.round(v))));
    }
    view.ticks(0, last / 3600, 5).forEach(function (h) {
      out.append(svg('text', { 'class': 'drw-text', x: x(h * 3600), y: 220, 'text-anchor': 'middle' }, text(h * 3600, h * 3600, 'second')));
    });
    out.append(svg('path', { 'class': 'plan-limit', d: 'M44 ' + y(1).toFixed(1) + 'H420' }),
      svg('text', { 'class': 'drw-text', x: 416, y: y(1) - 5, 'text-anchor': 'end' }, 'limit for breathing'),
      svg('path', { 'class': 'plan-line-hand', d: points.map(function (q, i) { return (i ? 'L' : 'M') + x(q.second).toFixed(1) + ' ' + y(q.index || 0).toFixed(1); }).join('') }));
    value.reEntries.forEach(function (r) {
      if (told && r.second !== null && r.second !== undefined && r.second < last) {
        out.append(svg('path', { 'class': 'plan-now', d: 'M' + x(r.second).toFixed(1) + ' 20V200' }),
          svg('text', { 'class': 'drw-text', x: x(r.second) + 3, y: 32 }, 'fit to sit in'));
      }
    });
    return el('figure', { 'class': 'ladder' }, out, el('figcaption', null, 'How many times the limit for breathing is in the air, tenfold from line to line.'));
  }

  function room(v, f, value) {
    var need = value.flow.governing;
    var have = v.volume * v.changes / 3600;
    return el('p', { 'class': have >= need ? 'note' : 'caution-line' },
      'Your fan moves ', view.q(have, 'cubic-metre-per-second'), '; this takes ', view.q(need, 'cubic-metre-per-second'),
      have >= need ? '. That is enough, if the air enters on the other side of the room and leaves past the wet work, not past your face.'
        : '. More air, less liquid at a time, a brush instead of a gun, or another finish.');
  }

  function show(answer, v, f) {
    var value = answer.value;
    var entry = value.reEntries[value.reEntries.length - 1];
    // Catalysed lacquers give off formaldehyde, which is not among the solvents reckoned with.
    var formaldehyde = data.finish(v.finish).finish.family === 'CATALYSED_LACQUER';
    var verdict = formaldehyde ? 'NOT_COUNTED' : entry.verdict;
    var safe = verdict === 'AFTER' ? view.q(entry.second, 'second') : BACK[verdict];
    return [
      view.glance([
        view.figure('Air needed', view.q(value.flow.governing, 'cubic-metre-per-second'), view.line(answer, value.flow.governs === 'FIRE' ? 'flow for fire, 10 %' : 'flow for health') , ' ' + text(value.flow.changesPerHour, value.flow.changesPerHour, 'per-hour') + ' changes'),
        view.figure('Fit to sit in after', safe, verdict === 'AFTER' ? view.line(answer, 're-entry after the coat') : null),
        view.figure('Most at once', value.peaks.index ? text(value.peaks.index.value, value.peaks.index.value, 'ratio') + ' × the limit' : 'no limit known', view.line(answer, 'highest mixture index')),
        view.figure('Of the explosive limit', value.peaks.percentLowerExplosive ? view.q(value.peaks.percentLowerExplosive.value, 'percent') : 'not known', view.line(answer, 'highest share of the lower explosive limit')),
        view.figure('Mask', MASKS[value.respirator.respirator] || words(value.respirator.respirator))
      ]),
      view.cautions(answer.cautions),
      curve(value, verdict === 'AFTER'),
      room(v, f, value),
      value.brushedPeakIndex !== null && v.method === 'SPRAY' ? el('p', null, 'Brushed instead of sprayed, the same coat would reach ' + text(value.brushedPeakIndex, value.brushedPeakIndex, 'ratio') + ' × the limit.') : null,
      el('p', { 'class': 'note' }, 'The safety data sheet and your local codes win. A mask stands in for no air: it comes on top.'),
      view.working(answer.working)
    ];
  }

  function words(name) { return String(name).toLowerCase().replace(/_/g, ' '); }

  window.benchlore.planner({
    ask: ask,
    answer: function (request) { return window.benchlore.air(request); },
    show: show,
    say: function (answer) { return 'Air needed: ' + view.q(answer.value.flow.governing, 'cubic-metre-per-second').textContent + '.'; }
  });
}());
