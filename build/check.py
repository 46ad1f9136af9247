"""``python3 build test``: everything that has to hold before a change goes in."""

import json
import os
import subprocess
import sys
from concurrent.futures import ThreadPoolExecutor

import dist
import environment
import protocol
from environment import NODE_PACKAGES, ROOT, VENV

PYTEST = (sys.executable, "-m", "pytest")
# one more than there are cores: the browsers wait for a network
SIDE_BY_SIDE = ("--numprocesses", "3", "--dist", "worksteal")
ENGINE_ALONE = "tests/pycore"  # which needs no browser


def run(pytest: list[str]) -> int:
    """Lint, types, then the tests; with arguments, pytest alone with those. Returns the exit status."""
    if pytest:
        environment.chromium()
        dist.build()
        return _call("pytest", *PYTEST, *pytest)
    stale = max(_stale_protocol(), _long_lines())
    with ThreadPoolExecutor((os.cpu_count() or 1) + 1) as pool:
        looks = {name: pool.submit(_look, command) for name, command in _checks().items()}
        dist.build()
        looks["node --test"] = pool.submit(_look, _node_tests())
        # a new machine waits for browsers meanwhile
        engine = _call("pytest, the engine", *PYTEST, *SIDE_BY_SIDE, ENGINE_ALONE)
    statuses = [stale, engine, *(_told(name, look.result()) for name, look in looks.items())]
    return max(*statuses, _call("pytest, all else", *PYTEST, *SIDE_BY_SIDE, "--ignore", ENGINE_ALONE))


def _checks() -> dict[str, list[str]]:
    python = [sys.executable, "-m"]
    biome = [environment.node(), str(NODE_PACKAGES / "@biomejs" / "biome" / "bin" / "biome"), "ci", "--colors=off"]
    tsc = [environment.node(), str(NODE_PACKAGES / "typescript" / "bin" / "tsc"), "--project"]
    return {
        # for a minute or two on a new machine
        "browsers": [sys.executable, str(ROOT / "build" / "environment.py")],
        "ruff check": [*python, "ruff", "check"],
        "ruff format": [*python, "ruff", "format", "--check"],
        "mypy": [*python, "mypy"],
        "biome": biome,
        "tsc, the page": [*tsc, "webapp/tsconfig.json"],
        "tsc, the workers": [*tsc, "webapp/tsconfig.workers.json"],
    }


def _node_tests() -> list[str]:
    """What of the page needs no browser, run by Node's own runner."""
    files = sorted(map(str, (ROOT / "tests" / "webapp").rglob("*.test.js")))
    packages = (ROOT / "tests" / "webapp" / "packages.mjs").as_uri()
    return [environment.node(), "--import", packages, "--test", "--test-reporter=dot", *files]


def _stale_protocol() -> int:
    stale = protocol.write()
    for file in stale:
        print(f"{file.relative_to(ROOT)} did not say what the engine says. It does now: commit it.", flush=True)
    return 1 if stale else 0


def _long_lines() -> int:
    """Biome breaks no template, comment or text: such a line of the page has to be broken by hand."""
    longest = json.loads((ROOT / ".biome.json").read_text())["formatter"]["lineWidth"]
    texts = {
        file: file.read_text()
        for top in ("webapp", "tests", "build")
        for file in sorted((ROOT / top).rglob("*.*"))
        if file.suffix in {".js", ".mjs", ".ts", ".css", ".html"}
    }
    long = [
        f"{file.relative_to(ROOT)}:{number}: {len(line)} columns; {longest} at most"
        for file, text in texts.items()
        if not text.startswith(protocol.HEAD)
        for number, line in enumerate(text.splitlines(), 1)
        if len(line) > longest and "https://" not in line
    ]
    print("--- length of lines", *long, sep="\n", flush=True)
    return 1 if long else 0


def _look(command: list[str]) -> subprocess.CompletedProcess[str]:
    return subprocess.run(command, cwd=ROOT, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, check=False)


def _told(name: str, done: subprocess.CompletedProcess[str]) -> int:
    """What a check has found, in one piece: the others ran beside it."""
    print(f"--- {name}\n{done.stdout}", end="", flush=True)
    return done.returncode


def _call(name: str, *command: str) -> int:
    print(f"--- {name}", flush=True)
    variables = {**os.environ, "HYPOTHESIS_STORAGE_DIRECTORY": str(VENV / "hypothesis")}
    return subprocess.run(command, cwd=ROOT, env=variables, check=False).returncode
