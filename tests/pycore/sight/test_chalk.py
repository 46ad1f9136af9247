"""Chalk against SciPy's path, which knows nothing of the engine's."""

import numpy as np
import pytest

from bench import independent
from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.sight.chalk import beside, places
from pycore.sight.lines import lines

MILLIMETRE = 1e-3
FOOT = 0.3048
GREENS = {
    "across": (10, 3.0, [(0, 2, 90)]),
    "down and left": (11, 6.0, [(0, 2.5, -60)]),
    "up": (9, 4.0, [(0, 3, 170)]),
    "double break": (10, 5.0, [(0, 2, 90), (2.5, 1, 0), (5, 2, 270)]),
}


@pytest.mark.parametrize(("stimp_ft", "distance", "stations"), GREENS.values(), ids=GREENS)
@pytest.mark.parametrize("which", ["read", "high", "low"])
def test_dots_lie_where_the_ball_rolls(stimp_ft, distance, stations, which):
    three = lines(Putt(distance, Surface(*(Station.measured(*station) for station in stations)), stimp_ft, 0.3))
    roll = three.read.roll if which == "read" else getattr(three, which)
    _, states = independent.roll(independent.Green(stimp_ft, stations), roll.start.speed, roll.start.heading)
    at = places(distance, FOOT)
    dots = beside(three.putt, roll, at)
    ahead = states[:, : int(np.argmax(states[0])) + 1]
    assert len(at) >= distance / FOOT - 1.2
    for place, dot in zip(at, dots, strict=True):
        if dot is not None:
            assert dot == pytest.approx(np.interp(place, ahead[0], ahead[1]), abs=MILLIMETRE)
    assert dots[:-1].count(None) == 0


def test_dots_end_before_the_hole():
    assert places(1.0, 0.25) == [0.25, 0.5, 0.75]
    assert places(1.06, 0.25)[-1] == 1.0
