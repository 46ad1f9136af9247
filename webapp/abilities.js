/**
 * What the app cannot do without. Imported before all else: where something is missing it says so in place of the app, and
 * nothing of the app runs.
 */

/** @type {Record<string, boolean>} */
const PRESENT = {
  'run WebAssembly': 'WebAssembly' in self,
  'run a worker': 'Worker' in self,
  'keep a record': 'indexedDB' in self,
  'tell its tabs of each other': 'BroadcastChannel' in self,
  'show a sheet': 'HTMLDialogElement' in self,
  'copy what is kept': 'structuredClone' in self,
  'put a copy of a list in order': 'toSorted' in Array.prototype,
  'draw in the size of its window': 'ResizeObserver' in self,
};

const missing = Object.keys(PRESENT).filter((ability) => !PRESENT[ability]);
if (missing.length) {
  const said = document.querySelector('#app p');
  if (said)
    said.textContent =
      `This browser cannot ${missing.join(', nor ')}. Borrowline needs iOS 16, Chrome 110, Firefox 115 or newer: ` +
      'bring the phone’s software or its browser up to date.';
  throw new Error(`The browser cannot ${missing.join(', ')}`);
}
