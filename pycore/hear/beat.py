"""A strike against the beat that the player heard: how late the beat's sound comes back, and how far off each strike was.

An earpiece held to the microphone tells the way out and the way in together; a strike at the moment at which the ear has the
beat is then heard just as late. So neither delay has to be known by itself.
"""

from bisect import bisect_left
from collections.abc import Sequence
from math import sqrt

from pycore.hear.clicks import Click
from pycore.hear.pace import MOMENT

ALIKE_S = 0.02  # s; notes of one beat come back as evenly: wireless links and busy phones waver
FEWEST = 6  # notes that have to agree
SHARE = 0.6  # of the notes played
NEAR_S = 0.35  # s; a strike farther from its beat belongs to none


def delay(sounds: Sequence[Click], beats: Sequence[float], within: tuple[float, float]) -> tuple[float, float, int] | None:
    """Delay (s), its spread, and how many notes agree in it; None where too few do.

    Of all distances from a note to a sound ``within`` (s) of it the one is taken that most notes have: the notes of a beat are
    unevenly spaced, so no other fits more than a part of them.
    """
    times = [sound.at for sound in sounds]
    lags = sorted(lag for beat in beats for lag in _lags(times, beat, within))
    best: list[float] = []
    for i, lag in enumerate(lags):
        group = lags[i : bisect_left(lags, lag + ALIKE_S)]
        if len(group) > len(best):
            best = group
    if len(best) < max(FEWEST, SHARE * len(beats)):
        return None
    mean = sum(best) / len(best)
    scatter = sum((lag - mean) ** 2 for lag in best) / (len(best) - 1)
    return mean, sqrt(scatter / len(best) + MOMENT**2), len(best)


def _lags(times: Sequence[float], beat: float, within: tuple[float, float]) -> list[float]:
    since, until = (bisect_left(times, beat + end) for end in within)
    return [at - beat for at in times[since:until]]


def offsets(sounds: Sequence[Click], beats: Sequence[float], late: float) -> list[tuple[int, float, float]]:
    """Of each beat that was struck near its place in the list, when it was (s), and by how much after the beat that the ear
    had. Of several sounds near a beat the loudest was the strike."""
    struck = [sound for sound in sounds if sound.kind == "click" and sound.strike]
    found = []
    for i, beat in enumerate(beats):
        near = [sound for sound in struck if abs(sound.at - beat - late) <= NEAR_S]
        if near:
            loudest = max(near, key=lambda sound: sound.over)
            found.append((i, loudest.at, loudest.at - beat - late))
    return found
