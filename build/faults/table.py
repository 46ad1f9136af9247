"""``python3 build faults [PART]``: what happens to what is kept, and to the app, when something goes wrong, in one table.

Its long form stands in DEVELOPERS.md; the tests run a short form of each part.
"""

import sys
import tempfile
from collections.abc import Callable, Iterator, Sequence
from pathlib import Path

from playwright.sync_api import Playwright, sync_playwright

import dist
from environment import SetupError
from faults import damaged, files, killed
from faults.fault import Fault
from table import markdown

HEADINGS = ("what goes wrong", "rounds", "losses", "what else")
PARTS: dict[str, Callable[[Playwright, Path, Sequence[Path], int], Iterator[Fault]]] = {
    "killed": killed.faults,
    "damaged": damaged.faults,
    "files": files.faults,
}
ROUNDS = {"killed": 18, "damaged": 300, "files": 14}


def show(wanted: list[str], rounds: int | None) -> int:
    """Print the table of each wanted part, or of all. Returns 1 where something was lost."""
    for name in wanted:
        if name not in PARTS:
            raise SetupError(f"There is no part {name}; there are {', '.join(PARTS)}")
    found: list[Fault] = []
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as playwright:
        folders = dist.build(), dist.modules()
        for name in wanted or PARTS:
            for fault in PARTS[name](playwright, Path(folder) / name, folders, rounds or ROUNDS[name]):
                found.append(fault)
                print(f"{fault.what}: {fault.rounds} rounds, {len(fault.losses)} losses", file=sys.stderr, flush=True)
    print(markdown([HEADINGS, *map(Fault.cells, found)]))
    for fault in found:
        for each in fault.losses:
            print(f"{fault.what}, {each}", file=sys.stderr)
    return 1 if any(fault.losses for fault in found) else 0
