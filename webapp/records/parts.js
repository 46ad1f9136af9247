/**
 * What is kept besides the entries, in small parts, each written when it changes. A running session is a part of its own:
 * it changes every second.
 * @import {State} from '../types.js'
 */
import { SCHEMA } from './schema.js';

/** Of the state. */
export const KEPT = /** @type {const} */ ([
  'settings',
  'putt',
  'player',
  'cautioned',
  'calibration',
  'sighted',
  'felt',
  'you',
  'practice',
  'place',
  'draft',
  'logging',
  'card',
  'aside',
]);
/** What the first paint needs, before the database has opened. */
export const PAINTED = /** @type {const} */ (['settings', 'putt', 'player', 'felt', 'you', 'read', 'window', 'cautioned']);

/** @typedef {Pick<State, typeof KEPT[number]>} KeptState */

/** The rows of some parts of the state. @param {Partial<State>} patch @returns {Record<string, unknown>} */
export function partsOf(patch) {
  const { practice, ...rest } = Object.fromEntries(KEPT.filter((name) => name in patch).map((name) => [name, patch[name]]));
  if (!practice) return rest;
  const { run, ...plan } = /** @type {State['practice']} */ (practice);
  return { ...rest, practice: plan, run };
}

/** As `restore` takes it. @param {Record<string, unknown>} parts */
export function wholeOf({ run, practice, ...parts }) {
  return { schema: SCHEMA, ...parts, practice: { .../** @type {object} */ (practice ?? {}), run: run ?? null } };
}
