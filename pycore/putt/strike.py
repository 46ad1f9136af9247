"""A strike, and how it is corrected until the ball does what it should."""

from collections.abc import Callable
from math import exp, log
from typing import NamedTuple

NUDGE = 1e-4  # rad, and share of the speed; the change that shows how a miss depends on the strike
LARGEST = 0.3  # rad plus share of the speed; the largest correction at a time
MOST_CORRECTIONS = 12  # Newton's; four or five are usual
MOST_IN_VAIN = 4  # in a row that do not halve the least miss so far; 995 of 1,000 that arrive have three at most


class Strike(NamedTuple):
    """Launch speed (m/s) and start direction (rad) of a ball."""

    launch: float
    aim: float

    def beyond(self, before: "Strike", times: float) -> "Strike":
        """As far on from this one as ``times`` the way from ``before``."""
        return _moved(self, times * (self.aim - before.aim), times * log(self.launch / before.launch))


def corrected(strike: Strike, miss: Callable[[Strike], complex | None], tolerance: float) -> Strike | None:
    """``strike`` changed until it misses by less than ``tolerance`` (m): Newton's correction, then Broyden's.

    Parameters
    ----------
    miss : how far a strike misses in x and y (m), None where the ball runs away.

    Returns
    -------
    None where no correction leads there. Reference: C. G. Broyden, Math. Comp. 19(92):577-593, 1965.
    """
    if (now := miss(strike)) is None or abs(now) < tolerance:
        return None if now is None else strike
    turned, harder = miss(_moved(strike, NUDGE, 0.0)), miss(_moved(strike, 0.0, NUDGE))
    if turned is None or harder is None:
        return None
    by_aim, by_launch = (turned - now) / NUDGE, (harder - now) / NUDGE
    least, in_vain = abs(now), 0
    for _ in range(MOST_CORRECTIONS):
        area = _cross(by_aim, by_launch)
        if not area:
            return None
        d_aim, d_launch = _cross(by_launch, now) / area, -_cross(by_aim, now) / area
        damping = min(1.0, LARGEST / (abs(d_aim) + abs(d_launch)))
        d_aim, d_launch = damping * d_aim, damping * d_launch
        strike = _moved(strike, d_aim, d_launch)
        after = miss(strike)
        if after is None:
            return None
        if abs(after) < tolerance:
            return strike
        wrong = (after - now - d_aim * by_aim - d_launch * by_launch) / (d_aim**2 + d_launch**2)
        by_aim, by_launch = by_aim + d_aim * wrong, by_launch + d_launch * wrong
        now = after
        if abs(now) < least / 2:
            least, in_vain = abs(now), 0
        elif (in_vain := in_vain + 1) == MOST_IN_VAIN:
            return None
    return None


def _moved(strike: Strike, d_aim: float, d_launch: float) -> Strike:
    return Strike(strike.launch * exp(d_launch), strike.aim + d_aim)


def _cross(a: complex, b: complex) -> float:
    return (a.conjugate() * b).imag
