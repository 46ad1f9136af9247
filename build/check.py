"""``python3 build test``: everything that has to hold before a change goes in."""

import os
import subprocess
import sys

import dist
import environment
import protocol
from environment import NODE_PACKAGES, ROOT, VENV


def run(pytest: list[str]) -> int:
    """Lint, types, then the tests; with arguments, pytest alone with those. Returns the exit status."""
    environment.chromium()
    if pytest:
        dist.build()
        return _call("pytest", sys.executable, "-m", "pytest", *pytest)
    stale = _stale_protocol()
    dist.build()
    statuses = [stale, *(_call(name, *command) for name, command in _checks().items())]
    return max(statuses)


def _checks() -> dict[str, list[str]]:
    python = [sys.executable, "-m"]
    tsc = [environment.node(), str(NODE_PACKAGES / "typescript" / "bin" / "tsc"), "--project"]
    return {
        "ruff check": [*python, "ruff", "check"],
        "ruff format": [*python, "ruff", "format", "--check"],
        "mypy": [*python, "mypy"],
        "tsc, the page": [*tsc, "webapp/tsconfig.json"],
        "tsc, the workers": [*tsc, "webapp/tsconfig.workers.json"],
        "pytest": [*python, "pytest", "--numprocesses", "2", "--dist", "worksteal"],
    }


def _stale_protocol() -> int:
    if protocol.FILE.exists() and protocol.FILE.read_text() == protocol.current():
        return 0
    protocol.write()
    print(f"{protocol.FILE.relative_to(ROOT)} did not say what the engine says. It does now: commit it.", flush=True)
    return 1


def _call(name: str, *command: str) -> int:
    print(f"--- {name}", flush=True)
    variables = {**os.environ, "HYPOTHESIS_STORAGE_DIRECTORY": str(VENV / "hypothesis")}
    return subprocess.run(command, cwd=ROOT, env=variables, check=False).returncode
