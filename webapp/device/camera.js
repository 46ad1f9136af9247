/** The moving picture of the camera that looks away from the screen. */

/** Whole frames: a wide one is cut out of the picture, and shows less of a green. */
const WHOLE = { facingMode: { ideal: 'environment' }, width: { ideal: 1600 }, height: { ideal: 1200 } };
const ELSE = 'take a photograph instead';

/**
 * From a touch: the phone asks its holder. Rejects with words for whoever reads them.
 * @param {() => void} onEnd when the phone itself takes the camera away
 * @param {MediaTrackConstraints} [video] @param {string} [otherwise] what else there is to do, in words
 */
export async function openCamera(onEnd, video = WHOLE, otherwise = ELSE) {
  if (!navigator.mediaDevices?.getUserMedia) throw new Error(`This browser shows no moving picture: ${otherwise}.`);
  const stream = await navigator.mediaDevices.getUserMedia({ audio: false, video }).catch((error) => {
    throw new Error(
      error.name === 'NotAllowedError'
        ? `The phone does not let the app use its camera. Allow it in the browser’s settings, or ${otherwise}.`
        : `No camera gives a moving picture here: ${otherwise}.`,
    );
  });
  for (const track of stream.getVideoTracks()) track.addEventListener('ended', onEnd);
  return stream;
}

/**
 * Which camera it is and how large its picture: a lens goes with both. On its side it is the same.
 * @param {MediaStream} stream @param {number} width @param {number} height
 */
export const nameOf = (stream, width, height) =>
  `${stream.getVideoTracks()[0]?.label ?? ''} ${Math.max(width, height)} × ${Math.min(width, height)}`.trim();

/** @param {MediaStream} stream */
export const closeCamera = (stream) => stream.getTracks().forEach((track) => void track.stop());

/** What it shows now. @param {HTMLVideoElement} video */
export function frameOf(video) {
  const canvas = Object.assign(document.createElement('canvas'), { width: video.videoWidth, height: video.videoHeight });
  canvas.getContext('2d')?.drawImage(video, 0, 0);
  return canvas;
}
