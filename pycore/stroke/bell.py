"""A bell over the turning of half a stroke: where it begins and ends, whatever the shape of its flanks."""

from collections.abc import Sequence
from dataclasses import dataclass
from math import exp, inf

type Signal = Sequence[tuple[float, float]]  # s, rate
type Half = tuple[Signal, float, float]  # samples, and the start and end from where to look, s

# powers of a flank: 1 as a cosine begins, 2 as a pendulum driven from rest and a move of least jerk do
POWERS = 1.0, 1.4, 1.8, 2.2, 2.6
USUAL = 2.1, 0.4  # a power and its spread before any stroke was felt: an assumption
TOGETHER = 2.0  # samples that err alike, as a hand's tremor at 9 a second sampled at 30
MOST_STEPS = 12  # of the search for the most likely moments; five or six are usual
FINEST = 0.0005  # s
LEAST_DAMPING = 1e-3  # of a step; where not even so little of it helps the search has ended
NUDGE = 0.002  # s
LONGEST_STEP = 0.05  # s


@dataclass(frozen=True)
class Bell:
    """The bell that lies best over one half of a stroke: ``start`` and ``end`` with their variances, s and s2.

    ``misfit`` is the sum of squares that is left, ``likeness`` the share of the turning that it explains.
    """

    start: float
    end: float
    start_var: float
    end_var: float
    misfit: float
    likeness: float


def shape(t: float, start: float, end: float, rising: float, falling: float) -> float:
    """Turning at ``t`` of a bell with the two powers; its size is left open."""
    if not start < t < end:
        return 0.0
    share = (t - start) / (end - start)
    return float(share**rising * (1 - share) ** falling)


def lay(halves: Sequence[Half]) -> list[Bell]:
    """The bells over the like halves of several strokes: they share their powers, each has its own start and end.

    Parameters
    ----------
    halves : of each the samples, and start and end from where to look, s.
    """
    tried = []
    for rising in POWERS:
        for falling in POWERS:
            bells = [_lay(*half, rising, falling) for half in halves]
            tried.append((rising, falling, bells))
    count = sum(len(samples) for samples, _, _ in halves)
    least = min(sum(bell.misfit for bell in bells) for _, _, bells in tried)
    noise = least / max(1, count - 3 * len(halves)) or 1e-12
    scores = [
        -sum(bell.misfit for bell in bells) / (2 * noise * TOGETHER)
        - sum(((power - USUAL[0]) / USUAL[1]) ** 2 for power in (rising, falling)) / 2
        for rising, falling, bells in tried
    ]
    best = max(scores)
    weights = [exp(score - best) for score in scores]
    total = sum(weights)
    return [
        _mean([(weight / total, bells[i]) for weight, (_, _, bells) in zip(weights, tried, strict=True)])
        for i in range(len(halves))
    ]


def _mean(bells: Sequence[tuple[float, Bell]]) -> Bell:
    start, end = (sum(weight * value(bell) for weight, bell in bells) for value in (_start, _end))
    return Bell(
        start,
        end,
        sum(weight * (bell.start_var + (bell.start - start) ** 2) for weight, bell in bells),
        sum(weight * (bell.end_var + (bell.end - end) ** 2) for weight, bell in bells),
        sum(weight * bell.misfit for weight, bell in bells),
        sum(weight * bell.likeness for weight, bell in bells),
    )


def _start(bell: Bell) -> float:
    return bell.start


def _end(bell: Bell) -> float:
    return bell.end


def _lay(samples: Signal, start: float, end: float, rising: float, falling: float) -> Bell:
    """Gauss and Newton's steps in start and end; the size follows from them."""

    def left(start: float, end: float) -> tuple[float, list[float], float]:
        values = [shape(t, start, end, rising, falling) for t, _ in samples]
        square = sum(value * value for value in values)
        if not square:
            return inf, [], 0.0
        size = sum(value * rate for value, (_, rate) in zip(values, samples, strict=True)) / square
        rest = [rate - size * value for value, (_, rate) in zip(values, samples, strict=True)]
        return sum(each * each for each in rest), rest, size

    misfit, rest, size = left(start, end)
    aa = ab = bb = 0.0
    for _ in range(MOST_STEPS):
        by_start = [(after - now) / NUDGE for after, now in zip(left(start + NUDGE, end)[1], rest, strict=False)]
        by_end = [(after - now) / NUDGE for after, now in zip(left(start, end + NUDGE)[1], rest, strict=False)]
        aa = sum(a * a for a in by_start)
        ab = sum(a * b for a, b in zip(by_start, by_end, strict=False))
        bb = sum(b * b for b in by_end)
        ga = sum(a * r for a, r in zip(by_start, rest, strict=False))
        gb = sum(b * r for b, r in zip(by_end, rest, strict=False))
        area = aa * bb - ab * ab
        if area <= 0:
            break
        da, db = (gb * ab - ga * bb) / area, (ga * ab - gb * aa) / area
        damping = min(1.0, LONGEST_STEP / (max(abs(da), abs(db)) or 1.0))
        while damping > LEAST_DAMPING:
            there = left(start + damping * da, end + damping * db)
            if there[0] < misfit:
                break
            damping /= 2
        else:
            break
        start, end, (misfit, rest, size) = start + damping * da, end + damping * db, there
        if damping * max(abs(da), abs(db)) < FINEST:
            break
    total = sum(rate * rate for _, rate in samples)
    noise = TOGETHER * misfit / max(1, len(samples) - 3)
    area = aa * bb - ab * ab
    sure = size > 0 and area > 0 and end > start
    return Bell(
        start,
        end,
        noise * bb / area if sure else inf,
        noise * aa / area if sure else inf,
        misfit if sure else total,
        1 - misfit / total if sure and total else 0.0,
    )
