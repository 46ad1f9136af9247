/**
 * The moving picture, frame by frame: when each was taken, and what is in it. Frames stay in memory, and no more than one.
 * @import {Film} from './ball-watch.js'
 */
import { lightOf } from './ball-finder.js';

/** For a ball that rolls: many pictures a second matter more than large ones. */
export const FILM = {
  facingMode: { ideal: 'environment' },
  width: { ideal: 1280 },
  height: { ideal: 720 },
  frameRate: { ideal: 60 },
};
/** Fewer pictures a second than that, for so long, are too few. */
const SLOWEST = 15;
const PATIENCE_S = 3;
const SMALL = 10;

/** The frame that a video shows, in parts. @param {HTMLVideoElement} video @returns {Film} */
export function filmOf(video) {
  const pen = (/** @type {number} */ width, /** @type {number} */ height) => {
    const canvas = Object.assign(document.createElement('canvas'), { width, height });
    return /** @type {CanvasRenderingContext2D} */ (canvas.getContext('2d', { willReadFrequently: true }));
  };
  const { videoWidth: width, videoHeight: height } = video;
  const part = pen(width, height);
  const [wide, high] = [Math.round(width / SMALL), Math.round(height / SMALL)];
  const small = pen(wide, high);
  return {
    width,
    height,
    part(x, y, w, h) {
      part.drawImage(video, x, y, w, h, 0, 0, w, h);
      return { x, y, width: w, height: h, light: lightOf(part.getImageData(0, 0, w, h).data) };
    },
    small() {
      small.drawImage(video, 0, 0, wide, high);
      return { x: 0, y: 0, width: wide, height: high, light: lightOf(small.getImageData(0, 0, wide, high).data) };
    },
  };
}

/**
 * Tells each new frame's time (s), until it is stopped.
 * @param {HTMLVideoElement} video @param {(t: number) => void} onFrame
 * @param {(slow: boolean) => void} onPace whether they come too slowly, from time to time
 */
export function watchFrames(video, onFrame, onPace) {
  let running = true;
  let since = performance.now();
  let count = 0;
  /**
   * One clock for all frames: some browsers tell when a frame was taken, others when it is shown.
   * @type {'captureTime' | 'mediaTime' | undefined}
   */
  let clock;

  function anew() {
    since = performance.now();
    count = 0;
  }

  /** @param {DOMHighResTimeStamp} now @param {VideoFrameCallbackMetadata} told */
  function next(now, told) {
    if (!running) return;
    video.requestVideoFrameCallback(next);
    clock ??= told.captureTime === undefined ? 'mediaTime' : 'captureTime';
    const t = clock === 'mediaTime' ? told.mediaTime : (told.captureTime ?? now) / 1000;
    count++;
    const seconds = (now - since) / 1000;
    if (seconds > PATIENCE_S) {
      onPace(count / seconds < SLOWEST);
      anew();
    }
    onFrame(t);
  }
  // a page that was put away has had no frames, which is no fault of the phone's
  document.addEventListener('visibilitychange', anew);
  video.requestVideoFrameCallback(next);
  return () => {
    running = false;
    document.removeEventListener('visibilitychange', anew);
  };
}
