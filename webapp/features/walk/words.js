/** Words of a map. */

const WAYS = ['on', 'on and right', 'right', 'back and right', 'back', 'back and left', 'left', 'on and left'];

/** Where a place falls to, seen from the corner. @param {number} fall_deg clockwise from straight on */
export const fallOnMap = (fall_deg) => `falls ${WAYS[((Math.round(fall_deg / 45) % 8) + 8) % 8]}`;

export const CAUTION =
  'For practice. In a round no device may read a slope for you, and what you carry to read greens with is limited in scale ' +
  'and size (Rule 4.3a): ask the committee.';
