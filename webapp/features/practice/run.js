/**
 * The session's clock. It counts only seconds in which the page was awake, so that a reload, a lock or a crash loses
 * none: the session stands where it was.
 * @import {Store} from '../../store.js'
 * @import {Drill, DrillEntry, Practice, Run} from '../../types.js'
 */

import { pick } from '../../pick.js';

export const TICK_MS = 1000;
/** A longer silence means that the phone slept. */
const ASLEEP_MS = 5000;

/** @param {Practice} practice @returns {number} seconds that the block in hand still has */
export const remaining = ({ blocks, run }) => (run ? Math.max(0, pick(blocks, run.block).minutes * 60 - run.spent_s) : 0);

const CUE_S = 60;
/** Of a drill that is done by itself, minutes. */
const USUAL_MIN = 6;

/** The drill in hand, and the cue of this minute: they take turns. @param {Practice} practice @param {Drill[]} drills */
export function current({ blocks, run }, drills) {
  const block = run && blocks[run.block];
  const drill = block ? (block.card ?? drills.find(({ id }) => id === block.drill)) : undefined;
  return { drill, cue: (run && drill?.cues[Math.floor(run.spent_s / CUE_S) % drill.cues.length]) ?? '' };
}

/** @param {Run} run @param {number} block @returns {Run} */
const at = (run, block) => ({
  ...run,
  ...{ block, spent_s: 0, good: 0, bad: 0, folded: false },
  ...{ heard: undefined, strikes: undefined, said: undefined },
});

/** @param {Store} store */
export function runActions(store) {
  const practice = () => store.state.practice;
  /** @param {string} action @param {Partial<Practice>} patch */
  const change = (action, patch) => store.change(action, { practice: { ...practice(), ...patch } });
  /** @param {string} action @param {(run: Run) => Partial<Run>} patch */
  const changeRun = (action, patch) => {
    const { run } = practice();
    if (run) change(action, { run: { ...run, ...patch(run) } });
  };
  /** The next session is planned anew. @returns {Practice} */
  const ended = () => ({ ...practice(), run: null, planned: null });
  let last = 0;

  /** Keeps the block in hand and goes to the next. @param {string} action */
  function finish(action) {
    const { run, blocks } = practice();
    if (!run) return;
    const {
      place,
      unkept,
      practicePage: { drills },
    } = store.state;
    const { session, block, spent_s, good, bad, heard } = run;
    const { drill, card } = pick(blocks, block);
    const now = new Date().toISOString();
    /** @type {DrillEntry} */
    const done = {
      kind: 'drill',
      id: crypto.randomUUID(),
      at: now,
      changed: now,
      place,
      text: '',
      session,
      drill,
      name: card?.name ?? drills.find(({ id }) => id === drill)?.name ?? drill,
      spent_s: Math.round(spent_s),
      good,
      bad,
      ...(heard ? { heard } : {}),
    };
    const over = block + 1 === blocks.length;
    const next = over ? ended() : { ...practice(), run: at(run, block + 1) };
    store.change(action, { unkept: [...unkept, done], practice: next });
    if (over) store.change('session over', { practicePage: { ...store.state.practicePage, page: 'done' } });
  }

  /**
   * In one change: between two the plan would be asked for anew.
   * @param {Practice['blocks']} blocks @param {Partial<Practice>} [also]
   */
  function begin(blocks, also = {}) {
    const { drills } = store.state.practicePage;
    last = Date.now();
    change('start session', {
      ...also,
      blocks: blocks.map((block) => ({ ...block, card: drills.find(({ id }) => id === block.drill) })),
      run: { session: crypto.randomUUID(), block: 0, spent_s: 0, paused: false, good: 0, bad: 0 },
    });
    store.change('show session', { practicePage: { ...store.state.practicePage, page: 'run', note: '' } });
  }

  return {
    start: () => begin(practice().blocks),
    /** One drill by itself, for its usual time; the plan is made anew afterwards. @param {Drill} drill */
    startDrill({ id, least, most, why }) {
      begin([{ drill: id, minutes: Math.min(most, Math.max(least, USUAL_MIN)), why, instead: [] }], { planned: null });
    },
    fold: () => changeRun('fold set-up', ({ folded }) => ({ folded: !folded })),
    tick() {
      const { run } = practice();
      const now = Date.now();
      const passed = now - last;
      last = now;
      if (!run || run.paused) return;
      if (passed > ASLEEP_MS || passed < 0) {
        changeRun('slept', () => ({ paused: true }));
        store.change('say why', { practicePage: { ...store.state.practicePage, note: 'Paused: the phone was asleep.' } });
        return;
      }
      changeRun('second', ({ spent_s }) => ({ spent_s: spent_s + passed / 1000 }));
      if (remaining(practice()) <= 0) finish('block over');
    },
    pause() {
      last = Date.now();
      changeRun('pause', ({ paused }) => ({ paused: !paused }));
      store.change('clear note', { practicePage: { ...store.state.practicePage, note: '' } });
    },
    skip: () => finish('skip block'),
    repeat: () => changeRun('repeat block', (run) => at(run, run.block)),
    back: () => changeRun('back a block', (run) => at(run, Math.max(0, run.block - (run.spent_s > 5 ? 0 : 1)))),
    good: () => changeRun('count good', ({ good }) => ({ good: good + 1 })),
    bad: () => changeRun('count bad', ({ bad }) => ({ bad: bad + 1 })),
    /** One that was meant otherwise than those before begins a new row. @param {number} roll_m @param {number} roll_sd_m */
    heard: (roll_m, roll_sd_m) =>
      changeRun('keep what was heard', ({ heard }) => {
        const { meant_m } = practice().ear;
        const before = heard?.meant_m === meant_m ? heard : { rolls_m: [], roll_sd_m: 0 };
        const rolls_m = [...before.rolls_m, roll_m];
        return { heard: { meant_m, rolls_m, roll_sd_m: Math.max(before.roll_sd_m, roll_sd_m) } };
      }),
    /** Ends it here; what was done in this block is kept. */
    end() {
      const { run } = practice();
      if (run?.spent_s) finish('end session');
      change('end session', ended());
      store.change('show end', { practicePage: { ...store.state.practicePage, page: 'done', note: '' } });
    },
  };
}
