import pytest

from pycore.green.speed import deceleration, friction


@pytest.mark.parametrize(("stimp_ft", "rho"), [(4, 0.196), (12, 0.065)])
def test_friction(stimp_ft, rho):
    assert round(friction(stimp_ft), 3) == rho  # P: Penner, Can. J. Phys. 80(2):83-96, 2002


def test_deceleration():
    assert round(deceleration(10), 5) == 0.54936  # D: v_s^2 / (2 S), v_s = 1.83 m/s (Holmes 1991)


@pytest.mark.parametrize(("stimp_ft", "percent"), [(10, 7.84), (12, 6.54)])
def test_slope_that_holds_no_ball(stimp_ft, percent):
    assert round(friction(stimp_ft) * 100, 2) == percent  # D: tan(slope) = rho
