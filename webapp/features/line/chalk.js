/**
 * Where to put dots of chalk, large enough to read from the ground.
 * @import {Settings, State} from '../../types.js'
 * @import {LineActions} from './actions.js'
 */
import { refusalWords } from '../../refusal.js';
import { html } from 'lit-html';
import { say } from '../../device/speech.js';
import { chalkStep, inUnit, smallUnit } from '../../format.js';
import { noPutt } from './no-putt.js';

const SIDES = { L: 'left', R: 'right', '': '' };
/** @type {Record<string, string>} */
const ONE = { feet: 'foot', inches: 'inch', metres: 'metre', centimetres: 'centimetre' };
/** @param {string} number @param {string} unit */
const aloudOf = (number, unit) => `${number} ${number === '1' ? (ONE[unit] ?? unit) : unit}`;

/** How far beside the line, and on which side. @param {number | null} metres left of the line @param {Settings} settings */
function beside(metres, settings) {
  if (metres === null) return { number: '–', side: /** @type {''} */ ('') };
  const number = inUnit(Math.abs(metres), { ...smallUnit(settings), digits: 1 });
  return { number, side: /** @type {'L' | 'R' | ''} */ (number === '0' ? '' : metres > 0 ? 'L' : 'R') };
}

/** @param {number | null} metres @param {Settings} settings */
function cell(metres, settings) {
  const { number, side } = beside(metres, settings);
  return html`${number}${side ? html`<small> <abbr title=${SIDES[side]}>${side}</abbr></small>` : ''}`;
}

/** @param {State} state @param {LineActions} _act */
export function chalk(state, _act) {
  const {
    answers: { chalk: found },
    refusals,
    settings,
  } = state;
  if (refusals.chalk)
    return noPutt(state) || html`<p class="problem" role="alert">${refusalWords(refusals.chalk, settings)}</p>`;
  const along = chalkStep(settings);
  const across = smallUnit(settings);
  const rows = found?.rows ?? [];
  const aloud = () =>
    say(
      rows
        .map(({ at_m, chosen_m }) => {
          const { number, side } = beside(chosen_m, settings);
          return `${aloudOf(inUnit(at_m, along.shown), along.shown.name)}: ${aloudOf(number, across.name)} ${SIDES[side]}.`;
        })
        .join(' '),
    );
  return html`<p>A string from ball to hole. Dots of chalk beside it, on a practice green only: ask before you mark one.</p>
    <table class="chalk"><caption>${across.name} beside the string, L left, R right</caption>
      <thead><tr><th scope="col">${along.shown.unit}</th><th scope="col">Chosen</th><th scope="col">High</th><th
        scope="col">Low</th></tr></thead>
      <tbody>${rows.map(
        (row) => html`<tr><th scope="row">${inUnit(row.at_m, along.shown)}</th>
        <td class="dot">${cell(
          row.chosen_m,
          settings,
        )}</td><td>${cell(row.high_m, settings)}</td><td>${cell(row.low_m, settings)}</td></tr>`,
      )}</tbody></table>
    ${
      found && !rows.length
        ? html`<p>The putt is shorter than the first dot.</p>`
        : html`<button type="button" class="word"
      ?disabled=${!rows.length} @click=${aloud}>Say the dots</button>`
    }`;
}
