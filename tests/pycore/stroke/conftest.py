"""A phone swung like a putter, made up from the pendulum's formula alone."""

import random
from collections.abc import Callable
from math import cos, pi

import pytest

REST = 2.2  # s between a finish and the next start
REST_BEFORE = 1.0
PEAK_DEG_S = 110  # a putter's turning at impact


def pendulum_rate(t: float, back: float, forward: float) -> float:
    """d/dt of sin 2u - 2 sin u, u stretched to the times of the stroke; 1 at impact."""
    if not 0 <= t <= back + 2 * forward:
        return 0.0
    pace = (2 * pi / 3 / back) if t < back else pi / 3 / forward
    u = pace * t if t < back else 2 * pi / 3 + pace * (t - back)
    return 2 * (cos(2 * u) - cos(u)) / 4 * pace / (pi / 3 / forward)


def swung(ratio, hz, *, strokes=8, forward=0.3, seed=1, noise=2.0, drift=0.05, drop=0.05, axis=(0.2, 0.95, -0.25)):
    """Samples [t, deg/s about x, y, z] of strokes with times that vary, a walk back to the ball, noise, drift and gaps."""
    chance = random.Random(seed)
    spans, t = [], REST_BEFORE
    for _ in range(strokes):
        f = forward * chance.gauss(1, 0.02)
        b = ratio * forward * chance.gauss(1, 0.02)
        spans.append((t, b, f))
        t += b + 2 * f + REST
    samples, now = [], 0.0
    while now < t:
        rate = sum(PEAK_DEG_S * pendulum_rate(now - start, b, f) for start, b, f in spans)
        for start, b, f in spans:
            since = now - start - b - 2 * f - 0.3
            if 0 <= since < 1.2:
                rate -= 25 * (1 - cos(2 * pi * since / 1.2)) / 2
        if chance.random() >= drop:
            samples.append([now, *(axis[i] * rate + 3 - 2 * i + drift * now + chance.gauss(0, noise) for i in range(3))])
        now += chance.uniform(0.9, 1.1) / hz
    return samples, [b / f for _, b, f in spans]


@pytest.fixture
def swing_phone() -> Callable:
    return swung
