"""A ball that rolls on a plane, in closed form.

The ball slows by d = (5/7) rho g cos(slope) and is pulled downhill by (5/7) g sin(slope) = e d. Its state is followed by
w, which falls from 1 at the start to 0 at rest, with dw/w = -d dt/v: along it nothing is singular, and level (e = 0),
straight up and straight down need no case of their own. With f the angle of the path from straight downhill, tan(f/2)
is proportional to w^e; speed, time and place are sums of powers of w. Since w may fall below any number that a computer
can hold before the ball rests, states are asked for by s = -ln w.
Holds while the ball rolls: no skid, no bounce, no grain. Equations of motion: Penner, Can. J. Phys. 80(2):83-96, 2002.
"""

from functools import cached_property
from math import atan2, cos, exp, hypot, inf, log, sin
from typing import NamedTuple, Protocol

from pycore.roots import zero

TOO_FAR = 60.0  # m; a ball this far from its start has run away
LONGEST = 200.0  # of s; a ball struck straight up a slope that does not hold it is then as good as still


class State(NamedTuple):
    """Time (s), place (m), heading (rad, anticlockwise from the line) and speed (m/s) of the ball."""

    t: float
    x: float
    y: float
    heading: float
    speed: float


class Roll(Protocol):
    """What every roll can tell, whichever way it was found; ``runs_away`` is set where the ball comes to no rest."""

    start: State
    runs_away: bool

    def at(self, s: float) -> State:
        """State at ``s``: 0 at the start, infinity at rest."""
        ...

    def s_left(self, share: float) -> float:
        """The s at which about ``share`` of the speed is left: 1 at the start, 0 at rest or ``TOO_FAR`` away."""
        ...

    def share_left(self, s: float) -> float:
        """The inverse of ``s_left``."""
        ...

    def to_rest(self) -> float:
        """Length of the whole path (m); infinite where the ball runs away."""
        ...

    def before_rest(self, length: float) -> State:
        """State with ``length`` (m) of path left to rest, on a ball that rests and rolls at least that far."""
        ...


class PlaneRoll:
    """A roll on a plane from ``start``.

    Parameters
    ----------
    drag : what friction takes, m/s2.
    tilt : pull of gravity over drag, so slope over rho; at 1 or more the ball never stops.
    downhill : direction straight downhill, rad.
    """

    def __init__(self, drag: float, tilt: float, downhill: float, start: State) -> None:
        self.start = start
        self.drag, self.tilt, self.downhill = drag, tilt, downhill
        half = (start.heading - downhill) / 2
        self.c, self.s = cos(half), sin(half)
        self.along, self.across = cos(downhill), sin(downhill)
        self.runs_away = tilt >= 1

    def at(self, s: float) -> State:
        """State at ``s``: 0 at the start, infinity at rest."""
        e, c, d = self.tilt, self.c, self.s
        cc, dd = c * c, d * d
        w, turn, slow = exp(-s), exp(-e * s) if e else 1.0, exp((e - 1) * s)
        fast = w * turn
        start = self.start
        scale = start.speed / self.drag
        t = scale * (cc * _area(s, slow, 1 - e) + dd * (1 - fast) / (1 + e))
        scale *= start.speed
        down = scale * (cc * cc * _area(s, slow * slow, 2 - 2 * e) - dd * dd * (1 - fast * fast) / (2 + 2 * e))
        side = 2 * scale * c * d * (cc * _area(s, w * slow, 2 - e) + dd * (1 - w * fast) / (2 + e))
        return State(
            start.t + t,
            start.x + down * self.along - side * self.across,
            start.y + down * self.across + side * self.along,
            self.downhill + 2 * atan2(d * turn, c),
            start.speed * (cc * slow + dd * fast),
        )

    def s_left(self, share: float) -> float:
        """The s at which about ``share`` of the speed is left: 1 at the start, 0 at rest or ``TOO_FAR`` away."""
        if not self.runs_away:
            return -log(share) / (1 - self.tilt) if share else inf
        return (1 - share) * self._s_far

    def share_left(self, s: float) -> float:
        """The inverse of ``s_left``."""
        return 1 - s / self._s_far if self.runs_away else exp((self.tilt - 1) * s)

    @cached_property
    def _s_far(self) -> float:
        s, away = 0.0, 0.0
        while away < TOO_FAR and s < LONGEST:
            s += 0.5
            state = self.at(s)
            away = hypot(state.x - self.start.x, state.y - self.start.y)
        return s

    def to_rest(self) -> float:
        """Length of the whole path (m); infinite where the ball runs away."""
        return self.rest_after(self.start)

    def before_rest(self, length: float) -> State:
        """State with ``length`` (m) of path left to rest, on a ball that rests and rolls at least that far."""

        def over(share: float) -> float:
            return self.rest_after(self.at(self.s_left(share))) - length

        if not length:
            return self.at(inf)
        return self.at(self.s_left(zero(over, 0.0, 1.0, -length, self.to_rest() - length, 1e-12)))

    def rest_after(self, state: State) -> float:
        """Length of the path (m) from ``state``, on this roll, to rest."""
        return state.speed**2 / self.drag * rest_factor((state.heading - self.downhill) / 2, self.tilt)


def rest_factor(half: float, tilt: float) -> float:
    """Path to rest times drag over speed squared, for half the angle from straight downhill (rad); infinite if never."""
    if tilt >= 1:
        return inf
    cc, ss = cos(half) ** 2, sin(half) ** 2
    return cc * cc / (2 - 2 * tilt) + cc * ss + ss * ss / (2 + 2 * tilt)


def _area(s: float, power: float, p: float) -> float:
    """Integral of w^(p-1) from w = e^-s to 1, where ``power`` is w^p."""
    return (1 - power) / p if abs(p) > 1e-9 else s
