/**
 * A green read at several places along the line.
 * @import {State, Station} from '../../types.js'
 * @import {ReadActions} from './actions.js'
 */
import { mostOf } from '../../fields.js';
import { html } from 'lit-html';
import { fallWords, inUnit, unitOf } from '../../format.js';
import { numberField } from '../../parts/number-field.js';
import { sheet } from '../../parts/sheet.js';

const MOST = mostOf('PuttFields', 'stations');
/** @type {['at_m' | 'slope_percent' | 'fall_deg', string][]} */
const PARTS = [
  ['at_m', 'From the ball'],
  ['slope_percent', 'Slope'],
  ['fall_deg', 'Falls'],
];

/** @param {State} state @param {ReadActions} act */
export function slopes({ putt, settings, problem }, act) {
  const list = putt.stations ?? [{ at_m: 0, slope_percent: putt.slope_percent ?? 0, fall_deg: putt.fall_deg ?? 0 }];
  const body = html`
    <p>Give the slope at more than one place when the green turns on the way. Between two places it changes evenly. Falls counts
      clockwise as seen from the ball: 0° straight downhill, 90° to the right, 180° uphill, 270° to the left.</p>
    <ol class="stations">${list.map(
      (station, i) => html`<li>
      <div class="fields">${PARTS.map(([part, label]) => {
        const unit = unitOf(part, settings);
        const mine = problem?.field === `${i}.${part}` ? problem : null;
        return numberField({
          name: `station-${i}-${part}`,
          label,
          unit: unit.unit,
          value: mine?.text ?? inUnit(station[part], unit),
          message: mine?.message,
          onText: (text) => act.enterStation(i, part, text),
        });
      })}</div>
      <p class="quiet">${fallWords(station.fall_deg)} ${
        list.length > 1
          ? html`<button type="button" class="word"
        @click=${() => act.removeStation(i)} aria-label="Remove place ${i + 1}">Remove</button>`
          : ''
      }</p>
    </li>`,
    )}</ol>
    ${
      list.length < MOST
        ? html`<button type="button" class="word" @click=${() => act.addStation()}>Add a
      place</button>`
        : html`<p class="quiet">${MOST} places are the most.</p>`
    }`;
  return sheet({ title: 'Slopes along the line', body, onClose: act.close });
}
