/**
 * Keeps the whole app on the phone. What belongs to it stands in precache.js, written by the build.
 *
 * A file is kept under its hash, so that a version shares with the one before all that did not change, and an install
 * that broke off fetches only what is missing. A new version waits until a page sends { type: 'take over' }; what
 * it brings it tells to { type: 'what is new' }.
 */
importScripts('precache.js');

const scope = /** @type {ServiceWorkerGlobalScope & { PRECACHE: Record<string, string>, CHANGES: unknown }} */ (
  /** @type {unknown} */ (self)
);
const root = scope.registration.scope;
/** Path below the root to integrity. */
const { PRECACHE } = scope;

const files = () => caches.open('borrowline-files');

/** @param {string} path */
const keyOf = (path) => `${root}?${encodeURIComponent(PRECACHE[path] ?? '')}`;

/** @param {string} path */
async function add(path) {
  const cache = await files();
  if (await cache.match(keyOf(path))) return;
  const response = await fetch(root + path, { integrity: PRECACHE[path], cache: 'no-cache' });
  if (!response.ok) throw new Error(`${path} came with status ${response.status}`);
  await cache.put(keyOf(path), response);
}

async function install() {
  // All are tried before one is given up on: what came stays for the next try
  const tried = await Promise.allSettled(Object.keys(PRECACHE).map(add));
  const lost = tried.find((result) => result.status === 'rejected');
  if (lost) throw lost.reason;
}

async function dropOld() {
  const cache = await files();
  const wanted = new Set(Object.keys(PRECACHE).map(keyOf));
  const old = (await cache.keys()).filter((request) => !wanted.has(request.url));
  await Promise.all(old.map((request) => cache.delete(request)));
}

/**
 * @param {string} path
 * @param {Request} request
 */
async function respond(path, request) {
  const kept = await (await files()).match(keyOf(path));
  return kept ?? fetch(request);
}

scope.addEventListener('install', (event) => event.waitUntil(install()));
scope.addEventListener('activate', (event) => event.waitUntil(dropOld()));
scope.addEventListener('fetch', (event) => {
  const path = event.request.url.replace(/[?#].*/, '').slice(root.length);
  // What is not the app's goes its own way: a stream that passed here would hold up the next version
  if (event.request.url.startsWith(root) && Object.hasOwn(PRECACHE, path)) event.respondWith(respond(path, event.request));
});
scope.addEventListener('message', (event) => {
  if (event.data?.type === 'take over') event.waitUntil(scope.skipWaiting());
  if (event.data?.type === 'what is new') event.ports[0]?.postMessage(scope.CHANGES);
});
