/**
 * The record as a file and back. JSON holds everything; a table holds the putts (table.js).
 * DEVELOPERS.md describes both.
 * @import {Entry, Phone, Preview} from '../types.js'
 * @import {Parts} from './parts.js'
 */
import { pick } from '../pick.js';
import { checked } from './entry.js';
import { olderEntries, ownRead } from './older.js';
import { newerPhone } from './schema.js';
import { withoutPicture, withPictureOf } from './pictures.js';
import { fromCsv, isMadeId } from './table.js';

const FORMAT = 'borrowline-record';
const VERSION = 5;
/**
 * What makes a file of a version one of the next.
 * @type {Record<number, (data: Record<string, any>) => Record<string, unknown>>}
 */
const NEXT = {
  1: (data) => ({ ...data, phone: {} }), // entries alone
  2: (data) => ({ ...data, entries: [...data.entries, ...olderEntries(data.drills, data.phone?.calibration?.speeds)] }),
  3: (data) => ({ ...data, phone: newerPhone(data.phone) }),
  4: (data) => ({ ...data, entries: data.entries.map(ownRead) }), // did not say whose read was played, and held no rounds
};
/**
 * @param {Entry[]} entries @param {Entry[]} before @param {Partial<Phone>} phone @param {unknown[]} [aside] what does not fit,
 *   for whoever can mend it
 */
export const toJson = (entries, before, phone, aside = []) =>
  `${JSON.stringify(
    {
      format: FORMAT,
      version: VERSION,
      exported: new Date().toISOString(),
      entries,
      before,
      phone,
      ...(aside.length && { aside }),
    },
    null,
    1,
  )}\n`;

/**
 * What a file holds: good entries, and bad ones by line (CSV) or by place in the list (JSON). Throws when it is no file of
 * ours.
 * @param {string} text @param {Pick<Parts, 'toldIn'>} parts
 * @returns {{entries: Entry[], before: Entry[], bad: string[], phone: Partial<Phone>, table?: boolean}} `table`: of putts,
 *   whose rows may have been edited by hand
 */
export function fromFile(text, parts) {
  const plain = text.replace(/^\ufeff/, '');
  return plain.trimStart().startsWith('{') ? fromJson(plain, parts) : fromTable(plain);
}

/** @param {string} text @param {Pick<Parts, 'toldIn'>} parts */
function fromJson(text, parts) {
  /** @type {Record<string, unknown>} */
  let data;
  try {
    data = JSON.parse(text);
  } catch {
    throw new Error('The file is cut off or no JSON.');
  }
  if (data.format !== FORMAT || !Array.isArray(data.entries)) throw new Error('This is no record of Borrowline.');
  const { version } = data;
  if (!Number.isInteger(version) || /** @type {number} */ (version) < 1)
    throw new Error('This is no record of Borrowline: its version is none.');
  if (/** @type {number} */ (version) > VERSION) throw new Error('The file is from a newer Borrowline; update this one first.');
  for (let at = /** @type {number} */ (version); at < VERSION; at++) data = pick(NEXT, at)(data);
  const good = sorted(
    /** @type {unknown[]} */ (data.entries).map((each, i) => [`Entry ${i + 1}`, each]),
    checked,
  );
  // What an entry was before is no reason to stop: what does not fit of it is left out
  const before = sorted(
    (Array.isArray(data.before) ? data.before : []).map((each, i) => [`Earlier ${i + 1}`, each]),
    checked,
  );
  const phone = parts.toldIn(data.phone);
  const misfits = phone.bad.map((name) => `${name} of the settings and calibration`);
  return { entries: good.good, before: before.good, phone: phone.good, bad: [...good.bad, ...before.bad, ...misfits] };
}

/** @param {string} text */
function fromTable(text) {
  const { good, bad } = sorted(fromCsv(text), (made) => /** @type {() => Entry} */ (made)());
  return { entries: good, before: [], bad, phone: {}, table: true };
}

/** @template T @param {[string, unknown][]} named @param {(data: unknown) => T} check throws what is wrong */
function sorted(named, check) {
  /** @type {T[]} */
  const good = [];
  /** @type {string[]} */
  const bad = [];
  for (const [name, data] of named)
    try {
      good.push(check(data));
    } catch (error) {
      bad.push(`${name}: ${/** @type {Error} */ (error).message}`);
    }
  return { good, bad };
}

/** As it reads, with numbers as far as a spreadsheet keeps them. @param {Entry} entry */
const read = ({ changed: _, ...entry }) =>
  JSON.stringify(Object.entries(withoutPicture(/** @type {Entry} */ (entry))).sort(), (_, value) =>
    typeof value === 'number' ? Number(value.toPrecision(6)) : value,
  );

/**
 * What taking a file in would do: by id, the newer wins, and what is the same stays as it is. A row of a table that was
 * edited by hand keeps its time of change: it counts as changed now.
 * @param {Entry[]} own @param {Phone} phoneNow @param {ReturnType<typeof fromFile>} file
 * @returns {Preview}
 */
export function preview(own, phoneNow, { entries, before, bad, phone, table = false }) {
  const known = new Map(own.map((entry) => [entry.id, entry]));
  /** @type {Map<string, Entry>} */
  const latest = new Map();
  for (const entry of entries) if (entry.changed > (latest.get(entry.id)?.changed ?? '')) latest.set(entry.id, entry);
  const unique = [...latest.values()];
  const fresh = unique.filter(({ id }) => !known.has(id));
  const there = unique.flatMap((entry) => {
    const mine = known.get(entry.id);
    return mine && !isMadeId(entry.id) ? [{ entry, mine }] : [];
  });
  const newer = there.flatMap(({ entry, mine }) => (entry.changed > mine.changed ? [entry] : []));
  const changed = new Date().toISOString();
  const edited = there.flatMap(({ entry, mine }) =>
    table && entry.changed === mine.changed && read(entry) !== read(mine) ? [withPictureOf(mine, { ...entry, changed })] : [],
  );
  const differs = /** @type {(keyof Phone)[]} */ (Object.keys(phone)).some((name) => {
    const [told, here] = /** @type {Record<string, unknown>[]} */ (/** @type {unknown} */ ([phone[name], phoneNow[name]]));
    return Object.entries(told ?? {}).some(([field, value]) => JSON.stringify(value) !== JSON.stringify(here?.[field]));
  });
  const kept = entries.length - fresh.length - newer.length - edited.length;
  const name = phone.settings?.name ?? '';
  const stranger = name !== '' && name !== phoneNow.settings?.name && own.some(({ sample }) => !sample);
  return { fresh, newer, edited, before, bad, kept, name, stranger, all: unique, phone: differs ? phone : null };
}
