"""The log-likelihood of putts at one place among the unknowns: bias and log of the spread of one skill after another."""

from collections.abc import Sequence
from math import erf, exp, hypot, log, pi, sqrt

from pycore.record.opening import Row
from pycore.stats.likelihood import Derivatives, LogLikelihood, Matrix, Vector

RULED_OUT = 1e-12  # of the player's putts; an opening that holds less says that the record is wrong, not the player odd
ROOT_HALF_PI = sqrt(pi / 2)
ROOT_HALF = sqrt(0.5)

type Missed = tuple[float, float, float]
"""Errors of start (rad) and roll (fraction), and the aim (rad) a share of which the start may be off by."""
type Laid = tuple[Sequence[Row], float]
"""An opening laid out, and that aim."""


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


# which of a putt's own four (bias and log spread of start, of roll) each of the six unknowns moves
_MOVES = (0, 1, 2, 3, 0, 1)


def strokes(misses: Sequence[Missed], laid: Sequence[Laid]) -> LogLikelihood:
    """Errors of start and roll: those of misses known, those of holed putts somewhere in their openings.

    Unknowns are bias and log of the spread of start, of roll, and of the share of its break by which a putt starts off:
    a putt's start is off by b + k aim, with the spread hypot(s, u aim).
    """

    def log_likelihood(place: Sequence[float]) -> Derivatives:
        b, log_s, c, log_q, k, log_u = place
        s, q, u = exp(log_s), exp(log_q), exp(log_u)
        total = 0.0
        gradient, information, complete = [0.0] * 6, [[0.0] * 6 for _ in range(6)], [[0.0] * 6 for _ in range(6)]

        def add(aim: float, share: float, own: Vector, of_own: Matrix) -> None:
            factors = (1.0, share, 1.0, 1.0, aim, 1 - share)
            for i, (row, factor) in enumerate(zip(information, factors, strict=True)):
                known = of_own[_MOVES[i]]
                gradient[i] += factor * own[_MOVES[i]]
                for j in range(6):
                    row[j] += factor * factors[j] * known[_MOVES[j]]
            # the log of the whole spread bends as its parts change
            bend = 2 * share * (1 - share) * own[1]
            for i, j, way in ((1, 1, -1), (5, 5, -1), (1, 5, 1), (5, 1, 1)):
                information[i][j] += way * bend
            whole = s / sqrt(share)
            for i in range(6):
                for j in range(6):
                    if _MOVES[i] == _MOVES[j]:
                        complete[i][j] += factors[i] * factors[j] * (whole**-2, 2.0, q**-2, 2.0)[_MOVES[i]]

        for start, roll, aim in misses:
            whole = hypot(s, u * aim)
            y, z = (start - b - k * aim) / whole, (roll - c) / q
            total -= log(whole) + log_q + (y * y + z * z) / 2
            of_own = [
                [1 / whole**2, 2 * y / whole, 0.0, 0.0],
                [2 * y / whole, 2 * y * y, 0.0, 0.0],
                [0.0, 0.0, 1 / q**2, 2 * z / q],
                [0.0, 0.0, 2 * z / q, 2 * z * z],
            ]
            add(aim, (s / whole) ** 2, [y / whole, y * y - 1, z / q, z * z - 1], of_own)
        for rows, aim in laid:
            whole = hypot(s, u * aim)
            own, of_own = [0.0] * 4, [[0.0] * 4 for _ in range(4)]
            total += _Bell(b + k * aim, log(whole), c, log_q).add(rows, own, of_own)
            add(aim, (s / whole) ** 2, own, of_own)
        return Derivatives(total, gradient, information, complete)

    return log_likelihood


def as_one(log_likelihood: LogLikelihood, place: Sequence[float]) -> Derivatives:
    """What strokes whose starts hold the stroke's errors and those of alignment tell of both: a log-likelihood over start,
    roll and break, seen at a place of eight unknowns: of the stroke, the roll, the break and alignment."""
    b, log_s, c, log_q, k, log_u, a, log_t = place
    both = hypot(exp(log_s), exp(log_t))
    stroke, alignment = exp(2 * log_s) / both**2, exp(2 * log_t) / both**2
    here = log_likelihood([a + b, log(both), c, log_q, k, log_u])
    jacobian = picked(8, 0, 1, 2, 3, 4, 5)
    jacobian[0][6], jacobian[1][1], jacobian[1][7] = 1.0, stroke, alignment
    seen = through(here, jacobian)
    # the log of the whole spread bends as its parts change
    bend = 2 * stroke * alignment * here.gradient[1]
    for i, j, way in ((1, 1, -1), (7, 7, -1), (1, 7, 1), (7, 1, 1)):
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
            weight *= exp(-y * y / 2) / q
            a, h = (low - b) / s, (high - b) / s
            at_a, at_h = exp(-a * a / 2), exp(-h * h / 2)
            # moments of a cut normal, by parts
            m0 = weight * ROOT_HALF_PI * (erf(h * ROOT_HALF) - erf(a * ROOT_HALF))
            m1 = weight * (at_a - at_h)
            m2 = m0 + weight * (a * at_a - h * at_h)
            z0 += m0
            z1 += m1
            z2 += m2
            z3 += 2 * m1 + weight * (a * a * at_a - h * h * at_h)
            z4 += 3 * m2 + weight * (a**3 * at_a - h**3 * at_h)
            yy = y * y
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
