"""The start gate, the ball line and the eyes, worked by hand."""

from math import cos, radians, sin

import pytest

FOOT = 0.3048
BALL = 0.04267
MILLIMETRE = 1e-3
HOLE_HALF_ANGLE_DEG = 1.269  # by hand: asin(54 / 2438.4), a ball dying at the hole's edge from 8 ft


def test_tees_by_hand(engine_ask):
    """Posts at 60 mm clear, 300 mm away: (30 cos a - 300 sin a) = 21.335 mm at the widest start."""
    a = radians(engine_ask("gate", gap_m=0.06, at_m=0.3)["passes_deg"])
    assert 30 * cos(a) - 300 * sin(a) == pytest.approx(21.335, abs=1e-6)
    assert a == pytest.approx((30 - 21.335) / 300, rel=0.01)


def test_balls_by_hand(engine_ask):
    """Two balls 60 mm clear: centres at 51.335 mm, and the path passes 42.67 mm from them."""
    a = radians(engine_ask("gate", gap_m=0.06, at_m=0.3, posts="balls")["passes_deg"])
    assert 51.335 * cos(a) - 300 * sin(a) == pytest.approx(42.67, abs=1e-6)


@pytest.mark.parametrize("posts", ["tees", "balls"])
def test_the_matching_gap_passes_one_spread_either_side(engine_ask, posts):
    player = {"start_line_sd_deg": 1.3, "pace_sd_fraction": 0.08}
    gap = engine_ask("gate", gap_m=0.06, at_m=FOOT, posts=posts, player=player)["matching_gap_m"]
    matched = engine_ask("gate", gap_m=gap, at_m=FOOT, posts=posts, player=player)
    assert matched["passes_deg"] == pytest.approx(1.3, abs=1e-6)


def test_a_gate_wider_than_the_hole_passes_all_that_drop(engine_ask):
    share = engine_ask("gate", gap_m=BALL + 2 * FOOT * sin(radians(1.5 * HOLE_HALF_ANGLE_DEG)), at_m=FOOT)["share_of_holed"]
    assert share == pytest.approx(1, abs=1e-3)


def test_a_narrow_gate_passes_few(engine_ask):
    """Half the starts of a normal spread of 5 degrees that lie within 1.27 lie, near enough, within 0.635: it is flat there."""
    wide = {"start_line_sd_deg": 5, "pace_sd_fraction": 0.01}
    full = engine_ask("gate", gap_m=0.06, at_m=FOOT, player=wide)
    narrow = engine_ask("gate", gap_m=BALL + 2 * FOOT * sin(radians(0.3)), at_m=FOOT, player=wide)
    assert narrow["passes_deg"] == pytest.approx(0.3, abs=0.005)
    assert narrow["share_of_holed"] == pytest.approx(0.3 / HOLE_HALF_ANGLE_DEG, abs=0.12)
    assert narrow["share_of_holed"] < full["share_of_holed"]


def test_no_ball_fits_through_less_than_itself(refused):
    refusal = refused("gate", gap_m=0.042, at_m=0.3)
    assert refusal["field"] == "gap_m"
    assert "0.04267" in refusal["message"]


PUTT = {"distance_m": 3.0, "stimp_ft": 10, "slope_percent": 0, "fall_deg": 0, "past_m": 0.3048}


def test_a_degree_is_five_millimetres_at_a_foot(engine_ask):
    """By hand: 304.8 tan 1 = 5.320 mm; 3000 tan 1 = 52.37 mm."""
    strikes_only = {"start_line_sd_deg": 1.0, "pace_sd_fraction": 0.065}
    answer = engine_ask("ball_line", **PUTT, player=strikes_only)
    assert answer["at_foot_m"] == pytest.approx(0.005320, abs=MILLIMETRE / 1000)
    assert answer["at_hole_m"] == pytest.approx(0.05237, abs=MILLIMETRE / 100)
    assert answer["make_left"] == pytest.approx(answer["make_right"], abs=1e-3)
    assert answer["make_left"] < 0.75 * answer["make"]


def test_a_line_on_a_putt_that_runs_away(refused):
    assert refused("ball_line", **PUTT | {"slope_percent": 8, "past_m": 0.5})["code"] == "no_window"


def test_eyes_beside_the_line(engine_ask):
    """By hand: 20 mm to the left, 3 m: atan(20 / 3000) = 0.382 degrees to the right, past the hole 20 mm to its right."""
    answer = engine_ask("eyes", left_m=0.02, distance_m=3)
    assert answer["turned_deg"] == pytest.approx(-0.382, abs=0.001)
    assert answer["at_hole_m"] == pytest.approx(-0.02, abs=MILLIMETRE / 1000)
    assert engine_ask("eyes", left_m=0, distance_m=3)["turned_deg"] == 0


def test_a_shim_under_one_foot(engine_ask):
    """By hand: 30 cm apart, 2 % is 6 mm; 45 cm apart, 3 % is 13.5 mm."""
    thick = {shim["slope_percent"]: shim["thickness_m"] for shim in engine_ask("shim", apart_m=0.3)["shims"]}
    assert thick == {1: pytest.approx(0.003), 2: pytest.approx(0.006), 3: pytest.approx(0.009)}
    assert engine_ask("shim", apart_m=0.45)["shims"][2]["thickness_m"] == pytest.approx(0.0135)
