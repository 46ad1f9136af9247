/**
 * A part of what is kept, which a feature owns: how it is read back, field by field. What does not fit is left to its default
 * and set aside, so a damaged record never stops the app.
 * @import {Check} from './forms.js'
 * @typedef {{what: string, value: unknown}} Misfit what did not fit, by its place
 * @typedef {(name: string) => any} Others the other parts, as they have been read back
 */
import { isRecord } from './forms.js';

/** @typedef {{each: Check}} Each a list of which the entries that fit are kept */
/**
 * What a part is besides.
 * @typedef {object} Manner
 * @property {boolean} [painted] needed by the first paint, before the database has opened
 * @property {boolean} [passing] no more than painted: worked out anew
 * @property {boolean} [atOnce] changed by single touches, of which each may be the last before the page goes
 * @property {boolean} [ofTab] not taken over from another tab
 * @property {(value: any) => boolean} [going] while it is so it is this tab's alone, and at a start what the disk has of it
 *   counts
 * @property {boolean} [inFiles] exported with the entries, and taken in when asked to
 * @property {string} [apart] a field of it that changes by the second and is a row of its own
 */
/** @template T @typedef {Manner & {read: (value: unknown, aside: Misfit[], others: Others) => T}} Part */
/**
 * One that may go into files, where it is taken whole or not at all: what of it is told, or null where something does not fit.
 * @template T @typedef {Part<T> & {told: (value: unknown) => Partial<T> | null}} PhonePart
 */

/**
 * One value.
 * @template T @param {string} what @param {Check} check @param {T | ((others: Others) => T)} first before there is any
 * @param {Manner} [manner] @returns {Part<T>}
 */
export const single = (what, check, first, manner = {}) => ({
  ...manner,
  read(value, aside, others) {
    if (value !== undefined && value !== null && check(value)) return /** @type {T} */ (value);
    if (value !== undefined && value !== null) aside.push({ what, value });
    return typeof first === 'function' ? /** @type {(others: Others) => T} */ (first)(others) : first;
  },
});

/**
 * Fields, each with its check.
 * @template {object} T @param {string} part @param {T} defaults @param {Record<keyof T & string, Check | Each>} checks
 * @param {Manner} [manner] @returns {PhonePart<T>}
 */
export function fields(part, defaults, checks, manner = {}) {
  const names = /** @type {(keyof T & string)[]} */ (Object.keys(checks));
  return {
    ...manner,
    read(value, aside) {
      const result = { ...defaults };
      if (!isRecord(value)) {
        if (value !== undefined && value !== null) aside.push({ what: part, value });
        return result;
      }
      for (const name of names) {
        const [check, found, what] = [checks[name], value[name], `${part}.${name}`];
        if (found === undefined) continue;
        const good = typeof check === 'function' ? check(found) : Array.isArray(found);
        if (!good) aside.push({ what, value: found });
        else if (typeof check === 'function') result[name] = /** @type {T[typeof name]} */ (found);
        else {
          const all = /** @type {unknown[]} */ (found);
          aside.push(...all.filter((each) => !check.each(each)).map((each) => ({ what, value: each })));
          result[name] = /** @type {T[typeof name]} */ (/** @type {unknown} */ (all.filter(check.each)));
        }
      }
      return result;
    },
    told(value) {
      if (!isRecord(value)) return null;
      const own = names.filter((name) => value[name] !== undefined);
      const fits = own.every((name) => {
        const [check, found] = [checks[name], value[name]];
        return typeof check === 'function' ? check(found) : Array.isArray(found) && found.every(check.each);
      });
      if (!own.length || !fits) return null;
      return /** @type {Partial<T>} */ (Object.fromEntries(own.map((name) => [name, value[name]])));
    },
  };
}
