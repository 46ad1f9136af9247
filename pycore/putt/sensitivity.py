"""What each error costs: where the ball goes when one thing is not as it was read, or struck."""

from dataclasses import dataclass, replace
from math import inf, radians, sqrt
from typing import Literal

from pycore.putt.putt import Putt
from pycore.putt.solve import Read

Change = Literal["slope", "speed", "start_left", "start_right", "pace_long", "pace_short"]

STEEPER = 0.005  # rise over run
FASTER = 1.0  # ft on the Stimpmeter
TURNED = radians(1.0)
LONGER = 0.05  # of the roll's length


@dataclass(frozen=True)
class Outcome:
    """Where the ball rests, hole covered, from the hole's centre (m; None if it runs away), whether it is holed, and
    how far from the hole's centre it passes (m)."""

    change: Change
    rest: tuple[float, float] | None
    holed: bool
    miss: float


def outcomes(putt: Putt, found: Read) -> list[Outcome]:
    """The read ``found`` struck on a green 0.5 % steeper or a foot faster, or struck 1 degree or 5 % of length off."""
    launch, aim = found.launch, found.aim
    return [
        _outcome("slope", replace(putt, surface=putt.surface.steeper(STEEPER, putt.distance)), launch, aim),
        _outcome("speed", replace(putt, stimp_ft=putt.stimp_ft + FASTER), launch, aim),
        _outcome("start_left", putt, launch, aim + TURNED),
        _outcome("start_right", putt, launch, aim - TURNED),
        _outcome("pace_long", putt, launch * sqrt(1 + LONGER), aim),
        _outcome("pace_short", putt, launch * sqrt(1 - LONGER), aim),
    ]


def _outcome(change: Change, putt: Putt, launch: float, aim: float) -> Outcome:
    roll = putt.roll(launch, aim)
    finish = putt.finish(roll)
    rest = None
    if not roll.runs_away:
        state = roll.at(inf)
        rest = state.x - putt.distance, state.y
    return Outcome(change, rest, finish.holed, finish.offset)
