"""95 % intervals of shares, means and spreads."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from functools import cache
from math import atan, cos, erf, exp, gamma, pi, sin, sqrt

from pycore.roots import zero

SURE = 0.95  # share of intervals that hold the truth
TAIL = (1 - SURE) / 2  # share of truths below an interval, and above it
Z = 1.959963984540054  # normal quantile of 1 - TAIL; Abramowitz and Stegun, table 26.1
EXACT = 1e-12  # of the bracket; how exactly a quantile is found

type Interval = tuple[float, float]


@dataclass(frozen=True)
class Estimate:
    """A value and the ends of its 95 % interval."""

    value: float
    low: float
    high: float


def wilson(made: int, tries: int) -> Interval:
    """Score interval of a share, 0 to 1; all of it where nothing was tried.

    Newcombe, Stat. Med. 17:857-872, 1998, method 3 (Wilson 1927).
    """
    if not tries:
        return 0.0, 1.0
    share = made / tries
    middle = share + Z**2 / (2 * tries)
    reach = Z * sqrt(share * (1 - share) / tries + (Z / (2 * tries)) ** 2)
    scale = 1 + Z**2 / tries
    # the ends are exact where nothing or everything was made
    return (
        0.0 if made == 0 else (middle - reach) / scale,
        1.0 if made == tries else (middle + reach) / scale,
    )


def newcombe(made: int, tries: int, made_other: int, tries_other: int) -> Interval:
    """Interval of the first share less the other: Newcombe, Stat. Med. 17:873-890, 1998, method 10."""
    low, high = wilson(made, tries)
    low_other, high_other = wilson(made_other, tries_other)
    share, other = (made / tries if tries else 0.5), (made_other / tries_other if tries_other else 0.5)
    difference = share - other
    return (
        difference - sqrt((share - low) ** 2 + (high_other - other) ** 2),
        difference + sqrt((high - share) ** 2 + (other - low_other) ** 2),
    )


def median(values: Iterable[float]) -> float:
    """The middle value; of an even number the mean of the two in the middle. Python's own brings half a megabyte along."""
    ranked = sorted(values)
    half = len(ranked) // 2
    return ranked[half] if len(ranked) % 2 else (ranked[half - 1] + ranked[half]) / 2


def mean(values: Sequence[float], least: float = 0.0) -> Estimate:
    """Mean of two or more values from a normal spread of ``least`` or more, with Student's interval."""
    middle = sum(values) / len(values)
    reach = student(len(values) - 1) * spread(values, least) / sqrt(len(values))
    return Estimate(middle, middle - reach, middle + reach)


def spread(values: Sequence[float], least: float = 0.0) -> float:
    """Standard deviation of two or more values about their own mean; ``least`` where they agree better than they can."""
    middle = sum(values) / len(values)
    return max(least, sqrt(sum((value - middle) ** 2 for value in values) / (len(values) - 1)))


def spread_estimate(values: Sequence[float], least: float = 0.0) -> Estimate:
    """Standard deviation of two or more values, ``least`` or more, with its chi-square interval."""
    free = len(values) - 1
    found = spread(values, least)
    return Estimate(found, found * sqrt(free / chi_square(1 - TAIL, free)), found * sqrt(free / chi_square(TAIL, free)))


def difference(values: Sequence[float], others: Sequence[float], least: float = 0.0, tail: float = TAIL) -> Estimate:
    """Mean of ``values`` less that of ``others``, two or more each; Welch's interval, degrees of freedom rounded down.

    Neither's spread is taken to be below ``least``; ``tail`` is the share left out at each end.
    """
    own, its = (spread(each, least) ** 2 / len(each) for each in (values, others))
    found = sum(values) / len(values) - sum(others) / len(others)
    if own + its == 0:
        return Estimate(found, found, found)
    free = (own + its) ** 2 / (own**2 / (len(values) - 1) + its**2 / (len(others) - 1))
    reach = student(max(1, int(free)), tail) * sqrt(own + its)
    return Estimate(found, found - reach, found + reach)


@cache
def student(free: int, tail: float = TAIL) -> float:
    """Quantile of 1 - ``tail`` of Student's t with ``free`` degrees of freedom."""
    return _rising(lambda t: student_below(t, free) - (1 - tail), Z)


def student_below(t: float, free: int) -> float:
    """Share of Student's t below ``t``; Abramowitz and Stegun, Eqs. 26.7.3 and 26.7.4."""
    angle = atan(t / sqrt(free))
    term, total = (cos(angle), cos(angle)) if free % 2 else (1.0, 1.0)
    for k in range(3 if free % 2 else 2, free - 1, 2):
        term *= cos(angle) ** 2 * (k - 1) / k
        total += term
    if free == 1:
        return 0.5 + angle / pi
    return 0.5 + (angle + sin(angle) * total) / pi if free % 2 else 0.5 + sin(angle) * total / 2


@cache
def chi_square(share: float, free: int) -> float:
    """Value below which ``share`` of chi-square with ``free`` degrees of freedom lies."""
    return _rising(lambda x: chi_square_below(x, free) - share, float(free))


def chi_square_below(x: float, free: int) -> float:
    """Share of chi-square below ``x``; Abramowitz and Stegun, Eqs. 26.4.4 and 26.4.5."""
    half = x / 2
    if free % 2 == 0:
        term = total = exp(-half)
        for k in range(1, free // 2):
            term *= half / k
            total += term
        return 1 - total
    below = erf(sqrt(half))
    term = exp(-half) * sqrt(half) / gamma(1.5)
    for k in range(1, (free + 1) // 2):
        below -= term
        term *= half / (k + 0.5)
    return below


def _rising(f: Callable[[float], float], start: float) -> float:
    """The positive zero of an ``f`` that rises from below zero at 0."""
    high = start
    while f(high) < 0:
        high *= 2
    return zero(f, 0.0, high, f(0.0), f(high), EXACT * high)
