/**
 * The record as a file and back. JSON holds everything; CSV holds the putts, with units in the column names.
 * DEVELOPERS.md describes both.
 * @import {Entry, Phone, PuttEntry, Preview} from '../types.js'
 */
import { checked } from './entry.js';
import { olderEntries } from './older.js';
import { newerPhone, phoneOf } from './schema.js';

const FORMAT = 'borrowline-record';
const VERSION = 4;
/** What makes a file of a version one of the next. @type {Record<number, (data: Record<string, any>) => Record<string, unknown>>} */
const NEXT = {
  1: (data) => ({ ...data, phone: {} }), // entries alone
  2: (data) => ({ ...data, entries: [...data.entries, ...olderEntries(data.drills, data.phone?.calibration?.speeds)] }),
  3: (data) => ({ ...data, phone: newerPhone(data.phone) }),
};
const COLUMNS = [
  'id',
  'at',
  'changed',
  'place',
  'text',
  'distance_m',
  'stimp_ft',
  'slope_percent',
  'fall_deg',
  'stations',
  'past_m',
  'aim_deg',
  'result',
  'x_m',
  'y_m',
  'gate',
  'line_error_deg',
  'felt_percent',
  'tilt_source',
  'tilt_sd_percent',
  'stimp_source',
  'stimp_sd_ft',
  'sample',
  'gone',
];
const TEXTS = ['id', 'at', 'changed', 'place', 'text', 'gate', 'tilt_source', 'stimp_source'];

/** @param {Entry[]} entries @param {Entry[]} before @param {Partial<Phone>} phone @param {unknown[]} [aside] what does not fit, for whoever can mend it */
export const toJson = (entries, before, phone, aside = []) =>
  `${JSON.stringify({ format: FORMAT, version: VERSION, exported: new Date().toISOString(), entries, before, phone, ...(aside.length && { aside }) }, null, 1)}\n`;

/** @param {unknown} value */
function cell(value) {
  const text = value === undefined ? '' : typeof value === 'object' ? JSON.stringify(value) : String(value);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** @param {Entry[]} entries */
export function toCsv(entries) {
  const putts = /** @type {PuttEntry[]} */ (entries.filter(({ kind }) => kind === 'putt'));
  const rows = putts.map((putt) => {
    const finish = putt.result === 'holed' ? { result: 'holed' } : { ...putt.result, result: 'missed' };
    /** @type {Record<string, unknown>} */
    const all = { ...putt, ...finish };
    return COLUMNS.map((name) => cell(all[name])).join(',');
  });
  return [COLUMNS.join(','), ...rows, ''].join('\r\n');
}

/**
 * What a file holds: good entries, and bad ones by line (CSV) or by place in the list (JSON). Throws when it is no file of ours.
 * @param {string} text
 * @returns {{entries: Entry[], before: Entry[], bad: string[], phone: Partial<Phone>}}
 */
export function fromFile(text) {
  const plain = text.replace(/^\ufeff/, '');
  return plain.trimStart().startsWith('{') ? fromJson(plain) : fromCsv(plain);
}

/** @param {string} text */
function fromJson(text) {
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
  for (let at = /** @type {number} */ (version); at < VERSION; at++) data = NEXT[at](data);
  const good = sorted(
    /** @type {unknown[]} */ (data.entries).map((each, i) => [`Entry ${i + 1}`, each]),
    checked,
  );
  // What an entry was before is no reason to stop: what does not fit of it is left out
  const before = sorted(
    (Array.isArray(data.before) ? data.before : []).map((each, i) => [`Earlier ${i + 1}`, each]),
    checked,
  );
  const phone = phoneOf(data.phone);
  const misfits = phone.bad.map((name) => `${name} of the settings and calibration`);
  return { entries: good.good, before: before.good, phone: phone.good, bad: [...good.bad, ...before.bad, ...misfits] };
}

/** @param {string} text */
function fromCsv(text) {
  const [head, ...rows] = table(text);
  if (!head?.cells.includes('distance_m') || !head.cells.includes('result'))
    throw new Error('This is no record of Borrowline: the first line names no distance_m and result.');
  const unknown = head.cells.filter((name) => !COLUMNS.includes(name));
  if (unknown.length) throw new Error(`The first line names ${unknown[0].slice(0, 40)}, which is no column of a record.`);
  const { good, bad } = sorted(
    rows.map(({ line, cells }) => [`Line ${line}`, cells]),
    (cells) => checked(fromRow(head.cells, /** @type {string[]} */ (cells))),
  );
  return { entries: good, before: [], bad, phone: {} };
}

/** Spreadsheets write it in capitals. @param {string} name @param {string} value */
function flag(name, value) {
  const plain = value.toLowerCase();
  if (plain !== 'true' && plain !== 'false')
    throw new Error(`${name} is "${value.slice(0, 40)}"; it takes true, false or nothing`);
  return plain === 'true';
}

/** @param {string[]} names @param {string[]} cells */
function fromRow(names, cells) {
  if (cells.length !== names.length) throw new Error(`it has ${cells.length} cells; the first line has ${names.length}`);
  /** @type {Record<string, unknown>} */
  const data = { kind: 'putt' };
  names.forEach((name, i) => {
    const value = cells[i];
    if (value === '') return;
    if (name === 'stations') data[name] = JSON.parse(value);
    else if (name === 'sample' || name === 'gone') data[name] = flag(name, value);
    else if (TEXTS.includes(name) || name === 'result') data[name] = value;
    else data[name] = /^-?\d+(\.\d+)?(e-?\d+)?$/i.test(value) ? Number(value) : value;
  });
  return { ...data, result: data.result === 'missed' ? { x_m: data.x_m, y_m: data.y_m } : data.result };
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

/** Rows of cells, each with the line it starts on; quoted cells may hold commas and line ends. @param {string} text */
function table(text) {
  /** @type {{line: number, cells: string[]}[]} */
  const rows = [];
  let [cells, value, quoted, line, begun] = [/** @type {string[]} */ ([]), '', false, 1, 1];
  for (let i = 0; i <= text.length; i++) {
    const c = text[i] ?? '\n';
    if (c === '\n') line++;
    if (quoted && i < text.length) {
      if (c !== '"') value += c;
      else if (text[i + 1] === '"') value += text[++i];
      else quoted = false;
    } else if (c === '"') quoted = true;
    else if (c === ',') {
      cells.push(value);
      value = '';
    } else if (c === '\n') {
      cells.push(value.replace(/\r$/, ''));
      if (cells.length > 1 || cells[0]) rows.push({ line: begun, cells });
      [cells, value, begun] = [[], '', line];
    } else value += c;
  }
  return rows;
}

/**
 * What taking a file in would do: by id, the newer wins, and what is the same stays as it is.
 * @param {Entry[]} own @param {Phone} phoneNow @param {ReturnType<typeof fromFile>} file
 * @returns {Preview}
 */
export function preview(own, phoneNow, { entries, before, bad, phone }) {
  const known = new Map(own.map(({ id, changed }) => [id, changed]));
  /** @type {Map<string, Entry>} */
  const latest = new Map();
  for (const entry of entries) if (entry.changed > (latest.get(entry.id)?.changed ?? '')) latest.set(entry.id, entry);
  const unique = [...latest.values()];
  const fresh = unique.filter(({ id }) => !known.has(id));
  const newer = unique.filter(({ id, changed }) => changed > (known.get(id) ?? '\uffff'));
  const here = phoneOf(phoneNow).good;
  const differs = /** @type {(keyof Phone)[]} */ (Object.keys(phone)).some(
    (name) => JSON.stringify(phone[name]) !== JSON.stringify(here[name]),
  );
  return { fresh, newer, before, bad, kept: entries.length - fresh.length - newer.length, phone: differs ? phone : null };
}
