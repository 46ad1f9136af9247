/**
 * A number of the line's screen to type.
 * @import {State} from '../../types.js'
 * @import {LineActions} from './actions.js'
 */
import { sightedField } from '../../parts/eye-height.js';
import { FIELDS } from './fields.js';

/** @param {State} state @param {LineActions} act @param {keyof typeof FIELDS} name */
export const lineField = (state, act, name) => sightedField(state, name, FIELDS[name], (text) => act.enter(name, text));
