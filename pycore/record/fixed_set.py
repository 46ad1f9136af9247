"""The fixed set of putts that faults are weighed by, and the putts that a player takes on it.

Thirty-two putts of 3 to 60 ft over 2 % at 10 ft, four of each length: down and up, breaking either way, meant to finish 0.3 m
past. A first putt is holed by the share of the player's strokes that its opening takes. What misses is left, to first
order, as far along as the roll is off and as far across as the start is; the second putt is holed as often as the set's own
of that length, by the same player; a third putt is holed.
"""

from bisect import bisect_left
from collections.abc import Iterable, Mapping, Sequence
from functools import cache, lru_cache
from itertools import pairwise
from math import erf, exp, hypot, pi, sqrt
from typing import Literal, NamedTuple

from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.putt.solve import solve
from pycore.record.opening import Opening, Row, opening
from pycore.units import FOOT

Name = Literal["alignment", "start_line", "pace", "reading"]

# The set that a cost is told on: from these lengths, falling four ways, on a green of common slope and speed; assumed
LENGTHS_M = tuple(feet * FOOT for feet in (3.0, 5.0, 8.0, 12.0, 20.0, 30.0, 45.0, 60.0))
FALLS_DEG = (45.0, 135.0, 225.0, 315.0)  # clockwise from the line
SLOPE_PERCENT = 2.0  # rise over run, in hundredths
STIMP_FT = 10.0  # ft on the Stimpmeter
PAST_M = 0.3  # m; the pace meant
EXAMPLE_M = 3.0  # m; a putt whose opening is drawn
WHOLE = 1.0  # of the roll; a spread that no opening outgrows
STEADY = 1e-6  # rad, and of the roll; as good as no spread
# Gauss and Hermite's places over a normal spread, in standard deviations, and their weights (M. Abramowitz and I. A. Stegun,
# Handbook of Mathematical Functions, 1964, table 25.10)
ROLLS = ((-2.856970, 0.011257), (-1.355626, 0.222076), (0.0, 0.533333), (1.355626, 0.222076), (2.856970, 0.011257))
STARTS = ((-1.732051, 1 / 6), (0.0, 2 / 3), (1.732051, 1 / 6))


class Fault(NamedTuple):
    """Bias and spread of a skill."""

    bias: float
    sd: float


type Player = Mapping[Name, Fault]
NONE = Fault(0.0, 0.0)


def putts_per_100(player: Player) -> float:
    """Putts that the player takes for a hundred holes of the set."""
    laid = _laid(player["pace"])
    made = [_share(aim, rows, player) for aim, rows in laid]
    four = len(FALLS_DEG)
    by_length = [sum(made[i : i + four]) / four for i in range(0, len(made), four)]
    second = _Second(by_length)
    total = sum(2 - each for each in made)
    for i, share in enumerate(by_length):
        for aim, _ in laid[four * i : four * (i + 1)]:
            total += (1 - share) * _left(LENGTHS_M[i], aim, player, second)
    return 100 * total / len(made)


def _left(length_m: float, aim: float, player: Player, second: "_Second") -> float:
    """Share of second putts missed, after first ones of ``length_m``."""
    start, sd = _start(aim, player)
    pace, made = player["pace"], 0.0
    across = [((length_m * (start + y * sd)) ** 2, weight) for y, weight in STARTS]
    for x, weight in ROLLS:
        along = (PAST_M + (length_m + PAST_M) * (pace.bias + x * pace.sd)) ** 2
        made += weight * sum(share * second.made(sqrt(along + aside)) for aside, share in across)
    return 1 - made


class _Second:
    """Shares of second putts made, straight lines between lengths (m), the last one beyond them."""

    def __init__(self, shares: Sequence[float]) -> None:
        self.shares = [1.0, *shares]
        ends = pairwise(zip((0.0, *LENGTHS_M), self.shares, strict=True))
        self.slopes = [(high - low) / (b - a) for (a, low), (b, high) in ends]

    def made(self, length_m: float) -> float:
        i = bisect_left(LENGTHS_M, length_m)
        if i == len(LENGTHS_M):
            return self.shares[-1]
        return self.shares[i + 1] - self.slopes[i] * (LENGTHS_M[i] - length_m)


@cache
def _standard() -> list[tuple[float, Opening]]:
    """Aim (rad) and opening of each putt of the set."""
    return [_solved(length, SLOPE_PERCENT, fall) for length in LENGTHS_M for fall in FALLS_DEG]


def _solved(length_m: float, slope_percent: float, fall_deg: float) -> tuple[float, Opening]:
    putt = Putt(length_m, Surface(Station.measured(0.0, slope_percent, fall_deg)), STIMP_FT, PAST_M)
    found = solve(putt)
    window = found and opening(putt, found)
    assert found
    assert window
    return found.aim, window


def example() -> list[Row]:
    """The opening of a level putt of ``EXAMPLE_M`` at the set's speed and pace, from its shortest roll to its longest."""
    return _solved(EXAMPLE_M, 0.0, 0.0)[1].rows(0.0, WHOLE)


@lru_cache(maxsize=32)
def _laid(pace: Fault) -> list[tuple[float, list[Row]]]:
    """Aim and opening of each putt of the set, laid out for a pace and weighted by it."""
    spread = max(STEADY, pace.sd)
    laid = []
    for aim, window in _standard():
        rows = window.rows(pace.bias, spread)
        bell = [exp(-(((row.length - pace.bias) / spread) ** 2) / 2) / (spread * sqrt(2 * pi)) for row in rows]
        laid.append((aim, [row._replace(weight=row.weight * b) for row, b in zip(rows, bell, strict=True)]))
    return laid


def _start(aim: float, player: Player) -> tuple[float, float]:
    """Bias and spread of the start (rad) on a putt that needs ``aim``."""
    reading = player.get("reading", NONE)
    lines = [player["start_line"], player.get("alignment", NONE)]
    return aim * reading.bias + sum(line.bias for line in lines), hypot(aim * reading.sd, *(line.sd for line in lines))


def _share(aim: float, rows: Iterable[Row], player: Player) -> float:
    """Share of one putt that the player holes."""
    bias, sd = _start(aim, player)
    reach = sqrt(2) * max(STEADY, sd)
    return sum(row.weight * (erf((row.high - bias) / reach) - erf((row.low - bias) / reach)) for row in rows) / 2
