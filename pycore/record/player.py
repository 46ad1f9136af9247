"""How a player starts and paces the ball: biases and spreads most likely behind misses and holed putts.

A miss tells its errors of start and roll. A holed putt tells only that they lay in its opening: it is censored, and
counts by the share of the player's putts that lie there. Unknowns are bias and log of the spread, of start (rad) and of
roll (fraction of its length), each with a prior that holds few putts back towards the presets.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import exp, hypot, inf, log, sqrt
from typing import Literal, NamedTuple

from pycore.record.by_ear import Block, paces
from pycore.record.opening import REACH, Opening, Row, laid
from pycore.record.terms import LEVEL, SIZE, Given, added, as_one, normal, picked, standardised, strokes, through
from pycore.stats.intervals import Estimate, Z
from pycore.stats.likelihood import ENOUGH, Derivatives, LogLikelihood, Vector, maximize, profile, standard_error

ANYWHERE = 1.0  # rad; no start is farther off
ABOUT = 0.01  # of log-likelihood still to gain, where the openings are laid anew anyway

TILT_SD = 7  # of the unknowns of strokes, the log of the share by which tilts are off
GAUSS = ((-sqrt(0.6), 5 / 9), (0.0, 8 / 9), (sqrt(0.6), 5 / 9))  # Gauss and Legendre's three places from -1 to 1, and weights

type Laid = Coarse | Holed | Passed
"""A strike that lay somewhere in what is laid out."""
type Strikes = tuple[Sequence[Miss], Sequence[Laid]]


@dataclass(frozen=True)
class Prior:
    """What is believed of a skill before its first putt: a normal bias about nothing, and a spread about ``sd`` known to
    a factor of exp(``doubt``)."""

    bias: float
    sd: float
    doubt: float


@dataclass(frozen=True)
class Skill:
    """Bias and spread of a skill, each with its 95 % interval; ``shrinkage`` is the larger share that the prior has in them.

    ``logged`` says that a reading is not told from slopes that were logged too high or too low; ``untold`` says why
    its spread is not told; ``heard`` is how many putts more were not seen but heard.
    """

    bias: Estimate
    sd: Estimate
    n: int
    shrinkage: float
    logged: bool = False
    untold: str = ""
    heard: int = 0


class Miss(NamedTuple):
    """Errors of start (rad) and of roll (fraction), and what the green as logged has to do with them."""

    start: float
    length: float
    given: Given = LEVEL


class Coarse(NamedTuple):
    """A miss whose finish was told in steps: errors of start and roll that lead to where it was told, ``within`` how much of
    them (rad, fraction) its own lay, the opening that the ball did not find, the start meant, ``given`` as a miss has it."""

    start: float
    length: float
    within: float
    opening: Opening
    meant: float
    given: Given = LEVEL

    def rows(self, _bias: float, _sd: float) -> list[Row]:
        """What is within the step, which is small beside the player's rolls, but the opening."""
        window, low, high = self.opening, self.start - self.within, self.start + self.within
        rows = []
        for at, weight in GAUSS:
            length = self.length + self.within * at
            right, left = high, high
            if window.shortest < length < window.longest:
                right, left = (edge - self.meant for edge in window.edges(length))
            parts = (low, min(high, right)), (max(low, left), high)
            rows += [Row(length, self.within * weight, *part) for part in parts if part[0] < part[1]]
        return rows


class Holed(NamedTuple):
    """A holed putt: its opening, the start meant (rad from the read's aim), the errors of start between which a gate says
    that it lay, and ``given`` as a miss has it."""

    opening: Opening
    meant: float
    least: float = -inf
    most: float = inf
    given: Given = LEVEL

    def rows(self, bias: float, sd: float) -> list[Row]:
        """The opening where the player's rolls may be, as errors of start from the start meant; no empty rows."""
        rows = (
            Row(length, weight, max(low, self.least), min(high, self.most))
            for length, weight, low, high in self.opening.rows(bias, sd, self.meant)
        )
        return [row for row in rows if row.low < row.high]


class Passed(NamedTuple):
    """A miss of which no finish was logged: the opening that it did not find, the start meant, ``given`` as a miss has it, and
    where known the side on which the ball stopped and whether it stopped short of the hole or long."""

    opening: Opening
    meant: float
    given: Given = LEVEL
    side: Literal["left", "right"] | None = None
    length: Literal["short", "long"] | None = None

    def rows(self, bias: float, sd: float) -> list[Row]:
        """All that the player's rolls may be but the opening, as errors of start from the start meant."""
        window, low, high = self.opening, bias - REACH * sd, bias + REACH * sd
        edges = sorted(min(max(edge, low), high) for edge in (window.shortest, window.dying, window.longest))
        rows = []
        for least, most in pairwise((low, *edges, high)):
            if least == most or self.length == ("short" if most > window.dying else "long"):
                continue
            for length, weight in laid(least, most):
                right, left = window.edges(min(max(length, window.shortest), window.longest))
                if not window.shortest < length < window.longest:
                    right = left = (right + left) / 2  # the ball is right or left of the hole, and not in it
                for side, low_end, high_end in (("right", -ANYWHERE, right), ("left", left, ANYWHERE)):
                    if self.side in (None, side):
                        rows.append(Row(length, weight, low_end - self.meant, high_end - self.meant))
        return rows


@dataclass(frozen=True)
class Found:
    """What is most likely behind some putts; each skill's intervals are found when it is asked for."""

    log_likelihood: LogLikelihood
    best: Vector
    highest: Derivatives
    priors: Sequence[Prior]
    n: int

    @property
    def tilt_off(self) -> float:
        """The share by which tilts as logged are off, as a standard deviation."""
        return exp(self.best[TILT_SD])

    def standardised(self, miss: Miss | Coarse) -> tuple[float, float]:
        """How large its errors of start and roll were at the least, in the spreads that are most likely."""
        within = miss.within if isinstance(miss, Coarse) else 0.0
        ends = ((miss.start + way, miss.length + way, miss.given) for way in (-within, within))
        (right, short), (left, long) = (standardised(end, self.best) for end in ends)
        return max(right, -left, 0.0), max(short, -long, 0.0)

    def skill(self, i: int) -> Skill:
        """Bias and spread of the skill that has the prior of index ``i``, by their profiles."""
        profiles = (profile(self.log_likelihood, self.best, each, self.highest) for each in (2 * i, 2 * i + 1))
        return self._skill(i, *profiles)

    def about(self, i: int) -> Skill:
        """The same by the bend of the likelihood at its top alone, which is sooner told."""
        errors = [Z * standard_error(self.highest, each) for each in (2 * i, 2 * i + 1)]
        values = self.best[2 * i : 2 * i + 2]
        return self._skill(i, *(Estimate(x, x - error, x + error) for x, error in zip(values, errors, strict=True)))

    def _skill(self, i: int, bias: Estimate, spread: Estimate) -> Skill:
        prior = self.priors[i]
        doubts = ((bias, prior.bias), (spread, prior.doubt))
        shrinkage = max(((each.high - each.low) / (2 * Z * doubt)) ** 2 for each, doubt in doubts)
        return Skill(bias, Estimate(exp(spread.value), exp(spread.low), exp(spread.high)), self.n, min(1.0, shrinkage))


def fit(strikes: Strikes, priors: Sequence[Prior], heard: Sequence[Block] = ()) -> Found:
    """Start line (rad), pace (fraction of the roll), share of the break and of the tilt (fractions), the skills 0 to 3 of
    what is found. Putts that were ``heard`` tell of pace alone."""
    by_ear = [paces(heard, SIZE)] if heard else []

    def whole(log_likelihoods: Sequence[LogLikelihood]) -> LogLikelihood:
        return lambda place: added([each(place) for each in (*log_likelihoods, *by_ear)])

    return _laid_out([strikes], priors, whole)


def fit_with_lines(
    strikes: Strikes, lined: Strikes, lines: Sequence[float], priors: Sequence[Prior], heard: Sequence[Block] = ()
) -> Found:
    """As ``fit``, with alignment as the skill 4: of the putts ``lined`` the ball's line was known, ``lines`` off the line
    meant (rad), and their starts are measured from it; of the others the start holds both errors."""
    line, by_ear = normal(lines), [paces(heard, SIZE + 2)] if heard else []
    own, its = picked(SIZE + 2, *range(SIZE)), picked(SIZE + 2, SIZE, SIZE + 1)

    def whole(log_likelihoods: Sequence[LogLikelihood]) -> LogLikelihood:
        summed, separate = log_likelihoods
        return lambda place: added(
            [as_one(summed, place), through(separate(place[:SIZE]), own), through(line(place[SIZE:]), its)]
            + [each(place) for each in by_ear]
        )

    return _laid_out([strikes, lined], priors, whole)


def fit_plain(values: Sequence[float], prior: Prior) -> Skill:
    """Bias and spread of errors that are all known."""
    log_likelihood = _with_priors(normal(values), [prior])
    return Found(log_likelihood, *maximize(log_likelihood, [0.0, log(prior.sd)]), [prior], len(values)).skill(0)


def _laid_out(
    putts: Sequence[Strikes], priors: Sequence[Prior], whole: Callable[[Sequence[LogLikelihood]], LogLikelihood]
) -> Found:
    best = [each for prior in priors for each in (0.0, log(prior.sd))]
    for enough in (ABOUT, ENOUGH):
        # the second time the openings are laid where the first has found the player
        rolled = [[(rows, each.given) for each in holed if (rows := _rows(each, best))] for _, holed in putts]
        log_likelihoods = [strokes(misses, rows) for (misses, _), rows in zip(putts, rolled, strict=True)]
        log_likelihood = _with_priors(whole(log_likelihoods), priors)
        best, highest = maximize(log_likelihood, best, None, enough)
    n = sum(len(misses) + len(rows) for (misses, _), rows in zip(putts, rolled, strict=True))
    return Found(log_likelihood, best, highest, priors, n)


def _rows(each: Laid, place: Sequence[float]) -> list[Row]:
    """The putt laid out where the rolls of a player may be."""
    given = each.given
    spread = hypot(exp(place[3]), exp(place[TILT_SD]) * given.along, given.stretch)
    return each.rows(place[2] + place[6] * given.roll, spread)


def _with_priors(log_likelihood: LogLikelihood, priors: Sequence[Prior]) -> LogLikelihood:
    """The log-likelihood with the priors added to the data."""
    wanted = [each for prior in priors for each in ((0.0, prior.bias), (log(prior.sd), prior.doubt))]

    def with_priors(place: Sequence[float]) -> Derivatives:
        here = log_likelihood(place)
        value = here.value
        for i, (middle, doubt) in enumerate(wanted):
            off = (place[i] - middle) / doubt
            value -= off * off / 2
            here.gradient[i] -= off / doubt
            here.information[i][i] += doubt**-2
            here.complete[i][i] += doubt**-2
        sizes = [each for spread in place[1::2] for each in (exp(spread), 1.0)]
        return here._replace(value=value, sizes=sizes)

    return with_priors
