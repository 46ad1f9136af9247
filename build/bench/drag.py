"""Ruler and dial under a finger: the longest frame on a processor four times slower.

A frame is all that the page's main thread does from one drawing to the next, in its own processor time: what else the machine
does at the moment does not count, as it does with the browser's own brake on a page.
"""

import math
from collections import defaultdict
from pathlib import Path
from typing import Any

from playwright.sync_api import Page, Playwright

import browser
from bench.row import Row, milliseconds
from bench.start import COMPLETE, SLOW, until
from browser import SNAPSHOT_KEPT
from server import Site

FRAME_LIMIT = 0.050  # s
MOVES = 150
PAUSE_MS = 16
REST_MS = 2000
REACH_PX = {"#ruler": (120, 0), "#dial": (50, 50)}
WHATS = {"#ruler": "distance dragged", "#dial": "fall line dragged"}
READY = "() => document.querySelector('.window:not(.stale)') && document.querySelector('.engine')?.textContent === ''"
TASK, FRAME = "RunTask", "Commit"
CATEGORIES = ["disabled-by-default-devtools.timeline"]

type Event = dict[str, Any]


def rows(playwright: Playwright, folder: Path, store: Path) -> list[Row]:
    site = Site(folder)
    context = browser.open_store(playwright, store / "browser-drag", viewport=browser.PHONE)
    page = context.new_page()
    page.goto(site.url)
    for script in (READY, COMPLETE, SNAPSHOT_KEPT):
        until(page, script)
    result = []
    for instrument, what in WHATS.items():
        if instrument == "#dial":
            page.locator(".cell", has_text="Falls").click()
        page.wait_for_timeout(REST_MS)
        _drag(page, instrument)  # compiled, as after a few putts
        longest = SLOW * max(_frames(_traced(page, instrument)))
        limit = f"limit {milliseconds(FRAME_LIMIT)}"
        name = f"{what}, longest frame, processor {SLOW} times slower"
        result.append(Row(name, milliseconds(longest), limit, longest / FRAME_LIMIT, 1))
    context.close()
    site.stop()
    return result


def _drag(page: Page, instrument: str) -> None:
    """To and fro, or round and round, twice."""
    box = page.locator(instrument).bounding_box()
    assert box
    x, y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    across, along = REACH_PX[instrument]
    page.mouse.move(x, y)
    page.mouse.down()
    for i in range(MOVES):
        turn = 4 * math.pi * i / MOVES
        page.mouse.move(x + across * math.sin(turn), y - along * math.cos(turn))
        page.wait_for_timeout(PAUSE_MS)
    page.mouse.up()


def _traced(page: Page, instrument: str) -> list[Event]:
    """What the browser tells of its own work meanwhile."""
    events: list[Event] = []
    over: list[object] = []
    session = page.context.new_cdp_session(page)
    session.on("Tracing.dataCollected", lambda told: events.extend(told["value"]))
    session.on("Tracing.tracingComplete", lambda told: over.append(told))
    session.send("Tracing.start", {"transferMode": "ReportEvents", "traceConfig": {"includedCategories": CATEGORIES}})
    _drag(page, instrument)
    session.send("Tracing.end")
    while not over:
        page.wait_for_timeout(100)
    session.detach()
    return events


def _frames(events: list[Event]) -> list[float]:
    """Processor time of each frame of the thread that draws most, s."""
    threads: dict[object, list[Event]] = defaultdict(list)
    for event in events:
        if event["name"] == FRAME or (event["name"] == TASK and "tdur" in event):
            threads[event["pid"], event["tid"]].append(event)
    page = max(threads.values(), key=lambda own: sum(event["name"] == FRAME for event in own))
    drawn = sorted(event["ts"] for event in page if event["name"] == FRAME)
    result = [0.0]
    for task in sorted((event for event in page if event["name"] == TASK), key=lambda event: float(event["ts"])):
        result[-1] += task["tdur"] / 1e6
        if any(task["ts"] <= at <= task["ts"] + task["dur"] for at in drawn):
            result.append(0.0)
    assert len(result) > MOVES // 2, "the browser told of too few frames"
    return result
