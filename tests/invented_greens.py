"""Invented greens: sums of waves, some with a tier, 12 x 12 m, 1.8 % steep on the whole and 6 % at most."""

from dataclasses import dataclass

import numpy as np

from pycore.stats.process import Reading

SIDE = 12.0  # m
TYPICAL, STEEPEST = 0.018, 0.06  # rise over run
NOISE, MISPLACED = 0.0012, 0.25  # rise over run; m, each way


@dataclass
class Invented:
    """Waves (wave numbers, phases, sizes), a plane and a tier; ``drop`` is how far the green lies below its origin."""

    waves: np.ndarray
    plane: np.ndarray
    tier: np.ndarray
    scale: float = 1.0

    def drop(self, x, y):
        kx, ky, phase, size = self.waves
        way_x, way_y, at, width, rise = self.tier
        across = (x - SIDE / 2) * way_x + (y - SIDE / 2) * way_y - at
        waves = (size * np.sin(kx * np.expand_dims(x, -1) + ky * np.expand_dims(y, -1) + phase)).sum(-1)
        return self.scale * (waves + self.plane[0] * x + self.plane[1] * y + rise * np.tanh(across / width))

    def downhill(self, x, y):
        kx, ky, phase, size = self.waves
        way_x, way_y, at, width, rise = self.tier
        across = (x - SIDE / 2) * way_x + (y - SIDE / 2) * way_y - at
        wave = size * np.cos(kx * np.expand_dims(x, -1) + ky * np.expand_dims(y, -1) + phase)
        step = rise / width / np.cosh(across / width) ** 2
        return (
            self.scale * ((wave * kx).sum(-1) + self.plane[0] + step * way_x),
            self.scale * ((wave * ky).sum(-1) + self.plane[1] + step * way_y),
        )

    def read(self, places, chance):
        """Readings meant to be taken at ``places``, each taken a little beside its own."""
        readings = []
        for x, y in places:
            gx, gy = self.downhill(*(np.array([x, y]) + chance.normal(0, MISPLACED, 2)))
            readings.append(Reading(complex(x, y), complex(gx + chance.normal(0, NOISE), gy + chance.normal(0, NOISE)), NOISE))
        return readings


def invented(number):
    chance = np.random.default_rng(number)
    grid = np.meshgrid(np.linspace(0, SIDE, 41), np.linspace(0, SIDE, 41))
    while True:
        count = chance.integers(3, 7)
        turn, rate = chance.uniform(0, 2 * np.pi, count), 2 * np.pi / chance.uniform(6, 24, count)
        phases, sizes = chance.uniform(0, 2 * np.pi, count), chance.uniform(0.3, 1, count) / rate
        tilt, edge = chance.uniform(0, 2 * np.pi, 2)
        rise = chance.uniform(2, 5) * chance.integers(0, 2)
        green = Invented(
            np.array([rate * np.cos(turn), rate * np.sin(turn), phases, sizes]),
            chance.uniform(0, 1) * np.array([np.cos(tilt), np.sin(tilt)]),
            np.array([np.cos(edge), np.sin(edge), chance.uniform(-3, 3), chance.uniform(0.8, 1.6), rise]),
        )
        steep = np.hypot(*green.downhill(*grid))
        green.scale = TYPICAL / steep.mean()
        if steep.max() * green.scale <= STEEPEST:
            return green


def walk(side):
    """The middles of side x side squares."""
    return [(SIDE * (i + 0.5) / side, SIDE * (j + 0.5) / side) for j in range(side) for i in range(side)]
