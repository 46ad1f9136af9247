"""Feet and eye as a level: felt slope against measured, by the way it falls and by how steep it is.

The error is felt less measured, in per cent of slope. The correction is a straight line over the felt slope for each way
of falling, shrunk towards none while trials are few.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from math import ceil, sqrt
from typing import Literal

from pycore.stats.fits import Line, Prior, shrunk_line
from pycore.stats.intervals import TAIL, Estimate, Z, difference, mean, spread, spread_estimate, student

Fall = Literal["left", "right", "toes", "heels"]
FALLS: tuple[Fall, ...] = ("left", "right", "toes", "heels")
OPPOSITE: tuple[tuple[Fall, Fall], ...] = (("left", "right"), ("toes", "heels"))
STEEP = 2.0  # per cent; from here a slope counts as large

# What is believed of feet before the first trial: off by up to 0.6 % and a fifth of the slope, a spread of 0.8 %; assumed
PRIOR = Prior(start=0.6, slope=0.2, noise=0.8, noise_points=4)
ROUNDED = sqrt(2 * 0.1**2 / 12)  # per cent; what is felt and what is measured are each told to a tenth
# Share left out at each end where a difference is looked at after every trial, so that 40 looks together show no more than one
# false difference in twenty (P. Armitage, C. K. McPherson and B. C. Rowe, J. R. Stat. Soc. A 132, 1969, for why one look's
# share does not do); 0.05 / 2 showed 28 in 120
LOOKING_AGAIN = 0.0025
FINE = 0.5  # per cent; a bias known to this, or a difference of sides, is known well enough


@dataclass(frozen=True)
class Trial:
    """A slope as felt and as measured, per cent, and which way it falls."""

    felt: float
    measured: float
    fall: Fall

    @property
    def error(self) -> float:
        """Felt less measured."""
        return self.felt - self.measured


@dataclass(frozen=True)
class Group:
    """Trials of one kind: their bias and spread, None with fewer than two, and how many more make the bias known."""

    trials: int
    bias: Estimate | None
    spread: Estimate | None
    more: int


@dataclass(frozen=True)
class Sides:
    """How much more is felt where it falls one way than the other; ``more`` trials on each side would settle it.

    ``differs`` says whether that is beyond chance, however often it has been looked at before.
    """

    one: Fall
    other: Fall
    difference: Estimate | None
    differs: bool
    more: int


def group(trials: Sequence[Trial]) -> Group:
    """Bias and spread of ``trials``."""
    errors = [trial.error for trial in trials]
    if len(errors) < 2:
        return Group(len(errors), None, None, _needed(PRIOR.noise, FINE, 1) - len(errors))
    needed = _needed(_likely_spread(errors), FINE, 1)
    return Group(len(errors), mean(errors, ROUNDED), spread_estimate(errors, ROUNDED), max(0, needed - len(errors)))


def uncorrected(trials: Sequence[Trial]) -> float:
    """How far a felt slope is off, per cent: bias and spread together, held back towards what is believed of feet."""
    believed = PRIOR.noise_points
    squares = sum(trial.error**2 for trial in trials)
    return sqrt((believed * PRIOR.noise**2 + squares) / (believed + len(trials)))


def sides(trials: Sequence[Trial], one: Fall, other: Fall) -> Sides:
    """One way of falling against its opposite."""
    own, its = ([trial.error for trial in trials if trial.fall == fall] for fall in (one, other))
    fewer = min(len(own), len(its))
    if fewer < 2:
        return Sides(one, other, None, False, _needed(PRIOR.noise, FINE, 2, LOOKING_AGAIN) - fewer)
    found = difference(own, its, ROUNDED)
    settled = difference(own, its, ROUNDED, LOOKING_AGAIN)
    if settled.low > 0 or settled.high < 0:
        return Sides(one, other, found, True, 0)
    likely = max(_likely_spread(own), _likely_spread(its))
    return Sides(one, other, found, False, max(0, _needed(likely, max(FINE, abs(found.value)), 2, LOOKING_AGAIN) - fewer))


def correction(trials: Sequence[Trial], fall: Fall) -> Line:
    """What to add to a slope that is felt to fall one way, as a line over what is felt."""
    own = [trial for trial in trials if trial.fall == fall]
    return shrunk_line([trial.felt for trial in own], [-trial.error for trial in own], PRIOR)


def corrected(line: Line, felt: float) -> float:
    """The slope that is likely where ``felt`` is felt; a slope is never less than nothing."""
    return max(0.0, felt + line.at(felt))


def _likely_spread(errors: Sequence[float]) -> float:
    """Spread of two or more errors, shrunk towards what is believed: two that agree by luck settle nothing."""
    free = len(errors) - 1
    believed = PRIOR.noise_points
    return sqrt((believed * PRIOR.noise**2 + free * spread(errors) ** 2) / (believed + free))


def _needed(sd: float, reach: float, samples: int, tail: float = TAIL) -> int:
    """How many trials a sample makes the interval of ``samples`` means' difference reach no further than ``reach``."""
    count = max(2, ceil(samples * (Z * sd / reach) ** 2))
    while student(samples * (count - 1), tail) * sd * (samples / count) ** 0.5 > reach:
        count += 1
    return count
