"""Dots of chalk: how far beside the ball-to-hole line a ball rolls."""

from pycore.constants import HOLE_RADIUS
from pycore.putt.putt import Putt
from pycore.putt.roll import Roll
from pycore.roots import zero

EXACT = 1e-9  # of the speed


def places(distance: float, step: float) -> list[float]:
    """Every ``step`` (m) along the line from the ball, as far as the hole's near edge."""
    return [step * i for i in range(1, int((distance - HOLE_RADIUS) / step) + 1)]


def beside(putt: Putt, roll: Roll, at: list[float]) -> list[float | None]:
    """How far left of the line (m) the ball of ``roll`` is where it first comes as far along it as each place ``at`` (m).

    None where it drops, or rests, before it comes so far.
    """
    end = roll.share_left(putt.finish(roll).s)
    last = roll.at(roll.s_left(end)).x

    def side(place: float) -> float | None:
        if last < place:
            return None

        def beyond(share: float) -> float:
            return roll.at(roll.s_left(share)).x - place

        share = zero(beyond, 1.0, end, -place, last - place, EXACT)
        return roll.at(roll.s_left(share)).y

    return [side(place) for place in at]
