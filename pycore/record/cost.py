"""What each fault costs: putts holed in a hundred of a fixed set, with the fault and without it.

The set is 24 putts of 1 to 6 m (about 3 to 20 ft) over 2 % at 10 ft, four of each length: down and up, breaking either
way, meant to finish 0.3 m past. A fault removed is a skill without bias and without spread.
"""

from collections.abc import Mapping
from functools import cache
from math import erf, exp, hypot, pi, sqrt
from typing import Literal, NamedTuple

from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.putt.read import solve
from pycore.record.opening import Opening, opening
from pycore.record.player import Skill
from pycore.stats.intervals import Estimate

Name = Literal["alignment", "start_line", "pace", "reading"]

LENGTHS_M = (1.0, 1.5, 2.0, 3.0, 4.5, 6.0)
FALLS_DEG = (45.0, 135.0, 225.0, 315.0)
SLOPE_PERCENT = 2.0
STIMP_FT = 10.0
PAST_M = 0.3
STEADY = 1e-6  # rad, and of the roll; as good as no spread


class Fault(NamedTuple):
    """Bias and spread of a skill."""

    bias: float
    sd: float


type Player = Mapping[Name, Fault]
NONE = Fault(0.0, 0.0)


def holed_per_100(player: Player) -> float:
    """Putts of the set that the player holes, in a hundred."""
    putts = _standard()
    return 100 * sum(_share(aim, window, player) for aim, window in putts) / len(putts)


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
    found = {}
    for name in skills:
        cost = _cost(middle, name)
        changes = [[_cost(player, name) - cost for player in pair] for pair in moved]
        down, up = (sqrt(sum(end(0.0, *pair) ** 2 for pair in changes)) for end in (min, max))
        found[name] = Estimate(cost, cost - down, cost + up)
    return dict(sorted(found.items(), key=lambda item: -item[1].value))


def _cost(player: Player, name: Name) -> float:
    return holed_per_100({**player, name: NONE}) - holed_per_100(player)


@cache
def _standard() -> list[tuple[float, Opening]]:
    """Aim (rad) and opening of each putt of the set."""
    putts = []
    for length in LENGTHS_M:
        for fall in FALLS_DEG:
            putt = Putt(length, Surface(Station.measured(0.0, SLOPE_PERCENT, fall)), STIMP_FT, PAST_M)
            found = solve(putt)
            window = found and opening(putt, found)
            assert found
            assert window
            putts.append((found.aim, window))
    return putts


def _share(aim: float, window: Opening, player: Player) -> float:
    """Share of one putt that the player holes."""
    pace, reading = player["pace"], player.get("reading", NONE)
    lines = [player["start_line"], player.get("alignment", NONE)]
    bias = aim * reading.bias + sum(line.bias for line in lines)
    sd = max(STEADY, hypot(aim * reading.sd, *(line.sd for line in lines)))
    spread = max(STEADY, pace.sd)
    total = 0.0
    for length, weight, low, high in window.rows(pace.bias, spread, bias):
        y = (length - pace.bias) / spread
        total += weight * exp(-y * y / 2) * (erf(high / (sd * sqrt(2))) - erf(low / (sd * sqrt(2))))
    return total / (2 * spread * sqrt(2 * pi))
