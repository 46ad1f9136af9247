"""Scenes as OpenCV's camera has them, which is written apart from ours and works the other way, from camera to picture."""

import math
from dataclasses import dataclass

import cv2
import numpy as np
import pytest

from pycore.green.surface import Station, Surface
from pycore.sight.camera import Camera
from pycore.sight.pose import Picture
from pycore.sight.vectors import Vector

SIZE = (1200, 1600)
MIDDLE = (600.0, 800.0)
SCENES = 600


@dataclass
class Scene:
    picture: Picture
    curve: np.ndarray  # m, on the green
    pixels: np.ndarray  # where OpenCV has it

    @property
    def points(self) -> list[Vector]:
        """The curve as the engine takes it."""
        return [(float(x), float(y), float(z)) for x, y, z in self.curve]

    def off(self, found: Camera) -> np.ndarray:
        """How far (px) ``found`` has each point of the curve from where OpenCV has it."""
        return np.hypot(*(np.array([found.pixel(point) for point in self.points]) - self.pixels).T)


def scene(rng: np.random.Generator, uphill: bool = False) -> Scene:
    """A green of any tilt, photographed by somebody behind the ball, as OpenCV sees it. The world's z is straight up.

    ``uphill`` is a long putt up a steep green, looked at by one who crouches: the hole lies over the eye's own level.
    """
    length = rng.uniform(18, 25) if uphill else rng.uniform(1, 9)
    slope, fall = (rng.uniform(5, 6), rng.uniform(165, 195)) if uphill else (rng.uniform(0, 5), rng.uniform(0, 360))
    gx, gy = Surface(Station.measured(0, slope, fall)).downhill(0, 0)
    along = np.array([1, 0, -gx]) / math.hypot(1, gx)
    normal = np.array([gx, gy, 1]) / math.sqrt(1 + gx * gx + gy * gy)
    left = np.cross(normal, along)
    height = rng.uniform(0.5, 0.8 if uphill else 1.9)
    back, aside = rng.uniform(0.8, 3), rng.uniform(-0.4, 0.4)
    place = -back * along + aside * left + height * normal
    pitch, roll, heading = math.atan2(height, back + length / 3), rng.uniform(-0.1, 0.1), rng.uniform(-0.05, 0.05)
    pitch += rng.uniform(-0.1, 0.1)
    ahead, right = np.array([math.cos(heading), math.sin(heading), 0]), np.array([math.sin(heading), -math.cos(heading), 0])
    forward = math.cos(pitch) * ahead - math.sin(pitch) * np.array([0, 0, 1])
    down = np.cross(forward, right)
    turned = np.array(
        [math.cos(roll) * right + math.sin(roll) * down, -math.sin(roll) * right + math.cos(roll) * down, forward]
    )
    field = math.radians(rng.uniform(45, 75))
    focal = SIZE[1] / 2 / math.tan(field / 2)
    lens = np.array([[focal, 0, SIZE[0] / 2], [0, focal, SIZE[1] / 2], [0, 0, 1]])
    share = np.linspace(0, 1, 30)
    curve = np.stack([share * length, rng.uniform(-0.5, 0.5) * np.sin(math.pi * share), 0 * share], axis=1)
    world = curve @ np.array([along, left, normal])
    pixels = cv2.projectPoints(world, cv2.Rodrigues(turned)[0], -turned @ place, lens, None)[0][:, 0]
    up = (float(along[2]), float(left[2]), float(normal[2]))
    ball, hole = ((float(u), float(v)) for u, v in pixels[[0, -1]])
    return Scene(Picture(SIZE, ball, hole, length, up, roll, height, pitch, field, MIDDLE), curve, pixels)


@pytest.fixture(scope="session")
def uphill() -> list[Scene]:
    rng = np.random.default_rng(7)
    return [scene(rng, uphill=True) for _ in range(SCENES // 10)]


@pytest.fixture(scope="session")
def scenes() -> list[Scene]:
    rng = np.random.default_rng(6)
    return [scene(rng) for _ in range(SCENES)]
