"""How wide a camera sees, from one picture of something of known length."""

from math import atan, dist, hypot

from pycore.sight.camera import Pixel

FILM_DIAGONAL_MM = hypot(36, 24)  # of the film by which lenses are told


def focal(ends: tuple[Pixel, Pixel], length: float, distance: float) -> float:
    """Focal length (px) that shows something ``length`` m long, square to the lens and ``distance`` m off, between ``ends``."""
    return dist(*ends) * distance / length


def field(height: float, focal: float) -> float:
    """Vertical field of view (rad) of a picture so high (px)."""
    return 2 * atan(height / 2 / focal)


def film_mm(size: Pixel, focal: float) -> float:
    """Focal length as for 35 mm film, by the picture's diagonal."""
    return focal * FILM_DIAGONAL_MM / hypot(*size)
