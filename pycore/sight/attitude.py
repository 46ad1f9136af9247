"""A phone's attitude, and where its camera looks. The picture is upright on the screen, which the phone may have turned."""

from dataclasses import dataclass, replace
from math import asin, atan2, cos, sin

from pycore.attitude import axes
from pycore.sight.camera import Camera, Pixel
from pycore.sight.vectors import Vector, dot, minus, times

type Axes = tuple[Vector, Vector, Vector]


@dataclass(frozen=True)
class Attitude:
    """Alpha, beta and gamma, and how far the screen shows its picture turned clockwise from the phone's own upright; rad."""

    alpha: float
    beta: float
    gamma: float
    screen: float

    @property
    def axes(self) -> Axes:
        """The camera's right, down and forward, in axes that stay where they are while the phone turns; z is up."""
        x, y, z = axes(self.alpha, self.beta, self.gamma)
        right = minus(times(cos(self.screen), x), times(sin(self.screen), y))
        down = minus(times(-sin(self.screen), x), times(cos(self.screen), y))
        return right, down, times(-1.0, z)

    @property
    def pitch(self) -> float:
        """How far down from level the camera looks, rad."""
        return -asin(self.axes[2][2])

    @property
    def roll(self) -> float:
        """How far the camera leans clockwise, as its holder sees it, rad."""
        right, down, _ = self.axes
        return atan2(-right[2], -down[2])


def followed(seen: Camera, then: Attitude, now: Attitude) -> Camera:
    """The camera ``seen`` in the phone's attitude then, turned on the spot to its attitude now."""
    before = then.axes
    right, down, forward = (_turned(axis, before, (seen.right, seen.down, seen.forward)) for axis in now.axes)
    return replace(seen, right=right, down=down, forward=forward)


def moved(pixel: Pixel, focal: float, middle: Pixel, then: Attitude, now: Attitude) -> Pixel | None:
    """Where what was seen at ``pixel`` in the phone's attitude then is seen in its attitude now; None where it is not."""
    x, y, z = then.axes
    way = _turned((pixel[0] - middle[0], pixel[1] - middle[1], focal), ((1, 0, 0), (0, 1, 0), (0, 0, 1)), (x, y, z))
    right, down, ahead = (dot(way, axis) for axis in now.axes)
    return (middle[0] + focal * right / ahead, middle[1] + focal * down / ahead) if ahead > 0 else None


def _turned(vector: Vector, before: Axes, after: Axes) -> Vector:
    """What has ``vector``'s parts along the axes ``before``, along those ``after``."""
    a, b, c = (times(dot(vector, old), new) for old, new in zip(before, after, strict=True))
    return a[0] + b[0] + c[0], a[1] + b[1] + c[1], a[2] + b[2] + c[2]
