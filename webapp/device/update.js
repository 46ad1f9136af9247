/** Complete offline after the first visit; a new version waits until it is asked for. */

/**
 * @param {() => void} onWaiting
 * @returns {Promise<() => void>} lets the new version take over
 */
export async function watchUpdates(onWaiting) {
  if (!('serviceWorker' in navigator)) return () => {};
  // The very first worker takes a page that is already whole: nothing to reload.
  let controlled = navigator.serviceWorker.controller !== null;
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    if (controlled) location.reload();
    controlled = true;
  });
  const registration = await navigator.serviceWorker.register('sw.js');
  const tell = () => registration.waiting && navigator.serviceWorker.controller && onWaiting();
  tell();
  registration.addEventListener('updatefound', () => registration.installing?.addEventListener('statechange', tell));
  return () => registration.waiting?.postMessage({ type: 'take over' });
}
