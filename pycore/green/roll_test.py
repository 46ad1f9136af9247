"""Green speed and slope along a line, from rolls out and back.

A ball that starts at v and stops after d and t slows by a = 2 d / t^2. Out, a = (D - G s) c; back, a = (D + G s) c, with
D the slowing on the level, s the slope along the line (positive where it falls on the way out), G = (5/7) g and
c = 1 / sqrt(1 + s^2). In Stimpmeter feet the mean of both is S = 2 S_up S_down / (S_up + S_down): A. D. Brede, USGA Green
Section Record 28(6), 1990. A putted ball skids first (textbook, used by Penner 2002) on friction mu, then rolls with 5/7
of its speed; distance and time then give d = (5/14) v t + v^2 / (7 mu g). The slope is left out of the skid.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from math import hypot, sqrt

from pycore.constants import GRAVITY, ROLLING, STIMPMETER_SPEED
from pycore.errors import Refusal
from pycore.units import FOOT, INCH

TAP = 0.07  # s; spread of a thumb that taps on something seen coming; assumed
LAG = 0.1  # s; how late a thumb is on every roll of one test; assumed
CROSS = 0.027  # of the slowing; what a line that falls 1 % to a side makes of it at 10 ft, by the rolling model
MEASURE = 0.01  # of the distance; spread of a careful measure; assumed
STRIDE = 0.04  # of the distance; how far a stride is off its usual length, the same way all through; assumed
SKID = 0.4  # friction of a ball that skids on turf; 0.3 to 0.5 is an assumption
SKID_SD = 0.2 / sqrt(12)  # an even error over that range
SUSPECT = 3.5  # standard deviations off the others; chance does that once in two thousand rolls
BOOKLET = 8 * INCH  # how far apart the balls of one way may stop: USGA Stimpmeter booklet
READING = INCH  # least spread of a ball's length off the Stimpmeter; assumed
STEEPEST = 0.2  # rise over run; no green is cut on such a slope
NUDGE = 1e-4  # of a measured value; the change that shows how the result depends on it


@dataclass(frozen=True)
class Roll:
    """A ball's distance (m) and time (s), on the way out or back."""

    distance: float
    time: float
    out: bool


@dataclass(frozen=True)
class Speed:
    """Green speed (Stimpmeter feet) and slope along the line (rise over run, falling on the way out), with their spreads."""

    stimp_ft: float
    stimp_sd_ft: float
    slope: float
    slope_sd: float


@dataclass(frozen=True)
class Slowing:
    """How a ball slowed, m/s2, its spread, and how much of it hangs on the friction of the skid (per 1 of mu) and on a lag
    of the thumb that all rolls share (per s)."""

    value: float
    sd: float
    out: bool
    skid: float = 0.0
    lag: float = 0.0


def slowing(roll: Roll, putted: bool) -> Slowing:
    """How a ball slowed, with what thumb and measure leave unsure."""

    def found(distance: float, time: float, mu: float) -> float:
        return _putted(distance, time, mu) if putted else 2 * distance / time**2

    value = found(roll.distance, roll.time, SKID)
    by_time = (found(roll.distance, roll.time * (1 + NUDGE), SKID) - value) / (roll.time * NUDGE)
    by_distance = (found(roll.distance * (1 + NUDGE), roll.time, SKID) - value) / (roll.distance * NUDGE)
    by_skid = (found(roll.distance, roll.time, SKID * (1 + NUDGE)) - value) / (SKID * NUDGE)
    return Slowing(value, hypot(by_time * sqrt(2) * TAP, by_distance * MEASURE * roll.distance), roll.out, by_skid, by_time)


def _putted(distance: float, time: float, mu: float) -> float:
    """Slowing of the roll that follows a skid, m/s2."""
    a, b = 1 / (7 * mu * GRAVITY), 5 / 14 * time
    launch = 2 * distance / (b + sqrt(b * b + 4 * a * distance))
    return 5 / 7 * launch / (time - 2 * launch / (7 * mu * GRAVITY))


def speed(slowings: Sequence[Slowing], shared: float = 0.0) -> Speed:
    """Speed and slope by weighted least squares from one ball or more each way; a wider scatter than expected widens both.

    ``shared`` is the spread of an error that all distances share, as a fraction.

    Raises
    ------
    Refusal : ``no_green``, where no green could roll like this.
    """
    ways = [_way([each for each in slowings if each.out == out]) for out in (True, False)]
    (out, out_variance, out_skid, out_lag), (back, back_variance, back_skid, back_lag) = ways
    means = {True: out, False: back}
    free = len(slowings) - 2
    scatter = sum(((each.value - means[each.out]) / each.sd) ** 2 for each in slowings)
    widened = max(1.0, scatter / free) if free else 1.0
    noise = widened * (out_variance + back_variance) / 4
    pull, mean = (back - out) / 2, (back + out) / 2
    level = hypot(sqrt(noise), (out_skid + back_skid) / 2 * SKID_SD, (out_lag + back_lag) / 2 * LAG, shared * mean)
    tilt = hypot(sqrt(noise), (back_skid - out_skid) / 2 * SKID_SD, (back_lag - out_lag) / 2 * LAG, shared * pull)
    sine = pull / (ROLLING * GRAVITY)
    if mean <= 0 or abs(sine) > STEEPEST:
        raise Refusal("no_green", "no green rolls like this: look for a wrong distance, time or way")
    slope = sine / sqrt(1 - sine**2)
    drag = mean * hypot(1, slope)
    stimp_ft = STIMPMETER_SPEED**2 / (2 * drag) / FOOT
    return Speed(stimp_ft, stimp_ft * level / mean, slope, tilt / (ROLLING * GRAVITY))


def _way(slowings: Sequence[Slowing]) -> tuple[float, float, float, float]:
    """Mean, its variance, and its hold on the skid and on the lag, of the balls of one way."""
    weights = [1 / each.sd**2 for each in slowings]
    total = sum(weights)
    share = [weight / total for weight in weights]
    value = sum(w * each.value for w, each in zip(share, slowings, strict=True))
    skid, lag = (
        sum(w * part for w, part in zip(share, parts, strict=True))
        for parts in zip(*((s.skid, s.lag) for s in slowings), strict=True)
    )
    return value, 1 / total, skid, lag


def suspects(slowings: Sequence[Slowing]) -> list[int]:
    """The ball that stands farthest off the others of its way; both, where two differ and nothing tells which is wrong."""
    off: dict[int, float] = {}
    for i, each in enumerate(slowings):
        others = [other for j, other in enumerate(slowings) if j != i and other.out == each.out]
        if others:
            value, variance, _, _ = _way(others)
            off[i] = abs(each.value - value) / sqrt(each.sd**2 + variance)
    worst = max(off.values(), default=0.0)
    return [i for i, each in off.items() if worst > SUSPECT and each > worst * (1 - 1e-9)]


def stimpmeter(out: Sequence[float], back: Sequence[float]) -> Speed:
    """Speed and slope from lengths (m) off the Stimpmeter both ways: Brede's formula."""
    free = len(out) + len(back) - 2
    squares = sum((each - _mean(way)) ** 2 for way in (out, back) for each in way)
    sd = max(READING, sqrt(squares / free)) if free else READING
    return speed([_off_bar(_mean(out), True, sd / sqrt(len(out))), _off_bar(_mean(back), False, sd / sqrt(len(back)))])


def too_far_apart(lengths: Sequence[float]) -> bool:
    """Whether the balls of one way break the booklet's rule."""
    return max(lengths) - min(lengths) > BOOKLET * (1 + 1e-9)


def _mean(values: Sequence[float]) -> float:
    return sum(values) / len(values)


def _off_bar(length: float, out: bool, sd: float) -> Slowing:
    """How a ball off the Stimpmeter slowed that rolled ``length`` m, known to ``sd`` m."""
    value = STIMPMETER_SPEED**2 / (2 * length)
    return Slowing(value, value * sd / length, out)
