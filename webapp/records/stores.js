/**
 * Where the record lies: a database, and in Chromium its twin.
 *
 * Chromium can lose a whole database. Killed in the middle of a write it goes on behind the torn place at the next start,
 * finds the file corrupt at the start after that, and deletes it. Only Chromium has storage buckets, and each has a file of
 * its own: the twin is written when the first is done, so that a kill tears one of them at most.
 * @import {Entry} from '../types.js'
 * @import {DBSchema, IDBPDatabase} from 'idb'
 */
import { wrap } from 'idb';

const NAME = 'borrowline';
const TWIN = 'borrowline-twin';
/** What makes a database of a version one of the next. @type {((db: IDBDatabase) => void)[]} */
const NEXT = [
  // entries, what they were before, and marks (dates of exports)
  (db) => {
    db.createObjectStore('entries', { keyPath: 'id' });
    db.createObjectStore('before', { keyPath: ['id', 'changed'] });
    db.createObjectStore('marks', { keyPath: 'id' });
  },
  // entries may be drill results, which an app of version 1 would take for putts: it is kept away from them
  () => {},
];
const VERSION = NEXT.length;
export const STRICT = /** @type {const} */ ({ durability: 'strict' });

/**
 * @typedef {object} Tables
 * @property {{key: string, value: Entry}} entries
 * @property {{key: [string, string], value: Entry}} before
 * @property {{key: string, value: {id: string, value: string}}} marks
 * @typedef {DBSchema & Tables} Schema
 * @typedef {IDBPDatabase<Schema>} Database
 * @typedef {{open: (name: string, options: StorageBucketOptions) => Promise<{indexedDB: IDBFactory}>, delete: (name: string) => Promise<void>}} Buckets
 * @typedef {{durability: 'strict'}} StorageBucketOptions
 */

const buckets = /** @type {{storageBuckets?: Buckets}} */ (/** @type {unknown} */ (navigator)).storageBuckets;

/** @type {Promise<{first: Database, twin: Database | null}> | undefined} */
let opened;
/** The twin's bucket: let go of, it takes with it what is being written. @type {{indexedDB: IDBFactory} | undefined} */
let bucket;

/** The database that is read, and its twin where there is one, both with the same in them. */
export const stores = () => (opened ??= openBoth());

async function openBoth() {
  const first = await openIn(indexedDB);
  let twin = null;
  try {
    if (buckets) {
      bucket = await buckets.open(TWIN, STRICT);
      twin = await openIn(bucket.indexedDB);
      const [mine, its] = [await sizes(first), await sizes(twin)];
      if (mine.join() !== its.join()) await (mine[0] === 0 ? copy(twin, first) : copy(first, twin));
    }
  } catch {
    twin = null;
  }
  return { first, twin };
}

/** A twin that could not follow is made anew at the next start. */
export async function dropTwin() {
  const both = await stores();
  both.twin?.close();
  both.twin = null;
  await buckets?.delete(TWIN);
}

/** @param {IDBFactory} factory @returns {Promise<Database>} */
async function openIn(factory) {
  const request = factory.open(NAME, VERSION);
  request.onupgradeneeded = ({ oldVersion }) => NEXT.slice(oldVersion).forEach((step) => void step(request.result));
  const db = /** @type {Database} */ (/** @type {unknown} */ (await wrap(request)));
  // A newer version in another tab waits for nobody
  db.addEventListener('versionchange', close);
  db.addEventListener('close', close);
  return db;
}

async function close() {
  const both = await opened;
  opened = undefined;
  both?.first.close();
  both?.twin?.close();
}

/** @param {Database} db */
const sizes = (db) => Promise.all([db.count('entries'), db.count('before')]);

/** @param {Database} from @param {Database} to */
async function copy(from, to) {
  const all = await Promise.all(TABLES.map((name) => from.getAll(name)));
  const tx = to.transaction(TABLES, 'readwrite', STRICT);
  for (const [i, name] of TABLES.entries()) {
    const table = tx.objectStore(name);
    void table.clear();
    for (const row of all[i]) void table.put(/** @type {never} */ (row));
  }
  await tx.done;
}

/** @type {('entries' | 'before' | 'marks')[]} */
const TABLES = ['entries', 'before', 'marks'];
