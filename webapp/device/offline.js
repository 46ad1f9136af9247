/**
 * Complete offline after the first visit, and whether it is so; a new version waits until it is asked for. The service worker
 * looks, mends and tells; an install that was refused is tried again.
 * @import {Files, Offline} from './files.js'
 */
import { since, VERSION } from '../changes.js';

const AGAIN_MS = 20_000;

/**
 * @param {object} told
 * @param {(news: string[]) => void} told.onWaiting what a new version brings: nothing at first, then what it says of itself
 * @param {(offline: Offline) => void} told.onOffline
 * @returns {{install: () => Promise<void>, takeOver: () => void, check: () => void}} puts the app on the phone, where it is not
 *   yet or there is a newer one; lets the new version take over; looks at every file
 */
export function watchOffline({ onWaiting, onOffline }) {
  const workers = navigator.serviceWorker;
  if (!workers) {
    onOffline({ kind: 'never' });
    return { async install() {}, takeOver() {}, check() {} };
  }
  /** @type {ServiceWorkerRegistration | undefined} */
  let registration;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let again;
  /** @type {Offline['kind']} */
  let known = 'unknown';
  const check = () => void workers.ready.then(({ active }) => active?.postMessage({ type: 'check' }));

  // The very first worker takes a page that is already whole: nothing to reload
  let controlled = workers.controller !== null;
  workers.addEventListener('controllerchange', () => {
    if (controlled) location.reload();
    controlled = true;
  });
  workers.addEventListener('message', ({ data }) => {
    if (data?.type !== 'files') return;
    const { type: _, ...offline } = /** @type {Files} */ (data);
    known = offline.kind;
    onOffline(/** @type {Offline} */ (offline));
  });

  function tellNews() {
    if (!registration?.waiting || !workers.controller) return;
    onWaiting([]);
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => onWaiting(since(data, VERSION));
    registration.waiting.postMessage({ type: 'what is new' }, [port2]);
  }

  /**
   * A worker that ends without having been installed was refused; why, it has told.
   * @param {ServiceWorker | null | undefined} fresh
   */
  function follow(fresh) {
    let installed = false;
    fresh?.addEventListener('statechange', () => {
      installed ||= fresh.state === 'installed';
      if (fresh.state === 'installed') tellNews();
      if (fresh.state === 'redundant' && !installed) later();
    });
  }
  function later() {
    clearTimeout(again);
    again = setTimeout(install, AGAIN_MS);
  }

  async function install() {
    clearTimeout(again);
    try {
      if (registration?.active) await registration.update();
      else {
        registration = await workers.register('sw.js');
        if (!registration.active) onOffline({ kind: 'coming' });
        registration.addEventListener('updatefound', () => follow(registration?.installing));
        follow(registration.installing);
        tellNews();
      }
    } catch (error) {
      // Without a signal nothing is refused: what is there is used on
      if (!registration?.active) later();
      console.warn('No newer version can be had now.', error);
    }
  }
  addEventListener('online', () => {
    if (known === 'lost') check();
    if (known === 'refused' || !registration?.active) void install();
  });

  return { install, takeOver: () => registration?.waiting?.postMessage({ type: 'take over' }), check };
}
