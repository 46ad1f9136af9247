"""The way of the putter's head where the shaft stays in one plane."""

from dataclasses import dataclass
from math import asin, atan, cos, sin


@dataclass(frozen=True)
class ArcPoint:
    """The head ``along`` the target line from the ball (m): how far inside it, how high above its lowest place (m), and
    how far the face, square to the arc, is turned from square to the line, as seen from above (rad)."""

    along: float
    inside: float
    rise: float
    turn: float


def arc(lie: float, radius: float, along: float) -> ArcPoint:
    """Where the head is on a circle in the plane of the shaft.

    Parameters
    ----------
    lie : angle between the shaft and the floor, rad.
    radius : from the head up the shaft to the point that the stroke turns about, m.
    along : from the ball along the target line, m, to either side; less than ``radius``.
    """
    angle = asin(along / radius)
    up = radius * (1 - cos(angle))
    # the tangent, flattened on to the floor
    return ArcPoint(along, up * cos(lie), up * sin(lie), atan(sin(angle) * cos(lie) / cos(angle)))
