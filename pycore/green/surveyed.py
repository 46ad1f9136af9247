"""A surveyed green as a putt sees it: from the ball to the hole and to the left of that line."""

from cmath import phase, rect
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from math import degrees, hypot

from pycore.green.relief import Relief
from pycore.green.surface import Station, mean_of
from pycore.units import percent_from_slope


@dataclass(frozen=True, eq=False)
class Field:
    """The one patch of a surveyed green, by its downhill vector (rise over run) at x, y."""

    downhill: Callable[[float, float], tuple[float, float]]
    start: float = float("-inf")


@dataclass(frozen=True, eq=False)
class Surveyed:
    """``share`` of the green ``relief``, tilted by ``plane`` (rise over run) as well.

    Parameters
    ----------
    ball : where x and y are 0, on the map (m).
    line : direction of the hole from there, of length 1.
    """

    relief: Relief
    ball: complex
    line: complex
    share: float = 1.0
    plane: complex = 0j

    is_plane = False

    @cached_property
    def patches(self) -> Sequence[Field]:
        """The green is of one piece."""
        return (Field(self.downhill),)

    @cached_property
    def downhill(self) -> Callable[[float, float], tuple[float, float]]:
        """Downhill vector (rise over run) at x, y."""
        return self.relief.downhill(self.ball, self.line, self.share, self.plane)

    def patch_at(self, x: float) -> int:
        """Index of the patch under x."""
        return 0

    def slope(self, x: float, y: float) -> float:
        """Tilt (rise over run) at x, y."""
        return hypot(*self.downhill(x, y))

    def height(self, x: float, y: float) -> float:
        """Height (m) at x, y above the ball's place at 0, 0."""
        place = self.ball + complex(x, y) * self.line
        fallen = self.relief.at(place.real, place.imag)[0] - self.relief.at(self.ball.real, self.ball.imag)[0]
        return -self.share * fallen - self.plane.real * x - self.plane.imag * y

    def mean(self, length: float) -> Station:
        """The one tilt that does most nearly what this green does to a putt of ``length`` m."""
        return mean_of(self, length)

    def bent(self, mean: Station, share: float) -> "Surveyed":
        """A green part of the way from the plane ``mean`` (0) to this one (1)."""
        plane = rect(mean.slope, mean.downhill)
        return replace(self, share=share * self.share, plane=plane + share * (self.plane - plane))

    def tilted(self, by: complex) -> "Surveyed":
        """This green tilted everywhere by the downhill vector ``by`` (rise over run) as well."""
        return replace(self, plane=self.plane + by)

    def steeper(self, change: float, length: float) -> "Surveyed":
        """This green steeper by ``change`` (rise over run), the way that a putt of ``length`` m falls."""
        return self.tilted(rect(change, self.mean(length).downhill))

    def times(self, factor: float) -> "Surveyed":
        """This green with all its slopes times ``factor``."""
        return replace(self, share=factor * self.share, plane=factor * self.plane)

    def stations(self, length: float, how_many: int) -> list[tuple[float, float, float]]:
        """Place (m), slope (per cent) and fall (degrees clockwise from the line) along a putt of ``length`` m."""
        at = [length * i / (how_many - 1) for i in range(how_many)]
        tilts = [complex(*self.downhill(x, 0.0)) for x in at]
        return [(x, percent_from_slope(abs(t)), -degrees(phase(t))) for x, t in zip(at, tilts, strict=True)]
