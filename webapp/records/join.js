/**
 * The database and its twin, made alike again. Nothing that one of them has is written over by what is older in the other.
 * @import {Entry} from '../types.js'
 */

/** Its value changes with every write, alike in both; where it differs, one has missed a write. */
export const WRITTEN = 'written';
/** When something was last taken away for good: what the other still has of that is not brought back. */
export const ERASED = 'erased';

/**
 * @typedef {{id: string, value: unknown, changed?: string}} Mark
 * @typedef {{entries: Entry[], before: Entry[], marks: Mark[]}} Rows
 */

/**
 * The next of a chain of numbers below 2^47: two chains that once differed differ for ever.
 * @param {unknown} last @param {number} salt
 */
export const nextWritten = (last, salt) => ((typeof last === 'number' ? last : 0) * 31 + salt) % 2 ** 47;
export const newSalt = () => Math.floor(Math.random() * 2 ** 46);

/** @param {{changed?: unknown}} row */
const changedOf = ({ changed }) => (typeof changed === 'string' ? changed : '');

/**
 * @template {{changed?: string}} Row
 * @param {Row[]} mine @param {Row[]} its @param {(row: Row) => string} key @returns {Row[]} rows of both, of one key the newer
 */
function newest(mine, its, key) {
  const rows = new Map(mine.map((row) => [key(row), row]));
  for (const row of its) {
    const other = rows.get(key(row));
    if (!other || changedOf(row) > changedOf(other)) rows.set(key(row), row);
  }
  return [...rows.values()];
}

/** What both should hold. @param {Rows} mine @param {Rows} its @returns {Rows} */
export function joined(mine, its) {
  const [here, there] = [erased(mine), erased(its)];
  const [a, b] = [since(mine, there > here ? there : ''), since(its, here > there ? here : '')];
  return {
    entries: newest(a.entries, b.entries, ({ id }) => id),
    before: newest(a.before, b.before, ({ id, changed }) => JSON.stringify([id, changed])),
    marks: newest(a.marks, b.marks, ({ id }) => id).filter(({ id }) => id !== WRITTEN),
  };
}

/** @param {Rows} rows */
const erased = ({ marks }) => String(marks.find(({ id }) => id === ERASED)?.value ?? '');

/** Of one that has missed an erasure, what came after it. @param {Rows} rows @param {string} time @returns {Rows} */
function since({ entries, before, marks }, time) {
  const after = (/** @type {{changed?: unknown}} */ row) => !time || changedOf(row) > time;
  return { entries: entries.filter(after), before: before.filter(after), marks: marks.filter(after) };
}
