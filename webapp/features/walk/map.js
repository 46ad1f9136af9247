/**
 * The map of a walked green: ball and hole are placed on it, and the putt between them is read.
 * @import {GreenEntry, OnMap, PathPoint, State, Survey} from '../../types.js'
 * @import {WalkActions} from './actions.js'
 * @import {Frame} from './frame.js'
 */
import { html, nothing, svg } from 'lit-html';
import { BALL_M, HOLE_M, smallUnit, withUnit } from '../../format.js';
import { pathUntil } from '../../parts/picture/frame.js';
import { refusalWords } from '../../refusal.js';
import { answer } from './answer.js';
import { find } from './find.js';
import { away, frameOf, fromPutt, line } from './frame.js';
import { greenOf, placedOf } from './greens.js';
import { groundInk, groundOf, heights } from './ground.js';
import { hand } from './hand.js';
import { placeWords } from './plan.js';
import { CAUTION } from './words.js';

const LEAST_PX = 5;
const LOUPE = { radius: 58, times: 2.4, rim: 8 };

/** @param {State} state @param {WalkActions} act */
export function map(state, act) {
  const { answers, refusals, settings, walkPage } = state;
  const green = /** @type {GreenEntry} */ (greenOf(state));
  if (green.points.length < 3)
    return html`<p>${green.name} has no map yet: it takes three readings at least, and about 25 to be of use.</p>
      <button type="button" class="press" @click=${() => act.show('walk')}>Walk it</button>`;
  if (refusals.survey) return html`<p class="problem" role="alert">${refusalWords(refusals.survey, settings)}</p>`;
  const { survey } = answers;
  return html`<div class="map-stage">${
    survey && walkPage.size.width
      ? drawing(state, green, survey, act)
      : html`<p
    class="quiet">The map is drawn.</p>`
  }</div>
    ${survey ? below(state, green, survey, act) : ''}`;
}

/**
 * @param {State} state @param {GreenEntry} green @param {NonNullable<State['answers']['survey']>} survey
 * @param {WalkActions} act
 */
function drawing(state, green, survey, act) {
  const { settings, walkPage } = state;
  const { size, view, placing, dragged } = walkPage;
  const frame = frameOf(green, size, view);
  const placed = /** @type {NonNullable<ReturnType<typeof placedOf>>} */ (placedOf(state));
  const does = hand({ frame, placed, placing, act });
  const [left, top] = frame.px([0, green.length_m]);
  const corner = frame.px([0, 0]);
  const wheel = { handleEvent: does.wheel, passive: false };
  const [wide, high] = [frame.scale * green.breadth_m, frame.scale * green.length_m];
  const ink = () => svg`<g clip-path="url(#map-green)">${groundInk(frame, survey)}</g>
      <rect class="edge" x=${left} y=${top} width=${wide} height=${high}></rect>
      ${marks(frame, green, survey.suspects)}
      <g aria-hidden="true">${heights(frame, survey, size, smallUnit(settings))}</g>
      <circle class="you" cx=${corner[0]} cy=${corner[1]} r="5"></circle>
      ${puttInHand(state, frame, placed)}`;
  return html`<svg class="picture map" role="group" aria-label="Map of ${green.name}" width=${size.width} height=${size.height}
    viewBox="0 0 ${size.width} ${size.height}"
      @pointerdown=${does.down} @pointermove=${does.move} @pointerup=${does.up} @pointercancel=${does.up} @wheel=${wheel}>
      <defs><pattern id="hatch" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path
        class="hatch-line" d="M0 2.5H5"></path></pattern>
        <clipPath id="map-green"><rect x=${left} y=${top} width=${wide} height=${high}></rect></clipPath></defs>
      ${ink()} ${marker('hole', frame, placed, does, state)} ${marker('ball', frame, placed, does, state)}
      ${dragged ? loupe(frame.px(placed[dragged]), size, ink()) : nothing}
    </svg>
    <div class="nearer"><button type="button" aria-label="Nearer"
      @click=${() => act.look({ at: frame.at, scale: frame.scale * 1.6 })}>+</button>
      <button type="button" aria-label="Farther" ?disabled=${!view}
        @click=${() => act.look({ at: frame.at, scale: frame.scale / 1.6 })}>−</button></div>`;
}

/** The readings; those that do not fit are ringed. @param {Frame} frame @param {GreenEntry} green @param {number[]} suspects */
function marks({ px }, { points }, suspects) {
  const at = points.map(({ x_m, y_m }) => px([x_m, y_m]));
  return svg`<path class="readings" d=${at.map(([u, v]) => `M${u - 3} ${v}h6M${u} ${v - 3}v6`).join('')}></path>
    ${at.filter((_, i) => suspects.includes(i)).map(([u, v]) => svg`<circle class="odd" cx=${u} cy=${v} r="9"></circle>`)}`;
}

/**
 * The putt in hand, where it is one of this map; faint until the one that is placed is read.
 * @param {State} state @param {Frame} frame @param {{ball: OnMap, hole: OnMap}} placed
 */
function puttInHand({ read, window }, frame, placed) {
  const survey = read?.putt.survey;
  if (!read || !survey) return nothing;
  const on = fromPutt(survey.ball, survey.hole);
  const mapped = (/** @type {readonly PathPoint[]} */ path) => path.map(([, x, y]) => on(x, y));
  const stale = `${survey.ball},${survey.hole}` !== `${placed.ball},${placed.hole}`;
  const { path, time_s, aim_offset_m } = read.value;
  const aimed = on(away(survey.ball, survey.hole), aim_offset_m);
  const spot = frame.px(aimed);
  const fits = window?.putt.survey && read.putt === window.putt ? window.value : null;
  return svg`<g class=${stale ? 'stale' : ''}>${
    fits
      ? svg`<path class="band"
    d="${line(frame, mapped(fits.high_line))}${line(frame, mapped(fits.low_line.toReversed())).replace('M', 'L')}Z"></path>`
      : nothing
  }
    <path class="start-line" d=${line(frame, [survey.ball, aimed])}></path>
    <path class="path" d=${line(frame, mapped(pathUntil(path, time_s)))}></path>
    <path class="spot" d="M${spot[0] - 6} ${spot[1]}h12M${spot[0]} ${spot[1] - 6}v12"></path></g>`;
}

/**
 * @param {'ball' | 'hole'} what @param {Frame} frame @param {{ball: OnMap, hole: OnMap}} placed
 * @param {ReturnType<typeof hand>} does @param {State} state
 */
function marker(what, frame, placed, does, { settings }) {
  const [u, v] = frame.px(placed[what]);
  const radius = Math.max(LEAST_PX, (frame.scale * (what === 'hole' ? HOLE_M : BALL_M)) / 2);
  return svg`<g class="marker" role="button" tabindex="0"
    aria-label="${what === 'hole' ? 'Hole' : 'Ball'}, ${placeWords(placed[what], settings)}; arrow keys move it"
      @keydown=${does.key(what)}>
    <circle class="grasp" cx=${u} cy=${v} r="22"></circle>
    ${
      what === 'hole'
        ? svg`<path class="flagstick" d="M${u} ${v}v-26"></path><path class="flag"
      d="M${u} ${v - 26}l12 4l-12 5Z"></path>`
        : nothing
    }
    <circle class=${what} cx=${u} cy=${v} r=${radius}></circle>
    ${what === 'ball' ? svg`<circle class="ring" cx=${u} cy=${v} r=${radius + 4}></circle>` : nothing}
  </g>`;
}

/**
 * What lies under the thumb, magnified in the corner that the thumb leaves free.
 * @param {[number, number]} at @param {{width: number}} size @param {unknown} ink
 */
function loupe([u, v], { width }, ink) {
  const { radius, times, rim } = LOUPE;
  const covered = u < width / 2 && v < 4 * radius;
  const [cx, cy] = [covered ? width - radius - rim : radius + rim, radius + rim];
  return svg`<g class="loupe" aria-hidden="true"><clipPath id="map-loupe"><circle cx=${cx} cy=${cy}
    r=${radius}></circle></clipPath>
    <circle class="loupe-ground" cx=${cx} cy=${cy} r=${radius}></circle>
    <g clip-path="url(#map-loupe)"><g transform="translate(${cx - times * u} ${cy - times * v}) scale(${times})">${ink}</g></g>
    <path class="cross" d="M${cx - 12} ${cy}h24M${cx} ${cy - 12}v24"></path>
    <circle class="loupe-ring" cx=${cx} cy=${cy} r=${radius}></circle></g>`;
}

/** Of a side of the green; a map of less is one of a part. */
const WHOLE = 0.7;

/** The readings leave much of the green out. @param {GreenEntry} green @param {Pick<Survey, 'grid'>} survey */
function isPart({ breadth_m, length_m }, { grid }) {
  const spans = (/** @type {number[]} */ on) => Math.max(...on) - Math.min(...on);
  return spans(grid.map(({ x_m }) => x_m)) < WHOLE * breadth_m || spans(grid.map(({ y_m }) => y_m)) < WHOLE * length_m;
}

/**
 * @param {State} state @param {GreenEntry} green @param {NonNullable<State['answers']['survey']>} survey
 * @param {WalkActions} act
 */
function below(state, green, survey, act) {
  const { walkPage, settings } = state;
  const { placing, finding, lent } = walkPage;
  const pick = (/** @type {'ball' | 'hole'} */ what) =>
    html`<button type="button" class="pick" aria-pressed=${placing === what}
      @click=${() => act.choose({ placing: what })}>${what}</button>`;
  const { step_m } = groundOf(survey);
  return html`<div class="placing"><span class="choice-row" role="group"
    aria-label="A touch places the">${pick('ball')} ${pick('hole')}</span>
      <button type="button" class="word" aria-expanded=${finding} @click=${() => act.choose({ finding: !finding })}>Find a
        putt</button></div>
    ${
      lent
        ? html`<p class="choice-row"><button type="button" class="word"
      @click=${() => act.takePutt()}>Take this putt’s slopes as readings</button><button type="button" class="word"
        @click=${() => act.choose({ lent: '' })}>Leave it</button></p>`
        : ''
    }
    ${finding ? find(state, green, act) : answer(state, green, act)}
    <p class="quiet">${
      step_m ? `A line every ${withUnit(step_m, smallUnit(settings))} of height, counted from the lowest. ` : ''
    }Strokes point downhill; faint is little known.${
      isPart(green, survey) ? ' What lies beyond the readings is not known: walk the rest.' : ''
    }${survey.suspects.length ? ' Ringed readings do not fit their neighbours and are left out.' : ''}</p>
    <p class="quiet">${CAUTION}</p>`;
}
