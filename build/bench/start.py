"""From navigation to the first answer: the app offline, and Python as it comes, each in a browser just restarted."""

import shutil
from pathlib import Path
from statistics import median
from typing import Any

from playwright.sync_api import Page, Playwright

import archive
import browser
import offline
import runtime
from bench.row import Row, milliseconds
from server import Site

ROUNDS = 5
PAGES = Path(__file__).with_name("pages")
FIRST_LIMIT = 0.6
LATER_LIMIT = 0.4
SNAPSHOT_KEPT = "() => caches.open('borrowline-snapshots').then((cache) => cache.keys()).then((keys) => keys.length)"
COMPLETE = "() => navigator.serviceWorker.getRegistration().then((found) => found?.active?.state === 'activated')"


def rows(playwright: Playwright, folder: Path, store: Path) -> list[Row]:
    ours = _with_page(folder, store / "ours")
    plain = Site(_plain(store / "plain"))
    taken: dict[str, list[float]] = {"first": [], "later": [], "plain": []}
    for number in range(ROUNDS):
        # Stores of their own: what a browser compiled in one round must not help the next
        mine, theirs = store / f"ours-{number}", store / f"plain-{number}"
        url = _visit(playwright, mine, ours)
        taken["first"].append(_start(playwright, mine, url, "files"))
        taken["later"].append(_start(playwright, mine, url, "snapshot"))
        _make(playwright, theirs)
        taken["plain"].append(_start(playwright, theirs, plain.url, "plain"))
    plain.stop()
    first, later, other = (median(taken[kind]) for kind in ("first", "later", "plain"))
    against = f"plain runtime {milliseconds(other)}"
    return [
        Row("first start to an answer", milliseconds(first), against, first / other, FIRST_LIMIT),
        Row("later start to an answer", milliseconds(later), against, later / other, LATER_LIMIT),
    ]


def _start(playwright: Playwright, store: Path, url: str, source: str) -> float:
    """Seconds from navigation to the first answer, in a browser of its own."""
    context = browser.open_store(playwright, store)
    page = context.new_page()
    page.goto(url + "bench.html")
    took: dict[str, Any] = until(page, "() => window.took")
    if took["from"] != source:
        raise RuntimeError(f"it started from {took['from']}, not from {source}")
    if source == "files":
        until(page, SNAPSHOT_KEPT)
    context.close()
    return float(took["ms"]) / 1e3


def _visit(playwright: Playwright, store: Path, folder: Path) -> str:
    """Install the app for use without a network, without a snapshot; returns its address, where nobody answers now."""
    site = Site(folder)
    context = browser.open_store(playwright, store)
    page = context.new_page()
    page.goto(site.url + "licences.txt")
    page.evaluate("navigator.serviceWorker.register('/sw.js')")
    until(page, COMPLETE)
    context.close()
    site.stop()
    return site.url


def _make(playwright: Playwright, store: Path) -> None:
    """A store that a browser has set up and nothing more, since ours was set up by its visit."""
    context = browser.open_store(playwright, store)
    context.new_page().goto("about:blank")
    context.close()


def until(page: Page, script: str) -> Any:
    for _ in range(600):
        if result := page.evaluate(script):
            return result
        page.wait_for_timeout(100)
    raise RuntimeError(f"never came true: {script}")


def _with_page(folder: Path, copy: Path) -> Path:
    """The site and a page that does nothing but ask, kept offline as the rest is."""
    shutil.copytree(folder, copy)
    shutil.copy(PAGES / "bench.html", copy)
    shutil.copy(PAGES / "ours.js", copy / "bench.js")
    files = {path.relative_to(copy).as_posix(): path.read_bytes() for path in copy.rglob("*") if path.is_file()}
    (copy / "precache.js").write_bytes(offline.script(offline.precache(files)))
    return copy


def _plain(folder: Path) -> Path:
    """The runtime as its package has it, the whole library, and the engine as source."""
    folder.mkdir()
    for name in ("pyodide.mjs", *runtime.PROGRAM, runtime.LIBRARY.name):
        shutil.copy(runtime.PYODIDE / name, folder)
    (folder / "engine.zip").write_bytes(archive.packed(runtime.engine()))
    shutil.copy(PAGES / "bench.html", folder)
    shutil.copy(PAGES / "plain.js", folder / "bench.js")
    shutil.copy(PAGES / "plain-worker.js", folder)
    return folder
