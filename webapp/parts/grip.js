/**
 * Follows one finger from the moment it goes down until it lets go.
 * @template T
 * @param {PointerEvent} event
 * @param {{start: T, move: (dx: number, start: T, event: PointerEvent) => void}} handlers
 */
export function grip(event, { start, move }) {
  if (event.button !== 0) return;
  const element = /** @type {HTMLElement} */ (event.currentTarget);
  const { clientX, pointerId } = event;
  element.setPointerCapture(pointerId);
  const follow = (/** @type {PointerEvent} */ moved) => {
    if (moved.pointerId === pointerId) move(moved.clientX - clientX, start, moved);
  };
  const release = (/** @type {PointerEvent} */ ended) => {
    if (ended.pointerId !== pointerId) return;
    element.removeEventListener('pointermove', follow);
    element.removeEventListener('pointerup', release);
    element.removeEventListener('pointercancel', release);
  };
  element.addEventListener('pointermove', follow);
  element.addEventListener('pointerup', release);
  element.addEventListener('pointercancel', release);
}
