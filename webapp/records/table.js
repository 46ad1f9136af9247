/**
 * Putts as a table (CSV) and back. DEVELOPERS.md describes it.
 * @import {Entry, PuttEntry} from '../types.js'
 */
import { pick } from '../pick.js';
import { checked } from './entry.js';

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
  'read',
  'result',
  'x_m',
  'y_m',
  'side',
  'length',
  'gate',
  'line_error_deg',
  'felt_percent',
  'start_deg',
  'start_sd_deg',
  'launch_mps',
  'launch_sd_mps',
  'finish_sd_m',
  'tilt_source',
  'tilt_sd_percent',
  'stimp_source',
  'stimp_sd_ft',
  'sample',
  'gone',
];
const TEXTS = ['id', 'at', 'changed', 'place', 'text', 'read', 'side', 'length', 'gate', 'tilt_source', 'stimp_source'];
/** Distances in other units, as a player's own table may have them. @type {Record<string, number>} */
const DISTANCES = { distance_m: 1, distance_ft: 0.3048 };
/** A spreadsheet takes a text that begins so for a formula; an apostrophe before it says that it is a text. */
const FORMULA = /^'*[=+\-@\t\r]/;
const QUOTED = /^'+[=+\-@\t\r]/;

/** @param {string} name @param {unknown} value */
function cell(name, value) {
  const plain = value === undefined ? '' : typeof value === 'object' ? JSON.stringify(value) : String(value);
  const text = TEXTS.includes(name) && FORMULA.test(plain) ? `'${plain}` : plain;
  return /[",;\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** @param {Entry[]} entries */
export function toCsv(entries) {
  const putts = /** @type {PuttEntry[]} */ (entries.filter(({ kind }) => kind === 'putt'));
  const rows = putts.map((putt) => {
    const finish = typeof putt.result === 'string' ? {} : { ...putt.result, result: 'missed' };
    /** @type {Record<string, unknown>} */
    const all = { ...putt, ...finish };
    return COLUMNS.map((name) => cell(name, all[name])).join(',');
  });
  return [COLUMNS.join(','), ...rows, ''].join('\r\n');
}

/**
 * Good entries, and what is wrong with the others by its line.
 * @param {string} text @returns {[string, () => Entry][]} each by its name, made when it is asked for
 */
export function fromCsv(text) {
  const [first = ''] = text.split(/\r?\n/, 1);
  const comma = [';', '\t'].find((each) => first.split(each).length > first.split(',').length) ?? ',';
  const [head, ...rows] = table(text, comma);
  const names = head?.cells.map((name) => name.trim()) ?? [];
  if (!names.some((name) => DISTANCES[name]) || !names.includes('result'))
    throw new Error('This is no record of Borrowline: the first line names no distance_m and result.');
  const unknown = names.find((name) => !COLUMNS.includes(name) && !DISTANCES[name]);
  if (unknown !== undefined) throw new Error(`The first line names ${unknown.slice(0, 40)}, which is no column of a record.`);
  const at = new Date().toISOString();
  return rows.map(({ line, cells }) => [`Line ${line}`, () => checked(withHead(fromRow(names, cells, comma), at, line))]);
}

const MADE = 'table ';
/** Whether a row was named by what it says. @param {string} id */
export const isMadeId = (id) => id.startsWith(MADE);

/**
 * Of a table without ids and times each row is a putt of today, and the same one when the table comes again.
 * @param {Record<string, unknown>} data @param {string} at @param {number} line
 */
function withHead(data, at, line) {
  if (data.id !== undefined) return data;
  const text = JSON.stringify([line, data]);
  let hash = 7;
  for (const character of text) hash = (hash * 31 + (character.codePointAt(0) ?? 0)) % 2 ** 45;
  return { at, ...data, id: `${MADE}${hash.toString(36)}` };
}

/** Spreadsheets write it in capitals. @param {string} name @param {string} value */
function flag(name, value) {
  const plain = value.toLowerCase();
  if (plain !== 'true' && plain !== 'false')
    throw new Error(`${name} is "${value.slice(0, 40)}"; it takes true, false or nothing`);
  return plain === 'true';
}

/** @param {string} value @param {string} comma between the cells; where it is no comma, one may stand for the point */
function numeral(value, comma) {
  const plain = comma === ',' ? value : value.replace(',', '.');
  return /^-?\d+(\.\d+)?(e-?\d+)?$/i.test(plain) ? Number(plain) : value;
}

/** @param {string[]} names @param {string[]} cells @param {string} comma */
function fromRow(names, cells, comma) {
  if (cells.length !== names.length) throw new Error(`it has ${cells.length} cells; the first line has ${names.length}`);
  /** @type {Record<string, unknown>} */
  const data = { kind: 'putt' };
  names.forEach((name, i) => {
    const value = cells[i];
    if (!value) return;
    if (name === 'stations') data[name] = JSON.parse(value);
    else if (name === 'sample' || name === 'gone') data[name] = flag(name, value);
    else if (name === 'result') data[name] = value.trim().toLowerCase();
    else if (TEXTS.includes(name)) data[name] = QUOTED.test(value) ? value.slice(1) : value;
    else if (DISTANCES[name]) {
      const found = numeral(value, comma);
      data.distance_m = typeof found === 'number' ? found * pick(DISTANCES, name) : found;
    } else data[name] = numeral(value, comma);
  });
  const finished = data.result === 'missed' && (data.x_m !== undefined || data.y_m !== undefined);
  return { ...data, result: finished ? { x_m: data.x_m, y_m: data.y_m } : data.result };
}

/**
 * Rows of cells, each with the line it starts on; quoted cells may hold commas and line ends.
 * @param {string} text @param {string} comma
 */
function table(text, comma) {
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
    else if (c === comma) {
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
