// On a small screen the row of kinds scrolls: the kind of this page is scrolled into sight.

export function showRow() {
  const here = document.querySelector('.top [aria-current]');
  if (here) {
    const row = here.closest('nav');
    const place = here.getBoundingClientRect();
    row.scrollLeft += place.left + place.width / 2 - row.getBoundingClientRect().left - row.clientWidth / 2;
  }
}
