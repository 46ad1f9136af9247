// Run by runtime.py: asks the engine everything it can be asked, and prints which files of the library that took.
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';

const ASK = `
import gc, json, sys
from pycore.api import answer, endpoints, examples
answer("{")
answered = {example["ask"] for example in examples() if json.loads(answer(json.dumps(example)))["ok"]}
if missing := endpoints().keys() - answered:
    raise AssertionError(f"no example of {', '.join(sorted(missing))} is answered")
gc.collect()
`;
const IMPORTED = `
json.dumps([
    module.__spec__.origin.split(".zip/")[1]
    for module in sys.modules.values()
    if getattr(module, "__spec__", None) and type(module.__spec__.loader).__name__ == "zipimporter"
])
`;

async function exercise(pyodide, engine) {
  const { loadPyodide } = await import(pathToFileURL(`${pyodide}/pyodide.mjs`).href);
  const python = await loadPyodide();
  python.FS.writeFile('/engine.zip', readFileSync(engine));
  python.runPython("import sys; sys.path.append('/engine.zip')");
  python.runPython(ASK);
  try {
    python.runPython('1 / 0'); // what it takes to tell of an error belongs to the library too
  } catch {}
  return python.runPython(IMPORTED);
}

try {
  console.log(await exercise(...process.argv.slice(2)));
} catch (error) {
  console.error(error.message);
  process.exit(1);
}
