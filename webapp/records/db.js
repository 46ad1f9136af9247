/**
 * The record in IndexedDB. A write is done when it is on the disk; what an entry was before a change is kept beside it.
 * @import {Entry} from '../types.js'
 * @import {Database, Schema} from './stores.js'
 */
import { STRICT, dropTwin, stores } from './stores.js';

/**
 * @template {'entries' | 'before'} Name
 * @typedef {import('idb').IDBPObjectStore<Schema, ('entries' | 'before')[], Name, 'readwrite'>} Table
 */
/** @typedef {(kept: Table<'entries'>, past: Table<'before'>) => Promise<void>} Work */

const first = async () => (await stores()).first;

/** Whether what is kept here is a newer app's, and left as it is. @param {unknown} error */
export const isNewer = (error) => error instanceof DOMException && error.name === 'VersionError';

const news = new BroadcastChannel('borrowline-records');

/** Calls when another tab has written. @param {() => void} listener */
export const onOtherTab = (listener) => news.addEventListener('message', listener);

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

/** One transaction over entries and what they were: all of it or nothing; then the same in the twin. @param {Work} work */
async function whole(work) {
  const { first, twin } = await stores();
  await inOne(first, work);
  if (twin) await inOne(twin, work).catch(dropTwin);
  news.postMessage('written');
}

/** @param {Database} db @param {Work} work */
async function inOne(db, work) {
  const tx = db.transaction(/** @type {('entries' | 'before')[]} */ (['entries', 'before']), 'readwrite', STRICT);
  try {
    await Promise.all([work(tx.objectStore('entries'), tx.objectStore('before')), tx.done]);
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

/**
 * Writes entries, all or none.
 * @param {Entry[]} all @param {Entry[]} [before] what some of them were, from elsewhere
 * @param {boolean} [newer] only those that are newer than what is kept
 */
export async function write(all, before = [], newer = false) {
  await whole(async (kept, past) => {
    const held = await Promise.all(all.map(({ id }) => kept.get(id)));
    const fits = all.map((entry, i) => !newer || entry.changed > (held[i]?.changed ?? ''));
    const [entries, olds] = [all.filter((_, i) => fits[i]), held.filter((_, i) => fits[i])];
    const moved = olds.filter((old, i) => old && old.changed !== entries[i].changed);
    // async, so that one that throws at once leaves none of the others unheard
    await Promise.all([
      ...[.../** @type {Entry[]} */ (moved), ...before].map(async (entry) => past.put(entry)),
      ...entries.map(async (entry) => kept.put(entry)),
    ]);
  });
}

/** Takes entries off the phone for good, with all that they were. @param {(entry: Entry) => boolean} chosen */
export async function erase(chosen) {
  await whole(async (kept, past) => {
    for (const table of [kept, past])
      for await (const cursor of table.iterate()) if (chosen(cursor.value)) await cursor.delete();
  });
}

/** @param {string} id */
export const readMark = async (id) => (await (await first()).get('marks', id))?.value ?? '';

/** @param {string} id @param {string} value */
export async function writeMark(id, value) {
  const { first, twin } = await stores();
  for (const db of twin ? [first, twin] : [first]) await db.put('marks', { id, value });
}
