"""Vectors of three."""

from math import sqrt

type Vector = tuple[float, float, float]


def dot(a: Vector, b: Vector) -> float:
    """Scalar product."""
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def cross(a: Vector, b: Vector) -> Vector:
    """Vector product."""
    return a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]


def minus(a: Vector, b: Vector) -> Vector:
    """The way from ``b`` to ``a``."""
    return a[0] - b[0], a[1] - b[1], a[2] - b[2]


def times(factor: float, a: Vector) -> Vector:
    """``a``, ``factor`` as long."""
    return factor * a[0], factor * a[1], factor * a[2]


def unit(a: Vector) -> Vector:
    """``a``, one long."""
    return times(1 / sqrt(dot(a, a)), a)
