"""Short sounds in levels a millisecond apart: when each began, and whether it is a click or only begins like one.

A click stands above what was heard just before in every part of its first milliseconds, rises at once and has died away
while a voice or a tone still sounds.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from math import log10
from typing import Literal

type Levels = Sequence[Sequence[float]]

BLOCK_S = 0.05  # s of background that are looked at together
BLOCKS = 5  # blocks of background before a sound
QUANTILE = 0.9  # of a block's levels: noise lies below it nine times in ten
FLOOR = 3e-4  # linear; below it a microphone tells nothing but its own noise
FOUND_DB = 16.0  # above the background, summed over bands and the first milliseconds
SPAN_S = 0.005  # the first milliseconds
RECENT_S = 0.03, 0.002  # before a sound: what is no louder than this is no new one
RISE_S = 0.005  # from its beginning to its peak
AGAIN_S = 0.006, 0.045  # after its peak a click does not rise again
AGAIN = 0.6  # by more than this share of it
RESTING_S = 0.045, 0.15  # and nothing of its strength goes on
SUSTAINED = 0.4  # of the peak
SHORT_S = 0.012, 0.022  # after its peak; a strike is shorter than what rings
SHORT = 0.3  # of the peak
TOUCH_S = 0.001, 0.004  # after its beginning, when a click still has
PURE = 0.12  # of its peak above 3 kHz; a note of the app has less, and is longer than
NOTE = 0.2  # of its peak after ``SHORT_S``
LOW = 1.1  # times its peak below 800 Hz a strike has above that; a low sound is a note if it is longer than
LOW_NOTE = 0.1  # of its peak after ``SHORT_S``
BEFORE_S = 0.06, 0.003  # what was heard there is taken off

Kind = Literal["click", "tone", "lasting"]


@dataclass(frozen=True)
class Click:
    """A short sound: its beginning (s), its peaks by band (linear), the sample of the main one, how far it stands out (dB).

    ``strike`` is whether it is as short as a putter's, ``beaten`` whether it comes back like a clock's.
    """

    at: float
    peaks: tuple[float, ...]
    peak: int
    over: float
    kind: Kind
    strike: bool
    beaten: bool = False


def find(bands: Levels, rate: float) -> list[Click]:
    """Every short sound, in order."""
    count = len(bands[0])
    behind = [_background(band, rate) for band in bands]
    block, span = (_samples(s, rate) for s in (BLOCK_S, SPAN_S))
    since, until = (_samples(s, rate) for s in RECENT_S)

    def floors_at(i: int) -> list[float]:
        recent = slice(max(0, i - since), max(1, i - until))
        return [max(floor[i // block], *band[recent]) for band, floor in zip(bands, behind, strict=True)]

    def over_at(i: int) -> float:
        """How far the first milliseconds from ``i`` on stand out, dB."""
        return sum(
            20 * log10(level / floor)
            for band, floor in zip(bands, floors_at(i), strict=True)
            for level in band[i : i + span]
            if level > floor
        )

    found: list[Click] = []
    i = 1
    while i < count:
        if any(band[i] > floor[i // block] for band, floor in zip(bands, behind, strict=True)):
            over = over_at(i)
            if over >= FOUND_DB:
                # noise just before it may have been taken for its beginning
                while i + 1 < count and (later := over_at(i + 1)) > over:
                    i, over = i + 1, later
                found.append(_click(bands, floors_at(i), i, rate, over))
                i = max(i, found[-1].peak + until)
        i += 1
    return found


def _samples(seconds: float, rate: float) -> int:
    return max(1, round(seconds * rate))


def _background(band: Sequence[float], rate: float) -> list[float]:
    """Of each block the level below which the noise before it lies: of the blocks before, the second loudest."""
    block = _samples(BLOCK_S, rate)
    levels = []
    for first in range(0, len(band), block):
        ranked = sorted(band[first : first + block])
        levels.append(ranked[int(QUANTILE * (len(ranked) - 1))])
    floors = []
    for k in range(len(levels)):
        before = levels[max(0, k - BLOCKS) : k] or levels[:BLOCKS]
        ranked = sorted(before)
        floors.append(max(FLOOR, ranked[-2] if len(ranked) > 2 else ranked[0]))
    return floors


def _click(bands: Levels, floors: Sequence[float], first: int, rate: float, over: float) -> Click:
    rise = _samples(RISE_S, rate)
    spans = [band[first : first + rise] for band in bands]
    peaks = tuple(max(span) for span in spans)
    # the band in which it stands out most tells its shape
    main = max(range(len(bands)), key=lambda b: peaks[b] / floors[b])
    band, floor = bands[main], floors[main]
    height = peaks[main] - floor
    peak = first + spans[main].index(peaks[main])
    at = next((j for j in range(first, peak + 1) if band[j] - floor >= height / 2), peak)

    stretch = slice(max(0, first - _samples(BEFORE_S[0], rate)), max(1, first - _samples(BEFORE_S[1], rate)))
    before = [_middle(each[stretch]) for each in bands]

    def over_before(of: int, since: int, until: int) -> float:
        """The middle level of a stretch over that before the sound, as a share of the peak."""
        return (_middle(bands[of][since:until]) - before[of]) / peaks[main]

    def later(of: int, stretch: tuple[float, float]) -> float:
        return over_before(of, *(peak + _samples(s, rate) for s in stretch))

    again = _rises(band[peak + _samples(AGAIN_S[0], rate) : peak + _samples(AGAIN_S[1], rate)], floor) > AGAIN * height
    lasts = again or max(later(of, RESTING_S) for of in range(len(bands))) > SUSTAINED
    touch = over_before(len(bands) - 1, *(first + _samples(s, rate) for s in TOUCH_S))
    length = later(main, SHORT_S)
    low = peaks[0] - before[0] > LOW * (peaks[1] - before[1])
    note = (touch < PURE and length > NOTE) or (low and length > LOW_NOTE)
    kind: Kind = "lasting" if lasts else "tone" if note else "click"
    return Click((at + 0.5) / rate, peaks, peak, over, kind, length < SHORT)


def _middle(levels: Sequence[float]) -> float:
    return sorted(levels)[len(levels) // 2] if levels else 0.0


def _rises(levels: Sequence[float], floor: float) -> float:
    """The largest rise over what was heard before it, above the background."""
    lowest, most = max(levels[0], floor) if levels else floor, 0.0
    for level in levels:
        lowest = max(floor, min(lowest, level))
        most = max(most, level - lowest)
    return most
