/**
 * The last read and the settings, kept where the next start finds them before its first frame.
 * @import {State} from '../types.js'
 * @import {Store} from '../store.js'
 */
import { restore, SCHEMA } from './schema.js';

const KEY = 'borrowline';
const PAUSE_MS = 300;

export function load() {
  try {
    return restore(JSON.parse(localStorage.getItem(KEY) ?? 'null'));
  } catch {
    return restore(null);
  }
}

/** @param {State} state */
function save({ settings, putt, player, read, window, cautioned }) {
  try {
    localStorage.setItem(KEY, JSON.stringify({ schema: SCHEMA, settings, putt, player, read, window, cautioned }));
  } catch (error) {
    console.warn('The last read could not be kept.', error);
  }
}

/** Saves when the finger rests and when the page is put away, not at each frame of a drag. @param {Store} store */
export function keepSaved(store) {
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let timer;
  const flush = () => {
    if (timer === undefined) return;
    clearTimeout(timer);
    timer = undefined;
    save(store.state);
  };
  store.subscribe(() => {
    clearTimeout(timer);
    timer = setTimeout(flush, PAUSE_MS);
  });
  addEventListener('pagehide', flush);
  document.addEventListener('visibilitychange', () => document.hidden && flush());
}
