"""Height lines of a relief."""

from collections.abc import Callable
from itertools import pairwise
from math import ceil, floor

from pycore.roots import zero

type Place = tuple[float, float]
type Height = Callable[[float, float], float]
type Edge = tuple[bool, int, int]
"""A side of a cell of the lattice: along y or not, and the lattice point where it begins."""

STEPS = (1, 2, 5, 10, 20, 50, 100)  # units of height from one line to the next
MOST_LINES = 14  # heights
EXACT = 1e-5  # m; how exactly a point of a line is placed


def contours(height: Height, xs: list[float], ys: list[float], unit: float) -> list[tuple[float, list[Place]]]:
    """Lines of equal height over the lattice of ``xs`` and ``ys``, at whole ``unit`` s (m): height and points of each.

    Marching squares. Points lie on the lattice's lines, where the height is exact; a cell with two lines through it joins
    what its middle does not part, so no two lines cross.
    """
    lattice = [[height(x, y) for y in ys] for x in xs]
    lowest, highest = min(map(min, lattice)), max(map(max, lattice))
    step = unit * next((step for step in STEPS if highest - lowest <= MOST_LINES * step * unit), STEPS[-1])
    ways: dict[int, dict[Edge, list[Edge]]] = {number: {} for number in range(ceil(lowest / step), floor(highest / step) + 1)}
    for i, (column, after) in enumerate(pairwise(lattice)):
        for j in range(len(ys) - 1):
            corners = column[j], after[j], after[j + 1], column[j + 1]
            for number in range(ceil(min(corners) / step), floor(max(corners) / step) + 1):
                for one, other in _through(height, xs, ys, (i, j), corners, number * step):
                    ways[number].setdefault(one, []).append(other)
                    ways[number].setdefault(other, []).append(one)
    return [(number * step, line) for number in ways for line in _lines(height, lattice, xs, ys, number * step, ways[number])]


def _through(
    height: Height, xs: list[float], ys: list[float], cell: tuple[int, int], corners: tuple[float, ...], level: float
) -> list[tuple[Edge, Edge]]:
    """Pairs of sides of a cell between which a line of this height passes through it."""
    i, j = cell
    a, b, c, d = (corner > level for corner in corners)
    south, east, north, west = (False, i, j), (True, i + 1, j), (False, i, j + 1), (True, i, j)
    cut = [edge for edge, cuts in ((south, a != b), (east, b != c), (north, c != d), (west, d != a)) if cuts]
    if len(cut) == 4:
        middle = height((xs[i] + xs[i + 1]) / 2, (ys[j] + ys[j + 1]) / 2) > level
        cut = [south, east, north, west] if middle == a else [west, south, east, north]
    return list(zip(cut[::2], cut[1::2], strict=True))


def _lines(
    height: Height,
    lattice: list[list[float]],
    xs: list[float],
    ys: list[float],
    level: float,
    ways: dict[Edge, list[Edge]],
) -> list[list[Place]]:
    """Lines of one height from side to side of the cells, each from its end, or around; ``ways`` are used up."""

    def place(edge: Edge) -> Place:
        upright, i, j = edge
        x, y = xs[i], ys[j]
        first = lattice[i][j] - level
        if upright:
            return x, zero(lambda v: height(x, v) - level, y, ys[j + 1], first, lattice[i][j + 1] - level, EXACT)
        return zero(lambda u: height(u, y) - level, x, xs[i + 1], first, lattice[i + 1][j] - level, EXACT), y

    lines = []
    while ways:
        start = next((edge for edge, ends in ways.items() if len(ends) == 1), None) or next(iter(ways))
        edge: Edge | None = start
        line = []
        while edge is not None:
            line.append(edge)
            ends = ways[edge]
            following = ends.pop() if ends else None
            if not ends:
                del ways[edge]
            if following is not None:
                ways[following].remove(edge)
                if not ways[following]:
                    del ways[following]
                    line.append(following)
                    following = None
            edge = following
        lines.append([place(edge) for edge in line])
    return lines
