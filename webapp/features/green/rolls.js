/** The rolls that count: of this green, today. @import {State} from '../../types.js' */
import { dayOf, today } from '../../format.js';

/** @param {Pick<State, 'calibration' | 'place'>} state */
export const rollsHere = ({ calibration, place }) =>
  calibration.rolls.filter((roll) => roll.place === place && roll.date && dayOf(roll.date) === today());
