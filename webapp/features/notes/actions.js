/**
 * What a touch on the notes can do. A touch is done when it is on the disk; until then nothing is said.
 * @import {App} from '../../app.js'
 * @import {DrillEntry, NoteEntry, Noting, PuttEntry} from '../../types.js'
 */
import { give } from '../../device/share.js';
import { doesNotFit, fromText, HOLE_M, unitOf } from '../../format.js';
import { readAll, readAllBefore, readBefore } from '../../records/db.js';
import { RANGES, WHOLE } from '../../records/entry.js';
import { restore } from '../../records/schema.js';
import { fromFile, preview, toCsv, toJson } from '../../records/transfer.js';

const COUNT = { unit: '', name: '', si: 1, digits: 0 };
/** @type {Record<string, string>} */
const UNITS_AS = { aim_deg: 'start_line_sd_deg', line_error_deg: 'start_line_sd_deg', felt_percent: 'slope_percent', x_m: 'past_m', y_m: 'past_m' };
/** Numbers that an entry may do without. @param {string} kind */
const optional = (kind) => (kind === 'note' ? ['stimp_ft'] : ['line_error_deg', 'felt_percent']);

/** @param {string} field @param {import('../../types.js').Settings} settings */
export const entryUnit = (field, settings) => (WHOLE.includes(field) ? COUNT : unitOf(UNITS_AS[field] ?? field, settings));

const now = () => new Date().toISOString();

/** @param {App} app */
export function actions({ store, engine, record }) {
  /** @param {string} action @param {Partial<Noting>} patch */
  const set = (action, patch) => store.change(action, { noting: { ...store.state.noting, ...patch } });
  const all = () => store.state.entries ?? [];
  const head = () => ({ id: crypto.randomUUID(), at: now(), changed: now(), place: store.state.place });

  /** @param {string} id @param {Partial<PuttEntry> | Partial<NoteEntry> | Partial<DrillEntry>} patch @returns {Promise<boolean>} */
  async function change(id, patch) {
    const done = await record.change(id, patch);
    if (store.state.noting.editing === id) set('earlier', { before: await readBefore(id) });
    return done;
  }

  const act = {
    /** @param {Noting['page']} page */
    turn: (page) => set('turn to', { page, said: '', preview: null, sure: false, from: 0 }),
    /** @param {number} reach_m */
    reach: (reach_m) => set('zoom', { reach_m }),
    /** @param {string} place */
    setPlace: (place) => store.change('place', { place: place.trim() }),

    /** A ball that stopped over the hole is in it. @param {PuttEntry['result']} finish */
    async log(finish) {
      const { read, putt } = store.state;
      const result = finish === 'holed' || Math.hypot(finish.x_m, finish.y_m) < HOLE_M / 2 ? 'holed' : finish;
      try {
        const fresh = read?.putt === putt;
        const meant = fresh ? read.value : await engine.ask('read', putt);
        /** @type {PuttEntry} */
        const entry = { kind: 'putt', ...head(), text: '', ...putt, aim_deg: meant.aim_deg, result };
        if (await record.write([entry])) set('logged', { last: entry.id, said: '' });
      } catch (error) {
        set('no such putt', { said: `Not logged: ${/** @type {Error} */ (error).message}.` });
      }
    },
    async undo() {
      if (await change(store.state.noting.last, { gone: true })) set('undone', { last: '', said: 'Undone.' });
    },
    /** @param {string} id @param {string} name @param {unknown} value */
    add: (id, name, value) => change(id, { [name]: value }),
    /** @param {{text: string, weather: string, speed: string}} written @returns {Promise<boolean>} whether it was taken */
    async note({ text, weather, speed }) {
      const unit = entryUnit('stimp_ft', store.state.settings);
      const [stimp_ft, [low, high]] = [fromText(speed, unit), RANGES.stimp_ft];
      if (speed.trim() && !(stimp_ft >= low && stimp_ft <= high)) {
        store.change('refuse note', { problem: { field: 'note-speed', text: speed, message: doesNotFit('Green speed', speed, low, high, unit) } });
        return false;
      }
      if (!`${text}${weather}${speed}`.trim()) return false;
      /** @type {NoteEntry} */
      const entry = { kind: 'note', ...head(), text: text.trim(), ...(weather.trim() && { weather: weather.trim() }), ...(speed.trim() && { stimp_ft }) };
      const kept = await record.write([entry]);
      if (kept) store.change('noted', { problem: null, noting: { ...store.state.noting, said: 'Noted.' } });
      return kept;
    },

    /** @param {string} id */
    async edit(id) {
      set('edit', { editing: id, before: [], said: '' });
      set('earlier', { before: await readBefore(id) });
    },
    close: () => store.change('close entry', { noting: { ...store.state.noting, editing: '', before: [] }, problem: null }),
    /** A typed number of an entry; empty takes it away where it may be missing. @param {string} id @param {string} field @param {string} label @param {string} text */
    async enter(id, field, label, text) {
      const entry = all().find((each) => each.id === id);
      if (!entry) return;
      const unit = entryUnit(field, store.state.settings);
      const value = fromText(text, unit);
      const [low, high] = RANGES[field];
      if (store.state.problem?.field === field) store.change('typed anew', { problem: null });
      if (!text.trim() && optional(entry.kind).includes(field)) return change(id, { [field]: undefined });
      if (!(value >= low && value <= high) || (WHOLE.includes(field) && !Number.isInteger(value))) return store.change('refuse entry', { problem: { field, text, message: doesNotFit(label, text, low, high, unit) } });
      if (field !== 'x_m' && field !== 'y_m') return change(id, { [field]: value });
      const finish = entry.kind === 'putt' && entry.result !== 'holed' ? entry.result : { x_m: 0, y_m: 0 };
      return change(id, { result: { ...finish, [field]: value } });
    },
    /** @param {Partial<Noting['only']>} only */
    filter: (only) => set('filter', { only: { ...store.state.noting.only, ...only }, from: 0 }),
    /** @param {number} from */
    scroll: (from) => void (from !== store.state.noting.from && set('scroll', { from })),

    async exportJson() {
      const entries = [...(await readAll()), ...store.state.unkept];
      await exportAs(`borrowline-${now().slice(0, 10)}.json.txt`, toJson(entries, await readAllBefore(), phone()));
    },
    async exportCsv() {
      await exportAs(`borrowline-putts-${now().slice(0, 10)}.csv`, toCsv(await readAll()));
    },
    /** @param {Blob | undefined} file */
    async look(file) {
      if (!file) return;
      try {
        set('preview', { preview: preview(await readAll(), phone(), fromFile(await file.text())), said: '' });
      } catch (error) {
        set('no file of ours', { preview: null, said: /** @type {Error} */ (error).message });
      }
    },
    /** @param {boolean} whole settings and calibration too */
    async take(whole) {
      const found = store.state.noting.preview;
      if (!found || !(await record.write([...found.fresh, ...found.newer], found.before))) return;
      if (whole) store.change('settings and calibration', Object.fromEntries(Object.entries(found.phone ?? {}).map(([name, part]) => [name, { .../** @type {any} */ (store.state)[name], ...part }])));
      set('taken in', { preview: null, said: `${found.fresh.length} new, ${found.newer.length} changed${whole ? ', settings and calibration' : ''}.` });
    },
    leave: () => set('left', { preview: null, said: 'Nothing changed.' }),
    async sample() {
      const { sample } = await import('../../records/sample.js');
      if (await record.write(sample())) set('invented', { said: 'An invented player is loaded.' });
    },
    async noSample() {
      if (await record.erase((entry) => entry.sample === true)) set('no longer invented', { said: 'The invented player is gone.' });
    },
    /** @param {boolean} sure */
    askErase: (sure) => set('sure?', { sure }),
    async erase() {
      if (!(await record.erase(() => true))) return;
      const { cautioned } = store.state;
      store.change('erase all', { ...restore(null), cautioned });
      set('erased', { said: 'Everything is deleted.', sure: false, last: '' });
    },
  };
  return act;

  function phone() {
    const { settings, player, calibration, sighted } = store.state;
    return { settings, player, calibration, sighted };
  }

  /** Phones share .txt and .csv, but no .json. @param {string} name @param {string} text */
  async function exportAs(name, text) {
    const said = await give(new File([text], name, { type: name.endsWith('.csv') ? 'text/csv' : 'text/plain' }));
    if (said && (await record.mark(now()))) set('given', { said });
  }
}

/** @typedef {ReturnType<typeof actions>} NoteActions */
