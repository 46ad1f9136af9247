const worker = new Worker('plain-worker.js', { type: 'module' });
worker.onmessage = () => Object.assign(window, { took: { from: 'plain', ms: performance.now() } });
worker.postMessage({ ask: 'read', distance_m: 2.53, stimp_ft: 10, slope_percent: 2, fall_deg: 90, past_m: 0.3 });
