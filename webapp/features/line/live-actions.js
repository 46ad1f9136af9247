/**
 * What a touch on the moving picture can do.
 * @import {Attitude, LinePage, Live, Share} from '../../types.js'
 * @import {Store} from '../../store.js'
 */
import { closeCamera, frameOf, openCamera } from '../../device/camera.js';
import { watchAttitude } from '../../device/attitude.js';
import { UNMARKED } from './marks.js';
import { placed } from './overlay.js';

/** @param {Store} store @param {(action: string, patch: Partial<LinePage>) => void} set  */
export function liveActions(store, set) {
  let unwatch = () => {};

  /** @param {string} action @param {Partial<Live>} patch */
  const change = (action, patch) => {
    const { live } = store.state.linePage;
    if (live) set(action, { live: { ...live, ...patch } });
  };

  function closeLive() {
    const { live } = store.state.linePage;
    unwatch();
    if (!live) return;
    closeCamera(live.stream);
    set('close camera', { live: null });
  }

  return {
    async openLive() {
      set('open camera', { photoProblem: '', told: '' });
      // asked for in the same touch as the camera; the first word comes before the first frame
      /** @type {Attitude | null} */
      let first = null;
      unwatch = watchAttitude((attitude) => {
        first = attitude;
        change('phone turned', { attitude });
      });
      try {
        const stream = await openCamera(closeLive);
        set('camera open', {
          live: { stream, width: 0, height: 0, attitude: first, ball: null, hole: null },
          photo: null,
        });
      } catch (error) {
        unwatch();
        set('no camera', { photoProblem: /** @type {Error} */ (error).message });
      }
    },
    /**
     * A first frame, or the phone on its other side: marks of another picture say nothing.
     * @param {number} width @param {number} height
     */
    sizeLive: (width, height) => change('size of the moving picture', { width, height, ball: null, hole: null }),
    /** @param {Share} at */
    markLive(at) {
      const { live } = store.state.linePage;
      if (!live?.attitude) return;
      const mark = { at, attitude: live.attitude };
      if (!live.ball) change('mark ball', { ball: mark });
      else if (!live.hole) change('mark hole', { hole: mark });
    },
    liveAgain: () => change('mark again', { ball: null, hole: null }),
    /** What is seen now as a photograph, with the marks where they are now. @param {HTMLVideoElement} video */
    takeLive(video) {
      const {
        linePage: { live, measuring },
        answers: { follow },
      } = store.state;
      if (!live?.width || video.readyState < video.HAVE_CURRENT_DATA || !video.videoWidth) return;
      const picture = frameOf(video);
      const marks = live.hole && !measuring ? (placed(store.state, follow, 1)?.marks ?? []) : [];
      const [ball, hole] = marks.map(([x, y]) => /** @type {Share} */ ([x, y * (live.width / live.height)]));
      const inside = ball && hole && [...ball, ...hole].every((share) => share >= 0 && share <= 1);
      closeLive();
      set('take picture', {
        photo: {
          ...UNMARKED,
          picture,
          lens_mm: null,
          cropped: false,
          live: true,
          attitude: live.attitude,
          ...(inside ? { ball, hole } : {}),
        },
      });
    },
    closeLive,
  };
}
