/**
 * Drill results and green speeds as they were before they were entries, when they lay in settings and calibration.
 * @import {Entry} from '../types.js'
 */
import { RANGES } from './checks.js';
import { checked } from './entry.js';
import { isRecord } from './forms.js';

/** @param {Record<string, any>} result */
const drillResult = ({ date, ...rest }) => ({
  ...rest,
  kind: 'drill',
  at: date,
  name: String(rest.drill).replaceAll('_', ' '),
});

/** Its id is the same each time it is made. @param {Record<string, any>} speed */
function greenSpeed({ place, date, stimp_ft, stimp_sd_ft }) {
  const id = `speed ${date} ${stimp_ft} ${place}`.slice(0, 64);
  const at = /^\d{4}-\d\d-\d\d$/.test(date) ? `${date}T12:00:00Z` : date;
  const [low, high] = RANGES.stimp_ft;
  if (!(stimp_ft >= low && stimp_ft <= high)) return { kind: 'note', id, at, place, text: `Stimp ${stimp_ft}` };
  return { kind: 'note', id, at, place, stimp_ft, ...(stimp_sd_ft === null ? {} : { stimp_sd_ft }) };
}

/** @param {unknown} list @param {(each: Record<string, any>) => unknown} made */
const each = (list, made) => (Array.isArray(list) ? list.map((one) => (isRecord(one) ? made(one) : one)) : []);

/** Entries made of them, not checked. @param {unknown} results @param {unknown} speeds @returns {unknown[]} */
export const olderEntries = (results, speeds) => [...each(results, drillResult), ...each(speeds, greenSpeed)];

/** The invented player's reads were his own before an entry said whose read was played. @param {any} entry */
export const ownRead = (entry) =>
  isRecord(entry) && entry.sample === true && entry.kind === 'putt' && entry.read === undefined
    ? { ...entry, read: 'own' }
    : entry;

/** Those that fit. @param {unknown} list @returns {Entry[]} */
export const fitting = (list) =>
  (Array.isArray(list) ? list : []).flatMap((one) => {
    try {
      return [checked(one)];
    } catch {
      return [];
    }
  });
