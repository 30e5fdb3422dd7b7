// Dates and times the way the reader's browser is set.

// Dates and times the way the reader's browser is set; the day of the week is never left out.
const FORMS = {
  day: { weekday: 'short', day: 'numeric', month: 'long', year: 'numeric' },
  short: { weekday: 'short', day: 'numeric', month: 'short' },
  moment: { weekday: 'short', day: 'numeric', month: 'short', hour: 'numeric', minute: '2-digit' },
  clock: { hour: 'numeric', minute: '2-digit' }
};

// <time datetime> in the text, data-at on the words of a drawing: each comes with British words and is rewritten here.
export function localTimes() {
  document.querySelectorAll('[data-as]').forEach(t => {
    const iso = t.dataset.at || t.getAttribute('datetime');
    const at = new Date(iso.length > 10 ? iso : iso + 'T00:00');
    if (!isNaN(at)) {
      t.textContent = new Intl.DateTimeFormat(undefined, FORMS[t.dataset.as]).format(at);
    }
  });
}
