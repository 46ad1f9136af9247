"""A row of watched strikes: how it leans, how it scatters, and how many more would settle the lean.

How many are wanted hangs on the scatter alone, so that to stop there makes no lean likelier: the interval of fixed width of
Y. S. Chow and H. Robbins, Ann. Math. Statist. 36:457-462, 1965.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from math import ceil, hypot, sqrt

from pycore.stats.intervals import Estimate, Z, mean, spread, spread_estimate

FEWEST = 6  # strikes; of fewer the scatter itself is too little known; assumed
START_WITHIN_DEG = 0.5  # a lean is settled within that: of 10 ft, an inch; assumed
PACE_WITHIN = 0.06  # the same of the roll's length: on 10 ft, 7 in; assumed


@dataclass(frozen=True)
class Row:
    """Lean and scatter, each with its 95 % interval, and how many more strikes would settle the lean."""

    lean: Estimate
    scatter: Estimate
    more: int


def row(errors: Sequence[float], sds: Sequence[float], within: float) -> Row | None:
    """Of strikes that were off by ``errors``, each seen to its standard deviation; None of fewer than two.

    What one film is off by, all films of that phone at that place are off by: it does not grow less with more of them.
    """
    if len(errors) < 2:
        return None
    alone = mean(errors)
    seen = Z * sqrt(sum(sd * sd for sd in sds) / len(sds))
    reach = hypot(alone.high - alone.value, seen)
    lean = Estimate(alone.value, alone.value - reach, alone.value + reach)
    wanted = max(FEWEST, ceil((Z * spread(errors) / within) ** 2))
    return Row(lean, spread_estimate(errors), max(0, wanted - len(errors)))
