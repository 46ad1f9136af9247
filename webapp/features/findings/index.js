/**
 * What the record says of the player's faults, and what they cost.
 * @import {App, Feature} from '../../app.js'
 * @import {Question} from '../../questions.js'
 * @import {Entry, PuttEntry} from '../../types.js'
 */
import './findings.css';
import { give } from '../../device/share.js';
import { localTime } from '../../format.js';
import { report } from './report.js';
import { view } from './view.js';

/** What the engine takes of a putt. Ids stay here: its answer names places in the list. Weeks are those of the player's own days. @param {PuttEntry} entry @param {number} i */
function asked(
  {
    at,
    sample,
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
    start_deg,
    start_sd_deg,
    launch_mps,
    launch_sd_mps,
  },
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
    // the invented player's reads are his own; of other putts it is not known yet whose aim was played
    read: sample ? 'own' : null,
    result,
    gate,
    line_error_deg,
    felt_percent,
    start_deg,
    start_sd_deg,
    launch_mps,
    launch_sd_mps,
  };
}

/** @param {Entry} entry @returns {entry is PuttEntry} */
const counts = (entry) => entry.kind === 'putt' && !entry.gone;

/** @type {Question} */
const question = {
  into: 'findings',
  ask: 'findings',
  // the plan of a session weighs what they have found
  when: ({ screen, entries, unfound }) =>
    (screen === 'findings' || screen === 'practice') && entries !== null && unfound?.entries !== entries,
  on: ({ entries, settings }) => [entries, settings.handed],
  fields: ({ entries, settings }) => ({ putts: (entries ?? []).filter(counts).map(asked), handedness: settings.handed }),
  lands: (value, { handedness }, { entries }) => ({
    findings: { entries: entries ?? [], handed: handedness, value, given: '' },
    share: null,
  }),
  refused: ({ message }, _, { entries }) => ({ unfound: { entries, why: message }, share: null }),
  share: (share) => ({ share }),
};

/** @param {App} app */
function actions({ store }) {
  return {
    stop: () =>
      store.change('stop findings', { unfound: { entries: store.state.entries, why: 'you stopped it.' }, share: null }),
    again: () => store.change('findings again', { unfound: null }),
    async give() {
      const { findings, settings } = store.state;
      if (!findings) return;
      const text = report(findings, settings, new Date());
      const given = await give(new File([text], 'borrowline-findings.txt', { type: 'text/plain' }));
      if (store.state.findings === findings) store.change('give findings', { findings: { ...findings, given } });
    },
    /** @param {'right' | 'left'} handed */
    setHand: (handed) => store.change('set hand', { settings: { ...store.state.settings, handed } }),
  };
}

/** @typedef {ReturnType<typeof actions>} FindingsActions */

/** @type {Feature} */
export const findings = {
  id: 'findings',
  within: 'record',
  initial: { findings: null, unfound: null, share: null },
  questions: [question],
  make(app) {
    const act = actions(app);
    return { view: () => view(app.store.state, act) };
  },
};
