/**
 * The last read and the settings, kept where the next start finds them before its first frame.
 * @import {State} from '../types.js'
 * @import {Store} from '../store.js'
 */
import { isNewer, restore, SCHEMA } from './schema.js';

const KEY = 'borrowline';
const PAUSE_MS = 300;
const KEPT = /** @type {const} */ (['settings', 'putt', 'player', 'read', 'window', 'cautioned', 'calibration', 'sighted', 'felt', 'practice']);

export function load() {
  const data = kept();
  return { ...restore(data), keptByNewer: isNewer(data) };
}

function kept() {
  try {
    return JSON.parse(localStorage.getItem(KEY) ?? 'null');
  } catch {
    return null;
  }
}

/** @param {State} state */
function save(state) {
  try {
    localStorage.setItem(KEY, JSON.stringify({ schema: SCHEMA, ...Object.fromEntries(KEPT.map((name) => [name, state[name]])) }));
  } catch (error) {
    console.warn('The last read could not be kept.', error);
  }
}

/** Saves when the finger rests and when the page is put away, not at each frame of a drag. @param {Store} store */
export function keepSaved(store) {
  if (store.state.keptByNewer) return;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let timer;
  const flush = () => {
    if (timer === undefined) return;
    clearTimeout(timer);
    timer = undefined;
    save(store.state);
  };
  store.subscribe((state, before) => {
    if (KEPT.every((name) => state[name] === before[name])) return;
    clearTimeout(timer);
    timer = setTimeout(flush, PAUSE_MS);
    // What took minutes to do waits for nothing
    if (state.practice.finished !== before.practice.finished) flush();
  });
  addEventListener('pagehide', flush);
  document.addEventListener('visibilitychange', () => document.hidden && flush());
}
