// The front page's finder: shows the ranking as someone types.
(function () {
  'use strict';

  var root = document.documentElement.getAttribute('data-root') || '';
  var find = window.benchlore.find;
  var finder = window.benchlore.finder;

  function element(name, className, text) {
    var e = document.createElement(name);
    if (className) { e.className = className; }
    if (text) { e.textContent = text; }
    return e;
  }

  // What the first answer is easily taken for, and the difference.
  function nearMisses(d) {
    return d.near.slice(0, 2).map(function (near) {
      var other = finder.record(near[0]);
      var p = element('p', 'hit-near', 'Not quite? ');
      var a = element('a', '', other.title);
      a.href = root + other.url;
      p.appendChild(a);
      p.appendChild(document.createTextNode(': ' + near[1]));
      return p;
    });
  }

  function item(hit, words, first) {
    var d = finder.record(hit.id);
    var li = element('li', first ? 'hit hit-first' : 'hit');
    var a = element('a');
    a.href = root + d.url;
    if (d.picture) {
      var img = element('img', 'hit-picture');
      img.src = root + 'drawings/' + d.id + '.svg';
      img.alt = '';
      img.width = 56;
      img.height = 56;
      a.appendChild(img);
    }
    var body = element('span', 'hit-body');
    body.appendChild(element('span', 'hit-kind', d.one));
    body.appendChild(element('strong', 'hit-title', d.title));
    body.appendChild(element('span', 'hit-does', d.does));
    var reason = finder.why(hit.id, words);
    if (reason) { body.appendChild(element('span', 'hit-why', reason)); }
    a.appendChild(body);
    li.appendChild(a);
    if (first) { nearMisses(d).forEach(function (p) { li.appendChild(p); }); }
    return li;
  }

  function show(words, list, status, kinds) {
    list.textContent = '';
    if (!words.trim()) {
      status.textContent = '';
      return;
    }
    var hits = find(words, kinds.value).slice(0, 12);
    hits.forEach(function (hit, i) { list.appendChild(item(hit, words, i === 0)); });
    status.textContent = hits.length === 0 ? 'Nothing here fits. Try what it looks like, what it leaves behind, or what went wrong.' :
      hits.length === 1 ? '1 answer' : hits.length + ' answers, best first';
  }

  function start() {
    var input = document.getElementById('finder-words');
    if (!input) {
      return;
    }
    var list = document.getElementById('finder-answers');
    var status = document.getElementById('finder-status');
    var kinds = document.getElementById('finder-kind');
    document.getElementById('finder').hidden = false;
    var update = function () {
      show(input.value, list, status, kinds);
      var q = new URLSearchParams();
      if (input.value.trim()) { q.set('find', input.value.trim()); }
      if (kinds.value) { q.set('kind', kinds.value); }
      history.replaceState(null, '', '#' + q.toString());
    };
    var fromAddress = function () {
      var q = new URLSearchParams(location.hash.slice(1));
      input.value = q.get('find') || '';
      var kind = q.get('kind') || '';
      kinds.value = Array.prototype.some.call(kinds.options, function (o) { return o.value === kind; }) ? kind : '';
      show(input.value, list, status, kinds);
    };
    input.addEventListener('input', update);
    kinds.addEventListener('change', update);
    window.addEventListener('hashchange', fromAddress);
    document.getElementById('finder').addEventListener('submit', function (event) {
      event.preventDefault();
      var first = list.querySelector('a');
      if (first) { first.click(); }
    });
    input.addEventListener('keydown', function (event) {
      var first = list.querySelector('a');
      if (event.key === 'ArrowDown' && first) { event.preventDefault(); first.focus(); }
    });
    list.addEventListener('keydown', function (event) {
      var links = Array.prototype.slice.call(list.querySelectorAll('li > a'));
      var at = links.indexOf(document.activeElement);
      if (event.key === 'ArrowDown' && at >= 0 && at + 1 < links.length) { event.preventDefault(); links[at + 1].focus(); }
      if (event.key === 'ArrowUp' && at >= 0) { event.preventDefault(); (links[at - 1] || input).focus(); }
    });
    fromAddress();
    // The index is made while the reader thinks, so that the first letter answers at once.
    window.setTimeout(finder.prepare, 30);
  }

  start();
})();
