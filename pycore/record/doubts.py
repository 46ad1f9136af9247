"""What a record itself gives away of how it was kept: how coarsely, and whether holed putts are missing from it."""

from collections.abc import Sequence
from dataclasses import dataclass
from math import erfc, sqrt

from pycore.record.logged import Logged
from pycore.record.player import Coarse, Found, Miss
from pycore.record.published import expected
from pycore.roots import zero
from pycore.units import FOOT

STEPS_M = (FOOT, 0.5, 0.25, FOOT / 2, 0.1)  # the largest that fits is how finely finishes were told
WHOLE = 1e-3  # of a step; so near to whole ones a number was told in them
ALL_BUT = 0.97  # of the numbers
FEWEST = 20  # numbers, in which a step shows
HALF = 0.5  # of a 90-shooter's putts holed; our assumption of the least that any player holes
FAR = 2.5  # standard errors below that, from which the holed ones are not all there
SURE = 0.12  # of the tilt; where slopes are off by more, what they move outweighs a player's own spread
FARTHEST, CLOSE = 7.0, 1e-3  # standard deviations
BY_CHANCE = 0.05  # putts of a record that lie so far off by chance alone


def step(putts: Sequence[Logged]) -> float:
    """In steps of how much finishes were told, m; none where they were told exactly."""
    values = [part for each in putts if isinstance(each.stop, complex) for part in (each.stop.real, each.stop.imag)]
    if len(values) < FEWEST:
        return 0.0
    for each in STEPS_M:
        if sum(abs(value / each - round(value / each)) < WHOLE for value in values) >= ALL_BUT * len(values):
            return each
    return 0.0


@dataclass(frozen=True)
class Missing:
    """Putts holed, of how many, and what a 90-shooter holes from the same distances."""

    made: int
    tries: int
    usual: float


def missing(putts: Sequence[Logged]) -> Missing | None:
    """That holed putts were not logged, as far as their number tells; None where it does not."""
    made = sum(each.stop is None for each in putts)
    usual = sum(expected(each.putt.distance, "amateur").one for each in putts)
    least = HALF * usual
    return Missing(made, len(putts), usual) if made < least - FAR * sqrt(least) else None


def untold(found: Found, misses: Sequence[Miss | Coarse]) -> str:
    """Why these putts do not tell a spread of start line and pace; empty where they do."""
    off = found.tilt_off
    if off > SURE:
        return (
            f"The slopes as logged are off by about {100 * off:.0f} %, and that moves the ball as much as you do: no spread is "
            "given. Measure ten slopes with the level, and yours can be told from theirs."
        )
    odd = _odd(found, misses)
    if odd:
        return (
            f"{odd} of the misses {'lie' if odd > 1 else 'lies'} farther off than the others let any: no one spread describes "
            "them all, so none is given. Look whether they were logged as they were."
        )
    return ""


def _odd(found: Found, misses: Sequence[Miss | Coarse]) -> int:
    """How many misses lie farther off than chance lets any, were errors normal."""
    if not misses:
        return 0
    share = BY_CHANCE / (2 * len(misses))

    def rarer(z: float) -> float:
        return share - erfc(z / sqrt(2))

    far = zero(rarer, 1.0, FARTHEST, rarer(1.0), rarer(FARTHEST), CLOSE)
    return sum(max(found.standardised(miss)) > far for miss in misses)
