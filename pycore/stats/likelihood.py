"""The most likely values of a few unknowns, and how far each may be moved before the data object."""

from collections.abc import Callable, Sequence
from math import sqrt
from typing import NamedTuple

from pycore.stats.intervals import Estimate, Z

type Vector = list[float]
type Matrix = list[list[float]]

MOST_STEPS = 60  # of Newton; a dozen are usual
MOST_HALVINGS = 20  # of a step that gains nothing
ENOUGH = 1e-6  # of log-likelihood still to gain; no more is worth a step: a thousandth of a standard error
ROUGHLY = 0.02  # the same at the end of an interval, where what is still to gain is told well enough by the parabola
NEAR = 0.2  # standard errors; from so near the end of an interval the next step is within 0.02 of it
MOST_TRIES = 8  # for an end of an interval; two or three are usual


class Derivatives(NamedTuple):
    """Log-likelihood at one place, its gradient, the information there, and the information had nothing been censored.

    The last bends downwards everywhere, so that a step by it climbs where a step by the first might not. ``sizes`` says
    how far each unknown may be moved at a time.
    """

    value: float
    gradient: Vector
    information: Matrix
    complete: Matrix
    sizes: Sequence[float] = ()


type LogLikelihood = Callable[[Sequence[float]], Derivatives]


def maximize(
    log_likelihood: LogLikelihood, start: Sequence[float], fixed: int | None = None, enough: float = ENOUGH
) -> tuple[Vector, Derivatives]:
    """The most likely place from ``start``, with the unknown of index ``fixed`` left as it is: Newton's steps, halved, until
    the next one would gain less than ``enough``."""
    place, here = list(start), log_likelihood(start)
    free = [i for i in range(len(place)) if i != fixed]
    for _ in range(MOST_STEPS):
        step, gain = _climb(here, free)
        if gain < enough:
            break
        damping = 1 / max(1.0, *(abs(part) / here.sizes[i] for i, part in zip(free, step, strict=True)))
        step = [damping * part for part in step]
        for _ in range(MOST_HALVINGS):
            tried = list(place)
            for i, part in zip(free, step, strict=True):
                tried[i] += part
            there = log_likelihood(tried)
            if there.value > here.value:
                break
            step = [part / 2 for part in step]
        else:
            break
        place, here = tried, there
    return place, here


def _climb(here: Derivatives, free: list[int]) -> tuple[Vector, float]:
    """Newton's step of the ``free`` unknowns, and what it gains where the log-likelihood is a parabola."""
    gradient = [here.gradient[i] for i in free]
    step = solve(_part(here.information, free), gradient) or solve(_part(here.complete, free), gradient)
    return (step, sum(a * b for a, b in zip(step, gradient, strict=True)) / 2) if step else (gradient, 0.0)


def profile(log_likelihood: LogLikelihood, best: Sequence[float], i: int, highest: Derivatives | None = None) -> Estimate:
    """The unknown ``i`` with its 95 % profile-likelihood interval: the others are chosen anew at each end.

    ``highest`` is what is known at ``best``. Reference: D. J. Venzon and S. H. Moolgavkar, Appl. Stat. 37(1):87-94, 1988.
    """
    highest = highest or log_likelihood(best)
    moved = _moved_by(highest, i)
    low, high = (_end(log_likelihood, best, highest.value, i, [way * Z * part for part in moved]) for way in (-1, 1))
    return Estimate(best[i], low, high)


def _end(log_likelihood: LogLikelihood, best: Sequence[float], highest: float, i: int, away: Vector) -> float:
    """The end towards which ``away`` leads."""
    free = [j for j in range(len(best)) if j != i]
    for _ in range(MOST_TRIES):
        place, here = maximize(log_likelihood, [a + b for a, b in zip(best, away, strict=True)], i, ROUGHLY)
        # the root of the fall is all but straight, so one rule of three after another leads to the end
        fall = sqrt(max(0.0, 2 * (highest - here.value - _climb(here, free)[1])))
        if not fall:
            break
        share = min(2.0, Z / fall)
        away = [share * (a - b) for a, b in zip(place, best, strict=True)]
        if abs(fall - Z) < NEAR:
            break
    return best[i] + away[i]


def standard_error(here: Derivatives, i: int) -> float:
    """Standard error of the unknown ``i`` from the information at the most likely place."""
    return _moved_by(here, i)[i]


def _moved_by(here: Derivatives, i: int) -> Vector:
    """Where the unknowns are most likely when ``i`` is a standard error larger than at the most likely place."""
    unit = [float(j == i) for j in range(len(here.gradient))]
    row = solve(here.information, unit) or solve(here.complete, unit)
    assert row
    return [part / sqrt(row[i]) for part in row]


def solve(matrix: Matrix, right: Vector) -> Vector | None:
    """The solution of ``matrix`` x = ``right`` for a symmetric matrix; None where that is not positive definite."""
    rows = [[*row, value] for row, value in zip(matrix, right, strict=True)]
    size = len(rows)
    for i in range(size):
        if rows[i][i] <= 0:
            return None
        for j in range(i + 1, size):
            share = rows[j][i] / rows[i][i]
            rows[j] = [a - share * b for a, b in zip(rows[j], rows[i], strict=True)]
    found = [0.0] * size
    for i in reversed(range(size)):
        found[i] = (rows[i][size] - sum(rows[i][j] * found[j] for j in range(i + 1, size))) / rows[i][i]
    return found


def _part(matrix: Matrix, kept: list[int]) -> Matrix:
    return [[matrix[i][j] for j in kept] for i in kept]
