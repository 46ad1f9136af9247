/**
 * Who putts, and how often it drops.
 * @import {State, Player} from '../../types.js'
 * @import {ReadActions} from './actions.js'
 */
import { html } from 'lit-html';
import { inUnit, number, percent, unitOf } from '../../format.js';
import { numberField } from '../../parts/number-field.js';
import { sheet } from '../../parts/sheet.js';

/** @type {[keyof Player, string, string][]} */
const SPREADS = [
  ['start_line_sd_deg', 'Start line spread', 'Two putts in three start within this of the aim.'],
  ['pace_sd_fraction', 'Pace spread', 'Two putts in three roll within this of the length meant.'],
  ['slope_sd_percent', 'Slope spread', 'How far a felt slope is off, two times in three.'],
];

/** @param {Player} a @param {Player} b */
const same = (a, b) => SPREADS.every(([field]) => a[field] === b[field]);

/** @param {State} state @param {ReadActions} act */
export function player({ player, presets, window, refusal, settings, problem }, act) {
  const tolerance = window?.value;
  const body = html`
    ${tolerance && !refusal ? html`<p class="odds"><span class="big">${percent(tolerance.make_probability)}</span> <span class="say">drop from here</span></p>
      <p>At this pace the start may be ${number(-tolerance.aim_tolerance_deg[0], 2)}° right or ${number(tolerance.aim_tolerance_deg[1], 2)}° left of the aim.
      On this aim the roll may be ${number(-100 * tolerance.pace_tolerance_fraction[0], 0)} % short or ${number(100 * tolerance.pace_tolerance_fraction[1], 0)} % long.</p>` : ''}
    <div class="choice-row" role="group" aria-label="Player">${presets.map((preset) => html`<button type="button" class="pick" aria-pressed=${same(preset, player)}
      @click=${() => act.setPlayer(onlySpreads(preset))}>${preset.name}</button>`)}</div>
    ${presets.length ? html`<p class="quiet">${presets[0].source}</p>` : ''}
    <div class="fields">${SPREADS.map(([field, label, hint]) => {
      const unit = unitOf(field, settings);
      const mine = problem?.field === field ? problem : null;
      return numberField({ name: field, label, hint, unit: unit.unit, value: mine?.text ?? inUnit(player[field], unit), message: mine?.message, onText: (text) => act.enterPlayer(field, text) });
    })}</div>`;
  return sheet({ title: 'Player', body, onClose: act.close });
}

/** @param {Player} player @returns {Player} */
const onlySpreads = ({ start_line_sd_deg, pace_sd_fraction, slope_sd_percent, start_line_bias_deg, pace_bias_fraction }) => ({
  start_line_sd_deg, pace_sd_fraction, slope_sd_percent, start_line_bias_deg, pace_bias_fraction,
});
