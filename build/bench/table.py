"""``python3 build bench``: every measurement, one table."""

import tempfile
from pathlib import Path

from playwright.sync_api import sync_playwright

import dist
from bench import answers, overlay, practice, record, solver, start, watch, weight
from bench.row import Row
from environment import step
from table import markdown

HEADINGS = ("what", "ours", "against", "ratio", "at most", "")


def show() -> int:
    """Measure and print. Returns 1 where a ratio is over its limit."""
    folder = dist.build()
    rows = weight.rows(folder)
    with step("Racing the solver"):
        rows += solver.rows()
    with tempfile.TemporaryDirectory() as store, sync_playwright() as playwright:
        with step("Starting browsers"):
            rows += start.rows(playwright, folder, Path(store))
        with step("Asking in the browser"):
            rows += answers.rows(playwright, folder, Path(store))
            rows += practice.rows(playwright, folder, Path(store))
        with step("Watching a ball"):
            rows += watch.rows(playwright, folder, Path(store))
        with step("Filling a record"):
            rows += record.rows(playwright, folder, Path(store))
        with step("Dragging a mark"):
            rows += overlay.rows(playwright, folder, Path(store))
    print(text(rows))
    return 0 if all(row.holds for row in rows) else 1


def text(rows: list[Row]) -> str:
    """The table in Markdown."""
    return markdown([HEADINGS, *map(_cells, rows)])


def _cells(row: Row) -> tuple[str, ...]:
    return row.what, row.ours, row.other, f"{row.ratio:.3g}", f"{row.limit:.3g}", "holds" if row.holds else "FAILS"
