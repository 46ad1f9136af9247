"""What a green that is not known exactly does to a read.

A green's tilt is off by a vector, the same for the whole putt, whose parts along and across the line are normal with one
spread; its speed is off by a normal number of Stimpmeter feet. Reads at a few such greens tell how aim and length follow
from what is off: straight lines and parabolas, over a grid along and across, and by themselves over the speed.
"""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from math import exp, hypot, sqrt
from typing import Self

from pycore.putt.putt import Putt
from pycore.putt.solve import Read, followed, near
from pycore.putt.strike import Strike as Struck

REACH = (sqrt(3), sqrt(3) / 3, sqrt(3) / 9)  # standard deviations; where reads are sought, the farthest first that all are
MOST = 4.0  # standard deviations along the line that count
COARSEST = 0.8  # standard deviations between the tilts along the line that are gone through
CLOSE = 1.2  # that step at most in spreads of length that every tilt has about it, so that they run into each other
NODES = 81  # tilts at most
FINEST = 0.2  # of the way to a green that is off; where not even that can be followed there is no read to it


@dataclass(frozen=True)
class Doubt:
    """Spreads of each part of the tilt (rise over run) and of the green's speed (Stimpmeter feet)."""

    tilt: float = 0.0
    stimp_ft: float = 0.0


type Strike = tuple[float, float]
"""Aim (rad), and length as a share of the length of the read's roll."""
type Off = Callable[[Putt, Doubt, float], Putt]
"""A putt on a green that is off in one way, by so many standard deviations."""


@dataclass(frozen=True)
class Parabola:
    """``middle`` + ``first`` x + ``second`` x^2, x in standard deviations."""

    middle: float
    first: float
    second: float

    @classmethod
    def through(cls, values: Sequence[float], reach: float) -> Self:
        """That with three ``values``: at -``reach``, 0 and ``reach``."""
        low, middle, high = values
        return cls(middle, (high - low) / (2 * reach), (high + low - 2 * middle) / (2 * reach**2))

    def at(self, x: float) -> float:
        """Its value at ``x``."""
        return self.middle + x * (self.first + x * self.second)

    @property
    def spread(self) -> float:
        """Its standard deviation over a normal x."""
        return hypot(self.first, sqrt(2) * self.second)


@dataclass(frozen=True)
class Meant:
    """Strikes that are meant, all but normal: their share, means of aim (rad) and length, variances and covariance."""

    weight: float
    aim: float
    length: float
    aim_variance: float = 0.0
    length_variance: float = 0.0
    shared: float = 0.0


def read_sds(putt: Putt, found: Read, doubt: Doubt) -> tuple[float, float] | None:
    """Spreads of the read's aim (rad) and of its launch speed (as a fraction); None where a green so little known has no
    read on all sides."""
    aim = launch = 0.0
    for off in (_along, _across, _faster):
        sides = _sides(putt, found, doubt, off)
        if sides is None:
            return None
        reach, low, high = sides
        aim = hypot(aim, Parabola.through((low[0], found.aim, high[0]), reach).spread)
        launch = hypot(launch, Parabola.through((sqrt(low[1]), 1.0, sqrt(high[1])), reach).spread)
    return aim, launch


def meant(putt: Putt, found: Read, doubt: Doubt, pace_sd: float) -> list[Meant]:
    """The strikes that players mean who read the green as surely as ``doubt`` says, ``found`` where they read it right.

    Together their weights make 1 at most: a misread green without a read has none. ``pace_sd`` is the spread of length
    about each, which tells how finely they have to be told.
    """
    speed = _sides(putt, found, doubt, _faster) if doubt.stimp_ft else None
    by_aim, by_length = (
        Parabola.through((speed[1][i], (found.aim, 1.0)[i], speed[2][i]), speed[0]) if speed else Parabola(0.0, 0.0, 0.0)
        for i in (0, 1)
    )
    aside = (by_aim.second, by_length.second)
    own = (by_aim.spread**2, by_length.spread**2, by_aim.first * by_length.first + 2 * by_aim.second * by_length.second)
    if not doubt.tilt:
        return [Meant(1.0, found.aim + aside[0], 1 + aside[1], *own)]
    grid = _grid(putt, found, doubt)
    if grid is None:
        return []
    reach, rows = grid
    # at each tilt along the line: how aim and length follow from the tilt across
    across = [[Parabola.through([strike[i] for strike in row], reach) for row in rows] for i in (0, 1)]
    parts = [
        [Parabola.through([getattr(each, name) for each in along], reach) for name in ("middle", "first", "second")]
        for along in across
    ]

    found_at = []
    about = hypot(pace_sd, sqrt(own[1]), parts[1][1].middle)
    for x, weight in _normal(abs(parts[1][0].first), about):
        (aim, aim_by, aim_bend), (length, length_by, length_bend) = ([part.at(x) for part in each] for each in parts)
        if length + length_bend > 0:
            found_at.append(
                Meant(
                    weight,
                    aim + aim_bend + aside[0],
                    length + length_bend + aside[1],
                    aim_by**2 + 2 * aim_bend**2 + own[0],
                    length_by**2 + 2 * length_bend**2 + own[1],
                    aim_by * length_by + 2 * aim_bend * length_bend + own[2],
                )
            )
    return found_at


def _normal(by: float, about: float) -> Iterator[tuple[float, float]]:
    """Points of a normal x and their weights, close enough where x moves what is spread ``about`` itself by ``by``."""
    step = min(COARSEST, CLOSE * about / by) if by else COARSEST
    half = min(NODES // 2, round(MOST / step))
    step = MOST / half
    points = [i * step for i in range(-half, half + 1)]
    bells = [exp(-(x**2) / 2) for x in points]
    total = sum(bells)
    yield from ((x, each / total) for x, each in zip(points, bells, strict=True))


def _along(putt: Putt, doubt: Doubt, x: float) -> Putt:
    return replace(putt, surface=putt.surface.tilted(complex(x * doubt.tilt, 0.0)))


def _across(putt: Putt, doubt: Doubt, x: float) -> Putt:
    return replace(putt, surface=putt.surface.tilted(complex(0.0, x * doubt.tilt)))


def _faster(putt: Putt, doubt: Doubt, x: float) -> Putt:
    return replace(putt, stimp_ft=putt.stimp_ft + x * doubt.stimp_ft)


def _strike(putt: Putt, doubt: Doubt, off: Off, x: float, own: Struck, opposite: Struck | None = None) -> Struck | None:
    """That of the green which is off by ``x``, followed from ``own``, which is that of ``putt``; ``opposite`` is that of the
    green which is off as far the other way."""

    def shoot(share: float, like: Struck) -> Struck | None:
        return near(off(putt, doubt, share * x), like)

    done, strike = followed(own, shoot, FINEST, opposite)
    return strike if done == 1 else None


@lru_cache(maxsize=8)
def _sides(putt: Putt, found: Read, doubt: Doubt, off: Off) -> tuple[float, Strike, Strike] | None:
    """How far to either side there are reads, and these."""
    for reach in REACH:
        row = _row(putt, doubt, off, reach, found.strike)
        if row:
            low, _, high = (_told(each, found) for each in row)
            return reach, low, high
    return None


@lru_cache(maxsize=8)
def _grid(putt: Putt, found: Read, doubt: Doubt) -> tuple[float, list[list[Strike]]] | None:
    """How far out there are reads on all sides, and these: rows along, columns across the line."""
    for reach in REACH:
        middles = _row(putt, doubt, _along, reach, found.strike)
        rows: list[list[Strike]] = []
        for x, middle in zip((-reach, 0.0, reach), middles or (), strict=False):
            row = _row(_along(putt, doubt, x), doubt, _across, reach, middle)
            if row is None:
                break
            rows.append([_told(each, found) for each in row])
        else:
            if rows:
                return reach, rows
    return None


def _row(putt: Putt, doubt: Doubt, off: Off, reach: float, own: Struck) -> tuple[Struck, Struck, Struck] | None:
    """Strikes where the green is off to either side, and ``own`` between them; None where one is missing."""
    # what falls less to the hole has its read less often: the first that is missing ends it
    high = _strike(putt, doubt, off, reach, own)
    low = high and _strike(putt, doubt, off, -reach, own, high)
    return (low, own, high) if low and high else None


def _told(strike: Struck, found: Read) -> Strike:
    return strike.aim, (strike.launch / found.launch) ** 2
