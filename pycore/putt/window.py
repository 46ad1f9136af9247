"""The window: the starts and paces that hole a putt.

For each launch speed the starts that hole lie between two edges, where the hole just takes the ball. Each edge is found
as a zero of the ball's margin at the hole, and the slowest and fastest launches as zeros of the best margin.
"""

from dataclasses import dataclass, replace
from math import acos, cos, pi

from pycore.constants import HOLE_RADIUS
from pycore.putt.putt import Putt
from pycore.putt.solve import NoPutt, Read, read
from pycore.roots import peak, zero

SPEEDS = 24  # launch speeds at which the edges are found
SEED_PAST = 0.2  # m; a pace past the hole that holes, from where the search starts if the wanted one is too firm
ROUGH = 1e-5  # m and m/s in a step; a whole path is then right to a tenth of a millimetre or so
EDGE = 1e-5  # rad; how exactly an edge is found
FRINGE = 2e-4  # of the launch speed; how exactly the slowest and fastest are found
INSIDE = 1e-3  # m/s of margin; a start that holes by so much is a good place to look for the edges from


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
    search = _Search(putt)
    seed = found
    if search.margin(found.launch, found.aim) < INSIDE:
        softer = read(replace(putt, past=min(putt.past, SEED_PAST)))
        if isinstance(softer, NoPutt) or search.margin(softer.launch, softer.aim) < INSIDE:
            return None
        seed = softer
    slowest, slow_aim = search.last_launch(seed, 1 - 0.02)
    fastest, fast_aim = search.last_launch(seed, 1 + 0.02)
    launches = [slowest + (fastest - slowest) * (1 - cos(pi * i / SPEEDS)) / 2 for i in range(SPEEDS + 1)]
    rows = {0: (slow_aim, slow_aim), SPEEDS: (fast_aim, fast_aim)}
    start = min(range(1, SPEEDS), key=lambda i: abs(launches[i] - seed.launch))
    for path in (range(start, SPEEDS), range(start - 1, 0, -1)):
        aim, width = seed.aim, HOLE_RADIUS / putt.distance
        for i in path:
            low, high = search.edges(launches[i], aim, width)
            rows[i] = low, high
            aim, width = (low + high) / 2, max(high - low, EDGE) / 2
    return Window(tuple(launches), *zip(*(rows[i] for i in range(SPEEDS + 1)), strict=True))


def aim_tolerance(putt: Putt, found: Read) -> tuple[float, float] | None:
    """How far right (negative) and left of its aim the read ``found`` still holes, rad; None if it does not."""
    search = _Search(putt)
    if search.margin(found.launch, found.aim) <= 0:
        return None
    low, high = search.edges(found.launch, found.aim, search.turn)
    return low - found.aim, high - found.aim


def pace_tolerance(putt: Putt, found: Read) -> tuple[float, float] | None:
    """How much shorter (negative) and longer, as fractions of its roll, the read ``found`` still holes."""
    search = _Search(putt)

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


class _Search:
    def __init__(self, putt: Putt) -> None:
        self.putt = replace(putt, step_error=ROUGH)
        self.left: float | None = None  # share of its speed that the last ball had left where it was nearest
        self.turn = HOLE_RADIUS / putt.distance  # rad; half of what the hole looks like from the ball

    def margin(self, launch: float, aim: float) -> float:
        """How much faster the ball could be at the hole, m/s; negative if it stays out."""
        roll = self.putt.roll(launch, aim)
        finish = self.putt.finish(roll, self.left)
        self.left = roll.share_left(finish.s)
        return finish.margin

    def last_launch(self, seed: Read, factor: float) -> tuple[float, float]:
        """The slowest (``factor`` < 1) or fastest launch that holes, and its start."""
        aims = {seed.launch: seed.aim}

        def best(launch: float) -> float:
            nearest = min(aims, key=lambda known: abs(known - launch))
            aims[launch], value = peak(
                lambda aim: self.margin(launch, aim), aims[nearest], self.turn / 2, INSIDE, self.turn / 10
            )
            return value

        inside, at_inside = seed.launch, best(seed.launch)
        while True:
            outside = inside * factor
            at_outside = best(outside)
            if at_outside < 0:
                break
            inside, at_inside, factor = outside, at_outside, factor**1.6
        launch = zero(best, inside, outside, at_inside, at_outside, seed.launch * FRINGE)
        return launch, aims[launch]

    def edges(self, launch: float, aim: float, width: float) -> tuple[float, float]:
        """Lowest and highest start that hole at ``launch``, looked for about ``aim`` +- ``width``."""

        def margin(aim: float) -> float:
            return self.margin(launch, aim)

        middle, at_middle = peak(margin, aim, width / 2, INSIDE, self.turn / 100)
        if at_middle <= 0:
            return middle, middle
        found = []
        for way in (-width, width):
            inside, at_inside, outside = middle, at_middle, aim + way
            step = way
            while (at_outside := margin(outside)) >= 0:
                inside, at_inside = outside, at_outside
                outside += step
                step *= 1.5
            found.append(zero(margin, inside, outside, at_inside, at_outside, EDGE))
        return found[0], found[1]
