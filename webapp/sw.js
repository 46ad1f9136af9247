/**
 * Keeps the whole app on the phone. What belongs to it stands in precache.js, written by the build.
 *
 * A file is kept under its hash, so that a version shares with the one before all that did not change, and an install
 * that broke off fetches only what is missing. A new version waits until a page sends 'take over'.
 */
importScripts('precache.js');

/** @type {any} */
const scope = self;
/** @type {Record<string, string>} path, relative to this file, to integrity */
const PRECACHE = scope.PRECACHE;
const FILES = 'borrowline-files';

/** @param {string} path */
const keyOf = (path) => new URL(`?${PRECACHE[path]}`, scope.registration.scope).href;

async function install() {
  const files = await caches.open(FILES);
  const add = async (/** @type {string} */ path) => {
    if (await files.match(keyOf(path))) return;
    const response = await fetch(new URL(path, scope.registration.scope), { integrity: PRECACHE[path], cache: 'no-cache' });
    if (!response.ok) throw new Error(`${path} came with status ${response.status}`);
    await files.put(keyOf(path), response);
  };
  const added = await Promise.allSettled(Object.keys(PRECACHE).map(add));
  const lost = added.find((result) => result.status === 'rejected');
  if (lost) throw lost.reason;
}

async function clean() {
  const files = await caches.open(FILES);
  const wanted = new Set(Object.keys(PRECACHE).map(keyOf));
  const old = (await files.keys()).filter((request) => !wanted.has(request.url));
  await Promise.all(old.map((request) => files.delete(request)));
  await scope.clients.claim();
}

/** @param {Request} request */
async function respond(request) {
  const path = new URL(request.url).href.slice(scope.registration.scope.length).replace(/[?#].*$/, '') || 'index.html';
  const kept = Object.hasOwn(PRECACHE, path) ? await (await caches.open(FILES)).match(keyOf(path)) : undefined;
  return kept ?? fetch(request);
}

scope.addEventListener('install', (/** @type {any} */ event) => event.waitUntil(install()));
scope.addEventListener('activate', (/** @type {any} */ event) => event.waitUntil(clean()));
scope.addEventListener('fetch', (/** @type {any} */ event) => {
  if (event.request.method === 'GET' && event.request.url.startsWith(scope.registration.scope))
    event.respondWith(respond(event.request));
});
scope.addEventListener('message', (/** @type {any} */ event) => {
  if (event.data === 'take over') scope.skipWaiting();
});
