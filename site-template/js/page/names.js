// What a page's scripts give by name to other scripts and to the browser's console, on window.benchlore.
// Nothing of ours reads it: modules import each other.

export function offer(names) {
  window.benchlore = Object.assign(window.benchlore || {}, names);
}
