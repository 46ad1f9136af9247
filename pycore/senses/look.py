"""A green drawn as the eye has it from behind the ball: to guess its slope from.

The ball lies at 0, 0 and the hole ``LENGTH`` away. The eye looks level along the line, so that flagstick and horizon are
true; a point at depth x, y to the left and height z above the ball lands in the picture at -y / x' right and (z' ) / x'
up, x' its depth and z' its height from the eye.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from math import cos, pi, sin

from pycore.constants import BALL_RADIUS, FLAGSTICK, HOLE_RADIUS
from pycore.senses.feel import FALLS, Fall
from pycore.units import slope_from_percent

LENGTH = 4.0  # m, from ball to hole
BEHIND = 2.5  # m, from eye to ball
EYE = 1.5  # m, height of the eye over the turf under it
HALF_WIDTH = 2.5  # m of green on each side of the line
STEP = 0.5  # m between the lines on the green
BEYOND = 2.0  # m of green past the hole
LEAST, MOST = 5, 50  # tenths of a per cent

type Point = tuple[float, float]
type Curve = list[Point]


@dataclass(frozen=True)
class Look:
    """A slope (per cent) and its fall, with the picture: right and down from the horizon, in distances of the picture."""

    slope_percent: float
    fall: Fall
    grid: list[Curve]
    ball: Curve
    hole: Curve
    flag: Curve


def look(case: int) -> Look:
    """The picture of case number ``case``: any number gives a slope from 0.5 to 5 % and one of four falls."""
    mixed = _mixed(case)
    tenths = LEAST + mixed % (MOST - LEAST + 1)
    fall = FALLS[mixed // 1000 % len(FALLS)]
    steep = slope_from_percent(tenths / 10)
    along, across = {"left": (0.0, steep), "right": (0.0, -steep), "toes": (steep, 0.0), "heels": (-steep, 0.0)}[fall]

    def seen(x: float, y: float, above: float = 0.0) -> Point:
        height = above - along * x - across * y - (EYE + along * BEHIND)
        depth = x + BEHIND
        return round(-y / depth, 5), round(-height / depth, 5)

    def ring(x: float, radius: float, standing: bool) -> Curve:
        turns = [2 * pi * i / 24 for i in range(25)]
        if standing:
            return [seen(x, radius * cos(each), radius * (1 + sin(each))) for each in turns]
        return [seen(x + radius * sin(each), radius * cos(each)) for each in turns]

    near, far = -0.5, LENGTH + BEYOND
    grid = [[seen(near, y), seen(far, y)] for y in _steps(-HALF_WIDTH, HALF_WIDTH)]
    grid += [[seen(x, -HALF_WIDTH), seen(x, HALF_WIDTH)] for x in _steps(near, far)]
    return Look(
        tenths / 10,
        fall,
        grid,
        ring(0.0, BALL_RADIUS, standing=True),
        ring(LENGTH, HOLE_RADIUS, standing=False),
        [seen(LENGTH, 0.0), seen(LENGTH, 0.0, FLAGSTICK)],
    )


def _steps(start: float, end: float) -> Iterator[float]:
    return (start + i * STEP for i in range(round((end - start) / STEP) + 1))


def _mixed(number: int) -> int:
    """A whole number that follows from ``number`` without looking like it: splitmix64, Steele and others, OOPSLA 2014."""
    mask = (1 << 64) - 1
    z = (number + 1) * 0x9E3779B97F4A7C15 & mask
    z = (z ^ z >> 30) * 0xBF58476D1CE4E5B9 & mask
    z = (z ^ z >> 27) * 0x94D049BB133111EB & mask
    return z ^ z >> 31
