"""A relief against what it has to be: a cubic spline whose slopes at the ends are right is the cubic itself (de Boor 1978,
ch. IV), and far outside it is the plane."""

import numpy as np
import pytest

from pycore.green.relief import FAR, bake

LOW, HIGH = complex(-1, 2), complex(6, 11)
PLANE = complex(0.01, -0.02)
ALONG = np.polynomial.Polynomial([0.1, -0.03, 0.006, 0.0004])
ACROSS = np.polynomial.Polynomial([1.0, 0.05, -0.012, 0.0007])


def cubic(place):
    return ALONG(place.real) * ACROSS(place.imag)


@pytest.fixture(scope="module")
def relief():
    return bake(cubic, LOW, HIGH, 0.5, PLANE)


def test_it_is_the_cubic_up_to_its_edges(relief):
    for x in np.linspace(LOW.real, HIGH.real, 23):
        for y in np.linspace(LOW.imag, HIGH.imag, 31):
            expected = cubic(complex(x, y)), ALONG.deriv()(x) * ACROSS(y), ALONG(x) * ACROSS.deriv()(y)
            assert relief.at(x, y) == pytest.approx(expected, abs=1e-12)


@pytest.mark.parametrize("place", [(-60, 5), (70, 5), (3, -50), (3, 80), (-40, 90)])
def test_far_outside_it_is_the_plane(relief, place):
    drop, gx, gy = relief.at(*place)
    assert complex(gx, gy) == pytest.approx(PLANE, abs=1e-15)
    for x, y in ((1, 0), (0, 1)):
        assert relief.at(place[0] + x, place[1] + y)[0] - drop == pytest.approx(PLANE.real * x + PLANE.imag * y, abs=1e-12)


def test_the_plane_begins_a_way_outside_at_the_height_of_the_corners(relief):
    outside = [complex(x, y) for x in (LOW.real - FAR, HIGH.real + FAR) for y in (LOW.imag - FAR, HIGH.imag + FAR)]
    corners = [complex(x, y) for x in (LOW.real, HIGH.real) for y in (LOW.imag, HIGH.imag)]
    by_plane = [(place * PLANE.conjugate()).real for place in (*outside, *corners)]
    left = [relief.at(place.real, place.imag)[0] - own for place, own in zip(outside, by_plane[:4], strict=True)]
    assert left == pytest.approx(4 * [left[0]], abs=1e-12)
    assert left[0] == pytest.approx(np.mean([cubic(place) - own for place, own in zip(corners, by_plane[4:], strict=True)]))
