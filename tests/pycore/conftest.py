"""Figures from outside, as the files in tests/published give them, and the door, asked."""

import csv
import json
from collections.abc import Callable
from pathlib import Path

import pytest

from pycore.api import answer

PUBLISHED = Path(__file__).parent.parent / "published"
type Rows = list[dict[str, float]]


@pytest.fixture(scope="session")
def published() -> Callable[[str], Rows]:
    """Rows of a file of published figures; its head says where they are from. An empty place is left out."""

    def published(name: str) -> Rows:
        lines = [line for line in (PUBLISHED / f"{name}.csv").read_text().splitlines() if not line.startswith("#")]
        return [{key: float(value) for key, value in row.items() if value} for row in csv.DictReader(lines)]

    return published


@pytest.fixture
def engine_ask() -> Callable:
    """What the door answers."""

    def engine_ask(name, **fields):
        reply = json.loads(answer(json.dumps({"ask": name, **fields})))
        assert reply["ok"], reply
        return reply["value"]

    return engine_ask


@pytest.fixture
def refused() -> Callable:
    """What the door says when it refuses."""

    def refused(name, **fields):
        reply = json.loads(answer(json.dumps({"ask": name, **fields})))
        assert not reply["ok"], reply
        return reply

    return refused
