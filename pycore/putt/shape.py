"""The shape of a roll: its path as points, and its apex."""

from math import inf, sin

from pycore.putt.putt import Putt
from pycore.putt.read import Read
from pycore.putt.roll import Roll
from pycore.roots import zero

POINTS = 120
DIGITS = 6  # micrometres and microseconds are enough to draw with
EXACT = 1e-9  # of the speed; how exactly the apex is found


def path(roll: Roll, end: float = inf) -> list[tuple[float, float, float, float]]:
    """Points (t s, x m, y m, speed m/s) of ``roll`` from its start to ``end`` (its s), about evenly spaced in time."""
    last = roll.share_left(end) if end < inf else 0.0
    points = []
    for i in range(POINTS):
        state = roll.at(roll.s_left(1 - (1 - last) * i / (POINTS - 1)))
        points.append((round(state.t, DIGITS), round(state.x, DIGITS), round(state.y, DIGITS), round(state.speed, DIGITS)))
    return points


def apex(putt: Putt, found: Read) -> tuple[float, float]:
    """Where (x, y in m) the path to the hole is farthest from the straight line; half-way if it is straight."""
    roll = found.roll
    shares = [1 - i / POINTS for i in range(POINTS + 1)]
    before = [share for share in shares if (state := roll.at(roll.s_left(share))).t < found.hole.t]
    sides = [abs(roll.at(roll.s_left(share)).y) for share in before]
    top = max(range(len(before)), key=sides.__getitem__)
    if sides[top] < 10**-DIGITS:
        return putt.distance / 2, 0.0

    def across(share: float) -> float:
        return sin(roll.at(roll.s_left(share)).heading)

    early, late = before[max(0, top - 1)], shares[top + 1]
    at_early, at_late = across(early), across(late)
    share = before[top] if (at_early > 0) == (at_late > 0) else zero(across, early, late, at_early, at_late, EXACT)
    state = roll.at(roll.s_left(share))
    return state.x, state.y
