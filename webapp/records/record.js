/**
 * The record as the screens have it. What the store calls an entry is on the disk; what could not be kept is said.
 * @import {Parts} from './parts.js'
 * @import {Store} from '../store.js'
 * @import {DrillEntry, Entry, GreenEntry, NoteEntry, PuttEntry, RoundEntry, State} from '../types.js'
 */
import { askToStay } from '../device/stay.js';
import { after } from './clock.js';
import * as db from './db.js';
import { checked } from './entry.js';
import { pick } from '../pick.js';

/**
 * @typedef {Partial<PuttEntry> | Partial<NoteEntry> | Partial<DrillEntry> | Partial<GreenEntry> |
 *   Partial<RoundEntry>} Patch
 */

const AGAIN_MS = 3000;
export const NEWER = 'A newer Borrowline has written here. Nothing of it is read or changed: close the app and open it again.';

/** Screens that show entries. The first screen does not wait for them. */
const NEEDS = ['record', 'findings', 'rounds', 'book', 'practice', 'green', 'walk', 'watch'];

const NO_ROOM = 'The phone has no room left. Nothing was lost; free some and try again.';

/** What a person is told of a failure: no words that only a programmer knows. @param {unknown} error */
export function inWords(error) {
  if (db.isNewer(error)) return NEWER;
  if (!(error instanceof Error)) return 'Not kept.';
  if (error.name === 'QuotaExceededError') return NO_ROOM;
  if (error.constructor === Error) return `Not kept: ${error.message}.`;
  console.warn('Not kept.', error);
  return error instanceof DOMException ? 'The phone’s storage does not answer.' : 'Not kept: Borrowline has a fault here.';
}

/** @param {Store} store @param {Pick<Parts, 'rowsOf'>} parts */
export function createRecord(store, parts) {
  /** Where the phone's own entries stand. */
  const own = () => (store.state.looking ? 'own' : 'entries');
  const all = () => store.state[own()] ?? [];

  /** @type {Promise<unknown>} */
  let last = Promise.resolve();
  /**
   * While another's record is looked at nothing is changed.
   * @param {() => Promise<unknown>} work @returns {Promise<boolean>}
   */
  async function change(work) {
    const { looking } = store.state;
    if (!looking) return inTurn(work);
    store.change('read only', { trouble: `You are looking at ${looking.name}: nothing is changed meanwhile.` });
    return false;
  }

  /**
   * One after another, each from what the last has left.
   * @param {() => Promise<unknown>} work @returns {Promise<boolean>} whether it was done
   */
  function inTurn(work) {
    const done = last.then(work).then(
      () => true,
      (error) => {
        store.change('not kept', { trouble: inWords(error), ...(db.isNewer(error) && { keptByNewer: true }) });
        return false;
      },
    );
    last = done;
    return done;
  }

  /** @param {Entry[]} some newest first */
  function withThem(some) {
    const ids = new Set(some.map(({ id }) => id));
    return [...some, ...all().filter(({ id }) => !ids.has(id))].sort(db.newestFirst);
  }

  async function read() {
    const [rows, marks] = await Promise.all([db.readAll(), db.readMarks()]);
    /** @type {Entry[]} */
    const entries = [];
    const damaged = [];
    for (const row of rows)
      try {
        entries.push(checked(row));
      } catch (error) {
        damaged.push(`Entry ${row.id}: ${/** @type {Error} */ (error).message}`);
      }
    store.change('records', { [own()]: entries, damaged, exported: String(marks.exported ?? '') });
  }
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let again;
  /** What does not open is tried again: until it has, nobody knows how much there is. */
  async function load() {
    clearTimeout(again);
    if (!(await inTurn(read)) && !store.state.keptByNewer) again = setTimeout(load, AGAIN_MS);
  }

  /**
   * @param {Entry[]} entries @param {Entry[]} [before] @param {Partial<State>} [patch] what is kept with them, at once or not
   *   at all
   */
  async function put(entries, before, patch = {}) {
    const good = entries.map(checked);
    const played = (/** @type {Entry[]} */ some) => some.some(({ sample }) => !sample);
    const first = store.state[own()] !== null && !played(all()) && played(good);
    const was = store.state;
    await db.write(good, before, parts.rowsOf(patch));
    // There is something to lose now
    if (first) void askToStay().then((stays) => store.change('asked to stay', { stays }));
    // What was typed meanwhile stays
    const untouched = (/** @type {[string, unknown]} */ [name]) => pick(store.state, name) === pick(was, name);
    const still = Object.fromEntries(Object.entries(patch).filter(untouched));
    store.change('written', store.state.entries ? { ...still, entries: withThem(good) } : still);
  }
  /**
   * Writes entries, all or none.
   * @param {Entry[]} entries @param {Entry[]} [before] what some of them were, from elsewhere @param {Partial<State>} [patch]
   *   what is kept with them
   */
  const write = (entries, before, patch) => change(() => put(entries, before, patch));

  /** @param {string} exported */
  const mark = (exported) => db.write([], [], { exported }).then(() => store.change('exported', { exported }));

  /**
   * Parts of what is kept, and in the same breath what is over: neither is there without the other.
   * @param {Entry[]} over @param {Record<string, unknown>} parts @returns {Promise<string>} what went wrong, in words
   */
  async function keep(over, parts) {
    const work = async () => {
      await db.write(over.map(checked), [], parts);
      if (over.length)
        store.change('all is kept', {
          unkept: store.state.unkept.filter((entry) => !over.includes(entry)),
          ...(store.state[own()] && { [own()]: withThem(over) }),
        });
    };
    // What is over waits for its turn, since it changes the entries
    const done = over.length ? last.then(work) : work();
    if (over.length) last = done.catch(() => {});
    return done.then(() => '', inWords);
  }

  const open = () => void (store.state.entries === null && NEEDS.includes(store.state.screen) && load());
  store.subscribe((state, before) => {
    if (state.screen !== before.screen) open();
  });
  db.onOtherTab(({ entries }) => entries && store.state[own()] !== null && void load());
  queueMicrotask(open);

  return {
    load,
    write,
    keep,
    /** When the changes that were asked for are done, or refused. */
    settled: () => last,
    /**
     * A field that is undefined is taken away.
     * @param {string} id
     * @param {Patch | ((entry: Entry) => Patch)} patch made from the entry as the last change has left it
     */
    change: (id, patch) =>
      change(async () => {
        const entry = all().find((each) => each.id === id);
        if (!entry) return;
        const made = typeof patch === 'function' ? patch(entry) : patch;
        await put([/** @type {Entry} */ ({ ...entry, ...made, changed: after(entry.changed) })]);
      }),
    /**
     * Takes in what is newer than what is kept, or not there yet.
     * @param {Entry[]} entries @param {Entry[]} before what some of them were @param {Partial<State>} [patch] what is kept with
     *   them
     */
    merge: (entries, before, patch = {}) =>
      change(async () => {
        await db.write(entries.map(checked), before, parts.rowsOf(patch), true);
        store.change('taken in', patch);
        await read();
      }),
    /**
     * Takes entries off the phone for good, with all that they were.
     * @param {(entry: Entry) => boolean} chosen @param {Partial<State>} [patch] what is kept then
     */
    erase: (chosen, patch = {}) =>
      change(async () => {
        await db.erase(chosen, parts.rowsOf(patch));
        store.change('erased', patch);
        await read();
        if (!all().length && store.state.exported) await mark('');
      }),
    /** Another's record beside the own one, read only. @param {string} name @param {Entry[]} entries */
    look(name, entries) {
      const { state } = store;
      store.change('look at another', {
        looking: { name },
        own: state.looking ? state.own : state.entries,
        entries: [...entries].sort(db.newestFirst),
      });
    },
    lookAway: () => store.change('back to the own record', { looking: null, entries: store.state.own, own: null }),
    /** When all of it was last given away. @param {string} exported */
    mark: (exported) => inTurn(() => mark(exported)),
  };
}

/** @typedef {ReturnType<typeof createRecord>} Records */
