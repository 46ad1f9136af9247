/**
 * What the engine refuses, said in the player's units: made of the refusal's data, never read out of its sentence.
 * @import {Refusal, Settings} from './types.js'
 */
import { doesNotFit, inUnit, number, unitOfWire, withUnit } from './format.js';

/** @type {Record<string, string>} */
const NAMES = {
  distance_m: 'Distance',
  slope_percent: 'Slope',
  fall_deg: 'Falls',
  stimp_ft: 'Stimp',
  past_m: 'Past',
  at_m: 'From the ball',
  start_line_sd_deg: 'Start line spread',
  pace_sd_fraction: 'Pace spread',
  slope_sd_percent: 'Misread slope',
  minutes: 'Minutes',
};

/** Lists that the player never sees as such. @type {Record<string, string>} */
const LISTS = {
  taps_s: 'Three taps a stroke are needed: start, top, impact.',
  rates: 'Swing for a few seconds longer.',
  angles: 'Swing for a few seconds longer.',
};

/** @type {Record<string, (refusal: Refusal, settings: Settings) => string>} */
const WORDS = {
  runs_away: ({ value }, settings) => {
    const past = typeof value === 'number' ? `${withUnit(value, unitOfWire('past_m', 'm', settings))} past` : 'near';
    return `It runs away: no ball stops ${past} this hole. Less slope, a slower green or another pace would do.`;
  },
  off_survey: ({ field, value }, settings) =>
    `The ${lastOf(field ?? '')} lies ${withUnit(Number(value), unitOfWire('distance_m', 'm', settings))} outside ` +
    'the outermost readings. Take a reading beyond it, or measure this putt by itself.',
  too_slow: ({ value, low }) =>
    `The phone tells its motion ${number(Number(value), 0)} times a second; ${low} are needed. Tap the strokes instead.`,
};

/** The last word of a place as `stations[1].at_m`. @param {string} field */
const lastOf = (field) => field.split('.').at(-1) ?? field;

/** @param {string} field a field, or a place in a request @param {string} [other] */
export const nameOf = (field, other = field) => NAMES[lastOf(field)] ?? other;

/** @param {string} message */
const sentence = (message) => `${message.charAt(0).toUpperCase()}${message.slice(1)}${/[.!?]$/.test(message) ? '' : '.'}`;

/** @param {Refusal} refusal @param {Settings} settings @param {string} [text] what was typed */
export function refusalWords(refusal, settings, text) {
  const { code, message, field, value, low, high, unit } = refusal;
  const said = WORDS[code];
  if (said) return said(refusal, settings);
  if (field && LISTS[field] && unit === 'entries') return LISTS[field];
  if (!field || low === null || high === null || unit === 'entries') return sentence(message);
  const shown = unitOfWire(lastOf(field), unit ?? '', settings);
  const was = text ?? (typeof value === 'number' ? inUnit(value, shown) : String(value));
  return doesNotFit(nameOf(field, 'It'), was, low, high, shown);
}
