// The sanding planner: the grades worth using, how long each takes, and whether the machine should
// run longer so that hands sand less.
(function () {
  'use strict';

  var view = window.benchlore.view;
  var el = view.el;
  var svg = view.svg;
  var data = window.benchlore.data;
  var TOOLS = { RANDOM_ORBIT: 'random-orbit sander', BLOCK: 'block', BELT: 'belt sander', HAND_PROFILE: 'by hand' };

  function surface(v, f) {
    switch (v.surface) {
      case 'BallNose': return { surface: 'BallNose', ballDiameterMetre: f.si('ball'), stepoverMetre: f.si('stepover') };
      case 'StraightCut': return { surface: 'StraightCut', bitDiameterMetre: f.si('bit'), feedPerFluteMetre: f.si('chip') };
      case 'Planed': return { surface: 'Planed', knifePitchMetre: f.si('pitch'), cutterRadiusMetre: f.si('cutter') };
      case 'Sawn': return { surface: 'Sawn', by: v.saw };
      case 'SandedTo': return { surface: 'SandedTo', grit: grit(v.sanded) };
      case 'TornGrain': return { surface: 'TornGrain', depthMicron: v.torn };
      default: return { surface: 'OldFilm', filmMicron: v.film, fate: v.fate };
    }
  }

  function label(grit) { return (grit.system === 'FEPA_P' ? 'P' : '') + grit.number; }

  function grit(label) { return { system: 'FEPA_P', number: Number(label.slice(1)) }; }

  function picked(v, prefix) {
    return Object.keys(v).filter(function (n) { return n.indexOf(prefix) === 0 && v[n]; }).map(function (n) { return n.slice(prefix.length); });
  }

  function ask(v, f) {
    var species = data.species(v.species);
    var chosen = data.finish(v.finish);
    var finish = chosen.finish;
    return {
      start: surface(v, f),
      wood: species.sanding,
      area: { totalSquareMetre: v.area, endGrainSquareMetre: v.ends },
      wanted: {
        finalGrade: finish.finalGrade,
        betweenCoatGrade: chosen.between,
        coats: v.coats,
        raisesGrain: finish.raisesGrain,
        poresFilled: v.pores
      },
      shop: { shelf: picked(v, 'shelf-').map(grit), tools: picked(v, 'tool-'), jumpLimitRatio: data.shop.sanding.jumpLimitRatio }
    };
  }

  // The grades as steps down a ladder, each as wide as the minutes it takes.
  function ladder(passes) {
    var longest = Math.max.apply(null, passes.map(function (p) { return p.seconds; }));
    var out = view.drawing(430, passes.length * 40 + 8, 'The grades, coarse to fine', passes.map(function (p) { return label(p.grit); }).join(', then '));
    passes.forEach(function (p, i) {
      var y = i * 40 + 4;
      var width = Math.max(3, 250 * p.seconds / longest);
      out.append(svg('text', { 'class': 'drw-text', x: 4, y: y + 21 }, label(p.grit)),
        svg('rect', { 'class': 'lad-work', x: 62, y: y, width: width, height: 30, rx: 3 }),
        svg('text', { 'class': 'drw-text', x: 68 + width, y: y + 21, 'data-q': p.seconds, 'data-u': 'second' }, window.benchlore.units.text(p.seconds, p.seconds, 'second')));
    });
    return el('figure', { 'class': 'ladder' }, out, el('figcaption', null, 'As wide as the time it takes: ' + passes.map(function (p) { return label(p.grit); }).join(', ') + '.'));
  }

  function row(name, p) {
    return el('tr', null, el('th', { scope: 'row' }, name), el('td', null, TOOLS[p.tool] || p.tool), el('td', null, view.q(p.seconds, 'second')),
      el('td', null, String(p.discs)), el('td', null, view.q(p.removedMicron, 'micron')));
  }

  function passes(value) {
    var rows = value.passes.map(function (p) { return row(label(p.grit), p); });
    if (value.extras.endGrain) { rows.push(row('End grain, ' + label(value.extras.endGrain.grit), value.extras.endGrain)); }
    if (value.extras.grainRaising) { rows.push(row('Wet, dry, knock off the fuzz, ' + label(value.extras.grainRaising.knockOff.grit), value.extras.grainRaising.knockOff)); }
    if (value.extras.poreFilling) { rows.push(row('Level the filler, ' + label(value.extras.poreFilling.level.grit), value.extras.poreFilling.level)); }
    if (value.extras.betweenCoats) { rows.push(row('Between coats, ' + value.extras.betweenCoats.times + ' times, ' + label(value.extras.betweenCoats.each.grit), value.extras.betweenCoats.each)); }
    return el('div', { 'class': 'scroll', role: 'region', tabindex: '0', 'aria-label': 'The passes' }, el('table', null, el('thead', null, el('tr', null,
      ['Grade', 'With', 'Time', 'Discs or sheets', 'Takes off'].map(function (h) { return el('th', { scope: 'col' }, h); }))), el('tbody', null, rows)));
  }

  function machineOrSand(v, f, request) {
    if (v.surface !== 'BallNose') { return null; }
    var answer = window.benchlore.machineOrSand({
      milling: { ballDiameterMetre: f.si('ball'), feedMetrePerSecond: f.si('feed'), finestStepoverMetre: f.si('finest'), coarsestStepoverMetre: f.si('coarsest'), machineWeight: v.weight },
      sanding: request
    });
    if (!answer.given) { return [el('h2', null, 'Machine longer, or sand longer?'), view.refused(answer)]; }
    var best = answer.value.best;
    return [el('h2', null, 'Machine longer, or sand longer?'),
      view.glance([
        view.figure('Best stepover', view.q(best.stepoverMetre, 'metre'), view.line(answer, 'best stepover')),
        view.figure('Machine', view.q(best.machineSeconds, 'second'), view.line(answer, 'machine time')),
        view.figure('Sanding', view.q(best.sandingSeconds, 'second'))
      ]),
      curve(answer.value, f), view.cautions(answer.cautions), view.working(answer.working)];
  }

  function curve(value, f) {
    var points = value.points;
    var high = Math.max.apply(null, points.map(function (p) { return p.machineSeconds + p.sandingSeconds; }));
    var low = points[0].stepoverMetre;
    var wide = points[points.length - 1].stepoverMetre;
    function x(s) { return 50 + 360 * Math.log(s / low) / Math.log(wide / low); }
    function y(t) { return 200 - 180 * t / high; }
    function path(pick) { return points.map(function (p, i) { return (i ? 'L' : 'M') + x(p.stepoverMetre).toFixed(1) + ' ' + y(pick(p)).toFixed(1); }).join(''); }
    var out = view.drawing(430, 240, 'Time against stepover', 'Machine time falls and sanding time rises as the stepover widens; the best is at the dot.');
    view.ticks(0, high, 4).forEach(function (t) {
      out.append(svg('path', { 'class': 'plan-grid', d: 'M50 ' + y(t) + 'H410' }), svg('text', { 'class': 'drw-text', x: 46, y: y(t) + 4, 'text-anchor': 'end' }, window.benchlore.units.text(t, t, 'second')));
    });
    [low, Math.sqrt(low * wide), wide].forEach(function (s) {
      out.append(svg('text', { 'class': 'drw-text', x: x(s), y: 220, 'text-anchor': 'middle', 'data-q': s, 'data-u': 'metre' }, window.benchlore.units.text(s, s, 'metre')));
    });
    out.append(svg('path', { 'class': 'plan-line-machine', d: path(function (p) { return p.machineSeconds; }) }),
      svg('path', { 'class': 'plan-line-hand', d: path(function (p) { return p.sandingSeconds; }) }),
      svg('circle', { 'class': 'plan-dot', cx: x(value.best.stepoverMetre), cy: y(value.best.sandingSeconds), r: 5 }));
    var now = f.si('stepover');
    if (now >= low && now <= wide) { out.append(svg('path', { 'class': 'plan-now', d: 'M' + x(now) + ' 14V200' }), svg('text', { 'class': 'drw-text', x: x(now) + 3, y: 14 }, 'yours')); }
    return el('figure', { 'class': 'ladder' }, out, el('figcaption', null, el('span', { 'class': 'key key-machine' }), ' machine ', el('span', { 'class': 'key key-hand' }), ' sanding'));
  }

  function show(answer, v, f) {
    var value = answer.value;
    return [
      view.glance([
        view.figure('Hands-on', view.q(value.totals.seconds, 'second')),
        view.figure('To take off', view.q(value.startDepthMicron, 'micron'), view.line(answer, 'depth to remove')),
        view.figure('Discs or sheets', String(value.totals.discs)),
        view.figure('Dust', view.q(value.totals.dustKilogram, 'kilogram'), view.line(answer, 'dust made'))
      ]),
      view.cautions(answer.cautions),
      value.passes.length ? ladder(value.passes) : el('p', null, 'Nothing to sand: the surface is finer than the finish asks for.'),
      passes(value),
      v.surface === 'BallNose' ? view.ridges(f.si('ball'), f.si('stepover')) : null,
      machineOrSand(v, f, ask(v, f)),
      view.working(answer.working)
    ];
  }

  window.benchlore.planner({
    follows: { finish: function (id) { return { coats: view.usualCoats(data.finish(id).finish) }; } },
    ask: ask,
    answer: function (request) { return window.benchlore.sanding(request); },
    show: show,
    say: function (answer) { return answer.value.passes.map(function (p) { return label(p.grit); }).join(', ') + '; ' + view.q(answer.value.totals.seconds, 'second').textContent + ' of sanding.'; }
  });
}());
