/**
 * The line drawn into a photograph of the green.
 * @import {Mark, Photo, Share, State} from '../../types.js'
 * @import {LineActions} from './actions.js'
 */
import { refusalWords } from '../../refusal.js';
import { html, nothing } from 'lit-html';
import { number } from '../../format.js';
import { grip } from '../../parts/grip.js';
import { against, causes, doubts } from './doubts.js';
import { lineField } from './line-field.js';
import { cameraHeight } from './camera-height.js';
import { howToMeasure, lenses, measured } from './lens.js';
import { moving } from './live.js';
import { marksOf, wanted } from './marks.js';
import { noPutt } from './no-putt.js';

const STEP = 1 / 390;
/** @type {Record<string, [number, number]>} */
const KEYS = { ArrowLeft: [-STEP, 0], ArrowRight: [STEP, 0], ArrowUp: [0, -STEP], ArrowDown: [0, STEP] };

/** @param {string} words @param {LineActions} act */
const chooser = (words, act) =>
  html`<label class="line-go"><input type="file" accept="image/*" class="hidden-input" @change=${(
    /** @type {Event} */ event,
  ) => {
    const input = /** @type {HTMLInputElement} */ (event.target);
    const [file] = input.files ?? [];
    if (file) void act.choosePhoto(file);
    input.value = '';
  }}>${words}</label>`;

/** @param {State} state @param {LineActions} act */
export function photoView(state, act) {
  const {
    linePage: { photo, live, measuring, photoProblem },
  } = state;
  const problem = photoProblem ? html`<p class="problem" role="alert">${photoProblem}</p>` : '';
  if (live) return moving(state, live, act);
  const cropped = photo?.cropped
    ? html`<p class="problem" role="alert">This picture was cropped: the line can be off. Take it anew or choose the
      original.</p>`
    : '';
  if (photo)
    return html`${problem}${cropped}${board(state, photo, act)}${
      measuring ? measured(state, photo, act) : below(state, photo, act)
    }`;
  return html`${problem}${
    measuring
      ? howToMeasure(act)
      : html`<p>From behind the ball, with ball and hole in the picture, and
    not cropped. It stays on this phone.</p>`
  }
    <button type="button" class="line-go" @click=${act.openLive}>Open the
      camera</button>${chooser('Take or choose a photograph', act)}
    ${measuring ? '' : lenses(state, act)}`;
}

/**
 * What is asked for, and where a mark begins that is set by keys.
 * @type {Record<Mark, {ask: string, name: string, first: Share}>}
 */
const MARKS = {
  ball: { ask: 'Touch the ball, where it meets the grass', name: 'the ball', first: [0.5, 0.8] },
  hole: { ask: 'Touch the middle of the hole', name: 'the hole', first: [0.5, 0.4] },
  end: { ask: 'Touch one end of it', name: 'one end', first: [0.4, 0.5] },
  other: { ask: 'Touch its other end', name: 'the other end', first: [0.6, 0.5] },
};

/**
 * Without a finger or a mouse: the mark is set, and the arrow keys bring it to its place.
 * @param {Mark} name @param {LineActions} act
 */
const byKeys = (name, act) =>
  html`<button type="button" class="word by-keys" @click=${() => {
    act.mark(name, MARKS[name].first);
    requestAnimationFrame(() => /** @type {HTMLElement | null} */ (document.querySelector(`[data-mark=${name}]`))?.focus());
  }}>Set ${MARKS[name].name} by the arrow keys</button>`;

/** The photograph, with its marks on it. @param {State} state @param {Photo} photo @param {LineActions} act */
function board(state, photo, act) {
  const {
    settings,
    linePage: { measuring },
    answers: { camera },
    refusals,
  } = state;
  const { picture } = photo;
  const next = wanted(photo, measuring);
  const touch = (/** @type {MouseEvent} */ event) => {
    const box = /** @type {Element} */ (event.currentTarget).getBoundingClientRect();
    act.touch([(event.clientX - box.left) / box.width, (event.clientY - box.top) / box.height]);
  };
  const seen = next || measuring || refusals.camera ? undefined : camera;
  return html`${measuring ? '' : noPutt(state)}<div class="guide"><p class="say"
    role="status">${next ? MARKS[next].ask : 'Drag a mark to correct it'}</p>${next ? byKeys(next, act) : ''}${
      seen ? doubts(seen, settings) : ''
    }</div>
    <div class="photo ${next ? 'wanted' : ''}" @click=${touch}><canvas id="photo" width=${picture.width}
      height=${picture.height} role="img"
        aria-label="Your photograph${next || measuring ? '' : ' with the line drawn on the green'}"></canvas>
      ${marksOf(measuring).map((name) => {
        const at = photo[name];
        return at ? mark(name, at, act) : '';
      })}</div>`;
}

/** @param {Mark} name @param {Share} at @param {LineActions} act */
function mark(name, at, act) {
  const down = (/** @type {PointerEvent} */ event) => {
    const board = /** @type {Element} */ (/** @type {Element} */ (event.currentTarget).parentElement).getBoundingClientRect();
    grip(event, {
      start: { at, y: event.clientY },
      move: (dx, start, moved) =>
        act.mark(name, [start.at[0] + dx / board.width, start.at[1] + (moved.clientY - start.y) / board.height]),
    });
  };
  const key = (/** @type {KeyboardEvent} */ event) => {
    const way = KEYS[event.key];
    if (!way) return;
    event.preventDefault();
    act.mark(name, [at[0] + way[0], at[1] + way[1]]);
  };
  return html`<button type="button" class="photo-mark" data-mark=${name} data-at=${at.join(' ')}
    aria-label="Mark of ${MARKS[name].name}: drag it, or use the arrow keys"
    @pointerdown=${down} @keydown=${key} @click=${(/** @type {Event} */ event) => event.stopPropagation()}></button>`;
}

/** @param {State} state @param {Photo} photo @param {LineActions} act */
function below(state, photo, act) {
  const {
    answers: { camera },
    refusals,
    sighted,
  } = state;
  const done = photo.ball && photo.hole;
  return html`${
    done && refusals.camera
      ? html`<p class="problem" role="alert">It cannot be drawn so:
    ${refusalWords(refusals.camera, state.settings)}</p>`
      : ''
  }
    ${
      done && camera && !refusals.camera
        ? html`<button type="button" class="line-go" @click=${act.givePhoto}>Save or share the
          picture</button>${against(camera)}${causes(camera, state.settings)}`
        : nothing
    }
    <div class="does">${
      photo.ball
        ? html`<button type="button" class="word"
      @click=${act.again}>Mark again</button>`
        : ''
    }<button type="button" class="word"
        @click=${act.dropPhoto}>Another picture</button></div>
    ${cameraHeight(state, act)}
    <div class="fields two">${lineField(state, act, sighted.eye === 'standing' ? 'standing_m' : 'crouching_m')}
      ${
        photo.lens_mm !== null
          ? told('Lens, told by the picture', `${number(photo.lens_mm, 0)} mm`)
          : lineField(state, act, photo.live ? 'live_mm' : 'lens_mm')
      }
      ${
        photo.attitude
          ? told('Camera leans right, told by the phone', camera && done ? `${number(camera.roll_deg, 1)}°` : '–')
          : lineField(state, act, 'roll_deg')
      }</div>`;
}

/** @param {string} label @param {string} value */
const told = (label, value) => html`<div class="number-field"><p class="quiet">${label}</p><p class="say">${value}</p></div>`;
