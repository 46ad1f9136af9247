"""The shrunk line against numpy, and the promise of its spread."""

import numpy as np
import pytest

from pycore.stats.fits import Prior, shrunk_line

PRIOR = Prior(start=0.6, slope=0.2, noise=0.8, noise_points=4)
VAGUE = Prior(start=1e5, slope=1e5, noise=1.0, noise_points=0)


def test_without_points_nothing_is_corrected():
    line = shrunk_line([], [], PRIOR)
    assert (line.start, line.slope) == (0, 0)
    assert line.sd(0) == pytest.approx(np.hypot(PRIOR.noise, PRIOR.start))


def test_many_points_speak_for_themselves():
    rng = np.random.default_rng(2)
    x = rng.uniform(0, 5, 2000)
    y = 0.4 - 0.3 * x + rng.normal(0, 0.5, 2000)
    line = shrunk_line(x.tolist(), y.tolist(), PRIOR)
    slope, start = np.polyfit(x, y, 1)
    assert (line.start, line.slope) == pytest.approx((start, slope), abs=0.01)
    assert line.noise == pytest.approx(0.5, abs=0.03)


def test_a_vague_belief_gives_least_squares():
    x, y = [0.5, 1.0, 2.0, 3.5, 4.0], [0.2, 0.5, 0.1, 0.9, 1.4]
    line = shrunk_line(x, y, VAGUE)
    (slope, start), residuals, *_ = np.polyfit(x, y, 1, full=True)
    assert (line.start, line.slope) == pytest.approx((start, slope), abs=1e-6)
    assert line.noise**2 == pytest.approx(residuals[0] / 3, rel=1e-6)
    # numpy's covariance is that of the same fit
    _, covariance = np.polyfit(x, y, 1, cov=True)
    assert [line.slope_variance, line.covariance, line.start_variance] == pytest.approx(
        [covariance[0][0], covariance[0][1], covariance[1][1]], rel=1e-6
    )


def test_the_line_is_that_of_extra_points_for_the_belief():
    x, y = [1.0, 2.0, 2.5], [0.6, 0.2, 0.9]
    line = shrunk_line(x, y, PRIOR)
    rows = np.array([[1 / line.noise, each / line.noise] for each in x] + [[1 / PRIOR.start, 0], [0, 1 / PRIOR.slope]])
    found, *_ = np.linalg.lstsq(rows, np.array([each / line.noise for each in y] + [0, 0]), rcond=None)
    assert [line.start, line.slope] == pytest.approx(found, abs=1e-9)


def test_fewer_points_are_held_back_more():
    starts = [shrunk_line([2.0] * n, [0.8] * n, PRIOR).at(2.0) for n in (0, 1, 3, 10, 100)]
    assert starts == sorted(starts)
    assert starts[-1] == pytest.approx(0.8, abs=0.02)


def test_a_new_point_lies_within_the_stated_spread():
    rng = np.random.default_rng(3)
    inside = []
    for _ in range(1500):
        start, slope = rng.normal(0, PRIOR.start), rng.normal(0, PRIOR.slope)
        x = rng.uniform(0.5, 4, 8)
        y = start + slope * x + rng.normal(0, 0.7, 8)
        line = shrunk_line(x[:-1].tolist(), y[:-1].tolist(), PRIOR)
        inside.append(abs(y[-1] - line.at(x[-1])) < 1.96 * line.sd(x[-1]))
    assert 0.92 <= np.mean(inside) <= 0.98
