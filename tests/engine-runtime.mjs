// The engine in the site's own runtime: reads requests as JSON strings, one a line, and writes the replies likewise.
import { readFileSync } from 'node:fs';
import { createInterface } from 'node:readline';
import { pathToFileURL } from 'node:url';

const [folder, pyodide] = process.argv.slice(2);
const { loadPyodide } = await import(pathToFileURL(`${pyodide}/pyodide.mjs`).href);
const python = await loadPyodide({
  indexURL: folder,
  stdLibURL: `${folder}/python.zip`,
  lockFileContents: { info: { abi_version: '2025_0', arch: 'wasm32', platform: '', python: '' }, packages: {} },
});
python.FS.writeFile('/engine.zip', readFileSync(`${folder}/engine.zip`));
python.runPython("import sys; sys.path.append('/engine.zip'); from pycore.api import answer");
const answer = python.globals.get('answer');
for await (const line of createInterface({ input: process.stdin })) console.log(JSON.stringify(answer(JSON.parse(line))));
