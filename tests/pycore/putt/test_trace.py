import itertools
import random
from math import hypot, inf, isfinite, radians

import numpy as np
import pytest

from bench import independent
from pycore.constants import GRAVITY
from pycore.green.speed import deceleration, friction
from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.putt.trace import LAST_ROLL, Point, Trace, _step

TENTH_OF_A_MILLIMETRE = 1e-4


def random_stations(chance, distance):
    slope, fall = chance.uniform(0, 5), chance.uniform(0, 360)
    places = sorted(chance.sample(range(int(distance * 100)), chance.randint(2, 5)))
    return [(x / 100, min(8, abs(slope + chance.gauss(0, 1))), fall + chance.gauss(0, 30)) for x in places]


@pytest.mark.parametrize("angle", [0, 30, 90, 150, 180])
@pytest.mark.parametrize("slope", [0, 2, 6])
def test_agrees_with_the_closed_form_on_a_plane(slope, angle):
    plane = Putt(3, Surface(Station.measured(0, slope, 60)), 10)
    stations = Putt(3, Surface(*(Station.measured(x, slope, 60) for x in (0, 1, 2))), 10)
    closed, traced = (putt.roll(2.2, radians(angle)) for putt in (plane, stations))
    assert isinstance(traced, Trace)
    for share in (0.9, 0.5, 0.1, 0.0):
        s = closed.s_left(share)
        here, there = closed.at(s), traced.at(s)
        assert hypot(here.x - there.x, here.y - there.y) < TENTH_OF_A_MILLIMETRE
        assert there.t == pytest.approx(here.t, abs=1e-4)
    assert traced.to_rest() == pytest.approx(closed.to_rest(), abs=TENTH_OF_A_MILLIMETRE)


def test_agrees_with_scipy_on_stations():
    chance = random.Random(1)
    compared = 0
    for _ in range(40):
        stations = random_stations(chance, 6)
        stimp_ft, launch, aim = chance.uniform(7, 12), chance.uniform(1, 3), radians(chance.uniform(-25, 25))
        roll = Putt(6, Surface(*(Station.measured(*station) for station in stations)), stimp_ft).roll(launch, aim)
        if roll.runs_away:
            continue
        times, states = independent.roll(independent.Green(stimp_ft, stations), launch, aim)
        stop = roll.at(inf)
        assert hypot(stop.x - states[0, -1], stop.y - states[1, -1]) < TENTH_OF_A_MILLIMETRE
        assert roll.to_rest() == pytest.approx(states[4, -1], abs=TENTH_OF_A_MILLIMETRE)
        half = roll.at(roll.s_left(0.5))
        x, y = (np.interp(half.t, times, states[i]) for i in (0, 1))
        assert hypot(half.x - x, half.y - y) < TENTH_OF_A_MILLIMETRE
        compared += 1
    assert compared > 30


def test_no_path_gains_energy():
    chance = random.Random(2)
    for _ in range(30):
        surface = Surface(*(Station.measured(*station) for station in random_stations(chance, 5)))
        roll = Trace(
            surface, deceleration(10), friction(10), Putt(5, surface, 10).roll(2.5, radians(chance.uniform(-40, 40))).start
        )
        states = [roll.at(roll.s_left(1 - i / 60)) for i in range(60)]
        energy = [0.7 * state.speed**2 + GRAVITY * surface.height(state.x, state.y) for state in states]
        assert all(later < before + 1e-6 for before, later in itertools.pairwise(energy))


def test_runs_away_where_no_ball_is_held():
    green = Putt(3, Surface(Station.measured(0, 0, 0), Station.measured(2, 8, 0)), 12)
    assert green.roll(1.5, 0).runs_away
    assert not green.roll(0.5, 0).runs_away  # it rests before the slope grows


def test_a_ball_that_rolls_back_and_forth_over_a_seam_comes_to_rest():
    valley = Putt(3, Surface(Station.measured(1, 6, 0), Station.measured(2, 6, 180)), 14)
    stop = valley.roll(2.0, radians(3)).at(inf)
    assert abs(stop.x) < 10


@pytest.mark.parametrize("aim", range(-180, 180, 15))
def test_a_wall_beside_the_line_ends_no_roll_in_numbers_without_end(aim):
    """Two stations a centimetre apart that fall apart: 50 m aside the green between them is a wall."""
    green = Putt(25, Surface(Station.measured(6.4, 5, 341), Station.measured(6.41, 5, -77)), 15)
    for launch in (1, 4, 15):
        roll = green.roll(launch, radians(aim))
        ends = roll.at(roll.s_left(0.0))
        assert all(map(isfinite, ends))


def test_a_step_is_of_the_fifth_order():
    """A point on a circle, whose way is known: halving a step leaves about a 64th of its error."""

    def off(h):
        def rate(z, u):
            return u, -z, 0j

        _, end, _ = _step(rate, Point(1 + 0j, 0j, 0j), rate(1 + 0j, 0j), h)
        return abs(end.z - np.cos(h)) + abs(end.u + np.sin(h))

    assert off(0.4) < 1e-5
    assert off(0.4) / off(0.2) == pytest.approx(64, rel=0.3)


@pytest.mark.parametrize("stimp_ft", [5, 10, 14])
def test_steps_end_as_soon_as_two_millimetres_are_left(stimp_ft):
    chance = random.Random(3)
    for _ in range(200):
        green = Putt(3, Surface(*(Station.measured(*station) for station in random_stations(chance, 3))), stimp_ft)
        roll = green.roll(2.0, radians(chance.uniform(-180, 180)))
        if isinstance(roll, Trace) and roll.tail and roll.steps:
            assert roll.to_rest() - roll.steps[-1].point.q.imag > LAST_ROLL
