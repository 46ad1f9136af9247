/**
 * A measured slope on its way into the read: as the one slope, or at one of several places along the line.
 * @import {Answers, Putt, Slope, State, Station} from '../../types.js'
 * @import {GreenActions} from './actions.js'
 */
import { html } from 'lit-html';
import { distanceUnit, percents, several, withUnit } from '../../format.js';
import { mostOf } from '../../fields.js';
import { greenField } from './green-field.js';

const MOST = mostOf('PuttFields', 'stations');
/** Places nearer to each other than this are one. */
const SAME_M = 0.05;

/**
 * The putt with a slope at a place, in place of what was there.
 * @param {Putt} putt @param {Slope} slope @param {number} at_m @returns {Putt}
 */
export function withPlace(putt, slope, at_m) {
  const { slope_percent = 0, fall_deg = 0, tilt_source, tilt_sd_percent, stations, ...rest } = putt;
  /** @type {Station[]} */
  const all = stations ?? [{ at_m: 0, slope_percent, fall_deg, ...(tilt_source && { tilt_source, tilt_sd_percent }) }];
  const others = all.filter((station) => Math.abs(station.at_m - at_m) >= SAME_M);
  const there = all.find((station) => !others.includes(station))?.at_m ?? at_m;
  return { ...rest, stations: [...others, { ...slope, at_m: there }].sort((a, b) => a.at_m - b.at_m) };
}

/**
 * @param {State} state @param {GreenActions} act @param {Answers['level']} found
 * @param {boolean} sure whether the phone is zeroed
 */
export function places(state, act, found, sure) {
  const {
    putt: { stations },
    greenPage: {
      draft: { at_m: there_m },
    },
    settings,
    problem,
  } = state;
  const sd = found.slope_sd_percent;
  const unit = distanceUnit(settings);
  const one = stations ? `Take as the only slope; ${several(stations.length, 'place')} go` : 'Take into the read';
  const whole = html`<button type="button" class=${stations || !sure ? 'word' : 'press'}
    @click=${() => act.take(found, sd)}>${one}${sure ? '' : `, ±${percents(sd)}`}</button>`;
  return html`
    ${stations?.map(
      ({ at_m }) => html`<button type="button" class="press"
      @click=${() => act.takeAt(found, sd, at_m)}>Take at ${withUnit(at_m, unit)}</button>`,
    )}
    ${stations ? '' : whole}
    ${
      (stations?.length ?? 1) < MOST
        ? html`<div class="place">${greenField(state, act, 'at_m')}
        <button type="button" class="word" ?disabled=${there_m === undefined}
          @click=${() => there_m !== undefined && act.takeAt(found, sd, there_m)}>${
            stations ? 'Add this place' : 'Take as one of several places'
          }</button></div>`
        : ''
    }
    ${stations ? whole : ''}
    ${problem?.field === 'take' ? html`<p class="problem" role="alert">${problem.message}</p>` : ''}`;
}
