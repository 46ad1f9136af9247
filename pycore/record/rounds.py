"""Rounds: putts gained on the published expectation, by distance, and how misses leave.

A hole counts by its first putt: what was expected from there less the putts taken (M. Broadie, Interfaces 42(2):146-165,
2012). A hole that was holed from off the green has neither; one that was not finished is left out, and counted.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import hypot, radians, sin, sqrt
from typing import Literal

from pycore.record.published import Expected, Yardstick, expected
from pycore.stats.intervals import Estimate, student
from pycore.units import FOOT

# Of the first putt; the trade's usual steps, assumed
BANDS_M = tuple(pairwise(feet * FOOT for feet in (0.0, 3.0, 5.0, 8.0, 12.0, 20.0, 40.0, 200.0)))
PRIOR_PUTTS = 10  # how many putts the published spread counts for beside the player's own
FEWEST = 18  # first putts on either side of a change, below which none is looked for
BEYOND = 1.39  # times a 95 % interval: the same for eight changes at once (Bonferroni)
ACROSS = 0.2  # sine of the fall from the line; a green that falls straighter has no high side

Side = Literal["left", "right"]
Leave = Literal["short", "long"]


@dataclass(frozen=True)
class RoundPutt:
    """One putt of a round: ``distance`` in m or None, ``fall`` (degrees clockwise from the line) where it is known."""

    distance: float | None
    holed: bool
    side: Side | None = None
    length: Leave | None = None
    fall_deg: float | None = None

    @property
    def high(self) -> bool | None:
        """Whether a miss passed on the high side; None where side or fall are not known, or the green has none."""
        across = sin(radians(self.fall_deg)) if self.fall_deg is not None else 0.0
        if self.side is None or abs(across) < ACROSS:
            return None
        return (self.side == "left") == (across > 0)  # a green that falls right is high on the left


@dataclass(frozen=True)
class Hole:
    """The putts of one hole, in their order."""

    number: int
    putts: tuple[RoundPutt, ...]

    @property
    def finished(self) -> bool:
        """Whether the last putt was holed, or none was needed."""
        return not self.putts or self.putts[-1].holed


@dataclass(frozen=True)
class First:
    """A first putt of a finished hole: from where (m), how many putts it took, and what was expected."""

    hole: int
    distance: float
    taken: int
    expected: Expected

    @property
    def gained(self) -> float:
        """Putts gained on it."""
        return self.expected.putts - self.taken


def firsts(holes: Sequence[Hole], against: Yardstick) -> list[First]:
    """The first putts of the finished holes on which one was needed."""
    found = []
    for hole in holes:
        if hole.putts and hole.finished:
            distance = hole.putts[0].distance
            assert distance is not None, "the door asks for it"
            found.append(First(hole.number, distance, len(hole.putts), expected(distance, against)))
    return found


def gained(putts: Sequence[First]) -> Estimate:
    """Putts gained in all, with the 95 % interval of what so many such putts gain.

    The spread is the player's own about the mean and the published one, the latter counting as ``PRIOR_PUTTS`` putts.
    """
    n = len(putts)
    if not n:
        return Estimate(0.0, 0.0, 0.0)
    total = sum(each.gained for each in putts)
    off = sum((each.gained - total / n) ** 2 for each in putts)
    usual = sum(each.expected.variance for each in putts) / n
    free = n - 1 + PRIOR_PUTTS
    reach = student(free) * sqrt(n * (off + PRIOR_PUTTS * usual) / free)
    return Estimate(total, total - reach, total + reach)


@dataclass(frozen=True)
class Turn:
    """Putts gained in eighteen holes before and now, the 95 % interval of how much that has become more, and whether it is
    beyond chance, several being looked at."""

    before: float
    now: float
    more: Estimate
    beyond_chance: bool


def turned(before: Sequence[First], now: Sequence[First]) -> Turn | None:
    """What has changed from some first putts to others; None where either are too few."""
    if min(len(before), len(now)) < FEWEST:
        return None
    (was, was_reach), (is_now, reach) = (
        (18 * each.value / len(of), 18 * (each.high - each.value) / len(of))
        for of, each in ((before, gained(before)), (now, gained(now)))
    )
    more, off = is_now - was, hypot(was_reach, reach)
    return Turn(was, is_now, Estimate(more, more - off, more + off), abs(more) > BEYOND * off)


def by_distance(putts: Sequence[First]) -> list[tuple[float, float, list[First]]]:
    """First putts in each band of distance (m, m) that has any."""
    filled = [(low, high, [each for each in putts if low <= each.distance < high]) for low, high in BANDS_M]
    return [band for band in filled if band[2]]


def misses(holes: Sequence[Hole]) -> list[RoundPutt]:
    """The putts that missed."""
    return [putt for hole in holes for putt in hole.putts if not putt.holed]
