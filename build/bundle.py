"""The app's plain modules made into few files by esbuild: one script, one style, the engine's worker and what starts it."""

import json
import subprocess
import tempfile
from collections.abc import Iterable
from pathlib import Path

from environment import NODE_PACKAGES, ROOT, VENV, SetupError, node

WEBAPP = ROOT / "webapp"
# By output: each is loaded by an address of its own
ENTRIES = ("main.js", "engine/early.js", "engine/worker.js", "device/levels.js")
# Loaded as it stands: its browser looks for a new version of it byte by byte
WHOLE = ("sw.js",)
# The oldest browsers of README, so that no newer syntax is left in
OLDEST = ("safari15", "chrome110", "firefox115")
MODULES = VENV / "modules"


def app(runtime: str) -> dict[str, bytes]:
    """The files that the page loads, by path, minified, each with its source map. ``runtime`` names Python's folder."""
    with tempfile.TemporaryDirectory() as folder:
        out = Path(folder)
        _esbuild(ENTRIES, out, runtime, "--minify", "--sourcemap")
        return {path.relative_to(out).as_posix(): path.read_bytes() for path in sorted(out.rglob("*")) if path.is_file()}


def modules(runtime: str) -> Path:
    """A folder with every module at its own address, for tests and benchmarks that call one of them.

    What two of them share lies in a file that both import, so that a module is there once, as in the sources.
    """
    scripts = (path.relative_to(WEBAPP).as_posix() for path in sorted(WEBAPP.rglob("*.js")))
    alone = [name for name in scripts if name not in (*WHOLE, *ENTRIES)]
    _esbuild(alone, MODULES, runtime, "--splitting", "--loader:.css=empty")
    return MODULES


def _esbuild(entries: Iterable[str], out: Path, runtime: str, *options: str) -> None:
    command = [node(), str(NODE_PACKAGES / "esbuild" / "bin" / "esbuild"), *entries, *options]
    command += ["--bundle", "--format=esm", f"--target={','.join(OLDEST)}", "--legal-comments=none", "--log-level=warning"]
    # Fonts stay where they are; Pyodide names what it needs under Node alone
    command += ["--external:*.woff2", "--external:node:*", "--external:ws", f"--define:RUNTIME={json.dumps(runtime)}"]
    command += [f"--outdir={out}", "--outbase=."]
    done = subprocess.run(
        command, cwd=WEBAPP, env={"NODE_PATH": str(NODE_PACKAGES)}, capture_output=True, text=True, check=False
    )
    if done.returncode != 0 or done.stderr:
        raise SetupError(f"The app's modules do not fit together:\n{done.stderr.strip()}")
