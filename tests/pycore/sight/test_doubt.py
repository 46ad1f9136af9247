"""What follows from touches, heights and pitches that are off, in scenes that OpenCV drew."""

import math
from dataclasses import replace

import numpy as np
import pytest

from pycore.errors import Refusal
from pycore.sight.doubt import STATURE, TOUCH, TURN, error, likeliest, weight
from pycore.sight.pose import camera

PIXEL = 1.0
MILLIMETRE = 1e-3
COVERED = 0.95  # share of noisy scenes that the stated uncertainty has to cover: what the app says of it


@pytest.fixture(scope="module")
def noisy(scenes):
    """Each scene as a phone and its holder tell it.

    Both touches, height, pitch and roll vary normally.
    """
    rng = np.random.default_rng(7)
    made = []
    for each in scenes:
        picture = each.picture
        ball, hole = ((u + rng.normal(0, TOUCH), v + rng.normal(0, TOUCH)) for u, v in (picture.ball, picture.hole))
        height = picture.height + rng.normal(0, STATURE)
        pitch, roll = (turn + rng.normal(0, TURN) for turn in (picture.pitch, picture.roll))
        made.append((each, replace(picture, ball=ball, hole=hole, height=height, pitch=pitch, roll=roll)))
    return made


def test_the_stated_error_covers_noisy_scenes_and_a_told_pitch_brings_it_down(noisy):
    off, stated = [], []
    for each, picture in noisy:
        both = [picture, replace(picture, pitch=None)]
        try:
            found = [likeliest(known) for known in both]
        except Refusal:
            continue
        off.append([each.off(camera).max() for camera in found])
        stated.append([error(known, camera, each.points) for known, camera in zip(both, found, strict=True)])
    assert len(off) > 0.95 * len(noisy)
    # what is not known at all is no promise
    bounds = np.array(stated, float)
    assert np.all(np.mean(np.isnan(bounds) | (off <= bounds), axis=0) >= COVERED)
    with_pitch, without = np.mean(off, axis=0)
    assert with_pitch < 0.97 * without
    with_pitch, without = np.nanmedian(bounds, axis=0)
    assert with_pitch < 0.98 * without


def test_the_stated_error_is_no_empty_promise(scenes):
    """Not so wide that it says nothing: half of the scenes are known to a twentieth of the picture's height."""
    stated = [
        error(picture, camera(picture), [(0.0, 0.0, 0.0), (picture.length / 2, 0.3, 0.0), (picture.length, 0.0, 0.0)])
        for picture in (replace(each.picture, pitch=None) for each in scenes)
    ]
    assert np.median([value for value in stated if value is not None]) < scenes[0].picture.size[1] / 20


def test_what_is_told_exactly_stays_exact(scenes):
    for each in scenes:
        found = likeliest(each.picture)
        assert each.off(found).max() < PIXEL
        assert found.place[2] == pytest.approx(each.picture.height, abs=MILLIMETRE)


def test_a_pitch_that_cannot_be_true_is_left_out(scenes):
    for each in scenes[:100]:
        alone = camera(replace(each.picture, pitch=None))
        wrong = replace(each.picture, pitch=each.picture.pitch + math.radians(45))
        assert 0 < weight(each.picture) < 1
        assert weight(wrong) == 0
        assert likeliest(wrong) == alone


def test_the_height_moves_towards_the_pitch(scenes):
    """A camera that is told a little too high, with its true pitch, comes down a part of the way."""
    for each in scenes[:100]:
        told = replace(each.picture, height=each.picture.height + STATURE / 2)
        assert each.picture.height - MILLIMETRE < likeliest(told).place[2] < told.height
