"""The most likely place and the profile, on models whose answers are known."""

from math import asin, degrees, erf, exp, log, pi, radians, sqrt

import numpy as np
import pytest
import scipy.optimize

from pycore.constants import BALL_RADIUS, HOLE_RADIUS
from pycore.record.player import Prior, fit_plain
from pycore.stats.likelihood import Derivatives, maximize, profile, solve
from pycore.units import FOOT

PRINTED = 0.005  # degrees; half of the last digit published
PRINTED_ERROR = 0.005
VAGUE = Prior(1e4, 1.0, 1e3)


def angle_only(rows):
    """Gelman and Nolan's model as a log-likelihood over the log of its one spread: p = 2 Phi(asin((R - r)/x)/sigma) - 1."""

    def log_likelihood(place):
        value = slope = bend = 0.0
        for row in rows:
            z = asin((HOLE_RADIUS - BALL_RADIUS) / (row["distance_ft"] * FOOT)) / exp(place[0])
            p, density = erf(z / sqrt(2)), -2 * z * exp(-z * z / 2) / sqrt(2 * pi)
            made, missed = row["made"], row["tries"] - row["made"]
            value += made * log(p) + missed * log(1 - p)
            slope += density * (made / p - missed / (1 - p))
            bend += row["tries"] * density**2 / (p * (1 - p))
        return Derivatives(value, [slope], [[bend]], [[bend]], [1.0])

    return log_likelihood


def test_gelman_and_nolan(published):
    log_likelihood = angle_only(published("berry"))
    best, _ = maximize(log_likelihood, [log(radians(3.0))])
    found = profile(log_likelihood, best, 0)
    assert degrees(exp(found.value)) == pytest.approx(1.53, abs=PRINTED)
    error = degrees(exp(found.high) - exp(found.low)) / (2 * 1.96)
    assert error == pytest.approx(0.02, abs=PRINTED_ERROR)


def test_the_profile_of_a_mean_is_the_likelihood_ratio():
    values = np.random.default_rng(5).normal(0.4, 1.3, 30)
    found = fit_plain(values.tolist(), VAGUE)
    n, middle, sd = len(values), values.mean(), values.std()
    reach = sd * sqrt(exp(1.96**2 / n) - 1)  # n log(1 + (reach/sd)^2) = 1.96^2
    assert [found.bias.value, found.bias.low, found.bias.high] == pytest.approx(
        [middle, middle - reach, middle + reach], abs=0.01 * reach
    )

    def fall(log_sd):
        return n * (2 * (log_sd - log(sd)) + (sd / exp(log_sd)) ** 2 - 1) - 1.96**2

    ends = [exp(scipy.optimize.brentq(fall, log(sd), log(sd) + way)) for way in (-1, 1)]
    assert [found.sd.value, found.sd.low, found.sd.high] == pytest.approx([sd, *ends], rel=0.01)


def test_few_values_are_held_back_to_the_belief():
    prior = Prior(1.0, 0.5, 0.5)
    few, many = fit_plain([2.0], prior), fit_plain([2.0 + 0.01 * i for i in range(-50, 50)], prior)
    assert few.bias.value < 1.9
    assert few.shrinkage > many.shrinkage
    assert many.bias.value == pytest.approx(2.0, abs=0.02)


def test_far_off_values_are_found():
    values = [100.0, 101.0, 99.5, 100.5]
    assert fit_plain(values, VAGUE).bias.value == pytest.approx(np.mean(values), abs=1e-3)


def test_solve_says_when_a_matrix_bends_both_ways():
    assert solve([[2.0, 1.0], [1.0, 3.0]], [3.0, 4.0]) == pytest.approx([1.0, 1.0])
    assert solve([[1.0, 2.0], [2.0, 1.0]], [1.0, 1.0]) is None
