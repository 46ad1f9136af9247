/**
 * What the engine works out for a drill, in one or two lines.
 * @import {Drill, Settings, State} from '../../../types.js'
 */
import { distanceUnit, FOOT_M, fineUnit, number, percent, smallUnit, withUnit } from '../../../format.js';

const APART_M = 0.3;

/** Lengths in the player's units, of three sizes. @param {Settings} settings */
const lengths = (settings) => ({
  fine: (/** @type {number} */ m) => withUnit(m, fineUnit(settings)),
  small: (/** @type {number} */ m) => withUnit(m, smallUnit(settings)),
  far: (/** @type {number} */ m) => withUnit(m, distanceUnit(settings)),
});

/** @type {Partial<Record<Drill['picture'], (state: State, inUnits: ReturnType<typeof lengths>) => string>>} */
const FIGURES = {
  gate({ answers: { gate }, practice: { gap_m } }, { fine, small }) {
    if (!gate) return '';
    const { matching_gap_m, passes_deg, share_of_holed } = gate;
    const others = gap_m === null ? ',' : `; ${fine(matching_gap_m)} would pass`;
    const holed = share_of_holed === null ? '' : `Of putts holed from 8 ft, ${percent(share_of_holed)} would pass it.`;
    const passes = `starts within ${number(passes_deg, 1)}° pass${others}`;
    return `Gap ${fine(gap_m ?? matching_gap_m)}, ${small(FOOT_M)} ahead: ${passes} two in three of yours. ${holed}`;
  },
  ball_line({ answers: { ballLine: line }, putt }, { fine, small, far }) {
    if (!line) return '';
    const off = `1° off is ${fine(line.at_foot_m)} after ${small(FOOT_M)} and ${fine(line.at_hole_m)} at the hole`;
    const drop = `${percent(line.make)} drop; 1° left ${percent(line.make_left)}, 1° right ${percent(line.make_right)}`;
    return `${off}, ${far(putt.distance_m)} away. The putt in hand: ${drop}.`;
  },
  eyes({ answers: { eyes }, putt }, { fine, far }) {
    if (!eyes) return '';
    const off = fine(Math.abs(eyes.at_hole_m));
    const turned = `turn the line ${number(Math.abs(eyes.turned_deg), 2)}° to the other`;
    return `Eyes ${off} to one side ${turned}: ${off} beside the middle at ${far(putt.distance_m)}.`;
  },
  shim({ answers: { shim } }, { small }) {
    const heights = shim?.shims.map(
      ({ slope_percent, thickness_m }) => `${number(slope_percent, 0)} % is ${number(1000 * thickness_m, 0)} mm`,
    );
    return heights ? `Under one foot, ${small(APART_M)} apart: ${heights.join(', ')}.` : '';
  },
  arc({ answers: { arc } }, { fine }) {
    const last = arc?.points.at(-1);
    if (!last) return '';
    const place = `${fine(last.along_m)} back: ${fine(last.inside_m)} inside, ${fine(last.rise_m)} up`;
    return `${place}, face ${number(last.turn_deg, 1)}° turned.`;
  },
};

/** @param {Drill} drill @param {State} state */
export const figures = ({ picture }, state) => FIGURES[picture]?.(state, lengths(state.settings)) ?? '';
