"""Where a struck ball is at each moment: a skid that may be none, then one roll of ``pycore.putt``.

A ball struck at v0 that slips over the green by a share z of v0 skids on friction mu until it rolls, after 2 z v0 / (7 mu g),
at v0 (1 - 2 z / 7): textbook mechanics of a sphere. From there it goes as the ball that rolled from the start at ``launch``;
before, it is taken to go the same way at other times.
"""

from bisect import bisect_right
from collections.abc import Iterable
from math import cos, sin, sqrt
from typing import NamedTuple

from pycore.constants import GRAVITY, ROLLING
from pycore.green.roll_test import SKID
from pycore.putt.putt import Putt

NODES = 18  # moments of a roll that are worked out; between them it follows a cubic
LEAST_SLOWING = 0.02  # m/s2; a ball that slows less is as good as steady over the length of a skid

type Place = tuple[float, float]


class Strike(NamedTuple):
    """Direction (rad), launch (m/s) of the rolling ball that runs the same way, moment (s) of the strike, and the share of
    its speed by which the ball slips at first."""

    aim: float
    launch: float
    moment: float
    slip: float


class Way:
    """The way of a rolling ball, hole covered, as places (m) over the time (s) since it lay at 0, 0."""

    def __init__(self, putt: Putt, launch: float, aim: float) -> None:
        roll = putt.roll(launch, aim)
        states = [roll.at(roll.s_left(1 - i / (NODES - 1))) for i in range(NODES)]
        self.roll = roll
        self.launch = launch
        self.times = [state.t for state in states]
        self.nodes = [
            (state.t, state.x, state.y, state.speed * cos(state.heading), state.speed * sin(state.heading)) for state in states
        ]
        pull = putt.surface.downhill(0.0, 0.0)
        self.slowing = max(LEAST_SLOWING, putt.drag - ROLLING * GRAVITY * (pull[0] * cos(aim) + pull[1] * sin(aim)))

    def at(self, time: float) -> Place:
        """Where the rolling ball is; at rest before 0 and after the end."""
        if time <= 0:
            return 0.0, 0.0
        i = bisect_right(self.times, time)
        if i == NODES:
            return self.nodes[-1][1], self.nodes[-1][2]
        t0, x0, y0, u0, v0 = self.nodes[i - 1]
        t1, x1, y1, u1, v1 = self.nodes[i]
        step = t1 - t0
        s = (time - t0) / step
        a, b = s * s * (3 - 2 * s), s * (1 - s) * step
        c, d = b * (1 - s), b * s
        return x0 + a * (x1 - x0) + c * u0 - d * u1, y0 + a * (y1 - y0) + c * v0 - d * v1

    def speed(self, time: float) -> float:
        """How fast it then is, m/s."""
        if not 0 <= time < self.times[-1]:
            return 0.0
        (x0, y0), (x1, y1) = self.at(time), self.at(time + SOON)
        return sqrt((x1 - x0) ** 2 + (y1 - y0) ** 2) / SOON


SOON = 1e-3  # s


class Ball:
    """A struck ball on its ``way``."""

    def __init__(self, way: Way, moment: float, slip: float) -> None:
        self.way, self.moment = way, moment
        slows = SKID * GRAVITY
        # the rolling ball has the speed of the struck one where the skid ends: launch^2 = v_end^2 + 2 slowing way
        self.struck = way.launch / sqrt(
            (1 - 2 * slip / 7) ** 2 + 2 * way.slowing * (1 - slip / 7) * 2 * slip / (7 * slows),
        )
        self.skids = 2 * slip * self.struck / (7 * slows)
        length = self.struck * (1 - slip / 7) * self.skids
        self.late = self.skids - self._rolled(length)

    def _rolled(self, length: float) -> float:
        """When the rolling ball has gone ``length`` (m)."""
        launch = self.way.launch
        return 2 * length / (launch + sqrt(max(0.0, launch * launch - 2 * self.way.slowing * length)))

    def since(self, time: float) -> float:
        """The time (s) that the rolling ball has at the moment ``time``."""
        gone = time - self.moment
        if gone <= 0:
            return 0.0
        if gone >= self.skids:
            return gone - self.late
        return self._rolled(self.struck * gone - SKID * GRAVITY * gone * gone / 2)

    def places(self, times: Iterable[float]) -> list[Place]:
        """Where it is at each moment."""
        return [self.way.at(self.since(time)) for time in times]
