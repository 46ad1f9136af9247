"""Putts on a surveyed green that practice wants."""

from cmath import phase, rect
from collections.abc import Iterator
from dataclasses import dataclass, replace
from math import degrees, pi, radians, sqrt
from typing import Literal

from pycore.green.surveyed import Surveyed
from pycore.green.walked import EDGE, Walked
from pycore.units import percent_from_slope, slope_from_percent

Side = Literal["left", "right", "none"]
Way = Literal["up", "down", "across"]

DIRECTIONS = 24  # ways from a hole in which a ball is tried
LENGTHS = 3  # distances that are tried between the shortest and the longest
STRAIGHT = slope_from_percent(0.3)  # across the line; a putt on less does not break to speak of
DIAGONAL = radians(45)
MOST = 10  # putts found at most
APART = 0.12  # of the green's longer side; nearer than that, two putts are the same


@dataclass(frozen=True)
class Want:
    """Shortest and longest (m), flattest and steepest (rise over run), side and way; None where any will do."""

    distance: tuple[float, float]
    slope: tuple[float, float]
    side: Side | None
    way: Way | None


@dataclass(frozen=True)
class Found:
    """A putt: ball and hole on the map, its one tilt (in the putt's axes), and the spread of each of the tilt's parts."""

    ball: complex
    hole: complex
    tilt: complex
    sd: float

    @property
    def slope_percent(self) -> float:
        """Slope, per cent."""
        return percent_from_slope(abs(self.tilt))

    @property
    def fall_deg(self) -> float:
        """Where it falls, degrees clockwise from the line."""
        return -degrees(phase(self.tilt)) % 360


def side(tilt: complex) -> Side:
    """The side to which a ball curves."""
    if abs(tilt.imag) < STRAIGHT:
        return "none"
    return "left" if tilt.imag > 0 else "right"


def way(tilt: complex) -> Way:
    """Whether a putt runs down, up or across."""
    off = abs(phase(tilt))
    return "down" if off <= DIAGONAL else "up" if off >= pi - DIAGONAL else "across"


def find(green: Walked, want: Want, hole: complex | None) -> list[Found]:
    """Up to ``MOST`` putts as wanted, spread over the green, the best known first."""
    fitting = sorted(_fitting(green, want, hole), key=lambda found: found.sd)
    chosen: list[Found] = []
    for each in fitting:
        if all(_apart(each, other) > APART * green.side for other in chosen):
            chosen.append(each)
        if len(chosen) == MOST:
            break
    return sorted((_sure(green, each) for each in chosen), key=lambda found: found.sd)


def _fitting(green: Walked, want: Want, hole: complex | None) -> Iterator[Found]:
    shortest, longest = want.distance
    for at in [hole] if hole is not None else green.drawn:
        for k in range(LENGTHS if longest > shortest else 1):
            length = shortest + (longest - shortest) * (k + 0.5) / LENGTHS if longest > shortest else shortest
            for turn in range(DIRECTIONS * (3 if hole is not None else 1)):
                line = rect(1.0, 2 * pi * turn / (DIRECTIONS * (3 if hole is not None else 1)))
                ball = at - length * line
                if green.outside(ball) > EDGE or green.outside(at) > EDGE:
                    continue
                mean = Surveyed(green.relief, ball, line).mean(length)
                tilt = rect(mean.slope, mean.downhill)
                if (
                    want.slope[0] <= abs(tilt) <= want.slope[1]
                    and want.side in (None, side(tilt))
                    and want.way in (None, way(tilt))
                ):
                    yield Found(ball, at, tilt, _about(green, (ball + at) / 2))


def _about(green: Walked, place: complex) -> float:
    """About how well the tilt at a place is known: as at the nearest place drawn."""
    nearest = min(range(len(green.drawn)), key=lambda i: abs(green.drawn[i] - place))
    return sqrt(green.doubt[2 * nearest][2 * nearest])


def _sure(green: Walked, found: Found) -> Found:
    """With the spread of this putt's own tilt."""
    return replace(found, sd=green.mean_sd(found.ball, found.hole))


def _apart(one: Found, other: Found) -> float:
    """How far apart two putts are: ball from ball and hole from hole, m."""
    return (abs(one.ball - other.ball) + abs(one.hole - other.hole)) / 2
