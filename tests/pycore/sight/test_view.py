"""The view against OpenCV's camera, stood and turned by hand."""

import math

import cv2
import numpy as np
import pytest

from pycore.constants import HOLE_RADIUS
from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.sight.view import view

PIXEL = 1.0
SIZE = (390.0, 500.0)
EYE, BACK = 1.6, 2.0
STATIONS = [(0, 3, 100), (3, 2, 60)]
SEEN = [(0.0, 0.0), (3.0, 0.0), (3.0, 0.5), (1.5, 0.3)]


@pytest.fixture
def putt():
    return Putt(3.0, Surface(*(Station.measured(*station) for station in STATIONS)), 10, 0.3)


@pytest.mark.parametrize("stand", ["ball", "low", "hole"])
def test_the_view_is_opencvs(putt, stand):
    seen = view(putt, SIZE, stand, EYE, BACK, SEEN)
    camera = seen.camera
    turned = np.array([camera.right, camera.down, camera.forward])
    assert np.allclose(turned @ turned.T, np.eye(3))
    assert np.linalg.det(turned) == pytest.approx(1)
    lens = np.array([[camera.focal, 0, SIZE[0] / 2], [0, camera.focal, SIZE[1] / 2], [0, 0, 1]])
    ground = np.array([[x, y, putt.surface.height(x, y)] for x, y in SEEN])
    expected = cv2.projectPoints(ground, cv2.Rodrigues(turned)[0], -turned @ np.array(camera.place), lens, None)[0][:, 0]
    assert np.abs(np.array([seen.pixel(*place) for place in SEEN]) - expected).max() < PIXEL


@pytest.mark.parametrize("stand", ["ball", "low", "hole"])
def test_all_that_has_to_be_seen_is_in_the_picture(putt, stand):
    seen = view(putt, SIZE, stand, EYE, BACK, SEEN)
    for u, v in (seen.pixel(*place) for place in SEEN):
        assert 0 < u < SIZE[0]
        assert 0 < v < SIZE[1]
    assert 0 < seen.horizon < min(v for _, v in (seen.pixel(*place) for place in SEEN))


def test_the_eye_stands_where_it_is_told(putt):
    x, y, z = view(putt, SIZE, "ball", EYE, BACK, SEEN).camera.place
    assert (x, y) == (-BACK, 0)
    assert z - putt.surface.height(x, y) == pytest.approx(EYE)
    assert view(putt, SIZE, "hole", EYE, BACK, SEEN).camera.place[0] == 3.0 + BACK
    falls_right = view(putt, SIZE, "low", EYE, BACK, SEEN).camera.place
    assert falls_right[1] < 0


def test_left_is_left_from_the_ball_and_right_from_the_hole(putt):
    near, far = (view(putt, SIZE, stand, EYE, BACK, SEEN) for stand in ("ball", "hole"))
    assert near.pixel(1.5, 0.3)[0] < near.pixel(1.5, 0)[0]
    assert far.pixel(1.5, 0.3)[0] > far.pixel(1.5, 0)[0]


def test_the_hole_has_its_true_size(putt):
    seen = view(putt, SIZE, "ball", EYE, BACK, SEEN)
    wide = max(u for u, _ in seen.hole()) - min(u for u, _ in seen.hole())
    assert wide == pytest.approx(2 * HOLE_RADIUS * seen.scale(3, 0), rel=0.01)


@pytest.mark.parametrize(("distance", "side"), [(3.0, 0.6096), (14.0, 1.2192), (1.0, 0.3048)])
def test_the_grid_is_in_squares_of_the_side_told_or_its_half_or_double(distance, side):
    level = Putt(distance, Surface(Station.measured(0, 0, 0)), 10, 0.3)
    seen = view(level, SIZE, "hole", EYE, BACK, [(0.0, 0.0), (distance, 0.0)])
    apart, lines = seen.grid(0.6096)
    assert apart == pytest.approx(side)
    # a line along the putt goes through places that are so far apart
    middle = next(line for line in lines if any(math.dist(seen.pixel(0, 0), pixel) < PIXEL for pixel in line))
    for place in (-side, side):
        assert min(math.dist(seen.pixel(place, 0), pixel) for pixel in middle) < PIXEL


def test_strokes_run_downhill_and_tell_how_steep(putt):
    steep = Putt(3.0, Surface(Station.measured(0, 4, 90)), 10, 0.3)
    gentle = Putt(3.0, Surface(Station.measured(0, 1, 90)), 10, 0.3)
    lengths = []
    for each in (gentle, steep):
        strokes = view(each, SIZE, "ball", EYE, BACK, SEEN).falls(0.5)
        assert all(head[0] > tail[0] for tail, head in strokes)
        lengths.append(max(math.dist(*stroke) for stroke in strokes))
    assert lengths[1] > 3 * lengths[0]
    assert view(Putt(3.0, Surface(Station.measured(0, 0, 0)), 10, 0.3), SIZE, "ball", EYE, BACK, SEEN).falls(0.5) == []


def test_a_green_that_rises_stands_before_the_horizon():
    """Crouched before twenty metres uphill: the hole is over the eye's level, and turf lies under it."""
    uphill = Putt(20.0, Surface(Station.measured(0, 5, 180)), 10, 0.3)
    seen = view(uphill, SIZE, "ball", 0.7, BACK, [(0.0, 0.0), (20.0, 0.0)])
    _, hole = seen.pixel(20.0, 0.0)
    us, vs = zip(*seen.turf(0.5), strict=True)
    assert min(vs) < hole < seen.horizon
    assert min(us) < 0
    assert max(us) > SIZE[0]
