"""From request to answer on the page's main thread, the worker and its messages included."""

from pathlib import Path
from statistics import median

from playwright.sync_api import Playwright

from bench.page import opened
from bench.row import Row, milliseconds

PUTT = {"stimp_ft": 10, "past_m": 0.3}
PLANE = {**PUTT, "slope_percent": 2, "fall_deg": 90}
STATIONS = {
    **PUTT,
    "stations": [
        {"at_m": 0, "slope_percent": 1, "fall_deg": 60},
        {"at_m": 1, "slope_percent": 2, "fall_deg": 90},
        {"at_m": 2, "slope_percent": 2.5, "fall_deg": 120},
    ],
}
LIMITS = (  # what, ask, fields, most seconds
    ("plane read", "read", PLANE, 0.008),
    ("window", "window", PLANE, 0.060),
    ("station read", "read", STATIONS, 0.060),
)
# Another distance each time: no answer may come from memory
TIME = """async ({ ask, fields }) => {
  const taken = [];
  for (let i = 0; i < 60; i += 1) {
    const start = performance.now();
    await engine.ask(ask, { ...fields, distance_m: 2.2 + i / 30 });
    taken.push(performance.now() - start);
  }
  return taken.slice(10);
}"""
START = """async () => {
  const { createEngine } = await import('/engine/client.js');
  window.engine = createEngine();
}"""


def rows(playwright: Playwright, folder: Path, store: Path) -> list[Row]:
    result = []
    with opened(playwright, folder, store / "browser-answers") as page:
        page.evaluate(START)
        for what, ask, fields, limit in LIMITS:
            taken: list[float] = page.evaluate(TIME, {"ask": ask, "fields": fields})
            result.append(answered(what, taken, limit))
    return result


def answered(what: str, taken_ms: list[float], limit: float) -> Row:
    """An answer in the browser against the longest that it may take, s."""
    seconds = median(taken_ms) / 1e3
    return Row(f"{what} in the browser", milliseconds(seconds), f"limit {milliseconds(limit)}", seconds / limit, 1)
