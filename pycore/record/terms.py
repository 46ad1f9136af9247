"""The log-likelihood of putts at one place among the unknowns: bias and log of the spread of one skill after another."""

from collections.abc import Iterable, Sequence
from math import erf, exp, hypot, log, pi, sqrt
from typing import NamedTuple

from pycore.record.opening import Row
from pycore.stats.likelihood import Derivatives, LogLikelihood, Matrix, Vector

RULED_OUT = 1e-12  # of the player's putts; an opening that holds less says that the record is wrong, not the player odd
ROOT_HALF_PI = sqrt(pi / 2)
ROOT_HALF = sqrt(0.5)


class Given(NamedTuple):
    """What the green as it was logged has to do with one putt: first-order shifts of start (rad) and roll (fraction).

    ``aim`` and ``roll`` are what its slope asks for, shares of which may be off alike on all putts; ``aside`` and ``along``
    are what a tilt as large as the one logged would shift, across or along: shares of them are off by chance. ``blur`` and
    ``stretch`` are standard deviations that come of how finish and tilt were measured.
    """

    aim: float = 0.0
    roll: float = 0.0
    aside: float = 0.0
    along: float = 0.0
    blur: float = 0.0
    stretch: float = 0.0


LEVEL = Given()

type Missed = tuple[float, float, Given]
"""Errors of start (rad) and roll (fraction), and what the green has to do with them."""
type Laid = tuple[Sequence[Row], Given]
"""An opening laid out, and the same."""

SIZE = 8  # unknowns of strokes
PAIRS = [(i, j) for i in range(4) for j in range(i, 4)]  # of a putt's own four


def normal(values: Sequence[float]) -> LogLikelihood:
    """Errors of one skill that are known."""
    n, total, squares = len(values), sum(values), sum(value * value for value in values)

    def log_likelihood(place: Sequence[float]) -> Derivatives:
        bias, s = place[0], exp(place[1])
        first, second = (total - n * bias) / s, (squares - 2 * bias * total + n * bias * bias) / s**2
        return Derivatives(
            -n * place[1] - second / 2,
            [first / s, second - n],
            [[n / s**2, 2 * first / s], [2 * first / s, 2 * second]],
            [[n / s**2, 0.0], [0.0, 2.0 * n]],
        )

    return log_likelihood


def strokes(misses: Sequence[Missed], laid: Sequence[Laid]) -> LogLikelihood:
    """Errors of start and roll: those of misses known, those of holed putts somewhere in their openings.

    Unknowns are bias and log of the spread of start, of roll, of the share of its break by which a putt starts off, and of
    the tilt: the bias of the roll by the slope along the line, and the share of the tilt by which the green as logged is
    off, in any direction. Of a putt the start is off by b + k aim and the roll by c + m roll, with the spreads
    hypot(s, u aim, t aside, blur) and hypot(q, t along, stretch).
    """

    def log_likelihood(place: Sequence[float]) -> Derivatives:
        b, c, k, m = place[0::2]
        ss, qq, uu, tt = (exp(2 * log_spread) for log_spread in place[1::2])
        sums = _Sums()
        for start, roll, given in misses:
            rows, whole, other = _moved(given, ss, qq, uu, tt)
            y, z = (start - b - k * given.aim) / whole, (roll - c - m * given.roll) / other
            of_start = (0, 0, 1 / whole**2), (0, 1, 2 * y / whole), (1, 1, 2 * y * y)
            of_roll = (2, 2, 1 / other**2), (2, 3, 2 * z / other), (3, 3, 2 * z * z)
            sums.value -= log(whole) + log(other) + (y * y + z * z) / 2
            sums.add(rows, (whole, other), (y / whole, y * y - 1, z / other, z * z - 1), (*of_start, *of_roll))
        for openings, given in laid:
            rows, whole, other = _moved(given, ss, qq, uu, tt)
            own, of_own = [0.0] * 4, [[0.0] * 4 for _ in range(4)]
            bell = _Bell(b + k * given.aim, log(whole), c + m * given.roll, log(other))
            sums.value += bell.add(openings, own, of_own)
            sums.add(rows, (whole, other), own, [(i, j, of_own[i][j]) for i, j in PAIRS])
        return sums.derivatives()

    return log_likelihood


type Moves = tuple[tuple[int, float], ...]
"""Unknowns that move one of a putt's own four (mean and log spread of start, of roll), and how far each moves it."""


def _moved(given: Given, ss: float, qq: float, uu: float, tt: float) -> tuple[tuple[Moves, Moves, Moves, Moves], float, float]:
    """What moves the putt's own four, and its two spreads."""
    read, aside, along = uu * given.aim**2, tt * given.aside**2, tt * given.along**2
    start, roll = ss + read + aside + given.blur**2, qq + along + given.stretch**2
    rows = (
        ((0, 1.0), (4, given.aim)),
        ((1, ss / start), (5, read / start), (7, aside / start)),
        ((2, 1.0), (6, given.roll)),
        ((3, qq / roll), (7, along / roll)),
    )
    return rows, sqrt(start), sqrt(roll)


def standardised(miss: Missed, place: Sequence[float]) -> tuple[float, float]:
    """Errors of start and roll of a miss in the spreads at a place of strokes."""
    start, roll, given = miss
    _, whole, other = _moved(given, *(exp(2 * log_spread) for log_spread in place[1:SIZE:2]))
    return (start - place[0] - place[4] * given.aim) / whole, (roll - place[2] - place[6] * given.roll) / other


class _Sums:
    """Value, gradient and information over all putts."""

    def __init__(self) -> None:
        self.value = 0.0
        self.gradient = [0.0] * SIZE
        # matrices are symmetric: gathered by halves
        self.information, self.complete = ([[0.0] * SIZE for _ in range(SIZE)] for _ in range(2))

    def add(
        self,
        rows: tuple[Moves, Moves, Moves, Moves],
        spreads: tuple[float, float],
        own: Sequence[float],
        of_own: Iterable[tuple[int, int, float]],
    ) -> None:
        """A putt's own gradient and information: row, column from there on, and value where it is not nothing."""
        gradient, information, complete = self.gradient, self.information, self.complete
        alone = (spreads[0] ** -2, 2.0, spreads[1] ** -2, 2.0)
        for i, j, known in of_own:
            if i != j:
                half = known
            else:
                slope, of_alone = own[i], alone[i] / 2
                half = known / 2 + (slope if i % 2 else 0.0)
                for unknown, factor in rows[i]:
                    gradient[unknown] += factor * slope
                    if i % 2:  # the log of a whole spread bends as its parts change
                        information[unknown][unknown] -= slope * factor
                    target, share = complete[unknown], of_alone * factor
                    for other, its in rows[i]:
                        target[other] += share * its
            for unknown, factor in rows[i]:
                target, share = information[unknown], half * factor
                for other, its in rows[j]:
                    target[other] += share * its

    def derivatives(self) -> Derivatives:
        """All that was added."""
        information, complete = (
            [
                [a + b for a, b in zip(row, column, strict=True)]
                for row, column in zip(half, zip(*half, strict=True), strict=True)
            ]
            for half in (self.information, self.complete)
        )
        return Derivatives(self.value, self.gradient, information, complete)


def as_one(log_likelihood: LogLikelihood, place: Sequence[float]) -> Derivatives:
    """What strokes whose starts hold the stroke's errors and those of alignment tell of both: a log-likelihood over start,
    roll, break and tilt, seen at a place that holds alignment after them."""
    a, log_t = place[SIZE:]
    both = hypot(exp(place[1]), exp(log_t))
    stroke, alignment = exp(2 * place[1]) / both**2, exp(2 * log_t) / both**2
    here = log_likelihood([a + place[0], log(both), *place[2:SIZE]])
    jacobian = picked(SIZE + 2, *range(SIZE))
    jacobian[0][SIZE], jacobian[1][1], jacobian[1][SIZE + 1] = 1.0, stroke, alignment
    seen = through(here, jacobian)
    # the log of the whole spread bends as its parts change
    bend = 2 * stroke * alignment * here.gradient[1]
    last = SIZE + 1
    for i, j, way in ((1, 1, -1), (last, last, -1), (1, last, 1), (last, 1, 1)):
        seen.information[i][j] += way * bend
    return seen


def picked(size: int, *unknowns: int) -> Matrix:
    """The jacobian that takes some of ``size`` unknowns as they are."""
    return [[float(i == unknown) for i in range(size)] for unknown in unknowns]


def through(here: Derivatives, jacobian: Matrix) -> Derivatives:
    """Derivatives by other unknowns; ``jacobian`` has a row for each unknown of ``here``: its derivatives by the others."""
    own, others = range(len(jacobian)), range(len(jacobian[0]))

    def seen(matrix: Matrix) -> Matrix:
        half = [[sum(row[k] * jacobian[k][j] for k in own) for j in others] for row in matrix]
        return [[sum(jacobian[k][i] * half[k][j] for k in own) for j in others] for i in others]

    gradient = [sum(jacobian[k][i] * here.gradient[k] for k in own) for i in others]
    return Derivatives(here.value, gradient, seen(here.information), seen(here.complete))


def added(parts: Sequence[Derivatives]) -> Derivatives:
    """Derivatives by the same unknowns, taken together."""

    def total(matrices: Sequence[Matrix]) -> Matrix:
        return [[sum(parts) for parts in zip(*rows, strict=True)] for rows in zip(*matrices, strict=True)]

    return Derivatives(
        sum(here.value for here in parts),
        [sum(parts) for parts in zip(*(here.gradient for here in parts), strict=True)],
        total([here.information for here in parts]),
        total([here.complete for here in parts]),
    )


class _Bell:
    """The player's spread of start and roll, two independent normals, laid over openings."""

    def __init__(self, b: float, log_s: float, c: float, log_q: float) -> None:
        self.b, self.s, self.c, self.q = b, exp(log_s), c, exp(log_q)

    def add(self, rows: Sequence[Row], gradient: Vector, information: Matrix) -> float:
        """Log of the share of putts in an opening; its gradient and information are added to those given.

        Louis, J. R. Stat. Soc. B 44(2):226-233, 1982: the gradient is the mean of those that the putts in the opening
        would have, the information the mean of theirs less the variance of their gradients.
        """
        b, s, c, q = self.b, self.s, self.c, self.q
        # mean powers of the errors in spreads: z0..z4 of start, by the power of roll they are taken with
        z0 = z1 = z2 = z3 = z4 = p0 = p1 = p2 = t0 = t1 = t2 = u0 = v0 = 0.0
        for length, weight, low, high in rows:
            y = (length - c) / q
            yy = y * y
            weight *= exp(-yy / 2) / q
            a, h = (low - b) / s, (high - b) / s
            aa, hh = a * a, h * h
            at_a, at_h = exp(-aa / 2), exp(-hh / 2)
            a_at, h_at = a * at_a, h * at_h
            # moments of a cut normal, by parts
            m0 = weight * ROOT_HALF_PI * (erf(h * ROOT_HALF) - erf(a * ROOT_HALF))
            m1 = weight * (at_a - at_h)
            m2 = m0 + weight * (a_at - h_at)
            z0 += m0
            z1 += m1
            z2 += m2
            z3 += 2 * m1 + weight * (aa * at_a - hh * at_h)
            z4 += 3 * m2 + weight * (aa * a_at - hh * h_at)
            p0 += y * m0
            p1 += y * m1
            p2 += y * m2
            t0 += yy * m0
            t1 += yy * m1
            t2 += yy * m2
            u0 += y * yy * m0
            v0 += yy * yy * m0
        if z0 / (2 * pi) < RULED_OUT:
            return log(RULED_OUT)
        z1, z2, z3, z4, p0, p1, p2, t0, t1, t2, u0, v0 = (m / z0 for m in (z1, z2, z3, z4, p0, p1, p2, t0, t1, t2, u0, v0))
        mean = (z1 / s, z2 - 1, p0 / q, t0 - 1)
        for i, slope in enumerate(mean):
            gradient[i] += slope
        squares = (
            (z2 / s**2, (z3 - z1) / s, p1 / (s * q), (t1 - z1) / s),
            ((z3 - z1) / s, z4 - 2 * z2 + 1, (p2 - p0) / q, t2 - z2 - t0 + 1),
            (p1 / (s * q), (p2 - p0) / q, t0 / q**2, (u0 - p0) / q),
            ((t1 - z1) / s, t2 - z2 - t0 + 1, (u0 - p0) / q, v0 - 2 * t0 + 1),
        )
        known = (
            (1 / s**2, 2 * z1 / s, 0.0, 0.0),
            (2 * z1 / s, 2 * z2, 0.0, 0.0),
            (0.0, 0.0, 1 / q**2, 2 * p0 / q),
            (0.0, 0.0, 2 * p0 / q, 2 * t0),
        )
        for i in range(4):
            for j in range(4):
                information[i][j] += known[i][j] - squares[i][j] + mean[i] * mean[j]
        return log(z0 / (2 * pi))
