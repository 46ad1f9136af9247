/**
 * What a touch on the watch can do, and what it does by itself: waits, sees, follows, says, keeps, and waits again.
 * @import {App} from '../../app.js'
 * @import {Attitude, PuttEntry, Refusal, Rim, WatchedPutt, WatchPage} from '../../types.js'
 * @import {Film, Phase, Sight} from '../../device/ball-watch.js'
 */
import { watchAttitude } from '../../device/attitude.js';
import { ballNear, holeNear } from '../../device/ball-finder.js';
import { createBallWatch } from '../../device/ball-watch.js';
import { closeCamera, frameOf, openCamera } from '../../device/camera.js';
import { FILM, filmOf, watchFrames } from '../../device/film.js';
import { give } from '../../device/share.js';
import { say } from '../../device/speech.js';
import { createWake } from '../../device/wake.js';
import { plain } from '../../doubt.js';
import { enterSighted } from '../../parts/eye-height.js';
import { refusalWords } from '../../refusal.js';
import { counted } from './drills.js';
import { FIELDS } from './fields.js';
import { drawn, magnified } from './overlay.js';
import { watchedFields } from './questions.js';

const OTHERWISE = 'note the putt by hand';
/** Of the picture's shorter side: how far from a touch ball and hole are looked for. */
const NEAR = 1 / 9;
const JPEG_QUALITY = 0.85;
/** A putt of that few sights has left the picture at once. */
const SHORT = 14;
const LEFT = 'The ball left the picture at once. Turn the phone so that the whole way is in it, then mark again.';

/** @param {App} app */
export function actions({ store, engine, record }) {
  const page = () => store.state.watchPage;
  /** @param {string} action @param {Partial<WatchPage>} patch */
  const set = (action, patch) => store.change(action, { watchPage: { ...page(), ...patch } });
  const wake = createWake();
  let unwatch = () => {};
  let stopFrames = () => {};
  /** @type {Film | null} */
  let film = null;
  /** @type {HTMLVideoElement | null} */
  let video = null;
  /** @type {ReturnType<typeof createBallWatch> | null} */
  let ballWatch = null;

  /** @param {string} [problem] */
  function close(problem = '') {
    unwatch();
    stopFrames();
    wake(false);
    const { stream } = page();
    if (stream) closeCamera(stream);
    [film, ballWatch, video] = [null, null, null];
    set('close camera', { stream: null, phase: 'off', ball: null, hole: null, chosen: null, slow: false, problem });
  }

  /** Both are marked: from here on nothing has to be touched. */
  function begin() {
    const { ball, hole } = page();
    if (!film || !ball || !hole) return;
    ballWatch = createBallWatch({ film, ball, onPhase: turned, onRoll: (sights) => void rolled(sights) });
    wake(true);
    set('watch', { phase: 'settling', problem: '', told: '' });
  }

  /** @param {Phase} phase */
  function turned(phase) {
    if (phase === 'moved') {
      wake(false);
      ballWatch = null;
      set('phone moved', { phase: 'moved', ball: null, hole: null, chosen: null });
    } else set(phase, { phase });
  }

  /** @param {Sight[]} sights */
  async function rolled(sights) {
    const { state } = store;
    const still = video && frameOf(video);
    const { read: known, putt } = state;
    set('ask', { share: 0, problem: '' });
    try {
      const meant = known?.putt === putt ? known.value : await engine.ask('read', plain(putt));
      const asked = watchedFields(state, meant, sights);
      if (!asked) return;
      const value = await engine.ask('watched', asked, { onShare: (share) => set('share', { share }) });
      if (value.start_deg === null && value.launch_mps === null) {
        set('not seen', { problem: sights.length < SHORT ? LEFT : value.words, share: 0 });
        return tell(value.words);
      }
      const { aim_deg } = meant;
      set('seen', {
        last: { value, asked, putt, aim_deg, still, kept: false },
        count: page().count + 1,
        share: 0,
        chosen: null,
      });
      const practice = counted(store.state, /** @type {WatchedPutt} */ (page().last));
      if (practice) store.change('counted', { practice });
      tell(value.words);
      await keep();
    } catch (error) {
      const refusal = /** @type {Refusal} */ (error);
      set('refused', { problem: `Not told: ${refusalWords(refusal, store.state.settings)}`, share: 0 });
    }
  }

  /** @param {string} words */
  const tell = (words) => page().silent || say(words);

  /** The putt in hand, as it was seen. @param {PuttEntry['result'] | null} [result] what was not seen, told by a touch */
  async function keep(result = null) {
    const { last } = page();
    if (!last || last.kept) return;
    const { value, putt, aim_deg } = last;
    const came = result ?? resultOf(value, putt.distance_m);
    if (!came) return;
    const now = new Date().toISOString();
    /** @type {PuttEntry} */
    const entry = {
      kind: 'putt',
      id: crypto.randomUUID(),
      at: now,
      changed: now,
      place: store.state.place,
      text: '',
      ...putt,
      aim_deg,
      result: came,
      ...(value.start_deg !== null && value.start_sd_deg !== null && value.launch_mps !== null && value.launch_sd_mps !== null
        ? {
            start_deg: value.start_deg,
            start_sd_deg: value.start_sd_deg,
            launch_mps: value.launch_mps,
            launch_sd_mps: value.launch_sd_mps,
          }
        : {}),
      ...(value.stop && typeof came === 'object' ? { finish_sd_m: value.stop.sd_m } : {}),
    };
    if ((await record.write([entry])) && page().last === last) set('kept', { last: { ...last, kept: true } });
  }

  return {
    close: () => close(),
    async open() {
      set('open camera', { phase: 'opening', problem: '', told: '' });
      /** @type {Attitude | null} */
      let first = null;
      unwatch = watchAttitude((attitude) => {
        first = attitude;
        // a phone that stands still is measured while it is marked
        if (page().phase === 'marking') set('phone held', { attitude });
      });
      try {
        const gone = () => close('The phone has taken the camera away. Open it again to go on.');
        const stream = await openCamera(gone, FILM, OTHERWISE);
        if (store.state.screen !== 'watch') return closeCamera(stream);
        set('camera open', { stream, phase: 'marking', attitude: first, width: 0, height: 0, ball: null, hole: null });
      } catch (error) {
        unwatch();
        set('no camera', { phase: 'off', problem: /** @type {Error} */ (error).message });
      }
    },
    /** The first frame, or the phone on its other side. @param {HTMLVideoElement} shown */
    sized(shown) {
      const { videoWidth: width, videoHeight: height } = shown;
      if (!width || (width === page().width && height === page().height && film)) return;
      [video, film, ballWatch] = [shown, filmOf(shown), null];
      stopFrames();
      const pace = (/** @type {boolean} */ slow) => void (slow !== page().slow && set('pace', { slow }));
      const frame = (/** @type {number} */ t) => {
        ballWatch?.frame(t);
        magnified(shown, page());
      };
      stopFrames = watchFrames(shown, frame, pace);
      set('size of the film', { width, height, ball: null, hole: null, chosen: null, phase: 'marking' });
    },
    /** A touch on the picture, px of it. @param {number} u @param {number} v */
    touch(u, v) {
      const { ball, hole, width, height, phase } = page();
      if (!film || (phase !== 'marking' && phase !== 'moved')) return;
      const side = Math.min(width, height) * NEAR;
      const [x, y] = [Math.max(0, Math.round(u - side)), Math.max(0, Math.round(v - side))];
      const patch = film.part(x, y, Math.min(width - x, Math.round(2 * side)), Math.min(height - y, Math.round(2 * side)));
      if (!ball) {
        const found = ballNear(patch, { u, v });
        const rim = found ? { u: found.u, v: found.v, width: found.width, height: found.width } : { u, v, width: 0, height: 0 };
        set('mark ball', {
          ball: rim,
          chosen: 'ball',
          phase: 'marking',
          problem: found ? '' : 'No ball shows there: it has to be brighter than the green. Mark again, or set the mark below.',
        });
      } else if (!hole) {
        const found = holeNear(patch, { u, v });
        set('mark hole', { hole: found ?? { u, v, width: 0, height: 0 }, chosen: 'hole', problem: '' });
        begin();
      }
    },
    /** @param {'ball' | 'hole'} chosen */
    choose: (chosen) => set('magnify', { chosen: page().chosen === chosen ? null : chosen }),
    /** Sets the mark under the magnifier. @param {number} du @param {number} dv px */
    nudge(du, dv) {
      const { chosen } = page();
      const at = chosen && page()[chosen];
      if (!at) return;
      /** @type {Rim} */
      const moved = { ...at, u: at.u + du, v: at.v + dv };
      set(`nudge ${chosen}`, chosen === 'ball' ? { ball: moved } : { hole: moved });
      if (chosen === 'ball' && ballWatch && ballWatch.phase !== 'rolling') begin();
    },
    again() {
      ballWatch = null;
      set('mark again', { ball: null, hole: null, chosen: null, phase: 'marking', problem: '' });
    },
    /** @param {boolean} silent */
    hush: (silent) => set('silent', { silent }),
    /** @param {keyof typeof FIELDS} name @param {string} text */
    enter: (name, text) => enterSighted(store, name, FIELDS[name], text),
    /** The ball as a roll of the green's speed. @param {'out' | 'back'} way */
    asRoll(way) {
      const { calibration, place, watchPage } = store.state;
      const { deceleration_mps2, deceleration_sd_mps2 } = watchPage.last?.value ?? {};
      if (deceleration_mps2 == null || deceleration_sd_mps2 == null) return;
      const roll = { deceleration_mps2, deceleration_sd_mps2, way, place, date: new Date().toISOString() };
      store.change('keep roll', { calibration: { ...calibration, rolls: [...calibration.rolls, roll] } });
      set('roll kept', { told: `Kept as a roll ${way}: Green, Speed has it.` });
    },
    /** @param {'holed' | 'missed'} result */
    came: (result) => keep(/** @type {PuttEntry['result']} */ (result)),
    async give() {
      const { last } = page();
      const canvas = last && drawn(last);
      if (!canvas) return;
      /** @type {Blob | null} */
      const blob = await new Promise((resolve) => canvas.toBlob(resolve, 'image/jpeg', JPEG_QUALITY));
      if (blob) set('give picture', { told: await give(new File([blob], 'borrowline-putt.jpg', { type: 'image/jpeg' })) });
    },
  };
}

/**
 * As an entry has it; null where it was not seen.
 * @param {import('../../types.js').WatchedPutt['value']} value @param {number} distance_m @returns {PuttEntry['result'] | null}
 */
function resultOf({ result, stop }, distance_m) {
  if (result === 'holed') return 'holed';
  if (result === 'missed') return stop ? { x_m: stop.x_m - distance_m, y_m: stop.y_m } : 'missed';
  return null;
}

/** @typedef {ReturnType<typeof actions>} WatchActions */
