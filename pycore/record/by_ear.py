"""Pace alone, from putts that were heard and not seen: how far they would have run, against how far they were meant to."""

from collections.abc import Sequence
from math import exp, log
from typing import NamedTuple

from pycore.record.terms import picked, through
from pycore.stats.likelihood import Derivatives, LogLikelihood

PACE = 2, 3  # the unknowns of strokes that rolls tell of: bias of the roll, and log of its spread


class Block(NamedTuple):
    """Putts of one length on one floor: how many, the mean of their errors (fractions of the length meant), the sum of squares
    about it, and by how much all of them may be off alike, since the floor's speed is not known better (a fraction)."""

    n: int
    mean: float
    squares: float
    alike: float


def block(rolls: Sequence[float], meant: float, sd: float) -> Block:
    """Of how far putts would have run, how far they were meant to and the spread that all share, m."""
    errors = [roll / meant - 1 for roll in rolls]
    mean = sum(errors) / len(errors)
    return Block(len(errors), mean, sum((each - mean) ** 2 for each in errors), sd / meant)


def paces(blocks: Sequence[Block], size: int) -> LogLikelihood:
    """What the blocks say of pace, as a log-likelihood over the ``size`` unknowns of strokes.

    A block's errors are normal about the bias, and share an error of their own: their scatter tells of the spread alone, their
    mean is off by chance and by what they share.
    """
    jacobian = picked(size, *PACE)

    def log_likelihood(place: Sequence[float]) -> Derivatives:
        c, own = place[PACE[0]], exp(2 * place[PACE[1]])
        value = of_bias = of_spread = by_bias = by_both = by_spread = complete = 0.0
        for n, mean, squares, alike in blocks:
            whole = own + n * alike**2  # n times the variance of the mean
            off, share = mean - c, own / whole
            value -= (n - 1) * log(own) / 2 + squares / (2 * own) + log(whole) / 2 + n * off**2 / (2 * whole)
            of_bias += n * off / whole
            of_spread += squares / own - (n - 1) - share + n * off**2 * share / whole
            by_bias += n / whole
            by_both += 2 * n * off * share / whole
            by_spread += 2 * squares / own + 2 * share * (1 - share) + 2 * n * off**2 * share * (2 * share - 1) / whole
            complete += 2 * (n - 1) + 2 * share**2
        here = Derivatives(
            value, [of_bias, of_spread], [[by_bias, by_both], [by_both, by_spread]], [[by_bias, 0.0], [0.0, complete]]
        )
        return through(here, jacobian)

    return log_likelihood
