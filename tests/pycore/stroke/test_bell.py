"""Bells taken together."""

import numpy as np
import pytest

from pycore.stroke.bell import Bell, _mean, lay, shape


def test_of_several_bells_mean_and_variance_are_those_of_their_mixture():
    """The variance of a mixture is the mean square less the square of the mean, whatever its parts are."""
    weights, (starts, ends) = np.array([0.2, 0.5, 0.3]), np.array([[0.1, 0.14, 0.2], [0.9, 1.0, 0.95]])
    start_vars, end_vars = np.array([[1e-4, 4e-4, 9e-4], [2e-4, 1e-4, 3e-4]])
    columns = zip(starts, ends, start_vars, end_vars, strict=True)
    bells = [Bell(start, end, its, others, 1.0, 0.5) for start, end, its, others in columns]
    found = _mean(list(zip(weights.tolist(), bells, strict=True)))
    ends_found = (found.start, found.start_var, starts, start_vars), (found.end, found.end_var, ends, end_vars)
    for middle, variance, at, own in ends_found:
        assert middle == pytest.approx(weights @ at)
        assert variance == pytest.approx(weights @ (own + at**2) - (weights @ at) ** 2)
    assert (found.misfit, found.likeness) == pytest.approx((1.0, 0.5))


@pytest.mark.parametrize("noise", [0.05, 0.1, 0.2, 0.4])
def test_the_likeness_is_the_share_of_the_turning_that_is_no_noise(noise):
    """A share of the sum of squares, which is one less the noise's: R^2 of a fit through the origin."""
    chance = np.random.default_rng(4)
    times = np.linspace(0.0, 1.0, 61)
    true = np.array([shape(time, 0.2, 0.8, 2.0, 2.0) for time in times])
    true /= true.max()
    half = list(zip(times.tolist(), (true + chance.normal(0, noise, len(times))).tolist(), strict=True)), 0.2, 0.8
    (found,) = lay([half])
    expected = 1 - len(times) * noise**2 / (true @ true + len(times) * noise**2)
    assert found.likeness == pytest.approx(expected, abs=0.1)
    assert (found.start, found.end) == pytest.approx((0.2, 0.8), abs=0.2)
