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

/** Writes entries, all or none. @param {Entry[]} entries @param {Entry[]} [before] what some of them were, from elsewhere */
export async function write(entries, before = []) {
  const tx = (await open()).transaction(['entries', 'before'], 'readwrite', STRICT);
  const kept = tx.objectStore('entries');
  const past = tx.objectStore('before');
  for (const entry of entries) {
    const old = await kept.get(entry.id);
    if (old && old.changed !== entry.changed) void past.put(old);
    void kept.put(entry);
  }
  for (const entry of before) void past.put(entry);
  await tx.done;
  news.postMessage('written');
}

/** Takes entries off the phone for good, with all that they were. @param {(entry: Entry) => boolean} chosen */
export async function erase(chosen) {
  const tx = (await open()).transaction(['entries', 'before'], 'readwrite', STRICT);
  for (const name of /** @type {const} */ (['entries', 'before']))
    for await (const cursor of tx.objectStore(name)) if (chosen(cursor.value)) void cursor.delete();
  await tx.done;
  news.postMessage('erased');
}

/** @param {string} id */
export const readMark = async (id) => (await (await open()).get('marks', id))?.value ?? '';

/** @param {string} id @param {string} value */
export const writeMark = async (id, value) => void (await (await open()).put('marks', { id, value }));
