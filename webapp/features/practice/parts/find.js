/**
 * The player's own tempo, from taps or from the phone swung like a putter.
 * @import {State} from '../../../types.js'
 * @import {PracticeActions} from '../actions.js'
 */
import { html } from 'lit-html';
import { number } from '../../../format.js';
import { REASONS } from '../words.js';

/** @param {State} state @param {PracticeActions} act */
export function find({ practicePage }, act) {
  const { finding, taps, found, note } = practicePage;
  return html`<h1>Find my tempo</h1>
    ${
      finding === 'taps'
        ? html`<button type="button" class="go tap" @pointerdown=${act.tap}
      @keydown=${(/** @type {KeyboardEvent} */ event) => event.key === ' ' && !event.repeat && act.tap(event)}>Tap: start, top,
        ball<span class="big">${Math.floor(taps.length / 3)}<small> strokes</small></span></button>
      <p class="quiet">Both your hands hold the putter: somebody who watches you taps, or you tap along with a film of your
        stroke.</p>`
        : ''
    }
    ${
      finding === 'motion'
        ? html`<p class="run-cue">Hold the phone flat between your palms, on end and tight, and swing it as
      your putter. Pause two seconds between strokes.</p>`
        : ''
    }
    ${
      finding
        ? html`<button type="button" class="go plain" @click=${act.stopFinding}>That was it</button>`
        : html`
      <p>Eight strokes tell it well. Pause two seconds between them.</p>
      <button type="button" class="go" @click=${() => act.startFinding('motion')}>Swing the phone</button>
      <button type="button" class="go plain" @click=${() => act.startFinding('taps')}>Tap the strokes</button>`
    }
    ${note ? html`<p class="problem" role="alert">${note}</p>` : ''}
    ${
      found
        ? html`<section aria-live="polite" class="found">
      <p><span class="big">${number(found.ratio, 2)}<small> : 1</small></span> <span class="say">${interval(found)}</span></p>
      <p>${number(found.back_s, 2)} s back${comma(spread(found.back_sd_s))}; ${number(found.forward_s, 2)} s
        through${comma(spread(found.forward_sd_s))}. From ${found.strokes.length}
          ${found.strokes.length === 1 ? 'stroke' : 'strokes'}.</p>
      ${
        found.unused.length
          ? html`<p class="quiet">Not used:
        ${found.unused
          .map(({ from_s, reason }) => `${REASONS[reason]} at ${number(from_s - start(found), 0)} s`)
          .join('; ')}.</p>`
          : ''
      }
      <button type="button" class="go" @click=${act.useFound}>Use it</button>
    </section>`
        : ''
    }`;
}

/** What the strokes and the way of finding them leave open. @param {NonNullable<State['practicePage']['found']>} found */
const interval = ({ ratio_low, ratio_high }) =>
  ratio_low === null || ratio_high === null ? '' : `between ${number(ratio_low, 1)} and ${number(ratio_high, 1)}`;

/** @param {number | null} sd */
const spread = (sd) => (sd === null ? '' : `give or take ${number(sd, 2)}`);

/** @param {string} words */
const comma = (words) => words && `, ${words}`;

/**
 * Times are those of the phone's clock; said from the first move on.
 * @param {NonNullable<State['practicePage']['found']>} found
 */
const start = ({ strokes, unused }) => Math.min(...strokes.map(({ at_s }) => at_s), ...unused.map(({ from_s }) => from_s));
