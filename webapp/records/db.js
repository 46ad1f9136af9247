/**
 * The record in IndexedDB. A write is done when it is on the disk; what an entry was before a change is kept beside it.
 * @import {Entry} from '../types.js'
 * @import {Database, Schema} from './stores.js'
 */
import { after } from './clock.js';
import { ERASED, newSalt, nextWritten, WRITTEN } from './join.js';
import { withoutPicture } from './pictures.js';
import { dropTwin, inTurn, STRICT, stores, TABLES } from './stores.js';

/**
 * @template {'entries' | 'before' | 'marks'} Name
 * @typedef {import('idb').IDBPObjectStore<Schema, ('entries' | 'before' | 'marks')[], Name, 'readwrite'>} Table
 */
/** @typedef {(kept: Table<'entries'>, past: Table<'before'>, marks: Table<'marks'>) => Promise<void>} Work */
/** @typedef {{entries: boolean, parts: Record<string, unknown>}} News what was written: entries, and which parts */

const first = async () => (await stores()).first;

/** Whether what is kept here is a newer app's, and left as it is. @param {unknown} error */
export const isNewer = (error) => error instanceof DOMException && error.name === 'VersionError';

const news = new BroadcastChannel('borrowline-records');

/** Calls when another tab has written. @param {(news: News) => void} listener */
export const onOtherTab = (listener) => news.addEventListener('message', ({ data }) => listener(data));

/** @param {Entry} a @param {Entry} b */
export const newestFirst = (a, b) => (a.at < b.at ? 1 : a.at > b.at ? -1 : 0);

/** @returns {Promise<Entry[]>} all that is kept, newest first */
export const readAll = async () => (await (await first()).getAll('entries')).sort(newestFirst);

/** What an entry was before each change, newest first. @param {string} id @returns {Promise<Entry[]>} */
export async function readBefore(id) {
  const range = IDBKeyRange.bound([id, ''], [id, '\uffff']);
  return (await (await first()).getAll('before', range)).reverse();
}

/** @returns {Promise<Entry[]>} */
export const readAllBefore = async () => (await first()).getAll('before');

/** @returns {Promise<Record<string, unknown>>} the small parts of what is kept, by name */
export const readMarks = async () =>
  Object.fromEntries((await (await first()).getAll('marks')).map(({ id, value }) => [id, value]));

/**
 * One transaction over all of it: everything or nothing; then the same in the twin.
 * @param {Work} work @param {News} told to the other tabs
 */
async function whole(work, told) {
  const both = await stores();
  const salt = newSalt();
  await inTurn(async () => {
    await inOne(both.first, work, salt);
    if (both.twin) await inOne(both.twin, work, salt).catch(dropTwin);
  });
  news.postMessage(told);
}

/** @param {Database} db @param {Work} work @param {number} salt */
async function inOne(db, work, salt) {
  const tx = db.transaction(TABLES, 'readwrite', STRICT);
  const marks = tx.objectStore('marks');
  const count = async () => {
    const last = await marks.get(WRITTEN);
    await marks.put({ id: WRITTEN, value: nextWritten(last?.value, salt) });
  };
  try {
    await Promise.all([work(tx.objectStore('entries'), tx.objectStore('before'), marks), count(), tx.done]);
  } catch (error) {
    abort(tx);
    throw error;
  }
}

/** @param {{abort: () => void, done: Promise<void>}} tx */
function abort(tx) {
  tx.done.catch(() => {});
  try {
    tx.abort();
  } catch {
    // the browser has done so already
  }
}

/** @param {Table<'marks'>} marks @param {Record<string, unknown>} parts */
const putMarks = (marks, parts) =>
  Object.entries(parts).map(async ([id, value]) => {
    const held = await marks.get(id);
    return marks.put({ id, value, changed: after(held?.changed) });
  });

/**
 * Writes entries and small parts, all or none.
 * @param {Entry[]} all @param {Entry[]} [before] what some of them were, from elsewhere
 * @param {Record<string, unknown>} [parts] by name
 * @param {boolean} [newer] only those entries that are newer than what is kept
 */
export async function write(all, before = [], parts = {}, newer = false) {
  await whole(
    async (kept, past, marks) => {
      const earlier = await Promise.all(all.map(({ id }) => kept.get(id)));
      const fits = all.map((entry, i) => !newer || entry.changed > (earlier[i]?.changed ?? ''));
      const [entries, olds] = [all.filter((_, i) => fits[i]), earlier.filter((_, i) => fits[i])];
      // a green changes with each reading of a walk, and holds them all: what it was need not be kept beside it
      const moved = olds.filter((old, i) => old && old.kind !== 'green' && old.changed !== entries[i]?.changed);
      // async, so that one that throws at once leaves none of the others unheard
      await Promise.all([
        ...[.../** @type {Entry[]} */ (moved), ...before].map(async (entry) => past.put(withoutPicture(entry))),
        ...entries.map(async (entry) => kept.put(entry)),
        ...putMarks(marks, parts),
      ]);
    },
    { entries: all.length > 0, parts },
  );
}

/**
 * Takes entries off the phone for good, with all that they were.
 * @param {(entry: Entry) => boolean} chosen @param {Record<string, unknown>} [parts] as they are then
 */
export async function erase(chosen, parts = {}) {
  // Alike in both: else the next join would take from one, as erased, what the other has not got yet
  let time = '';
  await whole(
    async (kept, past, marks) => {
      let latest = '';
      for (const table of [kept, past])
        for await (const cursor of table.iterate()) {
          if (cursor.value.changed > latest) latest = cursor.value.changed;
          if (chosen(cursor.value)) await cursor.delete();
        }
      time ||= after(latest);
      await Promise.all(putMarks(marks, { [ERASED]: time, ...parts }));
    },
    { entries: true, parts },
  );
}
