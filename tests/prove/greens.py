"""Reads on greens of stations, a third of them with slopes that cancel: SciPy's integrator rolls each over the hole's centre.

None is refused to whose hole a search over all aims and strengths finds a way.
"""

import random
from collections import Counter
from itertools import product
from math import hypot, radians

from scipy.optimize import least_squares

from bench import independent
from prove import Proof, Row
from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.putt.solve import NoPutt, read

SHORT = 30

type Stations = list[tuple[float, float, float]]
"""Place (m), slope (%) and fall (degrees) of each."""


def prove(cases: int = 3000) -> Proof:
    chance = random.Random(20261127)
    misses, refused, no_way = [], 0, 0
    kinds: Counter[str] = Counter()
    for case in range(cases):
        distance, stimp_ft = chance.uniform(0.5, 15), chance.uniform(6, 13)
        past = chance.choice([0.0, 0.3, chance.uniform(0, 0.6)])
        kind = (cancelling, drifting, wild)[case % 3]
        stations = kind(chance, distance)
        putt = Putt(distance, Surface(*(Station.measured(*each) for each in stations)), stimp_ft, past)
        green = independent.Green(stimp_ft, stations)
        found = read(putt)
        kinds[kind.__name__] += 1
        if isinstance(found, NoPutt):
            way = _is_reached(green, distance, past)
            refused += way
            no_way += not way
        else:
            misses.append(hypot(*independent.miss(green, distance, past, found.launch, found.aim)))
        yield case / cases
    return [
        *(Row(f"greens, {kind}", number) for kind, number in kinds.items()),
        Row("farthest from the hole's centre", max(misses) * 1e3, high=1, unit="mm"),
        Row("refused though a ball can stop at the hole", refused, high=0),
        Row("refused, and no ball can", no_way),
    ]


def _is_reached(green: independent.Green, distance: float, past: float) -> bool:
    """Whether some aim and strength brings a ball to rest as far past the hole as asked: tried all around, the best mended."""
    if hypot(*green.downhill(distance, 0.0)) > green.rho:
        return False
    level = (2 * 5 / 7 * independent.GRAVITY * green.rho * (distance + past)) ** 0.5

    def off(strike: tuple[float, float]) -> tuple[float, float]:
        return independent.miss(green, distance, past, strike[0] * level, strike[1])

    strikes = list(product((0.2, 0.4, 0.6, 0.8, 1, 1.25, 1.5, 2), map(radians, range(-175, 180, 10))))
    nearest = sorted(strikes, key=lambda strike: hypot(*off(strike)))[:20]
    bounds = ([0.01, -4], [4, 4])
    return any(hypot(*least_squares(off, strike, bounds=bounds).fun) < 1e-3 for strike in nearest)


def cancelling(chance: random.Random, distance: float) -> Stations:
    """Opposite falls, mirrored ones, and slopes that no eye could tell from level."""
    slope, fall = chance.uniform(0, 5), chance.choice([0.0, 90.0, 180.0, 270.0, chance.uniform(0, 360)])
    kind = chance.choice(["opposite", "mirrored", "tiny", "all tiny"])
    if kind == "opposite":
        # 21 to 11 has no mean at all as the engine weighs it, but for rounding
        times = chance.choice([1.0, 21 / 11, chance.uniform(1, 3)])
        return [(0.0, slope, fall), (distance, slope / times, fall + 180)]
    if kind == "mirrored":
        return [(distance / 3, slope, fall), (distance * 2 / 3, slope, chance.choice([180 - fall, -fall]))]
    tiny = [10 ** chance.uniform(-300, -9) for _ in range(2)]
    if kind == "tiny":
        return [(chance.uniform(0, distance), tiny[0], fall)]
    return [(0.0, tiny[0], fall), (distance, tiny[1], chance.uniform(0, 360))]


def drifting(chance: random.Random, distance: float) -> Stations:
    """A green whose slope and fall line change as greens do."""
    slope, fall = chance.uniform(0, 4), chance.uniform(0, 360)
    return [(x, min(8.0, abs(slope + chance.gauss(0, 1))), fall + chance.gauss(0, 30)) for x in _places(chance, distance)]


def wild(chance: random.Random, distance: float) -> Stations:
    """Slopes that have nothing to do with each other."""
    return [(x, chance.uniform(0, 5), chance.uniform(0, 360)) for x in _places(chance, distance)]


def _places(chance: random.Random, distance: float) -> list[float]:
    return [place / 100 for place in sorted(chance.sample(range(int(distance * 100)), chance.randint(2, 5)))]
