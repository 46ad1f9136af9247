/** What may hurt, said plainly. @import {Drill} from '../../../types.js' */
import { html } from 'lit-html';

/** @param {Drill | undefined} drill */
export const cautions = (drill) =>
  drill?.cautions.length
    ? html`<ul class="cautions" aria-label="Cautions">${drill.cautions.map(
        (words) => html`<li><strong>Caution</strong>
      ${words}</li>`,
      )}</ul>`
    : '';
