/**
 * What a JPEG tells of its lens: the focal length as for 35 mm film (tag A405 of Exif 2.3), which follows from it how wide
 * the picture is. Whatever does not fit reads as if nothing were told.
 */

const HEAD_BYTES = 131_072;
const [SOI, APP1, START_OF_SCAN] = [0xffd8, 0xffe1, 0xffda];
const EXIF = 0x45786966;
const TO_EXIF = 0x8769;
const FOCAL_35MM = 0xa405;

/** @param {File} file @returns {Promise<number | null>} mm */
export async function lensOf(file) {
  try {
    return lensIn(new DataView(await file.slice(0, HEAD_BYTES).arrayBuffer()));
  } catch {
    return null;
  }
}

/** @param {DataView} jpeg */
function lensIn(jpeg) {
  if (jpeg.getUint16(0) !== SOI) return null;
  for (let at = 2; jpeg.getUint16(at) !== START_OF_SCAN; at += 2 + jpeg.getUint16(at + 2))
    if (jpeg.getUint16(at) === APP1 && jpeg.getUint32(at + 4) === EXIF) return lensAt(new DataView(jpeg.buffer, at + 10));
  return null;
}

/** @param {DataView} tiff */
function lensAt(tiff) {
  const little = tiff.getUint16(0) === 0x4949;
  /** @param {number} directory @param {number} tag @returns {number | null} where the tag's entry begins */
  const entry = (directory, tag) => {
    const count = tiff.getUint16(directory, little);
    for (let i = 0; i < count; i++) if (tiff.getUint16(directory + 2 + 12 * i, little) === tag) return directory + 2 + 12 * i;
    return null;
  };
  const pointer = entry(tiff.getUint32(4, little), TO_EXIF);
  const focal = pointer && entry(tiff.getUint32(pointer + 8, little), FOCAL_35MM);
  const lens_mm = focal ? tiff.getUint16(focal + 8, little) : 0;
  return lens_mm || null;
}
