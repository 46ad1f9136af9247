/**
 * The read of the putt in hand, and what follows from it.
 * @import {Question} from '../../questions.js'
 * @import {Player, Read, Putt, State} from '../../types.js'
 */
import { plain, puttAsked, speedTold, tiltTold } from '../../doubt.js';
import { refusalWords } from '../../refusal.js';
import { isYou } from './you.js';

/** @param {object | undefined} one @param {object} other */
const same = (one, other) => one === other || JSON.stringify(one) === JSON.stringify(other);

/** The same numbers, wherever they come from. @param {Putt | undefined} one @param {Putt} other */
export const alike = (one, other) => one === other || (one !== undefined && same(plain(one), plain(other)));

/** The putt in hand has been read; a drag that comes back to it makes another object of it. @param {State} state */
const isRead = ({ read, putt, refusal }) => alike(read?.putt, putt) && !refusal;

/** Which putt was asked about: one of some, if it is the same. @param {Putt} asked @param {(Putt | undefined)[]} some */
const puttOf = (asked, some) => some.find((each) => alike(each, asked)) ?? puttAsked(asked);

/** How far the tilt may be off beside what the engine itself knows a surveyed green to be off. @param {State} state */
const tiltSd = (state) => (state.putt.survey ? 0 : tiltTold(state).sd);

/** With how sure its green is. @param {State} state */
function doubted(state) {
  return { ...plain(state.putt), tilt_sd_percent: tiltSd(state), stimp_sd_ft: speedTold(state).sd };
}

/**
 * A tilt that was measured or felt stands in place of the player's misread. The speed's doubt is within the player's spread
 * of pace already.
 * @param {State} state
 */
export function windowFields(state) {
  const { putt, player, you } = state;
  const { source } = tiltTold(state);
  return {
    ...plain(putt),
    player,
    ...(you && isYou(state) && { player_low: you.low, player_high: you.high }),
    ...(source !== 'typed' && { tilt_sd_percent: tiltSd(state) }),
  };
}

/** Feet that have been tried so often tell how surely they read. */
const ENOUGH_TRIALS = 6;

/** @param {import('../../types.js').Sheet} sheet */
const on = (sheet) => (/** @type {State} */ state) => state.sheet === sheet && isRead(state);

/** @type {Question[]} */
export const questions = [
  {
    into: 'read',
    ask: 'read',
    on: ({ putt }) => [putt],
    fields: ({ putt }) => plain(putt),
    follows: true,
    // how sure it is comes a moment later; till then it is as sure as the one before
    lands: (/** @type {Read} */ value, asked, { read, putt }) => ({
      refusal: null,
      read: { ...(read?.off && { off: read.off }), value, putt: puttOf(asked, [putt]) },
    }),
    refused: (refusal, asked, state) =>
      refusal.code === 'runs_away' && alike(state.putt, asked)
        ? {
            refusal: { putt: state.putt, value: refusalWords(refusal, state.settings) },
            read: null,
            window: null,
            costs: null,
          }
        : {},
  },
  {
    into: 'window',
    ask: 'window',
    when: isRead,
    on: ({ putt, player, answers }) => [putt, player, answers.ownFeel],
    fields: windowFields,
    follows: true,
    lands: (value, { player: _, player_low: __, player_high: ___, tilt_sd_percent: ____, ...asked }, state) =>
      state.read ? { window: { putt: puttOf(asked, [state.putt, state.read.putt]), value }, closed: null } : {},
    refused: (refusal, _, { putt, settings }) =>
      refusal.code === 'no_window' ? { window: null, closed: { putt, value: refusalWords(refusal, settings) } } : {},
  },
  {
    into: 'ownFeel',
    ask: 'feel',
    on: ({ calibration }) => [calibration.feet],
    fields: ({ calibration: { feet } }) =>
      feet.length < ENOUGH_TRIALS
        ? null
        : { trials: feet.map(({ felt_percent, measured_percent, fall }) => ({ felt_percent, measured_percent, fall })) },
  },
  {
    into: 'sure',
    ask: 'read',
    when: isRead,
    on: ({ putt, player, answers }) => [putt, player, answers.ownFeel],
    fields: doubted,
    follows: true,
    lands: ({ aim_sd_deg, aim_offset_sd_m }, _, { read }) =>
      read ? { read: { ...read, off: { aim_sd_deg, aim_offset_sd_m } } } : {},
  },
  {
    into: 'byTilt',
    ask: 'read',
    when: on('doubt'),
    fields: (state) => ({ ...plain(state.putt), tilt_sd_percent: tiltSd(state) }),
  },
  {
    into: 'bySpeed',
    ask: 'read',
    when: on('doubt'),
    fields: (state) => ({ ...plain(state.putt), stimp_sd_ft: speedTold(state).sd }),
  },
  {
    into: 'costs',
    ask: 'sensitivity',
    when: on('costs'),
    on: ({ putt }) => [putt],
    fields: ({ putt }) => plain(putt),
    lands: ({ rows }, asked, { putt }) => ({ costs: { putt: puttOf(asked, [putt]), value: rows } }),
  },
  {
    into: 'bestPace',
    ask: 'best_pace',
    when: on('pace'),
    fields({ putt, player }) {
      const { past_m: _, ...rest } = plain(putt);
      return { ...rest, player };
    },
    // stops when the sheet is closed: the next read does not wait for it
    share: () => ({}),
  },
];
