"""Many strokes at once, by numpy: rolls, reads and putts out, written without the engine's code.

Equations of motion: Penner, Can. J. Phys. 80(2):83-96, 2002, followed by Runge and Kutta's fourth order in s, of which
every e-fold is what friction alone takes off the speed; the hole: Penner 2002, Eq. 23 and 30. Places are complex, x + iy,
the ball at 0 and the hole at ``distance`` on the line.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray
from scipy.interpolate import RectBivariateSpline
from scipy.stats import norm, qmc

GRAVITY = 9.80665  # m/s2, CGPM
RELEASE = 1.83  # m/s, Holmes 1991
FOOT = 0.3048  # m
HOLE = 0.054  # m, Rules of Golf
FASTEST = 1.63  # m/s, Penner 2002
STEP, STEPS = 0.25, 60  # of s; e^-15 of the speed is then left on the level
NUDGE = 1e-4
CORRECTIONS = 8
MISREADS = 9  # nodes along and across, over which reads are interpolated
MOST = 5.0  # standard deviations; how far out

type Vector = NDArray[np.float64]
type Places = NDArray[np.complex128]
type Slope = Callable[[Places], Places]


@dataclass(frozen=True)
class Rolls:
    """Of each ball: the states after each step (rows), what s adds to them, and whether the hole took it."""

    place: Places
    onward: Places
    length: Vector
    forward: Vector
    holed: NDArray[np.bool_]

    @property
    def rest(self) -> Places:
        """Where each ball stops, the hole covered."""
        end: Places = self.place[-1]
        return end


def green(stations: Sequence[tuple[float, float, float]]) -> Slope:
    """Downhill vectors (rise over run) of ``stations``: x m, slope %, degrees clockwise from the line to where it falls."""
    x = np.array([each[0] for each in stations])
    tilts = np.array([slope / 100 * np.exp(-1j * np.radians(fall)) for _, slope, fall in stations])

    def slope(place: Places) -> Places:
        if len(x) == 1:
            return np.full(place.shape, tilts[0])
        i = np.clip(np.searchsorted(x, place.real) - 1, 0, len(x) - 2)
        inside = (place.real > x[0]) & (place.real < x[-1])
        bend = np.where(inside, np.diff(tilts.imag)[i] / np.diff(x)[i], 0.0)
        gx: Places = np.interp(place.real, x, tilts.real) + place.imag * bend + 1j * np.interp(place.real, x, tilts.imag)
        return gx

    return slope


def roll(slope: Slope, stimp_ft: Vector | float, distance: Vector | float, strike: tuple[Vector, Vector]) -> Rolls:
    """Balls struck at ``strike``: launches (m/s) and aims (rad)."""
    rho = RELEASE**2 / (2 * np.asarray(stimp_ft) * FOOT) / (5 / 7 * GRAVITY)

    def rate(place: Places, heading: Vector, speed: Vector) -> tuple[Places, Vector, Vector, Vector]:
        tilt = slope(place)
        ahead = np.exp(1j * heading)
        pull = tilt * ahead.conjugate() / rho
        forward = speed**2 / (5 / 7 * GRAVITY * rho / np.sqrt(1 + np.abs(tilt) ** 2))
        return forward * ahead, pull.imag, speed * (pull.real - 1), forward

    launch, aim = strike
    now = (np.zeros(launch.shape, complex), aim, launch, np.zeros(launch.shape))
    rows = []
    holed = np.zeros(launch.shape, bool)
    passed = np.zeros(launch.shape, bool)
    for _ in range(STEPS):
        a = rate(*now[:3])
        b = rate(*(state + STEP / 2 * each for state, each in zip(now[:3], a, strict=False)))
        c = rate(*(state + STEP / 2 * each for state, each in zip(now[:3], b, strict=False)))
        d = rate(*(state + STEP * each for state, each in zip(now[:3], c, strict=False)))
        after: Any = tuple(
            state + STEP / 6 * (one + 2 * two + 2 * three + four)
            for state, one, two, three, four in zip(now, a, b, c, d, strict=True)
        )
        rows.append((now[0], a[0], now[3], a[3]))
        past, under = _passes(now, a, after, rate(*after[:3]), distance, slope)
        passed, holed = passed | past, holed | under
        now = after
    last = rate(*now[:3])
    rows.append((now[0], last[0], now[3], last[3]))
    # a ball too fast for the hole where it passed may come to rest over it; one that never passed may too
    at_rest = np.abs(now[0] - distance)
    takes = _capture(at_rest, slope(now[0]), now[1])
    holed |= (at_rest < HOLE) & (takes >= now[2])
    place, onward, length, forward = (np.array(part) for part in zip(*rows, strict=True))
    return Rolls(place, onward, length, forward, holed)


def _capture(offset: Vector, tilt: Places, heading: Vector) -> Vector:
    """Fastest speed at which the hole takes a ball that passes its centre so far off."""
    uphill = -tilt / np.sqrt(1 + np.abs(tilt) ** 2)
    rise = (uphill * np.exp(-1j * heading)).real
    found: Vector = FASTEST * (1 - (offset / HOLE) ** 2) / np.sqrt(1 - rise)
    return found


def _passes(now: Any, rate: Any, after: Any, later: Any, distance: Vector | float, slope: Slope) -> tuple[Any, Any]:
    """Which balls are nearest the hole within this step, and which of them it takes."""
    to, to_after = now[0] - distance, after[0] - distance
    leaving, left = (to * rate[0].conjugate()).real, (to_after * later[0].conjugate()).real
    here = (leaving < 0) & (left >= 0) & (np.minimum(np.abs(to), np.abs(to_after)) < 1.0)
    under = np.zeros(here.shape, bool)
    if not here.any():
        return here, under
    p, q, dp, dq = to[here], to_after[here], rate[0][here] * STEP, later[0][here] * STEP
    low, high = np.zeros(p.shape), np.ones(p.shape)
    for _ in range(30):
        t = (low + high) / 2
        place = p * (1 + 2 * t) * (1 - t) ** 2 + q * t**2 * (3 - 2 * t) + dp * t * (1 - t) ** 2 - dq * t**2 * (1 - t)
        way = (q - p) * 6 * t * (1 - t) + dp * (1 - t) * (1 - 3 * t) + dq * t * (3 * t - 2)
        before = (place * way.conjugate()).real < 0
        low, high = np.where(before, t, low), np.where(before, high, t)
    h, k = rate[2][here] * STEP, later[2][here] * STEP
    v, w = now[2][here], after[2][here]
    speed = v * (1 + 2 * t) * (1 - t) ** 2 + w * t**2 * (3 - 2 * t) + h * t * (1 - t) ** 2 - k * t**2 * (1 - t)
    heading = now[1][here] * (1 - t) + after[1][here] * t
    hole = slope(np.broadcast_to(np.asarray(distance, complex), here.shape))[here]
    under[here] = _capture(np.abs(place), hole, heading) >= speed
    return here, under


def read(slope: Slope, stimp_ft: Vector | float, distance: Vector | float, past: float, tilt: Places) -> tuple[Vector, Vector]:
    """Launches and aims that take a ball over the hole ``past`` (m) before its rest, on the green misread by ``tilt``."""

    def seen(place: Places) -> Places:
        return slope(place) + tilt

    def miss(launch: Vector, aim: Vector) -> Places:
        rolls = roll(seen, stimp_ft, distance, (launch, aim))
        gone = rolls.length[-1] - past
        i = np.clip((rolls.length <= gone).sum(axis=0) - 1, 0, STEPS - 1)
        balls = np.arange(gone.size)
        low, high = np.zeros(gone.shape), np.ones(gone.shape)
        l0, l1 = rolls.length[i, balls], rolls.length[i + 1, balls]
        f0, f1 = rolls.forward[i, balls] * STEP, rolls.forward[i + 1, balls] * STEP
        for _ in range(40):
            t = (low + high) / 2
            at = l0 * (1 + 2 * t) * (1 - t) ** 2 + l1 * t**2 * (3 - 2 * t) + f0 * t * (1 - t) ** 2 - f1 * t**2 * (1 - t)
            low, high = np.where(at < gone, t, low), np.where(at < gone, high, t)
        p, q = rolls.place[i, balls], rolls.place[i + 1, balls]
        dp, dq = rolls.onward[i, balls] * STEP, rolls.onward[i + 1, balls] * STEP
        place = p * (1 + 2 * t) * (1 - t) ** 2 + q * t**2 * (3 - 2 * t) + dp * t * (1 - t) ** 2 - dq * t**2 * (1 - t)
        short = np.where(gone < 0, gone, 0.0) * np.exp(1j * aim)
        found: Places = np.where(gone < 0, short, place) - distance
        return found

    rho = RELEASE**2 / (2 * np.asarray(stimp_ft) * FOOT) / (5 / 7 * GRAVITY)
    length = np.broadcast_to(np.asarray(distance, float), tilt.shape)
    ahead = slope(np.asarray(length * 0.7, complex)) + tilt
    launch = np.sqrt(2 * (5 / 7) * GRAVITY * rho * (length + past) * np.maximum(0.2, 1 - ahead.real / rho))
    aim = -ahead.imag / rho * 0.5
    for _ in range(CORRECTIONS):
        now = miss(launch, aim)
        turned, harder = miss(launch, aim + NUDGE), miss(launch * (1 + NUDGE), aim)
        by_aim, by_launch = (turned - now) / NUDGE, (harder - now) / NUDGE
        area = (by_aim.conjugate() * by_launch).imag
        d_aim, d_launch = (by_launch.conjugate() * now).imag / area, -(by_aim.conjugate() * now).imag / area
        damp = 0.3 / np.maximum(0.3, np.abs(d_aim) + np.abs(d_launch))
        launch, aim = launch * np.exp(damp * d_launch), aim + damp * d_aim
    return launch, aim


def normals(count: int, parts: int, seed: int) -> Vector:
    """``parts`` rows of ``count`` normal deviates, spread evenly: scrambled Sobol points (``count`` a power of 2)."""
    points = qmc.Sobol(parts, seed=seed).random(count)
    found: Vector = norm.ppf(np.clip(points, 1e-9, 1 - 1e-9)).T
    return found


@dataclass(frozen=True)
class Golfer:
    """Spreads of start line (rad), length (of the roll) and tilt read (rise over run, along and across)."""

    line: float
    pace: float
    tilt: float


def strikes(
    slope: Slope, stimp_ft: float, distance: float, past: float, golfer: Golfer, deviates: Vector
) -> tuple[Vector, Vector]:
    """Launches and aims of a golfer who reads and strikes as ``deviates`` (4 rows) say."""
    if golfer.tilt:
        nodes = MOST * golfer.tilt * np.linspace(-1, 1, MISREADS)
        along, across = np.meshgrid(nodes, nodes, indexing="ij")
        launch, aim = read(slope, stimp_ft, distance, past, (along + 1j * across).ravel())
        grid = (MISREADS, MISREADS)
        u, v = np.clip(deviates[:2], -MOST, MOST) * golfer.tilt
        launch = RectBivariateSpline(nodes, nodes, launch.reshape(grid), s=0)(u, v, grid=False)
        aim = RectBivariateSpline(nodes, nodes, aim.reshape(grid), s=0)(u, v, grid=False)
    else:
        launch, aim = (each[0] for each in read(slope, stimp_ft, distance, past, np.zeros(1, complex)))
    length = np.maximum(0.01, 1 + golfer.pace * deviates[3])
    return launch * np.sqrt(length), aim + golfer.line * deviates[2]


def make_share(slope: Slope, stimp_ft: float, distance: float, past: float, golfer: Golfer, count: int, seed: int) -> float:
    """Share of ``count`` putts holed."""
    struck = strikes(slope, stimp_ft, distance, past, golfer, normals(count, 4, seed))
    return float(roll(slope, stimp_ft, distance, struck).holed.mean())
