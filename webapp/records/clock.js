/** Of two versions of a thing the one with the later `changed` is the newer, also where a clock was set back between them. */

/**
 * Now, or where the clock says that this was before `than`, just after it.
 * @param {unknown} [than] an earlier time of the same thing @returns {string}
 */
export function after(than) {
  const last = typeof than === 'string' ? Date.parse(than) : NaN;
  const now = Date.now();
  return new Date(last >= now ? last + 1 : now).toISOString();
}
