"""Strokes that were made, and what could not be made out."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import pi, sqrt
from typing import Literal

from pycore.stats.intervals import Z
from pycore.stroke.pendulum import Swing

Reason = Literal["gap", "cut_off", "unlike", "wrong_count"]
RATIOS = 0.8, 5.0  # what is still a stroke
BACKS = 0.2, 2.5  # s
PAUSE = 1.3  # s between two taps; a longer one parts two strokes


@dataclass(frozen=True)
class Made:
    """A stroke that began at ``start``, s.

    ``pause`` is how long it rested at the top (s; the top is in its middle), ``press`` how far it was pressed forward before
    (rad). ``start_sd`` and ``top_sd`` (s) say how well the samples tell start and top.
    """

    start: float
    swing: Swing
    pause: float = 0.0
    press: float = 0.0
    start_sd: float = 0.0
    top_sd: float = 0.0


@dataclass(frozen=True)
class Unused:
    """What was left out, from when to when (s), and why."""

    since: float
    until: float
    reason: Reason


def is_stroke(swing: Swing) -> bool:
    """Whether a person would swing so."""
    return BACKS[0] <= swing.back <= BACKS[1] and swing.forward > 0 and RATIOS[0] <= swing.back / swing.forward <= RATIOS[1]


def from_taps(taps: Sequence[float]) -> tuple[list[Made], list[Unused]]:
    """Strokes from taps at start, top and impact, s, rising. A longer pause parts one stroke from the next."""
    groups = [[taps[0]]]
    for before, tap in pairwise(taps):
        if tap - before > PAUSE:
            groups.append([])
        groups[-1].append(tap)
    made, unused = [], []
    for group in groups:
        if len(group) != 3:
            unused.append(Unused(group[0], group[-1], "wrong_count"))
            continue
        start, top, impact = group
        swing = Swing(top - start, impact - top)
        if is_stroke(swing):
            made.append(Made(start, swing))
        else:
            unused.append(Unused(start, impact, "unlike"))
    return made, unused


def ratio_interval(made: Sequence[Made], start_sd: float, top_sd: float, impact_sd: float) -> tuple[float, float] | None:
    """95 % interval of the ratio that the strokes have in the middle; None for a single one.

    Parameters
    ----------
    made : the strokes, whose spread about their middle counts by its standard error.
    start_sd, top_sd, impact_sd : s; how far these moments may be off in all strokes alike.
    """
    ratios = [each.swing.back / each.swing.forward for each in made]
    sd = spread(ratios)
    if sd is None:
        return None
    ratio, forward = middle(ratios), middle(each.swing.forward for each in made)
    alike = sqrt(start_sd**2 + ((1 + ratio) * top_sd) ** 2 + (ratio * impact_sd) ** 2) / forward
    # the median of a normal sample spreads by sqrt(pi / 2) of what its mean does
    half = Z * sqrt(alike**2 + sd**2 * pi / 2 / len(made))
    return ratio - half, ratio + half


def middle(values: Iterable[float]) -> float:
    """The median, which one odd stroke does not move."""
    ranked = sorted(values)
    half = len(ranked) // 2
    return ranked[half] if len(ranked) % 2 else (ranked[half - 1] + ranked[half]) / 2


def spread(values: Sequence[float]) -> float | None:
    """Standard deviation of what was sampled; None for a single value."""
    if len(values) < 2:
        return None
    mean = sum(values) / len(values)
    return sqrt(sum((value - mean) ** 2 for value in values) / (len(values) - 1))
