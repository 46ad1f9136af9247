/**
 * What a list has in a place, or a table under a name, that is known to be there. Where it is not, the fault is the app's own:
 * told here, and not by an `undefined` further on.
 * @template T @param {ArrayLike<T> | Readonly<Record<number, T>> | Readonly<Record<string, T>>} all @param {string | number}
 *   place @returns {T}
 */
export function pick(all, place) {
  const found = /** @type {Readonly<Record<string | number, T>>} */ (all)[place];
  if (found === undefined) throw new RangeError(`There is nothing under ${place}.`);
  return found;
}
