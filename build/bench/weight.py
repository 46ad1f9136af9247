"""What a first visit downloads."""

from pathlib import Path

import offline
from bench.row import Row


def rows(folder: Path) -> list[Row]:
    files = {path.relative_to(folder).as_posix(): path.read_bytes() for path in folder.rglob("*") if path.is_file()}
    total = sum(offline.weights(files).values())
    return [Row("first visit, as brotli", _mb(total), f"budget {_mb(offline.BUDGET)}", total / offline.BUDGET, 1)]


def _mb(size: int) -> str:
    return f"{size / 1e6:.2f} MB"
