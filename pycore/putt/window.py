"""The window: the starts and paces that hole a putt.

For each launch speed the starts that hole lie between two edges, where the hole just takes the ball. Each edge is found
as a zero of the ball's margin at the hole, and the slowest and fastest launches as zeros of the best margin.
"""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from math import acos, cos, pi

from pycore.constants import HOLE_RADIUS
from pycore.putt.edges import EDGE, FRINGE, INSIDE, Edge, Edges, Search, closed, through
from pycore.putt.putt import Putt
from pycore.putt.solve import NoPutt, Read, read
from pycore.roots import zero

SPEEDS = 24  # launch speeds at which the edges are found
SEED_PAST = 0.2  # m; a pace past the hole that holes, from where the search starts if the wanted one is too firm
NEAREST = 4  # rows that tell where the edges of the next one are
FIRMER = 0.6  # m of roll; the first step towards the fastest launch
MOST_CHANGED = 3.0  # times the width of the row beside it


@dataclass(frozen=True)
class Window:
    """Edges of the window: ``launch`` (m/s, rising), and the lowest and highest ``aim`` (rad) that hole at each.

    ``low`` and ``high`` are right and left; the launches lie closer together at both ends, where the window closes.
    """

    launch: tuple[float, ...]
    low: tuple[float, ...]
    high: tuple[float, ...]

    def edges(self, launch: float) -> tuple[float, float] | None:
        """Lowest and highest start (rad) that hole at ``launch`` (m/s), between the edges found; None outside."""
        slowest, fastest = self.launch[0], self.launch[-1]
        if not slowest <= launch <= fastest:
            return None
        # in this angle the edges close smoothly, as circles seen from the side
        place = acos(max(-1.0, min(1.0, 1 - 2 * (launch - slowest) / (fastest - slowest))))
        step = pi / (len(self.launch) - 1)
        return _smooth(self.low, place / step), _smooth(self.high, place / step)

    def extremes(self, aim: float) -> tuple[tuple[float, float], tuple[float, float]]:
        """Launch and start of a soft ball and of a firm one that just hold the hole: of the slower half of the launches the
        start farthest to the side of the slowest, of the faster half the one farthest from it.

        That is the side that borrows, but where a putt that turns twice has it otherwise. Where the slowest ball starts as
        the fastest does, ``aim`` tells the side.
        """
        turned = self.low[0] + self.high[0] - self.low[-1] - self.high[-1]
        side = 1 if (turned if abs(turned) > EDGE else aim) >= 0 else -1
        middle = (self.launch[0] + self.launch[-1]) / 2
        starts = [*zip(self.launch, self.low, strict=True), *zip(self.launch, self.high, strict=True)]
        soft, firm = [each for each in starts if each[0] <= middle], [each for each in starts if each[0] >= middle]
        return max(soft, key=lambda start: side * start[1]), min(firm, key=lambda start: side * start[1])


def _smooth(values: tuple[float, ...], place: float) -> float:
    """Value at a fractional index, by a cubic through the four nearest values that keeps between the nearest two."""
    left = min(int(place), len(values) - 2)
    first = min(max(0, left - 1), len(values) - 4)
    x = place - first
    a, b, c, d = values[first : first + 4]
    value = (
        -a * (x - 1) * (x - 2) * (x - 3) / 6
        + b * x * (x - 2) * (x - 3) / 2
        - c * x * (x - 1) * (x - 3) / 2
        + d * x * (x - 1) * (x - 2) / 6
    )
    low, high = sorted(values[left : left + 2])
    return min(max(value, low), high)


def window(putt: Putt, found: Read) -> Window | None:
    """The window of ``putt``, whose read is ``found``; None where no pace near it holes.

    The putt's surface and speed count, its pace past the hole only as the place where the search begins.
    """
    search = Search(putt)
    seed, past = found, putt.past
    if search.margin(found.launch, found.aim) < INSIDE:
        softer = read(replace(putt, past=min(putt.past, SEED_PAST)))
        if isinstance(softer, NoPutt) or search.margin(softer.launch, softer.aim) < INSIDE:
            return None
        seed, past = softer, min(putt.past, SEED_PAST)
    search.begin(seed)
    slowest, fastest = search.last_launch(seed, -past - HOLE_RADIUS), search.last_launch(seed, FIRMER)
    launches = [slowest + (fastest - slowest) * (1 - cos(pi * i / SPEEDS)) / 2 for i in range(SPEEDS + 1)]
    rows = {i: closed(search.along(launch)) for i, launch in ((0, slowest), (SPEEDS, fastest))}
    start = min(range(1, SPEEDS), key=lambda i: abs(launches[i] - seed.launch))
    rows[start] = search.edges(launches[start], search.turn)
    for path, back in ((range(start + 1, SPEEDS), -1), (range(start - 1, 0, -1), 1)):
        for i in path:
            beside = rows[i + back]
            moved = search.along(launches[i]) - search.along(launches[i + back])
            rows[i] = search.edges_near(launches[i], _expected(rows, i, moved, beside))
    low, high = zip(*(rows[i] for i in range(SPEEDS + 1)), strict=True)
    return Window(tuple(launches), tuple(edge.aim for edge in low), tuple(edge.aim for edge in high))


def _expected(rows: Mapping[int, Edges], i: int, moved: float, beside: Edges) -> Edges:
    """The edges of row ``i`` by a polynomial through the nearest rows, or as the row ``beside`` has them, ``moved`` on, where
    that leads astray. Their slopes are as that row has them, for the width: the margin is all but a parabola."""
    known = sorted(rows, key=lambda row: abs(row - i))[:NEAREST]
    low, high = (through([(row, rows[row][side].aim) for row in known], i) for side in (0, 1))
    was = beside[1].aim - beside[0].aim
    if not was / MOST_CHANGED < high - low < was * MOST_CHANGED or abs(low - beside[0].aim - moved) > was:
        return Edge(beside[0].aim + moved, beside[0].slope), Edge(beside[1].aim + moved, beside[1].slope)
    share = (high - low) / was
    return Edge(low, beside[0].slope * share), Edge(high, beside[1].slope * share)


def aim_tolerance(putt: Putt, found: Read) -> tuple[float, float] | None:
    """How far right (negative) and left of its aim the read ``found`` still holes, rad; None if it does not."""
    search = Search(putt)
    if search.margin(found.launch, found.aim) <= 0:
        return None
    search.begin(found)
    low, high = search.edges(found.launch, search.turn)
    return low.aim - found.aim, high.aim - found.aim


def pace_tolerance(putt: Putt, found: Read) -> tuple[float, float] | None:
    """How much shorter (negative) and longer, as fractions of its roll, the read ``found`` still holes."""
    search = Search(putt)

    def margin(launch: float) -> float:
        return search.margin(launch, found.aim)

    middle = margin(found.launch)
    if middle <= 0:
        return None
    ends = []
    for factor in (0.98, 1.02):
        inside, at_inside, outside = found.launch, middle, found.launch * factor
        while (at_outside := margin(outside)) >= 0:
            inside, at_inside, outside = outside, at_outside, outside * factor
        launch = zero(margin, inside, outside, at_inside, at_outside, found.launch * FRINGE)
        ends.append((launch / found.launch) ** 2 - 1)
    return ends[0], ends[1]
