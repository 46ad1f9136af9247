/**
 * A plan as a link, as a coach sends it: where, and each drill with its minutes. All of it stands behind the #, which no server
 * gets to see.
 * @import {Drill, Practice} from '../../types.js'
 */
import { rangeOf } from '../../fields.js';

const MARK = 'plan?';
const PLACES = ['room', 'green'];
const BLOCK = /^([a-z_]{1,40})\.(\d{1,2})$/;
const MINUTES = rangeOf('PlanFields', 'minutes');

/** @typedef {{place: Practice['place'], blocks: {drill: string, minutes: number}[]}} SentPlan */

/** @param {Practice} practice */
export function planAddress({ place, blocks }) {
  const parts = new URLSearchParams({
    place,
    do: blocks.map(({ drill, minutes }) => `${drill}.${minutes}`).join('~'),
  });
  return `${location.origin}${location.pathname}#${MARK}${parts}`;
}

/** @param {SentPlan} plan */
export const minutesOf = ({ blocks }) => blocks.reduce((sum, { minutes }) => sum + minutes, 0);

/**
 * The plan that a fragment holds: undefined where it is of another kind, null where it is damaged.
 * @param {string} fragment @returns {SentPlan | null | undefined}
 */
export function planIn(fragment) {
  if (!fragment.startsWith('plan')) return undefined;
  const plain = fragment.replace(/^plan%3F/i, MARK); // as some messengers write it
  if (!plain.startsWith(MARK)) return null;
  const parts = new URLSearchParams(plain.slice(MARK.length));
  const place = parts.get('place') ?? '';
  const found = (parts.get('do') ?? '').split('~').map((block) => BLOCK.exec(block));
  const blocks = found.flatMap((match) => (match ? [{ drill: match[1] ?? '', minutes: Number(match[2]) }] : []));
  const plan = { place: /** @type {Practice['place']} */ (place), blocks };
  const whole = blocks.length === found.length && PLACES.includes(place) && blocks.every(({ minutes }) => minutes > 0);
  return whole && minutesOf(plan) >= MINUTES.low && minutesOf(plan) <= MINUTES.high ? plan : null;
}

/** Drills of a plan that this version does not have. @param {SentPlan} plan @param {Drill[]} drills */
export const unknownOf = ({ blocks }, drills) => blocks.filter(({ drill }) => drills.every(({ id }) => id !== drill));
