// How an answer of the engine looks: quantities, sentences, cautions, the working behind a figure,
// dates in the reader's own way, and the bones of a chart. Text only ever enters as text.
(function () {
  'use strict';

  var units = window.benchlore.units;
  var SVG = 'http://www.w3.org/2000/svg';

  function fill(node, attributes, children) {
    Object.keys(attributes || {}).forEach(function (k) { node.setAttribute(k, attributes[k]); });
    children.forEach(function add(c) {
      if (Array.isArray(c)) {
        c.forEach(add);
      } else if (c !== null && c !== undefined && c !== '') {
        node.append(c);
      }
    });
    return node;
  }

  function el(name, attributes) {
    return fill(document.createElement(name), attributes, Array.prototype.slice.call(arguments, 2));
  }

  function svg(name, attributes) {
    return fill(document.createElementNS(SVG, name), attributes, Array.prototype.slice.call(arguments, 2));
  }

  // A figure, or a range, that follows the units switch.
  function range(low, high, unit) {
    var name = unit.toLowerCase().replace(/_/g, '-');
    var span = el('span', { 'class': 'q', 'data-q': low, 'data-u': name }, units.text(low, high, name));
    if (high !== low) { span.dataset.h = high; }
    return span;
  }

  function q(value, unit) { return range(value, value, unit); }

  function quantity(x) { return q(x.value, x.unit); }

  // A sentence of the engine: its pattern with the quantities in their places.
  function note(n) {
    return n.pattern.split(/(\{\d+\})/).map(function (part) {
      var m = /^\{(\d+)\}$/.exec(part);
      return m && n.quantities[Number(m[1])] ? quantity(n.quantities[Number(m[1])]) : part;
    });
  }

  // Cautions where the step is; they can't be folded away.
  function cautions(list) {
    if (!list || !list.length) { return null; }
    return el('ul', { 'class': 'step-cautions' }, list.map(function (c) {
      return el('li', { 'class': 'care-' + c.severity.toLowerCase() },
        note(c.what), ' ', el('strong', null, note(c.measure)));
    }));
  }

  function from(p) {
    if (p.kind === 'SOURCE') { return [p.title, p.where].filter(Boolean).join(', '); }
    var words = { COMMON_PRACTICE: 'common practice', FROM_MEMORY: 'from memory, not checked', INPUT: 'you said so', COMPUTED: 'worked out here' }[p.kind] || '';
    return [words, p.title, p.where].filter(Boolean).join('; ');
  }

  // One line of working, opened by "Why 31 h?".
  function why(line) {
    var r = line.result;
    return el('details', { 'class': 'why-line' },
      el('summary', null, 'Why ', quantity(r.quantity || r), '?'), steps(line));
  }

  function steps(line) {
    return el('div', { 'class': 'working' },
      el('p', null, el('strong', null, line.result.name + ': ', quantity(line.result.quantity || line.result)), el('br'),
        el('code', null, line.formula), ' ', el('span', { 'class': 'quiet' }, from(line.rule))),
      line.inputs.length ? el('ul', null, line.inputs.map(function (i) {
        return el('li', null, i.name + ': ', quantity(i.quantity || i), ' ', el('span', { 'class': 'quiet' }, from(i.from)));
      })) : null);
  }

  // All the working of an answer, in one fold.
  function working(lines) {
    if (!lines || !lines.length) { return null; }
    return el('details', { 'class': 'all-working' },
      el('summary', null, 'How these figures came about'), lines.map(steps));
  }

  // Why the engine gives no answer, and what to change.
  function refused(answer) {
    if (answer.broken !== undefined) {
      return el('div', { 'class': 'caution danger' }, el('h2', null, 'This can\u2019t be worked out'),
        el('p', null, 'The page asked the engine something it does not understand: ' + answer.broken));
    }
    return el('section', { 'class': 'caution danger' }, el('h2', null, 'This can\u2019t be done as asked'),
      el('ul', null, answer.reasons.map(function (r) {
        return el('li', null, note(r.problem), ' ', el('strong', null, note(r.remedy)));
      })));
  }

  // Local wall-clock times, written the reader's way: the language of the browser decides on 12 or 24 hours.
  function date(iso) { return new Date(iso.length > 10 ? iso : iso + 'T00:00'); }
  function two(n) { return String(n).padStart(2, '0'); }
  // A moment of this device's clock as the engine has it: local, no zone, to the minute.
  function minute(d) {
    return d.getFullYear() + '-' + two(d.getMonth() + 1) + '-' + two(d.getDate()) + 'T' + two(d.getHours()) + ':' + two(d.getMinutes());
  }
  var DAY = new Intl.DateTimeFormat(undefined, { weekday: 'short', day: 'numeric', month: 'short' });
  var DAY_AND_YEAR = new Intl.DateTimeFormat(undefined, { weekday: 'short', day: 'numeric', month: 'short', year: 'numeric' });
  var CLOCK = new Intl.DateTimeFormat(undefined, { hour: 'numeric', minute: '2-digit' });
  function shortDay(iso) { return DAY.format(date(iso)); }
  // The year is said where it is not this one.
  function day(iso) { return date(iso).getFullYear() === new Date().getFullYear() ? shortDay(iso) : DAY_AND_YEAR.format(date(iso)); }
  function clock(iso) { return CLOCK.format(date(iso)); }
  function moment(iso) { return el('time', { datetime: iso, 'class': 'q' }, day(iso) + ', ' + clock(iso)); }

  // A big figure with its name, and why.
  function figure(name, value, line, remark) {
    return el('div', null, el('dt', null, name),
      el('dd', null, value, remark ? el('span', { 'class': 'remark' }, remark) : null, line ? why(line) : null));
  }

  function glance(figures) { return el('dl', { 'class': 'glance' }, figures); }

  // The line of working whose result has this name.
  function line(answer, name) {
    return (answer.working || []).find(function (l) { return l.result.name === name; }) || null;
  }

  // The middle of a record's range, and its usual number of coats: where a form starts.
  function usual(datum) { return 0.5 * (datum.low + datum.high); }
  function usualCoats(finish) { return Math.max(1, Math.round(usual(finish.coats))); }

  // A link to a record's page.
  function record(r) { return el('a', { href: document.documentElement.dataset.root + r.url }, r.title); }

  // Round steps for an axis: about so many of 1, 2 or 5 times a power of ten.
  function ticks(low, high, about) {
    var raw = (high - low) / about;
    var power = Math.pow(10, Math.floor(Math.log10(raw)));
    var step = [1, 2, 5, 10].map(function (m) { return m * power; }).find(function (s) { return s >= raw; });
    var list = [];
    for (var i = Math.ceil(low / step); i * step <= high + step * 1e-9; i++) { list.push(i * step); }
    return list;
  }

  // A drawing with its title and description for those who can't see it.
  var drawn = 0;
  function drawing(width, height, title, text) {
    drawn++;
    var id = 'drawn-' + drawn;
    return svg('svg', { 'class': 'drw plan-drawing', viewBox: '0 0 ' + width + ' ' + height, role: 'img', 'aria-labelledby': id + '-t ' + id + '-d' },
      svg('title', { id: id + '-t' }, title), svg('desc', { id: id + '-d' }, text));
  }

  // The ridges a ball leaves from track to track, to scale; their height is plain geometry.
  function ridges(ballMetre, stepMetre, more) {
    var r = ballMetre / 2;
    var step = Math.min(stepMetre, ballMetre);
    var height = r - Math.sqrt(Math.max(0, r * r - step * step / 4));
    var scale = 290 / (3 * step);
    var out = drawing(320, 92, 'Ridges between the tracks of the ball', 'Round furrows side by side with ridges between them, to scale.');
    var d = 'M15 44';
    for (var i = 0; i < 3; i++) { d += 'a' + r * scale + ' ' + r * scale + ' 0 0 0 ' + step * scale + ' 0'; }
    out.append(svg('path', { 'class': 'drw-stock', d: d + 'V86H15Z' }));
    return el('figure', { 'class': 'drawing' }, out, el('figcaption', null,
      'Ridges ', q(height * 1e6, 'micron'), ' high, ', q(step, 'metre'), ' apart; to scale. ', more,
      el('span', { 'class': 'remark' }, 'height = r − √(r² − (stepover / 2)²), geometry')));
  }

  // How boards are sawn, as the engine's RingAngle has it: degrees of the rings to the face.
  window.benchlore.rings = function (sawn) {
    var low = { flat: 0, rift: 30, quarter: 60 }[sawn];
    return { lowDegrees: low, highDegrees: low + 30 };
  };

  window.benchlore.view = {
    el: el, svg: svg, q: q, range: range, quantity: quantity, note: note, cautions: cautions, why: why, working: working,
    refused: refused, day: day, shortDay: shortDay, clock: clock, moment: moment, date: date, minute: minute, two: two, figure: figure, glance: glance, line: line,
    usual: usual, usualCoats: usualCoats, record: record, ridges: ridges, ticks: ticks, drawing: drawing, from: from
  };
}());
