/**
 * The record in IndexedDB. A write is done when it is on the disk; what an entry was before a change is kept beside it.
 * @import {Entry} from '../types.js'
 * @import {DBSchema, IDBPDatabase} from 'idb'
 */
import { openDB } from 'idb';

const NAME = 'borrowline';
/** 1: entries, what they were before, and marks (dates of exports). */
const VERSION = 1;
const STRICT = /** @type {const} */ ({ durability: 'strict' });

/**
 * @typedef {object} Tables
 * @property {{key: string, value: Entry}} entries
 * @property {{key: [string, string], value: Entry}} before
 * @property {{key: string, value: {id: string, value: string}}} marks
 * @typedef {DBSchema & Tables} Schema
 */
/**
 * @template {'entries' | 'before'} Name
 * @typedef {import('idb').IDBPObjectStore<Schema, ('entries' | 'before')[], Name, 'readwrite'>} Table
 */

/** @type {Promise<IDBPDatabase<Schema>> | undefined} */
let opened;

const open = () =>
  (opened ??= openDB(NAME, VERSION, {
    upgrade(db, from) {
      if (from < 1) {
        db.createObjectStore('entries', { keyPath: 'id' });
        db.createObjectStore('before', { keyPath: ['id', 'changed'] });
        db.createObjectStore('marks', { keyPath: 'id' });
      }
    },
    // A newer version in another tab waits for nobody
    blocking: async () => {
      (await opened)?.close();
      opened = undefined;
    },
    terminated: () => (opened = undefined),
  }));

const news = new BroadcastChannel('borrowline-records');

/** Calls when another tab has written. @param {() => void} listener */
export const onOtherTab = (listener) => news.addEventListener('message', listener);

/** @returns {Promise<Entry[]>} all that is kept, newest first */
export async function readAll() {
  const entries = await (await open()).getAll('entries');
  return entries.sort((a, b) => (a.at < b.at ? 1 : a.at > b.at ? -1 : 0));
}

/** What an entry was before each change, newest first. @param {string} id @returns {Promise<Entry[]>} */
export async function readBefore(id) {
  const range = IDBKeyRange.bound([id, ''], [id, '\uffff']);
  return (await (await open()).getAll('before', range)).reverse();
}

/** @returns {Promise<Entry[]>} */
export const readAllBefore = async () => (await open()).getAll('before');

/**
 * One transaction over entries and what they were: all of it or nothing.
 * @param {(kept: Table<'entries'>, past: Table<'before'>) => Promise<void>} work
 */
async function whole(work) {
  const tx = (await open()).transaction(/** @type {('entries' | 'before')[]} */ (['entries', 'before']), 'readwrite', STRICT);
  try {
    await Promise.all([work(tx.objectStore('entries'), tx.objectStore('before')), tx.done]);
  } catch (error) {
    abort(tx);
    throw error;
  }
  news.postMessage('written');
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

/** Writes entries, all or none. @param {Entry[]} entries @param {Entry[]} [before] what some of them were, from elsewhere */
export async function write(entries, before = []) {
  await whole(async (kept, past) => {
    const olds = await Promise.all(entries.map(({ id }) => kept.get(id)));
    const moved = olds.filter((old, i) => old && old.changed !== entries[i].changed);
    await Promise.all([...moved.map((old) => past.put(/** @type {Entry} */ (old))), ...before.map((entry) => past.put(entry)), ...entries.map((entry) => kept.put(entry))]);
  });
}

/** Takes entries off the phone for good, with all that they were. @param {(entry: Entry) => boolean} chosen */
export async function erase(chosen) {
  await whole(async (kept, past) => {
    for (const table of [kept, past]) for await (const cursor of table.iterate()) if (chosen(cursor.value)) await cursor.delete();
  });
}

/** @param {string} id */
export const readMark = async (id) => (await (await open()).get('marks', id))?.value ?? '';

/** @param {string} id @param {string} value */
export const writeMark = async (id, value) => void (await (await open()).put('marks', { id, value }));
