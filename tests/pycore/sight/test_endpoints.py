"""What the door says about a picture, a view and a ramp."""

import json

import pytest

from pycore.api import answer

PHOTO = {
    "width_px": 1200,
    "height_px": 1600,
    "ball_px": [600, 1300],
    "hole_px": [600, 700],
    "distance_m": 3,
    "points_m": [[0, 0], [3, 0]],
}
PUTT = {"distance_m": 3, "stimp_ft": 10, "slope_percent": 2, "fall_deg": 90, "past_m": 0.3}
VIEW = {"stand": "ball", "eye_height_m": 1.6, "back_m": 2, "width_px": 390, "height_px": 500}


def ask(**request):
    return json.loads(answer(json.dumps(request)))


def test_the_touched_points_come_back():
    value = ask(ask="camera", **PHOTO, eye_height_m=1.6, fov_deg=66)["value"]
    assert value["points_px"] == [[600, 1300], [600, 700]]
    assert value["error_px"] > 0


@pytest.mark.parametrize(
    ("change", "code", "field"),
    [
        ({"eye_height_m": 1.6}, "missing_field", "pitch_deg"),
        ({"eye_height_m": 1.6, "fov_deg": 66, "hole_px": [600, 1500]}, "hole_nearer", "hole_px"),
        ({"pitch_deg": 2, "fov_deg": 66, "hole_px": [600, 100]}, "above_horizon", "hole_px"),
        (
            {"eye_height_m": 1.6, "pitch_deg": 20, "fov_deg": 65, "ball_px": [600, 100], "hole_px": [600, 10]},
            "above_horizon",
            "hole_px",
        ),
        ({"eye_height_m": 1.6, "fov_deg": 66, "hole_px": [600, 1300]}, "same_place", "hole_px"),
        ({"eye_height_m": 1.6, "fov_deg": 66, "ball_px": [600]}, "bad_field", "ball_px"),
    ],
)
def test_refusals_name_the_field(change, code, field):
    reply = ask(ask="camera", **{**PHOTO, **change})
    assert (reply["ok"], reply["code"], reply["field"]) == (False, code, field)


def test_a_point_behind_the_lens_has_no_place():
    value = ask(ask="camera", **{**PHOTO, "points_m": [[-20, 0], [1, 0]]}, eye_height_m=1.6, fov_deg=66)["value"]
    assert value["points_px"][0] is None
    nothing = ask(ask="camera", **{**PHOTO, "points_m": [[-20, 0]]}, eye_height_m=1.6, fov_deg=66)["value"]
    assert (nothing["error_px"], nothing["error_m"]) == (None, None)


def test_the_ball_of_a_view_ends_at_the_hole():
    value = ask(ask="view", **VIEW, **PUTT)["value"]
    us, vs = zip(*value["hole"], strict=True)
    at_hole = min(value["chosen"], key=lambda point: abs(point[0] - value["time_s"]))
    assert min(us) < at_hole[1] < max(us)
    for line in (value["high"], value["low"]):
        assert min(us) - 5 < line[-1][1] < max(us) + 5
        assert min(vs) - 5 < line[-1][2] < max(vs) + 5


def test_the_ball_is_aimed_at_a_spot_beside_the_hole():
    """As far from it as the read says: in the picture that many hole's widths to its left, where the green falls right."""
    value, read = ask(ask="view", **VIEW, **PUTT)["value"], ask(ask="read", **PUTT)["value"]
    us, vs = zip(*value["hole"], strict=True)
    wide, middle = max(us) - min(us), (max(us) + min(us)) / 2
    assert (middle - value["spot"][0]) / wide == pytest.approx(read["aim_offset_m"] / 0.108, rel=0.02)
    assert min(vs) < value["spot"][1] < max(vs)


def test_chalk_lies_high_chosen_low_on_the_side_that_borrows():
    """The green falls right: the soft ball swings farthest left."""
    rows = ask(ask="chalk", **PUTT, every_m=0.5)["value"]["rows"]
    assert [row["at_m"] for row in rows] == [0.5, 1.0, 1.5, 2.0, 2.5]
    assert all(row["high_m"] > row["chosen_m"] > row["low_m"] > 0 for row in rows)


@pytest.mark.parametrize(("name", "more"), [("view", VIEW), ("chalk", {"every_m": 0.3})])
def test_no_such_putt_is_refused(name, more):
    reply = ask(ask=name, **{**PUTT, "stimp_ft": 14, "slope_percent": 8, "fall_deg": 0}, **more)
    assert reply["code"] == "runs_away"


def test_a_ramp_that_gives_more_than_it_got_is_refused():
    reply = ask(ask="ramp", launch_mps=2, stimp_ft=10, trial={"height_m": 0.2, "rolled_m": 5})
    assert reply["field"] == "trial.rolled_m"
    # a ball that loses nothing: v squared is 10/7 g h, and it rolls v squared over twice the drag
    assert reply["high"] == pytest.approx(10 / 7 * 9.80665 * 0.2 / (2 * 0.54936), rel=1e-4)
