"""The head's way on the floor, worked by hand."""

import pytest

MILLIMETRE = 1e-3


def test_a_circle_in_the_plane_of_the_shaft(engine_ask):
    """By hand: radius 1.3 m, lie 70 degrees, 300 mm back. sin = 0.3/1.3, so up the plane 1.3 - sqrt(1.69 - 0.09) = 35.1 mm;
    inside 35.1 cos 70 = 12.0 mm, above the floor 35.1 sin 70 = 33.0 mm; face tan = 0.3/1.2649 * cos 70, 4.64 degrees."""
    last = engine_ask("arc", lie_deg=70, length_m=0.85, above_grip_m=0.45, reach_m=0.3)["points"][-1]
    assert last["along_m"] == pytest.approx(0.3, abs=MILLIMETRE / 1000)
    assert last["inside_m"] == pytest.approx(0.0120, abs=MILLIMETRE / 10)
    assert last["rise_m"] == pytest.approx(0.0330, abs=MILLIMETRE / 10)
    assert last["turn_deg"] == pytest.approx(4.64, abs=0.01)


def test_every_place_lies_in_the_plane_and_on_the_circle(engine_ask):
    """cot 70 = 0.36397 inside for each unit up; sphere of 1.3 m about the point 1.3 m up the shaft (0.44463, 1.22160)."""
    for point in engine_ask("arc", lie_deg=70, length_m=0.85, above_grip_m=0.45, reach_m=0.4)["points"]:
        assert point["inside_m"] == pytest.approx(0.36397 * point["rise_m"], abs=MILLIMETRE / 100)
        away = point["along_m"] ** 2 + (0.44463 - point["inside_m"]) ** 2 + (1.22160 - point["rise_m"]) ** 2
        assert away**0.5 == pytest.approx(1.3, abs=MILLIMETRE / 10)


def test_the_flattest_plane_has_the_most_arc(engine_ask):
    inside = [engine_ask("arc", lie_deg=lie, length_m=0.86)["points"][-1]["inside_m"] for lie in (60, 70, 80)]
    assert inside[0] > inside[1] > inside[2] > 0


def test_no_shaft_within_ten_degrees_of_the_vertical(refused, engine_ask):
    """P: Equipment Rules (R&A/USGA): the shaft diverges from the vertical by at least 10 degrees."""
    assert engine_ask("arc", lie_deg=80, length_m=0.86)
    refusal = refused("arc", lie_deg=80.5, length_m=0.86)
    assert (refusal["field"], refusal["value"], refusal["high"]) == ("lie_deg", 80.5, 90 - 10)
