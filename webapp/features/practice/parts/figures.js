/**
 * What the engine works out for a drill, in one or two lines.
 * @import {Drill, State} from '../../../types.js'
 */
import { distanceUnit, number, percent, withUnit } from '../../../format.js';

const MM = { name: 'millimetres', unit: 'mm', si: 0.001, digits: 0 };

/** @type {Partial<Record<Drill['picture'], (state: State) => string>>} */
const FIGURES = {
  gate: ({ answers: { gate }, practice: { gap_m } }) =>
    gate
      ? `Gap ${withUnit(gap_m ?? gate.matching_gap_m, MM)}, a foot ahead: starts within ${number(gate.passes_deg, 1)}° pass${gap_m === null ? ',' : `; ${withUnit(gate.matching_gap_m, MM)} would pass`} two in three of yours. ${gate.share_of_holed === null ? '' : `Of putts holed from 8 ft, ${percent(gate.share_of_holed)} would pass it.`}`
      : '',
  ball_line: ({ answers: { ballLine: line }, putt, settings }) =>
    line
      ? `1° off is ${withUnit(line.at_foot_m, MM)} at a foot and ${withUnit(line.at_hole_m, MM)} at the hole, ${withUnit(putt.distance_m, distanceUnit(settings))} away. The putt in hand: ${percent(line.make)} drop; 1° left ${percent(line.make_left)}, 1° right ${percent(line.make_right)}.`
      : '',
  eyes: ({ answers: { eyes }, putt, settings }) =>
    eyes
      ? `Eyes ${withUnit(Math.abs(eyes.at_hole_m), MM)} to one side turn the line ${number(Math.abs(eyes.turned_deg), 2)}° to the other: ${withUnit(Math.abs(eyes.at_hole_m), MM)} beside the middle at ${withUnit(putt.distance_m, distanceUnit(settings))}.`
      : '',
  shim: ({ answers: { shim } }) =>
    shim
      ? `Under one foot, 30 cm apart: ${shim.shims.map(({ slope_percent, thickness_m }) => `${number(slope_percent, 0)} % is ${withUnit(thickness_m, MM)}`).join(', ')}.`
      : '',
  arc: ({ answers: { arc } }) => {
    const last = arc?.points.at(-1);
    return last
      ? `${withUnit(last.along_m, MM)} back: ${withUnit(last.inside_m, MM)} inside, ${withUnit(last.rise_m, MM)} up, face ${number(last.turn_deg, 1)}° turned.`
      : '';
  },
};

/** @param {Drill} drill @param {State} state */
export const figures = ({ picture }, state) => FIGURES[picture]?.(state) ?? '';
