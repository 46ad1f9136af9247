"""How a player starts and paces the ball: biases and spreads most likely behind misses and holed putts.

A miss tells its errors of start and roll. A holed putt tells only that they lay in its opening: it is censored, and
counts by the share of the player's putts that lie there. Unknowns are bias and log of the spread, of start (rad) and of
roll (fraction of its length), each with a belief that holds few putts back towards the presets.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from math import erf, exp, inf, log, pi, sqrt
from typing import NamedTuple

from pycore.record.likelihood import Hill, Look, Matrix, Vector, climb, profile
from pycore.record.opening import Opening, Row
from pycore.stats.intervals import Estimate, Z

RULED_OUT = 1e-12  # of the player's putts; an opening that holds less says that the record is wrong, not the player odd
ROOT_HALF_PI = sqrt(pi / 2)
ROOT_HALF = sqrt(0.5)

type Sums = tuple[int, float, float]


@dataclass(frozen=True)
class Belief:
    """What is believed of a skill before its first putt: a normal bias about nothing, and a spread about ``sd`` known to
    a factor of exp(``doubt``)."""

    bias: float
    sd: float
    doubt: float


@dataclass(frozen=True)
class Skill:
    """Bias and spread of a skill, each with its 95 % interval; ``held`` is the larger share that belief has in them."""

    bias: Estimate
    sd: Estimate
    n: int
    held: float


class Miss(NamedTuple):
    """Errors of start (rad) and of roll (fraction)."""

    start: float
    length: float


class Holed(NamedTuple):
    """A holed putt: its opening, the start meant (rad from the read's aim), and the errors of start between which a gate
    says that it lay."""

    opening: Opening
    meant: float
    least: float = -inf
    most: float = inf

    def rows(self, bias: float, sd: float) -> list[Row]:
        """The opening where the player's rolls may be, as errors of start from the start meant; no empty rows."""
        rows = (
            Row(length, weight, max(low, self.least), min(high, self.most))
            for length, weight, low, high in self.opening.rows(bias, sd, self.meant)
        )
        return [row for row in rows if row.low < row.high]


@dataclass(frozen=True)
class Strokes:
    """Start line and pace most likely behind some putts; each skill's intervals are found when it is asked for."""

    hill: Hill
    top: Vector
    n: int
    start: Belief
    pace: Belief

    def start_line_skill(self) -> Skill:
        """Bias and spread of the start (rad)."""
        return _skill(self.hill, self.top, 0, self.n, self.start)

    def pace_skill(self) -> Skill:
        """Bias and spread of the roll (fraction of its length)."""
        return _skill(self.hill, self.top, 2, self.n, self.pace)


def fit(misses: Sequence[Miss], holed: Sequence[Holed], start: Belief, pace: Belief) -> Strokes:
    """What is most likely behind these putts."""
    top = [0.0, log(start.sd), 0.0, log(pace.sd)]
    for _ in range(2):
        # the second time the openings are laid where the first has found the player
        laid = [rows for each in holed if (rows := each.rows(top[2], exp(top[3])))]
        hill = _hill(misses, laid, start, pace)
        top, _ = climb(hill, top)
    return Strokes(hill, top, len(misses) + len(laid), start, pace)


def fit_plain(values: Sequence[float], belief: Belief) -> Skill:
    """Bias and spread of errors that are all known."""
    known = _sums(values)

    def hill(place: Sequence[float]) -> Look:
        return _believed(_known(place, known), place, [belief])

    top, _ = climb(hill, [0.0, log(belief.sd)])
    return _skill(hill, top, 0, len(values), belief)


def _skill(hill: Hill, top: Vector, i: int, n: int, belief: Belief) -> Skill:
    bias, spread = profile(hill, top, i), profile(hill, top, i + 1)
    doubts = ((bias, belief.bias), (spread, belief.doubt))
    held = max(((each.high - each.low) / (2 * Z * doubt)) ** 2 for each, doubt in doubts)
    return Skill(bias, Estimate(exp(spread.value), exp(spread.low), exp(spread.high)), n, min(1.0, held))


def _hill(misses: Sequence[Miss], laid: Sequence[Sequence[Row]], start: Belief, pace: Belief) -> Hill:
    known = [_sums([miss[i] for miss in misses]) for i in (0, 1)]

    def hill(place: Sequence[float]) -> Look:
        starts, paces = _known(place[:2], known[0]), _known(place[2:], known[1])
        value, slopes = starts.value + paces.value, [*starts.slopes, *paces.slopes]
        information, complete = _beside(starts.information, paces.information), _beside(starts.complete, paces.complete)
        bell = _Bell(*place)
        for rows in laid:
            value += bell.add(rows, slopes, information)
        for i, precision in enumerate((bell.s**-2, 2.0, bell.q**-2, 2.0)):
            complete[i][i] += len(laid) * precision
        return _believed(Look(value, slopes, information, complete, [*starts.sizes, *paces.sizes]), place, [start, pace])

    return hill


class _Bell:
    """The player's spread of start and roll, two independent normals, laid over openings."""

    def __init__(self, b: float, log_s: float, c: float, log_q: float) -> None:
        self.b, self.s, self.c, self.q = b, exp(log_s), c, exp(log_q)

    def add(self, rows: Sequence[Row], slopes: Vector, information: Matrix) -> float:
        """Log of the share of putts in an opening; its slopes and information are added to those given.

        Louis, J. R. Stat. Soc. B 44(2):226-233, 1982: the slope is the mean of the slopes that the putts in the opening
        would have, the information the mean of theirs less the variance of their slopes.
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
            slopes[i] += slope
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


def _sums(values: Sequence[float]) -> Sums:
    return len(values), sum(values), sum(value * value for value in values)


def _known(place: Sequence[float], sums: Sums) -> Look:
    """Errors that are known, as a normal of this bias and log of the spread sees them."""
    n, total, squares = sums
    bias, s = place[0], exp(place[1])
    first, second = (total - n * bias) / s, (squares - 2 * bias * total + n * bias * bias) / s**2
    return Look(
        -n * place[1] - second / 2,
        [first / s, second - n],
        [[n / s**2, 2 * first / s], [2 * first / s, 2 * second]],
        [[n / s**2, 0.0], [0.0, 2.0 * n]],
        [s, 1.0],
    )


def _believed(look: Look, place: Sequence[float], beliefs: Sequence[Belief]) -> Look:
    """The look with the beliefs added to the data."""
    value = look.value
    wanted = [each for belief in beliefs for each in ((0.0, belief.bias), (log(belief.sd), belief.doubt))]
    for i, (middle, doubt) in enumerate(wanted):
        off = (place[i] - middle) / doubt
        value -= off * off / 2
        look.slopes[i] -= off / doubt
        look.information[i][i] += doubt**-2
        look.complete[i][i] += doubt**-2
    return look._replace(value=value)


def _beside(a: Matrix, b: Matrix) -> Matrix:
    return [[*row, 0.0, 0.0] for row in a] + [[0.0, 0.0, *row] for row in b]
