"""What stands before the eye of one who looks at a putt: from behind the ball, from the low side, from behind the hole.

Heights are those of the green as it was read, so all that is drawn lies on it; straight up is straight up, and the
horizon is that of level ground.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from math import atan2, ceil, cos, floor, hypot, inf, pi, sin, tan
from typing import Literal

from pycore.constants import FLAGSTICK, HOLE_RADIUS
from pycore.putt.putt import Putt
from pycore.sight.camera import Camera, Pixel
from pycore.sight.vectors import Vector, minus
from pycore.units import percent_from_slope

type Stand = Literal["ball", "low", "hole"]
type Place = tuple[float, float]
type Line = list[Pixel]

MARGIN = 0.07  # of the picture on each side, free of what has to be seen
SKY = 0.03  # rad; of sky over the horizon
RING = 32  # points of the hole's outline
AROUND = 2.0  # m of green about what has to be seen
SIDES = (0.5, 1.0, 2.0, 4.0)  # squares; sides that a cell of the grid may have
CELLS = 22  # most cells one way
STROKE, LONGEST = 0.2, 0.9  # of a cell's side: a stroke that shows the fall, per per cent, and the longest


@dataclass(frozen=True)
class View:
    """A camera that looks at ``putt``, and the places (m) that it was turned to."""

    putt: Putt
    camera: Camera
    seen: Sequence[Place]

    def pixel(self, x: float, y: float, above: float = 0.0) -> Pixel | None:
        """Where a place of the green lies in the picture, or one so far ``above`` it (m)."""
        return self.camera.pixel(_ground(self.putt, x, y, above))

    def scale(self, x: float, y: float) -> float:
        """How many pixels a metre has across the view at a place of the green."""
        return self.camera.focal / self.camera.depth(_ground(self.putt, x, y))

    @property
    def horizon(self) -> float:
        """How far down the picture the horizon is, px."""
        x, y, z = self.camera.forward
        return self.camera.middle[1] + self.camera.focal * z / hypot(x, y)

    def hole(self) -> Line:
        """The hole's edge."""
        turns = (2 * pi * i / RING for i in range(RING))
        return self._line((self.putt.distance + HOLE_RADIUS * cos(turn), HOLE_RADIUS * sin(turn)) for turn in turns)

    def flag(self) -> Line:
        """Foot and top of the flagstick."""
        return [pixel for above in (0.0, FLAGSTICK) if (pixel := self.pixel(self.putt.distance, 0.0, above))]

    def grid(self, square: float) -> tuple[float, list[Line]]:
        """Lines on the green along and across the putt, and how far apart they are: ``square`` (m), its half or more."""
        step, xs, ys = self._cells(square)
        along = [self._line((x * step, y * step) for x in xs) for y in ys]
        across = [self._line((x * step, y * step) for y in ys) for x in xs]
        return step, [line for line in along + across if len(line) > 1]

    def turf(self, square: float) -> Line:
        """Round the grid: the edge of the green that is drawn, which may hide the horizon where it rises."""
        step, xs, ys = self._cells(square)
        round_it = [
            *((x, ys[0]) for x in xs),
            *((xs[-1], y) for y in ys),
            *((x, ys[-1]) for x in reversed(xs)),
            *((xs[0], y) for y in reversed(ys)),
        ]
        return self._line([(x * step, y * step) for x, y in round_it])

    def falls(self, square: float) -> list[Line]:
        """In each cell of the grid a stroke downhill, longer where the green is steeper."""
        step, xs, ys = self._cells(square)
        strokes = []
        for i in xs[:-1]:
            for j in ys[:-1]:
                x, y = (i + 0.5) * step, (j + 0.5) * step
                gx, gy = self.putt.surface.downhill(x, y)
                slope = hypot(gx, gy)
                half = step * min(LONGEST, STROKE * percent_from_slope(slope)) / 2 / slope if slope else 0.0
                strokes.append(self._line([(x - half * gx, y - half * gy), (x + half * gx, y + half * gy)]))
        return [stroke for stroke in strokes if len(stroke) == 2 and stroke[0] != stroke[1]]

    def _cells(self, square: float) -> tuple[float, range, range]:
        sides = [(min(side) - AROUND, max(side) + AROUND) for side in zip(*self.seen, strict=True)]
        most = max(high - low for low, high in sides)
        step = square * next((side for side in SIDES if most <= CELLS * side * square), SIDES[-1])
        xs, ys = (range(floor(low / step), ceil(high / step) + 1) for low, high in sides)
        return step, xs, ys

    def _line(self, places: Iterator[Place] | list[Place]) -> Line:
        return [pixel for place in places if (pixel := self.pixel(*place))]


def view(putt: Putt, size: tuple[float, float], stand: Stand, eye: float, back: float, seen: Sequence[Place]) -> View:
    """Look at ``putt`` so that the places ``seen`` (m) and the horizon fill a picture of ``size`` (px).

    Parameters
    ----------
    stand : behind the ball, on the low side of the putt's middle, or behind the hole.
    eye : height of the eye over the green, m.
    back : how far the eye is behind the ball or the hole; on the low side, from the circle through both, m.
    """
    x, y, heading = _stand(putt, stand, back)
    place = _ground(putt, x, y, eye)
    points = [_ground(putt, *at) for at in seen]
    ways = [minus(point, place) for point in points]
    turns = [atan2(cos(heading) * y - sin(heading) * x, cos(heading) * x + sin(heading) * y) for x, y, _ in ways]
    dips = [-SKY, *(atan2(-z, hypot(x, y)) for x, y, z in ways)]
    pitch = (min(dips) + max(dips)) / 2
    plain = Camera.level(1.0, (0.0, 0.0), place, heading + (min(turns) + max(turns)) / 2, pitch)
    pixels = [pixel for point in points if (pixel := plain.pixel(point))]
    wide = max(abs(u) for u, _ in pixels)
    high = max(tan(pitch + SKY), *(abs(v) for _, v in pixels))
    focal = (0.5 - MARGIN) * min(size[0] / wide if wide else inf, size[1] / high)
    return View(putt, replace(plain, focal=focal, middle=(size[0] / 2, size[1] / 2)), seen)


def _stand(putt: Putt, stand: Stand, back: float) -> tuple[float, float, float]:
    """Where the eye is (m), and which way it looks (rad)."""
    if stand == "ball":
        return -back, 0.0, 0.0
    if stand == "hole":
        return putt.distance + back, 0.0, pi
    side = 1 if putt.downhill.imag > 0 else -1
    return putt.distance / 2, side * (putt.distance / 2 + back), -side * pi / 2


def _ground(putt: Putt, x: float, y: float, above: float = 0.0) -> Vector:
    return x, y, putt.surface.height(x, y) + above
