import { loadPyodide } from './pyodide.mjs';

// Listening from the start keeps the question that comes before Python is there
const asked = new Promise((resolve) => addEventListener('message', ({ data }) => resolve(data)));
const python = await loadPyodide({
  lockFileContents: { info: { abi_version: '2025_0', arch: 'wasm32', platform: '', python: '' }, packages: {} },
});
const engine = await fetch('engine.zip');
python.FS.writeFile('/engine.zip', new Uint8Array(await engine.arrayBuffer()));
python.runPython("import sys; sys.path.append('/engine.zip'); from pycore.api import answer");
postMessage(python.globals.get('answer')(JSON.stringify(await asked)));
