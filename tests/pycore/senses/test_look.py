"""The drawn green: what is drawn is what is said."""

import json
import math
from collections import Counter

import pytest

from pycore import api
from pycore.senses.look import STEP, _mixed, _steps

LENGTH, BEHIND = 4.0, 2.5


def look(case):
    return json.loads(api.answer(json.dumps({"ask": "look", "case": case})))["value"]


def test_every_slope_and_fall_comes():
    seen = [look(case) for case in range(400)]
    assert Counter(each["fall"] for each in seen).keys() == {"left", "right", "toes", "heels"}
    assert min(Counter(each["fall"] for each in seen).values()) > 60
    assert min(each["slope_percent"] for each in seen) == 0.5
    assert max(each["slope_percent"] for each in seen) == 5
    assert look(3) == look(3)


@pytest.mark.parametrize("case", range(12))
def test_the_slope_can_be_measured_off_the_picture(case):
    seen = look(case)
    steep, fall = seen["slope_percent"] / 100, seen["fall"]
    # the last line across, at a known depth: its tilt is the slope across
    (x0, y0), (x1, y1) = seen["grid"][-1]
    across = (y1 - y0) / (x1 - x0)
    expected = {"right": steep, "left": -steep}.get(fall, 0)
    assert across == pytest.approx(expected, abs=1e-4) or -across == pytest.approx(-expected, abs=1e-4)
    # the foot of the flag against the ball: how far the hole lies below it
    foot = seen["flag"][0][1] * (LENGTH + BEHIND)
    under_eye = 1.5 + {"toes": steep, "heels": -steep}.get(fall, 0) * (BEHIND + LENGTH)
    assert foot == pytest.approx(under_eye, abs=1e-3)


def test_the_flag_stands_upright():
    for case in range(5):
        (foot, top) = look(case)["flag"]
        assert foot[0] == top[0]
        assert math.isclose((foot[1] - top[1]) * (LENGTH + BEHIND), 2.13, abs_tol=1e-3)  # 7 ft: common practice


def test_chance_is_splitmix64():
    """The first two numbers of its authors' program from 0, from memory."""
    assert [_mixed(0), _mixed(1)] == [0xE220A8397B1DCDAF, 0x6E789E6AA1B965F4]


def test_lines_reach_the_end_and_no_farther():
    assert list(_steps(1.0, 1.0 + 2 * STEP)) == [1.0, 1.0 + STEP, 1.0 + 2 * STEP]
