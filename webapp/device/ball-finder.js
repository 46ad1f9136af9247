/**
 * The ball in a frame: what is brighter than the still picture, as large as a ball is there, and round. It knows pixels only;
 * what lies outside a patch is dark (`?? 0`).
 *
 * @typedef {object} Patch brightness (0 to 255) of a part of the picture, its corner at x, y
 * @property {number} x @property {number} y @property {number} width @property {number} height
 * @property {Uint8Array} light
 * @typedef {{u: number, v: number, width: number, contrast: number}} Ball centre and width, px, and how much brighter it is
 *   than the green
 * @typedef {{u: number, v: number, width: number, contrast: number, reach: number}} Expected a ball, and how far from there it
 *   may be
 */

/** Brighter than the green by less, a thing cannot be told from noise. */
const LEAST_CONTRAST = 22;
/** Of the ball's contrast: in a shadow it has about half. */
const SHARE = 0.35;
const NARROWEST = 0.45;
const WIDEST = 1.9;
/** Blur makes a ball longer than it is wide. */
const LONGEST = 3.2;
const LEAST_FILL = 0.5;
const LEAST_AREA = 3;
/** A ball that is so wide has its full light in its middle. */
const SOLID_PX = 5;
/** Of grass as rough as that, in standard deviations, the lightest blade is no ball. */
const ROUGH = 4.5;
const ONE_BELOW = 0.159;
/** Pixels by which what the grass does is measured. */
const SAMPLES = 400;

/** @param {Uint8ClampedArray} rgba @returns {Uint8Array} brightness */
export function lightOf(rgba) {
  const light = new Uint8Array(rgba.length >> 2);
  for (let i = 0, j = 0; i < light.length; i++, j += 4)
    light[i] = ((rgba[j] ?? 0) * 54 + (rgba[j + 1] ?? 0) * 183 + (rgba[j + 2] ?? 0) * 19) >> 8;
  return light;
}

/** @param {ArrayLike<number>} values @param {number} share */
function quantile(values, share) {
  const step = Math.max(1, Math.floor(values.length / SAMPLES));
  const some = Array.from({ length: Math.ceil(values.length / step) }, (_, i) => values[i * step] ?? 0).sort((a, b) => a - b);
  return some[Math.min(some.length - 1, Math.floor(share * some.length))] ?? 0;
}

/**
 * How much brighter each pixel is than the still picture; what all of it has become brighter by is the light's doing.
 * Without a still picture it is held against the green itself.
 * @param {Patch} seen @param {Patch | null} still the same part of the still picture
 */
function brighter(seen, still) {
  const off = new Int16Array(seen.light);
  if (still) for (let i = 0; i < off.length; i++) off[i] = (off[i] ?? 0) - (still.light[i] ?? 0);
  const usual = quantile(off, 0.5);
  if (usual) for (let i = 0; i < off.length; i++) off[i] = (off[i] ?? 0) - usual;
  return off;
}

/**
 * Each part that is at least so light and lies whole in the patch (what its edge cuts through is larger than it looks): its
 * box, its pixels, their light and its moments, and the lightest of them.
 * @param {Uint8Array | Int16Array} lights @param {number} width @param {number} least
 */
function* parts(lights, width, least) {
  const height = lights.length / width;
  const done = new Uint8Array(lights.length);
  const stack = new Int32Array(lights.length);
  let depth = 0;
  const reach = (/** @type {number} */ i) => {
    if (done[i] || (lights[i] ?? 0) < least) return;
    done[i] = 1;
    stack[depth++] = i;
  };
  for (let start = 0; start < lights.length; start++) {
    if (done[start] || (lights[start] ?? 0) < least) continue;
    reach(start);
    let [area, sum, su, sv, most] = [0, 0, 0, 0, 0];
    let [left, right, top, low] = [width, 0, height, 0];
    while (depth) {
      const i = stack[--depth] ?? 0;
      const y = Math.floor(i / width);
      const x = i - y * width;
      const light = lights[i] ?? 0;
      area++;
      sum += light;
      su += light * x;
      sv += light * y;
      if (light > most) most = light;
      if (x < left) left = x;
      if (x > right) right = x;
      if (y < top) top = y;
      if (y > low) low = y;
      if (x > 0) reach(i - 1);
      if (x + 1 < width) reach(i + 1);
      reach(i - width);
      reach(i + width);
    }
    if (left > 0 && top > 0 && right < width - 1 && low < height - 1)
      yield { left, right, top, low, wide: right - left + 1, high: low - top + 1, area, sum, su, sv, most };
  }
}

/**
 * @param {Patch} seen @param {Patch | null} still @param {Expected} expected
 * @returns {Ball | null}
 */
export function findBall(seen, still, expected) {
  const least = Math.max(LEAST_CONTRAST, SHARE * expected.contrast);
  /** @type {Ball | null} */
  let best = null;
  let cost = Infinity;
  for (const { wide, high, area, sum, su, sv, most } of parts(brighter(seen, still), seen.width, least)) {
    if (area < LEAST_AREA) continue;
    if (wide > LONGEST * high || high > LONGEST * wide || area < LEAST_FILL * wide * high * 0.785) continue;
    // a small ball's light is spread over pixels that it only touches
    const contrast = expected.width > SOLID_PX ? most : Math.max(most, expected.contrast);
    const across = 2 * Math.sqrt(Math.max(area * 0.6, sum / (0.85 * contrast)) / Math.PI);
    const ratio = across / expected.width;
    const u = seen.x + su / sum;
    const v = seen.y + sv / sum;
    const away = Math.hypot(u - expected.u, v - expected.v) / expected.reach;
    if (ratio < NARROWEST || ratio > WIDEST || away > 1) continue;
    const worse = 2 * Math.abs(Math.log(ratio)) + away;
    if (worse < cost) {
      cost = worse;
      best = { u, v, width: across, contrast: most };
    }
  }
  return best;
}

/**
 * The ball nearest to a touch, in the still picture: bright on the green.
 * @param {Patch} seen @param {{u: number, v: number}} touch @returns {Ball | null}
 */
export function ballNear(seen, touch) {
  const green = quantile(seen.light, 0.5);
  const contrast = Math.max(0, brightest(seen.light) - green);
  // what is dark there (a leg) or bright (the ball) spreads the light to its own side
  const rough = Math.min(green - quantile(seen.light, ONE_BELOW), quantile(seen.light, 1 - ONE_BELOW) - green);
  if (contrast < Math.max(LEAST_CONTRAST, ROUGH * rough)) return null;
  /** @type {Ball | null} */
  let best = null;
  // its width is not known yet: the most likely of some
  for (let width = seen.width / 1.6; width > 4; width /= 1.5) {
    const found = findBall(seen, null, { ...touch, width, contrast, reach: seen.width / 2 });
    if (found && (!best || fits(found, width) < fits(best, width))) best = found;
  }
  return best;
}

/** @param {Ball} ball @param {number} width */
const fits = (ball, width) => Math.abs(Math.log(ball.width / width));

/** @param {Uint8Array} light */
const brightest = (light) => light.reduce((most, each) => Math.max(most, each), 0);

/**
 * The hole nearest to a touch, in the still picture: dark, and wider than it is high. Its rim's middle, and how far the rim
 * goes.
 * @param {Patch} seen @param {{u: number, v: number}} touch
 */
export function holeNear(seen, touch) {
  // a hole is to the green what a ball is, the other way round
  const dark = Uint8Array.from(seen.light, (light) => 255 - light);
  const green = quantile(dark, 0.5);
  const contrast = brightest(dark) - green;
  if (contrast < LEAST_CONTRAST) return null;
  let best = null;
  let nearest = Infinity;
  for (const { left, right, top, low, wide, high, area } of parts(dark, seen.width, green + contrast / 2)) {
    if (area < 6 || high > 1.3 * wide) continue;
    const [u, v] = [seen.x + (left + right) / 2, seen.y + (top + low) / 2];
    const away = Math.hypot(u - touch.u, v - touch.v) - wide;
    if (away < nearest) {
      nearest = away;
      best = { u, v, width: wide, height: high };
    }
  }
  return best;
}

/** The still picture without its ball: the green goes on under it. @param {Patch} still @param {Ball} ball @returns {Patch} */
export function withoutBall(still, ball) {
  const light = Uint8Array.from(still.light);
  const reach = ball.width * 0.75 + 3;
  const ring = [];
  const inside = [];
  for (let y = 0; y < still.height; y++)
    for (let x = 0; x < still.width; x++) {
      const away = Math.hypot(still.x + x - ball.u, still.y + y - ball.v);
      if (away < reach) inside.push(y * still.width + x);
      else if (away < reach + 4) ring.push(light[y * still.width + x] ?? 0);
    }
  const green = quantile(ring, 0.5);
  for (const i of inside) light[i] = green;
  return { ...still, light };
}

/** @param {Patch} from @param {number} x @param {number} y @param {number} width @param {number} height @returns {Patch} */
export function partOf(from, x, y, width, height) {
  const light = new Uint8Array(width * height);
  for (let row = 0; row < height; row++) {
    const start = (y - from.y + row) * from.width + (x - from.x);
    light.set(from.light.subarray(start, start + width), row * width);
  }
  return { x, y, width, height, light };
}
