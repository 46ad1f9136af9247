/**
 * The read of the putt in hand, and what follows from it.
 * @import {Question} from '../../questions.js'
 * @import {Player, Read, Putt, State} from '../../types.js'
 */

import { refusalWords } from '../../refusal.js';

/** @param {object | undefined} one @param {object} other */
const same = (one, other) => one === other || JSON.stringify(one) === JSON.stringify(other);

/** The putt in hand has been read; a drag that comes back to it makes another object of it. @param {State} state */
const isRead = ({ read, putt, refusal }) => same(read?.putt, putt) && !refusal;

/** Which putt was asked about: one of some, if it is the same. @param {Putt & {player: Player}} asked @param {Putt[]} some */
function puttOf({ player: _, ...putt }, some) {
  return some.find((each) => same(each, putt)) ?? putt;
}

/** @type {Question[]} */
export const questions = [
  {
    into: 'read',
    ask: 'read',
    on: ({ putt }) => [putt],
    fields: ({ putt }) => putt,
    follows: true,
    lands: (/** @type {Read} */ value, asked) => ({ read: { value, putt: asked }, refusal: null }),
    refused: (refusal, putt, state) =>
      refusal.code === 'runs_away' && same(state.putt, putt)
        ? { refusal: { putt, value: refusalWords(refusal, state.settings) }, read: null, window: null, costs: null }
        : {},
  },
  {
    into: 'window',
    ask: 'window',
    when: isRead,
    on: ({ putt, player }) => [putt, player],
    fields: ({ putt, player }) => ({ ...putt, player }),
    follows: true,
    lands: (value, asked, state) =>
      state.read ? { window: { putt: puttOf(asked, [state.putt, state.read.putt]), value }, closed: null } : {},
    refused: (refusal, _, { putt, settings }) =>
      refusal.code === 'no_window' ? { window: null, closed: { putt, value: refusalWords(refusal, settings) } } : {},
  },
  {
    into: 'costs',
    ask: 'sensitivity',
    when: (state) => state.sheet === 'costs' && isRead(state),
    on: ({ putt }) => [putt],
    fields: ({ putt }) => putt,
    lands: ({ rows }, putt) => ({ costs: { putt, value: rows } }),
  },
  {
    into: 'presets',
    ask: 'presets',
    when: ({ sheet }) => sheet === 'player',
    fields: () => ({}),
    lands: ({ players }) => ({ presets: players }),
  },
];
