"""The short form of each part of ``python3 build faults``."""

from collections.abc import Callable, Iterator
from contextlib import nullcontext
from functools import partial
from itertools import islice
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Playwright

import faults.table
from faults import damaged, files, killed
from faults.fault import Fault
from faults.states import STATES

type Part = Callable[[Playwright, Path, tuple[Path, Path], int], Iterator[Fault]]
SHORT: dict[str, tuple[Part, int]] = {
    "killed": (partial(killed.faults, states=[each for each in STATES if each.key in ("running", "settings", "importing")]), 1),
    "damaged": (damaged.faults, 6),
    # what is broken off; updates and repairs are tried in test_offline.py
    "files": (lambda *given: islice(files.faults(*given), 1), 1),
}


@pytest.mark.parametrize("name", SHORT)
def test_nothing_is_lost(name: str, playwright: Playwright, dist: Path, modules: Path, tmp_path: Path) -> None:
    part, rounds = SHORT[name]
    found = list(part(playwright, tmp_path, (dist, modules), rounds))
    assert found
    assert {each.what: each.losses for each in found if each.losses} == {}
    assert all(each.rounds for each in found)


def test_a_loss_fails_the_command(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    def part(*_: Any) -> Iterator[Fault]:
        yield Fault("a note", 2, ["round 2: gone"], "1 step")

    monkeypatch.setattr(faults.table, "PARTS", {"killed": part})
    monkeypatch.setattr(faults.table, "sync_playwright", nullcontext)
    monkeypatch.setattr("dist.build", Path)
    monkeypatch.setattr("dist.modules", Path)
    assert faults.table.show([], 2) == 1
    assert "| a note          | 2      | 1      | 1 step    |" in capsys.readouterr().out
