/** What calibration says. @import {Fall, Settings} from '../../types.js' */
import { number, smallUnit, withUnit } from '../../format.js';

/** @type {Record<Fall | 'small' | 'large', string>} */
export const KINDS = {
  left: 'Falls left',
  right: 'Falls right',
  toes: 'Toes lower',
  heels: 'Heels lower',
  small: 'Under 2 %',
  large: '2 % and more',
};
/** @type {Record<Fall, string>} */
export const SEEN = { left: 'falls left', right: 'falls right', toes: 'downhill', heels: 'uphill' };

/** @param {number} value per cent of slope @param {number} [digits] */
export const percents = (value, digits = 1) => `${number(value, digits)}\u00a0%`;

/** @param {number} metres @param {Settings} settings */
export const small = (metres, settings) => withUnit(metres, { ...smallUnit(settings), digits: 1 });
