/**
 * Who putts, and how often it drops.
 * @import {State, Player, Preset} from '../../types.js'
 * @import {ReadActions} from './actions.js'
 */
import { pick } from '../../pick.js';
import { html } from 'lit-html';
import { PRESETS } from '../../engine/fields.js';
import { tiltTold } from '../../doubt.js';
import { dayWords, inUnit, number, percent, several, signed, unitOf } from '../../format.js';
import { numberField } from '../../parts/number-field.js';
import { sheet } from '../../parts/sheet.js';
import { BY } from './doubt.js';
import { rangeWords } from './words.js';
import { isYou } from './you.js';

/** @type {[keyof Player, string, string][]} */
const SPREADS = [
  ['start_line_sd_deg', 'Start line spread', 'Two putts in three start within this of the aim.'],
  ['pace_sd_fraction', 'Pace spread', 'Two putts in three roll within this of the length meant.'],
  ['slope_sd_percent', 'Misread slope', 'How far a slope read by eye or feet is off each way, two times in three.'],
];

/** @param {Preset} preset @param {Player} player */
const isPlayer = (preset, player) =>
  Math.abs(player.start_line_sd_deg - preset.start_line_sd_deg) < 1e-9 &&
  Math.abs(player.pace_sd_fraction - preset.pace_sd_fraction) < 1e-9 &&
  Math.abs(player.slope_sd_percent - preset.slope_sd_percent) < 1e-9;

/**
 * Room to either side, in words.
 * @param {[number, number] | null} tolerance @param {number} scale @param {(low: string, high: string) => string} words
 */
const room = (tolerance, scale, words) =>
  tolerance ? words(number(-tolerance[0] * scale, scale > 1 ? 0 : 2), number(tolerance[1] * scale, scale > 1 ? 0 : 2)) : '';

/** @param {State} state @param {ReadActions} act */
export function player(state, act) {
  const { player, you, window, refusal, closed, settings, problem, felt } = state;
  const tilt = tiltTold(state);
  const open = refusal || closed ? undefined : window?.value;
  const body = html`
    ${
      open
        ? html`<p class="odds"><span class="big">${percent(open.make_probability)}</span> <span
          class="say">drop from here${rangeWords(open)}</span></p>
      <p>${room(
        open.aim_tolerance_deg,
        1,
        (right, left) => `At this pace the start may be ${right}° right or ${left}° left of the aim.`,
      )}
      ${room(
        open.pace_tolerance_fraction,
        100,
        (short, long) => `On this aim the roll may be ${short} % short or ${long} % long.`,
      )}</p>`
        : html`<p>${(refusal ?? closed)?.value}</p>`
    }
    <div class="choice-row" role="group" aria-label="Player">${PRESETS.map(
      (preset) => html`<button type="button" class="pick" aria-pressed=${isPlayer(preset, player)}
      @click=${() => act.setPlayer({ ...player, ...spreads(preset) })}>${preset.name}</button>`,
    )}${
      you
        ? html`<button type="button" class="pick" aria-pressed=${isYou(state)}
      @click=${() => act.setPlayer(you.value)}>you</button>`
        : ''
    }</div>
    ${
      you
        ? html`<p class="quiet">You: from ${several(you.putts, 'putt')}, as found
          ${dayWords(you.date)}${you.sample ? '; the invented player is among them' : ''}.</p>`
        : html`<p class="quiet">Once your record tells enough, you are here too: <a class="word"
          href="#findings">Findings</a></p>`
    }
    <p class="quiet">Tour and amateur: ${pick(PRESETS, 0).source}.</p>
    ${
      felt
        ? html`<p>The slope was felt as ${number(felt.felt_percent, 1)} %, and is corrected by
      ${signed(felt.correction_percent, 1)} %.</p>`
        : ''
    }
    ${
      tilt.source === 'typed'
        ? ''
        : html`<p>This slope is ${BY[tilt.source]}: its ±${number(tilt.sd, 2)} % stands in place of
      the player’s misread.</p>`
    }
    <div class="fields">${SPREADS.map(([field, label, hint]) => {
      const unit = unitOf(field, settings);
      const mine = problem?.field === field ? problem : null;
      return numberField({
        name: field,
        label,
        hint,
        unit: unit.unit,
        value: mine?.text ?? inUnit(player[field], unit),
        message: mine?.message,
        onText: (text) => act.enterPlayer(field, text),
      });
    })}</div>`;
  return sheet({ title: 'Player', body, onClose: act.close });
}

/** @param {Preset} preset */
const spreads = ({ start_line_sd_deg, pace_sd_fraction, slope_sd_percent }) => ({
  start_line_sd_deg,
  pace_sd_fraction,
  slope_sd_percent,
});
