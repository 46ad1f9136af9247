"""Strokes found in how a phone turned between the palms.

The forward swing is the fastest turning there is. Round each such peak the pendulum's own curve is laid over the
samples, and its start, top and impact are moved until it lies best.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import inf

from pycore.stroke.pendulum import Swing
from pycore.stroke.strokes import Made, Unused, is_stroke

type Signal = Sequence[tuple[float, float]]  # s, rate

APART = 0.6  # s; two peaks nearer than this belong to one stroke
HIGH = 0.85  # of all peaks, this share lies below the level of a stroke's
PART = 0.5  # of that level; a lower peak is no forward swing
BEFORE, AFTER = 5.0, 0.7  # forward swings before and after impact over which the curve is laid
CORE = 0.8  # s before impact in which samples count most
GAP = 0.16  # s; samples farther apart than this leave the stroke open
LIKENESS = 0.85  # share of the turning (r squared) that the curve has to explain
GUESSES = 1.4, 2.0, 2.8  # ratios to start from
FINEST = 0.0005  # s
MOST_STEPS = 60


def find(signal: Signal) -> tuple[list[Made], list[Unused]]:
    """Strokes in ``signal``, whichever way the phone was turned: the sign that makes out more of them is taken."""
    tried = [_find([(t, sign * rate) for t, rate in signal]) for sign in (1, -1)]
    return max(tried, key=lambda found: (len(found[0]), -len(found[1])))


def _find(signal: Signal) -> tuple[list[Made], list[Unused]]:
    made, unused = [], []
    for peak in _peaks(signal):
        found = _stroke(signal, peak)
        if isinstance(found, Made):
            made.append(found)
        else:
            unused.append(found)
    return made, unused


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


def _between(signal: Signal, since: float, until: float) -> list[tuple[int, tuple[float, float]]]:
    low, high = _index(signal, since), _index(signal, until)
    return [(i, signal[i]) for i in range(low, high)]


def _index(signal: Signal, t: float) -> int:
    low, high = 0, len(signal)
    while low < high:
        middle = (low + high) // 2
        if signal[middle][0] < t:
            low = middle + 1
        else:
            high = middle
    return low


def _stroke(signal: Signal, peak: int) -> Made | Unused:
    impact = signal[peak][0]
    above = peak
    while above > 0 and signal[above - 1][1] > 0:
        above -= 1
    forward = max(impact - signal[above][0], FINEST)
    since, until = impact - BEFORE * forward, impact + AFTER * forward
    part = [sample for _, sample in _between(signal, since, until)]
    if signal[0][0] > impact - 2 * forward or signal[-1][0] < until:
        return Unused(max(since, signal[0][0]), min(until, signal[-1][0]), "cut_off")
    core = [t for _, (t, _) in _between(signal, impact - CORE, until)]
    if max((b - a for a, b in pairwise(core)), default=inf) > GAP:
        return Unused(since, until, "gap")
    guesses = (_Curve(impact, forward, ratio * forward) for ratio in GUESSES)
    likeness, curve = _laid(part, max(guesses, key=lambda guess: guess.likeness(part)))
    swing = Swing(curve.back, curve.forward)
    if likeness < LIKENESS or not is_stroke(swing):
        return Unused(since, until, "unlike")
    return Made(curve.impact - curve.forward - curve.back, swing)


@dataclass(frozen=True)
class _Curve:
    impact: float
    forward: float
    back: float

    def likeness(self, part: Signal) -> float:
        """Share of the samples' spread that the curve explains, whatever its size and whatever the drift at rest."""
        if self.forward <= 0 or self.back <= 0:
            return 0.0
        swing, start = Swing(self.back, self.forward), self.impact - self.forward - self.back
        values = [swing.rate(t - start) if t > start else 0.0 for t, _ in part]
        n = len(part)
        mean, middle = sum(values) / n, sum(rate for _, rate in part) / n
        xy = sum((x - mean) * (rate - middle) for x, (_, rate) in zip(values, part, strict=True))
        xx = sum((x - mean) ** 2 for x in values)
        yy = sum((rate - middle) ** 2 for _, rate in part)
        return xy * xy / (xx * yy) if xy > 0 else 0.0


def _laid(part: Signal, curve: _Curve) -> tuple[float, _Curve]:
    """The curve moved and stretched until no small step betters it, or it has walked off."""
    best, step = curve.likeness(part), curve.forward / 4
    for _ in range(MOST_STEPS):
        if step < FINEST:
            break
        moved = [
            _Curve(curve.impact + step * i, curve.forward + step * f, curve.back + step * b)
            for i, f, b in ((1, 0, 0), (-1, 0, 0), (0, 1, 0), (0, -1, 0), (0, 0, 1), (0, 0, -1))
        ]
        likeness, better = max(((each.likeness(part), each) for each in moved), key=lambda tried: tried[0])
        if likeness > best:
            best, curve = likeness, better
        else:
            step /= 2
    return best, curve
