"""One line of the table."""

from dataclasses import dataclass


@dataclass(frozen=True)
class Row:
    """What was measured, against what, in the same run.

    ``ratio`` is ours over the other's, so that less is better; ``limit`` is the most that it may be.
    """

    what: str
    ours: str
    other: str
    ratio: float
    limit: float

    @property
    def holds(self) -> bool:
        return self.ratio <= self.limit


def milliseconds(seconds: float) -> str:
    return f"{seconds * 1e3:.0f} ms" if seconds > 0.1 else f"{seconds * 1e3:.2g} ms"
