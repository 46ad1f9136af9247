"""Intervals against published rows, SciPy, and the promise they make."""

import statistics

import numpy as np
import pytest
import scipy.stats

from pycore.stats import intervals

PRINTED = 5e-7  # half of the last digit published
PRINTED_DIFFERENCE = 5e-5
EXACT = 1e-9
COVERED = (0.94, 0.96)  # of 95 % intervals in 4,000 cases, four standard errors to either side


# P: Newcombe, Stat. Med. 17:857-872, 1998; SciPy agrees
@pytest.mark.parametrize(
    ("made", "tries", "low", "high"),
    [
        (81, 263, 0.255289, 0.366210),
        (15, 148, 0.062386, 0.160487),
        (0, 20, 0, 0.161125),
        (8, 10, 0.490162, 0.943318),
        (5, 5, 0.565518, 1),
    ],
)
def test_wilson_as_published(made, tries, low, high):
    assert intervals.wilson(made, tries) == pytest.approx((low, high), abs=PRINTED)
    found = scipy.stats.binomtest(made, tries).proportion_ci(method="wilson")
    assert intervals.wilson(made, tries) == pytest.approx((found.low, found.high), abs=EXACT)


# P: Newcombe, Stat. Med. 17:873-890, 1998
@pytest.mark.parametrize(("counts", "low", "high"), [((56, 70, 48, 80), 0.0524, 0.3339), ((10, 10, 0, 20), 0.6791, 1)])
def test_newcombe_as_published(counts, low, high):
    assert intervals.newcombe(*counts) == pytest.approx((low, high), abs=PRINTED_DIFFERENCE)


def test_nothing_tried_says_nothing():
    assert intervals.wilson(0, 0) == (0, 1)
    assert intervals.newcombe(0, 0, 0, 0) == pytest.approx((-(0.5**0.5), 0.5**0.5))


@pytest.mark.parametrize("free", [1, 2, 3, 4, 7, 10, 31, 120])
def test_quantiles_are_scipys(free):
    assert intervals.student(free) == pytest.approx(scipy.stats.t.ppf(0.975, free), rel=EXACT)
    for share in (0.025, 0.975):
        assert intervals.chi_square(share, free) == pytest.approx(scipy.stats.chi2.ppf(share, free), rel=EXACT)


def test_mean_and_difference_are_scipys():
    values, others = [0.3, -0.2, 0.9, 0.4, 1.1], [0.1, -0.4, 0.2]
    found = scipy.stats.ttest_1samp(values, 0).confidence_interval()
    assert (intervals.mean(values).low, intervals.mean(values).high) == pytest.approx((found.low, found.high))
    welch = scipy.stats.ttest_ind(values, others, equal_var=False)
    difference = intervals.difference(values, others)
    reach = intervals.student(int(welch.df)) * difference.value / welch.statistic
    assert difference.high - difference.value == pytest.approx(reach)


def test_equal_values_leave_no_doubt():
    assert intervals.difference([1, 1], [0, 0]) == intervals.Estimate(1, 1, 1)


def test_intervals_hold_the_truth_as_often_as_they_say():
    rng = np.random.default_rng(1)
    samples = rng.normal(0.4, 0.7, (4000, 6)).tolist()
    others = rng.normal(0.1, 0.9, (4000, 5)).tolist()
    held = {
        "mean": [intervals.mean(each) for each in samples],
        "spread": [intervals.spread_estimate(each) for each in samples],
        "difference": [intervals.difference(*each) for each in zip(samples, others, strict=True)],
    }
    truth = {"mean": 0.4, "spread": 0.7, "difference": 0.3}
    for name, found in held.items():
        share = np.mean([each.low <= truth[name] <= each.high for each in found])
        assert COVERED[0] <= share <= COVERED[1] + 0.01, name


@pytest.mark.parametrize("values", [[3.0], [2.0, 1.0], [5.0, 1.0, 3.0], [4.0, 1.0, 3.0, 9.0]])
def test_the_middle_is_that_of_the_standard_library(values: list[float]) -> None:
    assert intervals.median(iter(values)) == statistics.median(values)
