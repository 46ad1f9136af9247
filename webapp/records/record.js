/**
 * The record as the screens have it. What the store calls an entry is on the disk; what could not be kept is said.
 * @import {Store} from '../store.js'
 * @import {DrillEntry, Entry, NoteEntry, PuttEntry} from '../types.js'
 */
import * as db from './db.js';
import { checked } from './entry.js';

export const NEWER = 'A newer Borrowline has written here. Nothing of it is read or changed: close the app and open it again.';

/** Screens that show entries. The first screen does not wait for them. */
const NEEDS = ['record', 'findings', 'practice', 'green'];

/** @param {unknown} error */
function inWords(error) {
  if (db.isNewer(error)) return NEWER;
  const { name, message } = /** @type {Error} */ (error);
  return name === 'QuotaExceededError'
    ? 'The phone has no room left. Nothing was lost; free some and try again.'
    : `Not kept: ${message}.`;
}

/** @param {Store} store */
export function createRecord(store) {
  const all = () => store.state.entries ?? [];

  /** @type {Promise<unknown>} */
  let last = Promise.resolve();
  /** One after another, each from what the last has left. @param {() => Promise<unknown>} work @returns {Promise<boolean>} whether it was done */
  function inTurn(work) {
    const done = last.then(work).then(
      () => true,
      (error) => {
        store.change('not kept', { trouble: inWords(error) });
        return false;
      },
    );
    last = done;
    return done;
  }

  async function read() {
    const [entries, exported] = await Promise.all([db.readAll(), db.readMark('exported')]);
    store.change('records', { entries, exported });
  }
  async function load() {
    if (!(await inTurn(read))) store.change('no records', { entries: all() });
  }

  /** @param {Entry[]} entries @param {Entry[]} [before] */
  async function put(entries, before) {
    const good = entries.map(checked);
    await db.write(good, before);
    if (!store.state.entries) return;
    const ids = new Set(good.map(({ id }) => id));
    store.change('written', { entries: [...good, ...all().filter(({ id }) => !ids.has(id))].sort(db.newestFirst) });
  }
  /** Writes entries, all or none. @param {Entry[]} entries @param {Entry[]} [before] what some of them were, from elsewhere */
  const write = (entries, before) => inTurn(() => put(entries, before));

  /** @param {string} exported */
  const mark = (exported) => db.writeMark('exported', exported).then(() => store.change('exported', { exported }));

  let taking = false;
  /** What is over goes from where it was put in haste to the database. */
  async function takeIn() {
    const { unkept } = store.state;
    if (!unkept.length || taking) return;
    taking = true;
    const kept = await write(unkept);
    taking = false;
    if (kept) store.change('all is kept', { unkept: store.state.unkept.filter((entry) => !unkept.includes(entry)) });
  }

  const open = () => void (store.state.entries === null && NEEDS.includes(store.state.screen) && load());
  store.subscribe((state, before) => {
    if (state.screen !== before.screen) open();
    if (state.unkept !== before.unkept) void takeIn();
  });
  db.onOtherTab(() => store.state.entries !== null && void load());
  queueMicrotask(() => {
    open();
    void takeIn();
  });

  return {
    load,
    write,
    /** A field that is undefined is taken away. @param {string} id @param {Partial<PuttEntry> | Partial<NoteEntry> | Partial<DrillEntry>} patch */
    change: (id, patch) =>
      inTurn(async () => {
        const entry = all().find((each) => each.id === id);
        if (entry) await put([/** @type {Entry} */ ({ ...entry, ...patch, changed: new Date().toISOString() })]);
      }),
    /** Takes in what is newer than what is kept, or not there yet. @param {Entry[]} entries @param {Entry[]} before what some of them were */
    merge: (entries, before) => inTurn(() => db.write(entries.map(checked), before, true).then(read)),
    /** Takes entries off the phone for good, with all that they were. @param {(entry: Entry) => boolean} chosen */
    erase: (chosen) =>
      inTurn(async () => {
        await db.erase(chosen);
        await read();
        if (!all().length && store.state.exported) await mark('');
      }),
    /** When all of it was last given away. @param {string} exported */
    mark: (exported) => inTurn(() => mark(exported)),
  };
}

/** @typedef {ReturnType<typeof createRecord>} Records */
