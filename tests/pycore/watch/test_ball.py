"""Where a struck ball is, by hand."""

from math import hypot, sqrt

import numpy as np
import pytest

from pycore.constants import GRAVITY
from pycore.green.roll_test import SKID
from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.watch.ball import Ball, Way


@pytest.mark.parametrize("slope_percent", [0, 2])
@pytest.mark.parametrize("slip", [0.4, 1.0])
def test_a_ball_skids_evenly_then_rolls_evenly(slope_percent, slip):
    """D: friction mu g slows a sphere until 2 z v / (7 mu g), then at v (1 - 2 z / 7) it rolls, here straight downhill."""
    putt = Putt(3.0, Surface(Station.measured(0.0, slope_percent, 0)), 10.0)
    slows = (putt.drag - 5 / 7 * GRAVITY * slope_percent / 100) / hypot(1, slope_percent / 100)
    struck, grip = 2.2, SKID * GRAVITY
    skids = 2 * slip * struck / (7 * grip)
    rolls_at, skidded = struck * (1 - 2 * slip / 7), struck * skids - grip * skids**2 / 2
    ball = Ball(Way(putt, sqrt(rolls_at**2 + 2 * slows * skidded), 0.0), 0.5, slip)
    skidding, rolling = np.linspace(0, skids, 5), np.linspace(0.05, 2, 5)
    by_hand = [
        *(struck * skidding - grip * skidding**2 / 2),
        *(skidded + rolls_at * rolling - slows * rolling**2 / 2),
    ]
    places = ball.places([0.5 + each for each in (*skidding, *(skids + rolling))])
    assert [x for x, _ in places] == pytest.approx(by_hand, abs=1e-4)


@pytest.mark.parametrize("fall_deg", [40, 90, 150, -100])
@pytest.mark.parametrize("aim_deg", [-35, 0, 25])
def test_a_rolling_ball_is_slowed_at_first_by_what_of_the_slope_lies_along_its_start(fall_deg, aim_deg):
    """As much as it loses of its speed in the first twentieth of a second of the roll."""
    putt = Putt(4.0, Surface(Station.measured(0.0, 3, fall_deg)), 9.0)
    aim, soon = np.radians(aim_deg), 0.05
    way = Way(putt, 2.5, aim)
    lost = (putt.roll(2.5, aim).at(0.0).speed - way.speed(soon)) / soon
    assert way.slowing == pytest.approx(lost, rel=0.03)
