"""A pinhole camera over the green: where a point of the ground lies in its picture.

Square pixels. The ground's axes are those of the putt: x from ball to
hole, y to its left, z up from the green; the camera's are right, down and forward.
"""

from dataclasses import dataclass
from math import cos, sin

from pycore.sight.vectors import Vector, cross, dot, minus, times, unit

type Pixel = tuple[float, float]

DIGITS = 2  # of a pixel
NEAR = 0.05  # m before the lens; what is nearer is not in the picture


@dataclass(frozen=True)
class Camera:
    """Focal length and middle of the picture in pixels; place (m) and axes in the ground's coordinates."""

    focal: float
    middle: Pixel
    place: Vector
    right: Vector
    down: Vector
    forward: Vector

    @classmethod
    def level(cls, focal: float, middle: Pixel, place: Vector, heading: float, pitch: float) -> "Camera":
        """Held without roll over level ground, looking along ``heading`` (rad, left of x) and down by ``pitch`` (rad)."""
        return cls.held(focal, middle, place, (0.0, 0.0, 1.0), heading, pitch, 0.0)

    @classmethod
    def held(
        cls, focal: float, middle: Pixel, place: Vector, up: Vector, heading: float, pitch: float, roll: float
    ) -> "Camera":
        """Held over a green on which straight up is ``up`` (one long): ``heading`` is left of x, ``pitch`` down from level,
        ``roll`` clockwise as its holder sees it; rad."""
        along = unit(minus((1.0, 0.0, 0.0), times(up[0], up)))
        left = cross(up, along)
        ahead = minus(times(cos(heading), along), times(-sin(heading), left))
        aside = minus(times(sin(heading), along), times(cos(heading), left))
        forward = minus(times(cos(pitch), ahead), times(sin(pitch), up))
        under = cross(forward, aside)
        return cls(
            focal,
            middle,
            place,
            minus(times(cos(roll), aside), times(-sin(roll), under)),
            minus(times(cos(roll), under), times(sin(roll), aside)),
            forward,
        )

    def depth(self, point: Vector) -> float:
        """How far before the lens a point lies, m."""
        return dot(minus(point, self.place), self.forward)

    def pixel(self, point: Vector) -> Pixel | None:
        """Where a point (m) lies, right and down from the picture's top left corner; None if it is not before the lens."""
        way = minus(point, self.place)
        depth = dot(way, self.forward)
        if depth < NEAR:
            return None
        scale = self.focal / depth
        return self.middle[0] + scale * dot(way, self.right), self.middle[1] + scale * dot(way, self.down)


def rounded(pixel: Pixel) -> Pixel:
    """As it is told."""
    return round(pixel[0], DIGITS), round(pixel[1], DIGITS)
