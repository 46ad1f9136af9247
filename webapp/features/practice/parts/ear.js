/**
 * Pace by ear: what stands in the ball's way, and what the putts would have done.
 * @import {State} from '../../../types.js'
 * @import {PracticeActions} from '../actions.js'
 */
import { html } from 'lit-html';
import { distanceUnit, number, percent, signed, unitOf, withUnit } from '../../../format.js';
import { paceWords } from '../words.js';
import { practiceField } from './practice-field.js';

const DOES = { off: 'Listen', asking: 'Waiting for the microphone', on: 'Stop listening' };

/** The numbers that it rests on. @param {State} state @param {PracticeActions} act */
export const earFields = (state, act) => html`<div class="fields pair">
    ${practiceField(state, act, 'wall_m')} ${practiceField(state, act, 'meant_m')}
      ${practiceField(state, act, 'floor_ft', '0: not known, the paper tells it')}
      ${practiceField(state, act, 'paper_m', '0: no paper')}
  </div>
  ${floor(state, act)}`;

/**
 * With one mark all rests on the floor's speed: balls rolled on it tell that.
 * @param {State} state @param {PracticeActions} act
 */
function floor({ putt, practice, settings }, act) {
  const { floor_ft, floor_sd_ft } = practice.ear;
  const rolled = putt.stimp_source === 'rolls' || putt.stimp_source === 'filmed';
  const taken = rolled && floor_ft === putt.stimp_ft;
  const unit = unitOf('stimp_ft', settings);
  if (taken) return html`<p class="quiet">As rolled, give or take ${withUnit(floor_sd_ft, unit)}.</p>`;
  return rolled
    ? html`<button type="button" class="word" @click=${act.takeFloor}>Take ${withUnit(putt.stimp_ft, unit)}, as rolled</button>`
    : html`<button type="button" class="word" @click=${act.rollFloor}>Roll a ball for its speed</button>`;
}

/** What was heard, to be read from afar. @param {State} state @param {PracticeActions} act */
export function ear({ practicePage, practice, answers: { paces }, settings }, act) {
  const { hearing, floorHeard_ft } = practicePage;
  const heard = practice.run?.heard;
  const last = heard?.rolls_m.at(-1);
  return html`<section class="ear">
    <button type="button" class="go plain" ?disabled=${hearing === 'asking'} aria-pressed=${hearing === 'on'}
      @click=${act.listen}>${DOES[hearing]}</button>
    ${
      !heard || last === undefined
        ? html`<p class="quiet">${hearing === 'on' ? 'Listening: strike, and let it meet the wall.' : ''}</p>`
        : html`<p class="ear-last" role="status"><span class="big">${paceWords(last / heard.meant_m - 1)}</span> <span
          class="quiet">would have run ${withUnit(last, distanceUnit(settings))} ± ${withUnit(
            heard.roll_sd_m,
            distanceUnit(settings),
          )}</span></p>`
    }
    ${
      heard && paces?.lean && paces.spread
        ? html`<p>${heard.rolls_m.length} putts: lean ${signed(100 * paces.lean.value, 0)} %
          (${signed(100 * paces.lean.low, 0)} to ${signed(100 * paces.lean.high, 0)}), spread ${percent(paces.spread.value)}
          (${percent(paces.spread.low)} to ${percent(paces.spread.high)}).</p>`
        : ''
    }
    ${floorHeard_ft ? html`<p class="quiet">The floor runs as ${number(floorHeard_ft, 1)} ft on the Stimpmeter.</p>` : ''}
  </section>`;
}
