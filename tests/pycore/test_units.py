from math import isclose

from pycore import units


def test_a_degree_of_tilt_is_this_much_slope():
    # P: slope % = 100 tan(tilt); 1 degree = 1.746 % (surveying textbooks)
    assert round(units.percent_from_slope(units.slope_from_angle_deg(1)), 3) == 1.746


def test_there_and_back():
    assert isclose(units.percent_from_slope(units.slope_from_percent(2.5)), 2.5)
