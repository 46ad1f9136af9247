/**
 * What a touch on the notes can do. A touch is done when it is on the disk; until then nothing is said.
 * @import {App} from '../../app.js'
 * @import {DrillEntry, Entry, NoteEntry, RecordPage, Point, PuttEntry, Refusal, State} from '../../types.js'
 */
import { plain } from '../../doubt.js';
import { refusalWords } from '../../refusal.js';
import { give } from '../../device/share.js';
import { doesNotFit, fromText, HOLE_M, unitOf } from '../../format.js';
import { giveBackup, phoneOf } from '../../records/backup.js';
import { readAll, readBefore } from '../../records/db.js';
import { RANGES, WHOLE } from '../../records/entry.js';
import { fitting } from '../../records/older.js';
import { inWords } from '../../records/record.js';
import { DRAFT, restore } from '../../records/schema.js';
import { fromFile, preview, toCsv } from '../../records/transfer.js';
import { BLANK } from './blank.js';

const COUNT = { unit: '', name: '', si: 1, digits: 0 };
/** @type {Record<string, string>} */
const UNITS_AS = {
  aim_deg: 'start_line_sd_deg',
  line_error_deg: 'start_line_sd_deg',
  felt_percent: 'slope_percent',
  x_m: 'past_m',
  y_m: 'past_m',
};
/** Numbers that an entry may do without. @param {string} kind */
const optional = (kind) => (kind === 'note' ? ['stimp_ft'] : ['line_error_deg', 'felt_percent']);

/** @param {string} field @param {import('../../types.js').Settings} settings */
export const entryUnit = (field, settings) => (WHOLE.includes(field) ? COUNT : unitOf(UNITS_AS[field] ?? field, settings));

/** Where a ball finished, as it is typed. */
export const FINISH = /** @type {const} */ ([
  ['x_m', 'Past (− short)'],
  ['y_m', 'Left (− right)'],
]);
/** @param {Point} finish */
const isIn = ({ x_m, y_m }) => Math.hypot(x_m, y_m) < HOLE_M / 2;

const now = () => new Date().toISOString();

/** @param {App} app */
export function actions({ store, engine, record }) {
  /** @param {string} action @param {Partial<RecordPage>} patch */
  const set = (action, patch) => store.change(action, { recordPage: { ...store.state.recordPage, ...patch } });
  const all = () => store.state.entries ?? [];
  const head = () => ({ id: crypto.randomUUID(), at: now(), changed: now(), place: store.state.place });

  /** @param {string} id @param {Partial<PuttEntry> | Partial<NoteEntry> | Partial<DrillEntry>} patch @returns {Promise<boolean>} */
  async function change(id, patch) {
    const done = await record.change(id, patch);
    if (store.state.recordPage.editing === id) set('earlier', { before: await readBefore(id) });
    return done;
  }

  const act = {
    /** @param {RecordPage['page']} page */
    turn: (page) =>
      store.change('turn to', {
        problem: null,
        recordPage: { ...store.state.recordPage, page, said: '', preview: null, sure: false, from: 0 },
      }),
    /** @param {number} reach_m */
    reach: (reach_m) => set('zoom', { reach_m }),
    /** @param {string} place */
    setPlace: (place) => store.change('place', { place: place.trim() }),

    /** A ball that stopped over the hole is in it. @param {PuttEntry['result']} finish @returns {Promise<boolean>} whether it was taken */
    async log(finish) {
      const { read, putt } = store.state;
      const struck = head(); // now, not when a cold engine has answered
      const result = finish === 'holed' || isIn(finish) ? 'holed' : finish;
      try {
        const fresh = read?.putt === putt;
        const meant = fresh ? read.value : await engine.ask('read', plain(putt));
        /** @type {PuttEntry} */
        const entry = {
          kind: 'putt',
          ...struck,
          text: '',
          ...putt,
          aim_deg: meant.aim_deg,
          result,
        };
        const kept = await record.write([entry]);
        if (kept)
          store.change('logged', { problem: null, recordPage: { ...store.state.recordPage, last: entry.id, said: '' } });
        return kept;
      } catch (error) {
        const refusal = /** @type {Refusal} */ (error);
        set('no such putt', {
          said:
            refusal.code === 'runs_away'
              ? 'Not logged: no ball comes to rest past this hole, so there is no line to hold it against.'
              : `Not logged: ${refusalWords(refusal, store.state.settings)}`,
        });
        return false;
      }
    },
    /** Where it finished as typed, past the hole and left of it. @param {string[]} texts @returns {Promise<boolean>} whether it was taken */
    async logTyped(texts) {
      const unit = entryUnit('x_m', store.state.settings);
      const values = texts.map((text) => fromText(text, unit));
      for (const [i, [field, label]] of FINISH.entries()) {
        const [low, high] = RANGES[field];
        if (values[i] >= low && values[i] <= high) continue;
        store.change('refuse finish', {
          problem: { field: 'finish', text: texts[i], message: doesNotFit(label, texts[i], low, high, unit) },
        });
        return false;
      }
      return act.log({ x_m: values[0], y_m: values[1] });
    },
    async undo() {
      if (await change(store.state.recordPage.last, { gone: true }))
        store.change('undone', { problem: null, recordPage: { ...store.state.recordPage, last: '', said: 'Undone.' } });
    },
    /** @param {string} id @param {string} name @param {unknown} value */
    add: (id, name, value) => change(id, { [name]: value }),
    /** @param {Partial<State['draft']>} typed */
    draft: (typed) => store.change('write', { draft: { ...store.state.draft, ...typed }, problem: null }),
    async note() {
      const { text, weather, speed } = store.state.draft;
      const unit = entryUnit('stimp_ft', store.state.settings);
      const [stimp_ft, [low, high]] = [fromText(speed, unit), RANGES.stimp_ft];
      if (speed.trim() && !(stimp_ft >= low && stimp_ft <= high)) {
        return store.change('refuse note', {
          problem: { field: 'note-speed', text: speed, message: doesNotFit('Green speed', speed, low, high, unit) },
        });
      }
      if (!`${text}${weather}${speed}`.trim()) return;
      /** @type {NoteEntry} */
      const entry = {
        kind: 'note',
        ...head(),
        text: text.trim(),
        ...(weather.trim() && { weather: weather.trim() }),
        ...(speed.trim() && { stimp_ft }),
      };
      if (await record.write([entry], [], { draft: DRAFT }))
        store.change('noted', { problem: null, recordPage: { ...store.state.recordPage, said: 'Noted.' } });
    },

    /** @param {string} id */
    async edit(id) {
      store.change('edit', { problem: null, recordPage: { ...store.state.recordPage, editing: id, before: [], said: '' } });
      set('earlier', { before: await readBefore(id) });
    },
    /** As it was. @param {Entry} old */
    async putBack(old) {
      if (await record.write([{ ...old, changed: now() }])) set('put back', { before: await readBefore(old.id) });
    },
    close: () =>
      store.change('close entry', { recordPage: { ...store.state.recordPage, editing: '', before: [] }, problem: null }),
    /** A typed number of an entry; empty takes it away where it may be missing. @param {string} id @param {string} field @param {string} label @param {string} text */
    async enter(id, field, label, text) {
      const entry = all().find((each) => each.id === id);
      if (!entry) return;
      const unit = entryUnit(field, store.state.settings);
      const value = fromText(text, unit);
      const [low, high] = RANGES[field];
      if (store.state.problem?.field === field) store.change('typed anew', { problem: null });
      if (!text.trim() && optional(entry.kind).includes(field)) return change(id, { [field]: undefined });
      if (!(value >= low && value <= high) || (WHOLE.includes(field) && !Number.isInteger(value)))
        return store.change('refuse entry', { problem: { field, text, message: doesNotFit(label, text, low, high, unit) } });
      if (field !== 'x_m' && field !== 'y_m') return change(id, { [field]: value });
      const finish = {
        ...(entry.kind === 'putt' && entry.result !== 'holed' ? entry.result : { x_m: 0, y_m: 0 }),
        [field]: value,
      };
      if (isIn(finish))
        return store.change('refuse entry', {
          problem: { field, text, message: 'That is over the hole: such a ball is holed.' },
        });
      return change(id, { result: finish });
    },
    /** @param {Partial<RecordPage['only']>} only */
    filter: (only) => set('filter', { only: { ...store.state.recordPage.only, ...only }, from: 0 }),
    /** @param {number} from */
    scroll: (from) => void (from !== store.state.recordPage.from && set('scroll', { from })),

    async exportJson() {
      try {
        const said = await giveBackup(store.state);
        if (said) set('given', { said });
        if (said) await record.mark(now());
      } catch (error) {
        set('not given', { said: inWords(error) });
      }
    },
    async exportCsv() {
      const putts = toCsv(fitting(await readAll()));
      const said = await give(new File([putts], `borrowline-putts-${now().slice(0, 10)}.csv`, { type: 'text/csv' }));
      if (said) set('given', { said });
    },
    /** What was set aside is let go of. */
    letGo: () => store.change('let go of what does not fit', { aside: [] }),
    /** @param {Blob | undefined} file */
    async look(file) {
      if (!file) return;
      try {
        set('preview', { preview: preview(await readAll(), phoneOf(store.state), fromFile(await file.text())), said: '' });
      } catch (error) {
        set('no file of ours', { preview: null, said: /** @type {Error} */ (error).message });
      }
    },
    /** @param {boolean} whole settings and calibration too */
    async take(whole) {
      const found = store.state.recordPage.preview;
      if (!found) return;
      const parts = Object.entries(whole ? (found.phone ?? {}) : {});
      const patch = Object.fromEntries(
        parts.map(([name, part]) => [name, { .../** @type {any} */ (store.state)[name], ...part }]),
      );
      if (!(await record.merge([...found.fresh, ...found.newer], found.before, patch))) return;
      const kept = new Map(all().map(({ id, changed }) => [id, changed]));
      const [fresh, newer] = [found.fresh, found.newer].map(
        (some) => some.filter(({ id, changed }) => kept.get(id) === changed).length,
      );
      set('taken in', { preview: null, said: `${fresh} new, ${newer} changed${whole ? ', settings and calibration' : ''}.` });
    },
    leave: () => set('left', { preview: null, said: 'Nothing changed.' }),
    async sample() {
      const { sample } = await import('../../records/sample.js');
      if (await record.write(sample())) set('invented', { said: 'An invented player is loaded.' });
    },
    async noSample() {
      if (await record.erase((entry) => entry.sample === true))
        set('no longer invented', { said: 'The invented player is gone.', only: BLANK.only });
    },
    /** @param {boolean} sure */
    askErase: (sure) => set('sure?', { sure }),
    async erase() {
      if (await record.erase(() => true, { ...restore(null), cautioned: store.state.cautioned }))
        store.change('erase all', { recordPage: { ...BLANK, page: 'file', said: 'Everything is deleted.' } });
    },
  };
  return act;
}

/** @typedef {ReturnType<typeof actions>} RecordActions */
