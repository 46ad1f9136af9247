"""The most likely values of a few unknowns, and how far each may be moved before the data object."""

from collections.abc import Callable, Sequence
from math import sqrt
from typing import NamedTuple

from pycore.stats.intervals import Estimate, Z

type Vector = list[float]
type Matrix = list[list[float]]

MOST_STEPS = 60  # of Newton; a dozen are usual
MOST_HALVINGS = 20  # of a step that gains nothing
ENOUGH = 1e-7  # of log-likelihood still to gain; no more is worth a step
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


def maximize(log_likelihood: LogLikelihood, start: Sequence[float], fixed: int | None = None) -> tuple[Vector, Derivatives]:
    """The most likely place from ``start``, with the unknown of index ``fixed`` left as it is: Newton's steps, halved."""
    place, here = list(start), log_likelihood(start)
    free = [i for i in range(len(place)) if i != fixed]
    for _ in range(MOST_STEPS):
        gradient = [here.gradient[i] for i in free]
        step = solve(_part(here.information, free), gradient) or solve(_part(here.complete, free), gradient)
        if step is None or sum(a * b for a, b in zip(step, gradient, strict=True)) < ENOUGH:
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


def profile(log_likelihood: LogLikelihood, best: Sequence[float], i: int) -> Estimate:
    """The unknown ``i`` with its 95 % profile-likelihood interval: the others are chosen anew at each end.

    Reference: D. J. Venzon and S. H. Moolgavkar, Appl. Stat. 37(1):87-94, 1988.
    """
    highest = log_likelihood(best)
    error = standard_error(highest, i)
    low, high = (_end(log_likelihood, best, highest.value, i, way * error) for way in (-1, 1))
    return Estimate(best[i], low, high)


def _end(log_likelihood: LogLikelihood, best: Sequence[float], highest: float, i: int, error: float) -> float:
    place, away = list(best), error * Z
    for _ in range(MOST_TRIES):
        place[i] = best[i] + away
        place, here = maximize(log_likelihood, place, i)
        # the root of the fall is all but straight, so one rule of three after another leads to the end
        fall = sqrt(max(0.0, 2 * (highest - here.value)))
        if not fall:
            break
        away *= min(2.0, Z / fall)
        if abs(fall - Z) < NEAR:
            break
    return best[i] + away


def standard_error(here: Derivatives, i: int) -> float:
    """Standard error of the unknown ``i`` from the information at the most likely place."""
    unit = [float(j == i) for j in range(len(here.gradient))]
    row = solve(here.information, unit) or solve(here.complete, unit)
    assert row
    return sqrt(row[i])


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
