"""``python3 build prove [NAME]``: the tables of many simulated cases, each with the bound that it has to keep.

A proof is a module of ``tests/prove/``. Its docstring says what is shown; its ``prove(cases=...)`` is a generator that
yields the share done and returns the rows. The tests run each with ``SHORT`` cases (``tests/site/test_prove.py``).
"""

import sys
import time
from collections.abc import Generator
from dataclasses import dataclass
from importlib import import_module
from inspect import cleandoc
from math import inf

from environment import ROOT, SetupError
from table import markdown

FOLDER = ROOT / "tests" / "prove"
HEADINGS = ("what", "found", "bound", "")
SHOWN_EVERY_S = 1.0


@dataclass(frozen=True)
class Row:
    """What was found, and where it has to lie; without bounds it is for information."""

    what: str
    found: float
    low: float = -inf
    high: float = inf
    unit: str = ""

    @property
    def holds(self) -> bool:
        return self.low <= self.found <= self.high

    @property
    def bound(self) -> str:
        if self.low == -inf:
            return "" if self.high == inf else f"at most {self.high:g}"
        return f"at least {self.low:g}" if self.high == inf else f"{self.low:g} to {self.high:g}"


type Proof = Generator[float, None, list[Row]]


def names() -> list[str]:
    return sorted(path.stem for path in FOLDER.glob("*.py"))


def show_list() -> int:
    """Print each proof's name and what it shows."""
    for name in names():
        print(f"{name}: {_says(name)}")
    return 0


def show(wanted: list[str]) -> int:
    """Print the table of each wanted proof, or of all. Returns 1 where a bound fails."""
    for name in wanted:
        if name not in names():
            raise SetupError(f"There is no proof {name}; there are {', '.join(names())}")
    held = True
    for name in wanted or names():
        print(f"## {name}\n\n{_says(name)}\n", flush=True)
        rows = finished(import_module(f"tests.prove.{name}").prove(), name)
        print(markdown([HEADINGS, *map(_cells, rows)]), end="\n\n", flush=True)
        held = held and all(row.holds for row in rows)
    return 0 if held else 1


def finished(proof: Proof, name: str = "") -> list[Row]:
    """Its rows; with a name the share done goes to the standard error output meanwhile."""
    began = shown = time.monotonic()
    while True:
        try:
            share = next(proof)
        except StopIteration as done:
            rows: list[Row] = done.value
            if name:
                print(f"\r{name}: {time.monotonic() - began:.0f} s ", file=sys.stderr)
            return rows
        if name and time.monotonic() - shown > SHOWN_EVERY_S:
            shown = time.monotonic()
            print(f"\r{name}: {share:.0%}, {shown - began:.0f} s ", end="", file=sys.stderr, flush=True)


def short(name: str) -> list[Row]:
    """The same of few cases, for the tests."""
    proof = import_module(f"tests.prove.{name}")
    return finished(proof.prove(proof.SHORT))


def _says(name: str) -> str:
    return cleandoc(import_module(f"tests.prove.{name}").__doc__ or "").replace("\n", " ")


def _cells(row: Row) -> tuple[str, ...]:
    verdict = "" if not row.bound else "holds" if row.holds else "FAILS"
    return row.what, f"{row.found:.4g} {row.unit}".strip(), f"{row.bound} {row.unit if row.bound else ''}".strip(), verdict
