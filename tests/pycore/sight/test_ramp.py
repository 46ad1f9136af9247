"""The ramp against the textbook: a sphere that rolls keeps 5/7 of its energy in its going."""

import math

import pytest

from pycore.green.speed import deceleration
from pycore.sight.ramp import height, kept

GRAVITY = 9.80665  # m/s2, CGPM
MILLIMETRE = 1e-3


@pytest.mark.parametrize("speed", [0.5, 1.83, 3.0])
def test_height_without_loss(speed):
    assert height(speed, 1.0) == pytest.approx(speed**2 / (10 / 7 * GRAVITY), abs=MILLIMETRE / 10)


def test_a_trial_puts_the_losses_right():
    """A ramp that keeps four fifths: let go at the height asked for, the ball rolls as far as the putt's speed does."""
    stimp_ft, share, tried = 9.0, 0.8, 0.4
    rolled = share * 10 / 7 * GRAVITY * tried / (2 * deceleration(stimp_ft))
    asked = height(2.0, kept(tried, rolled, stimp_ft))
    left = math.sqrt(share * 10 / 7 * GRAVITY * asked)
    assert left == pytest.approx(2.0)
