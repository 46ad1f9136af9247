"""How a phone turns: rates about its own axes, and the one axis that a stroke turns about."""

from collections.abc import Sequence
from itertools import pairwise
from math import radians, sqrt

from pycore.attitude import axes
from pycore.stroke.strokes import middle

type Vector = tuple[float, float, float]
Turning = Sequence[tuple[float, Vector]]  # s, rad/s about the phone's x, y, z

ROUNDS = 60  # of a power iteration: its axis is exact to rounding long before


def from_angles(samples: Sequence[tuple[float, float, float, float]]) -> list[tuple[float, Vector]]:
    """Rates between samples of t_s, alpha, beta, gamma in degrees, as a browser gives the phone's orientation.

    The step between two is taken as one turn, so that no angle's own jump counts.
    """
    turns = []
    for (t0, *before), (t1, *after) in pairwise(samples):
        a, b = axes(*map(radians, before)), axes(*map(radians, after))
        step = [[sum(a[i][k] * b[j][k] for k in range(3)) for j in range(3)] for i in range(3)]
        twice = 2 * (t1 - t0)
        turns.append(
            (
                (t0 + t1) / 2,
                ((step[2][1] - step[1][2]) / twice, (step[0][2] - step[2][0]) / twice, (step[1][0] - step[0][1]) / twice),
            )
        )
    return turns


def about_main_axis(turning: Turning) -> list[tuple[float, float]]:
    """The rate about the axis with the most turning, less what it is at rest; its sign may be either."""
    rest = [middle(rates[i] for _, rates in turning) for i in range(3)]
    moved = [[rates[i] - rest[i] for i in range(3)] for _, rates in turning]
    spread = [[sum(row[i] * row[j] for row in moved) for j in range(3)] for i in range(3)]
    axis = [1.0, 0.9, 0.8]  # along none of the phone's planes, so that no axis is missed
    for _ in range(ROUNDS):
        axis = [sum(spread[i][j] * axis[j] for j in range(3)) for i in range(3)]
        size = sqrt(sum(part * part for part in axis)) or 1.0
        axis = [part / size for part in axis]
    return [(t, sum(row[i] * axis[i] for i in range(3))) for (t, _), row in zip(turning, moved, strict=True)]
