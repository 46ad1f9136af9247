"""A green in a camera's axes: on the plane through ball and hole, with what it rises over that plane."""

from dataclasses import dataclass

from pycore.green.surface import Green
from pycore.sight.vectors import Vector, cross, unit


@dataclass(frozen=True)
class Ground:
    """A green between a ball and a hole ``length`` m away. On one slope the plane is the green itself."""

    surface: Green
    length: float

    @property
    def tilt(self) -> tuple[float, float]:
        """Downhill vector of the plane: that of the ball-to-hole line along, the middle's across."""
        middle = self.surface.downhill(self.length / 2, 0.0)
        return -self.surface.height(self.length, 0.0) / self.length, middle[1]

    @property
    def up(self) -> Vector:
        """Straight up, in the plane's own axes."""
        gx, gy = self.tilt
        along, out = unit((1.0, 0.0, -gx)), unit((gx, gy, 1.0))
        return along[2], cross(out, along)[2], out[2]

    def rise(self, x: float, y: float) -> float:
        """How much higher the green is than the plane, m."""
        gx, gy = self.tilt
        return self.surface.height(x, y) + gx * x + gy * y

    def place(self, x: float, y: float) -> Vector:
        """A place of the green in the plane's axes."""
        rise, up = self.rise(x, y), self.up
        return x + rise * up[0], y + rise * up[1], rise * up[2]
