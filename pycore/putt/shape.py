"""The shape of a roll: its path as points, and its apex."""

from math import exp, inf, log, sin

from pycore.putt.putt import Putt
from pycore.putt.roll import Roll
from pycore.putt.solve import Read
from pycore.roots import zero

POINTS = 120  # of a path that is drawn
DIGITS = 6  # micrometres and microseconds are enough to draw with
EXACT = 1e-9  # of the speed; how exactly the apex is found


def path(roll: Roll, end: float = inf) -> list[tuple[float, float, float, float]]:
    """Points (t s, x m, y m, speed m/s) of ``roll`` from its start to ``end`` (its s).

    Half of them are spread over the speed, the other half over what friction alone would leave of it: on a slope that
    all but holds the ball the one is dense where it creeps, the other where it runs.
    """
    steps = POINTS // 2 - 1
    share_at_end, friction_at_end = (roll.share_left(end), exp(-end)) if end < inf else (0.0, 0.0)
    places = {roll.s_left(1 - (1 - share_at_end) * i / steps) for i in range(steps + 1)}
    places |= {-log(1 - (1 - friction_at_end) * (i + 0.5) / steps) for i in range(steps)}
    last = roll.s_left(share_at_end)
    states = [roll.at(s) for s in sorted(places) if s <= last]
    return [(round(p.t, DIGITS), round(p.x, DIGITS), round(p.y, DIGITS), round(p.speed, DIGITS)) for p in states]


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
