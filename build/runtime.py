"""Python for the browser: the npm package's WebAssembly, and of the library what the engine needs, as byte-code."""

import hashlib
import json
import shutil
import subprocess
import tempfile
from pathlib import Path

import archive
import environment
from environment import NODE_PACKAGES, ROOT

PYODIDE = NODE_PACKAGES / "pyodide"
# Its pyodide.mjs is in the worker
PROGRAM = ("pyodide.asm.js", "pyodide.asm.wasm")
LIBRARY = PYODIDE / "python_stdlib.zip"

KEPT = environment.VENV / "runtime"
STAMP = environment.VENV / "runtime.stamp"
MAKERS = (Path(__file__).with_name(name) for name in ("runtime.py", "archive.py", "exercise.mjs", "locks"))
SOURCES = (ROOT / "pycore", ROOT / "webapp" / "package-lock.json", *MAKERS)


def engine() -> dict[str, bytes]:
    """The engine's source files, by their path in the archive."""
    paths = (path for path in (ROOT / "pycore").rglob("*") if path.is_file() and "__pycache__" not in path.parts)
    return {path.relative_to(ROOT).as_posix(): path.read_bytes() for path in paths}


def kept() -> dict[str, bytes]:
    """The files, made anew where the engine, the runtime or the way they are made changed."""
    if not environment.fresh(STAMP, *SOURCES):
        sources = environment.digest(*SOURCES)
        with environment.step("Trimming and compiling Python for the browser"):
            made = files()
        shutil.rmtree(KEPT, ignore_errors=True)
        KEPT.mkdir()
        for name, content in made.items():
            (KEPT / name).write_bytes(content)
        STAMP.write_text(sources)
    return {path.name: path.read_bytes() for path in KEPT.iterdir()}


def files() -> dict[str, bytes]:
    """Everything that the worker loads, by name."""
    source = engine()
    library = archive.read(LIBRARY)
    wanted = {name: library[name] for name in needed(source)}
    return {
        **{name: (PYODIDE / name).read_bytes() for name in PROGRAM},
        "python.zip": archive.packed(archive.compiled(wanted)),
        "engine.zip": archive.packed(archive.compiled(source)),
    }


def needed(source: archive.Files) -> list[str]:
    """The library's files that were imported once the engine had answered every example."""
    with tempfile.NamedTemporaryFile(suffix=".zip") as trial:
        trial.write(archive.packed(source))
        trial.flush()
        script = str(Path(__file__).with_name("exercise.mjs"))
        run = subprocess.run(
            [environment.node(), script, str(PYODIDE), trial.name], capture_output=True, text=True, check=False
        )
    if run.returncode != 0:
        raise environment.SetupError(f"The engine does not answer its own examples:\n{run.stderr}")
    imported: list[str] = json.loads(run.stdout.splitlines()[-1])
    return [name for name in imported if name not in source]


def folder(contents: archive.Files) -> str:
    """Name of the runtime's folder: other contents, other name, so that no snapshot outlives its runtime."""
    digest = hashlib.sha256()
    for name, content in sorted(contents.items()):
        digest.update(name.encode() + hashlib.sha256(content).digest())
    return f"runtime-{digest.hexdigest()[:12]}"
