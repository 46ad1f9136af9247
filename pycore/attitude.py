"""The attitude that a browser tells of its phone, as the directions of the phone's axes."""

from math import cos, sin

type Axes = tuple[tuple[float, float, float], tuple[float, float, float], tuple[float, float, float]]


def axes(alpha: float, beta: float, gamma: float) -> Axes:
    """The phone's x, y and z (right of the screen, its top, out of it) where z up and y north stand still.

    Alpha, beta and gamma (rad) are turns about z, x and y, in this order, away from lying on its back with its top to the
    north. Reference: W3C, Device Orientation and Motion, section 4.1.
    """
    ca, cb, cg = cos(alpha), cos(beta), cos(gamma)
    sa, sb, sg = sin(alpha), sin(beta), sin(gamma)
    return (
        (ca * cg - sa * sb * sg, sa * cg + ca * sb * sg, -cb * sg),
        (-sa * cb, ca * cb, sb),
        (ca * sg + sa * sb * cg, sa * sg - ca * sb * cg, cb * cg),
    )
