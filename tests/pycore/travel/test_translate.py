"""The same putt on a green of another speed."""

import json

import pytest

from pycore import api

PUTT = {"distance_m": 3, "slope_percent": 2, "fall_deg": 90, "past_m": 0.3}
SAME_AIM_DEG = 0.01


def ask(**request):
    reply = json.loads(api.answer(json.dumps(request)))
    return reply["value"] if reply["ok"] else reply


def test_the_slope_it_is_like_breaks_as_much_at_home():
    found = ask(ask="translate", **PUTT, stimp_ft=12.5, home_stimp_ft=9)
    like = ask(ask="read", **{**PUTT, "slope_percent": found["breaks_like_percent"]}, stimp_ft=9)
    today = ask(ask="read", **PUTT, stimp_ft=12.5)
    assert like["aim_deg"] == pytest.approx(today["aim_deg"], abs=SAME_AIM_DEG)
    assert found["today"]["aim_deg"] == pytest.approx(today["aim_deg"])
    assert found["home"]["aim_deg"] == pytest.approx(ask(ask="read", **PUTT, stimp_ft=9)["aim_deg"])


def test_a_putt_without_pace_to_spare_scales_with_friction():
    # D: Penner's equations hold the slope over rho alone, and rho goes with 1 over the Stimpmeter's length
    found = ask(ask="translate", **{**PUTT, "past_m": 0}, stimp_ft=12, home_stimp_ft=8)
    assert found["breaks_like_percent"] == pytest.approx(2 * 12 / 8, rel=1e-3)


@pytest.mark.parametrize("fall", [60, 240])
def test_the_same_speed_is_the_same_putt(fall):
    found = ask(ask="translate", **{**PUTT, "fall_deg": fall}, stimp_ft=10, home_stimp_ft=10)
    assert found["breaks_like_percent"] == pytest.approx(2, rel=1e-4)
    assert found["today"] == found["home"]


def test_a_straight_putt_is_like_no_slope():
    assert ask(ask="translate", **{**PUTT, "fall_deg": 180}, stimp_ft=12, home_stimp_ft=9)["breaks_like_percent"] is None


def test_no_putt_today_no_putt_at_home():
    steep = {**PUTT, "slope_percent": 7, "fall_deg": 0}
    assert ask(ask="translate", **steep, stimp_ft=13, home_stimp_ft=8)["code"] == "runs_away"
    assert ask(ask="translate", **steep, stimp_ft=8, home_stimp_ft=13)["home"] is None


def test_the_table_holds_the_reads():
    table = ask(ask="table", stimp_ft=11, past_m=0.3, distances_m=[1.5, 3], slopes_percent=[1, 2, 8])["rows"]
    across = ask(ask="read", **PUTT, stimp_ft=11)
    assert table[1][1]["aim_offset_m"] == pytest.approx(across["aim_offset_m"])
    for fall, name in ((0, "down_m"), (180, "up_m")):
        assert table[1][1][name] == pytest.approx(ask(ask="read", **{**PUTT, "fall_deg": fall}, stimp_ft=11)["plays_like_m"])
    # on 8 % at 11 ft no ball stops, not even uphill
    assert set(table[0][2].values()) == {None}
