"""A photograph of a green, drawn by numpy as a pinhole camera has it; it knows nothing of the engine's camera."""

import math
from collections.abc import Mapping

import numpy as np
from numpy.typing import NDArray
from PIL import Image

SIZE = (900, 1200)
EYE_M, BACK_M, PITCH_DEG = 1.6, 2.0, 22.0
LENS_MM = 26  # as for 35 mm film
FILM_DIAGONAL_MM = math.hypot(36, 24)
SKY, GRASS, HOLE, BALL = (180, 205, 230), (70, 130, 60), (15, 15, 15), (250, 250, 250)

type Vector = NDArray[np.float64]


class Photograph:
    """A camera held without roll behind the ball of ``putt``, turned to the left of the line and down from level by so much."""

    def __init__(self, putt: Mapping[str, float], left_deg: float = 0.0, down_deg: float = PITCH_DEG) -> None:
        slope, fall = putt["slope_percent"] / 100, -math.radians(putt["fall_deg"])
        gx, gy = slope * math.cos(fall), slope * math.sin(fall)
        self.distance = putt["distance_m"]
        self.along: Vector = np.array([1, 0, -gx]) / math.hypot(1, gx)
        self.normal: Vector = np.array([gx, gy, 1]) / math.sqrt(1 + gx * gx + gy * gy)
        self.left: Vector = np.cross(self.normal, self.along)
        self.place: Vector = -BACK_M * self.along + EYE_M * self.normal
        turn, pitch = math.radians(left_deg), math.radians(down_deg)
        ahead = np.array([math.cos(turn), math.sin(turn), 0])
        self.forward: Vector = math.cos(pitch) * ahead - math.sin(pitch) * np.array([0, 0, 1])
        self.right: Vector = np.array([math.sin(turn), -math.cos(turn), 0])
        self.down: Vector = np.cross(self.forward, self.right)
        self.focal = LENS_MM / FILM_DIAGONAL_MM * math.hypot(*SIZE)

    def pixel(self, x: float, y: float) -> tuple[float, float]:
        """Where a place of the green is."""
        way = x * self.along + y * self.left - self.place
        scale = self.focal / float(way @ self.forward)
        return SIZE[0] / 2 + scale * float(way @ self.right), SIZE[1] / 2 + scale * float(way @ self.down)

    def picture(self) -> Image.Image:
        """Grass and sky, the hole and the ball at their true sizes."""
        v, u = np.mgrid[0 : SIZE[1], 0 : SIZE[0]] + 0.5
        rays = ((u - SIZE[0] / 2) / self.focal)[..., None] * self.right + self.forward
        rays = rays + ((v - SIZE[1] / 2) / self.focal)[..., None] * self.down
        falling = rays @ self.normal
        ground = falling < -1e-3
        hit = self.place + (EYE_M / np.where(ground, -falling, 1))[..., None] * rays
        x, y = hit @ self.along, hit @ self.left
        pixels = np.full((SIZE[1], SIZE[0], 3), SKY, np.uint8)
        pixels[ground] = GRASS
        pixels[ground & (np.hypot(x - self.distance, y) < 0.054)] = HOLE
        pixels[ground & (np.hypot(x, y) < 0.0213)] = BALL
        return Image.fromarray(pixels)
