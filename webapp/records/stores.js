/**
 * Where the record lies: a database, and in Chromium its twin.
 *
 * Chromium can lose a whole database. Killed in the middle of a write it goes on behind the torn place at the next start,
 * finds the file corrupt at the start after that, and deletes it. Only Chromium has storage buckets, and each has a file of
 * its own: the twin is written when the first is done, so that a kill tears one of them at most.
 * @import {Entry} from '../types.js'
 * @import {DBSchema, IDBPDatabase} from 'idb'
 * @import {Mark, Rows} from './join.js'
 */
import { wrap } from 'idb';
import { joined, newSalt, WRITTEN } from './join.js';
import { ownRead } from './older.js';

const NAME = 'borrowline';
const TWIN = 'borrowline-twin';
/** What makes a database of a version one of the next. @type {((db: IDBDatabase, tx: IDBTransaction) => void)[]} */
const NEXT = [
  // entries, what they were before, and marks: the small parts of what is kept
  (db) => {
    db.createObjectStore('entries', { keyPath: 'id' });
    db.createObjectStore('before', { keyPath: ['id', 'changed'] });
    db.createObjectStore('marks', { keyPath: 'id' });
  },
  // entries may be drill results, which an app of version 1 would take for putts: it is kept away from them
  () => {},
  // or greens, of which an app of version 2 knows nothing
  () => {},
  // entries may be rounds, and putts of which no aim or finish is known, which an app of version 2 would not read
  (_, tx) => {
    const cursor = tx.objectStore('entries').openCursor();
    cursor.onsuccess = () => {
      const row = cursor.result;
      if (!row) return;
      const entry = ownRead(row.value);
      if (entry !== row.value) row.update(entry);
      row.continue();
    };
  },
];
const VERSION = NEXT.length;
export const STRICT = /** @type {const} */ ({ durability: 'strict' });

/**
 * @typedef {object} Tables
 * @property {{key: string, value: Entry}} entries
 * @property {{key: [string, string], value: Entry}} before
 * @property {{key: string, value: Mark}} marks
 * @typedef {DBSchema & Tables} Schema
 * @typedef {IDBPDatabase<Schema>} Database
 * @typedef {{first: Database, twin: Database | null}} Both
 * @typedef {{open: (name: string, options: StorageBucketOptions) => Promise<{indexedDB: IDBFactory}>, delete: (name: string) =>
 *   Promise<void>}} Buckets
 * @typedef {{durability: 'strict'}} StorageBucketOptions
 */

const buckets = /** @type {{storageBuckets?: Buckets}} */ (/** @type {unknown} */ (navigator)).storageBuckets;

/** @type {Promise<Both> | undefined} */
let opened;
/** The twin's bucket: let go of, it takes with it what is being written. @type {{indexedDB: IDBFactory} | undefined} */
let bucket;

/**
 * The database that is read, and its twin where there is one, both with the same in them. Where it fails, the next call tries
 * again.
 */
export function stores() {
  opened ??= openBoth().catch((error) => {
    opened = undefined;
    throw error;
  });
  return opened;
}

/**
 * One after another, also of several tabs, so that both databases are written in one order.
 * @template T @param {() => Promise<T>} work
 * @returns {Promise<T>}
 */
export const inTurn = (work) => (navigator.locks ? navigator.locks.request(NAME, work) : work());

/** @returns {Promise<Both>} */
async function openBoth() {
  const [first, twin] = await Promise.all([openIn(indexedDB), openTwin().catch(() => null)]);
  if (!twin) return { first, twin };
  try {
    await inTurn(() => alike(first, twin));
    return { first, twin };
  } catch {
    twin.close();
    return { first, twin: null };
  }
}

async function openTwin() {
  if (!buckets) return null;
  bucket = await buckets.open(TWIN, STRICT);
  return openIn(bucket.indexedDB);
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
  request.onupgradeneeded = ({ oldVersion }) =>
    NEXT.slice(oldVersion).forEach((step) => void step(request.result, /** @type {IDBTransaction} */ (request.transaction)));
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

/** @param {Database} first @param {Database} twin */
async function alike(first, twin) {
  const [mine, its] = await Promise.all([first, twin].map((db) => db.get('marks', WRITTEN)));
  if (mine && mine.value === its?.value) return;
  const [ofFirst, ofTwin] = await Promise.all([rowsOf(first), rowsOf(twin)]);
  const rows = joined(ofFirst, ofTwin);
  const written = { id: WRITTEN, value: newSalt() };
  await fill(first, ofFirst, rows, written);
  await fill(twin, ofTwin, rows, written);
}

/** @param {Database} db @returns {Promise<Rows>} */
async function rowsOf(db) {
  const [entries, before, marks] = await Promise.all([db.getAll('entries'), db.getAll('before'), db.getAll('marks')]);
  return { entries, before, marks };
}

/**
 * Writes of the rows what it has not, and takes away what is none of them.
 * @param {Database} db @param {Rows} has @param {Rows} rows @param {Mark} written
 */
async function fill(db, has, rows, written) {
  const tx = db.transaction(TABLES, 'readwrite', STRICT);
  for (const name of TABLES) {
    const table = tx.objectStore(name);
    const [present, wanted] = [
      new Set(/** @type {unknown[]} */ (has[name]).map(text)),
      new Set(/** @type {unknown[]} */ (rows[name]).map(text)),
    ];
    for (const row of has[name]) if (!wanted.has(text(row))) void table.delete(/** @type {never} */ (keyOf(name, row)));
    for (const row of rows[name]) if (!present.has(text(row))) void table.put(/** @type {never} */ (row));
  }
  void tx.objectStore('marks').put(written);
  await tx.done;
}

const text = (/** @type {unknown} */ row) => JSON.stringify(row);

/** @param {string} name @param {{id: string, changed?: string}} row */
const keyOf = (name, { id, changed }) => (name === 'before' ? [id, changed] : id);

export const TABLES = /** @type {('entries' | 'before' | 'marks')[]} */ (['entries', 'before', 'marks']);
