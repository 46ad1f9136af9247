/**
 * Marks on the moving picture: ball and hole, and the ends of the thing by which the lens is measured. What is touched is
 * looked for near the touch, and set to a part of a pixel under the magnifier.
 * @import {Store} from '../../store.js'
 * @import {Rim, WatchPage} from '../../types.js'
 * @import {Film} from '../../device/ball-watch.js'
 */
import { ballNear, holeNear } from '../../device/ball-finder.js';
import { number, today } from '../../format.js';

/** Of the picture's shorter side: how far from a touch ball and hole are looked for. */
const NEAR = 1 / 9;
/** A lens for each camera and size; one that was measured long ago is let go. */
const MOST_LENSES = 20;
export const UNMARKED = { ball: null, hole: null, end: null, other: null, chosen: null };
const NO_BALL = 'No ball shows there: it has to be brighter than the green. Mark again, or set the mark below.';

/** What of the picture is near a mark. @param {Film} film @param {{u: number, v: number}} at */
function near(film, { u, v }) {
  const side = Math.min(film.width, film.height) * NEAR;
  const [x, y] = [Math.max(0, Math.round(u - side)), Math.max(0, Math.round(v - side))];
  return film.part(x, y, Math.min(film.width - x, Math.round(2 * side)), Math.min(film.height - y, Math.round(2 * side)));
}

/**
 * The hole's rim, where more of it shows than when it was marked: a ball that lay before it is gone. Null where it does not, or
 * where the mark was set by hand.
 * @param {Film} film @param {Rim} hole @returns {Rim | null}
 */
export function moreOfHole(film, hole) {
  const found = hole.set ? null : holeNear(near(film, hole), hole);
  if (!found || found.width <= hole.width + 1) return null;
  return Math.abs(found.u - hole.u) < found.width && Math.abs(found.v - hole.v) < found.width ? found : null;
}

/**
 * @param {object} made
 * @param {Store} made.store @param {(action: string, patch: Partial<WatchPage>) => void} made.set
 * @param {() => Film | null} made.film
 * @param {() => void} made.begin when both ball and hole are marked
 * @param {() => void} made.stop when they are not any more
 * @param {() => boolean} made.rolls
 */
export function markActions({ store, set, film, begin, stop, rolls }) {
  const page = () => store.state.watchPage;

  /** @param {Film} shown @param {{u: number, v: number}} at */
  function markBall(shown, at) {
    const found = ballNear(near(shown, at), at);
    const rim = found ? { u: found.u, v: found.v, width: found.width, height: found.width } : { ...at, width: 0, height: 0 };
    set('mark ball', { ball: rim, chosen: 'ball', phase: 'marking', problem: found ? '' : NO_BALL });
  }

  return {
    /** A touch on the picture, px of it. @param {number} u @param {number} v */
    touch(u, v) {
      const { ball, hole, end, other, measuring, phase } = page();
      const shown = film();
      if (!shown || (phase !== 'marking' && phase !== 'moved')) return;
      const bare = { u, v, width: 0, height: 0 };
      if (measuring) {
        if (!end) set('mark an end', { end: bare, chosen: 'end' });
        else if (!other) set('mark the other end', { other: bare, chosen: 'other' });
      } else if (!ball) markBall(shown, { u, v });
      else if (!hole) {
        set('mark hole', { hole: holeNear(near(shown, bare), bare) ?? bare, chosen: 'hole', problem: '' });
        begin();
      }
    },
    /** @param {NonNullable<WatchPage['chosen']>} chosen */
    choose: (chosen) => set('magnify', { chosen: page().chosen === chosen ? null : chosen }),
    /** Sets the mark under the magnifier. @param {number} du @param {number} dv px */
    nudge(du, dv) {
      const { chosen } = page();
      const at = chosen && page()[chosen];
      if (!at) return;
      set(`nudge ${chosen}`, { [chosen]: { ...at, u: at.u + du, v: at.v + dv, set: true } });
      if (chosen === 'ball' && page().hole && !rolls()) begin();
    },
    again() {
      stop();
      set('mark again', { ...UNMARKED, phase: 'marking', problem: '' });
    },
    /** @param {boolean} measuring */
    measure(measuring) {
      stop();
      set(measuring ? 'measure lens' : 'lens as it was', { ...UNMARKED, measuring, phase: 'marking', problem: '', told: '' });
    },
    /** Of this camera at this size of picture, once. */
    keepLens() {
      const {
        sighted,
        answers: { filmLens },
      } = store.state;
      const { camera } = page();
      if (!filmLens) return;
      const lens = { camera, mm: filmLens.lens_mm, date: today() };
      const films = [...sighted.films.filter((each) => each.camera !== camera), lens].slice(-MOST_LENSES);
      store.change('keep lens', { sighted: { ...sighted, films } });
      set('lens kept', {
        ...UNMARKED,
        measuring: false,
        told: `Kept: this camera’s lens is ${number(lens.mm, 1)} mm when it films.`,
      });
    },
  };
}
