"""Strokes drawn by numpy, of shapes that a person's may have, and what a phone between the palms feels of them."""

from dataclasses import dataclass

import numpy as np

REST_S = 2.2
GRID_HZ = 1000
AXIS = np.array([0.2, 0.95, -0.25]) / np.linalg.norm([0.2, 0.95, -0.25])
PRESS_S = 0.35  # a press forward, and the stillness after it
STILL_S = 0.15
WAGGLE_S = 0.45
TREMOR_HZ = 9.0  # of a hand: 8 to 12; common knowledge of physiology, from memory

type Line = np.ndarray


@dataclass(frozen=True)
class Shape:
    """A stroke's shape: ``skew`` below 1 has its peaks early, ``follow`` is the way through beside the way back."""

    curve: str
    follow: float = 1.0
    pause_s: float = 0.0
    press_deg: float = 0.0
    skew: float = 1.0
    waggles: int = 0
    tremor_deg_s: float = 0.0


SHAPES = {
    "pendulum": Shape("pendulum"),
    "smooth": Shape("smooth"),
    "cosine": Shape("cosine"),
    "pendulum, pause 0.1 s": Shape("pendulum", pause_s=0.1),
    "pendulum, pause 0.25 s": Shape("pendulum", pause_s=0.25),
    "smooth, pause 0.1 s": Shape("smooth", pause_s=0.1),
    "smooth, pause 0.25 s": Shape("smooth", pause_s=0.25),
    "press of 2 degrees": Shape("smooth", press_deg=2.0),
    "press of 4 degrees": Shape("smooth", press_deg=4.0),
    "pendulum, press of 4": Shape("pendulum", press_deg=4.0),
    "short through": Shape("smooth", follow=0.5),
    "long through": Shape("smooth", follow=1.8),
    "late peak": Shape("smooth", skew=1.25),
    "early peak": Shape("smooth", skew=0.8),
    "three waggles": Shape("smooth", waggles=3),
    "pendulum, two waggles": Shape("pendulum", waggles=2),
    "smooth, tremor": Shape("smooth", tremor_deg_s=3.0),
    "pendulum, tremor": Shape("pendulum", tremor_deg_s=3.0),
}


def least_jerk(u: Line) -> Line:
    """The move of least jerk: Flash and Hogan, J. Neurosci. 5, 1985."""
    return 10 * u**3 - 15 * u**4 + 6 * u**5


def cosine(u: Line) -> Line:
    return (1 - np.cos(np.pi * u)) / 2


def driven(phase: Line) -> Line:
    """A pendulum driven at twice its own frequency: Grober, arXiv:0903.1762."""
    return (np.sin(2 * phase) - 2 * np.sin(phase)) / (3 * np.sqrt(3) / 2)


def angle(shape: Shape, t: Line, back: float, forward: float, reach: float) -> Line:
    """Degrees ``t`` seconds after the start, back negative; the ball is met ``back + pause + forward`` after it."""
    out = np.zeros_like(t)
    later = t - back - shape.pause_s
    going, resting = (t >= 0) & (t < back), (t >= back) & (later < 0)
    out[resting] = -reach
    if shape.curve == "pendulum":
        out[going] = reach * driven(2 * np.pi / 3 * t[going] / back)
        through = (later >= 0) & (later < 2 * forward)
        out[through] = reach * driven(2 * np.pi / 3 + np.pi / 3 * later[through] / forward)
        out[later >= 2 * forward] = reach * driven(np.array(4 * np.pi / 3))
        return out
    rise = least_jerk if shape.curve == "smooth" else cosine
    out[going] = -reach * rise((t[going] / back) ** shape.skew)
    whole = 1 + shape.follow
    u = np.linspace(0, 1, 4001)
    long = forward / float(np.interp(1 / whole, rise(u**shape.skew), u))
    through = (later >= 0) & (later < long)
    out[through] = -reach + whole * reach * rise((later[through] / long) ** shape.skew)
    out[later >= long] = shape.follow * reach
    return out


def session(
    shape: Shape, ratio: float, hz: float, seed: int, strokes: int = 8
) -> tuple[list[list[float]], list[tuple[float, float, float]]]:
    """Samples [s, degrees a second about x, y, z] of a session, and of each stroke start, top (mid-pause) and impact, s."""
    rng = np.random.default_rng(seed)
    marks, pieces, at = [], [], 1.2
    for _ in range(strokes):
        forward = 0.3 * rng.normal(1, 0.02)
        back, reach = ratio * 0.3 * rng.normal(1, 0.02), 20.0 * rng.normal(1, 0.05)
        before = (PRESS_S + STILL_S) * (shape.press_deg > 0) + (shape.waggles * WAGGLE_S + 0.35) * (shape.waggles > 0)
        start = at + before
        marks.append((start, start + back + shape.pause_s / 2, start + back + shape.pause_s + forward))
        pieces.append((at, start, back, forward, reach))
        at = marks[-1][2] + forward * (1.0 if shape.curve == "pendulum" else 1.6) + REST_S
    grid = np.arange(0, at, 1 / GRID_HZ)
    whole = np.zeros_like(grid)
    for since, start, back, forward, reach in pieces:
        a = angle(shape, grid - start, back, forward, reach)
        if shape.press_deg:
            pressed = least_jerk(np.clip((grid - since) / PRESS_S, 0, 1))
            a = a + shape.press_deg * pressed * (1 - least_jerk(np.clip((grid - start) / back, 0, 1)))
        if shape.waggles:
            u, long = grid - since, shape.waggles * WAGGLE_S
            moved = (u >= 0) & (u < long)
            a[moved] += 3.5 * np.sin(2 * np.pi * u[moved] / WAGGLE_S) * np.sin(np.pi * u[moved] / long) ** 2
        # the way back to the ball
        end = start + back + shape.pause_s + 2.6 * forward + 0.3
        rest = a[np.searchsorted(grid, min(end, grid[-1] - 0.01))]
        whole += np.where(grid > end, rest * (1 - least_jerk(np.clip((grid - end) / 1.2, 0, 1))), a)
    rate = np.gradient(whole, 1 / GRID_HZ)
    if shape.tremor_deg_s:
        swell = 1 + 0.3 * np.sin(2 * np.pi * 0.7 * grid)
        rate = rate + shape.tremor_deg_s * np.sin(2 * np.pi * TREMOR_HZ * grid + rng.uniform(0, 6)) * swell
    times, now = [], 0.0
    while now < at - 0.05:
        if rng.random() >= 0.03:
            times.append(now)
        now += rng.uniform(0.9, 1.1) / hz
    felt = np.interp(times, grid, rate)
    samples = [
        [float(t), *(float(AXIS[i] * r + (3 - 2 * i) + 0.03 * t + rng.normal(0, 1.0)) for i in range(3))]
        for t, r in zip(times, felt, strict=True)
    ]
    return samples, marks
