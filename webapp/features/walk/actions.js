/**
 * What a touch on the walked green can do, and the phone itself by lying still. Each reading is on the disk before it is said.
 * @import {App} from '../../app.js'
 * @import {GreenEntry, OnMap, State, WalkPage} from '../../types.js'
 * @typedef {{beta_deg: number, gamma_deg: number}} Angles
 */
import { pick } from '../../pick.js';
import { give } from '../../device/share.js';
import { say } from '../../device/speech.js';
import { createTilt } from '../../device/tilt.js';
import { createWake } from '../../device/wake.js';
import { rangeOf } from '../../fields.js';
import { today } from '../../format.js';
import { typed } from '../../parts/typed.js';
import { GREEN } from '../../records/entry.js';
import { refusalWords } from '../../refusal.js';
import { toJson } from '../../records/transfer.js';
import { greenOf, greensOf, keptOf, placedOf, puttsOf } from './greens.js';
import { MOST, nextOf, placeSaid, SIDE_M, unitFor } from './plan.js';

/** A phone that has lain still this long, s, has settled. */
const SETTLED_S = 2;
/** A phone that lies shows no more than its last digits change, degrees; one in the hand does. */
const STILL_DEG = 0.25;
/** A slope read off another level is as good as its last digit. */
const TYPED_SD_PERCENT = 0.1;
const LEAST_SD_PERCENT = rangeOf('PointFields', 'sd_percent').low;
/** @satisfies {Record<string, [string, number, number]>} */
const NUMBERS = {
  slope_percent: ['Slope', ...ends('slope_percent')],
  fall_deg: ['Falls', ...ends('fall_deg')],
  x_m: ['From the left', ...ends('x_m')],
  y_m: ['On', ...ends('y_m')],
  breadth_m: ['Breadth', ...GREEN.side_m],
  length_m: ['Length', ...GREEN.side_m],
};

/** @param {'slope_percent' | 'fall_deg' | 'x_m' | 'y_m'} name @returns {[number, number]} */
function ends(name) {
  const { low, high } = rangeOf('PointFields', name);
  return [low, high];
}

/** @param {number} value @param {number} digits */
const rounded = (value, digits) => Number(value.toFixed(digits));
/** @param {OnMap} at @returns {OnMap} */
const exact = ([x, y]) => [rounded(x, 3), rounded(y, 3)];

/** A reading with as many digits as it has. @param {GreenEntry['points'][number]} point */
const kept = ({ x_m, y_m, slope_percent, fall_deg, sd_percent }) => ({
  x_m: rounded(x_m, 3),
  y_m: rounded(y_m, 3),
  slope_percent: rounded(slope_percent, 3),
  fall_deg: rounded(fall_deg, 1),
  sd_percent: rounded(sd_percent, 3),
});

/** Whether the phone lay then as it does now. @param {Angles[]} now @returns {(then: Angles) => boolean} */
function alike(now) {
  const last = pick(now, now.length - 1);
  return ({ beta_deg, gamma_deg }) =>
    Math.max(Math.abs(beta_deg - last.beta_deg), Math.abs(gamma_deg - last.gamma_deg)) <= STILL_DEG;
}

/** @param {App} app */
export function actions({ store, record, engine }) {
  /** @param {string} action @param {Partial<WalkPage>} patch */
  const set = (action, patch) => store.change(action, { walkPage: { ...store.state.walkPage, ...patch }, problem: null });
  const wake = createWake();
  const tilt = createTilt((tilt) => store.change('tilt', { walkPage: { ...store.state.walkPage, tilt } }));

  /** @param {(green: GreenEntry) => Partial<GreenEntry>} patch from the green as the last change has left it */
  async function change(patch) {
    const green = greenOf(store.state);
    return green ? record.change(green.id, (entry) => patch(/** @type {GreenEntry} */ (entry))) : false;
  }

  /** @param {State} state */
  function next(state) {
    const green = greenOf(state);
    return green && nextOf(state, green);
  }

  /** A reading that is being written takes no other beside it. */
  let taking = false;
  /** @param {{slope_percent: number, fall_deg: number}} slope @param {number} sd @param {OnMap} [at] */
  async function take({ slope_percent, fall_deg }, sd, at = next(store.state)) {
    const green = greenOf(store.state);
    if (!green || !at || taking) return false;
    if (green.points.length >= MOST) {
      set('full', { told: `A green takes ${MOST} readings.` });
      return false;
    }
    const point = kept({ x_m: at[0], y_m: at[1], slope_percent, fall_deg, sd_percent: Math.max(LEAST_SD_PERCENT, sd) });
    taking = true;
    const done = await change(({ points }) => ({ points: [...points, point] }));
    taking = false;
    if (!done) return false;
    const { x_m: _, y_m: __, slope_percent: ___, fall_deg: ____, ...draft } = store.state.walkPage.draft;
    set('taken', { draft });
    return true;
  }

  /** Takes what the phone feels, once it lies still, and only after it has been lifted from the place before. */
  async function feel() {
    const { screen, walkPage, answers, refusals, engine } = store.state;
    const { tilt: felt, lifted } = walkPage;
    if (screen !== 'walk' || felt.kind !== 'live' || taking || engine.kind !== 'ready') return;
    const range = (/** @type {'beta_deg' | 'gamma_deg'} */ angle) => {
      const shown = felt.readings.map((each) => each[angle]);
      return Math.max(...shown) - Math.min(...shown);
    };
    const still = Math.max(range('beta_deg'), range('gamma_deg')) <= STILL_DEG && !refusals.laid;
    if (!lifted) {
      if (!still) set('lifted', { lifted: true });
      return;
    }
    const { laid } = answers;
    if (!still || felt.seconds < SETTLED_S || !laid || !laid.asked.readings.every(alike(felt.readings))) return;
    if (!(await take(laid, laid.slope_sd_percent))) return;
    tilt.again();
    set('taken', { lifted: false });
    const at = next(store.state);
    navigator.vibrate?.(80);
    say(at ? `Taken. ${placeSaid(at, store.state.settings)}` : 'Taken. That was the last.');
    if (!at) stop();
  }

  function stop() {
    tilt.stop();
    wake(false);
  }

  /**
   * A number that was typed, or why it is none.
   * @param {keyof typeof NUMBERS} name @param {string} text @returns {number | undefined}
   */
  function number(name, text) {
    const [label, low, high] = NUMBERS[name];
    return typed(store, name, text, { label, low, high }, unitFor(name, store.state.settings));
  }

  return {
    feel: () => void feel(),
    stop,
    /** @param {WalkPage['page']} page */
    show: (page) => set('show page', { page, told: '', mending: null, finding: false }),
    /** @param {Partial<WalkPage>} patch */
    choose: (patch) => set('choose', patch),
    /** @param {string} id @param {WalkPage['page']} [page] */
    open: (id, page = 'map') =>
      set('open green', { green: id, page, ball: null, hole: null, view: null, passed: [], told: '' }),
    /** @param {{width: number, height: number}} size */
    sized: (size) => set('size map', { size }),

    /** @param {keyof typeof NUMBERS} name @param {string} text */
    enter(name, text) {
      const value = number(name, text);
      if (value !== undefined) set(`enter ${name}`, { draft: { ...store.state.walkPage.draft, [name]: value } });
    },
    /** @param {string} name @param {string} text */
    word: (name, text) => set(`name ${name}`, { texts: { ...store.state.walkPage.texts, [name]: text } }),
    /** A new green, laid out. */
    async lay() {
      const { draft, texts } = store.state.walkPage;
      const now = new Date().toISOString();
      /** @type {GreenEntry} */
      const green = {
        kind: 'green',
        id: crypto.randomUUID(),
        at: now,
        changed: now,
        place: (texts.place ?? store.state.place).trim(),
        text: '',
        name: (texts.name ?? '').trim() || 'Practice green',
        breadth_m: draft.breadth_m ?? SIDE_M,
        length_m: draft.length_m ?? SIDE_M,
        places: draft.places ?? 25,
        points: [],
        holes: {},
      };
      if (!(await record.write([green]))) return;
      store.change('place', { place: green.place });
      set('lay out', { green: green.id, page: 'walk', draft: {}, texts: {}, passed: [], ball: null, hole: null, view: null });
    },
    /** More or fewer places for the walk. @param {number} places */
    places: (places) => void change(() => ({ places })),

    /** From a touch: some phones ask for leave to tell the tilt, and are silent until something was said in a touch. */
    start() {
      const at = next(store.state);
      if (at) say(placeSaid(at, store.state.settings));
      wake(true);
      set('start walk', { lifted: true, told: '' });
      void tilt.start();
    },
    async takeTyped() {
      const { slope_percent, fall_deg } = store.state.walkPage.draft;
      if (slope_percent !== undefined && fall_deg !== undefined) await take({ slope_percent, fall_deg }, TYPED_SD_PERCENT);
    },
    /** The last reading was none. */
    async takeBack() {
      if (await change(({ points }) => ({ points: points.slice(0, -1) }))) set('taken back', { lifted: false });
    },
    /** Nothing can be read at the next place. */
    pass() {
      const { x_m: _, y_m: __, ...draft } = store.state.walkPage.draft;
      const at = next(store.state);
      if (at) set('pass', { passed: [...store.state.walkPage.passed, at], draft });
    },
    /** The next reading is taken at the place that was touched. @param {OnMap} at */
    goTo(at) {
      const { breadth_m = 0, length_m = 0 } = greenOf(store.state) ?? {};
      const [x_m, y_m] = exact([Math.min(breadth_m, Math.max(0, at[0])), Math.min(length_m, Math.max(0, at[1]))]);
      set('go to', { draft: { ...store.state.walkPage.draft, x_m, y_m } });
    },

    /** @param {number} index @param {keyof typeof NUMBERS} name @param {string} text */
    async mend(index, name, text) {
      const value = number(name, text);
      if (value === undefined) return;
      const mended = { [name]: rounded(value, 3) };
      const done = await change(({ points }) => ({
        points: points.map((point, i) => (i === index ? { ...point, ...mended } : point)),
      }));
      if (done) set('mended', {});
    },
    /** @param {number} index */
    async remove(index) {
      if (await change(({ points }) => ({ points: points.filter((_, i) => i !== index) }))) set('removed', { mending: null });
    },

    /** The slopes of a kept putt, once its ball and hole are placed on the map. */
    async takePutt() {
      const { state } = store;
      const [green, placed] = [greenOf(state), placedOf(state)];
      const putt = green && puttsOf(state, green).find(({ id }) => id === state.walkPage.lent);
      if (!green || !placed || !putt) return;
      const asked = engine.ask('survey_points', keptOf(putt, placed));
      const read = await asked.catch((refusal) => set('refused', { told: refusalWords(refusal, state.settings) }));
      if (!read) return;
      const more = read.points.map(kept);
      if (green.points.length + more.length > MOST) return set('full', { told: `A green takes ${MOST} readings.` });
      if (await change(({ points }) => ({ points: [...points, ...more] })))
        set('putt taken', { lent: '', told: 'Its slopes are among the readings.' });
    },
    /** @param {'ball' | 'hole'} what @param {OnMap} at */
    put(what, at) {
      const { breadth_m = 0, length_m = 0 } = greenOf(store.state) ?? {};
      const [x, y] = at;
      const on = exact([Math.min(breadth_m, Math.max(0, x)), Math.min(length_m, Math.max(0, y))]);
      set(`put ${what}`, { ...placedOf(store.state), [what]: on });
    },
    /** @param {{ball: readonly number[], hole: readonly number[]}} putt */
    putBoth: ({ ball, hole }) =>
      set('put both', { ball: exact(/** @type {OnMap} */ (ball)), hole: exact(/** @type {OnMap} */ (hole)), finding: false }),
    /** @param {WalkPage['view']} view */
    look: (view) => set('look', { view }),
    /** @param {WalkPage['dragged']} dragged */
    hold: (dragged) => set('hold', { dragged, ...(dragged && { placing: dragged }) }),
    /** The hole stays here today. */
    async keepHole() {
      const hole = placedOf(store.state)?.hole;
      if (hole && (await change(({ holes }) => ({ holes: { ...holes, [today()]: hole } }))))
        set('hole kept', { told: 'The hole is here today.' });
    },

    /** To a team-mate, who takes it in among the notes. */
    async send() {
      const green = greenOf(store.state);
      if (!green) return;
      const name = `${green.name || 'green'}`.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-');
      set('send', { told: await give(new File([toJson([green], [], {})], `${name}.json.txt`, { type: 'text/plain' })) });
    },
    /** All readings of another walk of the same green, taken from the same corner. @param {string} other */
    async join(other) {
      const green = greenOf(store.state);
      const more = greensOf(store.state.entries).find(({ id }) => id === other);
      if (!green || !more) return;
      const known = new Set(green.points.map((point) => JSON.stringify(point)));
      const points = [...green.points, ...more.points.filter((point) => !known.has(JSON.stringify(point)))];
      if (points.length > MOST)
        return set('too many', { told: `Together they have ${points.length} readings; ${MOST} are the most.` });
      const [breadth_m, length_m] = [Math.max(green.breadth_m, more.breadth_m), Math.max(green.length_m, more.length_m)];
      const changed = new Date().toISOString();
      const joined = { ...green, points, breadth_m, length_m, holes: { ...more.holes, ...green.holes }, changed };
      if (await record.write([joined, { ...more, gone: true, changed }])) set('joined', { told: 'Joined.' });
    },
    /** @param {string} id */
    async forget(id) {
      if (await record.change(id, { gone: true }))
        set('green gone', { green: '', told: 'Deleted. It can be brought back in Record, among the deleted.' });
    },
  };
}

/** @typedef {ReturnType<typeof actions>} WalkActions */
