/**
 * Watches a ball that lies at one place, putt after putt: waits until the picture is still, sees the ball go, follows it to
 * rest or out of sight, and tells where it was in each frame. It knows pixels and times, no geometry and no golf.
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
import { changed, hasMoved, mean } from './still-picture.js';

const STILL_S = 0.6;
/** Of the picture, that may change from frame to frame while it is still: a shadow, a player who shifts their feet. */
const RESTLESS = 0.06;
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
/** A ball that would be out of the picture so soon has left it. */
const SOON_S = 0.2;
const AGAIN_S = 0.5;
const GONE_S = 1.5;
/** The next ball is about as wide as the first one, and about as bright. */
const AS_WIDE = 1.6;

/** @param {number} value @param {number} low @param {number} high */
const between = (value, low, high) => Math.max(low, Math.min(high, value));

/**
 * @param {object} options
 * @param {Film} options.film
 * @param {{u: number, v: number, width?: number}} options.ball where it lies, and how wide it is where that is known
 * @param {(phase: Phase) => void} options.onPhase
 * @param {(sights: Sight[], left: boolean) => void} options.onRoll and whether it ended out of the picture
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
  /** How light it is. */
  let lit = 0;
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

  /**
   * The ball at the mark. Once one was seen there the next is known by it: in rough grass something lighter is always found.
   * @param {Patch} whole
   */
  function atMark(whole) {
    const side = lies ? lies.width * 4 : Math.min(width, height) / 7;
    const [x, y, wide, high] = around(mark.u, mark.v, side);
    const patch = partOf(whole, x, y, wide, high);
    if (lies) return findBall(patch, null, { ...lies, u: mark.u, v: mark.v, reach: lies.width * 3 });
    const found = ballNear(patch, mark);
    const ratio = found && mark.width ? found.width / mark.width : 1;
    return ratio > AS_WIDE || ratio < 1 / AS_WIDE ? null : found;
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
    if (first && hasMoved(first, whole)) return turn('moved');
    const found = atMark(whole);
    if (!found) return turn('empty');
    first ??= whole;
    lies = found;
    still = withoutBall(whole, found);
    lit = mean(now.light);
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
    // gone without a roll, or pushed aside
    if (t - seenAt > GONE_S && !covered(at)) return again();
    const reach = at.width * 12;
    const gone = look(around(at.u, at.v - reach / 2 + 2 * at.width, at.width * 5, reach / 2), { ...at, reach });
    if (!gone) return;
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

  /** Whether something stands before the place where the ball lay; the light may have changed. @param {Ball} at */
  function covered(at) {
    const [x, y, wide, high] = around(at.u, at.v, at.width);
    const now = film.part(x, y, wide, high);
    const before = partOf(/** @type {Patch} */ (still), x, y, wide, high);
    return changed(now, before, mean(film.small().light) - lit, 2 * CHANGED) > 0.3;
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
    const left = leaves();
    const enough = rolled.length >= LEAST_SIGHTS + rest.length || left;
    again();
    rest = [];
    if (farthest <= ROLLED * at.width || !enough) return;
    // where a ball went before a phone that moved meanwhile nobody can tell
    if (first && hasMoved(first, film.part(0, 0, width, height))) turn('moved');
    else onRoll(rolled, left);
  }

  /** Whether the ball was last seen on its way out of the picture. */
  function leaves() {
    const [, u, v] = /** @type {Sight} */ (sights.at(-1));
    const [soonU, soonV] = [u + SOON_S * speed.u, v + SOON_S * speed.v];
    return soonU < 0 || soonU > width || soonV < 0 || soonV > height;
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
