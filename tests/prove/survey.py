"""Surveys of invented greens: how wrong they are, whether their spreads hold, and whether one more reading helps where told."""

from dataclasses import dataclass, field, replace
from functools import partial
from math import tan

import numpy as np

from bench import independent
from prove import Proof, Row
from pycore.green.relief import bake
from pycore.green.survey import Survey, survey
from pycore.green.surveyed import Surveyed
from pycore.green.walked import walked
from pycore.putt.line_doubt import spread
from pycore.putt.putt import Putt
from pycore.putt.solve import solve
from tests import height_lines
from tests.invented_greens import MISPLACED, SIDE, Invented, invented, walk

SHORT = 2
SIDES = (3, 4, 5, 6)
ENOUGH = 20  # greens; what an interval holds on fewer is chance
PLACES, PUTTS = 40, 4
WITHIN = 1.96  # standard deviations; 95 % of a normal spread
MOST_RMS = {5: 0.65, 6: 0.5}  # %
CENTIMETRE = 0.01
STIMP_FT, PAST = 10.0, 0.3


@dataclass
class Tally:
    """What one green has shown: by the side of its walk square errors of parts of the tilt and whether their intervals held,
    at 0 those of a walk with a reading taken the wrong way round; whether the told place was the better one; whether the
    aims' intervals held; how far (m) SciPy's aims are off at the hole and height lines from their heights; and pieces of
    height lines that are crossed by others."""

    errors: dict[int, list[float]] = field(default_factory=lambda: {side: [] for side in (*SIDES, 0)})
    inside: dict[int, list[bool]] = field(default_factory=lambda: {side: [] for side in (*SIDES, 0)})
    better: bool = False
    aims: list[bool] = field(default_factory=list)
    apart: list[float] = field(default_factory=list)
    heights: float = 0.0
    crossed: int = 0


def prove(cases: int = 60, first: int = 0) -> Proof:
    tallies = []
    for number in range(first, first + cases):
        tallies.append(tally(number))
        yield (number + 1 - first) / cases
    return rows(tallies)


def tally(number: int) -> Tally:
    """What the invented green of this number shows."""
    green, chance, told = invented(number), np.random.default_rng(1000 + number), Tally()
    for side in SIDES:
        readings = green.read(walk(side), chance)
        found = walked(readings, MISPLACED)
        _compare(green, found.survey, chance.uniform(0, SIDE, (PLACES, 2)), told, side)
        if side == 4:
            told.better = _better(green, readings, found, chance)
        if side == 5:
            for _ in range(PUTTS):
                aim, differs = _read(green, found, chance)
                told.aims += aim
                told.apart += differs
            told.heights = height_lines.farthest(found.contours(CENTIMETRE), partial(_height, found.survey))
            told.crossed = height_lines.crossed(found.contours(CENTIMETRE))
            turned = chance.integers(len(readings))
            readings[turned] = replace(readings[turned], gradient=-readings[turned].gradient)
            _compare(green, survey(readings, MISPLACED), chance.uniform(0, SIDE, (PLACES, 2)), told, 0)
    return told


def _compare(green: Invented, found: Survey, places: np.ndarray, told: Tally, side: int) -> None:
    for place in places:
        tilt = found.tilt(complex(*place))
        off = tilt.downhill - complex(*green.downhill(*place))
        told.errors[side] += off.real**2, off.imag**2
        told.inside[side] += abs(off.real) < WITHIN * tilt.spread, abs(off.imag) < WITHIN * tilt.spread


def rows(tallies: list[Tally]) -> list[Row]:
    """The table of what greens have shown."""

    def every(name: str, side: int | None = None) -> list[float]:
        return [each for one in tallies for each in (getattr(one, name) if side is None else getattr(one, name)[side])]

    enough = len(tallies) >= ENOUGH
    found = []
    for side in (*SIDES, 0):
        rms = 100 * float(np.mean(every("errors", side))) ** 0.5
        what = f"{side * side} readings" if side else "25, one the wrong way round"
        found.append(Row(f"{what}, rms error of each part", rms, high=MOST_RMS.get(side or 5, np.inf), unit="%"))
        # nine readings over such a green: the spread says that it is not known, and how well that holds is for information
        low, high = (92, 98) if side != 3 and enough else (-np.inf, np.inf)
        held = 100 * float(np.mean(every("inside", side)))
        found.append(Row(f"{what}, 95 % intervals hold", held, low, high, "%"))
    better = 100 * float(np.mean([one.better for one in tallies]))
    found.append(Row("next beats a random place", better, 80 if enough else 0, unit="%"))
    low, high = (90, 98) if enough else (-np.inf, np.inf)
    found.append(Row("the aim's 95 % interval holds", 100 * float(np.mean(every("aims"))), low, high, unit="%"))
    found.append(Row("SciPy on the baked surface, at the hole", 1000 * max(every("apart"), default=0.0), high=2, unit="mm"))
    found.append(Row("height lines, off their heights", 1000 * max(one.heights for one in tallies), high=1, unit="mm"))
    found.append(Row("pieces of height lines that are crossed", sum(one.crossed for one in tallies), high=0))
    return found


def _better(green, readings, found, chance):
    """Whether the mean square error falls more with a reading at the first place told than at random ones, on the average."""
    grid = [complex(x, y) for x in np.linspace(0.5, 11.5, 8) for y in np.linspace(0.5, 11.5, 8)]
    truth = [complex(*green.downhill(place.real, place.imag)) for place in grid]

    def error(x, y):
        more = [*readings, *green.read([(x, y)], chance)]
        relief = walked(more, MISPLACED).relief
        return sum(abs(complex(*relief.at(p.real, p.imag)[1:]) - t) ** 2 for p, t in zip(grid, truth, strict=True))

    told = found.next[0]
    return bool(error(told.real, told.imag) < np.mean([error(*chance.uniform(0, SIDE, 2)) for _ in range(5)]))


def _height(survey, x, y):
    return -survey.drop(complex(x, y))


class _Baked(independent.Green):
    """The relief as a green of the independent solver."""

    def downhill(self, x, y):
        return self.stations.downhill(x, y)  # type: ignore[attr-defined]


def _read(green, found, chance):
    """Whether the aim's interval holds the aim on the true green, and how far (m) SciPy's aim is off at the hole."""
    while True:
        ball, hole = (complex(*chance.uniform(1, SIDE - 1, 2)) for _ in range(2))
        if 1.5 < abs(hole - ball) < 6:
            break
    length = abs(hole - ball)
    line = (hole - ball) / length

    def true(place):
        return float(green.drop(place.real, place.imag))

    surface = Surveyed(found.relief, ball, line)
    putt = Putt(length, surface, STIMP_FT, PAST)
    truth = solve(Putt(length, Surveyed(bake(true, -2 - 2j, 14 + 14j, 0.2, 0j), ball, line), STIMP_FT, PAST))
    own = solve(putt)
    if not own or not truth:
        return [], []
    sure = spread(putt, own, surface, found.survey)
    _, aim = independent.shoot(_Baked(STIMP_FT, surface), length, PAST)  # type: ignore[arg-type]
    return [abs(own.aim - truth.aim) < WITHIN * sure.aim], [length * abs(tan(own.aim) - tan(aim))]
