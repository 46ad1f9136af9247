"""The beat to swing to: every event of a row of strokes, and where the head is between them."""

from dataclasses import dataclass
from math import cos, pi
from typing import Literal

from pycore.stroke.pendulum import Swing

Kind = Literal["count", "start", "top", "impact", "finish"]
PENDULUM_RATIO = 2.0  # Grober, arXiv:0903.1762
TICK = 0.01  # s; a whole number of samples at 44.1 and at 48 kHz, so that a cycle loops without drift
RETURN = 0.6  # share of the rest in which the head comes back to the ball
STEP = 0.02  # s; between two points of the curve


@dataclass(frozen=True)
class Tempo:
    """A row of strokes.

    Parameters
    ----------
    swing : one stroke's times.
    rest : from a finish to the next start, s; up to half a tick is added or taken, so that the cycle is whole ticks.
    strokes, count_in : how many strokes, and how many beats before the first; a beat is as long as a backswing.
    """

    swing: Swing
    rest: float
    strokes: int
    count_in: int

    @property
    def cycle(self) -> float:
        """From one start to the next, s."""
        return _whole(self.swing.finish + self.rest)

    @property
    def beat(self) -> float:
        """Between two beats of the count-in, s."""
        return _whole(self.swing.back)

    @property
    def lead(self) -> float:
        """From the first beat to the first start, s."""
        return self.count_in * self.beat

    def events(self) -> list[tuple[float, Kind, int]]:
        """What happens, from the first beat on: seconds, what, and in which stroke (0 in the count-in)."""
        back, forward = self.swing.back, self.swing.forward
        marks: list[tuple[Kind, float]] = [
            ("start", 0.0),
            ("top", back),
            ("impact", back + forward),
            ("finish", self.swing.finish),
        ]
        count: list[tuple[float, Kind, int]] = [(i * self.beat, "count", 0) for i in range(self.count_in)]
        return count + [
            (self.lead + stroke * self.cycle + t, kind, stroke + 1) for stroke in range(self.strokes) for kind, t in marks
        ]

    def curve(self) -> list[tuple[float, float]]:
        """The head over one cycle: seconds from the start, and position, -1 at the top, 0 at the ball, 1 at the finish."""
        swing = self.swing
        marks = {0.0, swing.back, swing.back + swing.forward, swing.finish, self.cycle}
        times = sorted(marks | {i * STEP for i in range(int(self.cycle / STEP) + 1)})
        return [(t, self._position(t)) for t in times]

    def _position(self, t: float) -> float:
        if t <= self.swing.finish:
            return self.swing.position(t)
        done = min(1.0, (t - self.swing.finish) / (RETURN * self.rest))
        return (1 + cos(pi * done)) / 2


def _whole(seconds: float) -> float:
    return max(1, round(seconds / TICK)) * TICK
