"""The units in which golf is measured, to SI and back. Nowhere else in the engine is a unit converted."""

from math import radians, tan

INCH = 0.0254  # m
FOOT = 0.3048  # m


def slope_from_percent(percent: float) -> float:
    """Rise over run (the tangent of the tilt) from per cent."""
    return percent / 100


def percent_from_slope(slope: float) -> float:
    """Per cent from rise over run."""
    return slope * 100


def slope_from_angle_deg(angle_deg: float) -> float:
    """Rise over run from a tilt in degrees."""
    return tan(radians(angle_deg))
