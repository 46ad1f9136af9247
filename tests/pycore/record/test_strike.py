"""From a stop back to the strike: against the roll itself, and against balls that SciPy rolled."""

from math import inf, radians

import pytest

from bench import independent
from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.record.strike import strike_to

TENTH_MILLIMETRE_PER_S = 1e-4
HUNDREDTH_DEGREE = radians(0.01)
PLANE = [(0.0, 2.0, 60.0)]
UPHILL = [(0.0, 4.0, 180.0)]
BENT = [(0.0, 1.0, 90.0), (3.0, 2.5, 45.0), (5.0, 2.0, -30.0)]


@pytest.mark.parametrize("stations", [PLANE, UPHILL, BENT], ids=["plane", "uphill", "bent"])
@pytest.mark.parametrize(("launch", "aim_deg"), [(1.6, 0.0), (2.2, 12.0), (1.2, -25.0)])
def test_a_ball_that_scipy_rolled_is_traced_back(stations, launch, aim_deg):
    _, states = independent.roll(independent.Green(10.0, stations), launch, radians(aim_deg))
    putt = Putt(5.0, Surface(*(Station.measured(*station) for station in stations)), 10.0)
    found = strike_to(putt, states[0, -1], states[1, -1])
    assert found.launch == pytest.approx(launch, abs=TENTH_MILLIMETRE_PER_S)
    assert found.aim == pytest.approx(radians(aim_deg), abs=HUNDREDTH_DEGREE)


def test_behind_the_ball_is_a_strike_too():
    putt = Putt(2.0, Surface(Station.measured(0.0, 2.0, 90.0)), 10.0)
    found = strike_to(putt, -0.5, 0.2)
    end = putt.roll(found.launch, found.aim).at(inf)
    assert (end.x, end.y) == pytest.approx((-0.5, 0.2), abs=1e-6)


def test_no_ball_stops_on_a_green_too_steep():
    assert strike_to(Putt(2.0, Surface(Station.measured(0.0, 8.0, 0.0)), 12.0), 2.5, 0.0) is None
