"""A surveyed green with all that is worked out of it once: its relief, its outline, its height lines."""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise
from math import sqrt

from pycore.green.contours import Place, contours
from pycore.green.relief import Relief, bake
from pycore.green.surface import LOOKS, WEIGHTS
from pycore.green.survey import Survey, survey
from pycore.stats.linear import Row
from pycore.stats.process import Reading

EDGE = 1.0  # m; so far outside the outermost readings the green still counts as surveyed
MARGIN = 2.0  # m; so far outside it is baked
CELL, MOST_CELLS = 0.5, 40  # m; of the relief, and along the longer side
DRAWN = 8  # squares of the drawn grid along the longer side
LATTICE = 0.25  # m; between points of height lines
MOST_LATTICE = 80  # squares of that along the longer side


@dataclass(frozen=True)
class Walked:
    """``survey`` and the relief baked from it."""

    survey: Survey
    relief: Relief

    @cached_property
    def hull(self) -> list[complex]:
        """The outermost readings, anticlockwise (Andrew's monotone chain)."""
        places = sorted({each.place for each in self.survey.readings}, key=lambda z: (z.real, z.imag))
        return places if len(places) < 3 else [*_chain(places), *_chain(places[::-1])]

    def outside(self, place: complex) -> float:
        """How far a place lies outside the outermost readings, m; 0 inside."""
        ring = [*self.hull, self.hull[0]]
        if len(self.hull) > 2 and all(_cross(b - a, place - a) >= 0 for a, b in pairwise(ring)):
            return 0.0
        return min(_from_side(place, a, b) for a, b in pairwise(ring))

    @cached_property
    def box(self) -> tuple[complex, complex]:
        """Lower left and upper right corner of the surveyed part."""
        xs, ys = ([getattr(each.place, part) for each in self.survey.readings] for part in ("real", "imag"))
        return complex(min(xs) - EDGE, min(ys) - EDGE), complex(max(xs) + EDGE, max(ys) + EDGE)

    def lattice(self, step: float) -> tuple[list[float], list[float]]:
        """Lines over the surveyed part, about ``step`` (m) apart."""
        low, high = self.box
        return _lines(low.real, high.real, step), _lines(low.imag, high.imag, step)

    @cached_property
    def side(self) -> float:
        """The longer side of the surveyed part, m."""
        across = self.box[1] - self.box[0]
        return max(across.real, across.imag)

    @cached_property
    def drawn(self) -> list[complex]:
        """Places over the surveyed part, for drawing and for finding."""
        xs, ys = self.lattice(self.side / DRAWN)
        return [complex(x, y) for x in xs for y in ys if self.outside(complex(x, y)) <= EDGE]

    @cached_property
    def doubt(self) -> list[Row]:
        """Covariance of the tilts at ``drawn``."""
        return self.survey.doubt(self.drawn)

    def mean_sd(self, ball: complex, hole: complex) -> float:
        """Spread of each part of the one tilt that does to a putt what the green does (``surface.mean_of``)."""
        places = [ball + share * (hole - ball) for share in LOOKS]
        told = self.survey.tell(places, WEIGHTS, [1j * weight for weight in WEIGHTS])
        return sqrt(sum(variance for _, variance in told) / 2)

    def contours(self, unit: float) -> list[tuple[float, list[Place]]]:
        """Height lines over the surveyed part, at whole ``unit`` s (m): height (m) over the map's origin, and points."""
        xs, ys = self.lattice(max(LATTICE, self.side / MOST_LATTICE))
        return contours(lambda x, y: -self.relief.at(x, y)[0], xs, ys, unit)

    @cached_property
    def next(self) -> list[complex]:
        """Where one more reading would teach most."""
        return self.survey.next(self.drawn, self.doubt)


def walked(readings: Sequence[Reading], place_sd: float) -> Walked:
    """The green that ``readings`` make."""
    found = survey(readings, place_sd)
    xs, ys = ([getattr(each.place, part) for each in readings] for part in ("real", "imag"))
    low, high = complex(min(xs) - MARGIN, min(ys) - MARGIN), complex(max(xs) + MARGIN, max(ys) + MARGIN)
    side = max((high - low).real, (high - low).imag)
    step = max(CELL, side / MOST_CELLS)
    plane = sum((weight * process.plane for weight, process in found.parts), 0j)
    return Walked(found, bake(found.drop, low, high, step, plane))


def _chain(places: Sequence[complex]) -> list[complex]:
    """One side of the hull of sorted places, its last place left out."""
    chain: list[complex] = []
    for place in places:
        while len(chain) > 1 and _cross(chain[-1] - chain[-2], place - chain[-2]) <= 0:
            chain.pop()
        chain.append(place)
    return chain[:-1]


def _cross(a: complex, b: complex) -> float:
    return a.real * b.imag - a.imag * b.real


def _from_side(place: complex, a: complex, b: complex) -> float:
    way = b - a
    along = ((place - a) * way.conjugate()).real / (abs(way) ** 2 or 1.0)
    return abs(place - a - min(1.0, max(0.0, along)) * way)


def _lines(low: float, high: float, step: float) -> list[float]:
    cells = max(1, round((high - low) / step))
    return [low + (high - low) * i / cells for i in range(cells + 1)]
