/**
 * Sessions of drills, the tempo, and trials of feet and eye.
 * @import {Feature} from '../../app.js'
 * @import {CostAnswer} from '../../engine/protocol.js'
 */
import './practice.css';
import { say } from '../../device/speech.js';
import { createSound } from '../../device/sound.js';
import { createWake } from '../../device/wake.js';
import { actions } from './actions.js';
import { followHeard } from './parts/pendulum.js';
import { planIn } from './plan-link.js';
import { questions } from './questions.js';
import { current, TICK_MS } from './run.js';
import { view } from './view.js';
import { keeps } from './kept.js';

const TEMPO = '#tempo'; // as the home screen's shortcut has it
/** While the tempo keeps time. */
const SOUNDS = ['playing', 'silent'];
const OVER_MS = [120, 80, 120];

/**
 * A skill weighs what it costs; tempo, which no putt tells, as much as the others do on average.
 * @param {CostAnswer[]} costs
 */
function weighed(costs) {
  if (!costs.length) return {};
  const known = costs.map(({ skill, putts_per_100 }) => /** @type {const} */ ([skill, Math.max(0, putts_per_100)]));
  const tempo = known.reduce((sum, [, weight]) => sum + weight, 0) / known.length;
  return { alignment: 0, start_line: 0, pace: 0, reading: 0, ...Object.fromEntries(known), tempo };
}

/** @type {Feature} */
export const practice = {
  id: 'practice',
  keeps,
  label: 'Practice',
  formerly: [TEMPO.slice(1)],
  initial: {
    practicePage: {
      page: 'session',
      drill: '',
      drills: [],
      changing: false,
      note: '',
      sound: 'off',
      awake: false,
      hearing: 'off',
      floorHeard_ft: null,
      sentPlan: undefined,
      given: '',
      onBeat: 'off',
      loop: null,
      offs_s: [],
      beatHeard: null,
      late: [],
      finding: '',
      taps: [],
      found: null,
      draft: {},
      fall: 'right',
      // another picture at each start
      case: Date.now() % 1_000_000_000,
      guessed: null,
    },
  },
  questions,
  make(app) {
    const { store } = app;
    const sound = createSound((state) =>
      store.change(`sound ${state}`, { practicePage: { ...store.state.practicePage, sound: state } }),
    );
    const act = actions(app, sound);
    const stayAwake = createWake((awake) =>
      store.change('screen stays on', { practicePage: { ...store.state.practicePage, awake } }),
    );
    const follow = followHeard(store, sound);

    /** A session that the page did not see begin was broken off. */
    function goOn() {
      const { practice, practicePage } = store.state;
      if (practice.run)
        store.change('session was open', {
          practice: { ...practice, run: { ...practice.run, paused: true } },
          practicePage: { ...practicePage, page: 'run', note: 'Paused where it stopped.' },
        });
    }
    goOn();
    /** @type {ReturnType<typeof setInterval> | undefined} */
    let ticking;
    const keepTicking = () => {
      const { run } = store.state.practice;
      if (run && !run.paused) {
        ticking ??= setInterval(act.tick, TICK_MS);
      } else {
        clearInterval(ticking);
        ticking = undefined;
      }
    };
    keepTicking();
    if (location.hash === TEMPO && !store.state.practice.run) act.go('tempo');

    /** @param {unknown} fragment */
    function openPlan(fragment) {
      const plan = typeof fragment === 'string' ? planIn(fragment) : undefined;
      if (plan === undefined) return;
      // a reload finds it again until it is taken or left
      history.replaceState(fragment, '', '#practice');
      store.change('open link', { screen: 'practice' });
      act.receivePlan(plan);
    }
    addEventListener('hashchange', () => openPlan(location.hash.slice(1)));
    openPlan(history.state ?? location.hash.slice(1));

    store.subscribe((state, before, action) => {
      const { practice, practicePage, screen } = state;
      keepTicking();
      if (state.findings && state.findings !== before.findings) act.weigh(weighed(state.findings.value.costs));
      stayAwake((practice.run !== null && !practice.run.paused) || SOUNDS.includes(practicePage.sound));
      const { drill, cue } = current(practice, practicePage.drills);
      const was = current(before.practice, before.practicePage.drills);
      const speaks = practice.spoken && drill && !practice.run?.paused;
      // Also from the touch that turns the voice on or goes on: some phones let a page speak only after one of those
      const afresh = drill !== was.drill || cue !== was.cue || !before.practice.spoken || before.practice.run?.paused;
      if (speaks && afresh) say(drill === was.drill ? cue : `${drill.name}. ${cue}`);
      if (action === 'kept') goOn();
      if (action === 'block over') {
        if (practice.chime) sound.chime(practice.tempo.volume);
        if (practice.tempo.vibrate) navigator.vibrate?.(OVER_MS);
      }
      if (SOUNDS.includes(practicePage.sound) && !SOUNDS.includes(before.practicePage.sound)) follow();
      // What is heard belongs to what is shown
      const elsewhere =
        screen !== before.screen ||
        practicePage.page !== before.practicePage.page ||
        practice.run?.block !== before.practice.run?.block;
      if (elsewhere || state.answers.tempo !== before.answers.tempo) sound.stop();
      if (elsewhere && practicePage.hearing !== 'off') act.stopListening();
      if (practicePage.sound !== 'playing' && practicePage.onBeat !== 'off') act.stopOnBeat();
    });

    /** @type {Record<string, () => void>} */
    const KEYS = { 1: act.good, 2: act.bad, p: act.pause, n: act.skip, r: act.repeat, b: act.back };
    addEventListener('keydown', (event) => {
      const { screen, practicePage, sheet } = store.state;
      const typing = event.target instanceof HTMLInputElement || event.ctrlKey || event.metaKey || event.altKey;
      if (screen === 'practice' && practicePage.page === 'run' && !sheet && !typing && !event.repeat)
        KEYS[event.key.toLowerCase()]?.();
    });

    let seen = '';
    return {
      view: () => view(store.state, act),
      /** Another page starts at its top. */
      drawn(root) {
        const { page, drill } = store.state.practicePage;
        if (seen !== page + drill) root.querySelector('main')?.scrollTo(0, 0);
        seen = page + drill;
      },
    };
  },
};
