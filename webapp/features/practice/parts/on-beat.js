/**
 * How far off the beat the ball was struck.
 * @import {State} from '../../../types.js'
 * @import {PracticeActions} from '../actions.js'
 */
import { html } from 'lit-html';
import { number } from '../../../format.js';

const DOES = { off: 'Listen to the strike', asking: 'Waiting for the microphone', delay: 'Stop', on: 'Stop listening' };

/** @param {number} off_s */
const offWords = (off_s) =>
  Math.abs(off_s) < 0.005 ? 'on the beat' : `${number(Math.abs(off_s), 2)} s ${off_s > 0 ? 'late' : 'early'}`;
/** @param {number} off_s */
const short = (off_s) => number(off_s, 2);

/** @param {State} state @param {PracticeActions} act */
export function onBeat({ practicePage }, act) {
  const { onBeat: hears, loop, offs_s, beatHeard, sound } = practicePage;
  const last = offs_s.at(-1);
  const { lean, spread } = beatHeard ?? {};
  return html`<section class="ear">
    ${
      hears === 'delay'
        ? html`<p role="status"><strong>Hold an earpiece to the microphone</strong> for three strokes: it hears how late the
          beat is.</p>`
        : ''
    }
    ${
      hears === 'on'
        ? html`<p class="ear-last" role="status">${
            last ? html`<span class="big">${offWords(last[1])}</span>` : 'Earpiece back on: strike with the high note.'
          }</p>`
        : ''
    }
    ${
      lean && spread
        ? html`<p>${offs_s.length} strikes: ${offWords(lean.value)} (${short(lean.low)} to ${short(lean.high)} s), spread
          ${short(spread.value)} s.</p>`
        : ''
    }
    <button type="button" class="go plain" ?disabled=${sound !== 'playing' || hears === 'asking'}
      aria-pressed=${hears !== 'off'}
      @click=${act.listenToBeat}>${DOES[hears]}</button>
    ${
      hears === 'on' && loop
        ? html`<p class="quiet">The delay is measured. <button type="button" class="word"
          @click=${act.forgetDelay}>Other headphones</button></p>`
        : ''
    }
  </section>`;
}
