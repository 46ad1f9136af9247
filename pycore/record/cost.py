"""What each fault costs: putts holed in a hundred of a fixed set, as the player is and with a yardstick's skill instead.

The set is 24 putts of 1 to 6 m (about 3 to 20 ft) over 2 % at 10 ft, four of each length: down and up, breaking either
way, meant to finish 0.3 m past. The yardstick has no bias, and the spread of a tour player or an amateur; a cost is negative
where the player is better than that.
"""

from collections.abc import Iterable, Mapping
from functools import cache, lru_cache
from math import erf, exp, hypot, pi, radians, sqrt
from typing import Literal, NamedTuple

from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.putt.solve import solve
from pycore.record.opening import Opening, Row, opening
from pycore.record.player import Skill
from pycore.record.published import Yardstick
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

# The tour's spread of start of 1.0 degree and of pace of 6.5 % are published (``putt.chance``); that alignment and stroke
# share the start as 0.45 and 0.9 degrees, that reading is off by 10 % of the break, and that the amateur's are in the same
# proportion to his 1.5 degrees, are our assumptions
YARDSTICKS: Mapping[Yardstick, Mapping[Name, float]] = {
    "tour": {"start_line": radians(0.9), "alignment": radians(0.45), "pace": 0.065, "reading": 0.10},
    "amateur": {"start_line": radians(1.35), "alignment": radians(0.675), "pace": 0.085, "reading": 0.15},
}
LEANS = 1.22  # times a 95 % interval: the same for three biases at once (Bonferroni)


class Cost(NamedTuple):
    """Putts in a hundred that a skill costs, and whether it leans: its bias is beyond chance for three at once."""

    putts: Estimate
    lean: bool


def holed_per_100(player: Player) -> float:
    """Putts of the set that the player holes, in a hundred."""
    laid = _laid(player["pace"])
    return 100 * sum(_share(aim, rows, player) for aim, rows in laid) / len(laid)


def costs(skills: Mapping[Name, Skill], against: Yardstick = "tour") -> dict[Name, Cost]:
    """What each skill costs in putts per hundred against the yardstick's: leans first, then spreads, largest first.

    An interval gathers how far the cost moves when each bias and spread goes to the ends of its own, all independent:
    G. Y. Zou and A. Donner, Stat. Med. 27(10):1693-1702, 2008.
    """
    usual = _usual(skills, against)
    middle: dict[Name, Fault] = {name: Fault(skill.bias.value, skill.sd.value) for name, skill in skills.items()}
    moved = [
        [{**middle, name: fault} for fault in ends]
        for name, skill in skills.items()
        for ends in (
            [Fault(end, skill.sd.value) for end in (skill.bias.low, skill.bias.high)],
            [Fault(skill.bias.value, end) for end in (skill.sd.low, skill.sd.high)],
        )
    ]
    cost = _replaced(middle, usual)
    ends = [[_replaced(player, usual) for player in pair] for pair in moved]
    found = {}
    for name, value in cost.items():
        changes = [[each[name] - value for each in pair] for pair in ends]
        down, up = (sqrt(sum(end(0.0, *pair) ** 2 for pair in changes)) for end in (min, max))
        found[name] = Cost(Estimate(value, value - down, value + up), leans(skills[name].bias))
    return dict(sorted(found.items(), key=lambda item: (not item[1].lean, -item[1].putts.value)))


def leans(bias: Estimate) -> bool:
    """Whether a bias is beyond chance, three being looked at."""
    return bias.value - LEANS * (bias.value - bias.low) > 0 or bias.value + LEANS * (bias.high - bias.value) < 0


def _usual(skills: Iterable[Name], against: Yardstick) -> Player:
    spreads = dict(YARDSTICKS[against])
    if "alignment" not in skills:  # the start line then holds both
        spreads["start_line"] = hypot(spreads["start_line"], spreads["alignment"])
    return {name: Fault(0.0, spreads[name]) for name in skills}


def _replaced(player: Player, usual: Player) -> dict[Name, float]:
    """How many more putts in a hundred the player would hole with each of the usual skills."""
    holed = holed_per_100(player)
    return {name: holed_per_100({**player, name: fault}) - holed for name, fault in usual.items()}


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
