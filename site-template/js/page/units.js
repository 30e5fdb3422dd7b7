// The units switch. A figure of a page that reads otherwise by inches, pounds and degrees Fahrenheit carries what
// it then reads (data-imperial), so here texts are only swapped. One switch for every page, remembered in this
// browser.

const KEY = 'benchlore.units';
const listeners = [];
const button = document.getElementById('units');
let chosen = remembered();

function remembered() {
  try {
    return window.localStorage.getItem(KEY) === 'imperial' ? 'imperial' : 'metric';
  } catch (e) {
    return 'metric'; // storage switched off: the page still works, it only forgets
  }
}

// Shows every figure below a node; the words the page came with return with the metric system.
export function show(root) {
  root.querySelectorAll('[data-imperial]').forEach(e => {
    if (e.dataset.metric === undefined) {
      e.dataset.metric = e.textContent;
    }
    const words = chosen === 'metric' ? e.dataset.metric : e.dataset.imperial;
    if (e.textContent !== words) {
      e.textContent = words;
    }
  });
}

export function set(next) {
  chosen = next === 'imperial' ? 'imperial' : 'metric';
  try {
    window.localStorage.setItem(KEY, chosen);
  } catch (e) {
    // storage switched off: the choice holds for this page
  }
  show(document);
  label();
  listeners.forEach(f => {
    f(chosen);
  });
}

function label() {
  if (button) {
    button.textContent = chosen === 'metric' ? 'mm' : 'inch';
    button.setAttribute(
      'aria-label',
      button.textContent + ' (' + (chosen === 'metric' ? 'metric' : 'inches and Fahrenheit') + '): change the units'
    );
  }
}

export function system() {
  return chosen;
}
export function onChange(f) {
  listeners.push(f);
}

// Makes the switch live and shows the page in the units chosen before; called once.
export function ready() {
  if (button) {
    button.hidden = false;
    button.addEventListener('click', () => set(chosen === 'metric' ? 'imperial' : 'metric'));
  }
  label();
  if (chosen === 'imperial') {
    show(document);
  }
}
