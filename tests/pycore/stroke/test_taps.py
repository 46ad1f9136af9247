"""The tempo from taps."""

import pytest

TAP = 1e-9  # s


def test_taps_in_threes(engine_ask):
    taps = [t for start in range(0, 24, 3) for t in (start, start + 0.62, start + 0.93)]
    found = engine_ask("find_tempo", taps_s=taps)
    assert len(found["strokes"]) == 8
    assert found["ratio"] == pytest.approx(2, abs=1e-6)
    assert found["back_s"] == pytest.approx(0.62, abs=TAP)
    assert found["ratio_sd"] == pytest.approx(0, abs=1e-6)


def test_a_missed_tap_costs_one_stroke_and_is_said(engine_ask):
    taps = [0, 0.6, 0.9, 4, 4.9, 8, 8.6, 8.9]
    found = engine_ask("find_tempo", taps_s=taps)
    assert len(found["strokes"]) == 2
    assert found["unused"] == [{"from_s": 4, "to_s": 4.9, "reason": "wrong_count"}]


def test_one_stroke_has_no_spread(engine_ask):
    assert engine_ask("find_tempo", taps_s=[0, 0.6, 0.9])["ratio_sd"] is None


def test_taps_that_are_no_stroke(refused):
    assert refused("find_tempo", taps_s=[0, 0.1, 0.9])["code"] == "no_strokes"
    assert refused("find_tempo")["field"] == "taps_s"
    assert refused("find_tempo", taps_s=[0, 0.5, 0.4])["field"] == "taps_s[2]"
