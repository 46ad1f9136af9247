/**
 * Fingers on the map: one moves ball or hole where it takes hold of them, else the map; two draw it nearer; a touch places.
 * @import {OnMap, WalkPage} from '../../types.js'
 * @import {Frame, Pixel} from './frame.js'
 * @import {WalkActions} from './actions.js'
 */

/** A thumb takes hold of what is so near, and has moved when it has gone so far. */
const REACH_PX = 30;
const MOVED_PX = 6;
/** A touch so near to the one that it does not place means that one. */
const ON_PX = 14;
/** @type {Record<string, Pixel>} */
const ARROWS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };
const STEP_M = 0.1;

/** @typedef {{frame: Frame, placed: {ball: OnMap, hole: OnMap}, placing: WalkPage['placing'], act: WalkActions}} Shown */

/** Where fingers are, by their pointers. @type {Map<number, Pixel>} */
const fingers = new Map();
/** @type {{what: WalkPage['dragged'], placing: WalkPage['placing'], from: Pixel, off: Pixel, moved: boolean}} */
let touch = { what: null, placing: 'ball', from: [0, 0], off: [0, 0], moved: false };

/** @param {PointerEvent | WheelEvent} event @returns {Pixel} */
function pixelOf(event) {
  const box = /** @type {Element} */ (event.currentTarget).getBoundingClientRect();
  return [event.clientX - box.left, event.clientY - box.top];
}

/** @param {Pixel} a @param {Pixel} b */
const apart = (a, b) => Math.hypot(a[0] - b[0], a[1] - b[1]);

/**
 * The map with a place of it dragged under a pixel, nearer by a factor.
 * @param {Shown} shown @param {Pixel} from @param {Pixel} to @param {number} by
 */
function drawn({ frame, act }, from, to, by) {
  const [x, y] = frame.on(from);
  const scale = frame.scale * by;
  const [u, v] = frame.px(frame.at);
  act.look({ scale, at: [x - (to[0] - u) / scale, y + (to[1] - v) / scale] });
}

/** @param {Shown} shown */
export const hand = (shown) => ({
  /** @param {PointerEvent} event */
  down(event) {
    const { frame, placed, placing, act } = shown;
    const at = pixelOf(event);
    /** @type {Element} */ (event.currentTarget).setPointerCapture(event.pointerId);
    fingers.set(event.pointerId, at);
    if (fingers.size > 1) {
      touch = { ...touch, what: null, moved: true };
      return act.hold(null);
    }
    const what = /** @type {const} */ (['ball', 'hole'])
      .map((name) => ({ name, px: frame.px(placed[name]) }))
      .filter(({ px }) => apart(px, at) < REACH_PX)
      .toSorted((a, b) => apart(a.px, at) - apart(b.px, at))[0];
    const off = /** @type {Pixel} */ (what ? [what.px[0] - at[0], what.px[1] - at[1]] : [0, 0]);
    touch = { what: what?.name ?? null, placing, from: at, off, moved: false };
    if (what) act.hold(what.name);
  },
  /** @param {PointerEvent} event */
  move(event) {
    const before = fingers.get(event.pointerId);
    if (!before) return;
    const at = pixelOf(event);
    const [other] = [...fingers].filter(([id]) => id !== event.pointerId).map(([, where]) => where);
    fingers.set(event.pointerId, at);
    if (other) {
      const middle = (/** @type {Pixel} */ one) => /** @type {Pixel} */ ([(one[0] + other[0]) / 2, (one[1] + other[1]) / 2]);
      return drawn(shown, middle(before), middle(at), apart(at, other) / (apart(before, other) || 1));
    }
    if (!touch.moved && apart(at, touch.from) < MOVED_PX) return;
    touch.moved = true;
    if (touch.what) shown.act.put(touch.what, shown.frame.on([at[0] + touch.off[0], at[1] + touch.off[1]]));
    else drawn(shown, before, at, 1);
  },
  /** @param {PointerEvent} event */
  up(event) {
    if (!fingers.delete(event.pointerId) || fingers.size) return;
    const { what, placing, off, moved } = touch;
    if (what) shown.act.hold(null);
    if (moved || event.type !== 'pointerup' || (what && what !== placing && Math.hypot(...off) < ON_PX)) return;
    // a ball may lie near the hole: a touch beside that places the ball
    if (what !== placing) shown.act.choose({ placing });
    shown.act.put(placing, shown.frame.on(pixelOf(event)));
  },
  /** @param {WheelEvent} event */
  wheel(event) {
    event.preventDefault();
    const at = pixelOf(event);
    drawn(shown, at, at, Math.exp(-event.deltaY / 400));
  },
  /** @param {'ball' | 'hole'} what @returns {(event: KeyboardEvent) => void} */
  key: (what) => (event) => {
    const arrow = ARROWS[event.key];
    if (!arrow) return;
    event.preventDefault();
    const [x, y] = shown.placed[what];
    shown.act.put(what, [x + STEP_M * arrow[0], y + STEP_M * arrow[1]]);
  },
});
