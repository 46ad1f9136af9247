"""How far back a player swings for a launch speed, from the player's own strokes."""

from collections.abc import Sequence
from dataclasses import dataclass
from math import sqrt

from pycore.errors import Refusal

FEWEST = 3  # two fix the line, and only a third tells how well it holds
DIFFERENT = 0.1  # of the mean; the launch speeds have to be spread over this much to carry a line


@dataclass(frozen=True)
class LengthFit:
    """length = start + slope * launch, m and m/s; ``residual`` is the strokes' spread about it, m.

    A pendulum's stroke is proportional to the launch (Grober, arXiv:0903.1762); a player's may have a start beside.
    """

    start: float
    slope: float
    residual: float
    slowest: float
    fastest: float

    def at(self, launch: float) -> float:
        """Length of the backswing for ``launch``."""
        return self.start + self.slope * launch


def fit(lengths: Sequence[float], launches: Sequence[float]) -> LengthFit:
    """Least squares. Raises Refusal where the strokes are too few or too much alike, or shorter for more speed."""
    n = len(lengths)
    if n < FEWEST:
        message = f"strokes has {n}; a length takes {FEWEST} or more of your own strokes"
        raise Refusal("too_few", message, "strokes", n, FEWEST, None, "entries")
    mean, middle = sum(launches) / n, sum(lengths) / n
    if max(launches) - min(launches) < DIFFERENT * mean:
        raise Refusal(
            "too_alike", "strokes all roll about as far; a length takes short and long ones, a third longer at least", "strokes"
        )
    spread = sum((v - mean) ** 2 for v in launches)
    slope = sum((v - mean) * (length - middle) for v, length in zip(launches, lengths, strict=True)) / spread
    if slope <= 0:
        raise Refusal("no_fit", "strokes roll no farther from a longer backswing; measure them again", "strokes")
    start = middle - slope * mean
    off = sum((length - start - slope * v) ** 2 for v, length in zip(launches, lengths, strict=True))
    return LengthFit(start, slope, sqrt(off / (n - 2)), min(launches), max(launches))
