/**
 * The putts that drills ask for, found on a green that has been walked.
 * @import {Drill, State} from '../../types.js'
 * @import {PracticeActions} from './actions.js'
 */
import { html } from 'lit-html';

/** By the drill's picture. @type {Partial<Record<Drill['picture'], Partial<State['walkPage']['want']>>>} */
const SOUGHT = {
  shallow: { distance_m: 3.048, slope_percent: 0.8, break: null, way: 'across' },
  long: { distance_m: 9.144, slope_percent: 1.5, break: null, way: null },
  chalk: { distance_m: 2.4384, slope_percent: 2.5, break: null, way: 'across' },
};
/** Readings that make a map. */
const ENOUGH = 3;

/**
 * The way to the map, where there is one.
 * @param {State} state @param {Drill | undefined} drill @param {PracticeActions} act
 */
export function sought({ entries }, drill, act) {
  const want = drill && SOUGHT[drill.picture];
  const mapped = entries?.some((each) => each.kind === 'green' && !each.gone && each.points.length >= ENOUGH);
  return want && mapped
    ? html`<button type="button" class="word" @click=${() => act.seek(want)}>Where on the green</button>`
    : '';
}
