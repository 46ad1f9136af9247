"""The pace that costs least: how many putts each pace takes in the mean, and which takes the fewest.

A ball that misses stops where its roll ends, the hole covered; from there the second putt is read and struck by the same
player, a foot past, and what it misses is a third putt from near by. On a green of stations the misread turns and lengthens
the strike, and the balls that miss stop, as they do on the one tilt that does most nearly what the green does.
"""

from bisect import bisect_right
from cmath import phase
from collections.abc import Generator, Sequence
from dataclasses import dataclass, replace
from math import erf, exp, hypot, inf, log, pi, sqrt

from pycore.constants import CAPTURE_SPEED, HOLE_RADIUS
from pycore.green.surface import Station, Surface
from pycore.putt.chance import Player, length_of, made_of
from pycore.putt.doubt import Doubt, meant
from pycore.putt.putt import Putt
from pycore.putt.solve import Read, solve
from pycore.putt.window import Window, window

PASTS = (0.02, 0.08, 0.16, 0.26, 0.38, 0.54, 0.75, 1.0)  # m; the paces that are tried, those between by parabolas
HABIT = 0.3048  # m; how far past the hole second putts are meant to run; assumed
LENGTHS, AIMS, MOST = 25, 9, 3.6  # points over lengths and aims, and how many spreads far out
FAN, WIDEST = 12, 1.2  # pieces of the fan of balls that miss, and how far it opens at most, rad
NEAR, APART, RINGS = 0.25, 1.35, 14  # m, ratio; rings about the hole from which second putts are told
BEARINGS = 5  # from straight downhill to straight uphill
WITHIN = (0.03, 0.12, HABIT, 0.7, 1.5)  # m past; paces that tell how aim and length of a second putt follow from pace
USUAL = WITHIN.index(HABIT)
PACES = 24  # points over the paces that hole a second putt
ASIDE = 0.01  # rad; start off the aim that tells how far off it passes the hole
FIRMEST = 1.6  # m past; firmer second putts are none


@dataclass(frozen=True)
class Cost:
    """What a pace ``past`` the hole (m) costs: putts in the mean, and shares of one putt and of three or more."""

    past: float
    putts: float
    made: float
    three: float


def costs(putt: Putt, player: Player) -> Generator[float, None, list[Cost]]:
    """The cost of each pace that has a read and a window; none where the hole takes no ball. Yields the share done."""
    plane = replace(putt, surface=Surface(putt.surface.mean(putt.distance)))
    second = _Second(plane, player)
    found: list[Cost] = []
    holes: Window | None = None
    for i, past in enumerate(PASTS):
        here = replace(putt, past=past)
        read = solve(here)
        as_plane = read if putt.surface.is_plane else solve(replace(plane, past=past))
        if read and as_plane:
            holes = holes or window(here, read)
            if holes:
                found.append(_cost(read, replace(plane, past=past), as_plane, holes, player, second))
        yield (i + 1) / len(PASTS)
    return found


def least(found: Sequence[Cost]) -> Cost:
    """The pace that costs least, by the parabola through the cheapest and its neighbours."""
    best = min(range(len(found)), key=lambda i: found[i].putts)
    three = found[max(0, best - 1) : best + 2]
    if len(three) < 3:
        return found[best]
    a, b, c = three
    left, right = (a.putts - b.putts) / (a.past - b.past), (c.putts - b.putts) / (c.past - b.past)
    bend = (right - left) / (c.past - a.past)
    past = (a.past + b.past) / 2 - left / (2 * bend) if bend > 0 else b.past
    past = min(max(past, a.past), c.past)

    def at(values: tuple[float, float, float]) -> float:
        u, v, w = values
        one, two = (v - u) / (b.past - a.past), (w - v) / (c.past - b.past)
        return u + (past - a.past) * (one + (past - b.past) * (two - one) / (c.past - a.past))

    return Cost(
        past,
        at((a.putts, b.putts, c.putts)),
        at((a.made, b.made, c.made)),
        at((a.three, b.three, c.three)),
    )


def _cost(found: Read, plane: Putt, as_plane: Read, holes: Window, player: Player, second: "_Second") -> Cost:
    turn = found.aim - as_plane.aim
    parts = [replace(each, aim=each.aim + turn) for each in meant(plane, as_plane, Doubt(player.slope_sd), player.pace_sd)]
    made = made_of(parts, found, holes, player)
    total = sum(each.weight for each in parts)
    if not total:
        return Cost(plane.past, 2.0 + second.missed(plane.distance, 0.0), 0.0, 1.0)

    # one normal spread about the mean of all that is meant
    lengths = [length_of(each, player) for each in parts]
    aim = sum(each.weight * each.aim for each in parts) / total
    length = sum(each.weight * middle for each, (middle, _) in zip(parts, lengths, strict=True)) / total
    v_aim = sum(each.weight * (each.aim_variance + (each.aim - aim) ** 2) for each in parts) / total + player.start_line_sd**2
    v_length = sum(e.weight * (sd**2 + (m - length) ** 2) for e, (m, sd) in zip(parts, lengths, strict=True)) / total
    shared = sum(e.weight * (e.shared + (e.aim - aim) * (m - length)) for e, (m, _) in zip(parts, lengths, strict=True)) / total
    sd = max(sqrt(v_length), 1e-4)
    by = shared / sd**2
    aim_sd = max(sqrt(max(0.0, v_aim - (by * sd) ** 2)), 1e-5)

    fan = _Fan(as_plane, plane, MOST * (aim_sd + abs(by) * sd) + abs(aim + player.start_line_bias - found.aim))
    missed = twice = again = 0.0
    step, width = 2 * MOST / LENGTHS, 2 * MOST / AIMS
    for i in range(LENGTHS):
        x = (i + 0.5) * step - MOST
        long = length + x * sd
        if long <= 0:
            continue
        launch, share = found.launch * sqrt(long), exp(-(x**2) / 2) * step / sqrt(2 * pi)
        about = aim + player.start_line_bias + by * x * sd
        edges = holes.edges(launch)
        low, high = ((edge - about) / aim_sd for edge in edges) if edges else (0.0, 0.0)
        for j in range(AIMS):
            left, right = j * width - MOST, (j + 1) * width - MOST
            mass = share * (_below(right) - _below(left))
            inside = (max(left, low), min(right, high))
            if inside[0] < inside[1]:
                mass -= share * (_below(inside[1]) - _below(inside[0]))
            one, more = second.of(long * fan.at(about + (left + right) / 2 * aim_sd - found.aim) - plane.distance)
            missed += mass
            twice += mass * (1 - one)
            again += mass * (1 - one) * more
    scale = (1 - made) / missed if missed else 0.0
    return Cost(plane.past, 1 + (1 - made) + scale * (twice + again), made, scale * twice)


class _Fan:
    """Where the balls of one launch rest, by how far (rad) they start off the aim, up to ``widest``: straight lines between
    some. On a plane a ball that rolls longer rests farther in the same direction (Penner 2002)."""

    def __init__(self, read: Read, plane: Putt, widest: float) -> None:
        self.widest = widest = min(max(widest, 1e-6), WIDEST)
        aims = [read.aim + widest * (2 * i / FAN - 1) for i in range(FAN + 1)]
        ends = [plane.roll(read.launch, aim).at(inf) for aim in aims]
        self.rests = [complex(end.x, end.y) for end in ends]

    def at(self, off: float) -> complex:
        place = (min(max(off / self.widest, -1.0), 1.0) + 1) / 2 * FAN
        i = min(int(place), FAN - 1)
        return self.rests[i] + (place - i) * (self.rests[i + 1] - self.rests[i])


class _Second:
    """Second putts from about the hole of ``putt``: shares made on rings at bearings, and between them."""

    def __init__(self, putt: Putt, player: Player) -> None:
        self.putt, self.player = putt, player
        self.rings = [log(NEAR * APART**i) for i in range(RINGS)]
        self.shares: dict[tuple[int, int], float] = {}

    def of(self, place: complex) -> tuple[float, float]:
        """Share made from ``place`` (m, from the hole), and putts more that a miss of it costs beyond the third."""
        # the ball is on its way to the hole: it goes straight downhill from straight uphill of the hole
        bearing = abs(phase(-place * self.putt.downhill.conjugate())) if self.putt.downhill and place else 0.0
        distance = abs(place)
        return self.made(distance, bearing), self.missed(distance, bearing)

    def missed(self, distance: float, bearing: float) -> float:
        """Share of third putts missed: from as far as second putts stray."""
        return 1 - self.made(hypot(HABIT, 1.5 * self.player.pace_sd * distance), bearing)

    def made(self, distance: float, bearing: float) -> float:
        """Share made from ``distance`` (m), ``bearing`` (rad) off straight downhill."""
        if distance < exp(self.rings[0]):
            near = self._ring(0, bearing)
            return 1 - (1 - near) * distance / exp(self.rings[0])
        at = min(log(distance), self.rings[-1])
        i = min(bisect_right(self.rings, at), RINGS - 1) - 1
        share = (at - self.rings[i]) / (self.rings[i + 1] - self.rings[i])
        return (1 - share) * self._ring(i, bearing) + share * self._ring(i + 1, bearing)

    def _ring(self, ring: int, bearing: float) -> float:
        at = bearing / pi * (BEARINGS - 1)
        j = min(int(at), BEARINGS - 2)
        return (1 - at + j) * self._share(ring, j) + (at - j) * self._share(ring, j + 1)

    def _share(self, ring: int, bearing: int) -> float:
        if not self.putt.downhill:
            bearing = 0
        if (ring, bearing) not in self.shares:
            slope = abs(self.putt.downhill)
            green = Surface(Station(0.0, slope, bearing / (BEARINGS - 1) * pi))
            self.shares[ring, bearing] = _short(replace(self.putt, distance=exp(self.rings[ring]), surface=green), self.player)
        return self.shares[ring, bearing]


def _short(putt: Putt, player: Player) -> float:
    """Share made of a short putt: the hole as wide as its speed lets it be, about the aim that each pace has.

    Six times as fast as the window, and within 0.02 of many strokes up to 4 % of slope, but for a metre slantwise down 4 %,
    where it is 0.04 too high. With the window in its place, on 20 putts of 3 to 60 ft and up to 5 %, the best pace moves 4 cm
    at most, putts by 0.024, the share of three by 0.015.
    """
    reads = [read for past in WITHIN if (read := solve(replace(putt, past=past)))]
    if len(reads) < len(WITHIN):
        return 0.0
    found = reads[USUAL]
    aims, lengths = [read.aim for read in reads], [(read.launch / found.launch) ** 2 for read in reads]
    # downhill a ball that starts off the aim is drawn back to it, uphill farther away
    asides = [putt.finish(putt.roll(read.launch, read.aim + ASIDE)).offset for read in reads]
    levers = [max(aside / ASIDE, putt.distance / 10) for aside in asides]
    aim, length = found.aim + player.start_line_bias, 1 + player.pace_bias
    v_aim, v_length, shared = player.start_line_sd**2, player.pace_sd**2, 0.0
    if player.slope_sd:
        for by in (complex(player.slope_sd, 0.0), complex(0.0, player.slope_sd)):
            off = solve(replace(putt, surface=putt.surface.tilted(by), past=HABIT))
            if off:
                d_aim, d_length = off.aim - found.aim, (off.launch / found.launch) ** 2 - 1
                v_aim, v_length, shared = v_aim + d_aim**2, v_length + d_length**2, shared + d_aim * d_length
    sd = max(sqrt(v_length), 1e-4)
    turn = shared / sd**2
    aim_sd = max(sqrt(max(0.0, v_aim - (turn * sd) ** 2)), 1e-5)
    # what friction and slope together take of the ball at the hole, m/s2
    slows = putt.drag * max(0.05, 1 - putt.downhill.real / putt.rho)
    firmest = min(FIRMEST, CAPTURE_SPEED**2 / (2 * slows))
    total, step = 0.0, (firmest + HOLE_RADIUS) / PACES
    for i in range(PACES):
        past = (i + 0.5) * step - HOLE_RADIUS
        middle, long, lever = (_between(WITHIN, of_each, past) for of_each in (aims, lengths, levers))
        onward = _between(WITHIN, lengths, past + step) - long
        if past > 0:
            half = HOLE_RADIUS * sqrt(max(0.0, 1 - sqrt(2 * slows * past) / CAPTURE_SPEED))
        else:
            half = sqrt(HOLE_RADIUS**2 - past**2)
        wide = half / lever
        about = aim + turn * (long - length)
        share = _below((middle + wide - about) / aim_sd) - _below((middle - wide - about) / aim_sd)
        total += share * exp(-(((long - length) / sd) ** 2) / 2) / (sd * sqrt(2 * pi)) * onward
    return min(1.0, max(0.0, total))


def _between(places: Sequence[float], values: Sequence[float], x: float) -> float:
    """The parabola through the three points about ``x``, there."""
    i = min(max(bisect_right(places, x), 1), len(places) - 2)
    a, b, c = places[i - 1 : i + 2]
    u, v, w = values[i - 1 : i + 2]
    one, two = (v - u) / (b - a), (w - v) / (c - b)
    return u + (x - a) * (one + (x - b) * (two - one) / (c - a))


def _below(x: float) -> float:
    return (1 + erf(x / sqrt(2))) / 2
