/** What the picture's lines and signs mean. @import {State} from '../../types.js' @import {ReadActions} from './actions.js' */
import { html, svg } from 'lit-html';
import { sheet } from '../../parts/sheet.js';

/** Drawn with the picture's own styles. @type {[unknown, string][]} */
const SIGNS = [
  [
    svg`<path class="start-line" d="M4 14H48"></path><path class="spot" d="M45 14h14M52 7v14"></path>`,
    'Start the ball at the cross',
  ],
  [svg`<path class="give" d="M10 14H46M10 8v12M46 8v12"></path>`, 'The true aim, two times in three'],
  [svg`<path class="path" d="M4 20Q30 2 52 18"></path>`, 'The way it rolls'],
  [
    svg`<path class="past" d="M4 14H44"></path><path class="finish" d="M45 10.500l7 7m0 -7l-7 7"></path>`,
    'Where it stops if it misses',
  ],
  [
    svg`<g class="window"><path class="high" d="M4 8H52"></path><path class="low" d="M4 20H52"></path></g>`,
    'Softest and firmest line that drop',
  ],
  [svg`<circle class="apex" cx="28" cy="14" r="4"></circle>`, 'Farthest from the straight line'],
  [
    svg`<path class="hachures" d="M10 6h4l-2 14ZM26 6h4l-2 16ZM42 6h4l-2 18Z"></path>`,
    'Strokes run downhill; longer is steeper',
  ],
];

/** @param {State} _ @param {ReadActions} act */
export const key = (_, act) =>
  sheet({
    title: 'The picture',
    body: html`<ul class="key picture">${SIGNS.map(
      ([sign, words]) => html`<li><svg width="60" height="28" viewBox="0 0 60 28"
      aria-hidden="true">${sign}</svg> ${words}</li>`,
    )}</ul>
      <p class="quiet">To scale, from above. The round one shows the hole magnified. Touch the picture to see it roll.</p>`,
    onClose: act.close,
  });
