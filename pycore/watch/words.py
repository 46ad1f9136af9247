"""What was seen, as it is said aloud: short, and in the player's unit."""

from pycore.constants import HOLE_RADIUS
from pycore.units import FOOT
from pycore.watch.outcome import Outcome

LEAST_DEG = 0.15  # a start nearer to the line than that is said to be on it


def words(start_deg: float | None, came: Outcome, distance: float, unit: str) -> str:
    """Start and result: "Half a degree left, a foot and a half past"."""
    said = [*([] if start_deg is None else [_start(start_deg)]), _result(came, distance, unit)]
    text = ", ".join(said)
    return text[0].upper() + text[1:] + "."


def _start(start_deg: float) -> str:
    size = abs(start_deg)
    if size < LEAST_DEG:
        return "on line"
    side = "left" if start_deg > 0 else "right"
    halves = round(2 * size)
    if size < 0.35:
        return f"a shade {side}"
    if halves == 1:
        return f"half a degree {side}"
    whole, half = divmod(halves, 2)
    number = {1: "a degree"}.get(whole, f"{whole} degrees")
    return f"{number} and a half {side}" if half else f"{number} {side}"


def _result(came: Outcome, distance: float, unit: str) -> str:
    if came.result == "holed":
        return "holed"
    if came.stop is None:
        return "missed" if came.result == "missed" else "the end was not seen"
    x, y, _ = came.stop
    along, left = x - distance, y
    if came.result == "unseen":
        return "the end was not seen"
    parts = []
    if abs(along) > HOLE_RADIUS:
        parts.append(f"{_length(abs(along), unit)} {'past' if along > 0 else 'short'}")
    if abs(left) > HOLE_RADIUS:
        parts.append(f"{_length(abs(left), unit)} {'left' if left > 0 else 'right'}")
    return ", ".join(parts) or "at the edge"


def _length(metres: float, unit: str) -> str:
    if unit == "m":
        return f"{100 * metres:.0f} centimetres" if metres < 1 else f"{metres:.1f} metres"
    feet = metres / FOOT
    if feet < 0.75:
        inches = round(12 * feet)
        return f"{inches} inches"
    halves = round(2 * feet)
    whole, half = divmod(halves, 2)
    if whole == 0:
        return "half a foot"
    number = "a foot" if whole == 1 else f"{whole} feet"
    return f"{number} and a half" if half else number
