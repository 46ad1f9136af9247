"""Height lines against what they ought to be: everywhere on their height, and never crossing."""

from collections.abc import Callable, Iterable
from itertools import pairwise

import numpy as np

type Lines = Iterable[tuple[float, list[tuple[float, float]]]]


def farthest(lines: Lines, height: Callable[[float, float], float]) -> float:
    """How far (m) a line is from its height at most, at its points and halfway between them."""
    return max(
        abs(height(x0 + share * (x1 - x0), y0 + share * (y1 - y0)) - level)
        for level, line in lines
        for (x0, y0), (x1, y1) in pairwise(line)
        for share in (0.5, 1)
    )


def crossed(lines: Lines) -> int:
    """How many pieces of lines cross a piece of a line; pieces that share an end do not."""
    pieces = [(complex(*one), complex(*other)) for _, line in lines for one, other in pairwise(line)]
    a, b = (np.array(ends) for ends in zip(*pieces, strict=True))

    def left_of(a, b, c):
        return ((b - a).conjugate() * (c - a)).imag

    def crosses(c, d):
        return (left_of(a, b, c) * left_of(a, b, d) < 0) & (left_of(c, d, a) * left_of(c, d, b) < 0)

    return sum(bool(crosses(c, d).any()) for c, d in pieces)
