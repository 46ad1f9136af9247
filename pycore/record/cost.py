"""What each fault costs: putts holed in a hundred of a fixed set, with the fault and without it.

The set is 24 putts of 1 to 6 m (about 3 to 20 ft) over 2 % at 10 ft, four of each length: down and up, breaking either
way, meant to finish 0.3 m past. A fault removed is a skill without bias and without spread.
"""

from collections.abc import Iterable, Mapping
from functools import cache, lru_cache
from math import erf, exp, hypot, pi, sqrt
from typing import Literal, NamedTuple

from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.putt.solve import solve
from pycore.record.opening import Opening, Row, opening
from pycore.record.player import Skill
from pycore.stats.intervals import Estimate

Name = Literal["alignment", "start_line", "pace", "reading"]

LENGTHS_M = (1.0, 1.5, 2.0, 3.0, 4.5, 6.0)
FALLS_DEG = (45.0, 135.0, 225.0, 315.0)
SLOPE_PERCENT = 2.0
STIMP_FT = 10.0
PAST_M = 0.3
EXAMPLE_M = 3.0
WHOLE = 1.0  # of the roll; a spread that no opening outgrows
STEADY = 1e-6  # rad, and of the roll; as good as no spread


class Fault(NamedTuple):
    """Bias and spread of a skill."""

    bias: float
    sd: float


type Player = Mapping[Name, Fault]
NONE = Fault(0.0, 0.0)


def holed_per_100(player: Player) -> float:
    """Putts of the set that the player holes, in a hundred."""
    laid = _laid(player["pace"])
    return 100 * sum(_share(aim, rows, player) for aim, rows in laid) / len(laid)


def costs(skills: Mapping[Name, Skill]) -> dict[Name, Estimate]:
    """What each skill's fault costs in putts per hundred, largest first.

    An interval gathers how far the cost moves when each bias and spread goes to the ends of its own, all independent:
    G. Y. Zou and A. Donner, Stat. Med. 27(10):1693-1702, 2008.
    """
    middle: dict[Name, Fault] = {name: Fault(skill.bias.value, skill.sd.value) for name, skill in skills.items()}
    moved = [
        [{**middle, name: fault} for fault in ends]
        for name, skill in skills.items()
        for ends in (
            [Fault(end, skill.sd.value) for end in (skill.bias.low, skill.bias.high)],
            [Fault(skill.bias.value, end) for end in (skill.sd.low, skill.sd.high)],
        )
    ]
    cost = _removed(middle, skills)
    ends = [[_removed(player, skills) for player in pair] for pair in moved]
    found = {}
    for name, value in cost.items():
        changes = [[each[name] - value for each in pair] for pair in ends]
        down, up = (sqrt(sum(end(0.0, *pair) ** 2 for pair in changes)) for end in (min, max))
        found[name] = Estimate(value, value - down, value + up)
    return dict(sorted(found.items(), key=lambda item: -item[1].value))


def _removed(player: Player, names: Iterable[Name]) -> dict[Name, float]:
    """How many more putts in a hundred the player would hole with each fault removed."""
    holed = holed_per_100(player)
    return {name: holed_per_100({**player, name: NONE}) - holed for name in names}


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


def _share(aim: float, rows: Iterable[Row], player: Player) -> float:
    """Share of one putt that the player holes."""
    reading = player.get("reading", NONE)
    lines = [player["start_line"], player.get("alignment", NONE)]
    bias = aim * reading.bias + sum(line.bias for line in lines)
    reach = sqrt(2) * max(STEADY, hypot(aim * reading.sd, *(line.sd for line in lines)))
    return sum(row.weight * (erf((row.high - bias) / reach) - erf((row.low - bias) / reach)) for row in rows) / 2
