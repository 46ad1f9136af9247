/** What the microphone hears, as levels alone: the worklet in levels.js keeps the sound itself to the sound thread. */

import { pick } from '../pick.js';

/** As it is: what a phone does for calls takes clicks away. */
const WANTED = { audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false }, video: false };
const PATIENCE_MS = 2000;
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
 * From a touch: the phone asks its holder. Rejects with words for whoever reads them.
 * @param {{onLevels: (bands: number[][]) => void, onEnd: (words: string) => void}} heard levels of each millisecond in three
 *   bands
 * @returns {Promise<{stop: () => void, warning: string}>}
 */
export async function openMicrophone({ onLevels, onEnd }) {
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
  levels.port.onmessage = ({ data }) => onLevels(data);
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
    warning: narrow
      ? 'A headset listens: its sound is narrow and late. Take the phone’s own microphone if strikes are missed.'
      : '',
  };
}
