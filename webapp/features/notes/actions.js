/**
 * What a touch on the notes can do. A touch is done when it is on the disk; until then nothing is said.
 * @import {App} from '../../app.js'
 * @import {Entry, NoteEntry, Noting, Point, PuttEntry} from '../../types.js'
 */
import { give } from '../../device/share.js';
import { doesNotFit, fromText, unitOf } from '../../format.js';
import * as db from '../../records/db.js';
import { checked, RANGES } from '../../records/entry.js';
import { restore } from '../../records/schema.js';
import { fromFile, preview, toCsv, toJson } from '../../records/transfer.js';

const PLAIN = { unit: '', name: '', si: 1, digits: 2 };
/** @type {Record<string, string>} */
const UNITS_AS = { aim_deg: 'fall_deg', line_error_deg: 'start_line_sd_deg', felt_percent: 'slope_percent', x_m: 'past_m', y_m: 'past_m' };

/** @param {string} field @param {import('../../types.js').Settings} settings */
export const entryUnit = (field, settings) => (field === 'aim_deg' ? unitOf('start_line_sd_deg', settings) : unitOf(UNITS_AS[field] ?? field, settings) ?? PLAIN);

export const NEWER = 'A newer Borrowline has written here. Nothing of it is read or changed: close the app and open it again.';

const now = () => new Date().toISOString();

/** @param {import('../../types.js').Preview} taken @param {boolean} whole */
const takenWords = ({ fresh, newer, drills }, whole) =>
  `${fresh.length} new, ${newer.length} changed${drills.length ? `, ${drills.length} drill results` : ''}${whole ? ', settings and calibration' : ''}.`;

/** @param {App} app */
export function actions({ store, engine }) {
  /** @param {string} action @param {Partial<Noting>} patch */
  const set = (action, patch) => store.change(action, { noting: { ...store.state.noting, ...patch } });
  const all = () => store.state.entries ?? [];
  /** @param {unknown} error */
  const failed = (error) => {
    const { name, message } = /** @type {Error} */ (error);
    if (db.isNewer(error)) return set('newer', { said: NEWER });
    set('not written', { said: name === 'QuotaExceededError' ? 'The phone has no room left. Nothing was lost; free some and try again.' : `Not kept: ${message}` });
  };

  async function load() {
    try {
      const [entries, exported] = [await db.readAll(), await db.readMark('exported')];
      store.change('records', { entries, noting: { ...store.state.noting, exported } });
    } catch (error) {
      store.change('no records', { entries: all() });
      failed(error);
    }
  }

  /** @param {Entry[]} entries @param {Partial<Noting>} patch what to show once they are written */
  async function write(entries, patch) {
    try {
      await db.write(entries);
    } catch (error) {
      failed(error);
      return;
    }
    const ids = new Set(entries.map(({ id }) => id));
    const rest = all().filter(({ id }) => !ids.has(id));
    store.change('written', {
      entries: [...entries, ...rest].sort((a, b) => (a.at < b.at ? 1 : -1)),
      noting: { ...store.state.noting, ...patch },
      problem: null,
    });
  }

  /** @param {string} id @param {Partial<PuttEntry> | Partial<NoteEntry>} patch @param {Partial<Noting>} [shown] */
  async function change(id, patch, shown = {}) {
    const entry = all().find((each) => each.id === id);
    if (!entry) return;
    const next = /** @type {Entry} */ ({ ...entry, ...patch, changed: now() });
    for (const [name, value] of Object.entries(patch)) if (value === undefined) delete (/** @type {Record<string, unknown>} */ (/** @type {unknown} */ (next))[name]);
    await write([checked(next)], shown);
    if (store.state.noting.editing === id) set('earlier', { before: await db.readBefore(id) });
  }

  /** @type {Promise<unknown>} */
  let changes = Promise.resolve();
  /** One change after another: each starts from what the last has written. @param {() => unknown} work */
  const inTurn = (work) => (changes = changes.then(work).catch(failed));

  const act = {
    load,
    /** @param {Noting['page']} page */
    turn: (page) => set('turn to', { page, said: '', preview: null, sure: false, from: 0 }),
    /** @param {number} reach_m */
    reach: (reach_m) => set('zoom', { reach_m }),
    /** @param {string} place */
    setPlace: (place) => set('place', { place: place.trim().slice(0, 200) }),

    /** @param {PuttEntry['result']} result */
    async log(result) {
      const { read, putt, noting } = store.state;
      try {
        const fresh = read?.putt === putt;
        const meant = fresh ? read.value : await engine.ask('read', putt);
        const at = now();
        const entry = checked({ kind: 'putt', id: crypto.randomUUID(), at, changed: at, place: noting.place, text: '', ...putt, aim_deg: meant.aim_deg, result });
        await write([entry], { last: entry.id, said: '' });
      } catch (error) {
        failed(error);
      }
    },
    undo: () => inTurn(() => change(store.state.noting.last, { gone: true }, { last: '', said: 'Undone.' })),
    /** @param {string} id @param {string} name @param {unknown} value */
    add: (id, name, value) => inTurn(() => change(id, { [name]: value })),
    /** @param {string} text */
    async note(text) {
      if (!text.trim()) return;
      const at = now();
      await write([checked({ kind: 'note', id: crypto.randomUUID(), at, changed: at, place: store.state.noting.place, text: text.trim() })], { said: 'Noted.' });
    },

    /** @param {string} id */
    async edit(id) {
      set('edit', { editing: id, before: [] });
      set('earlier', { before: await db.readBefore(id) });
    },
    close: () => store.change('close entry', { noting: { ...store.state.noting, editing: '', before: [] }, problem: null }),
    /** A typed number of an entry; empty takes it away where it may be missing. @param {string} id @param {string} field @param {string} label @param {string} text */
    enter: (id, field, label, text) => inTurn(() => {
      const entry = all().find((each) => each.id === id);
      const unit = entryUnit(field, store.state.settings);
      const value = fromText(text, unit);
      const [low, high] = RANGES[field];
      if (!text.trim() && ['line_error_deg', 'felt_percent'].includes(field)) return change(id, { [field]: undefined });
      if (!(value >= low && value <= high)) return store.change('refuse entry', { problem: { field, text, message: doesNotFit(label, text, low, high, unit) } });
      const finish = entry?.kind === 'putt' && entry.result !== 'holed' ? entry.result : { x_m: 0, y_m: 0 };
      return change(id, field === 'x_m' || field === 'y_m' ? { result: { ...finish, [field]: value } } : { [field]: value });
    }),
    /** @param {Partial<Noting['only']>} only */
    filter: (only) => set('filter', { only: { ...store.state.noting.only, ...only } }),
    /** @param {number} from */
    scroll: (from) => void (from !== store.state.noting.from && set('scroll', { from })),

    async exportJson() {
      await exportAs(`borrowline-${now().slice(0, 10)}.json.txt`, toJson(await db.readAll(), await db.readAllBefore(), store.state.practice.finished, phone()));
    },
    async exportCsv() {
      await exportAs(`borrowline-putts-${now().slice(0, 10)}.csv`, toCsv(await db.readAll()));
    },
    /** @param {Blob | undefined} file */
    async look(file) {
      if (!file) return;
      try {
        set('preview', { preview: preview(await db.readAll(), store.state, fromFile(await file.text())), said: '' });
      } catch (error) {
        set('no file of ours', { preview: null, said: /** @type {Error} */ (error).message });
      }
    },
    /** @param {boolean} whole settings and calibration too */
    async take(whole) {
      const found = store.state.noting.preview;
      if (!found) return;
      try {
        await db.write([...found.fresh, ...found.newer], found.before);
        const { practice } = store.state;
        const come = new Set(found.drills.map(({ id }) => id));
        const finished = [...practice.finished.filter(({ id }) => !come.has(id)), ...found.drills].sort((a, b) => (a.date < b.date ? -1 : 1));
        if (come.size) store.change('drill results', { practice: { ...practice, finished } });
        if (whole) store.change('settings and calibration', Object.fromEntries(Object.entries(found.phone ?? {}).map(([name, part]) => [name, { .../** @type {any} */ (store.state)[name], ...part }])));
        set('taken in', { preview: null, said: takenWords(found, whole) });
        await load();
      } catch (error) {
        failed(error);
      }
    },
    leave: () => set('left', { preview: null, said: 'Nothing changed.' }),
    async sample() {
      const { sample } = await import('../../records/sample.js');
      await write(sample().map(checked), { said: 'An invented player is loaded.' });
    },
    noSample: () => erase((entry) => entry.sample === true, 'The invented player is gone.'),
    /** @param {boolean} sure */
    askErase: (sure) => set('sure?', { sure }),
    async erase() {
      if (!(await erase(() => true, 'Everything is deleted.'))) return;
      const { cautioned } = store.state;
      store.change('erase all', { ...restore(null), cautioned });
    },
  };
  return act;

  function phone() {
    const { settings, player, calibration, sighted } = store.state;
    return { settings, player, calibration, sighted };
  }

  /** Phones share .txt and .csv, but no .json. @param {string} name @param {string} text */
  async function exportAs(name, text) {
    try {
      const said = await give(new File([text], name, { type: name.endsWith('.csv') ? 'text/csv' : 'text/plain' }));
      if (!said) return;
      const exported = now();
      await db.writeMark('exported', exported);
      set('exported', { exported, said });
    } catch (error) {
      failed(error);
    }
  }

  /** @param {(entry: Entry) => boolean} chosen @param {string} said */
  async function erase(chosen, said) {
    try {
      await db.erase(chosen);
      set('erased', { said, sure: false, last: '' });
      await load();
      return true;
    } catch (error) {
      failed(error);
      return false;
    }
  }
}

/** @typedef {ReturnType<typeof actions>} NoteActions */
