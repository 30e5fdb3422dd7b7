// Days as bars from midnight to midnight: night shaded, shop hours outlined, work as numbered blocks,
// wet film as a line, recoat windows and other stretches as bands. The same picture as a planned
// project's page has, drawn from an answer of the engine.
(function () {
  'use strict';

  var view = window.benchlore.view;
  var WIDTH = 430;
  var LEFT = 84;
  var HOUR = (WIDTH - LEFT - 8) / 24;
  var ROW = 34;
  var GAP_ROW = 24;
  var TOP = 26;
  var NIGHT_ENDS = 7;
  var NIGHT_BEGINS = 21;
  var DAY_MILLIS = 86400000;

  // Local time without zones: days and hours are counted as if in UTC, where no clock is put forward.
  function millis(iso) { return Date.parse(iso + (iso.length === 10 ? 'T00:00Z' : 'Z')); }
  function dayOf(iso) { return iso.slice(0, 10); }
  function hours(day, iso) { return (millis(iso) - millis(day)) / 3600000; }

  function everyDay(blocks, more) {
    var days = new Set();
    blocks.forEach(function (b) { days.add(dayOf(b.from)); });
    (more || []).forEach(function (iso) { days.add(dayOf(iso)); });
    return Array.from(days).sort();
  }

  // blocks: {from, to, number, coat}; bands: {from, to, kind: 'window' | 'wet' | 'shop' | 'clamped'};
  // moments: {at, label}, each a tick on its day; nights: {from, to, at, label}, each a band over two days with
  // its figure at its coldest hour.
  function days(title, request) {
    var moments = request.moments || [];
    var nights = request.nights || [];
    var list = everyDay(request.blocks, moments.concat(nights).map(function (m) { return m.at; }));
    var gaps = list.map(function (d, i) { return i === 0 ? 0 : Math.round((millis(d) - millis(list[i - 1])) / DAY_MILLIS) - 1; });
    var height = TOP + list.length * ROW + gaps.filter(Boolean).length * GAP_ROW + 4;
    var words = request.blocks.length + ' pieces of work on ' + list.length + ' days, each day a bar from midnight to midnight.';
    var out = view.drawing(WIDTH, height, title, words);

    function rect(style, x, y, width, tall) {
      out.append(view.svg('rect', { 'class': style, x: round(x), y: round(y), width: round(width), height: tall }));
    }

    function text(x, y, anchor, words_, style) {
      out.append(view.svg('text', { 'class': style || 'drw-text', x: round(x), y: round(y), 'text-anchor': anchor }, words_));
    }

    function band(style, b, day, y, tall) {
      var from = Math.max(0, hours(day, b.from));
      var to = Math.min(24, hours(day, b.to));
      if (to > from) { rect(style, LEFT + from * HOUR, y, (to - from) * HOUR, tall); }
    }

    [0, 6, 12, 18, 24].forEach(function (h) { text(LEFT + h * HOUR, TOP - 10, 'middle', String(h)); });
    var y = TOP;
    list.forEach(function (day, i) {
      if (gaps[i] > 0) {
        out.append(view.svg('path', { 'class': 'lad-wait', d: 'M' + (LEFT + 2) + ' ' + (y + 10) + 'h18' }));
        text(LEFT + 28, y + 15, 'start', gaps[i] === 1 ? '1 day passes' : gaps[i] + ' days pass');
        y += GAP_ROW;
      }
      rect('lad-day', LEFT, y, 24 * HOUR, ROW - 10);
      rect('lad-night', LEFT, y, NIGHT_ENDS * HOUR, ROW - 10);
      rect('lad-night', LEFT + NIGHT_BEGINS * HOUR, y, (24 - NIGHT_BEGINS) * HOUR, ROW - 10);
      text(4, y + 16, 'start', view.shortDay(day));
      nights.forEach(function (n) { band('lad-otherwise', n, day, y, ROW - 10); });
      (request.bands || []).forEach(function (b) {
        if (b.kind === 'shop') { band('lad-shop', b, day, y, ROW - 10); }
        if (b.kind === 'window') { band('lad-window', b, day, y + ROW - 10, 4); }
        if (b.kind === 'wet') { band('lad-wet', b, day, y - 3, 3); }
        if (b.kind === 'clamped') { band('lad-clamped', b, day, y + 2, ROW - 14); }
      });
      request.blocks.forEach(function (b) {
        if (dayOf(b.from) !== day) { return; }
        var from = hours(day, b.from);
        var width = Math.max((Math.min(24, hours(day, b.to)) - from) * HOUR, 4);
        rect(b.coat ? 'lad-coat' : 'lad-work', LEFT + from * HOUR, y + 2, width, ROW - 14);
        if (b.number && width >= (b.number < 10 ? 10 : 15)) {
          text(LEFT + from * HOUR + width / 2, y + 17, 'middle', String(b.number), 'lad-number');
        }
      });
      nights.forEach(function (n) {
        if (dayOf(n.at) !== day) { return; }
        var x = round(LEFT + hours(day, n.at) * HOUR);
        out.append(view.svg('path', { 'class': 'lad-coldest', d: 'M' + x + ' ' + (y + ROW - 11) + 'l-4 -7h8Z' }));
        text(x - 6, y + 16, 'end', n.label);
      });
      moments.forEach(function (m) {
        if (dayOf(m.at) !== day) { return; }
        var x = LEFT + hours(day, m.at) * HOUR;
        var late = hours(day, m.at) > 15;
        out.append(view.svg('path', { 'class': 'lad-moment', d: 'M' + round(x) + ' ' + (y - 2) + 'v' + (ROW - 6) }));
        text(x + (late ? -4 : 4), y + 16, late ? 'end' : 'start', m.label);
      });
      y += ROW;
    });
    return out;
  }

  function round(v) { return Math.round(v * 100) / 100; }

  window.benchlore.days = days;
}());
