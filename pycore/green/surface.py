"""The shape of the green between ball and hole, as its downhill vector.

The green is known along the ball-to-hole line, at *stations*. The downhill components g_x and g_y are straight lines
between stations and constant beyond the ends, and the surface is z(x, y) = -(integral of g_x dx + g_y(x) y): a real
height field, so no path on it gains energy. Its downhill vector is (g_x + y g_y'(x), g_y).
"""

from bisect import bisect_right
from cmath import phase, rect
from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from math import cos, hypot, radians, sin
from typing import Protocol

from pycore.units import slope_from_percent


@dataclass(frozen=True)
class Station:
    """Slope (rise over run) and downhill direction (rad, anticlockwise from the line) at ``x`` metres from the ball."""

    x: float
    slope: float
    downhill: float

    @classmethod
    def measured(cls, x: float, slope_percent: float, fall_deg: float) -> "Station":
        """From what a golfer reads: per cent, and degrees clockwise from the ball-to-hole line."""
        return cls(x, slope_from_percent(slope_percent), -radians(fall_deg))

    def between(self, other: "Station", share: float) -> "Station":
        """A tilt part of the way from this one (0) to ``other`` (1), where ``other`` lies."""
        own, its = rect(self.slope, self.downhill), rect(other.slope, other.downhill)
        tilt = own + share * (its - own)
        return Station(other.x, abs(tilt), phase(tilt))


@dataclass(frozen=True)
class Patch:
    """The green from ``start`` to the next patch: downhill vector (gx + gxx x + gxy y, gy + gxy x), rise over run."""

    start: float
    gx: float
    gxx: float
    gy: float
    gxy: float

    def downhill(self, x: float, y: float) -> tuple[float, float]:
        """Downhill vector (rise over run) at x, y."""
        return self.gx + self.gxx * x + self.gxy * y, self.gy + self.gxy * x


class Green(Protocol):
    """What is asked of a green, however it is known. Where ``is_plane``, the same tilt holds everywhere."""

    @property
    def is_plane(self) -> bool: ...

    @property
    def patches(self) -> Sequence["Piece"]: ...

    def patch_at(self, x: float) -> int: ...

    def downhill(self, x: float, y: float) -> tuple[float, float]: ...

    def slope(self, x: float, y: float) -> float: ...

    def height(self, x: float, y: float) -> float: ...

    def mean(self, length: float) -> Station: ...

    def bent(self, mean: Station, share: float) -> "Green": ...

    def tilted(self, by: complex) -> "Green": ...

    def steeper(self, change: float, length: float) -> "Green": ...

    def times(self, factor: float) -> "Green": ...


class Piece(Protocol):
    """A part of a green, over which its tilt changes smoothly, from ``start`` on."""

    @property
    def start(self) -> float: ...

    def downhill(self, x: float, y: float) -> tuple[float, float]: ...


LOOKS = (0.125, 0.375, 0.625, 0.875)  # of a putt's way
WEIGHTS = (0.0625, 0.1875, 0.3125, 0.4375)  # as far as the ball has rolled: what a tilt there moves; their sum is 1


def mean_of(green: Green, length: float) -> Station:
    """The one tilt that does most nearly what ``green`` does to a putt of ``length`` m: the end, where the ball is slow,
    counts most."""
    downhill = sum(weight * complex(*green.downhill(share * length, 0.0)) for share, weight in zip(LOOKS, WEIGHTS, strict=True))
    return Station(0.0, abs(downhill), phase(downhill))


class Surface:
    """A green read at one station (a plane) or several.

    Parameters
    ----------
    stations : one or more, in the order of x (m), each x larger than the one before.
    """

    def __init__(self, *stations: Station) -> None:
        self.stations = stations
        points = [(s.x, s.slope * cos(s.downhill), s.slope * sin(s.downhill)) for s in stations]
        patches = [Patch(float("-inf"), points[0][1], 0.0, points[0][2], 0.0)]
        for (x0, gx0, gy0), (x1, gx1, gy1) in pairwise(points):
            bend_x, bend_y = (gx1 - gx0) / (x1 - x0), (gy1 - gy0) / (x1 - x0)
            patches.append(Patch(x0, gx0 - bend_x * x0, bend_x, gy0 - bend_y * x0, bend_y))
        if len(points) > 1:
            patches.append(Patch(points[-1][0], points[-1][1], 0.0, points[-1][2], 0.0))
        self.patches = tuple(patches)
        self.starts = [patch.start for patch in patches[1:]]

    def mean(self, length: float) -> Station:
        """The one tilt that does most nearly what this green does to a putt of ``length`` m: the end, where the ball is
        slow, counts most."""
        return mean_of(self, length)

    def bent(self, mean: Station, share: float) -> "Surface":
        """A green part of the way from the plane ``mean`` (0) to this one (1)."""
        return Surface(*(mean.between(station, share) for station in self.stations))

    def tilted(self, by: complex) -> "Surface":
        """This green tilted everywhere by the downhill vector ``by`` (rise over run) as well."""
        tilts = [(station.x, rect(station.slope, station.downhill) + by) for station in self.stations]
        return Surface(*(Station(x, abs(tilt), phase(tilt)) for x, tilt in tilts))

    def steeper(self, change: float, length: float) -> "Surface":
        """This green steeper by ``change`` (rise over run) at every station, the way it falls there."""
        return Surface(*(replace(station, slope=station.slope + change) for station in self.stations))

    def times(self, factor: float) -> "Surface":
        """This green with all its slopes times ``factor``."""
        return Surface(*(replace(station, slope=station.slope * factor) for station in self.stations))

    @property
    def is_plane(self) -> bool:
        """Whether the same tilt holds everywhere."""
        return len(self.patches) == 1

    def patch_at(self, x: float) -> int:
        """Index of the patch under x; a patch has its start but not its end."""
        return bisect_right(self.starts, x)

    def downhill(self, x: float, y: float) -> tuple[float, float]:
        """Downhill vector (rise over run) at x, y."""
        return self.patches[self.patch_at(x)].downhill(x, y)

    def slope(self, x: float, y: float) -> float:
        """Tilt (rise over run) at x, y."""
        return hypot(*self.downhill(x, y))

    def height(self, x: float, y: float) -> float:
        """Height (m) at x, y above the ball's place at 0, 0."""
        return self._fall(0.0) - self._fall(x) - y * self.downhill(x, 0.0)[1]

    def _fall(self, x: float) -> float:
        """Integral of g_x along the line from the first station to x."""
        if self.is_plane:
            return self.patches[0].gx * x
        first = self.patches[1].start
        total = self.patches[0].gx * (min(x, first) - first)
        for patch, end in zip(self.patches[1:], [*self.starts[1:], float("inf")], strict=True):
            if x > patch.start:
                low, high = patch.start, min(x, end)
                total += patch.gx * (high - low) + patch.gxx * (high**2 - low**2) / 2
        return total
