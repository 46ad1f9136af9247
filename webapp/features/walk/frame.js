/**
 * How a green's map lies on the screen: x to the right, y up, to one scale.
 * @import {GreenEntry, OnMap, WalkPage} from '../../types.js'
 * @typedef {[number, number]} Pixel
 * @typedef {{scale: number, at: OnMap, px: (place: Readonly<OnMap>) => Pixel, on: (pixel: Pixel) => OnMap}} Frame
 */

const RIM_PX = 22;
/** Below the green are the buttons that draw it nearer. */
const BELOW_PX = 54;
/** Pixels a metre, as far in as one may look. */
const NEAREST = 260;

/**
 * @param {Pick<GreenEntry, 'breadth_m' | 'length_m'>} green @param {WalkPage['size']} size @param {WalkPage['view']} view
 * @returns {Frame}
 */
export function frameOf({ breadth_m, length_m }, { width, height }, view) {
  const whole = Math.min((width - 2 * RIM_PX) / breadth_m, (height - RIM_PX - BELOW_PX) / length_m);
  const middle = (height + RIM_PX - BELOW_PX) / 2;
  const scale = Math.min(NEAREST, Math.max(whole, view?.scale ?? whole));
  const near = (/** @type {number} */ at, /** @type {number} */ side) => Math.min(side, Math.max(0, at));
  const at = /** @type {OnMap} */ (
    view && scale > whole ? [near(view.at[0], breadth_m), near(view.at[1], length_m)] : [breadth_m / 2, length_m / 2]
  );
  return {
    scale,
    at,
    px: ([x, y]) => [width / 2 + (x - at[0]) * scale, middle - (y - at[1]) * scale],
    on: ([u, v]) => [at[0] + (u - width / 2) / scale, at[1] - (v - middle) / scale],
  };
}

/**
 * From a putt's own axes (on to the hole, and left) to the map.
 * @param {Readonly<OnMap>} ball @param {Readonly<OnMap>} hole @returns {(x: number, y: number) => OnMap}
 */
export function fromPutt(ball, hole) {
  const [dx, dy] = [hole[0] - ball[0], hole[1] - ball[1]];
  const length = Math.hypot(dx, dy) || 1;
  const [ux, uy] = [dx / length, dy / length];
  return (x, y) => [ball[0] + x * ux - y * uy, ball[1] + x * uy + y * ux];
}

/** How far apart. @param {Readonly<OnMap>} one @param {Readonly<OnMap>} other */
export const away = ([a, b], [c, d]) => Math.hypot(c - a, d - b);

/** @param {Frame} frame @param {readonly Readonly<OnMap>[]} places */
export const line = ({ px }, places) =>
  `M${places
    .map((place) =>
      px(place)
        .map((v) => v.toFixed(1))
        .join(' '),
    )
    .join('L')}`;
