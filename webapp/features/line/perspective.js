/**
 * The putt in true perspective, as the eye has it.
 * @import {Answers, PathPoint, State} from '../../types.js'
 * @import {Pixel} from './overlay.js'
 * @import {LineActions} from './actions.js'
 */
import { pick } from '../../pick.js';
import { refusalWords } from '../../refusal.js';
import { html, nothing, svg } from 'lit-html';
import { chalkStep, distanceUnit, percent, withUnit } from '../../format.js';
import { choice } from '../../parts/choice.js';
import { measured, small } from '../../parts/eye-height.js';
import { pathAfter, pathUntil } from '../../parts/picture/frame.js';
import { noPutt } from './no-putt.js';
import { rollBalls } from './roll.js';

/** @type {[string, string][]} */
const STANDS = [
  ['ball', 'behind ball'],
  ['low', 'low side'],
  ['hole', 'behind hole'],
];
/** @type {[string, string][]} */
const EYES = [
  ['standing', 'standing'],
  ['crouching', 'crouching'],
];
const SMALL_PX = 7;

/** @param {readonly Pixel[]} points */
const line = (points) => `M${points.map(([u, v]) => `${u.toFixed(1)} ${v.toFixed(1)}`).join('L')}`;
/** Of a ball's way. @param {readonly PathPoint[]} path */
const wayOf = (path) => line(path.map(([, u, v]) => [u, v]));

/** One stroke, broad uphill and pointed downhill. @param {readonly Pixel[]} ends */
function stroke(ends) {
  const [[x0, y0], [x1, y1]] = [pick(ends, 0), pick(ends, 1)];
  const length = Math.hypot(x1 - x0, y1 - y0) || 1;
  const broad = Math.min(2, 0.4 + length / 14);
  const [ax, ay] = [(-(y1 - y0) / length) * broad, ((x1 - x0) / length) * broad];
  return `${line([
    [x0 + ax, y0 + ay],
    [x0 - ax, y0 - ay],
    [x1, y1],
  ])}Z`;
}

/** @param {Answers['view']} seen @param {string} words */
function drawing(seen, words) {
  const {
    asked: { width_px: width, height_px: height },
    chosen,
    high,
    low,
    time_s,
    hole,
    flag,
    spot,
    apex,
    horizon_px,
  } = seen;
  const [, u, v, radius] = pick(chosen, 0);
  const at = {
    x: hole.reduce((sum, [u]) => sum + u, 0) / hole.length,
    y: hole.reduce((sum, [, v]) => sum + v, 0) / hole.length,
  };
  const wide = Math.max(...hole.map(([u]) => u)) - at.x;
  return html`<svg class="picture seen" role="img" aria-label=${words} width=${width} height=${height}
    viewBox="0 0 ${width} ${height}">
    <defs><pattern id="hatch" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path
      class="hatch-line" d="M0 2.5H5"></path></pattern></defs>
    <path class="horizon" d="M0 ${horizon_px}H${width}"></path>
    <path class="ground" d="${line(seen.turf)}Z"></path>
    <path class="turf" d=${seen.grid.map((each) => line(each)).join('')}></path>
    <path class="hachures" d=${seen.falls.map(stroke).join('')}></path>
    ${
      high && low
        ? svg`<path class="band" d="${wayOf(high)}${wayOf(low.toReversed()).replace('M', 'L')}Z"></path>
      <path class="high" d=${wayOf(high)}></path><path class="low" d=${wayOf(low)}></path>`
        : nothing
    }
    <path class="hole" d="${line(hole)}Z"></path>
    ${wide < SMALL_PX ? svg`<circle class="ring" cx=${at.x} cy=${at.y} r=${SMALL_PX + 4}></circle>` : nothing}
    ${spot ? svg`<path class="start-line" d="M${u} ${v}L${spot[0]} ${spot[1]}"></path>` : nothing}
    <path class="past" d=${wayOf(pathAfter(chosen, time_s))}></path>
    <path class="path" d=${wayOf(pathUntil(chosen, time_s))}></path>
    <path class="flagstick" d=${line(flag)}></path>
    ${spot ? svg`<path class="spot" d="M${spot[0] - 7} ${spot[1]}h14M${spot[0]} ${spot[1] - 7}v14"></path>` : nothing}
    ${apex ? svg`<circle class="apex" cx=${apex[0]} cy=${apex[1]} r="4"></circle>` : nothing}
    <circle class="ball" data-rolls cx=${u} cy=${v - radius} r=${radius}></circle>
    ${
      radius < SMALL_PX
        ? svg`<circle class="ring" cx=${u} cy=${v - radius}
      r=${SMALL_PX + 2}></circle>`
        : nothing
    }
    <text class="rolling-name" x="16" y=${height - 14} aria-hidden="true"></text>
  </svg>`;
}

/** @type {{seen: Answers['view'], shown: unknown} | undefined} */
let last;

/**
 * Drawn anew only when it has changed, so that nothing else on the screen stops a rolling ball.
 * @param {Answers['view']} seen @param {State} state
 */
function kept(seen, { settings, window, putt }) {
  if (last?.seen !== seen) {
    const from = STANDS.find(([stand]) => stand === seen.asked.stand)?.[1];
    const odds = window ? ` Make ${percent(window.value.make_probability)}.` : '';
    const away = withUnit(seen.asked.distance_m ?? putt.distance_m, distanceUnit(settings));
    const squares = withUnit(seen.grid_m, chalkStep(settings).shown);
    last = { seen, shown: drawing(seen, `The putt in perspective from ${from}: ${away}, squares of ${squares}.${odds}`) };
  }
  return last.shown;
}

/** @param {State} state @param {LineActions} act */
export function perspective(state, act) {
  const {
    linePage: { stand, sound },
    answers: { view: seen },
    refusals,
    sighted,
    settings,
  } = state;
  const roll = (/** @type {Event} */ event) => {
    const root = /** @type {Element} */ (event.currentTarget).closest('.eye-stage');
    if (root && seen) void rollBalls(root, seen, sound);
  };
  return html`<div class="eye-stage" @click=${roll}>
      ${
        refusals.view
          ? noPutt(state) ||
            html`<p class="problem"
        role="alert">${refusalWords(refusals.view, settings)}</p>`
          : seen
            ? kept(seen, state)
            : ''
      }
      ${
        seen && !refusals.view
          ? html`<button type="button" class="roll"><svg width="12" height="14" viewBox="0 0 12 14"
        aria-hidden="true"><path d="M1 1L11 7L1 13Z"></path></svg>Roll</button>`
          : ''
      }
    </div>
    ${
      seen
        ? html`<p class="quiet">Squares of ${withUnit(seen.grid_m, chalkStep(settings).shown)}; strokes point downhill.
      Dashed: high and soft. Dotted: low and firm.</p>`
        : ''
    }
    ${choice({
      label: 'Seen from',
      name: 'stand',
      value: stand,
      options: STANDS,
      onValue: (value) => act.standAt(/** @type {any} */ (value)),
    })}
    ${choice({
      label: 'Eye',
      name: 'eye',
      value: sighted.eye,
      options: EYES,
      onValue: (value) => act.hold(/** @type {any} */ (value)),
    })}
    ${choice({
      label: 'Sound of the roll',
      name: 'sound',
      value: sound ? 'on' : 'off',
      options: [
        ['on', 'on'],
        ['off', 'off'],
      ],
      onValue: (value) => act.hear(value === 'on'),
    })}
    <a class="word" href="#settings">Eye ${withUnit(sighted[`${sighted.eye}_m`], small(settings))} high,
      ${withUnit(sighted.back_m, measured(settings))} back</a>`;
}
