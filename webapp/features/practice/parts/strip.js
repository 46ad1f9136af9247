/**
 * The stroke's arc from above, on one page of paper at its true size: the way of the head about the ball, with the face
 * square to it, and a ruler to check the print.
 * @import {State} from '../../../types.js'
 * @import {PracticeActions} from '../actions.js'
 */
import { stretch } from '../../../parts/stretch.js';
import { html, svg } from 'lit-html';
import { BALL_M } from '../../../format.js';
import { sides } from '../words.js';

const MM = 1000;
/** What a page of A4 or Letter holds lengthways, mm. */
const [WIDE, HIGH] = [250, 120];
/** Of it lies below the floor line, where the feet are not. */
const LOW = 52;
const RULER = 100;
/** The face is drawn at each of these, mm along the line; its length. */
const EVERY = 20;
const FACE = 26;
const REACH = WIDE / 2 - 5;

/**
 * How far inside the line the head is, and how its way turns there, between the engine's points.
 * @param {[number, number][]} points @param {number} along
 */
function at(points, along) {
  const { from, to, share } = stretch(points, Math.abs(along));
  const [rise, run] = [to[1] - from[1], to[0] - from[0]];
  return { inside: from[1] + share * rise, turn: (Math.sign(along) * rise) / run };
}

/** @param {[number, number][]} points */
function faces(points) {
  const places = Array.from({ length: 2 * Math.floor(REACH / EVERY) + 1 }, (_, i) => (i - Math.floor(REACH / EVERY)) * EVERY);
  return places
    .filter((along) => along !== 0)
    .map((along) => {
      const { inside, turn } = at(points, along);
      const length = Math.hypot(1, turn);
      // square to the way: the way is (1, turn) with the feet's side up
      const [dx, dy] = [(-turn / length) * (FACE / 2), FACE / 2 / length];
      const place = (/** @type {number} */ x, /** @type {number} */ y) => `${x.toFixed(2)} ${(-y).toFixed(2)}`;
      return `M${place(along - dx, inside - dy)}L${place(along + dx, inside + dy)}`;
    })
    .join('');
}

const centimetres = Array.from({ length: RULER / 10 + 1 }, (_, i) => `M${-RULER / 2 + 10 * i} ${i % 5 ? 31 : 29}V34`);

/** @param {State} state @param {PracticeActions} act */
export function strip({ answers, practice, settings }, act) {
  /** @type {[number, number][]} */
  const points = (answers.arc?.points ?? []).map(({ along_m, inside_m }) => [along_m * MM, inside_m * MM]);
  const near = points.filter(([x]) => x <= REACH);
  const way = [...near.toReversed().map(([x, y]) => ({ x: -x, y })), ...near.slice(1).map(([x, y]) => ({ x, y }))];
  const [left, right] = sides(settings);
  const words = `The stroke’s arc from above, true size when printed: ${left} on the left, ${right} on the right`;
  return html`<h1>Arc to print</h1>
    <p>One page at true size: the head’s way about the ball, the face square to it. Print at 100 % and measure the ruler.</p>
    <button type="button" class="go" @click=${() => window.print()}>Print</button>
    <div class="strips"><svg class="strip" viewBox=${`${-WIDE / 2} ${LOW - HIGH} ${WIDE} ${HIGH}`} role="img"
      aria-label=${words}>
      <line class="d-aim" x1=${-WIDE / 2} x2=${WIDE / 2} y1="0" y2="0"></line>
      <circle class="d-ball" cx="0" cy="0" r=${(BALL_M * MM) / 2}></circle>
      ${
        points.length > 1
          ? svg`<path class="d-mark"
        d=${`M${way.map(({ x, y }) => `${x.toFixed(2)} ${(-y).toFixed(2)}`).join('L')}`}></path><path class="d-face"
          d=${faces(points)}></path>`
          : ''
      }
      <text class="s-text" x=${-REACH} y="-58">${left}</text><text class="s-text" x=${REACH} y="-58"
        text-anchor="end">${right}</text>
      <text class="s-text" x="0" y="-58" text-anchor="middle">feet on this side</text>
      <path class="d-line"
        d=${`M${-RULER / 2} 34h${RULER}${centimetres.join('')}`}></path>
      <text class="s-text" x="0" y="41" text-anchor="middle">This ruler is ${RULER} mm. If not, print at 100 %.</text>
      <text class="s-text" x="0" y="48" text-anchor="middle">Lie ${practice.lie_deg}°, putter
        ${Math.round(practice.length_m * MM)} mm. Dashed: the line to the hole.</text>
    </svg></div>
    <button type="button" class="word" @click=${() => act.go('drill')}>Back to the drill</button>`;
}
