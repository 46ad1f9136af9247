/**
 * Which days, places and distances are asked for: one touch for "since", the rest folded.
 * @import {Entry, Only, Settings} from '../types.js'
 */
import { html } from 'lit-html';
import { BANDS_M } from '../engine/fields.js';
import { dayWords, distanceUnit, inUnit, today } from '../format.js';
import { choice } from './choice.js';

/** @type {[string, string][]} */
const SINCE = [
  ['', 'all'],
  ['7', '7 days'],
  ['28', '4 weeks'],
  ['91', '3 months'],
];
/** @type {[string, string][]} */
const HOW = [
  ['', 'both'],
  ['practice', 'practice'],
  ['competition', 'competition'],
];
const FARTHEST_M = BANDS_M.at(-1)?.[1] ?? 0;

/** @param {[number, number]} band @param {Settings} settings */
export function bandWords([from_m, to_m], settings) {
  const unit = distanceUnit(settings);
  if (!from_m) return `under ${inUnit(to_m, unit)} ${unit.unit}`;
  return to_m >= FARTHEST_M
    ? `over ${inUnit(from_m, unit)} ${unit.unit}`
    : `${inUnit(from_m, unit)} to ${inUnit(to_m, unit)} ${unit.unit}`;
}

/** @param {Only} only @param {Settings} settings */
const also = ({ from, to, place, how, band }, settings) =>
  [from && `from ${dayWords(from)}`, to && `to ${dayWords(to)}`, place, how, band && bandWords(band, settings)]
    .filter(Boolean)
    .join(', ');

/**
 * @param {object} filters
 * @param {Only} filters.only
 * @param {Entry[]} filters.entries
 * @param {Settings} filters.settings
 * @param {(only: Partial<Only>) => void} filters.onOnly
 */
export function filters({ only, entries, settings, onOnly }) {
  const places = [...new Set(entries.map(({ place }) => place).filter(Boolean))].sort();
  const words = also(only, settings);
  const value = (/** @type {Event} */ event) => /** @type {HTMLInputElement} */ (event.target).value;
  const date = (/** @type {'from' | 'to'} */ name, /** @type {string} */ label) =>
    html`<label class="text-field">${label}<input type="date" max=${today()} .value=${only[name]}
      @change=${(/** @type {Event} */ event) => onOnly({ [name]: value(event) })}></label>`;
  return html`<section class="filters" aria-label="What is asked for">
    ${choice({
      label: 'Since',
      name: 'since',
      value: only.since,
      options: SINCE,
      onValue: (since) => onOnly({ since: /** @type {Only['since']} */ (since) }),
    })}
    <details><summary>${words || 'Days, place, distance'}</summary>
      <div class="fields pairs">${date('from', 'From')} ${date('to', 'To')}</div>
      <label class="text-field">Where<select id="filter-place"
        @change=${(/** @type {Event} */ event) => onOnly({ place: value(event) })}>
        <option value="">everywhere</option>${places.map(
          (place) => html`<option .selected=${place === only.place}>${place}</option>`,
        )}</select></label>
      ${choice({
        label: 'Played in',
        name: 'how',
        value: only.how,
        options: HOW,
        onValue: (how) => onOnly({ how: /** @type {Only['how']} */ (how) }),
      })}
      <label class="text-field">Distance<select id="filter-band"
        @change=${(/** @type {Event} */ event) => onOnly({ band: BANDS_M[Number(value(event))] ?? null })}>
        <option value="-1">every distance</option>${BANDS_M.map(
          (band, i) => html`<option value=${i} .selected=${only.band?.[0] === band[0]}>${bandWords(band, settings)}</option>`,
        )}</select></label>
      ${
        words
          ? html`<button type="button" class="word"
            @click=${() => onOnly({ from: '', to: '', place: '', how: '', band: null })}>All of it</button>`
          : ''
      }
    </details>
  </section>`;
}
