/**
 * What the record says of the player's faults, and what they cost.
 * @import {App, Feature} from '../../app.js'
 * @import {Question} from '../../questions.js'
 * @import {Only, PuttEntry, Settings} from '../../types.js'
 */
import './findings.css';
import { give } from '../../device/share.js';
import { tiltMeasured } from '../../doubt.js';
import { localTime } from '../../format.js';
import { FIELDS } from '../../engine/fields.js';
import { countedOf, hasGreen, heardOf, puttsOf } from '../../records/chosen.js';
import { report } from './report.js';
import { view } from './view.js';

/** What the engine takes of a putt as it is kept. */
const TAKEN = /** @type {(keyof PuttEntry)[]} */ (Object.keys(FIELDS.LoggedFields));

/**
 * Ids stay here: its answer names places in the list. Weeks are those of the player's own days.
 * @param {PuttEntry} entry @param {number} i
 */
const asked = (entry, i) => ({
  ...Object.fromEntries(TAKEN.map((name) => [name, entry[name]])),
  id: String(i),
  at: localTime(entry.at),
  tilt_sd_percent: tiltMeasured(entry),
  stations: entry.stations?.map(({ at_m, slope_percent, fall_deg }) => ({ at_m, slope_percent, fall_deg })),
});

/** Putts that may tell of the skills. @param {import('../../types.js').Entry[] | null} entries @param {Only} only */
const told = (entries, only) => puttsOf(entries ?? [], only).filter(hasGreen);

/** @type {Question} */
const question = {
  into: 'findings',
  ask: 'findings',
  // the plan of a session weighs what they have found
  when: ({ screen, entries, unfound }) =>
    (screen === 'findings' || screen === 'practice') && entries !== null && unfound?.entries !== entries,
  on: ({ entries, only, settings }) => [entries, only, settings.handed, settings.against],
  fields: ({ entries, only, settings }) => ({
    putts: told(entries, only).map(asked),
    counted: countedOf(entries ?? [], only).map((putt) => ({ ...putt, at: localTime(putt.at) })),
    heard: heardOf(entries ?? [], only).map((block) => ({ ...block, at: localTime(block.at) })),
    handedness: settings.handed,
    against: settings.against,
  }),
  lands: (value, { handedness, against }, { entries, only }) => ({
    findings: { entries: told(entries, only), handed: handedness, against, only, value, given: '' },
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
      const { findings, settings, looking } = store.state;
      if (!findings) return;
      const text = report(findings, { ...settings, name: looking?.name ?? settings.name }, new Date());
      const given = await give(new File([text], 'borrowline-findings.txt', { type: 'text/plain' }));
      if (store.state.findings === findings) store.change('give findings', { findings: { ...findings, given } });
    },
    /** @param {Partial<Only>} only */
    filter: (only) => store.change('ask for some', { only: { ...store.state.only, ...only } }),
    /** @param {Settings['against']} against */
    setAgainst: (against) => store.change('against', { settings: { ...store.state.settings, against } }),
    /** The entry at a place of those that were asked. @param {string} id */
    open(id) {
      const entry = store.state.findings?.entries[Number(id)];
      if (!entry) return;
      store.change('open an entry', { recordPage: { ...store.state.recordPage, page: 'list', editing: entry.id, before: [] } });
      location.hash = 'record';
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
