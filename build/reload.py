"""Rebuilds when a source file changes, and tells the open pages. Added by the server only: nothing of it is in dist/."""

import subprocess
import sys
import threading
import time
from collections.abc import Iterator
from pathlib import Path

from flask import Flask, Response, request

import offline
from environment import ROOT

WATCHED = ("webapp", "pycore")
TAG = b'<script type="module" src="/dev/reload.js"></script></body>'
SCRIPT = """
const changes = new EventSource('/dev/changes');
changes.onerror = () => changes.close();
changes.onmessage = async () => {
  const registration = await navigator.serviceWorker?.getRegistration();
  await registration?.update();
  const fresh = registration?.installing ?? registration?.waiting;
  if (!fresh) return location.reload();
  const step = () => {
    if (fresh.state === 'installed') fresh.postMessage({ type: 'take over' });
    if (fresh.state === 'activated') location.reload();
  };
  fresh.addEventListener('statechange', step);
  step();
};
"""


def install(app: Flask, folder: Path, changed: threading.Condition) -> None:
    """Answer for the development pages, and for the two files of the site that have to know of them."""

    @app.before_request
    def instead() -> Response | None:
        if request.path == "/":
            return Response(_tagged(folder), mimetype="text/html")
        if request.path == "/precache.js":
            return Response(_precache(folder), mimetype="text/javascript")
        if request.path == "/dev/reload.js":
            return Response(SCRIPT, mimetype="text/javascript")
        if request.path == "/dev/changes":
            return Response(_events(changed), mimetype="text/event-stream")
        return None


def watch(changed: threading.Condition) -> None:
    """Rebuild on every change from now on, and tell those who wait for ``changed``."""
    threading.Thread(target=_watch, args=(changed,), daemon=True).start()


def _precache(folder: Path) -> str:
    # The page with the tag is the page that the service worker has to keep
    plain, tagged = (offline.integrity(page) for page in ((folder / "index.html").read_bytes(), _tagged(folder)))
    return (folder / "precache.js").read_text().replace(plain, tagged)


def _tagged(folder: Path) -> bytes:
    return (folder / "index.html").read_bytes().replace(b"</body>", TAG)


def _events(changed: threading.Condition) -> Iterator[str]:
    yield ": listening\n\n"
    while True:
        with changed:
            changed.wait()
        yield "data: changed\n\n"


def _watch(changed: threading.Condition) -> None:
    seen = _state()
    while True:
        time.sleep(0.5)
        now = _state()
        if now == seen:
            continue
        seen = now
        # In a process of its own, since the engine's modules may be what changed
        if subprocess.run([sys.executable, str(ROOT / "build")], check=False).returncode == 0:
            with changed:
                changed.notify_all()


def _state() -> dict[Path, int]:
    paths = (path for root in WATCHED for path in (ROOT / root).rglob("*") if "__pycache__" not in path.parts)
    return {path: path.stat().st_mtime_ns for path in paths if path.is_file()}
