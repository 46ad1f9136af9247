"""From the moments of a strike and of what the ball met to its launch, and to the speed of the floor.

A ball that rolls from v meets a mark d away at t, where d = v t - a t^2 / 2; a is the floor's slowing. One mark tells v where
a is known; two tell both. A putted ball skids first and is early by a little that grows with its speed: textbook mechanics
with the friction of the roll test.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from math import inf, sqrt

from pycore.constants import GRAVITY
from pycore.green.roll_test import SKID, SKID_SD

MOMENT = 0.001  # s; spread of a moment that was heard: the levels come a millisecond apart
MARK = 0.004  # m; spread of a length measured with a tape, alike in all putts; assumed
ROUNDS = 6  # of the search; three or four are usual
NUDGE = 1e-3  # of a measured value; the change that shows how the result depends on it


@dataclass(frozen=True)
class Run:
    """One putt: of each mark that it met the distance (m) and the time since the strike (s)."""

    met: tuple[tuple[float, float], ...]


@dataclass(frozen=True)
class Floor:
    """How the ball slows (m/s2), and the spread of that."""

    slowing: float
    sd: float


@dataclass(frozen=True)
class Launch:
    """Launch speed as a rolling ball has it, m/s, its spread, and how far it would have run (m, and spread)."""

    speed: float
    sd: float
    roll: float
    roll_sd: float


def ahead(slowing: float, friction: float) -> float:
    """How much earlier a ball that skids first is everywhere than one that rolls and runs as far: s for each m/s of launch.

    It begins to roll with 5/7 of its speed u after 2 u / (7 mu g) and 12 u^2 / (49 mu g).
    """
    skid = friction * GRAVITY
    ratio = sqrt(1 + 24 / 25 * slowing / skid)  # of the launch to the speed with which the skidding ball begins to roll
    return (1 - 1 / ratio) / slowing - 2 / 5 / (ratio * skid)


def launch_of(run: Run, slowing: float, friction: float | None) -> float:
    """Launch speed by least squares over the marks that were met."""
    early, speed = (0.0 if friction is None else ahead(slowing, friction)), 0.0
    for _ in range(ROUNDS):
        met = [(d, t + early * speed) for d, t in run.met]
        speed = sum((d + slowing * t * t / 2) * t for d, t in met) / sum(t * t for _, t in met)
    return speed


def launch(run: Run, floor: Floor, friction: float | None) -> Launch:
    """Launch and roll, with what moments, marks, floor and skid leave unsure."""
    a = floor.slowing
    speed = launch_of(run, a, friction)
    # by each doubt in turn: how launch and roll change with it
    late = Run(tuple((d, t + MOMENT) for d, t in run.met))
    longer = Run(tuple((d + MARK, t) for d, t in run.met))
    step = a * NUDGE
    changes = [
        (launch_of(late, a, friction) - speed, 0.0),
        # the arrivals, each by itself; the strike's own moment is in the line above
        ((launch_of(late, a, friction) - speed) / sqrt(len(run.met)), 0.0),
        (launch_of(longer, a, friction) - speed, 0.0),
        ((launch_of(run, a + step, friction) - speed) / step * floor.sd, floor.sd),
    ]
    if friction is not None:
        changes.append((launch_of(run, a, friction + SKID_SD) - speed, 0.0))
    roll = speed * speed / (2 * a)
    sd = sqrt(sum(by * by for by, _ in changes))
    roll_sd = roll * sqrt(sum((2 * by / speed - slower / a) ** 2 for by, slower in changes))
    return Launch(speed, sd, roll, roll_sd)


def floor_of(runs: Sequence[Run], friction: float | None) -> Floor | None:
    """The floor's slowing from putts that met two marks or more; None where none did, or where it comes out as none."""
    told = [run for run in runs if len(run.met) > 1]
    if not told:
        return None
    found, weight, spread = _floor(told, friction)
    if found <= 0:
        return None
    longer = [Run(tuple((d + (MARK if i else 0.0), t) for i, (d, t) in enumerate(run.met))) for run in told]
    by_mark = _floor(longer, friction)[0] - found
    by_skid = 0.0 if friction is None else _floor(told, friction + SKID_SD)[0] - found
    # a floor is not the same in every lane: where the putts differ more than their moments do, that counts
    chance = max(1.0, spread) / weight
    return Floor(found, sqrt(chance + 2 * by_mark**2 + by_skid**2))


def _floor(runs: Sequence[Run], friction: float | None) -> tuple[float, float, float]:
    """Weighted mean of each putt's slowing, its weight, and its scatter over what the moments explain."""
    each = [_slowing(run, friction) for run in runs]
    weight = sum(1 / variance for _, variance in each)
    mean = sum(value / variance for value, variance in each) / weight
    free = len(each) - 1
    scatter = sum((value - mean) ** 2 / variance for value, variance in each) / free if free else 1.0
    return mean, weight, scatter


def _slowing(run: Run, friction: float | None) -> tuple[float, float]:
    """What one putt says: from its first and last mark; the variance from its moments."""
    (d1, t1), (d2, t2) = run.met[0], run.met[-1]
    slowing, early = 0.5, 0.0
    for _ in range(ROUNDS):
        b1, b2 = t1 + early, t2 + early
        slowing = 2 * (d1 / b1 - d2 / b2) / (b2 - b1)
        speed = d1 / b1 + slowing * b1 / 2
        early = 0.0 if friction is None or slowing <= 0 else ahead(slowing, friction) * speed

    def moved(by1: float, by2: float) -> float:
        b1, b2 = t1 + early + by1, t2 + early + by2
        return 2 * (d1 / b1 - d2 / b2) / (b2 - b1) - slowing

    variance = moved(MOMENT, 0.0) ** 2 + moved(0.0, MOMENT) ** 2 + moved(MOMENT, MOMENT) ** 2
    return slowing, variance or inf


def both(prior: Floor | None, found: Floor | None) -> Floor | None:
    """The floor as it was measured before and as it was heard, each by its weight."""
    if prior is None or found is None or not prior.sd:
        return prior or found
    a, b = 1 / prior.sd**2, 1 / found.sd**2
    return Floor((a * prior.slowing + b * found.slowing) / (a + b), 1 / sqrt(a + b))


FRICTION = SKID
