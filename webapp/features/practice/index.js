/** @import {App, Feature} from '../../app.js' */
import { say } from '../../device/speech.js';
import { createSound } from '../../device/sound.js';
import { createWake } from '../../device/wake.js';
import { actions } from './actions.js';
import { asks } from './asks.js';
import { followHeard } from './parts/pendulum.js';
import { current, TICK_MS } from './run.js';
import { view } from './view.js';

const OVER_MS = [120, 80, 120];

/** @param {App} app @returns {Feature} */
export function practice(app) {
  const { store } = app;
  const sound = createSound((state) =>
    store.change(`sound ${state}`, { practising: { ...store.state.practising, sound: state } }),
  );
  const act = actions(app, sound);
  const { askDrills, askPlan, askTempo } = asks(app);
  const stayAwake = createWake();
  const follow = followHeard(store, sound);

  if (store.state.practice.run)
    store.change('session was open', {
      practice: { ...store.state.practice, run: { ...store.state.practice.run, paused: true } },
      practising: { ...store.state.practising, page: 'run', note: 'Paused where it stopped.' },
    });
  if (store.state.screen === 'practice') {
    void askDrills();
    void askTempo();
    if (!store.state.practice.blocks.length) void askPlan();
  }
  setInterval(() => store.state.practice.run && act.tick(), TICK_MS);

  store.subscribe(({ practice, practising, screen }, before, action) => {
    stayAwake((practice.run !== null && !practice.run.paused) || practising.sound === 'playing');
    const { drill, cue } = current(practice, practising.drills);
    const was = current(before.practice, before.practising.drills);
    const speaks = practice.spoken && drill && !practice.run?.paused;
    // Also from the touch that turns the voice on or goes on: some phones let a page speak only after one of those
    const afresh = drill !== was.drill || cue !== was.cue || !before.practice.spoken || before.practice.run?.paused;
    if (speaks && afresh) say(drill === was.drill ? cue : `${drill.name}. ${cue}`);
    if (action === 'block over') {
      if (practice.chime) sound.chime(practice.tempo.volume);
      if (practice.tempo.vibrate) navigator.vibrate?.(OVER_MS);
    }
    if (practising.sound === 'playing' && before.practising.sound !== 'playing') follow();
    // What is heard belongs to what is shown
    const elsewhere =
      screen !== before.screen ||
      practising.page !== before.practising.page ||
      practice.run?.block !== before.practice.run?.block;
    if (elsewhere || practising.tempo !== before.practising.tempo) sound.stop();
  });

  /** @type {Record<string, () => void>} */
  const KEYS = { 1: act.good, 2: act.bad, p: act.pause, n: act.skip, r: act.repeat, b: act.back };
  addEventListener('keydown', (event) => {
    const { screen, practising, sheet } = store.state;
    const typing = event.target instanceof HTMLInputElement || event.ctrlKey || event.metaKey || event.altKey;
    if (screen === 'practice' && practising.page === 'run' && !sheet && !typing && !event.repeat)
      KEYS[event.key.toLowerCase()]?.();
  });

  let seen = '';
  return {
    id: 'practice',
    label: 'Practice',
    view: () => view(store.state, act),
    /** Another page starts at its top. */
    drawn(root) {
      const { page, drill } = store.state.practising;
      if (seen !== page + drill) root.querySelector('main')?.scrollTo(0, 0);
      seen = page + drill;
    },
  };
}
