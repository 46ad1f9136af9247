/** A picture file as pixels, upright and small enough to work on: a phone's largest would not fit beside the app. */

const LONGEST_PX = 1600;

/** @param {File} file @returns {Promise<HTMLCanvasElement>} */
export async function openPicture(file) {
  const address = URL.createObjectURL(file);
  try {
    const image = new Image();
    image.src = address;
    // The browser turns it upright by what the file says of its orientation
    await image.decode();
    const scale = Math.min(1, LONGEST_PX / Math.max(image.naturalWidth, image.naturalHeight));
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(image.naturalWidth * scale);
    canvas.height = Math.round(image.naturalHeight * scale);
    canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
    image.src = '';
    return canvas;
  } finally {
    URL.revokeObjectURL(address);
  }
}

/** How far its shape may be off by rounding, as a share. */
const SAME_SHAPE = 0.01;

/**
 * Whether a picture is of another shape than it was taken in.
 * @param {{width: number, height: number}} picture @param {{width: number, height: number} | null} taken
 */
export const isCropped = (picture, taken) =>
  taken !== null && Math.abs((picture.width * taken.height) / (picture.height * taken.width) - 1) > SAME_SHAPE;

/**
 * A picture as the text of a JPEG no larger than that on its longer side.
 * @param {HTMLCanvasElement} whole @param {{side: number, quality: number}} size
 */
export function smallJpeg(whole, { side, quality }) {
  const scale = Math.min(1, side / Math.max(whole.width, whole.height));
  const [width, height] = [Math.round(whole.width * scale), Math.round(whole.height * scale)];
  const small = Object.assign(document.createElement('canvas'), { width, height });
  const pen = /** @type {CanvasRenderingContext2D} */ (small.getContext('2d'));
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(whole, 0, 0, width, height);
  return small.toDataURL('image/jpeg', quality);
}
