/**
 * What the phone saw of the putts of the block in hand: the last one, how they lean and scatter, and whether it is enough.
 * @import {State} from '../types.js'
 * @import {RowAnswer} from '../engine/protocol.js'
 */
import { html } from 'lit-html';
import { number, percents } from '../format.js';

/** @param {number} deg */
const degrees = (deg) => `${number(Math.abs(deg), 1)}°`;
/** @param {number} share */
const part = (share) => percents(100 * Math.abs(share), 0);
/** @param {number} deg */
const side = (deg) => (Math.abs(deg) < 0.05 ? '0°' : `${degrees(deg)} ${deg < 0 ? 'right' : 'left'}`);
/** @param {number} share */
const length = (share) => (Math.abs(share) < 0.005 ? part(0) : `${part(share)} ${share < 0 ? 'short' : 'long'}`);

/** @type {Record<'start' | 'pace', {what: string, lean: (value: number) => string, spread: (value: number) => string}>} */
const SAID = {
  start: { what: 'Start', lean: side, spread: degrees },
  pace: { what: 'Pace', lean: length, spread: part },
};

/** @param {keyof typeof SAID} kind @param {RowAnswer} row */
function told(kind, { strikes, lean, spread, more }) {
  const said = SAID[kind];
  const enough = more ? `About ${more} more settle${more > 1 ? '' : 's'} the lean.` : 'Enough: the lean is settled.';
  return html`<p class="block-row">${said.what}, ${strikes} putts: lean <strong>${said.lean(lean.value)}</strong>
    (${said.lean(lean.low)} to ${said.lean(lean.high)}), spread <strong>${said.spread(spread.value)}</strong>
    (${said.spread(spread.low)} to ${said.spread(spread.high)}).</p>
    <p class="block-enough">${enough}</p>`;
}

/** How they lean and scatter; empty where too few were seen. @param {State} state */
export function blockRow({ practice: { run, blocks }, practicePage: { drills }, answers: { block } }) {
  if (!run?.strikes?.length) return '';
  const inHand = blocks[run.block];
  const skill = (inHand?.card ?? drills.find(({ id }) => id === inHand?.drill))?.skill;
  const kind = skill === 'pace' ? 'pace' : 'start';
  const row = block?.[kind];
  return row ? told(kind, row) : '';
}

/** The last of them with it; empty where none was seen. @param {State} state */
export const watchedBlock = (state) =>
  state.practice.run?.strikes?.length
    ? html`<section class="watched-block" aria-label="Seen by the phone" tabindex="0">
        <p class="block-last" role="status">${state.practice.run.said}</p>
        ${blockRow(state)}
      </section>`
    : '';
