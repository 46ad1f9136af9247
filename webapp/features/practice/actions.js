/**
 * What a touch on the practice screen can do.
 * @import {App} from '../../app.js'
 * @import {Sound} from '../../device/sound.js'
 * @import {Block, Practice, PracticePage, TempoSettings, Thing} from '../../types.js'
 */
import { pick } from '../../pick.js';
import { worn } from '../../device/theme.js';
import { rangeOf } from '../../fields.js';
import { refusalWords } from '../../refusal.js';
import { OWN } from '../../records/forms.js';
import { createMotion } from '../../device/motion.js';
import { give } from '../../device/share.js';
import { distanceUnit, doesNotFit, fromText, smallUnit } from '../../format.js';
import { typed } from '../../parts/typed.js';
import { FIELDS } from './fields.js';
import { minutesOf, planAddress } from './plan-link.js';
import { isPlanned, planFields } from './questions.js';
import { beatActions } from './on-beat.js';
import { listenActions } from './listen.js';
import { runActions } from './run.js';
import { senseActions } from './senses.js';

/** Taps that count towards the headphones' delay. */
const TAPS = 4;
const BACKSWING = rangeOf('OwnStroke', 'backswing_m');
const ROLL = rangeOf('OwnStroke', 'roll_m');

/** @param {App} app @param {Sound} sound */
export function actions(app, sound) {
  const { store, engine } = app;
  const practice = () => store.state.practice;
  /** @param {string} action @param {Partial<Practice>} patch */
  const keep = (action, patch) => store.change(action, { practice: { ...practice(), ...patch } });
  /** @param {string} action @param {Partial<PracticePage>} patch */
  const turn = (action, patch) => store.change(action, { practicePage: { ...store.state.practicePage, ...patch } });
  const motion = createMotion();
  const run = runActions(store);
  const ears = listenActions(app, run);

  /** @param {Partial<TempoSettings>} patch */
  function setTempo(patch) {
    const tempo = { ...practice().tempo, ...patch };
    keep('set tempo', { tempo });
    sound.setVolume(tempo.muted ? 0 : tempo.volume);
  }

  /** @param {Promise<import('../../types.js').PracticePage['found']>} asked */
  async function find(asked) {
    try {
      turn('found', { found: await asked, note: '' });
    } catch (error) {
      turn('not found', { found: null, note: refusalWords(/** @type {any} */ (error), store.state.settings) });
    }
  }

  return {
    ...run,
    ...ears,
    ...beatActions(app, sound),
    ...senseActions(app),
    start() {
      if (!isPlanned(practice())) return;
      if (practice().chime) void sound.ready();
      run.start();
    },
    /** @param {import('../../types.js').Drill} drill */
    startDrill(drill) {
      if (practice().chime) void sound.ready();
      run.startDrill(drill);
    },
    pause() {
      if (practice().chime) void sound.ready();
      run.pause();
    },
    /**
     * Where on the green that was walked a drill's putt is.
     * @param {Partial<import('../../types.js').WalkPage['want']>} want
     */
    seek(want) {
      const { walkPage } = store.state;
      store.change('seek a putt', {
        walkPage: { ...walkPage, page: 'map', finding: true, want: { ...walkPage.want, ...want } },
      });
      location.hash = 'walk';
    },
    /** @param {PracticePage['page']} page */
    go: (page) =>
      store.change('turn page', {
        practicePage: { ...store.state.practicePage, page, note: '', changing: false },
        undo: null,
        problem: null,
      }),
    /** @param {string} drill */
    openDrill: (drill) => turn('open drill', { page: 'drill', drill, note: '' }),
    /** How much work each skill needs. @param {Practice['weights']} weights */
    weigh: (weights) =>
      void (JSON.stringify(weights) !== JSON.stringify(practice().weights) && keep('weigh skills', { weights })),
    /** @param {number} minutes */
    setMinutes: (minutes) => keep('set minutes', { minutes }),
    /** @param {string} place */
    setPlace: (place) => keep('set place', { place: /** @type {Practice['place']} */ (place) }),
    /** @param {Thing} thing */
    toggle(thing) {
      const { at_hand } = practice();
      keep('change things', {
        at_hand: at_hand.includes(thing) ? at_hand.filter((other) => other !== thing) : [...at_hand, thing],
      });
    },
    /** @param {Partial<Practice['week']>} patch */
    setWeek: (patch) => keep('set week', { week: { ...practice().week, ...patch } }),
    /** @param {string} id */
    sessionDone(id) {
      const { week } = practice();
      const done = week.done.includes(id) ? week.done.filter((other) => other !== id) : [...week.done, id];
      keep('session done or not', { week: { ...week, done } });
    },
    /** A session of the week, planned for what is at hand. @param {Pick<Practice, 'minutes' | 'place' | 'weights'>} session */
    openSession(session) {
      keep('open session', session);
      turn('turn to the session', { page: 'session', note: '', changing: false });
    },
    async givePlan() {
      turn('give plan', { given: await give(planAddress(practice())) });
    },
    /** One that came never takes the place of the plan in hand by itself. @param {PracticePage['sentPlan']} sentPlan */
    receivePlan: (sentPlan) => turn('a plan came', { sentPlan, ...(practice().run ? {} : { page: 'session' }) }),
    takePlan() {
      const { sentPlan, drills } = store.state.practicePage;
      if (!sentPlan || practice().run) return;
      const blocks = sentPlan.blocks.map((block) => ({
        ...block,
        why: drills.find(({ id }) => id === block.drill)?.why ?? '',
        instead: [],
      }));
      const taken = { ...practice(), place: sentPlan.place, minutes: minutesOf(sentPlan), blocks };
      keep('take the plan', { ...taken, planned: planFields(taken) });
      history.replaceState(null, '');
      turn('the plan is taken', { sentPlan: undefined, changing: false });
    },
    leavePlan() {
      history.replaceState(null, '');
      turn('leave the plan', { sentPlan: undefined });
    },
    change: () => turn('change plan', { changing: !store.state.practicePage.changing }),
    /** One place up. Set-up stays first and the last putt last. @param {number} i */
    raise(i) {
      const blocks = [...practice().blocks];
      blocks.splice(i - 1, 0, ...blocks.splice(i, 1));
      keep('raise block', { blocks });
    },
    /** Another drill for the same minutes. @param {number} i */
    swap(i) {
      const { blocks } = practice();
      const { drill, minutes, instead } = pick(blocks, i);
      // what another block took by a swap is not done twice
      const next = instead.find((id) => blocks.every((block) => block.drill !== id));
      if (!next) return;
      const rest = instead.filter((id) => id !== next);
      const why = store.state.practicePage.drills.find(({ id }) => id === next)?.why ?? '';
      keep('swap drill', {
        blocks: blocks.with(i, { drill: next, minutes, why, instead: [...rest, drill] }),
      });
    },
    /** Of the phone's two, the one that it does not wear. */
    theme() {
      const { settings } = store.state;
      store.change('theme', { settings: { ...settings, theme: worn(settings.theme) === 'dark' ? 'light' : 'dark' } });
    },
    speak: () => keep('speak', { spoken: !practice().spoken }),
    async chime() {
      const chime = !practice().chime;
      keep('chime', { chime });
      if (!chime) return;
      await sound.ready();
      sound.chime(practice().tempo.volume);
    },

    setTempo,
    async play() {
      const { tempo } = store.state.answers;
      if (store.state.practicePage.sound === 'interrupted') return sound.resume();
      if (store.state.practicePage.sound !== 'off') return sound.stop();
      if (!tempo) return;
      try {
        await sound.play(tempo, practice().tempo.muted ? 0 : practice().tempo.volume);
      } catch {
        turn('no sound', { note: 'The phone gives no sound now. Try again after the call.' });
      }
    },
    /** A tap with the high note: how late it is heard is the headphones' delay. */
    tapDelay() {
      const { late } = store.state.practicePage;
      const { tempo } = store.state.answers;
      const at = sound.heard(0);
      if (at === null || !tempo || at < tempo.lead_s) return;
      const after =
        ((at - tempo.lead_s - tempo.back_s - tempo.forward_s + tempo.cycle_s / 2) % tempo.cycle_s) - tempo.cycle_s / 2;
      const taps = [...late, after];
      turn('tap delay', { late: taps.length === TAPS ? [] : taps });
      if (taps.length < TAPS) return;
      // the middle two of four, to a hundredth
      const middle = taps.toSorted((a, b) => a - b).slice(1, -1);
      setTempo({ delay_s: Math.max(0, Math.min(OWN.delay_s[1], Math.round(middle.reduce((a, b) => a + b) * 50) / 100)) });
    },

    /** @param {'taps' | 'motion'} finding */
    startFinding(finding) {
      turn('find tempo', { finding, taps: [], found: null, note: '' });
      if (finding === 'motion') void motion.start((note) => turn('no motion', { note, finding: '' }));
    },
    /** @param {Event} event its own time, not that of the page's turn to handle it */
    tap: ({ timeStamp }) => turn('tap', { taps: [...store.state.practicePage.taps, timeStamp / 1000] }),
    stopFinding() {
      const { finding, taps } = store.state.practicePage;
      turn('stop finding', { finding: '' });
      void find(engine.ask('find_tempo', finding === 'motion' ? motion.stop() : { taps_s: taps }));
    },
    useFound() {
      const { found } = store.state.practicePage;
      if (found) setTempo({ forward_s: Math.round(found.forward_s * 100) / 100, ratio: Math.round(found.ratio * 10) / 10 });
    },

    /** To where balls are rolled for a speed. */
    rollFloor() {
      store.change('roll the floor', { greenPage: { ...store.state.greenPage, part: 'speed' } });
      location.hash = 'green';
    },
    /** The floor is what the balls were rolled on. */
    takeFloor() {
      const { stimp_ft: floor_ft, stimp_sd_ft: floor_sd_ft = 0 } = store.state.putt;
      keep('take the floor', { ear: { ...practice().ear, floor_ft, floor_sd_ft } });
    },
    /** @param {string} name @param {string} text */
    enter(name, text) {
      const field = pick(FIELDS, name);
      const value = typed(store, name, text, field, field.unit(store.state.settings));
      if (value !== undefined) store.change(`enter ${name}`, { problem: null, practice: field.put(practice(), value) });
    },
    /** @param {string} back @param {string} far @returns {boolean} whether it was taken */
    addStroke(back, far) {
      const { settings, putt } = store.state;
      const [small, large] = [smallUnit(settings), distanceUnit(settings)];
      const [backswing_m, roll_m] = [fromText(back, small), fromText(far, large)];
      if (!(backswing_m >= BACKSWING.low && backswing_m <= BACKSWING.high))
        turn('refuse stroke', { note: doesNotFit('Back', back, BACKSWING.low, BACKSWING.high, small) });
      else if (!(roll_m >= ROLL.low && roll_m <= ROLL.high))
        turn('refuse stroke', { note: doesNotFit('Roll', far, ROLL.low, ROLL.high, large) });
      else {
        turn('clear note', { note: '' });
        keep('add stroke', { strokes: [...practice().strokes, { backswing_m, roll_m, stimp_ft: putt.stimp_ft }] });
        return true;
      }
      return false;
    },
    /** @param {number} i */
    removeStroke: (i) => keep('remove stroke', { strokes: practice().strokes.filter((_, at) => at !== i) }),
  };
}

/** @typedef {ReturnType<typeof actions>} PracticeActions */
