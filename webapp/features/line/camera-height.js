/**
 * The height of the camera.
 * @import {State} from '../../types.js'
 * @import {LineActions} from './actions.js'
 */
import { choice } from '../../parts/choice.js';

/** @param {State} state @param {LineActions} act */
export const cameraHeight = ({ sighted }, act) =>
  choice({
    label: 'Camera held',
    name: 'eye',
    value: sighted.eye,
    options: [
      ['standing', 'standing'],
      ['crouching', 'crouching'],
    ],
    onValue: (value) => act.hold(/** @type {any} */ (value)),
  });
