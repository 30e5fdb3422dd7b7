// On a small screen the row of kinds scrolls: the kind of this page is scrolled into sight.
(function () {
  'use strict';

  var here = document.querySelector('.top [aria-current]');
  if (here) {
    var row = here.closest('nav');
    var place = here.getBoundingClientRect();
    row.scrollLeft += place.left + place.width / 2 - row.getBoundingClientRect().left - row.clientWidth / 2;
  }
})();
