"""Strokes found in how a phone turned between the palms, from what it felt and not from one curve.

A forward swing is the fastest turning there is, and before it the phone turned the other way. Where each of the two began
and ended is told by bells whose flanks may be steep or soft. The ball is met where the phone's angle comes back to what it
was at rest, before any press forward.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import sqrt

from pycore.stroke import bell
from pycore.stroke.bell import Bell
from pycore.stroke.pendulum import Swing
from pycore.stroke.strokes import Made, Unused, is_stroke, middle

type Signal = Sequence[tuple[float, float]]  # s, rate (rad/s), forward positive

APART = 0.6  # s; two peaks nearer than this belong to one stroke
HIGH = 0.85  # of all peaks, this share lies below the level of a stroke's
PART = 0.5  # of that level; a lower peak is no forward swing
GAP = 0.16  # s; samples farther apart than this leave the stroke open
LONGEST_BACK = 2.5  # s
LONGEST_PAUSE = 0.8  # s; who rests longer at the top begins anew
SLOW = 0.05  # of the forward peak; slower turning may be rest
SIGMAS = 2.5  # spreads of the noise; within them is rest
QUIET_S = 0.45  # s; a shorter stillness may be a pause after a press or within a waggle
LOOK_BACK = 2.5  # s before the backswing to which a press or a waggle belongs
MARGIN = 0.25  # s of rest beside a bell that help to lay it
LIKENESS = 0.8  # share of the turning (r squared) that the backswing's bell has to explain
PRESSED = 0.014  # rad; a smaller turn before the backswing is no press
LEAST_PAUSE = 0.05  # s; a shorter one cannot be told from a soft turn
EDGE = 0.1  # of half a stroke; so far beyond the turning that was seen a bell is looked for
BEYOND = 0.7  # of the way from the start of the forward swing to its peak; so much after the peak still tells of it
FINE_S = 0.001  # s
STRETCH = 8  # samples; a rest is judged in such pieces
FINISH = 0.15  # s after the peak that have to be felt for the end of the swing
SHARE_BACK = 0.12  # of the forward peak; a slower backswing is none

KNOWN_SD = 0.012, 0.008, 0.004  # s; how far start, top and ball are off alike in all strokes of a shape, from the tests' shapes


def find(signal: Signal) -> tuple[list[Made], list[Unused]]:
    """Strokes in ``signal``, whichever way the phone was turned: the sign that makes out more of them is taken."""
    tried = [_find([(t, sign * rate) for t, rate in signal]) for sign in (1, -1)]
    return max(tried, key=lambda found: (len(found[0]), -len(found[1])))


@dataclass(frozen=True)
class _Part:
    """Half found: samples about one stroke, and where in them its halves lie roughly."""

    samples: Signal
    quiet: tuple[int, int]  # the rest before it, from and to
    back: tuple[int, int]  # first and last sample of the backswing
    forward: tuple[int, int]  # first sample of the forward swing, and its peak
    rest: float  # rate at rest


def _find(signal: Signal) -> tuple[list[Made], list[Unused]]:
    noise = _noise(signal)
    parts: list[_Part] = []
    unused: list[Unused] = []
    for peak in _peaks(signal):
        part = _part(signal, peak, noise)
        if isinstance(part, Unused):
            unused.append(part)
        else:
            parts.append(part)
    if not parts:
        return [], unused
    backs = bell.lay([_backswing(part) for part in parts])
    forwards = bell.lay([_forward_swing(part) for part in parts])
    made = []
    for part, back, forward in zip(parts, backs, forwards, strict=True):
        found = _stroke(part, back, forward)
        if found is None:
            unused.append(Unused(part.samples[part.back[0]][0], part.samples[part.forward[1]][0], "unlike"))
        else:
            made.append(found)
    return made, sorted(unused, key=lambda part: part.since)


def _noise(signal: Signal) -> float:
    """Spread of the rate while nothing is done: the median of how much it spreads in short stretches, the quieter half."""
    spreads = []
    for i in range(0, len(signal) - STRETCH, STRETCH // 2):
        rates = [rate for _, rate in signal[i : i + STRETCH]]
        mean = sum(rates) / STRETCH
        spreads.append(sqrt(sum((rate - mean) ** 2 for rate in rates) / (STRETCH - 1)))
    spreads.sort()
    return spreads[len(spreads) // 4] if spreads else 0.0


def _peaks(signal: Signal) -> list[int]:
    """Indices of the peaks that are high enough for a forward swing."""
    peaks = []
    for i, (t, rate) in enumerate(signal):
        around = _between(signal, t - APART, t + APART)
        if rate > 0 and all(rate > other or index == i for index, (_, other) in around):
            peaks.append(i)
    if not peaks:
        return []
    levels = sorted(signal[i][1] for i in peaks)
    level = levels[min(len(levels) - 1, int(HIGH * len(levels)))]
    return [i for i in peaks if signal[i][1] >= PART * level]


def _between(signal: Signal, since: float, until: float) -> Iterator[tuple[int, tuple[float, float]]]:
    return ((i, signal[i]) for i in range(_index(signal, since), _index(signal, until)))


def _index(signal: Signal, t: float) -> int:
    low, high = 0, len(signal)
    while low < high:
        half = (low + high) // 2
        if signal[half][0] < t:
            low = half + 1
        else:
            high = half
    return low


def _part(signal: Signal, peak: int, noise: float) -> _Part | Unused:
    at = signal[peak][0]
    first = _index(signal, at - LONGEST_BACK - LONGEST_PAUSE - LOOK_BACK)
    last = _index(signal, at + APART)
    samples = signal[first:last]
    peak -= first
    top_rate = samples[peak][1]
    slow = max(SLOW * top_rate, SIGMAS * noise)
    smooth = _smooth(samples)

    def unused(reason: str) -> Unused:
        return Unused(samples[max(0, i)][0], samples[-1][0], reason)  # type: ignore[arg-type]

    i = peak
    while i >= 0 and smooth[i] > slow:
        i -= 1
    forward = i + 1
    while i >= 0 and smooth[i] > -slow:
        if samples[forward][0] - samples[i][0] > LONGEST_PAUSE or smooth[i] > 2 * slow:
            return unused("unlike")
        i -= 1
    end = i
    while i >= 0 and smooth[i] < -slow:
        i -= 1
    start = i + 1
    if start < 2 or signal[-1][0] < at + FINISH:
        return unused("cut_off")
    if max(b - a for (a, _), (b, _) in pairwise(samples[start - 1 : peak + 3])) > GAP:
        return unused("gap")
    lowest = min(smooth[start : end + 1], default=0.0)
    if lowest > -SHARE_BACK * top_rate:
        return unused("unlike")
    quiet = _rest(samples, smooth, start, slow)
    rates = [rate for _, rate in samples[quiet[0] : quiet[1] + 1]]
    return _Part(samples, quiet, (start, end), (forward, peak), middle(rates) if len(rates) > 3 else 0.0)


def _rest(samples: Signal, smooth: Sequence[float], start: int, slow: float) -> tuple[int, int]:
    """First and last sample of the rest at the ball: the nearest stillness that is long enough, else the longest."""
    longest = (start - 1, start - 1)
    stop = i = start - 1
    while i >= 0 and samples[start][0] - samples[i][0] < LOOK_BACK:
        if abs(smooth[i]) > slow:
            stop = i - 1
        elif samples[stop][0] - samples[i][0] > samples[longest[1]][0] - samples[longest[0]][0]:
            longest = i, stop
            if samples[stop][0] - samples[i][0] >= QUIET_S and abs(smooth[max(0, i - 1)]) > slow:
                break
        i -= 1
    return longest


def _smooth(samples: Signal) -> list[float]:
    """Each rate with its two neighbours."""
    rates = [rate for _, rate in samples]
    return [sum(rates[max(0, i - 1) : i + 2]) / len(rates[max(0, i - 1) : i + 2]) for i in range(len(rates))]


def _backswing(part: _Part) -> bell.Half:
    """What a bell is laid over: the backswing with some of the rest before it."""
    since, until = (part.samples[i][0] for i in part.back)
    samples = [(t, part.rest - rate) for t, rate in part.samples if since - MARGIN <= t <= until]
    return samples, since - EDGE * (until - since), until + EDGE * (until - since)


def _forward_swing(part: _Part) -> bell.Half:
    """The same of the forward swing until a little after its peak: how it ends is another matter."""
    since, peak = (part.samples[i][0] for i in part.forward)
    rise = peak - since
    samples = [(t, rate - part.rest) for t, rate in part.samples if since - FINE_S <= t <= peak + BEYOND * rise]
    return samples, since - EDGE * rise, peak + (1 + EDGE) * rise


def _stroke(part: _Part, back: Bell, forward: Bell) -> Made | None:
    if min(back.likeness, forward.likeness) < LIKENESS:
        return None
    soft = forward.start - back.end
    top = (back.end + forward.start) / 2 if soft > 0 else _turn(part)
    impact, press = _impact(part, back.start)
    if impact is None:
        return None
    swing = Swing(top - back.start, impact - top)
    if not is_stroke(swing):
        return None
    return Made(
        back.start,
        swing,
        pause=soft if soft > LEAST_PAUSE else 0.0,
        press=press if press > PRESSED else 0.0,
        start_sd=sqrt(back.start_var),
        top_sd=sqrt(back.end_var + forward.start_var) / 2,
    )


def _turn(part: _Part) -> float:
    """Where the turning changes sign, s."""
    low, high = part.back[1], part.forward[0]
    for (t0, a), (t1, b) in pairwise(part.samples[low : high + 1]):
        if a - part.rest <= 0 < b - part.rest:
            return t0 + (t1 - t0) * (part.rest - a) / (b - a)
    return (part.samples[low][0] + part.samples[high][0]) / 2


def _impact(part: _Part, start: float) -> tuple[float | None, float]:
    """When the angle is again what it was at rest, s; and how far it was pressed forward before the backswing, rad."""
    angle, press = 0.0, 0.0
    for i in range(part.quiet[1], len(part.samples) - 1):
        (t0, a), (t1, b) = part.samples[i], part.samples[i + 1]
        turned = (t1 - t0) * ((a + b) / 2 - part.rest)
        if t1 <= start:
            press = angle + turned
        if i >= part.forward[0] and angle < 0 <= angle + turned:
            return t0 + (t1 - t0) * -angle / turned, press
        angle += turned
    return None, press
