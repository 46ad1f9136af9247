"""The most likely values of a few unknowns, and how far each may be moved before the data object."""

from collections.abc import Callable, Sequence
from math import sqrt
from typing import NamedTuple

from pycore.stats.intervals import Estimate, Z

type Vector = list[float]
type Matrix = list[list[float]]

MOST_STEPS = 60
MOST_HALVINGS = 20
ENOUGH = 1e-7  # of log-likelihood still to gain; no more is worth a step
NEAR = 0.2  # standard errors; from so near the end of an interval the next step is within 0.02 of it
MOST_TRIES = 8


class Look(NamedTuple):
    """Log-likelihood at one place, its slopes, the information there, and the information had nothing been censored.

    The last bends downwards everywhere, so that a step by it climbs where a step by the first might not. ``sizes`` says
    how far each unknown may be moved at a time.
    """

    value: float
    slopes: Vector
    information: Matrix
    complete: Matrix
    sizes: Sequence[float] = ()


type Hill = Callable[[Sequence[float]], Look]


def climb(hill: Hill, start: Sequence[float], held: int | None = None) -> tuple[Vector, Look]:
    """The top of the hill from ``start``, with the unknown of index ``held`` left as it is: Newton's steps, halved."""
    place, look = list(start), hill(start)
    free = [i for i in range(len(place)) if i != held]
    for _ in range(MOST_STEPS):
        slopes = [look.slopes[i] for i in free]
        step = solve(_part(look.information, free), slopes) or solve(_part(look.complete, free), slopes)
        if step is None or sum(a * b for a, b in zip(step, slopes, strict=True)) < ENOUGH:
            break
        damping = 1 / max(1.0, *(abs(part) / look.sizes[i] for i, part in zip(free, step, strict=True)))
        step = [damping * part for part in step]
        for _ in range(MOST_HALVINGS):
            tried = list(place)
            for i, part in zip(free, step, strict=True):
                tried[i] += part
            there = hill(tried)
            if there.value > look.value:
                break
            step = [part / 2 for part in step]
        else:
            break
        place, look = tried, there
    return place, look


def profile(hill: Hill, top: Sequence[float], i: int) -> Estimate:
    """The unknown ``i`` with its 95 % profile-likelihood interval: the others are chosen anew at each end.

    Reference: D. J. Venzon and S. H. Moolgavkar, Appl. Stat. 37(1):87-94, 1988.
    """
    best = hill(top)
    error = standard_error(best, i)
    return Estimate(top[i], _end(hill, top, best.value, i, -error), _end(hill, top, best.value, i, error))


def _end(hill: Hill, top: Sequence[float], best: float, i: int, error: float) -> float:
    place, away = list(top), error * Z
    for _ in range(MOST_TRIES):
        place[i] = top[i] + away
        place, look = climb(hill, place, i)
        # the root of the fall is all but straight, so one rule of three after another leads to the end
        fall = sqrt(max(0.0, 2 * (best - look.value)))
        if not fall:
            break
        away *= min(2.0, Z / fall)
        if abs(fall - Z) < NEAR:
            break
    return top[i] + away


def standard_error(look: Look, i: int) -> float:
    """Standard error of the unknown ``i`` from the information at the top."""
    unit = [float(j == i) for j in range(len(look.slopes))]
    row = solve(look.information, unit) or solve(look.complete, unit)
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
