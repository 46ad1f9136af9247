/**
 * How far the line may be off, in words.
 * @import {Answers, Settings} from '../../types.js'
 */
import { html } from 'lit-html';
import { number, smallUnit, withUnit } from '../../format.js';

/** Deviations; a pitch that is farther off has another cause. */
const ODD = 3;

/** In few words, for who looks at the green. @param {Answers['camera' | 'marked']} told @param {Settings} settings */
export const doubts = ({ error_m }, settings) =>
  html`<p class="quiet">${
    error_m === null
      ? 'Stand farther back: from here the least error moves the line anywhere'
      : `Off by up to ${withUnit(error_m, smallUnit(settings))}: the ring`
  }</p>`;

/** What puts it off so far, 19 times in 20. @param {Answers['camera']} told @param {Settings} settings */
export function causes({ error_px, told_pitch_deg, height_sd_m, pitch_sd_deg }, settings) {
  if (error_px === null) return '';
  const eye = `the eye ${withUnit(height_sd_m, smallUnit(settings))}`;
  return html`<p class="quiet">19 times in 20, with touches 1
    mm${told_pitch_deg === null ? ` and ${eye}` : `, ${eye} and the phone ${number(pitch_sd_deg, 0)}°`} off.</p>`;
}

/** Marks and phone that cannot both be right. @param {Answers['camera' | 'marked']} told */
export function against({ told_pitch_deg, pitch_deg, pitch_sd_deg }) {
  const steeper = (told_pitch_deg ?? pitch_deg) - pitch_deg;
  return Math.abs(steeper) > ODD * pitch_sd_deg
    ? html`<p class="problem">The phone was held ${number(Math.abs(steeper), 0)}° ${steeper > 0 ? 'steeper' : 'flatter'} than
      the marks say: check the putt’s length, the eye’s height and the lens.</p>`
    : '';
}
