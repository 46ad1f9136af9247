"""The opening: the window of a putt as errors of start and of roll, quick enough to be laid out for every putt.

Around the read that dies over the hole and three firmer ones the window is laid as smooth curves: the start that goes
over the hole's centre, how much of the hole's greatest speed the ball has there, and how far aside a turned start passes.
The hole then takes a ball aside of the centre by R sqrt(1 - v/v_max) (Penner's rule, see ``putt.hole``), and a ball that
stops within it: with a shorter roll the stop draws back along the line to the ball, with a turned start it swings.
"""

from cmath import phase, rect
from collections.abc import Sequence
from dataclasses import dataclass, replace
from math import cos, pi, sin, sqrt
from typing import NamedTuple

from pycore.constants import CAPTURE_SPEED, HOLE_RADIUS
from pycore.putt.hole import capture_speed
from pycore.putt.putt import Putt
from pycore.putt.solve import Read, paced
from pycore.roots import zero

FIRMNESS = (0.0, 0.35, 0.7, 1.0)  # of the greatest speed that the hole takes; the paces at which the curves are laid
TURNED = 1e-3  # rad; a turn that shows how far aside it leads
NODES = 12  # paces over which a spread is laid
REACH = 5.0  # standard deviations; nothing worth counting lies farther out
EXACT = 1e-6  # of the bracket; how exactly the firmest pace is found

_ANGLES = [pi * (i + 0.5) / NODES for i in range(NODES)]
_PLACES = [(-cos(angle), sin(angle) * pi / NODES) for angle in _ANGLES]


class Row(NamedTuple):
    """At one error of roll ``length`` (fraction): its weight, and the lowest and highest error of start (rad) that holes."""

    length: float
    weight: float
    low: float
    high: float


def laid(low: float, high: float) -> list[tuple[float, float]]:
    """Places between two ends and their weights, closer at the ends."""
    middle, half = (low + high) / 2, (high - low) / 2
    return [(middle + half * place, weight * half) for place, weight in _PLACES]


@dataclass(frozen=True)
class Opening:
    """Errors of roll (fraction of its length) and start (rad), from the read, that hole.

    ``dying`` is the error of roll with which the ball dies over the hole's centre, ``shortest`` and ``longest`` are the
    ends. ``aim``, ``speed`` and ``swing`` are curves over the root of the roll beyond dying; ``drawn`` is how far (m) the
    stop of a dying ball moves along the line by roll, ``swung`` how far it moves by start (along, and left).
    """

    shortest: float
    dying: float
    longest: float
    drawn: float
    swung: complex
    aim: "Curve"
    speed: "Curve"
    swing: "Curve"

    def edges(self, length: float) -> tuple[float, float]:
        """Lowest and highest error of start (rad) that holes with an error of roll between the ends."""
        if length < self.dying:
            short, swing = self.drawn * (length - self.dying), abs(self.swung)
            half = sqrt(max(0.0, (HOLE_RADIUS * swing) ** 2 - (short * self.swung.imag) ** 2)) / swing**2
            middle = self.aim.at(0.0) - short * self.swung.real / swing**2
        else:
            u = sqrt(length - self.dying)
            half = HOLE_RADIUS * sqrt(max(0.0, 1 - self.speed.at(u))) / self.swing.at(u)
            middle = self.aim.at(u)
        return middle - half, middle + half

    def rows(self, bias: float, sd: float, aside: float = 0.0) -> list[Row]:
        """The opening laid out where a roll of this bias and spread may be; starts are measured from ``aside`` (rad)."""
        low, high = max(self.shortest, bias - REACH * sd), min(self.longest, bias + REACH * sd)
        if low >= high:
            low, high = self.shortest, self.longest
        rows = []
        for length, weight in laid(low, high):
            right, left = self.edges(length)
            rows.append(Row(length, weight, right - aside, left - aside))
        return rows


@dataclass(frozen=True)
class Curve:
    """The polynomial through some points, by Newton's divided differences."""

    places: Sequence[float]
    parts: Sequence[float]

    @classmethod
    def through(cls, places: Sequence[float], values: Sequence[float]) -> "Curve":
        """The curve through points, each at a place of its own."""
        parts = list(values)
        for order in range(1, len(parts)):
            for i in range(len(parts) - 1, order - 1, -1):
                parts[i] = (parts[i] - parts[i - 1]) / (places[i] - places[i - order])
        return cls(places, parts)

    def at(self, u: float) -> float:
        """The value at ``u``."""
        value = self.parts[-1]
        for place, part in zip(reversed(self.places[:-1]), reversed(self.parts[:-1]), strict=True):
            value = value * (u - place) + part
        return value


def opening(putt: Putt, found: Read) -> Opening | None:
    """The opening of ``putt``, whose read is ``found``; None where not even a dying ball comes to the hole."""
    slope, uphill = abs(putt.downhill), phase(-putt.downhill)
    # how far past the hole the fastest ball that it takes would run
    firmest = CAPTURE_SPEED**2 / (2 * putt.drag * max(0.1, 1 - putt.downhill.real / putt.rho))
    points = []
    swung, like = 0j, found
    for share in FIRMNESS:
        past = firmest * share**2
        meant = paced(replace(putt, past=past), like)
        if meant is None:
            break
        like = meant
        end = putt.roll(meant.launch, meant.aim + TURNED).before_rest(past)
        moved = complex(end.x - meant.hole.x, end.y - meant.hole.y) / TURNED
        if share:
            aside = abs((moved * rect(1, -meant.hole.heading)).imag)
            fast = meant.hole.speed / capture_speed(0.0, slope, meant.hole.heading - uphill)
        else:
            swung, aside, fast = moved, abs(moved), 0.0
        points.append(((meant.launch / found.launch) ** 2 - 1, meant.aim - found.aim, fast, aside))
    if len(points) < 2:
        return None
    dying = points[0][0]
    places = [sqrt(max(0.0, length - dying)) for length, *_ in points]
    aim, speed, swing = (Curve.through(places, [point[i] for point in points]) for i in (1, 2, 3))
    drawn = putt.distance / (1 + dying)
    shortest = dying - HOLE_RADIUS * abs(swung) / (abs(swung.imag) * drawn)
    return Opening(shortest, dying, dying + _fastest(speed, places[-1]) ** 2, drawn, swung, aim, speed, swing)


def _fastest(speed: Curve, firmest: float) -> float:
    """Where the hole no longer takes the ball; the firmest pace known where it still takes that."""

    def too_fast(u: float) -> float:
        return speed.at(u) - 1

    end = firmest if speed.at(firmest) > 1 else 1.1 * firmest
    return zero(too_fast, 0.0, end, too_fast(0.0), too_fast(end), EXACT) if too_fast(end) > 0 else firmest
