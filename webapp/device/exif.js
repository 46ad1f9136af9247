/**
 * What a JPEG tells of how it was taken (Exif 2.3): the focal length as for 35 mm film, from which it follows how wide the
 * picture is, and how large it was. Whatever does not fit reads as if nothing were told.
 * @typedef {{lens_mm: number | null, size: {width: number, height: number} | null}} Told  `size`: px, upright
 */

const HEAD_BYTES = 131_072;
const [SOI, APP1, START_OF_SCAN] = [0xffd8, 0xffe1, 0xffda];
const EXIF = 0x45786966;
const ORIENTATION = 0x0112;
/** The first of the orientations that lie on their side. */
const LYING = 5;
const TO_EXIF = 0x8769;
const [WIDTH, HEIGHT, FOCAL_35MM] = [0xa002, 0xa003, 0xa405];
const LONG = 4;

/** @type {Told} */
const NOTHING = { lens_mm: null, size: null };

/** @param {File} file @returns {Promise<Told>} */
export async function toldBy(file) {
  try {
    return toldIn(new DataView(await file.slice(0, HEAD_BYTES).arrayBuffer()));
  } catch {
    return NOTHING;
  }
}

/** @param {DataView} jpeg */
function toldIn(jpeg) {
  if (jpeg.getUint16(0) !== SOI) return NOTHING;
  for (let at = 2; jpeg.getUint16(at) !== START_OF_SCAN; at += 2 + jpeg.getUint16(at + 2))
    if (jpeg.getUint16(at) === APP1 && jpeg.getUint32(at + 4) === EXIF) return toldAt(new DataView(jpeg.buffer, at + 10));
  return NOTHING;
}

/** @param {DataView} tiff @returns {Told} */
function toldAt(tiff) {
  const little = tiff.getUint16(0) === 0x4949;
  /** @param {number} directory @param {number} tag @returns {number} what stands there; 0 where nothing does */
  const value = (directory, tag) => {
    const count = tiff.getUint16(directory, little);
    for (let at = directory + 2; at < directory + 2 + 12 * count; at += 12)
      if (tiff.getUint16(at, little) === tag)
        return tiff.getUint16(at + 2, little) === LONG ? tiff.getUint32(at + 8, little) : tiff.getUint16(at + 8, little);
    return 0;
  };
  const first = tiff.getUint32(4, little);
  const exif = value(first, TO_EXIF);
  if (!exif) return NOTHING;
  const [width, height] = [value(exif, WIDTH), value(exif, HEIGHT)];
  const size = value(first, ORIENTATION) >= LYING ? { width: height, height: width } : { width, height };
  return { lens_mm: value(exif, FOCAL_35MM) || null, size: width && height ? size : null };
}
