/**
 * Where the engine does not come up, the files that it starts from are looked at, and it begins anew from those that were
 * fetched again.
 * @import {Store} from './store.js'
 * @import {Engine} from './engine/client.js'
 */

/** After which a start is looked into: the slowest phones take less. */
const LATE_MS = 6000;

/** @param {{store: Store, engine: Pick<Engine, 'restart'>, files: {check: () => void}}} app */
export function mend({ store, engine, files }) {
  setTimeout(() => store.state.engine.kind !== 'ready' && files.check(), LATE_MS);
  store.subscribe((state, before) => {
    const { kind } = state.engine;
    if (state.engine !== before.engine && (kind === 'restarting' || kind === 'failed')) files.check();
    const mended = state.offline.kind === 'whole' && state.offline.mended;
    if (mended && state.offline !== before.offline) engine.restart();
  });
}
