/**
 * What trials of feet or eye have shown.
 * @import {Answers, Fall} from '../../../types.js'
 */
import { html, svg } from 'lit-html';
import { number, percents, signed } from '../../../format.js';
import { KINDS } from '../words.js';

/** @param {Answers['feet']} found @param {number} trials @param {Fall} fall whose curve is drawn */
export const learned = ({ groups, sides, curves }, trials, fall) =>
  trials
    ? html`<section><h2>After ${trials} ${trials === 1 ? 'trial' : 'trials'}</h2>
    <table class="learned"><thead><tr><td></td><th scope="col">Trials</th><th scope="col">Too much</th><th
      scope="col">95 %</th><th scope="col">Spread</th><th scope="col">More</th></tr></thead>
      <tbody>${groups.map(
        (group) => html`<tr><th scope="row">${KINDS[group.kind]}</th><td>${group.trials}</td>
        <td>${group.bias ? signed(group.bias.value, 1) : '–'}</td><td
          class="between">${group.bias ? `${signed(group.bias.low, 1)} to ${signed(group.bias.high, 1)}` : '–'}</td>
        <td>${group.spread ? number(group.spread.value, 1) : '–'}</td><td>${group.more || '✓'}</td></tr>`,
      )}</tbody></table>
    <p class="quiet">In per cent of slope. More: trials until the bias is known to half a per cent.</p>
    ${sides.map((side) => html`<p>${sideWords(side)}</p>`)}
    ${curve(curves.find((each) => each.fall === fall))}</section>`
    : '';

/** @param {Answers['feet']['sides'][number]} side */
function sideWords({ one, other, difference, differs, more }) {
  const pair = `${KINDS[one]} against ${KINDS[other].toLowerCase()}`;
  if (!difference) return `${pair}: not yet compared, ${more} more on each side would do.`;
  const by = `${percents(Math.abs(difference.value))} ${difference.value > 0 ? 'more' : 'less'} felt`;
  if (differs) return `${pair}: ${by}, beyond chance.`;
  return more
    ? `${pair}: ${by}, may be chance; ${more} more on each side would settle it.`
    : `${pair}: no difference that matters.`;
}

const X = 60;
const Y = 25;

/** Felt across, likely up, with its spread to either side. @param {Answers['feet']['curves'][number] | undefined} found */
function curve(found) {
  if (!found) return '';
  const at = (/** @type {number} */ felt, /** @type {number} */ likely) => `${40 + felt * X} ${150 - Math.max(0, likely) * Y}`;
  const line = found.points.map(([felt, likely], i) => `${i ? 'L' : 'M'}${at(felt, likely)}`).join('');
  const band = [
    ...found.points.map(([felt, likely, sd]) => at(felt, likely + sd)),
    ...found.points.toReversed().map(([felt, likely, sd]) => at(felt, likely - sd)),
  ];
  const shown = found.points.filter(([felt]) => Number.isInteger(felt));
  return html`<figure><figcaption>${KINDS[found.fall]}: felt, and what it is likely to be</figcaption>
    <svg class="curve" viewBox="0 0 320 186" role="img"
      aria-label=${`Felt to likely: ${shown.map(([felt, likely]) => `${felt} % is ${percents(likely)}`).join(', ')}`}>
      <path class="band" d="M${band.join('L')}Z"></path><path class="even" d="M40 150L${at(4, 4)}"></path><path class="fit"
        d=${line}></path>
      ${[0, 1, 2, 3, 4].map((n) => svg`<text x=${40 + n * X} y="168">${n}</text>`)}${[0, 1, 2, 3, 4, 5].map(
        (n) => svg`<text
        x="26" y=${154 - n * Y}>${n}</text>`,
      )}
      <text x="310" y="184">felt %</text><text x="36" y="14">likely %</text>
    </svg></figure>`;
}
