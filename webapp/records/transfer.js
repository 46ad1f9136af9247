/**
 * The record as a file and back. JSON holds everything; CSV holds the putts, with units in the column names.
 * @import {Entry, PuttEntry, Preview} from '../types.js'
 */
import { checked } from './entry.js';

const FORMAT = 'borrowline-record';
const VERSION = 1;
const COLUMNS = [
  'id', 'at', 'changed', 'place', 'text', 'distance_m', 'stimp_ft', 'slope_percent', 'fall_deg', 'stations', 'past_m', 'aim_deg',
  'result', 'x_m', 'y_m', 'gate', 'line_error_deg', 'felt_percent', 'sample', 'gone',
];
const TEXTS = ['id', 'at', 'changed', 'place', 'text', 'gate'];

/** @param {Entry[]} entries @param {Entry[]} before */
export const toJson = (entries, before) => `${JSON.stringify({ format: FORMAT, version: VERSION, exported: new Date().toISOString(), entries, before }, null, 1)}\n`;

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
 * @returns {{entries: Entry[], before: Entry[], bad: string[]}}
 */
export function fromFile(text) {
  const plain = text.replace(/^\ufeff/, '');
  return plain.trimStart().startsWith('{') ? fromJson(plain) : fromCsv(plain);
}

/** @param {string} text */
function fromJson(text) {
  /** @type {{format?: unknown, version?: unknown, entries?: unknown, before?: unknown}} */
  let data;
  try {
    data = JSON.parse(text);
  } catch {
    throw new Error('The file is cut off or no JSON.');
  }
  if (data.format !== FORMAT || !Array.isArray(data.entries)) throw new Error('This is no record of Borrowline.');
  if (typeof data.version !== 'number' || data.version > VERSION) throw new Error('The file is from a newer Borrowline; update this one first.');
  const good = sorted(data.entries.map((each, i) => [`Entry ${i + 1}`, each]));
  // What an entry was before is no reason to stop: what does not fit of it is left out
  const before = sorted((Array.isArray(data.before) ? data.before : []).map((each, i) => [`Earlier ${i + 1}`, each]));
  return { entries: good.entries, before: before.entries, bad: [...good.bad, ...before.bad] };
}

/** @param {string} text */
function fromCsv(text) {
  const [head, ...rows] = table(text);
  if (!head?.cells.includes('distance_m') || !head.cells.includes('result')) throw new Error('This is no record of Borrowline: the first line names no distance_m and result.');
  const unknown = head.cells.filter((name) => !COLUMNS.includes(name));
  if (unknown.length) throw new Error(`The first line names ${unknown[0].slice(0, 40)}, which is no column of a record.`);
  return { before: [], ...sorted(rows.map(({ line, cells }) => [`Line ${line}`, () => fromRow(head.cells, cells)])) };
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
    else if (name === 'sample' || name === 'gone') data[name] = value === 'true';
    else if (TEXTS.includes(name) || name === 'result') data[name] = value;
    else data[name] = /^-?\d+(\.\d+)?(e-?\d+)?$/i.test(value) ? Number(value) : value;
  });
  return { ...data, result: data.result === 'missed' ? { x_m: data.x_m, y_m: data.y_m } : data.result };
}

/** @param {[string, unknown][]} named */
function sorted(named) {
  /** @type {Entry[]} */
  const entries = [];
  /** @type {string[]} */
  const bad = [];
  for (const [name, data] of named)
    try {
      entries.push(checked(typeof data === 'function' ? data() : data));
    } catch (error) {
      bad.push(`${name}: ${/** @type {Error} */ (error).message}`);
    }
  return { entries, bad };
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
 * @param {Entry[]} held @param {ReturnType<typeof fromFile>} file
 * @returns {Preview}
 */
export function preview(held, { entries, before, bad }) {
  const known = new Map(held.map((entry) => [entry.id, entry.changed]));
  /** @type {Map<string, Entry>} */
  const newest = new Map();
  for (const entry of entries) {
    const other = newest.get(entry.id)?.changed ?? '';
    if (entry.changed > other) newest.set(entry.id, entry);
  }
  const unique = [...newest.values()];
  const fresh = unique.filter(({ id }) => !known.has(id));
  const newer = unique.filter(({ id, changed }) => changed > (known.get(id) ?? '\uffff'));
  return { fresh, newer, before, bad, kept: entries.length - fresh.length - newer.length };
}
