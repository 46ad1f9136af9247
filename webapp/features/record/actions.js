/**
 * What a touch on the notes can do. A touch is done when it is on the disk; until then nothing is said.
 * @import {App} from '../../app.js'
 * @import {Left} from '../../parts/leave.js'
 * @import {DrillEntry, Entry, NoteEntry, RecordPage, Point, PuttEntry, Refusal, RoundEntry, State} from '../../types.js'
 */
import { pick } from '../../pick.js';
import { plain } from '../../doubt.js';
import { refusalWords } from '../../refusal.js';
import { give } from '../../device/share.js';
import { aimField, doesNotFit, fromText, today } from '../../format.js';
import { giveBackup } from '../../records/backup.js';
import { after } from '../../records/clock.js';
import { readAll, readBefore } from '../../records/db.js';
import { RANGES, WHOLE } from '../../records/checks.js';
import { fitting } from '../../records/older.js';
import { inWords } from '../../records/record.js';
import { DRAFT } from './kept.js';
import { fileOf, withPictureOf } from '../../records/pictures.js';
import { toCsv } from '../../records/table.js';
import { fromFile, preview } from '../../records/transfer.js';
import { BLANK } from './blank.js';
import { entryUnit, FINISH, fromCentre, fromEdge, isIn } from './finish.js';

/** Numbers that an entry may do without. @param {string} kind */
const optional = (kind) => (kind === 'note' ? ['stimp_ft'] : ['line_error_deg', 'felt_percent']);

const isDay = (/** @type {string} */ day) => !Number.isNaN(Date.parse(day));
/** The same hour of another day. @param {string} day @returns {{at?: string}} */
function onDay(day) {
  if (!day) return {};
  const [at, then] = [new Date(), new Date(day)];
  at.setFullYear(then.getUTCFullYear(), then.getUTCMonth(), then.getUTCDate());
  return { at: at.toISOString() };
}
const now = () => new Date().toISOString();

/** @param {App} app */
export function actions({ store, engine, record, parts }) {
  /** @param {string} action @param {Partial<RecordPage>} patch */
  const set = (action, patch) => store.change(action, { recordPage: { ...store.state.recordPage, ...patch } });
  const all = () => store.state.entries ?? [];
  const head = () => ({ id: crypto.randomUUID(), at: now(), changed: now(), place: store.state.place });

  /**
   * @param {string} id @param {Partial<PuttEntry> | Partial<NoteEntry> | Partial<DrillEntry> | Partial<RoundEntry>} patch
   * @returns {Promise<boolean>}
   */
  async function change(id, patch) {
    const done = await record.change(id, patch);
    if (store.state.recordPage.editing === id) set('earlier', { before: await readBefore(id) });
    return done;
  }

  /** @param {string} text @param {string} message */
  function refuseFinish(text, message) {
    store.change('refuse finish', { problem: { field: 'finish', text, message } });
    return false;
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

    /** @param {Partial<State['logging']>} how */
    logs: (how) => store.change('log so', { logging: { ...store.state.logging, ...how } }),
    /** @param {string} day */
    setDay(day) {
      const known = isDay(day);
      set('log for a day', { day: known && day < today() ? day : '' });
      if (day && !known)
        store.change('no such day', { problem: { field: 'day', text: day, message: `${day} is no day of the calendar.` } });
    },

    /**
     * A ball that stopped over the hole is in it.
     * @param {PuttEntry['result']} finish @param {Left} [left] @returns {Promise<boolean>} whether it was taken
     */
    async log(finish, left = {}) {
      const { read: known, putt, logging, recordPage } = store.state;
      const struck = head(); // now, not when a cold engine has answered
      const result = typeof finish === 'object' && isIn(finish) ? 'holed' : finish;
      try {
        const meant =
          known?.putt === putt ? known.value : logging.read === 'app' ? await engine.ask('read', plain(putt)) : null;
        const played = {
          ...(logging.read && { read: logging.read }),
          ...(logging.read === 'app' && meant && { aim_deg: meant.aim_deg }),
        };
        /** @type {PuttEntry} */
        const entry = { kind: 'putt', ...struck, ...onDay(recordPage.day), text: '', ...putt, ...played, result, ...left };
        const kept = await record.write([entry]);
        if (kept) {
          const { logged } = store.state.recordPage;
          store.change('logged', {
            problem: null,
            recordPage: { ...store.state.recordPage, logged: [...logged, entry.id], said: '' },
          });
        }
        return kept;
      } catch (error) {
        const refusal = /** @type {Refusal} */ (error);
        set('no such putt', {
          said:
            refusal.code === 'runs_away'
              ? 'Not logged: no ball comes to rest past this hole, so the app has no aim here.'
              : `Not logged: ${refusalWords(refusal, store.state.settings)}`,
        });
        return false;
      }
    },
    /**
     * Where it finished as typed, from the hole's edge, past and left.
     * @param {Record<'x_m' | 'y_m', string>} texts @returns {Promise<boolean>} whether it was taken
     */
    async logTyped(texts) {
      const unit = entryUnit('x_m', store.state.settings);
      const finish = { x_m: 0, y_m: 0 };
      for (const [field, label] of FINISH) {
        const text = texts[field];
        const [low, high] = RANGES[field];
        finish[field] = text.trim() ? fromText(text, unit) : 0;
        if (!(finish[field] >= low && finish[field] <= high))
          return refuseFinish(text, doesNotFit(label, text, low, high, unit));
      }
      if (!finish.x_m && !finish.y_m)
        return refuseFinish(texts.x_m, 'At the edge it would drop: touch Holed, or say how far off it stopped.');
      return act.log(fromCentre(finish));
    },
    async undo() {
      const { logged } = store.state.recordPage;
      const last = logged.at(-1);
      if (last && (await change(last, { gone: true })))
        store.change('taken back', {
          problem: null,
          recordPage: { ...store.state.recordPage, logged: logged.slice(0, -1), said: 'Taken back.' },
        });
    },
    /** @param {string} id @param {string} name @param {unknown} value */
    add: (id, name, value) => change(id, { [name]: value }),
    /** @param {string} picture */
    givePicture: async (picture) => set('give picture', { said: await give(fileOf(picture)) }),
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
      const now = all().find(({ id }) => id === old.id);
      const changed = after(now?.changed ?? old.changed);
      if (await record.write([withPictureOf(now, { ...old, changed })])) set('put back', { before: await readBefore(old.id) });
    },
    close: () =>
      store.change('close entry', { recordPage: { ...store.state.recordPage, editing: '', before: [] }, problem: null }),
    /**
     * A typed number of an entry; empty takes it away where it may be missing.
     * @param {string} id @param {string} field @param {string} label @param {string} text
     */
    async enter(id, field, label, text) {
      const entry = all().find((each) => each.id === id);
      if (!entry) return;
      const unit = entryUnit(field, store.state.settings);
      const value = fromText(text, unit);
      const [low, high] = pick(RANGES, field);
      if (store.state.problem?.field === field) store.change('typed anew', { problem: null });
      if (!text.trim() && optional(entry.kind).includes(field)) return change(id, { [field]: undefined });
      if (!(value >= low && value <= high) || (WHOLE.includes(field) && !Number.isInteger(value)))
        return store.change('refuse entry', { problem: { field, text, message: doesNotFit(label, text, low, high, unit) } });
      if (field !== 'x_m' && field !== 'y_m') return change(id, { [field]: value });
      const was = entry.kind === 'putt' && typeof entry.result === 'object' ? fromEdge(entry.result) : { x_m: 0, y_m: 0 };
      const finish = { ...was, [field]: value };
      if (!finish.x_m && !finish.y_m)
        return store.change('refuse entry', { problem: { field, text, message: 'At the edge it would drop: say holed.' } });
      return change(id, { result: fromCentre(finish), side: undefined, length: undefined });
    },
    /** Holed, or missed with what is known of it. @param {string} id @param {'holed' | 'missed'} result @param {Left} [left] */
    setResult: (id, result, left = {}) => change(id, { result, side: left.side, length: left.length }),
    /** @param {string} id @param {string} text */
    async enterAim(id, text) {
      const entry = all().find((each) => each.id === id);
      if (entry?.kind !== 'putt') return;
      if (store.state.problem?.field === 'aim_deg') store.change('typed anew', { problem: null });
      const aim_deg = text.trim() ? aimField(store.state.settings, entry.distance_m).deg(text) : undefined;
      const [low, high] = RANGES.aim_deg;
      if (aim_deg === undefined || (aim_deg >= low && aim_deg <= high)) return change(id, { aim_deg });
      return store.change('refuse entry', {
        problem: { field: 'aim_deg', text, message: `“${text}” is no aim; − is right of the cup.` },
      });
    },
    /** @param {Partial<RecordPage['only']>} only */
    filter: (only) => set('filter', { only: { ...store.state.recordPage.only, ...only }, from: 0 }),
    /** @param {number} from */
    scroll: (from) => void (from !== store.state.recordPage.from && set('scroll', { from })),

    async exportJson() {
      try {
        const said = await giveBackup(store.state, parts);
        if (said) set('given', { said });
        if (said) await record.mark(now());
      } catch (error) {
        set('not given', { said: inWords(error) });
      }
    },
    async exportCsv() {
      const putts = toCsv(fitting(await readAll()));
      const said = await give(new File([putts], `borrowline-putts-${today()}.csv`, { type: 'text/csv' }));
      if (said) set('given', { said });
    },
    /** What was set aside is let go of. */
    letGo: () => store.change('let go of what does not fit', { aside: [] }),
    /** @param {Blob | undefined} file */
    async look(file) {
      if (!file) return;
      try {
        set('preview', { preview: preview(await readAll(), store.state, fromFile(await file.text(), parts)), said: '' });
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
      if (!(await record.merge([...found.fresh, ...found.newer, ...found.edited], found.before, patch))) return;
      const kept = new Map(all().map(({ id, changed }) => [id, changed]));
      const [fresh, newer] = [found.fresh, [...found.newer, ...found.edited]].map(
        (some) => some.filter(({ id, changed }) => kept.get(id) === changed).length,
      );
      set('taken in', { preview: null, said: `${fresh} new, ${newer} changed${whole ? ', settings and calibration' : ''}.` });
    },
    /** The file beside the own record, read only. */
    beside() {
      const found = store.state.recordPage.preview;
      if (!found) return;
      record.look(found.name || 'the record of the file', found.all);
      store.change('looking', { recordPage: { ...store.state.recordPage, preview: null, page: 'list', logged: [] } });
    },
    /** @param {string} name */
    setName: (name) => store.change('name', { settings: { ...store.state.settings, name: name.trim() } }),
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
      if (await record.erase(() => true, { ...parts.restore(null), cautioned: store.state.cautioned }))
        store.change('erase all', { recordPage: { ...BLANK, page: 'file', said: 'Everything is deleted.' } });
    },
  };
  return act;
}

/** @typedef {ReturnType<typeof actions>} RecordActions */
