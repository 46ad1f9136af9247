/**
 * Keeps the whole app on the phone. What belongs to it stands in precache.js, written by the build.
 *
 * A file is kept under its hash, so that a version shares with the one before all that did not change, and an install
 * that broke off fetches only what is missing. A new version waits until a page sends { type: 'take over' }; what
 * it brings it tells to { type: 'what is new' }. Some time after each start, and when a page sends { type: 'check' }, every
 * file is held against its hash: what is missing or damaged is fetched again, and all pages are told how it stands.
 * @import { Files } from './device/files.js'
 */
importScripts('precache.js');

const scope = /** @type {ServiceWorkerGlobalScope & { PRECACHE: Record<string, string>, CHANGES: unknown }} */ (
  /** @type {unknown} */ (self)
);
const root = scope.registration.scope;
/** Path below the root to integrity. */
const { PRECACHE } = scope;
/** When the page has its first answers: what is looked at then holds up nothing. */
const CHECK_AFTER_MS = 5000;

const files = () => caches.open('borrowline-files');
/** Since when which version is whole. */
const dates = () => caches.open('borrowline-complete');

/** @param {string} path */
const keyOf = (path) => `${root}?${encodeURIComponent(PRECACHE[path] ?? '')}`;

/** As `PRECACHE` has it. @param {BufferSource} content */
async function integrityOf(content) {
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', content));
  return `sha256-${btoa(String.fromCharCode(...hash))}`;
}
const version = integrityOf(new TextEncoder().encode(JSON.stringify(PRECACHE)));
const dateKey = async () => `${root}?${encodeURIComponent(await version)}`;

/** @param {string} path */
async function fetched(path) {
  const response = await fetch(root + path, { integrity: PRECACHE[path], cache: 'no-cache' });
  if (!response.ok) throw new Error(`${path} came with status ${response.status}`);
  await (await files()).put(keyOf(path), response.clone());
  return response;
}

/** @param {string} path */
const kept = async (path) => (await files()).match(keyOf(path));
/** @param {string} path */
const add = async (path) => (await kept(path)) ?? fetched(path);

/** @param {Files} told */
async function tell(told) {
  for (const page of await scope.clients.matchAll({ includeUncontrolled: true, type: 'window' })) page.postMessage(told);
}

/** @param {unknown} error @returns {'room' | 'fetch'} */
const reasonOf = (error) => (error instanceof DOMException && error.name === 'QuotaExceededError' ? 'room' : 'fetch');

async function install() {
  // All are tried before one is given up on: what came stays for the next try
  const tried = await Promise.allSettled(Object.keys(PRECACHE).map(add));
  const lost = tried.find((result) => result.status === 'rejected');
  if (lost) {
    await tell({ type: 'files', kind: 'refused', why: reasonOf(lost.reason), update: scope.registration.active !== null });
    throw lost.reason;
  }
  await tell({ type: 'files', kind: 'whole', since: await since(), bytes: await room(), mended: 0 });
}

/** Since when this version is whole, which it is now. */
async function since() {
  const [all, key] = [await dates(), await dateKey()];
  const date = await (await all.match(key))?.text();
  if (date) return date;
  const now = new Date().toISOString();
  await all.put(key, new Response(now));
  return now;
}

/** Bytes that the app and what it keeps take on this phone. */
const room = async () => (await scope.navigator.storage?.estimate?.())?.usage ?? null;

/** @param {string} path */
async function isWhole(path) {
  const found = await kept(path);
  return found !== undefined && (await integrityOf(await found.arrayBuffer())) === PRECACHE[path];
}

/** @type {Promise<void> | null} */
let checking = null;
function check() {
  checking ??= checked().finally(() => (checking = null));
  return checking;
}

async function checked() {
  const bad = [];
  // One after another: a phone has little memory
  for (const path of Object.keys(PRECACHE)) if (!(await isWhole(path))) bad.push(path);
  const tried = await Promise.allSettled(bad.map(fetched));
  const lost = tried.filter((result) => result.status === 'rejected');
  if (lost[0]) await tell({ type: 'files', kind: 'lost', lost: lost.length, why: reasonOf(lost[0].reason) });
  else await tell({ type: 'files', kind: 'whole', since: await since(), bytes: await room(), mended: bad.length });
}

async function dropOld() {
  const wanted = new Set([...Object.keys(PRECACHE).map(keyOf), await dateKey()]);
  for (const cache of [await files(), await dates()]) {
    const old = (await cache.keys()).filter((request) => !wanted.has(request.url));
    await Promise.all(old.map((request) => cache.delete(request)));
  }
}

/** What is missed is kept from now on. @param {string} path @param {Request} request */
const respond = (path, request) => add(path).catch(() => fetch(request));

scope.addEventListener('install', (event) => event.waitUntil(install()));
scope.addEventListener('activate', (event) => event.waitUntil(dropOld()));
scope.addEventListener('fetch', (event) => {
  const path = event.request.url.replace(/[?#].*/, '').slice(root.length);
  // What is not the app's goes its own way: a stream that passed here would hold up the next version
  if (!event.request.url.startsWith(root) || !Object.hasOwn(PRECACHE, path)) return;
  event.respondWith(respond(path, event.request));
  if (event.request.mode === 'navigate')
    event.waitUntil(new Promise((resolve) => setTimeout(resolve, CHECK_AFTER_MS)).then(check));
});
scope.addEventListener('message', (event) => {
  if (event.data?.type === 'take over') event.waitUntil(scope.skipWaiting());
  if (event.data?.type === 'what is new') event.ports[0]?.postMessage(scope.CHANGES);
  if (event.data?.type === 'check') event.waitUntil(check());
});
