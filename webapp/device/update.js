/** Complete offline after the first visit; a new version waits until it is asked for. */
import { since, VERSION } from '../changes.js';

/**
 * @param {(news: string[]) => void} onWaiting what the new version brings: nothing at first, then what it says of itself
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
  const tell = () => {
    if (!registration.waiting || !navigator.serviceWorker.controller) return;
    onWaiting([]);
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => onWaiting(since(data, VERSION));
    registration.waiting.postMessage({ type: 'what is new' }, [port2]);
  };
  tell();
  registration.addEventListener('updatefound', () => registration.installing?.addEventListener('statechange', tell));
  return () => registration.waiting?.postMessage({ type: 'take over' });
}
