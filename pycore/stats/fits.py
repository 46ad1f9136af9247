"""A straight line fitted to few points, shrunk towards nothing until the points speak."""

from collections.abc import Sequence
from dataclasses import dataclass
from math import sqrt


@dataclass(frozen=True)
class Prior:
    """What is believed before the first point, as standard deviations about nothing.

    ``noise`` is believed as strongly as ``noise_points`` points would make it.
    """

    start: float
    slope: float
    noise: float
    noise_points: int


@dataclass(frozen=True)
class Line:
    """y = start + slope x, with the covariance of both and the spread ``noise`` of points about it."""

    start: float
    slope: float
    start_variance: float
    slope_variance: float
    covariance: float
    noise: float

    def at(self, x: float) -> float:
        """The value expected at ``x``."""
        return self.start + self.slope * x

    def sd(self, x: float) -> float:
        """Standard deviation of a new point at ``x``: its own spread, and what is not known of the line."""
        return sqrt(self.noise**2 + self.start_variance + x * (2 * self.covariance + x * self.slope_variance))


def shrunk_line(xs: Sequence[float], ys: Sequence[float], prior: Prior) -> Line:
    """Bayes' line through any number of points, none included, with normal priors about zero.

    The spread about the line is taken at the value that prior and points make most likely, found by turns with the line.
    Reference: A. Gelman and others, Bayesian Data Analysis, 3rd ed., 2013, section 14.8 (prior as extra points).
    """
    line = _fitted(xs, ys, prior, prior.noise)
    for _ in range(TURNS):
        off = sum((y - line.at(x)) ** 2 for x, y in zip(xs, ys, strict=True))
        noise = sqrt((prior.noise_points * prior.noise**2 + off) / (prior.noise_points + _free(xs, line)))
        line = _fitted(xs, ys, prior, noise)
    return line


TURNS = 20  # of reweighting; the line moves no more after a few


def _free(xs: Sequence[float], line: Line) -> float:
    """Points less those that the line has used up."""
    known = sum(line.start_variance + 2 * line.covariance * x + line.slope_variance * x * x for x in xs) / line.noise**2
    return len(xs) - known


def _fitted(xs: Sequence[float], ys: Sequence[float], prior: Prior, noise: float) -> Line:
    precision = 1 / noise**2
    a = len(xs) * precision + 1 / prior.start**2
    b = sum(xs) * precision
    c = sum(x * x for x in xs) * precision + 1 / prior.slope**2
    p, q = sum(ys) * precision, sum(x * y for x, y in zip(xs, ys, strict=True)) * precision
    det = a * c - b * b
    return Line((c * p - b * q) / det, (a * q - b * p) / det, c / det, a / det, -b / det, noise)
