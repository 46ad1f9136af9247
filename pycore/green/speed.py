"""Green speed: from what a Stimpmeter reads to how a rolling ball slows."""

from pycore.constants import GRAVITY, ROLLING, STIMPMETER_SPEED
from pycore.units import FOOT


def deceleration(stimp_ft: float) -> float:
    """How a ball slows on the level, m/s2, on a green of ``stimp_ft`` feet.

    A ball leaves the Stimpmeter at v_s and stops after S: v_s^2 / (2 S). Penner, Can. J. Phys. 80(2):83-96, 2002.
    """
    return STIMPMETER_SPEED**2 / (2 * stimp_ft * FOOT)


def friction(stimp_ft: float) -> float:
    """Penner's rho: the slope (rise over run) on which a ball once moving straight downhill no longer stops."""
    return deceleration(stimp_ft) / (ROLLING * GRAVITY)
