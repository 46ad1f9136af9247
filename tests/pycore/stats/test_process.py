"""A reading that does not fit its neighbours, against the normal distribution's own conditional by numpy."""

import numpy as np
import pytest

from pycore.stats.process import _off


@pytest.mark.parametrize("i", [0, 2, 6])
def test_how_far_a_pair_is_off_is_its_distance_given_all_the_others(i):
    chance = np.random.default_rng(4)
    root = chance.normal(size=(8, 8))
    covariance, values = root @ root.T + np.eye(8), chance.normal(size=8)
    pair, rest = [i, i + 1], [k for k in range(8) if k not in (i, i + 1)]
    by_rest = covariance[np.ix_(pair, rest)] @ np.linalg.inv(covariance[np.ix_(rest, rest)])
    given = covariance[np.ix_(pair, pair)] - by_rest @ covariance[np.ix_(rest, pair)]
    miss = values[pair] - by_rest @ values[rest]
    expected = np.sqrt(miss @ np.linalg.solve(given, miss))
    assert _off(np.linalg.inv(covariance).tolist(), values.tolist(), i) == pytest.approx(expected)
