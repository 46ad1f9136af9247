/**
 * All that is kept besides the entries, part by part as the features own it. Each is a row, written when it changes.
 * @import {Kept, Phone, State} from '../types.js'
 * @import {Misfit, Part, PhonePart} from './part.js'
 */
import { pick } from '../pick.js';
import { isRecord } from './forms.js';
import { fitting } from './older.js';
import { asOfNow, SCHEMA } from './schema.js';

/** @type {Part<boolean>} */
const CAUTIONED = { painted: true, read: (value) => value === true };

/** @param {Record<string, Part<any>>} keeps what the features keep, by its name in the state */
export function createParts(keeps) {
  /** @type {Record<string, Part<any>>} */
  const parts = { cautioned: CAUTIONED, ...keeps };
  const all = Object.entries(parts);
  const ofPhone = /** @type {[keyof Phone, PhonePart<any>][]} */ (all.filter(([, { inFiles }]) => inFiles));
  /** @param {(part: Part<any>) => unknown} is @returns {(keyof State)[]} */
  const namesOf = (is) => /** @type {(keyof State)[]} */ (all.filter(([, part]) => is(part)).map(([name]) => name));
  /** @type {(keyof State)[]} */
  const kept = [...namesOf(({ passing }) => !passing), 'aside'];

  return {
    kept,
    painted: namesOf(({ painted }) => painted),
    atOnce: namesOf(({ atOnce }) => atOnce),
    ofTab: namesOf(({ ofTab }) => ofTab),
    /** Those that are going on. @param {Partial<State>} state */
    going: (state) => namesOf(({ going }) => going).filter((name) => parts[name]?.going?.(state[name])),

    /**
     * @param {unknown} data what was read back, of any age and in any state @param {Misfit[]} [aside] what does not fit goes
     *   there
     */
    restore(data, aside = []) {
      const saved = asOfNow(data);
      /** @type {Record<string, unknown>} */
      const read = { unkept: fitting(saved.unkept) };
      /** @param {string} name */
      const others = (name) => (name in read ? read[name] : (read[name] = pick(parts, name).read(saved[name], aside, others)));
      for (const [name] of all) others(name);
      return /** @type {Kept} */ (/** @type {unknown} */ (read));
    },

    /** The rows of some parts of the state. @param {Partial<State>} patch @returns {Record<string, unknown>} */
    rowsOf(patch) {
      const rows = kept.filter((name) => name in patch).map((name) => ({ name, value: patch[name] }));
      return Object.assign(
        {},
        ...rows.map(({ name, value }) => {
          const apart = parts[name]?.apart;
          if (!apart || !value) return { [name]: value };
          const { [apart]: row, ...rest } = /** @type {Record<string, unknown>} */ (value);
          return { [name]: rest, [apart]: row };
        }),
      );
    },
    /** As `restore` takes it. @param {Record<string, unknown>} rows */
    wholeOf(rows) {
      /** @type {Record<string, unknown>} */
      const whole = { schema: SCHEMA, ...rows };
      for (const [name, { apart }] of all) {
        if (!apart) continue;
        const { [apart]: row = null, [name]: rest } = whole;
        delete whole[apart];
        whole[name] = { .../** @type {object} */ (rest ?? {}), [apart]: row };
      }
      return whole;
    },

    /** What goes into a file besides the entries. @param {Phone} state */
    phoneOf: (state) => /** @type {Phone} */ (Object.fromEntries(ofPhone.map(([name]) => [name, state[name]]))),
    /**
     * What a file tells of the phone: the parts of which everything fits, and the names of the others.
     * @param {unknown} data
     */
    toldIn(data) {
      const told = isRecord(data) ? data : {};
      /** @type {Record<string, unknown>} */
      const good = {};
      const bad = [];
      for (const [name, part] of ofPhone) {
        if (told[name] === undefined) continue;
        const fits = part.told(told[name]);
        if (fits) good[name] = fits;
        else bad.push(name);
      }
      return { good: /** @type {Partial<Phone>} */ (good), bad };
    },
  };
}

/** @typedef {ReturnType<typeof createParts>} Parts */
