/**
 * The engine's worker: starts Python, then answers one JSON string with another, in steps between which it hears `STOP`.
 *
 * Python starts from its files, or from a snapshot of its memory that an earlier start left in Cache Storage. A
 * snapshot belongs to the runtime's folder, whose name is a hash of all that is in it.
 *
 * @import { PyodideAPI } from 'pyodide'
 * @import { FromWorker, Source } from './client.js'
 */
import { loadPyodide } from 'pyodide';
import { STOP } from './stop.js';

const scope = /** @type {DedicatedWorkerGlobalScope} */ (/** @type {unknown} */ (self));
/** Python's folder. */
const HOME = new URL(`../${RUNTIME}/`, location.href).href;
const SNAPSHOTS = 'borrowline-snapshots';
const SNAPSHOT = `${HOME}snapshot`;
const TRIED = `${SNAPSHOT}?tried`;
const IDLE_MS = 1500;
const SIGN_MS = 500;

// Everything that an answer may import is in memory once every kind of question has been answered; those that are computed
// for longest need nothing that the others do not
const READY = `
import gc, json
from pycore.api import answer, capabilities

def ready():
    for capability in capabilities():
        yield
        for each in capability.EXAMPLES:
            if each['ask'] not in ('best_pace', 'find_putts') and 'survey' not in each:
                answer(json.dumps(each))
                yield

rest = ready()
`;

/** @param {FromWorker} message */
const tell = (message) => scope.postMessage(message);

let last = 0;
/** A sign of life, now and then. */
function sign() {
  const now = performance.now();
  if (now - last < SIGN_MS) return;
  last = now;
  tell({ kind: 'alive' });
}
/**
 * Python looks here for signals every so many steps of its own: a worker that imports the engine or works out a long answer
 * hears and sends nothing else, but its looking shows that it goes on.
 */
const PULSE = {
  get 0() {
    sign();
    return 0;
  },
  set 0(_) {
    // no signal was taken
  },
};

/** Lets what has come in meanwhile be heard. */
const turn = () => new Promise((resolve) => setTimeout(resolve));

/** @param {unknown} error */
const die = (error) => tell({ kind: 'died', reason: String(error) });

/** @param {{ _makeSnapshot: true } | { _loadSnapshot: ArrayBuffer }} memory */
async function load(memory) {
  const engine = fetch(`${HOME}engine.zip`);
  const python = await loadPyodide({
    indexURL: HOME,
    stdLibURL: `${HOME}python.zip`,
    lockFileContents: /** @type {any} */ ({
      info: { abi_version: '2025_0', arch: 'wasm32', platform: '', python: '' },
      packages: {},
    }),
    ...memory,
  });
  python.setInterruptBuffer(/** @type {any} */ (PULSE));
  const response = await engine;
  if (!response.ok) throw new Error(`engine.zip came with status ${response.status}`);
  python.FS.writeFile('/engine.zip', new Uint8Array(await response.arrayBuffer()));
  return python;
}

/**
 * What the memory was when it was kept. A page that has Cache Storage has this too.
 * @param {ArrayBuffer | Uint8Array} memory
 */
async function hashOf(memory) {
  const hash = await crypto.subtle.digest('SHA-256', /** @type {BufferSource} */ (memory));
  return Array.from(new Uint8Array(hash), (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/**
 * Memory that is damaged may crash the page before anything is caught: a mark stands while it is tried, and where one is
 * found the start before this one did not answer.
 * @returns {Promise<PyodideAPI | null>} null where there is no snapshot or it does not start
 */
async function fromSnapshot() {
  const kept = scope.name !== 'plain' && (await scope.caches?.match(SNAPSHOT, { cacheName: SNAPSHOTS }));
  if (!kept) return null;
  tell({ kind: 'starting', from: 'snapshot' });
  try {
    const snapshots = await caches.open(SNAPSHOTS);
    const [memory, tried] = await Promise.all([kept.arrayBuffer(), snapshots.match(TRIED)]);
    if (tried) throw new Error('the last start from it did not answer');
    const [hash] = await Promise.all([hashOf(memory), snapshots.put(TRIED, new Response(''))]);
    // The runtime would wait for ever on memory cut short
    if (hash !== kept.headers.get('X-Hash')) throw new Error('it is not what was kept');
    return await load({ _loadSnapshot: memory });
  } catch (error) {
    console.warn(`The snapshot does not start (${error}); starting from the files.`);
    await caches.delete(SNAPSHOTS).catch(() => {});
    return null;
  }
}

async function fromFiles() {
  tell({ kind: 'starting', from: 'files' });
  const python = await load({ _makeSnapshot: true });
  python.runPython("import sys; sys.path.append('/engine.zip'); from pycore.api import answer, steps");
  return python;
}

/** @param {PyodideAPI} python @param {() => Promise<void>} free comes when nobody waits for an answer */
async function keepSnapshot(python, free) {
  python.runPython(READY);
  do await free();
  while (!python.runPython('next(rest, True)'));
  await free();
  python.runPython('del rest, ready; gc.collect()');
  const memory = python.makeMemorySnapshot();
  await caches.delete(SNAPSHOTS);
  const snapshots = await caches.open(SNAPSHOTS);
  const whole = { headers: { 'X-Hash': await hashOf(memory) } };
  await snapshots.put(SNAPSHOT, new Response(/** @type {BlobPart} */ (memory), whole));
}

async function run() {
  const starting = setInterval(sign, SIGN_MS);
  const awake = await fromSnapshot();
  const python = awake ?? (await fromFiles());
  /** @type {Source} */
  const from = awake ? 'snapshot' : 'files';
  const steps = python.globals.get('steps');
  clearInterval(starting);
  let stopped = false;

  let answering = Promise.resolve();
  async function free() {
    for (let seen; seen !== answering; await turn()) {
      seen = answering;
      await seen;
    }
  }

  let idle = 0;
  let kept = from === 'snapshot' || !scope.caches;
  function rest() {
    if (!kept) idle = setTimeout(keep, IDLE_MS);
  }
  function keep() {
    kept = true;
    // Without a snapshot the next start is slower, no more: a full disk is no reason to stop answering
    keepSnapshot(python, free).catch((error) => console.warn(`No snapshot was kept: ${error}`));
  }

  let tried = awake !== null;
  /** Memory that has answered is good. */
  function answered() {
    if (tried) caches.open(SNAPSHOTS).then((snapshots) => snapshots.delete(TRIED), console.warn);
    tried = false;
  }

  /** @param {string} request */
  async function answer(request) {
    clearTimeout(idle);
    stopped = false;
    const going = steps(request);
    try {
      for (let step = going.next(); ; step = going.next()) {
        if (step.done) {
          answered();
          return tell({ kind: 'reply', reply: step.value });
        }
        tell({ kind: 'share', share: step.value });
        await turn();
        if (stopped) return tell({ kind: 'stopped' });
      }
    } finally {
      going.destroy();
      rest();
    }
  }

  scope.addEventListener('message', ({ data }) => {
    if (data === STOP) stopped = true;
    else answering = answer(data).catch(die);
  });
  tell({ kind: 'ready', from });
  rest();
}

run().catch(die);
