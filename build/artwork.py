"""The app's icons, drawn here: a line that bends into a hole."""

import io
import math

from PIL import Image, ImageDraw

PAPER = (250, 248, 242)
INK = (22, 21, 15)
ACCENT = (163, 24, 12)
FINER = 4  # drawn this many times larger, then reduced, for smooth edges

# The mark on a square of side 1: where the ball starts, how the line bends, where the hole is
START = (0.30, 0.84)
BEND = (0.14, 0.37)
HOLE = (0.67, 0.27)
LINE_WIDTH = 0.08
HOLE_RADIUS = 0.165
BALL_RADIUS = 0.088


def icons() -> dict[str, bytes]:
    """PNG files by path. A maskable icon keeps its mark within the circle that a phone may cut out."""
    return {
        "icons/icon-192.png": png(192, 0.96),
        "icons/icon-512.png": png(512, 0.96),
        "icons/maskable-512.png": png(512, 0.72),
        "icons/apple-touch-icon.png": png(180, 0.92),
    }


def png(side: int, scale: float) -> bytes:
    """The mark on paper, ``side`` pixels wide, drawn at ``scale`` of the whole."""
    large = side * FINER
    image = Image.new("RGB", (large, large), PAPER)
    draw = ImageDraw.Draw(image)

    def place(point: tuple[float, float]) -> tuple[float, float]:
        return (0.5 + (point[0] - 0.5) * scale) * large, (0.5 + (point[1] - 0.5) * scale) * large

    def disc(centre: tuple[float, float], radius: float, colour: tuple[int, int, int]) -> None:
        x, y = place(centre)
        reach = radius * scale * large
        draw.ellipse((x - reach, y - reach, x + reach, y + reach), fill=colour)

    disc(HOLE, HOLE_RADIUS, INK)
    for point in curve():
        disc(point, LINE_WIDTH / 2, ACCENT)
    disc(START, BALL_RADIUS, INK)
    disc(START, BALL_RADIUS - 0.028, PAPER)
    buffer = io.BytesIO()
    image.resize((side, side), Image.Resampling.LANCZOS).save(buffer, "PNG", optimize=True)
    return buffer.getvalue()


def curve(points: int = 600) -> list[tuple[float, float]]:
    """Points of the line from the ball to the hole's near edge, steeper as it slows, as putts bend."""
    result = []
    for index in range(points + 1):
        t = index / points
        x, y = ((1 - t) ** 2 * s + 2 * t * (1 - t) * b + t**2 * h for s, b, h in zip(START, BEND, HOLE, strict=True))
        if math.dist((x, y), HOLE) > HOLE_RADIUS * 0.35:
            result.append((x, y))
    return result
