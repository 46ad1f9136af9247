"""For one launch the lowest and the highest start that hole, and the slowest and the fastest launch that do.

An edge is a zero of the ball's margin at the hole; the last launches are zeros of the best margin.
"""

from bisect import bisect_left
from cmath import rect
from collections.abc import Sequence
from dataclasses import replace
from functools import partial
from math import copysign, prod
from typing import NamedTuple

from pycore.constants import HOLE_RADIUS
from pycore.putt.putt import Putt
from pycore.putt.solve import Read
from pycore.roots import peak, zero

ROUGH = 1e-5  # m and m/s in a step; a whole path is then right to a tenth of a millimetre or so
EDGE = 1e-5  # rad; how exactly an edge is found
FRINGE = 2e-4  # of the launch speed; how exactly the slowest and fastest are found
INSIDE = 1e-3  # m/s of margin; a start that holes by so much is a good place to look for the edges from
JUST = 1e-3  # of the launch; so far past the slowest and fastest it is looked whether they are
NOTCH = 3e-5  # rad; so far past an edge it shows whether there is another
SOFT = 0.6  # m/s; faster balls run out of the hole's width on any green that holds them
SECANTS = 5  # for an edge; one or two are usual
LEAST = -2.0  # m/s of margin; a ball that stays out stays out
LOST = -20.0  # m/s of margin; a ball with less passes the hole at four times its radius or more
STRAYED = -0.5  # m/s of margin; a start with less is not near one that holes
SURE = 0.2  # m/s of margin; what a parabola finds that is higher than its own points by more is looked at again
ENDS = 3  # tries for the slowest or the fastest; one is usual
STEEPEST = 60.0  # m/s of margin over half the width that the hole has from the ball; more is a jump
CRESTS = 5  # parabolas for the greatest margin; one is usual
LEAST_AHEAD, MOST_AHEAD = 0.3, 2.0  # of the last step; how far on the next launch is that is tried


class Edge(NamedTuple):
    """A start (rad) that just holes, and how fast the margin changes there, m/s per rad; 0 where the window closes."""

    aim: float
    slope: float


type Edges = tuple[Edge, Edge]
"""The lowest and the highest."""


def closed(aim: float) -> Edges:
    """Where the window closes."""
    return Edge(aim, 0.0), Edge(aim, 0.0)


def through(points: Sequence[tuple[float, float]], x: float) -> float:
    """Value at ``x`` of the polynomial through ``points`` (J. L. Lagrange's)."""
    return sum(y * prod((x - other) / (at - other) for other, _ in points if other != at) for at, y in points)


class Search:
    """Of one putt what is known so far of the starts and launches that hole it."""

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
        return through([(each, self.spine[each]) for each in known[right - 1 : right + 1]], launch)

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
            return closed(middle)
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
