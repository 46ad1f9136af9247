/**
 * The last read and the settings, and what is over but not in the record yet, kept where the next start finds them before
 * its first frame.
 * @import {State} from '../types.js'
 * @import {Store} from '../store.js'
 */
import { NEWER } from './record.js';
import { isNewer, restore, SCHEMA } from './schema.js';

const KEY = 'borrowline';
const PAUSE_MS = 300;
const KEPT = /** @type {const} */ ([
  'settings',
  'putt',
  'player',
  'read',
  'window',
  'cautioned',
  'calibration',
  'sighted',
  'felt',
  'practice',
  'place',
  'draft',
  'unkept',
]);
const NO_ROOM = 'The phone has no room left: settings and the last read are not kept. Free some.';

export function load() {
  const data = kept();
  return { ...restore(data), keptByNewer: isNewer(data), trouble: isNewer(data) ? NEWER : '' };
}

function kept() {
  try {
    return JSON.parse(localStorage.getItem(KEY) ?? 'null');
  } catch {
    return null;
  }
}

/** Takes it all away; the app's other tabs then begin anew too. */
export const forget = () => localStorage.removeItem(KEY);

/** What another tab kept, as this one goes on with it: the putt in hand and a session that runs here stay its own. @param {State} state @param {unknown} data */
function adopted({ practice, unkept }, data) {
  const { felt: _, putt: __, window: ___, read: ____, ...saved } = restore(data);
  const own = new Set(unkept.map(({ id }) => id));
  return {
    ...saved,
    practice: practice.run ? practice : saved.practice,
    unkept: [...unkept, ...saved.unkept.filter(({ id }) => !own.has(id))],
  };
}

/** @param {State} state */
const save = (state) =>
  localStorage.setItem(KEY, JSON.stringify({ schema: SCHEMA, ...Object.fromEntries(KEPT.map((name) => [name, state[name]])) }));

/** Saves when the finger rests and when the page is put away, not at each frame of a drag. @param {Store} store */
export function keepSaved(store) {
  if (store.state.keptByNewer) return;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let timer;
  let told = false;
  let heard = false;
  const flush = () => {
    if (timer === undefined || store.state.keptByNewer) return;
    clearTimeout(timer);
    timer = undefined;
    try {
      save(store.state);
      told = false;
    } catch {
      if (!told) store.change('no room', { trouble: NO_ROOM });
      told = true;
    }
  };
  store.subscribe((state, before) => {
    if (heard || KEPT.every((name) => state[name] === before[name])) return;
    clearTimeout(timer);
    timer = setTimeout(flush, PAUSE_MS);
    // What took minutes to do waits for nothing
    if (state.unkept !== before.unkept) flush();
  });
  // Else the next change here would write over what another tab has kept meanwhile
  addEventListener('storage', ({ key, newValue }) => {
    if (key !== KEY && key !== null) return;
    const data = newValue === null ? null : kept();
    heard = true;
    if (isNewer(data)) store.change('kept by a newer app', { keptByNewer: true, trouble: NEWER });
    else if (data === null) store.change('erased in another tab', { ...restore(null), cautioned: store.state.cautioned });
    else store.change('kept in another tab', adopted(store.state, data));
    heard = false;
  });
  addEventListener('pagehide', flush);
  document.addEventListener('visibilitychange', () => document.hidden && flush());
}
