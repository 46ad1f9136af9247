"""A green walked once: its shape everywhere, from the level read at places on it, and how sure that shape is.

The drop of the green (how far it lies below the origin) is a Gaussian process seen through its gradient, the downhill
vector (``stats/process``). Which kernel, how long it reaches and how steep it is are not known: what the readings say of
that goes on as a mixture, so that few readings, which say little, leave much open. Places are complex numbers, x to the
right and y up the map, m.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from math import exp, hypot, inf, log, pi, sqrt, sumprod

from pycore.stats.intervals import median
from pycore.stats.linear import Row, forward
from pycore.stats.process import Kernel, Process, Reading, mean_field

SHORTEST, LONGEST = 1.5, 17.0  # m; over which a green changes; shorter, readings paces apart could not tell it from noise
FLATTEST, STEEPEST = 0.003, 0.048  # rise over run; spread of each part of the tilt about the plane
TREND = 0.03  # rise over run; spread of each part of the plane's tilt; greens are cut on no more than twice that
RATIO = sqrt(2)  # from one length and spread that are tried to the next
LENGTHS, SPREADS = (
    [low * RATIO**i for i in range(round(log(high / low, RATIO)) + 1)]
    for low, high in ((SHORTEST, LONGEST), (FLATTEST, STEEPEST))
)
UNLIKELY = 3.0  # of log likelihood below the best; what is worse says nothing that would show
SMOOTH = 4.0  # of log likelihood that a squared exponential has to fit better by: greens with tiers belie it elsewhere
FEW = 20  # readings with which every length and spread may be tried
FEWEST_TO_JUDGE = 6  # readings; fewer tell nothing of each other
WILD = 0.02  # share of readings that tell nothing of the green, as with the phone turned; assumed
STRANGE = 4.3  # standard deviations; of a pair of parts, chance lies farther off once in ten thousand readings


@dataclass(frozen=True)
class Tilt:
    """Downhill vector (rise over run) and the spread of each of its parts."""

    downhill: complex
    sd: tuple[float, float]

    @property
    def spread(self) -> float:
        """Spread of a part, whichever."""
        return hypot(*self.sd) / sqrt(2)


@dataclass(frozen=True)
class Survey:
    """``readings``, of them the ``suspects``, and the processes that may have made the others, each with its weight, the
    likeliest first."""

    readings: tuple[Reading, ...]
    suspects: tuple[int, ...]
    parts: tuple[tuple[float, Process], ...]

    @cached_property
    def best(self) -> Process:
        """The likeliest process."""
        return self.parts[0][1]

    @property
    def length(self) -> float:
        """Over how many metres this green changes."""
        return exp(sum(weight * log(each.kernel.length) for weight, each in self.parts))

    def tell(self, places: Sequence[complex], *sums: Sequence[complex]) -> list[tuple[float, float]]:
        """Mean and variance of some sums of downhill vectors at ``places`` (``Process.tell``)."""
        told = [(weight, process.tell(places, *sums)) for weight, process in self.parts]
        means = [sum(weight * each[i][0] for weight, each in told) for i in range(len(sums))]
        return [
            (mean, sum(weight * (each[i][1] + (each[i][0] - mean) ** 2) for weight, each in told))
            for i, mean in enumerate(means)
        ]

    def tilt(self, place: complex) -> Tilt:
        """The tilt at a place."""
        (gx, vx), (gy, vy) = self.tell([place], [1], [1j])
        return Tilt(complex(gx, gy), (sqrt(vx), sqrt(vy)))

    @cached_property
    def drop(self) -> Callable[[complex], float]:
        """Likeliest drop (m) at a place."""
        return mean_field(self.parts)

    def doubt(self, places: Sequence[complex]) -> list[Row]:
        """Covariance of all parts of the tilts at ``places``, of the likeliest process."""
        process = self.best
        told = [forward(process.factor, row) for place in places for row in process.cross([place], [1], [1j])]
        rows: list[Row] = []
        for i, (row, column) in enumerate(zip(process.between(places), told, strict=True)):
            rows.append([value - sumprod(column, other) for value, other in zip(row, told[: i + 1], strict=True)])
        return [[rows[i][j] if j <= i else rows[j][i] for j in range(len(rows))] for i in range(len(rows))]

    def next(self, places: Sequence[complex], doubt: Sequence[Row], how_many: int = 3) -> list[complex]:
        """Where one more reading each would teach most of the tilt at all ``places`` (their mean variance): one after the
        other, as if the ones before had been taken."""
        noise = median(self.best.noise)
        chosen: list[complex] = []
        for _ in range(min(how_many, len(places))):
            gains = [_gain(doubt[2 * i], doubt[2 * i + 1], 2 * i, noise) for i in range(len(places))]
            best = max(range(len(places)), key=gains.__getitem__)
            chosen.append(places[best])
            if len(chosen) == how_many:
                break
            for i in (2 * best, 2 * best + 1):
                own = doubt[i]
                left = own[i] + noise
                doubt = [[v - row[i] / left * o for v, o in zip(row, own, strict=True)] for row in doubt]
        return chosen


def _gain(first: Row, second: Row, i: int, noise: float) -> float:
    """By how much the sum of all variances falls with a reading at i and i + 1, whose covariances are given."""
    a, b, c = first[i] + noise, first[i + 1], second[i + 1] + noise
    u, v, w = sumprod(first, first), sumprod(first, second), sumprod(second, second)
    return (c * u - 2 * b * v + a * w) / (a * c - b * b)


def survey(readings: Sequence[Reading], place_sd: float) -> Survey:
    """What readings of the tilt say of the green; ``place_sd`` is how far each coordinate of a place may be off, m.

    What does not fit the others is left out where they are clearly likelier without it: one reading with the phone the wrong
    way round would make all of the green look rough, and little known.
    """
    parts = _mixture(readings, place_sd)
    suspects = _suspects(readings, place_sd, parts[0][1].kernel)
    if suspects:
        rest = _mixture([each for i, each in enumerate(readings) if i not in suspects], place_sd)
        wild = sum(_log_wild(readings[i]) for i in suspects)
        if _likeliest([each for _, each in rest]).evidence + wild > _likeliest([each for _, each in parts]).evidence + UNLIKELY:
            return Survey(tuple(readings), tuple(suspects), rest)
    return Survey(tuple(readings), (), parts)


def _log_wild(reading: Reading) -> float:
    """Log likelihood of a reading that tells nothing of the green."""
    return log(WILD / (2 * pi * TREND**2)) - (abs(reading.gradient) / TREND) ** 2 / 2


def _suspects(readings: Sequence[Reading], place_sd: float, likeliest: Kernel) -> list[int]:
    """Readings that do not fit the others.

    A wild reading makes the whole green look rough, and a rough green forgives it. So they are judged by the kernel of
    the calmer half of the readings, in one of which a single wild one is not.
    """
    if len(readings) < FEWEST_TO_JUDGE:
        return []
    halves = (readings[::2], readings[1::2])
    kernels = [_likeliest(_tried(half, place_sd, likeliest, inf)).kernel for half in halves]
    calm = min([*kernels, likeliest], key=lambda kernel: kernel.rate * kernel.spread)
    return Process(calm, readings, place_sd).strangers(STRANGE)


def _mixture(readings: Sequence[Reading], place_sd: float) -> tuple[tuple[float, Process], ...]:
    """The processes that may have made the readings, with their weights."""
    start = Kernel("matern", LENGTHS[len(LENGTHS) // 2], SPREADS[len(SPREADS) // 2], TREND)
    if len(readings) > FEW:
        # begun where half of the readings lead, which costs an eighth
        start = _likeliest(_tried(readings[::2], place_sd, start, inf)).kernel
    rough = _tried(readings, place_sd, start)
    best = _likeliest(rough).evidence
    smooth = _tried(readings, place_sd, replace(start, kind="squared_exponential"), best - UNLIKELY + SMOOTH)
    tried = [(each.evidence, each) for each in rough] + [(each.evidence - SMOOTH, each) for each in smooth]
    best = max(evidence for evidence, _ in tried)
    likely = sorted((each for each in tried if each[0] > best - UNLIKELY), key=lambda each: -each[0])
    weights = [exp(evidence - best) for evidence, _ in likely]
    total = sum(weights)
    return tuple((weight / total, process) for weight, (_, process) in zip(weights, likely, strict=True))


def _likeliest(some: Sequence[Process]) -> Process:
    return max(some, key=lambda each: each.evidence)


def _tried(readings: Sequence[Reading], place_sd: float, start: Kernel, least: float = -inf) -> list[Process]:
    """Processes over a lattice of lengths and spreads: from ``start`` up to the likeliest, and about it those that are not
    ``UNLIKELY`` and have at least the evidence ``least``, with their neighbours."""
    found: dict[tuple[int, int], Process] = {}
    waiting = [(LENGTHS.index(start.length), SPREADS.index(start.spread))]
    best = -inf
    while waiting:
        # the likeliest way first: from a top few steps lead on
        i, j = node = waiting.pop(0)
        if node in found or not (0 <= i < len(LENGTHS) and 0 <= j < len(SPREADS)):
            continue
        found[node] = Process(replace(start, length=LENGTHS[i], spread=SPREADS[j]), readings, place_sd)
        evidence = found[node].evidence
        near = [(i - 1, j), (i + 1, j), (i, j - 1), (i, j + 1)]
        if evidence > best:
            waiting, best = near + waiting, evidence
        elif evidence > max(best - UNLIKELY, least):
            waiting += near
    return list(found.values())
