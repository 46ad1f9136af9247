"""A ramp that lets a ball go at a wanted speed.

A ball that rolls down from rest without slip keeps, at the foot of a height h, v**2 = (10/7) g h (rolling sphere, textbook
mechanics). A real ramp keeps a share of it, which one roll on a level green tells.
"""

from pycore.constants import GRAVITY, ROLLING
from pycore.green.speed import deceleration

LIFT = 2 * ROLLING * GRAVITY  # m/s2; v**2 over h


def kept(height: float, rolled: float, stimp_ft: float) -> float:
    """Share of its energy that a ball let go at ``height`` kept, if it then ``rolled`` (m) on a level green."""
    return 2 * deceleration(stimp_ft) * rolled / (LIFT * height)


def height(speed: float, share: float) -> float:
    """Height (m) of the ball's centre over its place at the foot, from which it leaves with ``speed`` (m/s)."""
    return speed**2 / (LIFT * share)
