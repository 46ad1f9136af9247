/** What calibration says. @import {Fall, Settings} from '../../types.js' */
import { number, smallUnit, withUnit } from '../../format.js';

/** @param {number} fall_deg clockwise from the line to the hole */
export function fallWords(fall_deg) {
  const deg = ((Math.round(fall_deg) % 360) + 360) % 360;
  const side = deg < 180 ? 'right' : 'left';
  const off = deg < 180 ? deg : 360 - deg;
  if (off < 5) return 'straight downhill';
  if (off > 175) return 'straight uphill';
  if (off < 70) return `downhill, falls ${side}`;
  if (off > 110) return `uphill, falls ${side}`;
  return `falls ${side}`;
}

/** @type {Record<Fall | 'small' | 'large', string>} */
export const KINDS = { left: 'Falls left', right: 'Falls right', toes: 'Toes lower', heels: 'Heels lower', small: 'Under 2 %', large: '2 % and more' };
/** @type {Record<Fall, string>} */
export const SEEN = { left: 'falls left', right: 'falls right', toes: 'downhill', heels: 'uphill' };

/** @param {number} value per cent of slope @param {number} [digits] */
export const percents = (value, digits = 1) => `${number(value, digits)}\u00a0%`;

/** @param {number} value @param {number} digits */
export const signed = (value, digits) => `${value > 0 ? '+' : ''}${number(value, digits)}`;

/** @param {number} metres @param {Settings} settings */
export const small = (metres, settings) => withUnit(metres, { ...smallUnit(settings), digits: 1 });

/** @param {string} date as it is kept */
export const dated = (date) => new Date(`${date}T12:00`).toLocaleDateString('en-GB', { day: 'numeric', month: 'short', year: 'numeric' });
