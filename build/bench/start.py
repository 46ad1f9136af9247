"""What a player waits for: the app offline in a browser just restarted, beside Python as it comes answering the same read."""

import shutil
from pathlib import Path
from statistics import median
from typing import Any

from playwright.sync_api import Page, Playwright

import archive
import browser
import runtime
from bench.brake import slowed
from bench.row import Row, milliseconds
from browser import SNAPSHOT_KEPT
from server import Site

ROUNDS = 7
SLOW = 4  # times slower a phone's processor may be
PAGES = Path(__file__).with_name("pages")
# What is waited for, and the most of the plain runtime's first answer that it may take
LIMITS = {"painted": ("last read painted, later start", 0.10), "later": ("first live answer, later start", 0.27)}
LIMITS |= {"first": ("first live answer, first start", 0.55)}
COMPLETE = "() => navigator.serviceWorker.getRegistration().then((found) => found?.active?.state === 'activated')"
READ_KEPT = "() => JSON.parse(localStorage.borrowline ?? 'null')?.read"
# Without the snapshot it is a first start
FORGET = "() => caches.delete('borrowline-snapshots').then(() => true)"
# The frame after the read is in the page, and the first reply that comes from the worker
WATCH = """
window.took = {};
const look = () => {
  if (!document.querySelector('.answer .pace')) requestAnimationFrame(look);
  else requestAnimationFrame(() => { took.painted = performance.now(); });
};
look();
const Plain = Worker;
self.Worker = class extends Plain {
  constructor(...given) {
    super(...given);
    this.addEventListener('message', ({ data }) => { if (data.kind === 'reply') took.live ??= performance.now(); });
  }
};
"""


def rows(playwright: Playwright, folder: Path, store: Path) -> list[Row]:
    plain = Site(_plain(store / "plain"))
    result = []
    for times in (1, SLOW):
        taken: dict[str, list[float]] = {"painted": [], "first": [], "later": [], "plain": []}
        for number in range(ROUNDS):
            # Stores of their own: what a browser compiled in one round must not help the next
            mine, theirs = store / f"ours-{times}-{number}", store / f"plain-{times}-{number}"
            url = _visit(playwright, mine, folder)
            taken["first"].append(start(playwright, mine, url, times)["live"])
            later = start(playwright, mine, url, times)
            taken["later"].append(later["live"])
            taken["painted"].append(later["painted"])
            _make(playwright, theirs)
            taken["plain"].append(_answered(playwright, theirs, plain.url, times))
        other = median(taken["plain"])
        for kind, (what, limit) in LIMITS.items():
            ours = median(taken[kind])
            slower = f", processor {times} times slower" if times > 1 else ""
            against = f"plain runtime {milliseconds(other)}"
            result.append(Row(what + slower, milliseconds(ours), against, ours / other, limit))
    plain.stop()
    return result


def start(playwright: Playwright, store: Path, url: str, times: int = 1) -> dict[str, float]:
    """Seconds from navigation until the app has painted the last read, and until its engine has answered."""
    context = browser.open_store(playwright, store)
    page = context.new_page()
    page.add_init_script(WATCH)
    with slowed(store, times):
        page.goto(url)
        until(page, "() => took.live && took.painted")
    took: dict[str, float] = page.evaluate("took")
    until(page, SNAPSHOT_KEPT)
    context.close()
    return {kind: ms / 1e3 for kind, ms in took.items()}


def _answered(playwright: Playwright, store: Path, url: str, times: int) -> float:
    context = browser.open_store(playwright, store)
    page = context.new_page()
    with slowed(store, times):
        page.goto(url + "bench.html")
        took: dict[str, Any] = until(page, "() => window.took")
    context.close()
    return float(took["ms"]) / 1e3


def _visit(playwright: Playwright, store: Path, folder: Path) -> str:
    """Install the app for use without a network, a read kept and no snapshot; returns its address, where nobody answers now."""
    site = Site(folder)
    context = browser.open_store(playwright, store)
    page = context.new_page()
    page.goto(site.url)
    for script in (COMPLETE, READ_KEPT, SNAPSHOT_KEPT, FORGET):
        until(page, script)
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
