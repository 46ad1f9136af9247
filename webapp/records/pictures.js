/**
 * Pictures of putts in the record and in a place's book: each a small JPEG in its entry, as text, and all of them within a
 * budget.
 * @import {Entry, PuttEntry, WorthEntry} from '../types.js'
 */
import { shown } from './checks.js';
import { after } from './clock.js';

/** Characters, which are bytes of the database and of a file: about a hundred pictures. */
export const BUDGET = 6_000_000;
const LARGEST = 200_000;
/** One of them: its longer side, px, sharp enough on a phone's screen, and the quality of its JPEG. */
export const KEPT = { side: 640, quality: 0.7 };
const BEGINS = 'data:image/jpeg;base64,';

/** @param {unknown} value @returns {string} */
export function checkPicture(value) {
  if (typeof value !== 'string' || value.length > LARGEST || !value.startsWith(BEGINS) || /[^\w+/=:;,]/.test(value))
    throw new Error(`picture is ${shown(value)}; it takes a JPEG as text of up to ${LARGEST} characters`);
  return value;
}

/** @param {Entry} entry */
const sizeOf = (entry) => (entry.kind === 'putt' || entry.kind === 'worth' ? (entry.picture?.length ?? 0) : 0);

/** How much of the budget is taken. @param {Entry[]} entries */
export const taken = (entries) => entries.reduce((sum, entry) => sum + sizeOf(entry), 0);

/** @template {Entry} T @param {T} entry @returns {T} */
export function withoutPicture(entry) {
  if (!sizeOf(entry)) return entry;
  const { picture: _, ...rest } = /** @type {PuttEntry | WorthEntry} */ (entry);
  return /** @type {T} */ (/** @type {Entry} */ (rest));
}

/**
 * An entry that came without its picture, as a row of a table does, or as what it was before.
 * @template {Entry} T @param {Entry | undefined} mine @param {T} entry @returns {T}
 */
export const withPictureOf = (mine, entry) =>
  mine?.kind === 'putt' && mine.picture && entry.kind === 'putt' && !entry.picture
    ? { ...entry, picture: mine.picture }
    : entry;

/**
 * The oldest putts, without their pictures, that make room for so much more; the putts stay, and so does what was put into a
 * book by hand.
 * @param {Entry[]} entries newest first @param {number} more
 */
export function makeRoom(entries, more) {
  let over = taken(entries) + more - BUDGET;
  const changed = [];
  for (const entry of [...entries].reverse()) {
    if (over <= 0) break;
    if (entry.kind !== 'putt' || !sizeOf(entry)) continue;
    over -= sizeOf(entry);
    changed.push({ ...withoutPicture(entry), changed: after(entry.changed) });
  }
  return changed;
}

/** @param {string} picture */
export function fileOf(picture) {
  const bytes = Uint8Array.from(atob(picture.slice(BEGINS.length)), (letter) => letter.charCodeAt(0));
  return new File([bytes], 'borrowline-putt.jpg', { type: 'image/jpeg' });
}
