"""A phone that watches a film of two putts over and over without a touch, a minute a case: it keeps what it sees, and its
memory does not grow. The short form is the test of two putts in a row, in ``tests/webapp/test_watch.py``."""

import tempfile
from pathlib import Path

import numpy as np
from playwright.sync_api import Browser, Page, sync_playwright

import browser
import dist
from prove import Proof, Row
from server import Site
from tests.filmed_balls import write
from tests.watching import ENTRIES, launched, mark, ready, scene, told

SHORT = 0
MB = 1e6
MINUTE_MS = 60_000
PAGE_B = 4096
# How many cameras are on once the screen is left
LEFT = """async () => {
  const tracks = document.querySelector('.film video').srcObject.getVideoTracks();
  location.hash = 'read';
  while (document.querySelector('.film')) await new Promise((done) => setTimeout(done, 50));
  return tracks.filter(({ readyState }) => readyState === 'live').length;
}"""


def prove(cases: int = 20) -> Proof:
    if not cases:
        return [Row("minutes", 0)]
    heap: list[float] = []
    resident: list[float] = []
    nodes: list[float] = []
    site = Site(dist.build(), dist.modules())
    with sync_playwright() as playwright, tempfile.TemporaryDirectory() as folder:
        putts = [scene(1.62, 3.2, legs=True, second=True), scene(1.95, 4.4, second=True, slip=0.4)]
        film = Path(folder) / "putts.mjpeg"
        write(putts, film)
        chromium = launched(playwright, film)
        page = chromium.new_context(viewport=browser.PHONE, has_touch=True).new_page()
        ready(page, site.url, told(putts[0]))
        mark(page, told(putts[0]))
        for minute in range(cases):
            page.wait_for_timeout(MINUTE_MS)
            for into, value in zip((heap, nodes, resident), (*_of_script(page), _resident(chromium)), strict=True):
                into.append(value)
            yield (minute + 1) / cases
        kept = page.evaluate(f"({ENTRIES})().then((putts) => putts.length)")
        lights = page.evaluate(LEFT)
        chromium.close()
    site.stop()
    return [
        Row("putts kept without a touch, each minute", kept / cases, low=3),
        Row("cameras on once the screen is left", lights, high=0),
        Row("script's memory at the end", heap[-1], unit="MB"),
        Row("what it grows by in the last half", _grown(heap), high=1, unit="MB"),
        Row("nodes of the page, the same", _grown(nodes), high=100),
        Row("resident memory of the page at the end", resident[-1], unit="MB"),
        Row("what it grows by in the last half", _grown(resident), high=30, unit="MB"),
    ]


def _of_script(page: Page) -> tuple[float, float]:
    """Memory of the page's script (MB) once what is not needed has been let go, and how many nodes it holds."""
    session = page.context.new_cdp_session(page)
    session.send("HeapProfiler.collectGarbage")
    used = session.send("Runtime.getHeapUsage")["usedSize"] / MB
    nodes = session.send("Memory.getDOMCounters")["nodes"]
    session.detach()
    return used, nodes


def _resident(chromium: Browser) -> float:
    """Of the page's process, the engine's worker in it, MB."""
    told = chromium.new_browser_cdp_session().send("SystemInfo.getProcessInfo")["processInfo"]
    sizes = [int(Path(f"/proc/{each['id']}/statm").read_text().split()[1]) for each in told if each["type"] == "renderer"]
    return max(sizes) * PAGE_B / MB


def _grown(values: list[float]) -> float:
    """By how much a line through the last half rises over it."""
    late = values[len(values) // 2 :]
    if len(late) < 3:
        return 0.0
    return float(np.polyfit(range(len(late)), late, 1)[0]) * (len(late) - 1)
