"""The same putt on a green of another speed, and what is to be expected of a green of one speed."""

from dataclasses import dataclass, replace
from math import pi, radians

from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.putt.solve import Read, solve
from pycore.roots import zero

STRAIGHT = radians(0.2)  # an aim below this is as good as straight: no slope breaks like it
EXACT = 1e-6  # of the slope
WIDER = 1.5  # times; the next slope that is tried
FLATTEST, STEEPEST = 0.05, 20.0  # of the slope; where the like of a putt is sought


def steeper(putt: Putt, times: float) -> Putt:
    """The putt on a green ``times`` as steep."""
    return replace(putt, surface=putt.surface.times(times))


def likeness(today: Read, home: Putt) -> float | None:
    """How many times as steep the home green would be to break like ``today``; None for a straight putt, or if never."""
    if abs(today.aim) < STRAIGHT:
        return None

    def short(times: float) -> float:
        """How much less it breaks at home, as a share; a slope that no ball holds breaks more than enough."""
        found = solve(steeper(home, times))
        return found.aim / today.aim - 1 if found else 1.0

    low, high = 1.0, 1.0
    while short(low) > 0 and low > FLATTEST:
        low /= WIDER
    while short(high) < 0 and high < STEEPEST:
        high *= WIDER
    below, above = short(low), short(high)
    if below > 0 or above < 0:
        return None
    times = zero(short, low, high, below, above, EXACT)
    return times if solve(steeper(home, times)) else None


@dataclass(frozen=True)
class Cell:
    """A distance on a slope: aim (rad) where it lies across, and the pace straight up and down (m on the level); None if
    no ball stops there."""

    aim: float | None
    up: float | None
    down: float | None


def cell(distance: float, slope: float, stimp_ft: float, past: float) -> Cell:
    """One place of the table."""

    def found(downhill: float) -> tuple[Read | None, Putt]:
        putt = Putt(distance, Surface(Station(0.0, slope, downhill)), stimp_ft, past)
        return solve(putt), putt

    def plays_like(downhill: float) -> float | None:
        read, putt = found(downhill)
        return putt.plays_like(read.launch) if read else None

    across, _ = found(-pi / 2)
    return Cell(across.aim if across else None, plays_like(pi), plays_like(0.0))
