"""The short form of each part of ``python3 build faults``."""

from pathlib import Path

import pytest
from playwright.sync_api import Playwright

import faults.table
from faults.fault import Fault
from faults.table import PARTS

SHORT = {"killed": 1, "damaged": 6, "files": 1}


@pytest.mark.parametrize("name", PARTS)
def test_nothing_is_lost(name: str, playwright: Playwright, dist: Path, modules: Path, tmp_path: Path) -> None:
    found = list(PARTS[name](playwright, tmp_path, (dist, modules), SHORT[name]))
    assert found
    assert [each.losses for each in found if each.losses] == []
    assert all(each.rounds for each in found)


def test_a_loss_fails_the_command(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    fault = Fault("a note", 2, ["round 2: gone"], "1 step")
    monkeypatch.setattr(faults.table, "PARTS", {"killed": lambda *_: iter([fault])})
    monkeypatch.setattr("dist.build", lambda: Path())
    monkeypatch.setattr("dist.modules", lambda: Path())
    assert faults.table.show([], 2) == 1
    assert "| a note          | 2      | 1      | 1 step    |" in capsys.readouterr().out
