/**
 * Tells how large an element is, whichever stands in its place.
 * @param {(size: {width: number, height: number}) => void} onSize
 */
export function watchSize(onSize) {
  const sizes = new ResizeObserver((changes) => {
    for (const { contentRect } of changes) {
      const [width, height] = [Math.round(contentRect.width), Math.round(contentRect.height)];
      if (width && height) onSize({ width, height });
    }
  });
  /** @type {Element | null} */
  let watched = null;
  return (/** @type {Element | null} */ element) => {
    if (element === watched) return;
    watched = element;
    sizes.disconnect();
    if (element) sizes.observe(element);
  };
}
