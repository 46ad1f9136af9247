from math import hypot, inf

import pytest

from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.putt.sensitivity import outcomes
from pycore.putt.solve import solve

PUTT = Putt(3, Surface(Station.measured(0, 2, 90)), 10, 0.3)
FOUND = solve(PUTT)
ROWS = {outcome.change: outcome for outcome in outcomes(PUTT, FOUND)}


def test_each_error_has_its_side():
    assert ROWS["start_left"].rest[1] > FOUND.roll.at(inf).y > ROWS["start_right"].rest[1]
    assert ROWS["pace_long"].rest[0] > ROWS["pace_short"].rest[0]
    assert ROWS["slope"].rest[1] < FOUND.roll.at(inf).y
    assert hypot(*ROWS["speed"].rest) > 0.3


def test_a_degree_is_this_far_at_the_hole():
    # 1 degree at 3 m is 52 mm; the slope turns it a little more or less
    assert ROWS["start_left"].miss == pytest.approx(0.052, abs=0.01)


def test_a_ball_that_runs_away_has_no_rest():
    edge = Putt(3, Surface(Station.measured(0, 7.5, 20)), 10, 0.3)
    steeper = next(outcome for outcome in outcomes(edge, solve(edge)) if outcome.change == "slope")
    assert steeper.rest is None
