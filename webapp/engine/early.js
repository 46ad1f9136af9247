/**
 * Runs before everything else of the page, so that the engine's worker starts while the app's script is still on its way.
 * What the worker says meanwhile is kept for the client, which takes both over.
 * @import { Early, FromWorker } from './client.js'
 */
const worker = new Worker('engine/worker.js', { type: 'module', name: 'usual' });
/** @type {FromWorker[]} */
const heard = [];
worker.onmessage = ({ data }) => heard.push(data);
worker.onerror = ({ message }) => heard.push({ kind: 'died', reason: message || 'its program could not be loaded' });
/** @type {{ early?: Early }} */ (globalThis).early = { worker, heard };
