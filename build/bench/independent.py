"""Another way to the same putts: SciPy's DOP853 in time, written from Penner's equations without the engine's code."""

from bisect import bisect
from cmath import rect
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from math import hypot, radians, sqrt

import numpy as np
from numpy.typing import NDArray
from scipy.integrate import solve_ivp
from scipy.optimize import root

GRAVITY = 9.80665  # m/s2, CGPM
RELEASE = 1.83  # m/s, Holmes 1991
FOOT = 0.3048  # m
PRECISION = 1e-9
AT_REST = 1e-4  # m/s; with less than this a ball rolls a hundredth of a micrometre

Vector = NDArray[np.float64]


@dataclass(frozen=True)
class Green:
    """``stations``: (x m, slope %, degrees clockwise from the ball-to-hole line to where it falls), in order."""

    stimp_ft: float
    stations: Sequence[tuple[float, float, float]]

    @cached_property
    def rho(self) -> float:
        return RELEASE**2 / (2 * self.stimp_ft * FOOT) / (5 / 7 * GRAVITY)

    @cached_property
    def _table(self) -> tuple[list[float], list[complex]]:
        """Places, and the downhill vector at each, as x + iy."""
        return [x for x, _, _ in self.stations], [rect(slope / 100, -radians(fall)) for _, slope, fall in self.stations]

    def downhill(self, x: float, y: float) -> tuple[float, float]:
        """Downhill vector, rise over run."""
        places, vectors = self._table
        i = bisect(places, x)
        if not 0 < i < len(places):
            vector = vectors[min(i, len(places) - 1)]
            return vector.real, vector.imag
        bend = (vectors[i] - vectors[i - 1]) / (places[i] - places[i - 1])
        here = vectors[i - 1] + bend * (x - places[i - 1])
        return here.real + y * bend.imag, here.imag


def roll(green: Green, launch: float, aim: float) -> tuple[Vector, Vector]:
    """Times (s) and states (x, y, vx, vy, length of path; rows) of a ball, to its rest."""

    def rate(_: float, state: Vector) -> list[float]:
        x, y, vx, vy, _length = state.tolist()
        gx, gy = green.downhill(x, y)
        speed = hypot(vx, vy)
        force = 5 / 7 * GRAVITY / sqrt(1 + gx * gx + gy * gy)
        return [vx, vy, force * (gx - green.rho * vx / speed), force * (gy - green.rho * vy / speed), speed]

    def slow(_: float, state: Vector) -> float:
        return hypot(state[2], state[3]) - AT_REST

    slow.terminal = True  # type: ignore[attr-defined]
    start = [0.0, 0.0, launch * np.cos(aim), launch * np.sin(aim), 0.0]
    solved = solve_ivp(rate, (0, 200), start, "DOP853", events=slow, rtol=PRECISION, atol=PRECISION, dense_output=True)
    times = np.linspace(0, solved.t[-1], 2001)
    return times, solved.sol(times)


def miss(green: Green, distance: float, past: float, launch: float, aim: float) -> tuple[float, float]:
    """Where the ball is ``past`` metres of path before its rest, from the hole's centre: along and left (m)."""
    _, states = roll(green, launch, aim)
    gone = states[4, -1] - past
    if gone < 0:
        return float(-distance + gone * np.cos(aim)), float(gone * np.sin(aim))
    x, y = (float(np.interp(gone, states[4], states[i])) for i in (0, 1))
    return x - distance, y


def shoot(green: Green, distance: float, past: float) -> tuple[float, float]:
    """Launch (m/s) and aim (rad) of the putt, by shooting from the level putt along the straight line, or from beside it."""
    level = np.sqrt(2 * 5 / 7 * GRAVITY * green.rho * (distance + past))

    def missed(strike: Vector) -> tuple[float, float]:
        return miss(green, distance, past, float(strike[0]), float(strike[1]))

    for share, aim in ((1.0, 0.0), (0.9, 0.0), (0.9, 0.1), (0.9, -0.1)):
        found = root(missed, [share * level, aim], tol=1e-8)
        if found.success:
            return float(found.x[0]), float(found.x[1])
    raise ArithmeticError(found.message)
