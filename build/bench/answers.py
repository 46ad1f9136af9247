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
# Forty readings of a wavy green; each time another one of them, so that the survey is worked out anew
SURVEYED = """async ({ readings, reads }) => {
  const points = (turn) => Array.from({ length: readings }, (_, i) => ({
    x_m: 1.5 * (i % 8), y_m: 2 * Math.floor(i / 8), sd_percent: 0.12,
    slope_percent: 1.8 + Math.sin(i % 8) + 0.01 * turn, fall_deg: 160 + 40 * Math.cos(i / 8),
  }));
  const timed = async (ask, fields) => {
    const start = performance.now();
    await engine.ask(ask, fields);
    return performance.now() - start;
  };
  const surveys = [];
  for (let turn = 0; turn < 6; turn += 1) surveys.push(await timed('survey', { points: points(turn), place_sd_m: 0.25 }));
  const putt = (i) => ({
    survey: { points: points(5), place_sd_m: 0.25, ball: [2 + i / 20, 2], hole: [6, 5 + i / 30] }, stimp_ft: 10, past_m: 0.3,
  });
  const taken = { read: [], window: [] };
  for (let i = 0; i < reads; i += 1) for (const ask in taken) taken[ask].push(await timed(ask, putt(i)));
  return { surveys: surveys.slice(1), reads: taken.read.slice(1), windows: taken.window.slice(1) };
}"""
SURVEY_LIMIT, SURVEYED_READ_LIMIT, SURVEYED_WINDOW_LIMIT = 0.600, 0.060, 0.700  # s
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
        walked: dict[str, list[float]] = page.evaluate(SURVEYED, {"readings": 40, "reads": 20})
        result.append(answered("survey of 40 readings", walked["surveys"], SURVEY_LIMIT))
        result.append(answered("read on it", walked["reads"], SURVEYED_READ_LIMIT))
        result.append(answered("window on it", walked["windows"], SURVEYED_WINDOW_LIMIT))
    return result


def answered(what: str, taken_ms: list[float], limit: float) -> Row:
    """An answer in the browser against the longest that it may take, s."""
    seconds = median(taken_ms) / 1e3
    return Row(f"{what} in the browser", milliseconds(seconds), f"limit {milliseconds(limit)}", seconds / limit, 1)
