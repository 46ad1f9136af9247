/**
 * The walk: the next place large, and the phone that takes its reading by lying still.
 * @import {GreenEntry, OnMap, State} from '../../types.js'
 * @import {WalkActions} from './actions.js'
 */
import { html } from 'lit-html';
import { inUnit, number } from '../../format.js';
import { choice } from '../../parts/choice.js';
import { walkField } from './walk-field.js';
import { greenOf } from './greens.js';
import { leftOf, MOST, nextOf, walkUnit } from './plan.js';
import { sketch } from './sketch.js';

/** @type {[string, string][]} */
const PLACES = [16, 25, 36, 49].map((count) => [String(count), String(count)]);

/** @param {State} state @param {WalkActions} act */
export function walking(state, act) {
  const { walkPage, calibration } = state;
  const green = /** @type {GreenEntry} */ (greenOf(state));
  const left = leftOf(state, green);
  const next = nextOf(state, green);
  const live = walkPage.tilt.kind === 'live' || walkPage.tilt.kind === 'asking';
  return html`<section class="next" aria-label="Next place">
      ${next ? place(next, state) : html`<p class="say">All places are read.</p>`}
      <p class="quiet">${said(green, left, next)}</p>
    </section>
    ${sketch(green, left, next, act)}
    ${left.length || live ? '' : done(green, act)}
    ${live ? lying(state, act, next) : calibration.phone ? ready(state, act, next, left.length) : zero()}
    ${live ? '' : typed(state, act, next)}
    ${
      live
        ? ''
        : choice({
            label: 'Places of this walk',
            name: 'walk-places',
            value: String(green.places),
            options: PLACES,
            onValue: (value) => act.places(Number(value)),
          })
    }`;
}

/** @param {OnMap} next @param {State} state */
function place([x, y], { settings }) {
  const unit = walkUnit(settings);
  return html`<p class="big">${inUnit(y, unit)}<small> on</small> ${inUnit(x, unit)}<small> right</small></p>`;
}

/** @param {GreenEntry} green @param {OnMap[]} left @param {OnMap | undefined} next */
function said({ points }, left, next) {
  const taken = `${points.length} taken`;
  if (points.length >= MOST) return `${taken}, as many as a green takes.`;
  if (left.length) return `${taken}, ${left.length} to go; counted from your corner, the dot.`;
  return next ? `${taken}. The walk is done; one more would teach most here.` : taken;
}

/** @param {State} state @param {WalkActions} act @param {OnMap | undefined} next */
function lying({ answers, refusals, walkPage: { lifted, tilt } }, act, next) {
  const { laid } = answers;
  const doing = !next
    ? 'Done'
    : tilt.kind !== 'live'
      ? 'Waiting for the phone’s tilt'
      : !lifted
        ? '✓ Taken. Lift it and walk on'
        : refusals.laid
          ? 'Lay it down there, on its back'
          : '… Settling';
  return html`<section class="measured" aria-label="Level"><div>
      <p class="say" aria-live="off">${doing}</p>
      <p class="quiet">${
        laid && !refusals.laid ? `${number(laid.slope_percent, 1)} %` : 'Long edge straight on, top away from you.'
      }</p></div></section>
    <div class="choice-row">
      <button type="button" class="word" @click=${() => act.takeBack()}>Take the last back</button>
      <button type="button" class="word" @click=${() => act.pass()}>Pass over</button>
      <button type="button" class="word" @click=${() => act.stop()}>Stop</button>
    </div>`;
}

/** @param {State} state @param {WalkActions} act @param {OnMap | undefined} next @param {number} left */
const ready = ({ walkPage: { tilt } }, act, next, left) => html`<section>
    ${
      tilt.kind === 'refused'
        ? html`<p class="problem" role="alert">The tilt is refused to this page. Allow motion and orientation in the browser’s
          settings for this site, then start again. Or type.</p>`
        : ''
    }
    ${
      tilt.kind === 'none'
        ? html`<p class="problem" role="alert">This phone or browser gives no tilt. Type what another level shows.</p>`
        : ''
    }
    ${
      next
        ? html`<p>Walk to the place and lay the phone on its back, its long edge straight on, its top away from your corner. It
          says “taken” and the next place.</p>
      <button type="button" class=${left ? 'press' : 'word'} @click=${() => act.start()}>${
        left ? 'Start walking' : 'Read there too'
      }</button>`
        : ''
    }</section>`;

/** The map is what the walk was for. @param {GreenEntry} green @param {WalkActions} act */
const done = ({ points }, act) =>
  points.length > 2
    ? html`<section><button type="button" class="press" @click=${() => act.show('map')}>Open the map</button></section>`
    : '';

/** All readings of one walk share what the phone is off by, which no survey could find out. */
const zero =
  () => html`<section><p>Zero this phone first: what it is off by would tilt the whole green. It takes half a minute.</p>
    <a class="press zero" href="#green">Zero the phone, under Level</a></section>`;

/** @param {State} state @param {WalkActions} act @param {OnMap | undefined} next */
function typed(state, act, next) {
  const { slope_percent, fall_deg } = state.walkPage.draft;
  const complete = next && slope_percent !== undefined && fall_deg !== undefined;
  return html`<section><h2>Or type what another level shows</h2>
    <p class="quiet">At this place, or at another: touch it on the plan, or type it.</p>
    <div class="fields two">${walkField(state, act, 'y_m', 'On', next?.[1])}
      ${walkField(state, act, 'x_m', 'From the left', next?.[0])}
    ${walkField(state, act, 'slope_percent', 'Slope', slope_percent)}
      ${walkField(state, act, 'fall_deg', 'Falls, from straight on', fall_deg)}</div>
    <button type="button" class="word" ?disabled=${!complete} @click=${() => act.takeTyped()}>Take it there</button></section>`;
}
