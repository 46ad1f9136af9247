/**
 * Watches a ball that lies at one place, putt after putt: waits until the picture is still, sees the ball go, follows it to
 * rest
 * or out of sight, and tells where it was in each frame. It knows pixels and times, no geometry and no golf.
 *
 * @import {Ball, Patch} from './ball-finder.js'
 * @typedef {object} Film the frame that is shown now
 * @property {number} width @property {number} height px
 * @property {(x: number, y: number, width: number, height: number) => Patch} part
 * @property {() => Patch} small the whole of it, a tenth as wide
 *
 * @typedef {[x: number, y: number, width: number, height: number]} Box
 * @typedef {[number, number, number, number | null]} Sight time (s), centre and width (px)
 * @typedef {'settling' | 'empty' | 'ready' | 'rolling' | 'moved' | 'dark'} Phase
 */
import { ballNear, findBall, partOf, withoutBall } from './ball-finder.js';

const STILL_S = 0.6;
/** Of the picture, that may change while it is still: a shadow, a leaf. */
const RESTLESS = 0.02;
const CHANGED = 12;
const DARK = 24;
/** Sights of the ball at rest that go with a roll. */
const RESTING = 8;
const LOST_S = 0.7;
const REST_S = 0.6;
const REST_PX = 1.5;
const LONGEST_S = 20;
/** Widths that a ball has to go to have rolled. */
const ROLLED = 3;
const LEAST_SIGHTS = 6;
const AGAIN_S = 0.5;
const GONE_S = 1.5;
/** Places of the still picture by which it is known again: their side, and how far they are looked for, px. */
const ANCHOR = 40;
const SHIFT = 8;
const ANCHORS = [
  { across: 0.15, down: 0.3 },
  { across: 0.85, down: 0.3 },
  { across: 0.2, down: 0.6 },
  { across: 0.8, down: 0.6 },
  { across: 0.15, down: 0.85 },
  { across: 0.85, down: 0.85 },
  { across: 0.5, down: 0.4 },
];
const MOVED_PX = 2;

/** @param {number} value @param {number} low @param {number} high */
const between = (value, low, high) => Math.max(low, Math.min(high, value));

/**
 * @param {object} options
 * @param {Film} options.film
 * @param {{u: number, v: number}} options.ball where it lies
 * @param {(phase: Phase) => void} options.onPhase
 * @param {(sights: Sight[]) => void} options.onRoll
 */
export function createBallWatch({ film, ball: mark, onPhase, onRoll }) {
  const { width, height } = film;
  /** @type {Phase} */
  let phase = 'settling';
  /** @type {Patch | null} */
  let small = null;
  /** @type {Patch | null} the first still picture, by which a nudge is known */
  let first = null;
  /** @type {Patch | null} */
  let still = null;
  /** @type {Ball | null} at rest */
  let lies = null;
  let stillSince = -1;
  let triedAt = -Infinity;
  let seenAt = 0;
  /** @type {Sight[]} */
  let rest = [];
  /** @type {Sight[]} */
  let sights = [];
  /** @type {{u: number, v: number}} px a second */
  let speed = { u: 0, v: 0 };

  /** @param {Phase} next */
  function turn(next) {
    if (next === phase) return;
    phase = next;
    onPhase(next);
  }

  /** @param {number} u @param {number} v @param {number} side @param {number} [high] @returns {Box} */
  function around(u, v, side, high = side) {
    const [x, y] = [between(Math.round(u - side), 0, width - 8), between(Math.round(v - high), 0, height - 8)];
    return [x, y, between(Math.round(u + side), x + 8, width) - x, between(Math.round(v + high), y + 8, height) - y];
  }

  /** @param {Box} box @param {Parameters<typeof findBall>[2]} expected */
  function look(box, expected) {
    const [x, y, wide, high] = box;
    return findBall(film.part(x, y, wide, high), still && partOf(still, x, y, wide, high), expected);
  }

  /** How much of the picture has changed since the last look. @param {Patch} now */
  function restless(now) {
    const before = small;
    small = now;
    if (!before) return 1;
    return changed(now, before, mean(now.light) - mean(before.light), CHANGED); // lit by more is the light's doing
  }

  /** How far the picture lies from the first one, px. @param {Patch} now */
  function shifted(now) {
    if (!first) return 0;
    const shifts = [];
    for (const { across, down } of ANCHORS) {
      const found = shiftAt(first, now, Math.round(across * width), Math.round(down * height));
      if (found !== null) shifts.push(found);
    }
    shifts.sort((a, b) => a - b);
    return shifts[Math.floor(shifts.length / 2)] ?? 0;
  }

  /** @param {number} t */
  function settle(t) {
    const now = film.small();
    const calm = restless(now) < RESTLESS;
    if (!calm) stillSince = -1;
    else if (stillSince < 0) stillSince = t;
    if (stillSince < 0 || t - stillSince < STILL_S || t - triedAt < AGAIN_S) return;
    triedAt = t;
    if (mean(now.light) < DARK) return turn('dark');
    const whole = film.part(0, 0, width, height);
    if (shifted(whole) > MOVED_PX) return turn('moved');
    const side = lies ? lies.width * 3 : Math.min(width, height) / 7;
    const [x, y, wide, high] = around(mark.u, mark.v, side);
    const found = ballNear(partOf(whole, x, y, wide, high), mark);
    if (!found) return turn('empty');
    first ??= whole;
    lies = found;
    still = withoutBall(whole, found);
    rest = [];
    seenAt = t;
    turn('ready');
  }

  /** @param {number} t */
  function wait(t) {
    const at = /** @type {Ball} */ (lies);
    const near = { ...at, reach: at.width * 0.6 };
    const found = look(around(at.u, at.v, at.width * 2.5 + 10), near);
    if (found && Math.hypot(found.u - at.u, found.v - at.v) < Math.max(2, 0.15 * at.width)) {
      rest = [...rest.slice(1 - RESTING), [t, found.u, found.v, found.width]];
      sights = [];
      seenAt = t;
      return;
    }
    const reach = at.width * 12;
    const gone = look(around(at.u, at.v - reach / 2 + 2 * at.width, at.width * 5, reach / 2), { ...at, reach });
    if (!gone) {
      if (t - seenAt > GONE_S && !covered(at)) again();
      return;
    }
    const away = Math.hypot(gone.u - at.u, gone.v - at.v);
    const last = sights.at(-1);
    if (away < Math.max(3, 0.25 * at.width) || (last && Math.hypot(last[1] - at.u, last[2] - at.v) >= away)) {
      sights = [];
      return;
    }
    sights.push([t, gone.u, gone.v, gone.width]);
    if (!last) return;
    speed = { u: (gone.u - last[1]) / (t - last[0]), v: (gone.v - last[2]) / (t - last[0]) };
    sights = [...rest, ...sights];
    seenAt = t;
    turn('rolling');
  }

  /** Whether something stands before the place where the ball lay. @param {Ball} at */
  function covered(at) {
    const [x, y, wide, high] = around(at.u, at.v, at.width);
    const now = film.part(x, y, wide, high);
    const before = partOf(/** @type {Patch} */ (still), x, y, wide, high);
    return changed(now, before, 0, 2 * CHANGED) > 0.3;
  }

  /** @param {number} t */
  function follow(t) {
    const last = /** @type {Sight} */ (sights.at(-1));
    const gap = t - last[0];
    const across = last[3] ?? 8;
    const at = { u: last[1] + speed.u * gap, v: last[2] + speed.v * gap };
    const going = Math.hypot(speed.u, speed.v) * gap;
    const reach = Math.max(14, 1.6 * across + 0.7 * going);
    const found =
      at.u > -reach && at.u < width + reach && at.v > -reach && at.v < height + reach
        ? look(around(at.u, at.v, reach + across), {
            ...at,
            width: across,
            contrast: /** @type {Ball} */ (lies).contrast,
            reach,
          })
        : null;
    if (found) {
      const share = 0.6;
      speed = {
        u: speed.u + share * ((found.u - last[1]) / gap - speed.u),
        v: speed.v + share * ((found.v - last[2]) / gap - speed.v),
      };
      // a width is steadier than what one frame tells of it
      sights.push([t, found.u, found.v, 0.7 * across + 0.3 * found.width]);
    }
    const [first = last] = sights;
    const lost = t - /** @type {Sight} */ (sights.at(-1))[0] > LOST_S;
    if (lost || rests(t) || t - first[0] > LONGEST_S) end();
  }

  /** @param {number} t */
  function rests(t) {
    const lately = sights.filter(([at]) => t - at <= REST_S);
    const [first, last] = [lately[0], lately.at(-1)];
    if (lately.length < 5 || !first || !last || t - first[0] < 0.8 * REST_S) return false;
    const [, u, v] = last;
    return lately.every((sight) => Math.hypot(sight[1] - u, sight[2] - v) < REST_PX);
  }

  function end() {
    const at = /** @type {Ball} */ (lies);
    const farthest = Math.max(...sights.map(([, u, v]) => Math.hypot(u - at.u, v - at.v)));
    const rolled = sights;
    again();
    if (farthest > ROLLED * at.width && rolled.length >= LEAST_SIGHTS + rest.length) onRoll(rolled);
    rest = [];
  }

  function again() {
    sights = [];
    small = null;
    stillSince = -1;
    turn('settling');
  }

  return {
    /** A new frame is shown. @param {number} t when it was taken, s */
    frame(t) {
      if (phase === 'moved') return;
      if (phase === 'ready') wait(t);
      else if (phase === 'rolling') follow(t);
      else settle(t);
    },
    get phase() {
      return phase;
    },
    /** The ball at rest, as it was found. */
    get ball() {
      return lies;
    },
  };
}

/** @param {Uint8Array} light */
function mean(light) {
  let sum = 0;
  for (const each of light) sum += each;
  return sum / light.length;
}

/**
 * The share of pixels that differ by more than so much, what all of them are lit by apart.
 * @param {Patch} now @param {Patch} before @param {number} lit @param {number} most
 */
function changed(now, before, lit, most) {
  let count = 0;
  for (let i = 0; i < now.light.length; i++) if (Math.abs((now.light[i] ?? 0) - (before.light[i] ?? 0) - lit) > most) count++;
  return count / now.light.length;
}

/**
 * How far (px) what was at a place has gone; null where nothing there tells.
 * @param {Patch} before @param {Patch} now @param {number} x @param {number} y
 */
function shiftAt(before, now, x, y) {
  const half = ANCHOR / 2;
  if (x < half + SHIFT || y < half + SHIFT || x + half + SHIFT >= before.width || y + half + SHIFT >= before.height)
    return null;
  let best = Infinity;
  let here = 0;
  let far = 0;
  let total = 0;
  for (let dy = -SHIFT; dy <= SHIFT; dy++)
    for (let dx = -SHIFT; dx <= SHIFT; dx++) {
      let sum = 0;
      let offs = 0;
      let n = 0;
      for (let row = -half; row < half; row += 2)
        for (let column = -half; column < half; column += 2) {
          const off =
            (now.light[(y + row + dy) * now.width + x + column + dx] ?? 0) -
            (before.light[(y + row) * before.width + x + column] ?? 0);
          sum += off;
          offs += off * off;
          n++;
        }
      const spread = offs / n - (sum / n) ** 2;
      total += spread;
      if (dx === 0 && dy === 0) here = spread;
      if (spread < best) {
        best = spread;
        far = Math.hypot(dx, dy);
      }
    }
  const usual = total / (2 * SHIFT + 1) ** 2;
  // smooth grass, or something that has come before it, tells nothing
  if (best > 0.6 * usual || usual < 4) return null;
  return here <= best * 1.15 ? 0 : far;
}
