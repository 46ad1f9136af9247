"""What each fault costs: putts in a hundred of the fixed set, as the player is and with a yardstick's skill instead.

The yardstick has no bias, and the spread of a tour player or an amateur; a cost is negative where the player is better than
that.
"""

from collections.abc import Iterable, Mapping
from dataclasses import replace
from math import hypot, radians, sqrt
from typing import NamedTuple

from pycore.record.fixed_set import Fault, Name, Player, putts_per_100
from pycore.record.player import Skill
from pycore.record.published import Yardstick
from pycore.stats.intervals import Estimate, Z

# The tour's spread of start of 1.0 degree and of pace of 6.5 % are published (``putt.chance``); that alignment and stroke
# share the start as 0.45 and 0.9 degrees, that reading is off by 10 % of the break, and that the amateur's are in the same
# proportion to his 1.5 degrees, are our assumptions
YARDSTICKS: Mapping[Yardstick, Mapping[Name, float]] = {
    "tour": {"start_line": radians(0.9), "alignment": radians(0.45), "pace": 0.065, "reading": 0.10},
    "amateur": {"start_line": radians(1.35), "alignment": radians(0.675), "pace": 0.085, "reading": 0.15},
}
FIRST_ORDER = 0.07  # of a cost, as a standard deviation: how far the set's first order is off rolls of it (``prove recovery``)
# Three biases and three spreads are looked at, and of a player as good as the yardstick nothing shall be told 95 times in a
# hundred (Bonferroni): how many times as far as half a 95 % interval a bias has to be from none, and a spread from usual
LEANS, SPREADS = 2.638 / Z, 2.394 / Z


class Cost(NamedTuple):
    """Putts in a hundred that a skill costs, and whether it leans: its bias is beyond chance. The interval is as wide as it
    has to be where three are looked at."""

    putts: Estimate
    lean: bool


def costs(skills: Mapping[Name, Skill], against: Yardstick = "tour") -> dict[Name, Cost]:
    """What each skill costs in putts per hundred against the yardstick's: leans first, then spreads, largest first.

    An interval gathers how far the cost moves when each bias and spread goes to the ends of its own, all independent:
    G. Y. Zou and A. Donner, Stat. Med. 27(10):1693-1702, 2008.
    """
    usual = _usual(skills, against)
    # a spread that is not told costs nothing
    skills = {name: _as_usual(skill, usual[name].sd) if skill.untold else skill for name, skill in skills.items()}
    middle: dict[Name, Fault] = {name: Fault(skill.bias.value, skill.sd.value) for name, skill in skills.items()}
    moved = [
        [{**middle, name: fault} for fault in ends]
        for name, skill in skills.items()
        for ends in (
            # a bias of nothing costs least, where it may be that
            [Fault(end, skill.sd.value) for end in (skill.bias.low, _nearest(skill.bias), skill.bias.high)],
            [Fault(skill.bias.value, end) for end in (skill.sd.low, skill.sd.high)],
        )
    ]
    cost = _replaced(middle, usual)
    ends = [[_replaced(player, usual) for player in some] for some in moved]
    found = {}
    for name, value in cost.items():
        changes = [[each[name] - value for each in some] for some in ends]
        down, up = (
            SPREADS * sqrt((Z * FIRST_ORDER * value) ** 2 + sum(end(0.0, *some) ** 2 for some in changes)) for end in (min, max)
        )
        found[name] = Cost(Estimate(value, value - down, value + up), leans(skills[name].bias))
    return dict(sorted(found.items(), key=lambda item: (not item[1].lean, -item[1].putts.value)))


def _as_usual(skill: Skill, sd: float) -> Skill:
    return replace(skill, sd=Estimate(sd, sd, sd))


def _nearest(bias: Estimate) -> float:
    """The bias nearest to none in its interval."""
    return max(bias.low, min(bias.high, 0.0))


def leans(bias: Estimate) -> bool:
    """Whether a bias is beyond chance, among all that is looked at."""
    return bias.value - LEANS * (bias.value - bias.low) > 0 or bias.value + LEANS * (bias.high - bias.value) < 0


def _usual(skills: Iterable[Name], against: Yardstick) -> Player:
    spreads = dict(YARDSTICKS[against])
    if "alignment" not in skills:  # the start line then holds both
        spreads["start_line"] = hypot(spreads["start_line"], spreads["alignment"])
    return {name: Fault(0.0, spreads[name]) for name in skills}


def _replaced(player: Player, usual: Player) -> dict[Name, float]:
    """How many fewer putts in a hundred the player would take with each of the usual skills."""
    taken = putts_per_100(player)
    return {name: taken - putts_per_100({**player, name: fault}) for name, fault in usual.items()}
