/**
 * Settings, calibration, drafts and the session, kept in the database as they change. What the first paint needs lies in
 * localStorage besides, since that is there at once; browsers write it to the disk late, so it is never the truth.
 * @import {Store} from '../store.js'
 * @import {State} from '../types.js'
 * @import {Misfit} from './part.js'
 * @import {Parts} from './parts.js'
 * @import {Records} from './record.js'
 */
import { isNewer as isNewerStore, onOtherTab, readMarks } from './db.js';
import { inWords, NEWER } from './record.js';
import { isNewer, SCHEMA } from './schema.js';

const KEY = 'borrowline';
/** Between two writes of what changes under the finger. */
const PAUSE_MS = 200;
const PAINT_PAUSE_MS = 300;
/** After which an opening is said to take long; and between one try and the next. */
const LATE_MS = 3000;
const AGAIN_MS = { first: 500, most: 30_000 };
const LATE = 'The phone’s storage has not opened yet. What you do now is kept as soon as it has.';

/** @param {Parts} parts */
export function load(parts) {
  const data = painted();
  return {
    ...restored(parts, data),
    aside: /** @type {State['aside']} */ ([]),
    damaged: /** @type {string[]} */ ([]),
    keptByNewer: isNewer(data),
    unopened: '',
    trouble: isNewer(data) ? NEWER : '',
  };
}

function painted() {
  try {
    return JSON.parse(localStorage.getItem(KEY) ?? 'null');
  } catch {
    return null;
  }
}

/** Whatever is on the disk, the app starts. @param {Parts} parts @param {unknown} data @param {Misfit[]} [aside] */
function restored(parts, data, aside) {
  try {
    return parts.restore(data, aside);
  } catch (error) {
    console.warn('Nothing of it fits.', error);
    aside?.push({ what: 'everything', value: data });
    return parts.restore(null);
  }
}

/** @param {Parts} parts @param {State} state */
function paint({ painted }, state) {
  const text = JSON.stringify({ schema: SCHEMA, ...Object.fromEntries(painted.map((name) => [name, state[name]])) });
  try {
    localStorage.setItem(KEY, text);
  } catch (error) {
    console.warn('The next start paints an older read.', error);
  }
}

const same = (/** @type {unknown} */ a, /** @type {unknown} */ b) => JSON.stringify(a) === JSON.stringify(b);
const pause = (/** @type {number} */ ms) => new Promise((resolve) => setTimeout(resolve, ms));

/**
 * What was changed before the truth was known, on the truth.
 * @template T
 * @param {T} base @param {T} mine @param {T} truth @returns {T}
 */
function touched(base, mine, truth) {
  if (mine === base) return same(mine, truth) ? mine : truth;
  if (typeof mine !== 'object' || !mine || !base || !truth) return mine;
  const changed = Object.entries(mine).filter(([name, value]) => value !== /** @type {any} */ (base)[name]);
  return { ...truth, ...Object.fromEntries(changed) };
}

/**
 * The picture of an older version tells of the same entries as what it moves over from.
 * @template {{id: string}} T
 * @param {T[]} own @param {T[]} truth
 */
function joined(own, truth) {
  const ids = new Set(own.map(({ id }) => id));
  return [...own, ...truth.filter(({ id }) => !ids.has(id))];
}

/**
 * @param {Store} store @param {Pick<Records, 'keep' | 'settled'>} record @param {Parts} parts
 * @returns {Promise<void>} when what is kept has been read, or a newer app's is left alone
 */
export function keepSaved(store, record, parts) {
  /** What lies on the disk, as text by part. @type {Map<string, string>} */
  const disk = new Map();
  let read = false;
  let writing = false;
  let told = false;
  /** Something changed by a single touch, which may be the last before the page goes. */
  let hurried = false;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let timer;
  let last = -PAUSE_MS;

  /** @param {Record<string, unknown>} rows */
  function lies(rows) {
    for (const [name, value] of Object.entries(rows)) disk.set(name, JSON.stringify(value));
  }

  async function write(leaving = false) {
    clearTimeout(timer);
    timer = undefined;
    if (!read || (writing && !leaving) || store.state.keptByNewer) return;
    writing = true;
    // A note that is being written takes its draft along: what is kept of that comes after it
    if (!leaving) await record.settled();
    const { state } = store;
    hurried = false;
    const rows = Object.fromEntries(
      Object.entries(parts.rowsOf(state)).filter(([name, value]) => disk.get(name) !== JSON.stringify(value)),
    );
    const { unkept } = state;
    if (!unkept.length && !Object.keys(rows).length) {
      writing = false;
      return;
    }
    last = performance.now();
    const error = await record.keep(unkept, { ...rows, schema: SCHEMA });
    writing = false;
    if (!error) {
      lies(rows);
      told = false;
      soon(hurried || store.state.unkept.length ? 0 : PAUSE_MS);
    } else {
      if (!told) store.change('not kept', { trouble: error });
      told = true;
      setTimeout(soon, AGAIN_MS.most / 6);
    }
  }
  /** What is over waits for nothing, and a touch that no other follows. */
  function soon(pause = PAUSE_MS) {
    if (pause) timer ??= setTimeout(() => write(), Math.max(0, last + pause - performance.now()));
    else void write();
  }

  /** @returns {Promise<Record<string, unknown> | null>} null where a newer app's is */
  async function opened() {
    const late = setTimeout(() => store.change('storage opens late', { unopened: LATE }), LATE_MS);
    for (let wait = AGAIN_MS.first; ; wait = Math.min(2 * wait, AGAIN_MS.most))
      try {
        const marks = await readMarks();
        clearTimeout(late);
        return isNewer(marks) ? null : marks;
      } catch (error) {
        clearTimeout(late);
        if (isNewerStore(error)) return null;
        store.change('storage does not open', {
          unopened: `${inWords(error)} It is tried again; until then nothing is kept.`,
        });
        await pause(wait);
      }
  }

  const base = store.state;
  async function open() {
    if (base.keptByNewer) return;
    const marks = await opened();
    if (!marks) return store.change('kept by a newer app', { keptByNewer: true, trouble: NEWER, unopened: '' });
    // What the first versions kept in localStorage moves over once; from then on that is no more than a picture
    const known = typeof marks.schema === 'number';
    /** @type {Misfit[]} */
    const misfits = [];
    const truth = restored(parts, known ? { ...parts.wholeOf(marks), schema: marks.schema } : painted(), misfits);
    const { state } = store;
    const patch = Object.fromEntries(
      parts.kept
        .filter((name) => name in truth)
        .map((name) => [name, touched(base[name], state[name], /** @type {any} */ (truth)[name])]),
    );
    patch.aside = [...(Array.isArray(marks.aside) ? marks.aside : []), ...misfits];
    for (const name of parts.going(truth)) patch[name] = /** @type {Partial<State>} */ (truth)[name];
    if (known) lies(marks);
    read = true;
    // what was said of the storage meanwhile is over
    const over = store.state.unopened ? { unopened: '', trouble: '' } : {};
    store.change('kept', { ...patch, ...over, unkept: joined(state.unkept, truth.unkept) });
    await write();
    paint(parts, store.state);
  }

  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let painting;
  function repaint() {
    clearTimeout(painting);
    painting = undefined;
    if (read) paint(parts, store.state);
  }
  let heard = false;
  store.subscribe((state, before) => {
    if (heard || state.keptByNewer) return;
    const differs = (/** @type {keyof State} */ name) => state[name] !== before[name];
    if (parts.painted.some(differs)) {
      clearTimeout(painting);
      painting = setTimeout(repaint, PAINT_PAUSE_MS);
    }
    const over = state.unkept.length > before.unkept.length;
    const touched = parts.atOnce.some(differs);
    hurried ||= touched;
    if (over || parts.kept.some(differs)) soon(over || touched ? 0 : PAUSE_MS);
  });

  // Else the next change here would write over what another tab has kept meanwhile
  onOtherTab(({ parts: rows }) => {
    const { schema: _, ...news } = rows;
    if (isNewer(rows)) return store.change('kept by a newer app', { keptByNewer: true, trouble: NEWER });
    if (!read || !Object.keys(news).length) return;
    heard = true;
    lies(news);
    /** @type {Partial<State>} */
    const theirs = restored(parts, parts.wholeOf({ ...parts.rowsOf(store.state), ...news }));
    // The putt in hand and a session that runs here stay this tab's own
    const own = [...parts.ofTab, ...parts.going(store.state)];
    const names = parts.kept.filter((name) => name in theirs && !own.includes(name) && !same(theirs[name], store.state[name]));
    store.change('kept in another tab', Object.fromEntries(names.map((name) => [name, theirs[name]])));
    heard = false;
  });
  const leave = () => {
    if (painting !== undefined) repaint();
    void write(true);
  };
  addEventListener('pagehide', leave);
  document.addEventListener('visibilitychange', () => document.hidden && leave());
  return open().catch((error) => console.warn('What is kept was not read.', error));
}
