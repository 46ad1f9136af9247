import { createEngine } from './engine/client.js';

let from;
const engine = createEngine({ onState: (state) => (from = state.from ?? from) });
await engine.ask('read', { distance_m: 2.53, stimp_ft: 10, slope_percent: 2, fall_deg: 90, past_m: 0.3 });
Object.assign(window, { engine, took: { from, ms: performance.now() } });
