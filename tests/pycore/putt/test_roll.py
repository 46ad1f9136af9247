from math import hypot, inf, radians

import pytest

from pycore.green.speed import deceleration, friction
from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.units import FOOT

HALF_A_DIGIT = 0.51e-5


def struck(stimp_ft, slope_percent, off_downhill_deg, launch=1.83):
    putt = Putt(3.0, Surface(Station.measured(0, slope_percent, 0)), stimp_ft)
    return putt.roll(launch, radians(off_downhill_deg))


def test_stops_on_a_plane(published):
    for row in published("stops"):
        stop = struck(row["stimp_ft"], row["slope_percent"], row["off_downhill_deg"]).at(inf)
        expected = row["downhill_m"], row["across_m"], row["time_s"]
        assert (stop.x, stop.y, stop.t) == pytest.approx(expected, abs=HALF_A_DIGIT)
        assert stop.speed == 0


def test_level_roll_is_the_stimpmeters():
    stop = struck(10, 0, 0).at(inf)
    assert stop.x == pytest.approx(10 * FOOT)  # by definition of the Stimpmeter
    assert stop.t == pytest.approx(2 * 10 * FOOT / 1.83)


def test_direction_of_the_stop_does_not_depend_on_speed_and_its_distance_goes_as_the_square():
    # P: Penner 2002, abstract
    soft, hard = (struck(11, 2.5, 70, launch).at(inf) for launch in (1.0, 2.0))
    assert (4 * soft.x, 4 * soft.y) == pytest.approx((hard.x, hard.y))


def test_stops_below_the_slope_that_holds_no_ball_and_not_above():
    holds = 100 * friction(10)
    assert not struck(10, holds - 0.01, 20).runs_away
    assert struck(10, holds + 0.01, 20).runs_away
    assert struck(10, holds + 0.01, 20).to_rest() == inf


def test_brede_on_a_two_percent_slope():
    # D from P: Brede, USGA Green Section Record 28(6), 1990: S = 2 up down / (up + down)
    up, down = (struck(10, 2, angle).to_rest() / FOOT for angle in (180, 0))
    assert (round(up, 3), round(down, 3)) == (pytest.approx(7.970, abs=0.002), pytest.approx(13.426, abs=0.003))
    assert 2 * up * down / (up + down) == pytest.approx(10.002, abs=0.001)


@pytest.mark.parametrize("angle", [0, 40, 90, 179, 180])
@pytest.mark.parametrize("slope", [0, 1e-6, 2, 7.8])
def test_state_is_that_of_the_equation_of_motion(angle, slope):
    roll, step = struck(10, slope, angle), 1e-4
    drag = deceleration(10) / hypot(1, slope / 100)
    for s in (0.1, 0.5, 1.5):
        before, now, after = (roll.at(s + d * step) for d in (-1, 0, 1))
        dt = after.t - before.t
        velocity = hypot(after.x - before.x, after.y - before.y) / dt
        assert velocity == pytest.approx(now.speed, rel=1e-6)
        assert dt == pytest.approx(2 * step * now.speed / drag, rel=1e-6)


def test_before_rest():
    roll = struck(10, 3, 120)
    state = roll.before_rest(0.4)
    assert roll.rest_after(state) == pytest.approx(0.4, abs=1e-9)
    assert roll.before_rest(0.0).speed == 0


@pytest.mark.parametrize("slope", [2, 9])
def test_share_left_undoes_s_left(slope):
    roll = struck(10, slope, 60)
    assert roll.share_left(roll.s_left(0.37)) == pytest.approx(0.37)
