"""A strike, and how it is corrected until the ball does what it should."""

from collections.abc import Callable
from math import exp, hypot, log
from typing import NamedTuple

NUDGE = 1e-4  # rad, and share of the speed; the change that shows how a miss depends on the strike
LARGEST = 0.3  # rad plus share of the speed; the largest correction at a time
LEAST = 1e-5  # the same; what a smaller one changes is as much the error of the roll
MOST_CORRECTIONS = 12  # Newton's; four or five are usual
MOST_IN_VAIN = 4  # in a row that do not halve the least miss so far; 995 of 1,000 that arrive have three at most


class Slopes(NamedTuple):
    """What a miss (m in x and y) changes by a radian of aim, and by the logarithm of the launch speed."""

    by_aim: complex
    by_launch: complex

    def learnt(self, d_aim: float, d_launch: float, changed: complex) -> "Slopes":
        """Broyden's: as little other as they must be where a correction has ``changed`` the miss so."""
        wrong = (changed - d_aim * self.by_aim - d_launch * self.by_launch) / (d_aim**2 + d_launch**2)
        return Slopes(self.by_aim + d_aim * wrong, self.by_launch + d_launch * wrong)


class Strike(NamedTuple):
    """Launch speed (m/s) and start direction (rad) of a ball; where it was corrected, how the miss depends on them."""

    launch: float
    aim: float
    slopes: Slopes | None = None

    def beyond(self, before: "Strike", times: float) -> "Strike":
        """As far on from this one as ``times`` the way from ``before``."""
        return self.moved(times * (self.aim - before.aim), times * log(self.launch / before.launch))

    def moved(self, d_aim: float, d_launch: float) -> "Strike":
        """Turned by ``d_aim`` (rad), and harder by ``d_launch`` as a logarithm."""
        return Strike(self.launch * exp(d_launch), self.aim + d_aim, self.slopes)


def corrected(strike: Strike, miss: Callable[[Strike], complex | None], tolerance: float) -> Strike | None:
    """``strike`` changed until it misses by less than ``tolerance`` (m): Newton's correction, then Broyden's.

    Parameters
    ----------
    strike : where to begin; the slopes of a like putt, if it has them, are looked for anew only where they do not lead on.
    miss : how far a strike misses in x and y (m), None where the ball runs away.

    Returns
    -------
    None where no correction leads there. Reference: C. G. Broyden, Math. Comp. 19(92):577-593, 1965.
    """
    if (now := miss(strike)) is None or abs(now) < tolerance:
        return None if now is None else strike
    own = strike.slopes is None  # whether the slopes are this putt's
    slopes = strike.slopes or _slopes(strike, miss, now)
    least, in_vain = abs(now), 0
    for _ in range(MOST_CORRECTIONS):
        if not slopes or not (area := _cross(*slopes)):
            return None
        d_aim, d_launch = _cross(slopes.by_launch, now) / area, -_cross(slopes.by_aim, now) / area
        damping = min(1.0, LARGEST / (abs(d_aim) + abs(d_launch)))
        d_aim, d_launch = damping * d_aim, damping * d_launch
        tried = strike.moved(d_aim, d_launch)
        after = miss(tried)
        if not own and (after is None or abs(after) > max(tolerance, abs(now) / 2)):
            own, slopes = True, _slopes(strike, miss, now)
            continue
        if after is None:
            return None
        if hypot(d_aim, d_launch) > LEAST:
            slopes = slopes.learnt(d_aim, d_launch, after - now)
        strike, now = tried, after
        if abs(now) < tolerance:
            return strike._replace(slopes=slopes)
        if abs(now) < least / 2:
            least, in_vain = abs(now), 0
        elif (in_vain := in_vain + 1) == MOST_IN_VAIN:
            return None
    return None


def _slopes(strike: Strike, miss: Callable[[Strike], complex | None], now: complex) -> Slopes | None:
    turned, harder = miss(strike.moved(NUDGE, 0.0)), miss(strike.moved(0.0, NUDGE))
    return None if turned is None or harder is None else Slopes((turned - now) / NUDGE, (harder - now) / NUDGE)


def _cross(a: complex, b: complex) -> float:
    return (a.conjugate() * b).imag
