/**
 * A green's speed on one pocket card: aim across, and how long a putt plays up and down.
 * @import {State, Answers, Settings} from '../../types.js'
 */
import { pick } from '../../pick.js';
import { html } from 'lit-html';
import { aim, distanceUnit, FOOT_M, inUnit, number } from '../../format.js';

export const SLOPES = [1, 2, 3, 4];
/** @param {Settings} settings */
export const distancesOf = (settings) =>
  settings.distance === 'm' ? [1, 2, 3, 4.5, 6, 9] : [3, 6, 10, 15, 20, 30].map((feet) => feet * FOOT_M);

/** @param {State} state @param {Answers['table']} table */
export function card({ putt, settings }, { rows }) {
  // a card reads in feet or metres: paces are not even numbers of either
  const unit = distanceUnit(settings.distance === 'paces' ? { ...settings, distance: 'ft' } : settings);
  const distances = distancesOf(settings);
  /** @param {Answers['table']['rows'][number][number]} cell */
  const across = ({ aim_deg, aim_offset_m }) =>
    aim_deg === null || aim_offset_m === null ? '–' : aim({ aim_deg, aim_offset_m }, settings).number;
  /** @param {number | null} metres */
  const plays = (metres) => (metres === null ? '–' : inUnit(metres, unit));
  const head = SLOPES.map((slope) => html`<th scope="col">${slope}\u00a0%</th>`);
  /** @param {string} caption @param {(cell: Answers['table']['rows'][number][number]) => string} shown */
  const block = (
    caption,
    shown,
  ) => html`<table><caption>${caption}</caption><thead><tr><th scope="col">${unit.unit}</th>${head}</tr></thead>
    <tbody>${rows.map(
      (row, i) => html`<tr><th
      scope="row">${inUnit(pick(distances, i), unit)}</th>${row.map((cell) => html`<td>${shown(cell)}</td>`)}</tr>`,
    )}</tbody></table>`;
  return html`<section class="card" aria-label="Pocket card">
    <h2>Stimp ${number(putt.stimp_ft, 1)} ft</h2>
    ${block(`Across: aim, ${aim({ aim_deg: 1, aim_offset_m: 1 }, settings).unit} from the cup’s centre`, across)}
    ${block(`Straight up: plays like, ${unit.unit}`, ({ up_m }) => plays(up_m))}
    ${block(`Straight down: plays like, ${unit.unit}`, ({ down_m }) => plays(down_m))}
    <p class="quiet">For practice. In a round Rule 4.3a limits what you may read a green with: ask the committee.</p>
  </section>`;
}
