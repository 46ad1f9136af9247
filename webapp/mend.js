/**
 * Where the engine does not come up, the files that it starts from are looked at, and it begins anew from those that were
 * fetched again.
 * @import {Store} from './store.js'
 * @import {Offline} from './device/files.js'
 * @import {Engine} from './engine/client.js'
 */

/** After which a start is looked into: the slowest phones take less. */
const LATE_MS = 6000;

/** How many files were fetched again, and nobody has heard of it yet. @param {Offline} offline */
export const mendedOf = (offline) => (offline.kind === 'whole' ? offline.mended : 0);

/** @param {Offline} offline @param {number} more @returns {Offline} */
export const withMended = (offline, more) =>
  offline.kind === 'whole' ? { ...offline, mended: offline.mended + more } : offline;

/** @param {{store: Store, engine: Pick<Engine, 'restart'>, files: {check: () => void}}} app */
export function mend({ store, engine, files }) {
  setTimeout(() => store.state.engine.kind !== 'ready' && files.check(), LATE_MS);
  store.subscribe((state, before) => {
    const { kind } = state.engine;
    if (state.engine !== before.engine && (kind === 'restarting' || kind === 'failed')) files.check();
    if (mendedOf(state.offline) > mendedOf(before.offline)) engine.restart();
  });
}
