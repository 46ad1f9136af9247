/**
 * What a touch on the watch can do, and what it does by itself: waits, sees, follows, says, keeps, and waits again.
 * @import {App} from '../../app.js'
 * @import {Attitude, PuttEntry, Refusal, WatchPage} from '../../types.js'
 * @import {Whose} from '../../parts/whose-aim.js'
 * @import {Film, Phase, Sight} from '../../device/ball-watch.js'
 */
import { watchAttitude } from '../../device/attitude.js';
import { createBallWatch } from '../../device/ball-watch.js';
import { closeCamera, frameOf, nameOf, openCamera } from '../../device/camera.js';
import { FILM, filmOf, watchFrames } from '../../device/film.js';
import { give } from '../../device/share.js';
import { say } from '../../device/speech.js';
import { createWake } from '../../device/wake.js';
import { plain } from '../../doubt.js';
import { enterSighted } from '../../parts/eye-height.js';
import { fileOf, KEPT, makeRoom } from '../../records/pictures.js';
import { refusalWords } from '../../refusal.js';
import { counted } from './drills.js';
import { FIELDS } from './fields.js';
import { entryOf, GIVEN, pictureOf, resultOf } from './keeping.js';
import { markActions, moreOfHole, UNMARKED } from './marking.js';
import { magnified } from './overlay.js';
import { watchedFields } from './questions.js';

const OTHERWISE = 'note the putt by hand';
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
    set('close camera', { ...UNMARKED, stream: null, phase: 'off', measuring: false, slow: false, problem });
  }

  /** Both are marked: from here on nothing has to be touched. */
  function begin() {
    const { ball, hole } = page();
    if (!film || !ball || !hole) return;
    ballWatch = createBallWatch({ film, ball, onPhase: turned, onRoll: (sights, left) => void rolled(sights, left) });
    wake(true);
    set('watch', { phase: 'settling', problem: '', told: '' });
  }

  /** @param {Phase} phase */
  function turned(phase) {
    const { hole } = page();
    const more = phase === 'ready' && film && hole && moreOfHole(film, hole);
    if (phase === 'moved') {
      wake(false);
      ballWatch = null;
      set('phone moved', { ...UNMARKED, phase, problem: '' });
      tell('The phone was moved. Mark again.');
    } else set(phase, more ? { phase, hole: more } : { phase });
  }

  /** @param {Sight[]} sights @param {boolean} left */
  async function rolled(sights, left) {
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
        const problem = left ? LEFT : value.words;
        set('not seen', { problem, share: 0 });
        return tell(problem);
      }
      const { aim_deg, launch_mps: meant_mps } = meant;
      const last = { value, asked, putt, aim_deg, meant_mps, still, kept: false };
      set('seen', { last, count: page().count + 1, share: 0, chosen: null });
      const practice = counted(store.state, last);
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
    const { last, pictures } = page();
    if (!last || last.kept) return;
    const came = result ?? resultOf(last.value, last.putt.distance_m);
    if (!came) return;
    const { entries, place, logging } = store.state;
    // how much room there is, nobody knows before the record is read
    const picture = pictures && entries ? pictureOf(last, KEPT) : '';
    const entry = entryOf(last, came, { read: logging.read, place, picture });
    const room = picture ? makeRoom(entries ?? [], picture.length) : [];
    if ((await record.write([entry, ...room])) && page().last === last) set('kept', { last: { ...last, kept: true } });
  }

  const stop = () => {
    ballWatch = null;
  };
  return {
    ...markActions({ store, set, film: () => film, begin, stop, rolls: () => ballWatch?.phase === 'rolling' }),
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
        set('camera open', { ...UNMARKED, stream, phase: 'marking', attitude: first, width: 0, height: 0 });
      } catch (error) {
        unwatch();
        set('no camera', { phase: 'off', problem: /** @type {Error} */ (error).message });
      }
    },
    /** The first frame, or the phone on its other side. @param {HTMLVideoElement} shown */
    sized(shown) {
      const { videoWidth: width, videoHeight: height } = shown;
      const { stream } = page();
      if (!stream || !width || (width === page().width && height === page().height && film)) return;
      [video, film, ballWatch] = [shown, filmOf(shown), null];
      stopFrames();
      const pace = (/** @type {boolean} */ slow) => void (slow !== page().slow && set('pace', { slow }));
      const frame = (/** @type {number} */ t) => {
        ballWatch?.frame(t);
        magnified(shown, page());
      };
      stopFrames = watchFrames(shown, frame, pace);
      set('size of the film', { ...UNMARKED, width, height, camera: nameOf(stream, width, height), phase: 'marking' });
    },
    /** Whose aim is played, here and where putts are logged by hand. @param {Whose} read */
    play: (read) => store.change('whose aim', { logging: { ...store.state.logging, read } }),
    /** @param {boolean} silent */
    hush: (silent) => set('silent', { silent }),
    /** Whether pictures are kept with the putts. @param {boolean} pictures */
    picture: (pictures) => set('pictures', { pictures }),
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
    came: (result) => keep(result),
    async give() {
      const { last } = page();
      const picture = last && pictureOf(last, GIVEN);
      if (picture) set('give picture', { told: await give(fileOf(picture)) });
    },
  };
}

/** @typedef {ReturnType<typeof actions>} WatchActions */
