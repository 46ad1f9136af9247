/**
 * Rounds: entered afterwards, hole by hole, and what was gained or lost on them.
 * @import {Feature} from '../../app.js'
 * @import {Question} from '../../questions.js'
 */
import './rounds.css';
import { localTime } from '../../format.js';
import { EVERYTHING, roundsOf } from '../../records/chosen.js';
import { openDrawn } from '../../parts/sheet.js';
import { actions } from './actions.js';
import { view } from './view.js';
import { keeps } from './kept.js';

/** @type {Question} */
const question = {
  into: 'rounds',
  ask: 'rounds',
  when: ({ screen, entries }) => screen === 'rounds' && entries !== null,
  on: ({ entries, only, settings }) => [entries, only, settings.against],
  fields: ({ entries, only, settings }) => ({
    rounds: roundsOf(entries ?? [], only).map(({ id, at, holes }) => ({
      id,
      at: localTime(at),
      holes: holes.map(({ hole, putts }) => ({
        hole,
        putts: putts.map(({ distance_m, result, side = null, length = null, fall_deg = null }) => ({
          distance_m,
          result,
          side,
          length,
          fall_deg,
        })),
      })),
    })),
    against: settings.against,
  }),
};

/** @type {Feature} */
export const rounds = {
  id: 'rounds',
  within: 'record',
  keeps,
  initial: { only: EVERYTHING, roundsPage: { page: 'list', open: '', hole: 0, said: '' } },
  questions: [question],
  make(app) {
    const act = actions(app);
    return { view: () => view(app.store.state, act), drawn: openDrawn };
  },
};
