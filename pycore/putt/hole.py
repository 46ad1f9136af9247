"""What the hole takes."""

from math import cos, hypot, sqrt

from pycore.constants import CAPTURE_SPEED, HOLE_RADIUS


def capture_speed(offset: float, slope: float, from_uphill: float) -> float:
    """Fastest speed (m/s) at which the hole takes a ball.

    Parameters
    ----------
    offset : how far from the hole's centre the ball's path passes, m. Beyond the hole's edge the speed is negative and
        goes on falling, so that a search can tell near from far.
    slope : tilt of the green at the hole, rise over run.
    from_uphill : angle between the ball's direction and straight uphill, rad.

    Penner, Can. J. Phys. 80(2):83-96, 2002, Eq. 23 and 30.
    """
    tilt = slope / hypot(1, slope)
    return CAPTURE_SPEED * (1 - (offset / HOLE_RADIUS) ** 2) / sqrt(1 - cos(from_uphill) * tilt)
