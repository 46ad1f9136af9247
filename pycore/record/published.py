"""Shares that were published, to lay a player's own beside.

One-putt shares of the tour and of 90-shooters, and the tour's three-putt shares: M. Broadie, Every Shot Counts, 2014
(secondary; 6, 7 and 9 ft, the 90-shooters' and the three-putt shares from memory). Expected putts follow as 2 - one-putt +
three-putt share. Between the distances all is a straight line; three-putts fall to none at 3 ft; beyond the last distance
expected putts go on with their last slope. What a 90-shooter does beyond 30 ft and three-putts is not published: taken as
the tour's in proportion to its share at 30 ft, and as ``AMATEUR_THREE`` times the tour's (our assumptions).
"""

from bisect import bisect_right
from collections.abc import Sequence
from typing import Literal, NamedTuple

from pycore.units import FOOT

type Points = Sequence[tuple[float, float]]
Yardstick = Literal["tour", "amateur"]

TOUR_SOURCE = "M. Broadie, Every Shot Counts, 2014 (secondary)"
# ft: share of one putt
TOUR_FT: Points = (
    (0, 1.0), (2, 0.99), (3, 0.96), (4, 0.88), (5, 0.77), (6, 0.66), (7, 0.58), (8, 0.50), (9, 0.45), (10, 0.40), (15, 0.23),
    (20, 0.15), (30, 0.07), (40, 0.04), (50, 0.03), (60, 0.02),
)  # fmt: skip
TOUR_THREE_FT: Points = ((3, 0.0), (10, 0.01), (20, 0.02), (30, 0.05), (40, 0.10), (50, 0.17), (60, 0.23))
AMATEUR_FT: Points = (
    (0, 1.0), (2, 0.95), (3, 0.84), (4, 0.65), (5, 0.50), (6, 0.39), (7, 0.32), (8, 0.27), (9, 0.23), (10, 0.20), (15, 0.11),
    (20, 0.06), (30, 0.02), (40, 0.011), (50, 0.009), (60, 0.006),
)  # fmt: skip
AMATEUR_THREE = 2.0  # times the tour's; assumed
TOUR = [(feet * FOOT, share) for feet, share in TOUR_FT if feet in (2, 3, 5, 8, 10)]

BERRY_SOURCE = "D. Berry 1996, in A. Gelman and D. Nolan, Teaching Statistics 24(3):93-95, 2002"
_BERRY = (
    (2, 1443, 1346), (3, 694, 577), (4, 455, 337), (5, 353, 208), (6, 272, 149), (7, 256, 136), (8, 240, 111),
    (9, 217, 69), (10, 200, 67), (11, 237, 75), (12, 202, 52), (13, 192, 46), (14, 174, 54), (15, 167, 28),
    (16, 201, 27), (17, 195, 31), (18, 191, 33), (19, 147, 20), (20, 152, 24),
)  # fmt: skip
BERRY = [(feet * FOOT, made / tries) for feet, tries, made in _BERRY]


class Expected(NamedTuple):
    """What is expected of a first putt: share of one putt, share of three, and putts."""

    one: float
    three: float
    putts: float

    @property
    def variance(self) -> float:
        """Of the number of putts."""
        off = self.putts - 2
        return max(0.0, self.one + self.three - off * off)


def expected(distance_m: float, against: Yardstick) -> Expected:
    """What the yardstick's players do from ``distance_m`` (m)."""
    feet = distance_m / FOOT
    points, times = (TOUR_FT, 1.0) if against == "tour" else (AMATEUR_FT, AMATEUR_THREE)
    one, three = _along(points, feet), times * _along(TOUR_THREE_FT, feet)
    putts = 2 - one + three
    return Expected(max(0.0, one), min(1.0, max(0.0, three)), putts)


def _along(points: Points, x: float) -> float:
    """The straight line between ``points`` at ``x``: the first value before them, their last slope beyond."""
    if x <= points[0][0]:
        return points[0][1]
    i = min(bisect_right(points, x, key=lambda point: point[0]), len(points) - 1)
    (a, low), (b, high) = points[i - 1], points[i]
    return low + (high - low) * (x - a) / (b - a)
