"""The phone as a level: its two tilts, held in one or more turned positions, to slope, fall line and its own bias.

Up in the phone's axes (x to its right edge, y to its top, z out of the screen) is (-cos b sin g, sin b, cos b cos g) for
the angles beta b and gamma g of the browser. Its first two parts are the tilt. Turning the phone clockwise turns the
tilt anticlockwise in the phone and leaves the bias where it is: m_k = s r_k + b, in complex numbers, and least squares
over the positions gives both. Two positions half a turn apart are the surveyor's reversal, b = (m_1 + m_2) / 2.
"""

from cmath import exp as turn
from collections.abc import Sequence
from dataclasses import dataclass
from math import asin, cos, degrees, hypot, radians, sin, sqrt

from pycore.errors import Refusal
from pycore.units import percent_from_slope, slope_from_angle_deg, slope_from_percent

ROUNDING = slope_from_angle_deg(0.1) / sqrt(12)  # browsers round to 0.1 degree: spread of an even error that wide
SEAT = slope_from_angle_deg(0.15)  # how alike a phone comes to lie each time it is put down, turned or not; assumed
DRIFT = slope_from_angle_deg(0.2)  # how far the bias wanders in a day, with warmth and case; assumed
WARMS = 1 / 8  # days in which a phone that comes into the sun has wandered as far as in the day; assumed
UNTURNED = slope_from_angle_deg(0.5)  # bias of a phone never turned: PubMed 27632853, -0.4 to 1.2 degrees on average
STILL = slope_from_angle_deg(0.3)  # a phone that lies still varies less than this
FLAT = sin(radians(20))  # tilt of a phone that still lies on a green, rather than stands
AGREE = slope_from_percent(
    1.2
)  # positions that differ by more were not on the same spot: seats alone do that once in a hundred
BELIEVABLE = slope_from_angle_deg(4)  # a larger bias is a phone that was not turned, or not flat


@dataclass(frozen=True)
class Reading:
    """Angles (rad) that the phone showed for ``weight`` s in the position ``turned`` (rad, clockwise from the first)."""

    beta: float
    gamma: float
    turned: float
    weight: float

    @property
    def up(self) -> complex:
        """Up in the phone's own plane, x + iy."""
        return complex(-cos(self.beta) * sin(self.gamma), sin(self.beta))


@dataclass(frozen=True)
class Level:
    """What the positions say.

    ``downhill`` is the slope (rise over run) with its direction, x + iy in the phone's axes of the first position; ``bias``
    (rad) is about x and about y; ``sd`` (rise over run) is that of the slope in any direction; ``disagreement`` (rise over
    run) is that of the positions, None where they cannot.
    """

    downhill: complex
    bias: tuple[float, float]
    sd: float
    disagreement: float | None


def level(readings: Sequence[Reading], bias: tuple[float, float] | None = None, age_days: float = 0.0) -> Level:
    """The level of ``readings``; with fewer than two positions the ``bias`` (rad) found ``age_days`` ago is taken off, if any.

    Raises
    ------
    Refusal : ``upright``, ``moving`` or ``disagree``.
    """
    places = sorted({reading.turned for reading in readings})
    tilts = [_tilt_of([reading for reading in readings if reading.turned == place]) for place in places]
    error = hypot(ROUNDING, SEAT)
    if len(places) == 1:
        known = _tilt(*bias) if bias else 0j
        unzeroed = min(UNTURNED, hypot(error / sqrt(2), _drift(age_days))) if bias else UNTURNED
        return _level(tilts[0] - known, bias or (0.0, 0.0), hypot(error, unzeroed), None)
    turns = [turn(1j * place) for place in places]
    count = len(places)
    mean, mean_turn = sum(tilts) / count, sum(turns) / count
    spread = 1 - abs(mean_turn) ** 2
    crossed = sum(tilt * each.conjugate() for tilt, each in zip(tilts, turns, strict=True)) / count
    tilt = (crossed - mean_turn.conjugate() * mean) / spread
    own = mean - tilt * mean_turn
    off = [measured - tilt * each - own for measured, each in zip(tilts, turns, strict=True)]
    if abs(own) > BELIEVABLE:
        raise Refusal("disagree", "the positions differ by more than a phone is ever off: turn it on the same spot, as drawn")
    disagreement = None
    if count > 2:
        disagreement = max(map(abs, off)) * 2
        if disagreement > AGREE:
            worst = max(range(count), key=lambda i: abs(off[i]))
            raise Refusal("disagree", _disagreement(count, degrees(places[worst]), disagreement))
        # four unknowns are taken out of two numbers a position
        error = max(error, sqrt(sum(abs(each) ** 2 for each in off) / (2 * count - 4)))
    beta = asin(own.imag)
    return _level(tilt, (beta, asin(-own.real / cos(beta))), error / sqrt(count * spread), disagreement)


def _drift(days: float) -> float:
    """How far (rise over run) the bias may have wandered in ``days``."""
    return DRIFT * max(min(1.0, days / WARMS), sqrt(days))


def _tilt_of(readings: Sequence[Reading]) -> complex:
    """The tilt of one position: the mean over the time that each reading was held."""
    ups = [(reading.up, reading.weight) for reading in readings]
    total = sum(weight for _, weight in ups)
    mean = sum(up * weight for up, weight in ups) / total
    if any(cos(reading.beta) * cos(reading.gamma) < 0 for reading in readings):
        raise Refusal("upright", "the phone lies on its face or stands: lay it on its back")
    if abs(mean) > FLAT:
        raise Refusal("upright", "the phone stands: lay it flat on its back")
    if sqrt(sum(weight * abs(up - mean) ** 2 for up, weight in ups) / total) > STILL:
        raise Refusal("moving", "the phone moves: let go of it and wait")
    return mean


def _level(tilt: complex, bias: tuple[float, float], sd: float, disagreement: float | None) -> Level:
    return Level(-tilt / sqrt(1 - abs(tilt) ** 2), bias, sd, disagreement)


def _tilt(about_x: float, about_y: float) -> complex:
    return Reading(about_x, about_y, 0.0, 0.0).up


def _disagreement(count: int, worst_deg: float, disagreement: float) -> str:
    if count == 3:
        return f"the positions differ by {percent_from_slope(disagreement):.1f} %: turn it on the same spot, the same side down"
    return (
        f"the position turned {worst_deg:.0f} degrees is {percent_from_slope(disagreement):.1f} % off the others: lay it again"
    )
