from math import hypot, pi, radians, tan

import pytest

from pycore.constants import HOLE_RADIUS
from pycore.green.surface import Station, Surface
from pycore.putt.hole import capture_speed
from pycore.putt.putt import Putt


def test_level_hole_on_centre():
    assert capture_speed(0, 0, 0) == 1.63  # P: Penner 2002, Eq. 23 (Holmes 1991: 1.626)


@pytest.mark.parametrize("offset", [0.01, 0.03, 0.05])
def test_off_centre(offset):
    assert capture_speed(offset, 0, 0) == pytest.approx(1.63 * (1 - (offset / 0.054) ** 2))  # P: Penner 2002, Eq. 23


def test_rim():
    assert capture_speed(HOLE_RADIUS, 0.02, 1) == 0


def test_five_degrees_up_and_down():
    slope = tan(radians(5))  # P, secondary: Penner 2002, Eq. 30
    assert round(capture_speed(0, slope, 0), 2) == 1.71
    assert round(capture_speed(0, slope, pi), 2) == 1.56


LEVEL = Putt(3, Surface(Station.measured(0, 0, 0)), 10)


def fastest(putt):
    slow, fast = 1.9, 4.0
    for _ in range(50):
        middle = (slow + fast) / 2
        slow, fast = (middle, fast) if putt.finish(putt.roll(middle, 0)).holed else (slow, middle)
    return putt.finish(putt.roll(slow, 0)).state.speed


def test_the_fastest_ball_that_drops():
    assert fastest(LEVEL) == pytest.approx(1.63, abs=1e-3)


def test_a_ball_that_rests_over_the_hole_is_holed():
    reach = 2 * LEVEL.drag
    for short, holed in ((0.053, True), (0.055, False), (-0.02, True)):
        assert LEVEL.finish(LEVEL.roll((reach * (3 - short)) ** 0.5, 0)).holed is holed


def test_nearest_point_of_a_ball_that_passes():
    finish = LEVEL.finish(LEVEL.roll(2.5, radians(2)))
    assert finish.offset == pytest.approx(3 * abs(tan(radians(2))) / (1 + tan(radians(2)) ** 2) ** 0.5, abs=1e-6)
    assert not finish.holed


@pytest.mark.parametrize("aim_deg", [-100, -50, -10, 0, 20, 70, 120])
@pytest.mark.parametrize("fall_deg", [0, 60, 90, 200])
def test_nearest_point_is_the_nearest_of_all(aim_deg, fall_deg):
    green = Putt(2, Surface(Station.measured(0, 6, fall_deg)), 10)
    roll = green.roll(1.8, radians(aim_deg))
    states = [roll.at(roll.s_left(i / 500)) for i in range(501)]
    assert green.finish(roll).offset <= min(hypot(state.x - 2, state.y) for state in states) + 1e-6
