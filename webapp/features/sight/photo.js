/**
 * The line drawn into a photograph of the green.
 * @import {Photo, State} from '../../types.js'
 * @import {SightActions} from './actions.js'
 */
import { html, nothing } from 'lit-html';
import { number } from '../../format.js';
import { grip } from '../../parts/grip.js';
import { choice } from '../../parts/choice.js';
import { entry } from './entry.js';

const STEP = 1 / 390;
/** @type {Record<string, [number, number]>} */
const KEYS = { ArrowLeft: [-STEP, 0], ArrowRight: [STEP, 0], ArrowUp: [0, -STEP], ArrowDown: [0, STEP] };

/** @param {string} words @param {SightActions} act */
const chooser = (words, act) => html`<label class="tap"><input type="file" accept="image/*" class="hidden-input" @change=${(/** @type {Event} */ event) => {
  const input = /** @type {HTMLInputElement} */ (event.target);
  const [file] = input.files ?? [];
  if (file) void act.choosePhoto(file);
  input.value = '';
}}>${words}</label>`;

/** @param {State} state @param {SightActions} act */
export function photo(state, act) {
  const { sighting: { photo: held, photoProblem } } = state;
  const problem = photoProblem ? html`<p class="problem" role="alert">${photoProblem}</p>` : '';
  if (!held) return html`${problem}<p>From behind the ball, with ball and hole in the picture. The picture stays on this phone.</p>${chooser('Take or choose a photograph', act)}`;
  return html`${problem}${board(held, act)}${below(state, held, act)}`;
}

/** The photograph, with its marks on it. @param {Photo} held @param {SightActions} act */
function board(held, act) {
  const { picture, ball, hole } = held;
  const next = !ball ? 'ball' : !hole ? 'hole' : null;
  const touch = (/** @type {MouseEvent} */ event) => {
    if (!next) return;
    const box = /** @type {Element} */ (event.currentTarget).getBoundingClientRect();
    act.mark(next, [(event.clientX - box.left) / box.width, (event.clientY - box.top) / box.height]);
  };
  return html`<p class="say" role="status">${next === 'ball' ? 'Touch the ball, where it meets the grass' : next ? 'Touch the middle of the hole' : 'Drag a mark to correct it'}</p>
    <div class="photo" @click=${touch}><canvas id="photo" width=${picture.width} height=${picture.height} role="img" aria-label="Your photograph${next ? '' : ' with the line drawn on the green'}"></canvas>
      ${ball ? mark('ball', ball, act) : ''}${hole ? mark('hole', hole, act) : ''}</div>`;
}

/** @param {'ball' | 'hole'} name @param {[number, number]} at @param {SightActions} act */
function mark(name, at, act) {
  const down = (/** @type {PointerEvent} */ event) => {
    const board = /** @type {Element} */ (/** @type {Element} */ (event.currentTarget).parentElement).getBoundingClientRect();
    grip(event, {
      start: { at, y: event.clientY },
      move: (dx, start, moved) => act.mark(name, [start.at[0] + dx / board.width, start.at[1] + (moved.clientY - start.y) / board.height]),
    });
  };
  const key = (/** @type {KeyboardEvent} */ event) => {
    const way = KEYS[event.key];
    if (!way) return;
    event.preventDefault();
    act.mark(name, [at[0] + way[0], at[1] + way[1]]);
  };
  return html`<button type="button" class="photo-mark" data-mark=${name} data-at=${at.join(' ')} aria-label="Mark of the ${name}: drag it, or use the arrow keys"
    @pointerdown=${down} @keydown=${key} @click=${(/** @type {Event} */ event) => event.stopPropagation()}></button>`;
}

/** @param {State} state @param {Photo} held @param {SightActions} act */
function below(state, held, act) {
  const { sighting: { answers: { camera }, refusals }, sighted } = state;
  const done = held.ball && held.hole;
  const off = camera?.error_px;
  return html`${done && refusals.camera ? html`<p class="problem" role="alert">It cannot be drawn so: ${refusals.camera}.</p>` : ''}
    ${done && camera && !refusals.camera
      ? html`<p class="quiet">${off === null || off === undefined ? 'A finger 5 px off would change everything here: stand farther back.' : `A finger 5 px off and an eye 10 cm off move the line by up to ${number((off / camera.asked.width_px) * 100, 1)} % of the picture’s width: the ring about the aim.`}</p>
        <button type="button" class="tap" @click=${act.givePhoto}>Save or share the picture</button>` : nothing}
    <div class="does">${held.ball ? html`<button type="button" class="word" @click=${act.again}>Mark again</button>` : ''}<button type="button" class="word" @click=${act.dropPhoto}>Another photograph</button></div>
    ${choice({ label: 'Camera held', name: 'eye', value: sighted.eye, options: [['standing', 'standing'], ['crouching', 'crouching']], onValue: (value) => act.hold(/** @type {any} */ (value)) })}
    <div class="fields two">${entry(state, act, sighted.eye === 'standing' ? 'standing_m' : 'crouching_m')}
      ${held.lens_mm === null ? entry(state, act, 'lens_mm') : html`<div class="number-field"><p class="quiet">Lens, told by the picture</p><p class="say">${number(held.lens_mm, 0)} mm</p></div>`}
      ${entry(state, act, 'roll_deg')}</div>`;
}
