"""The window: the starts and paces that hole a putt.

For each launch speed the starts that hole lie between two edges, where the hole just takes the ball. Each edge is found
as a zero of the ball's margin at the hole, and the slowest and fastest launches as zeros of the best margin.
"""

from bisect import bisect_left
from cmath import rect
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from functools import partial
from math import acos, copysign, cos, pi, prod
from typing import NamedTuple

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
NEAREST = 4  # rows that tell where the edges of the next one are
JUST = 1e-3  # of the launch; so far past the slowest and fastest it is looked whether they are
NOTCH = 3e-5  # rad; so far past an edge it shows whether there is another
SOFT = 0.6  # m/s; faster balls run out of the hole's width on any green that holds them
SECANTS = 5  # for an edge; one or two are usual
FIRMER = 0.6  # m of roll; the first step towards the fastest launch
LEAST = -2.0  # m/s of margin; a ball that stays out stays out
LOST = -20.0  # m/s of margin; a ball with less passes the hole at four times its radius or more
STRAYED = -0.5  # m/s of margin; a start with less is not near one that holes
SURE = 0.2  # m/s of margin; what a parabola finds that is higher than its own points by more is looked at again
ENDS = 3  # tries for the slowest or the fastest; one is usual
STEEPEST = 60.0  # m/s of margin over half the width that the hole has from the ball; more is a jump
CRESTS = 5  # parabolas for the greatest margin; one is usual
MOST_CHANGED = 3.0  # times the width of the row beside it
LEAST_AHEAD, MOST_AHEAD = 0.3, 2.0  # of the last step; how far on the next launch is that is tried


class Edge(NamedTuple):
    """A start (rad) that just holes, and how fast the margin changes there, m/s per rad; 0 where the window closes."""

    aim: float
    slope: float


type Edges = tuple[Edge, Edge]
"""The lowest and the highest."""


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
    seed, past = found, putt.past
    if search.margin(found.launch, found.aim) < INSIDE:
        softer = read(replace(putt, past=min(putt.past, SEED_PAST)))
        if isinstance(softer, NoPutt) or search.margin(softer.launch, softer.aim) < INSIDE:
            return None
        seed, past = softer, min(putt.past, SEED_PAST)
    search.begin(seed)
    slowest, fastest = search.last_launch(seed, -past - HOLE_RADIUS), search.last_launch(seed, FIRMER)
    launches = [slowest + (fastest - slowest) * (1 - cos(pi * i / SPEEDS)) / 2 for i in range(SPEEDS + 1)]
    rows = {i: _closed(search.along(launch)) for i, launch in ((0, slowest), (SPEEDS, fastest))}
    start = min(range(1, SPEEDS), key=lambda i: abs(launches[i] - seed.launch))
    rows[start] = search.edges(launches[start], search.turn)
    for path, back in ((range(start + 1, SPEEDS), -1), (range(start - 1, 0, -1), 1)):
        for i in path:
            beside = rows[i + back]
            moved = search.along(launches[i]) - search.along(launches[i + back])
            rows[i] = search.edges_near(launches[i], _expected(rows, i, moved, beside))
    low, high = zip(*(rows[i] for i in range(SPEEDS + 1)), strict=True)
    return Window(tuple(launches), tuple(edge.aim for edge in low), tuple(edge.aim for edge in high))


def _closed(aim: float) -> Edges:
    return Edge(aim, 0.0), Edge(aim, 0.0)


def _expected(rows: Mapping[int, Edges], i: int, moved: float, beside: Edges) -> Edges:
    """The edges of row ``i`` by a polynomial through the nearest rows, or as the row ``beside`` has them, ``moved`` on, where
    that leads astray. Their slopes are as that row has them, for the width: the margin is all but a parabola."""
    known = sorted(rows, key=lambda row: abs(row - i))[:NEAREST]
    low, high = (_through([(row, rows[row][side].aim) for row in known], i) for side in (0, 1))
    was = beside[1].aim - beside[0].aim
    if not was / MOST_CHANGED < high - low < was * MOST_CHANGED or abs(low - beside[0].aim - moved) > was:
        return Edge(beside[0].aim + moved, beside[0].slope), Edge(beside[1].aim + moved, beside[1].slope)
    share = (high - low) / was
    return Edge(low, beside[0].slope * share), Edge(high, beside[1].slope * share)


def _through(points: Sequence[tuple[float, float]], x: float) -> float:
    """Value at ``x`` of the polynomial through ``points`` (J. L. Lagrange's)."""
    return sum(y * prod((x - other) / (at - other) for other, _ in points if other != at) for at, y in points)


def aim_tolerance(putt: Putt, found: Read) -> tuple[float, float] | None:
    """How far right (negative) and left of its aim the read ``found`` still holes, rad; None if it does not."""
    search = _Search(putt)
    if search.margin(found.launch, found.aim) <= 0:
        return None
    search.begin(found)
    low, high = search.edges(found.launch, search.turn)
    return low.aim - found.aim, high.aim - found.aim


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
        self.turning = 0.0  # rad per m/s
        self.lengthens = 0.0  # m per m/s
        self.spine: dict[float, float] = {}  # by launch, the start that holes most surely, where it is known
        self.soft = False  # whether it was so slow there that it may have come to rest over the hole
        self.turn = HOLE_RADIUS / putt.distance  # rad; half of what the hole looks like from the ball

    def begin(self, seed: Read) -> None:
        """Where the search begins, and how the start has to turn there with the launch, and the roll lengthens."""
        self.spine[seed.launch] = seed.aim
        self.lengthens = 2 * (self.putt.distance + self.putt.past) / seed.launch
        slopes = seed.strike.slopes
        if slopes:
            # seen along the ball's way at the hole, by the logarithm of the launch
            way = rect(1.0, -seed.hole.heading)
            by_aim, by_launch = slopes.by_aim * way, slopes.by_launch * way
            if by_aim.imag and by_launch.real > 0:
                self.turning = -by_launch.imag / by_aim.imag / seed.launch
                self.lengthens = by_launch.real / seed.launch
                self.turn = HOLE_RADIUS / abs(by_aim.imag)

    def margin(self, launch: float, aim: float) -> float:
        """How much faster the ball could be at the hole, m/s; negative if it stays out."""
        roll = self.putt.roll(launch, aim)
        finish = self.putt.finish(roll, self.left)
        self.left = roll.share_left(finish.s)
        self.soft = finish.state.speed < SOFT
        return finish.margin

    def along(self, launch: float) -> float:
        """A start that holes at ``launch``, or nearly so: between those that are known, or on as the nearest ones lead."""
        known = sorted(self.spine)
        if len(known) == 1:
            return self.spine[known[0]] + self.turning * (launch - known[0])
        right = min(max(bisect_left(known, launch), 1), len(known) - 1)
        return _through([(each, self.spine[each]) for each in known[right - 1 : right + 1]], launch)

    def last_launch(self, seed: Read, past: float) -> float:
        """The slowest or fastest launch that holes, from one that makes the roll longer by ``past`` (m; or shorter)."""

        values: dict[float, float] = {}

        def best(launch: float) -> float:
            aim, value = self.crest(launch, self.along(launch))
            if value > STRAYED:
                self.spine[launch] = aim
            values[launch] = max(value, LEAST)
            return values[launch]

        inside, outside = seed.launch, seed.launch + past / self.lengthens
        best(inside)
        for _ in range(ENDS):
            while best(outside) >= 0:
                # on as far as it falls to nothing, and some more
                fallen = values[inside] - values[outside]
                ahead = values[outside] / fallen if fallen > 0 else MOST_AHEAD
                step = (outside - inside) * min(max(1.1 * ahead, LEAST_AHEAD), MOST_AHEAD)
                inside, outside = outside, outside + step
            end = zero(best, inside, outside, values[inside], values[outside], seed.launch * FRINGE)
            beyond = end + copysign(JUST * end, past)
            # the start that holes may have been lost sight of there, or others hole farther on
            aim, value = peak(partial(self.margin, beyond), self.along(beyond), self.turn / 2, INSIDE, self.turn / 4)
            if value < 0:
                break
            self.spine[beyond], values[beyond] = aim, value
            inside, outside = beyond, beyond + (beyond - seed.launch) * LEAST_AHEAD
        return end

    def crest(self, launch: float, aim: float) -> tuple[float, float]:
        """The start near ``aim`` with the greatest margin at ``launch``, and that margin; where none is near, what comes next.

        The margin is all but a parabola where the hole takes the ball.
        """
        step = self.turn / 4
        for _ in range(CRESTS):
            right, middle, left = (self.margin(launch, aim + way * step) for way in (-1, 0, 1))
            bend = right + left - 2 * middle
            place = (right - left) / (2 * bend) if bend < 0 else copysign(MOST_AHEAD, left - right)
            if abs(place) <= 1 and (gained := -bend * place * place / 2) < SURE:
                return aim + place * step, middle + gained
            aim += min(max(place, -MOST_AHEAD), MOST_AHEAD) * step
            step /= 2 if abs(place) <= 1 else 1
            if (most := max(right, middle, left)) < LOST:
                break
        return aim, most

    def edges(self, launch: float, width: float) -> Edges:
        """Lowest and highest start that hole at ``launch``, looked for +- ``width`` about what is known to hole."""

        def margin(aim: float) -> float:
            return self.margin(launch, aim)

        middle, at_middle = peak(margin, self.along(launch), width / 2, INSIDE, self.turn / 100)
        if at_middle <= 0:
            return _closed(middle)
        found = []
        for way in (-width, width):
            inside, at_inside, outside = middle, at_middle, middle + way
            step = way
            while (at_outside := margin(outside)) >= 0:
                inside, at_inside = outside, at_outside
                outside += step
                step *= 1.5
            found.append(zero(margin, inside, outside, at_inside, at_outside, EDGE))
        low, high = found
        slope = 2 * margin((low + high) / 2) / ((high - low) / 2) if high > low else 0.0
        return Edge(low, slope), Edge(high, -slope)

    def edges_near(self, launch: float, guess: Edges) -> Edges:
        """The same, where the edges of launches beside it tell nearly where they are."""
        low, high = (self._edge(launch, each, way) for each, way in zip(guess, (-1, 1), strict=True))
        if low and high and low.aim < self.along(launch) < high.aim:
            return low, high
        return self.edges(launch, max(guess[1].aim - guess[0].aim, self.turn / 10) / 2)

    def _edge(self, launch: float, guess: Edge, way: int) -> Edge | None:
        """The edge near ``guess``, with what holes not on the side of ``way``, by secants; None where they do not settle."""
        aim, slope = guess
        at, last = self.margin(launch, aim), self.turn
        for _ in range(SECANTS):
            if not 0 < -slope * way * self.turn < STEEPEST:
                return None
            step = -at / slope
            # a secant's error is about the product of the last two, over the width of the window
            if abs(step * last) < EDGE * self.turn:
                return self._past_the_rim(launch, Edge(aim + step, slope), way)
            if abs(step) > self.turn:
                return None
            after = self.margin(launch, aim + step)
            aim, at, slope, last = aim + step, after, (after - at) / step, abs(step)
        return None

    def _past_the_rim(self, launch: float, found: Edge, way: int) -> Edge:
        """The edge, or the one beyond it where balls too fast for the rim come to rest over the hole all the same."""
        if not self.soft:
            return found
        inside, step = found.aim + way * NOTCH, way * NOTCH
        at_inside = self.margin(launch, inside)
        if at_inside < 0:
            return found
        outside = inside + step
        while (at_outside := self.margin(launch, outside)) >= 0:
            inside, at_inside, step = outside, at_outside, 2 * step
            outside += step
        return found._replace(aim=zero(lambda aim: self.margin(launch, aim), inside, outside, at_inside, at_outside, EDGE))
