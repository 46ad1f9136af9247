/**
 * What the engine works out for a drill, in one or two lines.
 * @import {Drill, State} from '../../../types.js'
 */
import { distanceUnit, fineUnit, number, percent, smallUnit, withUnit } from '../../../format.js';

const APART_M = 0.3;
const FOOT_M = 0.3048;

/** @type {Partial<Record<Drill['picture'], (state: State) => string>>} */
const FIGURES = {
  gate: ({ answers: { gate }, practice: { gap_m }, settings }) =>
    gate
      ? `Gap ${withUnit(gap_m ?? gate.matching_gap_m, fineUnit(settings))}, ${withUnit(FOOT_M, smallUnit(settings))} ahead: starts within ${number(gate.passes_deg, 1)}° pass${gap_m === null ? ',' : `; ${withUnit(gate.matching_gap_m, fineUnit(settings))} would pass`} two in three of yours. ${gate.share_of_holed === null ? '' : `Of putts holed from 8 ft, ${percent(gate.share_of_holed)} would pass it.`}`
      : '',
  ball_line: ({ answers: { ballLine: line }, putt, settings }) =>
    line
      ? `1° off is ${withUnit(line.at_foot_m, fineUnit(settings))} after ${withUnit(FOOT_M, smallUnit(settings))} and ${withUnit(line.at_hole_m, fineUnit(settings))} at the hole, ${withUnit(putt.distance_m, distanceUnit(settings))} away. The putt in hand: ${percent(line.make)} drop; 1° left ${percent(line.make_left)}, 1° right ${percent(line.make_right)}.`
      : '',
  eyes: ({ answers: { eyes }, putt, settings }) =>
    eyes
      ? `Eyes ${withUnit(Math.abs(eyes.at_hole_m), fineUnit(settings))} to one side turn the line ${number(Math.abs(eyes.turned_deg), 2)}° to the other: ${withUnit(Math.abs(eyes.at_hole_m), fineUnit(settings))} beside the middle at ${withUnit(putt.distance_m, distanceUnit(settings))}.`
      : '',
  shim: ({ answers: { shim }, settings }) =>
    shim
      ? `Under one foot, ${withUnit(APART_M, smallUnit(settings))} apart: ${shim.shims.map(({ slope_percent, thickness_m }) => `${number(slope_percent, 0)} % is ${number(1000 * thickness_m, 0)} mm`).join(', ')}.`
      : '',
  arc: ({ answers: { arc }, settings }) => {
    const last = arc?.points.at(-1);
    return last
      ? `${withUnit(last.along_m, fineUnit(settings))} back: ${withUnit(last.inside_m, fineUnit(settings))} inside, ${withUnit(last.rise_m, fineUnit(settings))} up, face ${number(last.turn_deg, 1)}° turned.`
      : '';
  },
};

/** @param {Drill} drill @param {State} state */
export const figures = ({ picture }, state) => FIGURES[picture]?.(state) ?? '';
