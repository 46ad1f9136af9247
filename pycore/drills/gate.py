"""The start gate: which starts pass it, and what that says of putts that are holed."""

from dataclasses import dataclass, replace
from math import acos, atan2, cos, hypot, sin

from pycore.green.surface import Station, Surface
from pycore.putt.chance import Player, make_probability
from pycore.putt.putt import Putt
from pycore.putt.solve import NoPutt, read
from pycore.putt.window import Window, window
from pycore.units import FOOT

TRIAL = 8 * FOOT  # m; the level putt that the gate is held against
PAST = FOOT  # m


@dataclass(frozen=True)
class Gate:
    """Two posts ``gap`` apart (clear width, m), ``at`` metres from the ball; round posts of ``post`` radius, 0 for tees."""

    gap: float
    at: float
    ball: float
    post: float

    @property
    def half_angle(self) -> float:
        """Largest start to either side, rad, at which a ball of radius ``ball`` touches neither post."""
        centre = self.gap / 2 + self.post
        return acos((self.ball + self.post) / hypot(centre, self.at)) - atan2(self.at, centre)


def gap_for(half_angle: float, at: float, ball: float, post: float) -> float:
    """The gap whose ``half_angle`` is that."""
    # the post's centre lies ball + post from the path
    return 2 * ((ball + post + at * sin(half_angle)) / cos(half_angle) - post)


def share_of_holed(half_angle: float, stimp_ft: float, player: Player) -> float | None:
    """Of a player's holed level 8 ft putts, the share that start within ``half_angle``; None where none is holed."""
    putt = Putt(TRIAL, Surface(Station.measured(0.0, 0.0, 0.0)), stimp_ft, PAST)
    found = read(putt)
    holes = None if isinstance(found, NoPutt) else window(putt, found)
    if isinstance(found, NoPutt) or holes is None:
        return None
    as_read = replace(player, slope_sd=0.0)
    through = Window(
        holes.launch,
        tuple(max(edge, -half_angle) for edge in holes.low),
        tuple(min(edge, half_angle) for edge in holes.high),
    )
    holed = make_probability(putt, found, holes, as_read)
    return make_probability(putt, found, through, as_read) / holed if holed else None
