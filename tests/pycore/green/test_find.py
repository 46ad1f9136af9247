"""Putts for practice come from where the green is known."""

from itertools import combinations

import numpy as np
import pytest

from pycore.green.find import APART, Want, find
from pycore.green.walked import walked
from pycore.stats.process import Reading
from tests.invented_greens import MISPLACED, NOISE, SIDE, invented, walk

ANY = Want((2.0, 4.0), (0.0, 0.08), None, None)


@pytest.fixture(scope="module", params=["left", "right", "near", "far"])
def half_known(request):
    """A green of which one half was read with a level and the other by eye, and whether a place lies in the first."""
    axis, sign = {"left": ("real", -1), "right": ("real", 1), "near": ("imag", -1), "far": ("imag", 1)}[request.param]

    def within(place):
        return sign * (getattr(place, axis) - SIDE / 2)

    readings = [
        each if within(each.place) > 0 else Reading(each.place, each.gradient, 10 * NOISE)
        for each in invented(4).read(walk(6), np.random.default_rng(4))
    ]
    return walked(readings, MISPLACED), within


def test_they_lie_in_the_half_that_is_known(half_known):
    green, within = half_known
    putts = find(green, ANY, None)
    assert len(putts) > 5
    assert all(within((putt.ball + putt.hole) / 2) > -0.5 for putt in putts)
    sds = [putt.sd for putt in putts]
    assert sds == sorted(sds)
    assert sds == pytest.approx([green.mean_sd(putt.ball, putt.hole) for putt in putts])
    for one, other in combinations(putts, 2):
        assert (abs(one.ball - other.ball) + abs(one.hole - other.hole)) / 2 > APART * green.side
