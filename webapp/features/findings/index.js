/**
 * @import {App, Feature} from '../../app.js'
 * @import {Entry, PuttEntry} from '../../types.js'
 */
import { give } from '../../device/share.js';
import { localTime } from '../../format.js';
import { report } from './report.js';
import { view } from './view.js';

/** What the engine takes of a putt. Ids stay here: its answer names places in the list. Weeks are those of the player's own days. @param {PuttEntry} entry @param {number} i */
function asked(
  { at, distance_m, stimp_ft, slope_percent, fall_deg, stations, past_m, aim_deg, result, gate, line_error_deg, felt_percent },
  i,
) {
  return {
    id: String(i),
    at: localTime(at),
    distance_m,
    stimp_ft,
    slope_percent,
    fall_deg,
    stations,
    past_m,
    aim_deg,
    result,
    gate,
    line_error_deg,
    felt_percent,
  };
}

/** @param {Entry} entry @returns {entry is PuttEntry} */
const counts = (entry) => entry.kind === 'putt' && !entry.gone;

/** The plan of a session weighs what they have found. */
const NEEDS = ['findings', 'practice'];

/** @param {App} app */
function actions({ store, engine }) {
  let working = new AbortController();

  async function ask() {
    working.abort(); // what is asked of an older record, or by a screen that was left, keeps the engine from the read
    const { entries, settings, screen, findings } = store.state;
    if (!NEEDS.includes(screen) || !entries || findings?.entries === entries) return;
    const { signal } = (working = new AbortController());
    /** @param {string} action @param {Partial<import('../../types.js').State>} patch */
    const change = (action, patch) => signal.aborted || store.change(action, patch);
    change('look for findings', { unfound: '', share: 0 });
    try {
      const onShare = (/** @type {number} */ share) => change('share of findings', { share });
      const value = await engine.latest(
        'findings',
        { putts: entries.filter(counts).map(asked), handedness: settings.handed },
        { signal, onShare },
      );
      if (value) change('findings', { findings: { entries, value, given: '' }, share: null });
    } catch (error) {
      change('no findings', { unfound: /** @type {Error} */ (error).message, share: null });
    }
  }
  return {
    ask,
    stop() {
      working.abort();
      store.change('stop findings', { unfound: 'you stopped it.', share: null });
    },
    again: () => void ask(),
    async give() {
      const { findings, settings } = store.state;
      if (!findings) return;
      const given = await give(
        new File([report(findings, settings, new Date())], 'borrowline-findings.txt', { type: 'text/plain' }),
      );
      if (store.state.findings === findings) store.change('give findings', { findings: { ...findings, given } });
    },
    /** @param {'right' | 'left'} handed */
    setHand: (handed) => store.change('set hand', { settings: { ...store.state.settings, handed } }),
  };
}

/** @typedef {ReturnType<typeof actions>} FindingsActions */

/** @param {App} app @returns {Feature} */
export function findings(app) {
  const { store } = app;
  const act = actions(app);
  store.subscribe((state, before) => {
    const other = state.settings.handed !== before.settings.handed;
    if (other) store.change('of the other hand', { findings: null });
    if (other || state.screen !== before.screen || state.entries !== before.entries) void act.ask();
  });
  return { id: 'findings', within: 'notes', view: () => view(store.state, act) };
}
