"""Surveys of invented greens: how wrong they are, whether their spreads hold, and whether one more reading helps where told."""

from math import tan

import numpy as np

from bench import independent
from prove import Proof, Row
from pycore.green.relief import bake
from pycore.green.surveyed import Surveyed
from pycore.green.walked import walked
from pycore.putt.line_doubt import spread
from pycore.putt.putt import Putt
from pycore.putt.solve import solve
from tests.invented_greens import MISPLACED, SIDE, invented, walk

SHORT = 2
SIDES = (3, 4, 5, 6)
ENOUGH = 20  # greens; what an interval holds on fewer is chance
PLACES, PUTTS = 40, 4
WITHIN = 1.96  # standard deviations; 95 % of a normal spread
MOST_RMS = {5: 0.65, 6: 0.5}  # %
STIMP_FT, PAST = 10.0, 0.3


def prove(cases: int = 60) -> Proof:
    errors: dict[int, list[float]] = {side: [] for side in SIDES}
    inside: dict[int, list[bool]] = {side: [] for side in SIDES}
    better, aims, apart = [], [], []
    for number in range(cases):
        green, chance = invented(number), np.random.default_rng(1000 + number)
        for side in SIDES:
            readings = green.read(walk(side), chance)
            found = walked(readings, MISPLACED)
            for place in chance.uniform(0, SIDE, (PLACES, 2)):
                tilt = found.survey.tilt(complex(*place))
                off = tilt.downhill - complex(*green.downhill(*place))
                errors[side] += off.real**2, off.imag**2
                inside[side] += abs(off.real) < WITHIN * tilt.spread, abs(off.imag) < WITHIN * tilt.spread
            if side == 4:
                better.append(_better(green, readings, found, chance))
            if side == 5:
                for _ in range(PUTTS):
                    aim, differs = _read(green, found, chance)
                    aims += aim
                    apart += differs
        yield (number + 1) / cases
    enough = cases >= ENOUGH
    rows = []
    for side in SIDES:
        rms = 100 * float(np.mean(errors[side])) ** 0.5
        rows.append(Row(f"{side * side} readings, rms error of each part", rms, high=MOST_RMS.get(side, np.inf), unit="%"))
        # nine readings over such a green: the spread says that it is not known, and how well that holds is for information
        low, high = (92, 98) if side > 3 and enough else (-np.inf, np.inf)
        rows.append(Row(f"{side * side} readings, 95 % intervals hold", 100 * float(np.mean(inside[side])), low, high, "%"))
    rows.append(Row("next beats a random place", 100 * float(np.mean(better)), 80, unit="%"))
    low, high = (90, 98) if enough else (-np.inf, np.inf)
    rows.append(Row("the aim's 95 % interval holds", 100 * float(np.mean(aims)), low, high, unit="%"))
    rows.append(Row("SciPy on the baked surface, at the hole", 1000 * max(apart, default=0.0), high=2, unit="mm"))
    return rows


def _better(green, readings, found, chance):
    """Whether the mean square error falls more with a reading at the first place told than at random ones, on the average."""
    grid = [complex(x, y) for x in np.linspace(0.5, 11.5, 8) for y in np.linspace(0.5, 11.5, 8)]
    truth = [complex(*green.downhill(place.real, place.imag)) for place in grid]

    def error(x, y):
        more = [*readings, *green.read([(x, y)], chance)]
        relief = walked(more, MISPLACED).relief
        return sum(abs(complex(*relief.at(p.real, p.imag)[1:]) - t) ** 2 for p, t in zip(grid, truth, strict=True))

    told = found.next[0]
    return error(told.real, told.imag) < np.mean([error(*chance.uniform(0, SIDE, 2)) for _ in range(5)])


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
    length, step = abs(hole - ball), 1e-4
    line = (hole - ball) / length

    def true(place):
        x, y = place.real, place.imag
        (right, _), (left, _) = green.downhill(x, y + step), green.downhill(x, y - step)
        return float(green.drop(x, y)), *map(float, green.downhill(x, y)), float(right - left) / (2 * step)

    surface = Surveyed(found.relief, ball, line)
    putt = Putt(length, surface, STIMP_FT, PAST)
    truth = solve(Putt(length, Surveyed(bake(true, -2 - 2j, 14 + 14j, 0.4, 0j), ball, line), STIMP_FT, PAST))
    own = solve(putt)
    if not own or not truth:
        return [], []
    sure = spread(putt, own, surface, found.survey)
    _, aim = independent.shoot(_Baked(STIMP_FT, surface), length, PAST)  # type: ignore[arg-type]
    return [abs(own.aim - truth.aim) < WITHIN * sure.aim], [length * abs(tan(own.aim) - tan(aim))]
