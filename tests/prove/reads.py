"""Reads on planes: SciPy's integrator rolls each over the hole's centre, and none is refused on which a ball can stop."""

import random
from math import hypot

from bench import independent
from prove import Proof, Row
from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.putt.solve import NoPutt, read

SHORT = 25


def prove(cases: int = 3000) -> Proof:
    chance = random.Random(20261126)
    misses, refused, runs_away = [], 0, 0
    for case in range(cases):
        distance, stimp_ft, past = chance.uniform(0.3, 20), chance.uniform(6, 14), chance.uniform(0, 0.6)
        slope = chance.choice([0.0, chance.uniform(0, 0.01), chance.uniform(0, 5), chance.uniform(0, 5)])
        fall = chance.choice([0.0, 90.0, 180.0, 270.0, chance.uniform(0, 360)])
        green = independent.Green(stimp_ft, [(0.0, slope, fall)])
        stops = slope / 100 < green.rho  # a slope less steep than friction
        found = read(Putt(distance, Surface(Station.measured(0, slope, fall)), stimp_ft, past))
        if isinstance(found, NoPutt):
            refused += stops
            runs_away += not stops
        else:
            misses.append(hypot(*independent.miss(green, distance, past, found.launch, found.aim)))
        yield case / cases
    return [
        Row("reads", len(misses)),
        Row("farthest from the hole's centre", max(misses) * 1e3, high=1, unit="mm"),
        Row("refused though a ball can stop", refused, high=0),
        Row("refused, too steep for any ball", runs_away),
    ]
