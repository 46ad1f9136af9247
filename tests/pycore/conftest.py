"""Figures from outside, as the files in tests/published give them."""

import csv
from collections.abc import Callable
from pathlib import Path

import pytest

PUBLISHED = Path(__file__).parent.parent / "published"
type Rows = list[dict[str, float]]


@pytest.fixture(scope="session")
def published() -> Callable[[str], Rows]:
    """Rows of a file of published figures; its head says where they are from. An empty place is left out."""

    def published(name: str) -> Rows:
        lines = [line for line in (PUBLISHED / f"{name}.csv").read_text().splitlines() if not line.startswith("#")]
        return [{key: float(value) for key, value in row.items() if value} for row in csv.DictReader(lines)]

    return published
