/**
 * The green's speed: rolled, off the Stimpmeter, or told; kept by place and day among the notes.
 * @import {Answers, NoteEntry, State} from '../../types.js'
 * @import {GreenActions} from './actions.js'
 */
import { refusalWords } from '../../refusal.js';
import { html, nothing } from 'lit-html';
import { dayWords, distanceUnit, number, percents, several, withUnit } from '../../format.js';
import { choice } from '../../parts/choice.js';
import { greenField } from './green-field.js';
import { rollsHere } from './rolls.js';

const RULES =
  'Before a stroke-play round that day a ball may not be rolled on the course’s greens (Rule 5.2b); practice areas are ' +
  'exempt. In a round it may not be rolled to test a green (Rule 13.1e), but on the green just played or a practice green ' +
  'between two holes. Ask the committee.';

/** @param {State} state @param {GreenActions} act */
export function speed(state, act) {
  const {
    place,
    greenPage: {
      by,
      draft: { stimp_ft: told_ft },
    },
  } = state;
  return html`
    <div class="number-field"><label for="place">Place</label><span class="number-entry"><input id="place" autocomplete="off"
      maxlength="80" placeholder="e.g. North course" .value=${place}
      @change=${(/** @type {Event} */ event) =>
        act.setPlace(/** @type {HTMLInputElement} */ (event.target).value)}></span></div>
    ${choice({
      label: 'Measured with',
      name: 'by',
      value: by,
      options: [
        ['rolls', 'a ball'],
        ['stimpmeter', 'a Stimpmeter'],
      ],
      onValue: (value) => act.choose({ by: /** @type {typeof by} */ (value) }),
    })}
    ${by === 'rolls' ? rolls(state, act) : stimpmeter(state, act)}
    <section><h2>Or as told</h2><div class="fields">${greenField(state, act, 'stimp_ft')}</div>
      <button type="button" class="word" ?disabled=${told_ft === undefined}
        @click=${() => told_ft !== undefined && act.keepSpeed(told_ft, null)}>Keep what was told</button></section>
    ${kept(state, act)}`;
}

/** @param {State} state @param {GreenActions} act */
function rolls(state, act) {
  const {
    calibration,
    greenPage: { rolling, way, draft },
    answers,
    refusals,
    settings,
  } = state;
  const here = rollsHere(state);
  const away = calibration.rolls.length - here.length;
  const wrong = answers.rolled?.suspects ?? [];
  const unit = distanceUnit(settings);
  return html`<section>
    <p>Choose a line that does not curve. Roll a ball out, and back along the same line. Tap as it leaves and as it stops, then
      measure the roll.</p>
    <p><a class="word" href="#watch">Let the phone watch the roll</a></p>
    <p class="quiet">${RULES}</p>
    ${choice({
      label: 'The ball is',
      name: 'ball',
      value: calibration.ball,
      options: [
        ['rolled', 'rolled by hand'],
        ['putted', 'putted'],
      ],
      onValue: (value) => act.setBall(/** @type {typeof calibration.ball} */ (value)),
    })}
    ${choice({
      label: 'This roll goes',
      name: 'way',
      value: way,
      options: [
        ['out', 'out'],
        ['back', 'back'],
      ],
      onValue: (value) => act.choose({ way: /** @type {typeof way} */ (value) }),
    })}
    <div class="taps">
      <button type="button" class="press" ?disabled=${rolling !== null} @pointerdown=${() => rolling === null && act.tap()}
        @keydown=${onKey(act.tap)}>Leaves</button>
      <button type="button" class="press" ?disabled=${rolling === null} @pointerdown=${() => rolling !== null && act.tap()}
        @keydown=${onKey(act.tap)}>Stops</button>
    </div>
    <div class="fields two">${greenField(state, act, 'time_s')} ${greenField(state, act, 'distance_m')}</div>
    <button type="button" class="word" ?disabled=${draft.time_s === undefined || draft.distance_m === undefined}
      @click=${() => act.addRoll()}>Keep this roll</button>
    ${
      here.length
        ? html`<ol class="list">${here.map(
            (roll, i) => html`<li class=${wrong.includes(i) ? 'suspect' : nothing}>
      <span>${roll.way}, ${rolled(roll, unit)}${
        wrong.includes(i)
          ? html`
        <b>${wrong.length > 1 ? 'this or its like looks wrong' : 'looks wrong'}</b>`
          : ''
      }</span>
      <button type="button" class="word" aria-label="Remove roll ${i + 1}"
        @click=${() => act.removeRoll(i)}>Remove</button></li>`,
          )}</ol>
      <button type="button" class="word" @click=${() => act.clearRolls()}>Clear the rolls</button>`
        : ''
    }
    ${
      away
        ? html`<p class="quiet">${several(away, 'roll')} of another green or day ${away === 1 ? 'does' : 'do'} not count
      here.</p>`
        : ''
    }
    ${refusals.rolled ? html`<p class="hint" role="note">${refusalWords(refusals.rolled, settings)}</p>` : ''}
    ${answers.rolled ? result(answers.rolled, 'rolls', act) : ''}
  </section>`;
}

/** The tap counts when the finger goes down; a keyboard has Enter and Space. @param {() => void} does */
const onKey = (does) => (/** @type {KeyboardEvent} */ event) => {
  if (event.repeat || (event.key !== 'Enter' && event.key !== ' ')) return;
  event.preventDefault();
  does();
};

/** @param {State} state @param {GreenActions} act */
function stimpmeter(state, act) {
  const { answers, refusals } = state;
  return html`<section>
    <p>Three balls out, three back along the same line, each from the bar’s end to where it stops.</p>
    ${
      /** @type {const} */ (['out', 'back']).map(
        (way) => html`<fieldset class="choice"><legend>${way === 'out' ? 'Out' : 'Back'}</legend>
      <div class="fields three">${[1, 2, 3].map((n) => greenField(state, act, `${way}${n}`))}</div>
      ${
        answers.stimpmeter?.again.includes(way)
          ? html`<p class="problem"
        role="alert">More than 8 in apart: the booklet has these three rolled again.</p>`
          : ''
      }</fieldset>`,
      )
    }
    ${refusals.stimpmeter ? html`<p class="problem" role="alert">${refusalWords(refusals.stimpmeter, state.settings)}</p>` : ''}
    ${answers.stimpmeter ? result(answers.stimpmeter, 'stimpmeter', act) : ''}
  </section>`;
}

/**
 * @param {Answers['rolled'] | Answers['stimpmeter']} found @param {'rolls' | 'stimpmeter'} stimp_source
 * @param {GreenActions} act
 */
const result = (
  { stimp_ft, stimp_sd_ft, slope_percent, slope_sd_percent },
  stimp_source,
  act,
) => html`<div class="result" aria-live="polite">
  <p class="big">${number(stimp_ft, 1)}<small> ft</small></p>
  <p class="say">give or take ${number(Math.max(0.1, stimp_sd_ft), 1)} ft</p>
  <p>The line ${
    Math.abs(slope_percent) < slope_sd_percent
      ? 'is about level'
      : slope_percent > 0
        ? `falls ${percents(slope_percent)} on the way out`
        : `rises ${percents(-slope_percent)} on the way out`
  }, give or take ${percents(slope_sd_percent)}.</p>
  <button type="button" class="press" @click=${() => act.keepSpeed(stimp_ft, { stimp_sd_ft, stimp_source })}>Keep and take into
    the read</button>
</div>`;

/** The newest; all of them are among the notes. */
const MOST_SHOWN = 8;

/** @param {State} state @param {GreenActions} act */
function kept({ entries }, act) {
  const speeds = /** @type {(NoteEntry & {stimp_ft: number})[]} */ (
    (entries ?? []).filter((entry) => entry.kind === 'note' && entry.stimp_ft !== undefined && !entry.gone)
  ).slice(0, MOST_SHOWN);
  return speeds.length
    ? html`<section><h2>Speeds kept</h2><ol class="list">${speeds.map((speed, i) => {
        const { id, at, place, stimp_ft, stimp_sd_ft } = speed;
        return html`<li>
      <span><b>${number(stimp_ft, 1)} ft</b>${stimp_sd_ft === undefined ? '' : ` ± ${number(Math.max(0.1, stimp_sd_ft), 1)}`}
        ${place || 'A green'}, ${dayWords(at)}</span>
      <span class="does"><button type="button" class="word" aria-label="Use ${number(stimp_ft, 1)} ft"
        @click=${() => act.useSpeed(speed)}>Use</button>
      <button type="button" class="word" aria-label="${place || 'A green'} is home"
        @click=${() => act.makeHome(stimp_ft)}>Home</button>
      <button type="button" class="word" aria-label="Remove speed ${i + 1}"
        @click=${() => act.removeSpeed(id)}>Remove</button></span></li>`;
      })}</ol></section>`
    : '';
}

/**
 * How it was measured: by its length and time, or as the phone watched it.
 * @param {import('../../engine/protocol.js').BallFields} roll @param {import('../../format.js').Unit} unit
 */
const rolled = ({ distance_m, time_s, deceleration_mps2 }, unit) =>
  deceleration_mps2 != null
    ? `watched, slows by ${number(deceleration_mps2, 2)}\u00a0m/s²`
    : `${withUnit(distance_m ?? 0, unit)}, ${number(time_s ?? 0, 2)}\u00a0s`;
