/**
 * A number of the watch to type.
 * @import {State} from '../../types.js'
 * @import {WatchActions} from './actions.js'
 */
import { sightedField } from '../../parts/eye-height.js';
import { FIELDS } from './fields.js';

/** @param {State} state @param {keyof typeof FIELDS} name @param {WatchActions} act */
export const field = (state, name, act) => sightedField(state, name, FIELDS[name], (text) => act.enter(name, text));
