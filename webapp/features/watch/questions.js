/**
 * What the engine is asked about a ball that was seen, and about the lens.
 * @import {Question} from '../../questions.js'
 * @import {Read, Rim, State} from '../../types.js'
 * @import {Sight} from '../../device/ball-watch.js'
 * @import {WatchedFields} from '../../engine/protocol.js'
 */
import { plain, speedTold, tiltTold } from '../../doubt.js';
import { fieldOfView } from '../../format.js';

/** Points of the line that was meant: enough to draw it. */
const POINTS = 40;
/** Of a distance that was paced; assumed, as the roll test does. */
const STRIDE = 0.04;

/**
 * The lens as it was measured for this camera and this size of picture; undefined where it was not.
 * @param {Pick<State, 'sighted' | 'watchPage'>} state
 */
export const filmLens = ({ sighted, watchPage }) => sighted.films.find(({ camera }) => camera === watchPage.camera);

/** @type {Question[]} */
export const questions = [
  {
    into: 'filmLens',
    ask: 'lens',
    when: ({ screen, watchPage }) => screen === 'watch' && watchPage.measuring,
    follows: true,
    fields: ({ sighted, watchPage: { end, other, width, height } }) =>
      end && other
        ? {
            width_px: width,
            height_px: height,
            ends_px: [pixel(end), pixel(other)],
            length_m: sighted.thing_m,
            distance_m: sighted.away_m,
          }
        : null,
  },
];

/** @param {Rim} at @returns {[number, number]} */
const pixel = ({ u, v }) => [u, v];

/**
 * @param {State} state @param {Read} meant the read of the putt in hand @param {Sight[]} sights @returns {WatchedFields | null}
 */
export function watchedFields(state, meant, sights) {
  const { watchPage, putt, sighted, settings } = state;
  const { width, height, attitude, hole } = watchPage;
  if (!attitude || !hole) return null;
  const { past_m: _, ...green } = plain(putt);
  const path = meant.path.filter(([t]) => t <= meant.time_s);
  const step = Math.max(1, Math.ceil(path.length / POINTS));
  return {
    frames: sights.map(([t, u, v, wide]) => [t, round(u), round(v), wide && round(wide)]),
    width_px: width,
    height_px: height,
    fov_deg: fieldOfView(filmLens(state)?.mm ?? sighted.film_mm, { width, height }),
    held: attitude,
    eye_height_m: sighted.film_m,
    // the ball's first frames tell where it lay, finer than a touch
    ball_px: null,
    hole_px: [hole.u, hole.v],
    ...green,
    // a stride is off its usual length all the way
    distance_sd_m: settings.distance === 'paces' ? STRIDE * putt.distance_m : null,
    tilt_sd_percent: tiltTold(state).sd || null,
    stimp_sd_ft: speedTold(state).sd,
    aim_deg: meant.aim_deg,
    points_m: path.filter((_, i) => i % step === 0).map(([, x, y]) => [x, y]),
    unit: settings.distance === 'm' ? 'm' : 'ft',
  };
}

/** @param {number} px */
const round = (px) => Math.round(100 * px) / 100;
