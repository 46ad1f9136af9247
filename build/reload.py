"""Rebuilds when a source file changes, and tells the open pages. Added by the server only: nothing of it is in dist/."""

import subprocess
import sys
import threading
import time
from collections.abc import Iterator
from pathlib import Path

from flask import Flask, Response

import offline
from environment import ROOT, VENV

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
  // The page reloads itself once the new version has taken over
  const takeOver = () => fresh.state === 'installed' && fresh.postMessage({ type: 'take over' });
  fresh.addEventListener('statechange', takeOver);
  takeOver();
};
"""


def install(app: Flask, folder: Path) -> None:
    """Add the routes, and start watching."""
    changed = threading.Condition()
    threading.Thread(target=_watch, args=(changed,), daemon=True).start()

    @app.get("/")
    def page() -> bytes:
        return _tagged(folder)

    @app.get("/precache.js")
    def precache() -> Response:
        # The page with the tag is the page that the service worker has to keep
        plain, tagged = (offline.integrity(page) for page in ((folder / "index.html").read_bytes(), _tagged(folder)))
        return Response((folder / "precache.js").read_text().replace(plain, tagged), mimetype="text/javascript")

    @app.get("/dev/reload.js")
    def script() -> Response:
        return Response(SCRIPT, mimetype="text/javascript")

    @app.get("/dev/changes")
    def changes() -> Response:
        def events() -> Iterator[str]:
            yield ": listening\n\n"
            while True:
                with changed:
                    changed.wait()
                yield "data: changed\n\n"

        return Response(events(), mimetype="text/event-stream")

    @app.get("/dev/authority.pem")
    def authority() -> Response:
        return Response((VENV / "authority.pem").read_bytes(), mimetype="application/x-x509-ca-cert")


def _tagged(folder: Path) -> bytes:
    return (folder / "index.html").read_bytes().replace(b"</body>", TAG)


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
