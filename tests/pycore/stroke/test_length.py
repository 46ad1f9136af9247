"""Length of the backswing from the player's own strokes."""

from math import sqrt

import pytest

MILLIMETRE = 1e-3
DRAG = 0.54936  # m/s2 at Stimp 10 (D: Penner 2002)


def stroke(backswing, launch):
    return {"backswing_m": backswing, "roll_m": launch**2 / (2 * DRAG), "stimp_ft": 10}


def test_it_is_the_line_through_the_strokes(engine_ask):
    strokes = [stroke(0.02 + 0.1 * v, v) for v in (1, 1.7, 2.4, 3)]
    answer = engine_ask("stroke_length", strokes=strokes, launch_mps=2)
    assert answer["backswing_m"] == pytest.approx(0.22, abs=MILLIMETRE)
    assert answer["residual_m"] == pytest.approx(0, abs=MILLIMETRE)
    assert answer["within"] is True
    assert engine_ask("stroke_length", strokes=strokes, launch_mps=4)["within"] is False


def test_the_residual_is_the_spread_about_it(engine_ask):
    """By hand: at 1, 2, 3, 4 m/s off by +e, -e, -e, +e, which no line can take up; residual e sqrt(4 / 2)."""
    e = 0.01
    strokes = [stroke(0.1 * v + off, v) for v, off in ((1, e), (2, -e), (3, -e), (4, e))]
    answer = engine_ask("stroke_length", strokes=strokes, launch_mps=2)
    assert answer["residual_m"] == pytest.approx(e * sqrt(2), abs=MILLIMETRE / 10)


def test_a_faster_green_asks_a_shorter_stroke(engine_ask):
    strokes = [stroke(0.1 * v, v) for v in (1, 2, 3)]
    slow, fast = (sqrt(1.83**2 / (stimp * 0.3048) * 4) for stimp in (8, 12))
    lengths = [engine_ask("stroke_length", strokes=strokes, launch_mps=v)["backswing_m"] for v in (slow, fast)]
    assert lengths[1] / lengths[0] == pytest.approx(sqrt(8 / 12), rel=0.01)


@pytest.mark.parametrize(
    ("strokes", "code"),
    [
        ([], "too_few"),
        ([stroke(0.1, 1), stroke(0.2, 2)], "too_few"),
        ([stroke(0.2, 2), stroke(0.21, 2.02), stroke(0.2, 2.05)], "too_alike"),
        ([stroke(0.3, 1), stroke(0.2, 2), stroke(0.1, 3)], "no_fit"),
    ],
)
def test_it_declines_what_carries_no_line(refused, strokes, code):
    refusal = refused("stroke_length", strokes=strokes, launch_mps=2)
    assert refusal["code"] == code
    assert refusal["field"] == "strokes"


def test_a_putt_too_short_for_the_line_is_refused_with_the_least(refused):
    """By hand: 0.1 (v - 1) m of backswing for v m/s has none left at 1 m/s."""
    refusal = refused("stroke_length", strokes=[stroke(0.1 * (v - 1), v) for v in (2, 3, 4)], launch_mps=0.9)
    assert (refusal["code"], refusal["field"], refusal["value"], refusal["unit"]) == ("no_length", "launch_mps", 0.9, "m/s")
    assert refusal["low"] == pytest.approx(1, abs=MILLIMETRE)
