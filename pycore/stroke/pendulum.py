"""The stroke as a pendulum driven at twice its own frequency.

At rest at the ball when it starts, x(t) = sin 2t - 2 sin t in units of the pendulum's own frequency: away from the ball
to the top at 2 pi / 3, back at the ball at pi with no acceleration left, as far through at 4 pi / 3. Backswing to
forward swing is 2 : 1. Reference: R. Grober, arXiv:0903.1762.
"""

from dataclasses import dataclass
from math import cos, pi, sin, sqrt

TOP, IMPACT = 2 * pi / 3, pi
REACH = 3 * sqrt(3) / 2  # how far x goes to either side


def position(phase: float) -> float:
    """Where the putter's head is: -1 at the top of the backswing, 0 at the ball, 1 at the finish."""
    return (sin(2 * phase) - 2 * sin(phase)) / REACH


def rate(phase: float) -> float:
    """Change of ``position`` with phase."""
    return 2 * (cos(2 * phase) - cos(phase)) / REACH


@dataclass(frozen=True)
class Swing:
    """How long the backswing and the swing from the top to the ball take, s.

    Where they are not 2 : 1 the pendulum's curve is stretched on either side of the top: an interpolation of ours.
    """

    back: float
    forward: float

    @property
    def finish(self) -> float:
        """When the swing ends, s from its start."""
        return self.back + 2 * self.forward

    def phase(self, t: float) -> float:
        """The pendulum's phase ``t`` seconds after the start."""
        if t < self.back:
            return TOP * t / self.back
        return TOP + (IMPACT - TOP) * (t - self.back) / self.forward

    def position(self, t: float) -> float:
        """Where the head is ``t`` seconds after the start, 0 to ``finish``."""
        return position(self.phase(t))

    def rate(self, t: float) -> float:
        """Speed of the head ``t`` seconds after the start, in backswings a second."""
        pace = TOP / self.back if t < self.back else (IMPACT - TOP) / self.forward
        return rate(self.phase(t)) * pace
