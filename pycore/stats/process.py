"""A Gaussian process over the plane that is seen through its gradient.

The field f is a plane and a stationary part. What is read at a place is the gradient there, in two parts, each off by the
reading's own error and by that of the place: a reading taken beside its place sees another gradient, by as much as the
field bends. With k the kernel and d = p - q,

    cov(df/di at p, df/dj at q) = A(r) delta_ij - B(r) d_i d_j,   cov(f at p, df/dj at q) = A(r) d_j,
    A = -k'/r,   B = -A'/r

C. E. Rasmussen and C. K. I. Williams, Gaussian Processes for Machine Learning, 2006, sec. 9.4. Kernels are scaled so that
A(0) = 1: their size is the variance of the gradient. That a place is off by s adds to the variance of each part s^2 times
the mean square of the second derivatives, 4 B(0) s^2 size: first order in s, after A. McHutchon and C. E. Rasmussen,
Gaussian process training with input noise, NIPS 2011.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import cached_property
from math import exp, log, pi, sqrt, sumprod
from typing import Literal

from pycore.stats.linear import Row, backward, cholesky, forward, inverse

Kind = Literal["squared_exponential", "matern"]

ALMOST = 0.9  # of the worst; readings as strange as that are named together
MOST_STRANGERS = 0.3  # of the readings; where more are strange, it is the model that is


@dataclass(frozen=True)
class Kernel:
    """How alike the field is from place to place.

    Parameters
    ----------
    kind : squared exponential, or Matern 5/2.
    length : over which it changes, in the unit of the places.
    spread : standard deviation of each part of the gradient of the stationary part.
    trend : the same of the plane.
    """

    kind: Kind
    length: float
    spread: float
    trend: float

    @cached_property
    def rate(self) -> float:
        """What r is multiplied by in the kernel; its square is B(0)."""
        return sqrt(5) / self.length if self.kind == "matern" else 1 / self.length

    def parts(self, squared: float) -> tuple[float, float]:
        """A and B, times the size, at the square of a distance."""
        size, rate = self.spread**2, self.rate
        if self.kind == "matern":
            reach = rate * sqrt(squared)
            bell = size * exp(-reach)
            return (1 + reach) * bell, rate * rate * bell
        bell = size * exp(-rate * rate * squared / 2)
        return bell, rate * rate * bell


@dataclass(frozen=True)
class Reading:
    """The gradient read at ``place`` (both complex numbers, x + iy), and the spread of each of its parts."""

    place: complex
    gradient: complex
    sd: float


class Process:
    """The process that ``kernel`` describes, given ``readings``.

    Parameters
    ----------
    place_sd : how far each coordinate of a reading's place may be off.
    """

    def __init__(self, kernel: Kernel, readings: Sequence[Reading], place_sd: float) -> None:
        self.kernel = kernel
        self.places = [each.place for each in readings]
        off = 4 * (kernel.rate * place_sd * kernel.spread) ** 2
        self.noise = [each.sd**2 + off for each in readings]
        self.values = [part for each in readings for part in (each.gradient.real, each.gradient.imag)]
        self.factor = cholesky(_covariance(kernel, self.places, self.noise))
        self.white = forward(self.factor, self.values)

    @cached_property
    def evidence(self) -> float:
        """Logarithm of the likelihood of the readings under this kernel."""
        depth = sum(log(row[-1]) for row in self.factor)
        return -sumprod(self.white, self.white) / 2 - depth - len(self.white) * log(2 * pi) / 2

    @cached_property
    def pulls(self) -> Row:
        """The readings times the inverse of their covariance: what each pulls at the field, part by part."""
        return backward(self.factor, self.white)

    @cached_property
    def plane(self) -> complex:
        """Likeliest gradient of the plane."""
        return self.kernel.trend**2 * complex(sum(self.pulls[::2]), sum(self.pulls[1::2]))

    def cross(self, places: Sequence[complex], *sums: Sequence[complex]) -> list[Row]:
        """Covariance of each of some sums of gradients at ``places`` with each part of each reading (see ``tell``)."""
        parts = self.kernel.parts
        planes = [self.kernel.trend**2 * sum(weights) for weights in sums]
        rows: list[Row] = [[] for _ in sums]
        for q in self.places:
            met = []
            for p in places:
                d = p - q
                x, y = d.real, d.imag
                met.append((x, y, *parts(x * x + y * y)))
            for row, plane, weights in zip(rows, planes, sums, strict=True):
                u, v = plane.real, plane.imag
                for (x, y, a, b), weight in zip(met, weights, strict=True):
                    along = b * (weight.real * x + weight.imag * y)
                    u += a * weight.real - along * x
                    v += a * weight.imag - along * y
                row += u, v
        return rows

    def between(self, places: Sequence[complex]) -> list[Row]:
        """Covariance of all parts of the gradients at ``places`` before any reading, each row up to the diagonal."""
        return _covariance(self.kernel, places, [0.0] * len(places))

    def prior(self, places: Sequence[complex], *sums: Sequence[complex]) -> list[float]:
        """Variances of some sums of gradients at ``places`` before any reading."""
        totals = [self.kernel.trend**2 * abs(sum(weights)) ** 2 for weights in sums]
        for i, p in enumerate(places):
            for j, q in enumerate(places[: i + 1]):
                d = p - q
                a, b = self.kernel.parts(d.real**2 + d.imag**2)
                times = 1 if i == j else 2
                for k, weights in enumerate(sums):
                    u, v = weights[i], weights[j]
                    alike = a * (u.conjugate() * v).real
                    totals[k] += times * (alike - b * (u.conjugate() * d).real * (v.conjugate() * d).real)
        return totals

    def tell(self, places: Sequence[complex], *sums: Sequence[complex]) -> list[tuple[float, float]]:
        """Mean and variance, given the readings, of each of some sums of gradients at ``places``: of the sum of
        Re(conj(weight) gradient), a weight for each place."""
        told = []
        for row, variance in zip(self.cross(places, *sums), self.prior(places, *sums), strict=True):
            white = forward(self.factor, row)
            told.append((sumprod(white, self.white), variance - sumprod(white, white)))
        return told

    def strangers(self, beyond: float) -> list[int]:
        """Readings that the others would have elsewhere: by more than ``beyond`` standard deviations, the farthest first.

        What is named counts no more in judging the rest. Those almost as far off as the farthest are named with it, where
        nothing tells which of them is wrong.
        """
        precision = inverse(self.factor)
        named: list[int] = []
        while len(named) <= MOST_STRANGERS * len(self.places):
            off = {i: _off(precision, self.values, 2 * i) for i in range(len(self.places)) if i not in named}
            worst = max(off.values(), default=0.0)
            if worst <= beyond:
                break
            strange = sorted((i for i, far in off.items() if far > max(beyond, ALMOST * worst)), key=lambda i: -off[i])
            for i in strange:
                _forget(precision, 2 * i)
                _forget(precision, 2 * i + 1)
            named += strange
        return named


def mean_field(parts: Sequence[tuple[float, Process]]) -> Callable[[complex], float]:
    """Likeliest f of a mixture, weight and process of each, the planes passing through 0 at the origin.

    It is asked for at a thousand places: what does not hang on the place is worked out once, and what hangs on the distance
    from a reading once for all parts.
    """
    plane = sum((weight * process.plane for weight, process in parts), 0j)
    smooth: list[tuple[float, Process]] = [each for each in parts if each[1].kernel.kind == "squared_exponential"]
    rough = [each for each in parts if each[1].kernel.kind == "matern"]

    def pulls(some: Sequence[tuple[float, Process]], i: int) -> list[tuple[float, float, float]]:
        return [
            (process.kernel.rate, weight * process.kernel.spread**2 * u, weight * process.kernel.spread**2 * v)
            for weight, process in some
            for u, v in [process.pulls[2 * i : 2 * i + 2]]
        ]

    readings = [(q.real, q.imag, pulls(smooth, i), pulls(rough, i)) for i, q in enumerate(parts[0][1].places)]

    def f(place: complex) -> float:
        px, py = place.real, place.imag
        total = plane.real * px + plane.imag * py
        for qx, qy, by_smooth, by_rough in readings:
            x, y = px - qx, py - qy
            squared = x * x + y * y
            for rate, u, v in by_smooth:
                total += exp(-rate * rate * squared / 2) * (u * x + v * y)
            distance = sqrt(squared)
            for rate, u, v in by_rough:
                reach = rate * distance
                total += (1 + reach) * exp(-reach) * (u * x + v * y)
        return total

    return f


def _covariance(kernel: Kernel, places: Sequence[complex], noise: Sequence[float]) -> list[Row]:
    """Covariance of all parts of the gradients at ``places``, each off by ``noise`` (variance); rows up to the diagonal."""
    plane, parts = kernel.trend**2, kernel.parts
    rows: list[Row] = []
    for i, p in enumerate(places):
        first: Row = []
        second: Row = []
        for q in places[:i]:
            d = p - q
            x, y = d.real, d.imag
            a, b = parts(x * x + y * y)
            mixed = -b * x * y
            first += a - b * x * x + plane, mixed
            second += mixed, a - b * y * y + plane
        own = kernel.spread**2 + plane + noise[i]
        rows += [*first, own], [*second, 0.0, own]
    return rows


def _off(precision: Sequence[Row], values: Row, i: int) -> float:
    """How far the pair of values from ``i`` on is from where the others have it, in standard deviations."""
    first, second = precision[i], precision[i + 1]
    u, v = sumprod(first, values), sumprod(second, values)
    a, b, c = first[i], first[i + 1], second[i + 1]
    return sqrt(max(0.0, (c * u * u - 2 * b * u * v + a * v * v) / (a * c - b * b)))


def _forget(precision: list[Row], i: int) -> None:
    """Make of a precision that of the values without the i-th, whose row and column become those of a value never seen."""
    gone = precision[i]
    for j, row in enumerate(precision):
        if j != i and (share := row[i] / gone[i]):
            precision[j] = [value - share * its for value, its in zip(row, gone, strict=True)]
    size = len(gone)
    precision[i] = [0.0] * size
    for row in precision:
        row[i] = 0.0
