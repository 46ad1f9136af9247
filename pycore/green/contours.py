"""Height lines of a relief."""

from collections.abc import Callable
from math import ceil, floor

from pycore.roots import zero

type Place = tuple[float, float]
type Edge = tuple[bool, int, int]
"""A side of a cell of the lattice: along y or not, and the lattice point where it begins."""

STEPS = (0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1.0)  # m; from one height line to the next
MOST_LINES = 14  # heights
EXACT = 1e-5  # m; how exactly a point of a line is placed


def contours(height: Callable[[float, float], float], xs: list[float], ys: list[float]) -> list[tuple[float, list[Place]]]:
    """Lines of equal height over the lattice of ``xs`` and ``ys``: height and points of each.

    Marching squares. Points lie on the lattice's lines, where the height is exact; a cell with two lines through it joins
    what its middle does not part, so no two lines cross.
    """
    lattice = [[height(x, y) for y in ys] for x in xs]
    lowest, highest = min(map(min, lattice)), max(map(max, lattice))
    step = next((step for step in STEPS if highest - lowest <= MOST_LINES * step), STEPS[-1])
    found = []
    for number in range(ceil(lowest / step), floor(highest / step) + 1):
        level = number * step
        found += [(level, line) for line in _level(height, lattice, xs, ys, level)]
    return found


def _level(
    height: Callable[[float, float], float], lattice: list[list[float]], xs: list[float], ys: list[float], level: float
) -> list[list[Place]]:
    ways: dict[Edge, list[Edge]] = {}
    for i in range(len(xs) - 1):
        column, after = lattice[i], lattice[i + 1]
        for j in range(len(ys) - 1):
            a, b, c, d = column[j] > level, after[j] > level, after[j + 1] > level, column[j + 1] > level
            if a == b == c == d:
                continue
            south, east, north, west = (False, i, j), (True, i + 1, j), (False, i, j + 1), (True, i, j)
            cut = [edge for edge, cuts in ((south, a != b), (east, b != c), (north, c != d), (west, d != a)) if cuts]
            if len(cut) == 4:
                middle = height((xs[i] + xs[i + 1]) / 2, (ys[j] + ys[j + 1]) / 2) > level
                cut = [south, east, north, west] if middle == a else [west, south, east, north]
            for one, other in zip(cut[::2], cut[1::2], strict=True):
                ways.setdefault(one, []).append(other)
                ways.setdefault(other, []).append(one)

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
