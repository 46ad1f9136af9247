/** What the microphone hears, as levels alone: the worklet in levels.js keeps the sound itself to the sound thread. */

import { pick } from '../pick.js';

/** As it is: what a phone does for calls takes clicks away. */
const WANTED = { audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false }, video: false };
const PATIENCE_MS = 2000;
/** Levels a second, as the worklet tells them. */
export const RATE_HZ = 1000;
/** A second touch so soon after the one that stopped it was meant for that. */
export const TWICE_MS = 600;
/** So much of what came last tells its clock: where levels were lost on the way, those after them count from later. */
const RECENT_S = 5;
/** A headset for calls hears no more than half of this. */
const NARROW_HZ = 16_000;
const HEADSET = /bluetooth|headset|hands-?free|airpod|buds/i;
/** @type {Record<string, string>} */
const REFUSED = {
  NotAllowedError:
    'The phone does not let the app listen. Allow the microphone in the browser’s settings; counting by thumb goes on.',
  NotFoundError: 'There is no microphone here. Count by thumb.',
  NotReadableError: 'Another app holds the microphone. End the call or the recording, then try again.',
};
const OTHERWISE = 'The microphone does not start here. Count by thumb.';

const pause = (/** @type {number} */ ms) => new Promise((resolve) => setTimeout(() => resolve(false), ms));

/**
 * @typedef {object} Microphone
 * @property {() => void} stop
 * @property {string} warning
 * @property {() => {bands: number[][], from_s: number, count: number}} levels of each millisecond in three bands, from when on
 *   since the first, and how many they are
 * @property {() => number} began_s the first level on the page's clock, by those that came last
 */

/**
 * From a touch: the phone asks its holder. Rejects with words for whoever reads them.
 * @param {{kept_s: number, onEnd: (words: string) => void}} heard for how long levels are kept
 * @returns {Promise<Microphone>}
 */
export async function openMicrophone({ kept_s, onEnd }) {
  if (!navigator.mediaDevices?.getUserMedia || !('AudioWorkletNode' in globalThis))
    throw new Error('This browser cannot listen. Count by thumb.');
  const stream = await navigator.mediaDevices.getUserMedia(WANTED).catch((error) => {
    throw new Error(REFUSED[error.name] ?? OTHERWISE);
  });
  const track = pick(stream.getAudioTracks(), 0);
  const context = new AudioContext();
  const stop = () => {
    track.onended = null;
    track.stop();
    void context.close();
  };
  try {
    await context.audioWorklet.addModule('device/levels.js');
    if (!(await Promise.race([context.resume().then(() => true), pause(PATIENCE_MS)]))) throw new Error('asleep');
  } catch (error) {
    console.warn(error);
    stop();
    throw new Error(OTHERWISE);
  }
  const levels = new AudioWorkletNode(context, 'levels', { channelCount: 1, channelCountMode: 'explicit' });
  /** @type {number[][]} */
  let bands = [[], [], []];
  let before = 0;
  /** When the first level was, as each message had it: when it came, and that. @type {[number, number][]} */
  let clock = [];
  levels.port.onmessage = ({ data }) => {
    bands = bands.map((band, i) => [...band, ...pick(data, i)]);
    const count = pick(bands, 0).length;
    const now_s = performance.now() / 1000;
    clock = [...clock.filter(([at_s]) => at_s > now_s - RECENT_S), [now_s, now_s - (before + count) / RATE_HZ]];
    const over = count - kept_s * RATE_HZ;
    if (over <= 0) return;
    bands = bands.map((band) => band.slice(over));
    before += over;
  };
  // it says nothing, yet what leads nowhere is not run by every browser
  context.createMediaStreamSource(stream).connect(levels).connect(context.destination);
  track.onended = () => {
    stop();
    onEnd('The phone took the microphone away. Listen again when the call is over.');
  };
  const { sampleRate = Infinity } = track.getSettings();
  const narrow = sampleRate <= NARROW_HZ || HEADSET.test(track.label);
  return {
    stop,
    levels: () => ({ bands, from_s: before / RATE_HZ, count: pick(bands, 0).length }),
    // a message may be late and is never early
    began_s: () => Math.min(...clock.map(([, began_s]) => began_s)),
    warning: narrow
      ? 'A headset listens: its sound is narrow and late. Take the phone’s own microphone if strikes are missed.'
      : '',
  };
}
