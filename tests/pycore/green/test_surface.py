from math import radians

import pytest

from pycore.green.surface import Station, Surface

STATIONS = [Station.measured(0.5, 1, 90), Station.measured(2, 3, 45), Station.measured(3.5, 2, 200)]
GREEN = Surface(*STATIONS)
STEP = 1e-5  # m


@pytest.mark.parametrize(("fall_deg", "gx", "gy"), [(0, 0.02, 0), (90, 0, -0.02), (180, -0.02, 0), (270, 0, 0.02)])
def test_fall_is_clockwise_from_the_line(fall_deg, gx, gy):
    assert Surface(Station.measured(0, 2, fall_deg)).downhill(1, 1) == pytest.approx((gx, gy), abs=1e-12)


@pytest.mark.parametrize("x", [-1, 0.2, 0.9, 1.7, 2.4, 3.3, 4.5])
@pytest.mark.parametrize("y", [-0.7, 0, 1.2])
def test_downhill_is_the_fall_of_the_height(x, y):
    gx = (GREEN.height(x - STEP, y) - GREEN.height(x + STEP, y)) / (2 * STEP)
    gy = (GREEN.height(x, y - STEP) - GREEN.height(x, y + STEP)) / (2 * STEP)
    assert GREEN.downhill(x, y) == pytest.approx((gx, gy), abs=1e-8)


def test_height_has_no_steps():
    for seam in (0.5, 2, 3.5):
        assert GREEN.height(seam - 1e-9, 0.8) == pytest.approx(GREEN.height(seam + 1e-9, 0.8), abs=1e-8)
    assert GREEN.height(0, 0) == 0


def test_stations_are_met_and_hold_beyond_the_ends():
    for station in STATIONS:
        assert GREEN.slope(station.x, 0) == pytest.approx(station.slope)
    assert GREEN.downhill(-5, 0) == pytest.approx(GREEN.downhill(0.5, 0))
    assert GREEN.downhill(9, 3) == pytest.approx(GREEN.downhill(3.5, 0))


def test_between_two_tilts():
    half = Station(0, 0.02, 0).between(Station(1, 0.02, radians(90)), 0.5)
    assert (half.x, half.slope, half.downhill) == pytest.approx((1, 0.02 / 2**0.5, radians(45)))


def test_mean_of_a_plane_is_the_plane():
    mean = Surface(Station.measured(0, 2, 30), Station.measured(2, 2, 30)).mean(3)
    assert (mean.slope, mean.downhill) == pytest.approx((0.02, radians(-30)))
