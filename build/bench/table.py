"""``python3 build bench``: every measurement, one table."""

import tempfile
from collections.abc import Callable, Iterable
from pathlib import Path

from playwright.sync_api import Playwright, sync_playwright

import dist
from bench import answers, audit, drag, overlay, practice, record, slowest, solver, start, watch, weight
from bench.row import Row
from environment import SetupError, step
from table import markdown

HEADINGS = ("what", "ours", "against", "ratio", "at most", "")
PARTS: dict[str, Callable[[Playwright, Path, Path], Iterable[Row]]] = {
    "weight": lambda _, folder, __: weight.rows(folder),
    "solver": lambda *_: solver.rows(),
    "start": start.rows,
    "answers": answers.rows,
    "drag": drag.rows,
    "practice": practice.rows,
    "watch": watch.rows,
    "record": record.rows,
    "overlay": overlay.rows,
    "audit": audit.rows,
    "slowest": lambda *_: slowest.rows(),
}
LONG = {"audit", "slowest"}  # minutes and hours: made when asked for by name


def show(wanted: list[str]) -> int:
    """Measure and print, all of it or the parts that are wanted. Returns 1 where a ratio is over its limit."""
    for name in wanted:
        if name not in PARTS:
            raise SetupError(f"There is no part {name}; there are {', '.join(PARTS)}")
    folder = dist.build()
    rows: list[Row] = []
    with tempfile.TemporaryDirectory() as store, sync_playwright() as playwright:
        for name in wanted or [each for each in PARTS if each not in LONG]:
            with step(f"Measuring: {name}"):
                rows += PARTS[name](playwright, folder, Path(store))
    print(text(rows))
    return 0 if all(row.holds for row in rows) else 1


def text(rows: list[Row]) -> str:
    """The table in Markdown."""
    return markdown([HEADINGS, *map(_cells, rows)])


def _cells(row: Row) -> tuple[str, ...]:
    return row.what, row.ours, row.other, f"{row.ratio:.3g}", f"{row.limit:.3g}", "holds" if row.holds else "FAILS"
