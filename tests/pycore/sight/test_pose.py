"""The camera against OpenCV's."""

import math
from dataclasses import replace

import pytest

from pycore.errors import Refusal
from pycore.sight.pose import USUAL_FIELD, Picture, camera, field_of, pitch_of

PIXEL = 1.0
MILLIMETRE = 1e-3
SIZE = (1200, 1600)
MIDDLE = (600.0, 800.0)


@pytest.mark.parametrize("unknown", ["height", "pitch", "field"])
def test_the_curve_lies_where_opencv_has_it(scenes, unknown):
    twins = 0
    for each in scenes:
        found = camera(replace(each.picture, **{unknown: None}))
        if (
            unknown == "field"
            and abs(field_of(each.picture, found) - USUAL_FIELD) < abs(each.picture.field - USUAL_FIELD) - 1e-5
        ):
            twins += 1  # another lens, more usual, has the marks at the very same places
            assert each.off(found)[[0, -1]].max() < PIXEL
            continue
        assert each.off(found).max() < PIXEL
        assert found.place[2] == pytest.approx(each.picture.height, abs=MILLIMETRE)
        assert pitch_of(each.picture, found) == pytest.approx(each.picture.pitch, abs=1e-5)
        assert field_of(each.picture, found) == pytest.approx(each.picture.field, abs=1e-5)
    assert twins < 0.1 * len(scenes)


@pytest.mark.parametrize("unknown", ["height", "pitch"])
def test_a_hole_over_the_eyes_own_level_is_found(uphill, unknown):
    for each in uphill:
        assert each.curve[-1][0] * each.picture.up[0] > each.picture.height
        assert each.off(camera(replace(each.picture, **{unknown: None}))).max() < PIXEL


LEVEL = Picture(SIZE, (600.0, 1300.0), (600.0, 700.0), 3.0, (0.0, 0.0, 1.0), 0.0, 1.6, None, math.radians(66), MIDDLE)


@pytest.mark.parametrize(
    ("change", "code"),
    [
        ({"pitch": math.radians(5), "height": None, "hole": (600.0, 200.0)}, "above_horizon"),
        ({"ball": (600.0, 700.0), "hole": (600.0, 1300.0)}, "hole_nearer"),
        ({"length": 0.3, "hole": (600.0, 400.0)}, "no_camera"),
        ({"hole": (600.0, 1300.0)}, "same_place"),
    ],
)
def test_what_cannot_be_is_refused(change, code):
    with pytest.raises(Refusal) as refused:
        camera(replace(LEVEL, **change))
    assert refused.value.code == code
    assert len(refused.value.message.split()) > 6


def test_a_roll_to_the_right_turns_the_picture_to_the_left():
    """Held turned clockwise, the camera has straight up in the picture leaning to the left."""
    found = camera(replace(LEVEL, roll=math.radians(10), pitch=math.radians(30), height=None))
    foot, top = found.pixel((1.5, 0.0, 0.0)), found.pixel((1.5, 0.0, 0.2))
    assert top[0] < foot[0]
    assert top[1] < foot[1]
