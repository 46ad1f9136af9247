/**
 * Keeps the answers in step with the putt: whatever changes the putt, a new read follows.
 * @import {App} from '../../app.js'
 * @import {Putt} from '../../types.js'
 */
import { stopRoll } from '../../parts/picture/roll.js';

/** @param {App} app */
export function keepAnswered({ store, engine }) {
  /** @param {unknown} error */
  function failed(error, /** @type {Putt} */ putt) {
    const { code, message } = /** @type {{code?: string, message: string}} */ (error);
    if (code === 'runs_away' && putt === store.state.putt)
      store.change('no such putt', { refusal: { putt, value: message }, read: null, window: null, costs: null });
    else if (code === 'no_window') store.change('no window', { window: null, closed: { putt, value: message } });
    else if (code !== 'runs_away') console.warn('No read.', message);
  }

  async function askRead() {
    const { putt } = store.state;
    stopRoll();
    try {
      const value = await engine.latest('read', putt);
      if (!value) return;
      store.change('read', { read: { putt, value }, refusal: null });
      if (putt === store.state.putt) void askWindow();
    } catch (error) {
      failed(error, putt);
    }
  }

  async function askWindow() {
    const { putt, player } = store.state;
    try {
      const value = await engine.latest('window', { ...putt, player });
      if (value && store.state.read) store.change('window', { window: { putt, value }, closed: null });
      if (value && store.state.sheet === 'costs') void askCosts();
    } catch (error) {
      failed(error, putt);
    }
  }

  async function askCosts() {
    const { putt } = store.state;
    if (store.state.costs?.putt === putt || store.state.refusal) return;
    try {
      const value = await engine.latest('sensitivity', putt);
      if (value && putt === store.state.putt) store.change('costs', { costs: { putt, value: value.rows } });
    } catch (error) {
      failed(error, putt);
    }
  }

  async function askPresets() {
    const { players } = await engine.ask('presets', {});
    store.change('presets', { presets: players });
  }

  store.subscribe((state, before) => {
    const revived = state.engine.kind === 'ready' && before.engine.kind !== 'ready' && state.restarted;
    if (state.putt !== before.putt || revived) void askRead();
    else if (state.player !== before.player) void askWindow();
    if (state.sheet === 'costs' && before.sheet !== 'costs') void askCosts();
    if (state.sheet === 'player' && before.sheet !== 'player' && !state.presets.length) askPresets().catch(() => {});
  });
  void askRead();
}
