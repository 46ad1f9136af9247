"""What a green that is not known exactly does to the strikes that are meant."""

import numpy as np
import pytest

from bench import crowd
from pycore.green.surface import Station, Surface
from pycore.putt.doubt import Doubt, meant
from pycore.putt.putt import Putt
from pycore.putt.solve import solve


@pytest.mark.parametrize("fall", [60, 120])
def test_a_doubtful_speed_spreads_aim_and_length_together(fall):
    """By Gauss and Hermite's three greens, which are exact where both follow the speed as parabolas; their reads by numpy and
    Penner's equations alone."""
    here = Putt(4, Surface(Station.measured(0, 3, fall)), 10, 0.3)
    found = solve(here)
    (strikes,) = meant(here, found, Doubt(stimp_ft=1.5), 0.07)
    off, weights = np.polynomial.hermite_e.hermegauss(3)
    launch, aim = crowd.read(crowd.green([(0, 3, fall)]), 10 + 1.5 * off, 4.0, 0.3, np.zeros(3, complex))
    both = np.array([aim, (launch / found.launch) ** 2])
    assert (strikes.aim, strikes.length) == pytest.approx(np.average(both, axis=1, weights=weights), rel=2e-3)
    (v_aim, shared), (_, v_length) = np.cov(both, aweights=weights, ddof=0)
    assert (strikes.aim_variance, strikes.shared, strikes.length_variance) == pytest.approx((v_aim, shared, v_length), rel=2e-3)
