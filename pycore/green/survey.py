"""A green walked once: its shape everywhere, from the level read at places on it, and how sure that shape is.

The drop of the green (how far it lies below the origin) is a Gaussian process seen through its gradient, the downhill
vector (``stats/process``). Which kernel, how long it reaches and how steep it is are not known: what the readings say of
that goes on as a mixture, so that few readings, which say little, leave much open. Places are complex numbers, x to the
right and y up the map, m.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from math import exp, hypot, log, sqrt, sumprod

from pycore.stats.intervals import median
from pycore.stats.linear import Row, forward
from pycore.stats.process import Functional, Kernel, Kind, Process, Reading

KINDS: tuple[Kind, ...] = ("squared_exponential", "matern")
SHORTEST, LONGEST = 1.5, 17.0  # m; over which a green changes; shorter, readings paces apart could not tell it from noise
FLATTEST, STEEPEST = 0.003, 0.048  # rise over run; spread of each part of the tilt about the plane
TREND = 0.03  # rise over run; spread of each part of the plane's tilt; greens are cut on no more than twice that
RATIO = sqrt(2)  # from one length and spread that are tried to the next
UNLIKELY = 3.0  # of log likelihood below the best; what is worse says nothing that would show
SMOOTH = 4.0  # of log likelihood that a squared exponential has to fit better by: greens with tiers belie it elsewhere
FEW = 20  # readings with which every length and spread may be tried
FEWEST_TO_JUDGE = 6  # readings; fewer tell nothing of each other
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
    """``readings`` and the processes that may have made them, each with its weight, the likeliest first."""

    readings: tuple[Reading, ...]
    place_sd: float
    parts: tuple[tuple[float, Process], ...]

    @cached_property
    def best(self) -> Process:
        """The likeliest process."""
        return self.parts[0][1]

    @property
    def length(self) -> float:
        """Over how many metres this green changes."""
        return exp(sum(weight * log(each.kernel.length) for weight, each in self.parts))

    def tell(self, what: Functional) -> tuple[float, float]:
        """Mean and variance of a sum of downhill vectors."""
        told = [(weight, *process.tell(what)) for weight, process in self.parts]
        mean = sum(weight * value for weight, value, _ in told)
        return mean, sum(weight * (variance + (value - mean) ** 2) for weight, value, variance in told)

    def tilt(self, place: complex) -> Tilt:
        """The tilt at a place."""
        (gx, vx), (gy, vy) = (self.tell(Functional([place], [way])) for way in (1, 1j))
        return Tilt(complex(gx, gy), (sqrt(vx), sqrt(vy)))

    def field(self, place: complex) -> tuple[float, float, float, float]:
        """Likeliest drop (m), its two derivatives, and their mixed one, 1/m."""
        told = [(weight, process.field(place)) for weight, process in self.parts]
        f, fx, fy, fxy = (sum(weight * values[i] for weight, values in told) for i in range(4))
        return f, fx, fy, fxy

    def doubt(self, places: Sequence[complex]) -> list[Row]:
        """Covariance of all parts of the tilts at ``places``, of the likeliest process."""
        process = self.best
        parts = [Functional([place], [way]) for place in places for way in (1, 1j)]
        told = [forward(process.factor, process.cross(part)) for part in parts]
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
            for i in (2 * best, 2 * best + 1):
                own = doubt[i]
                left = own[i] + noise
                doubt = [[v - row[i] / left * o for v, o in zip(row, own, strict=True)] for row in doubt]
        return chosen

    @cached_property
    def suspects(self) -> list[int]:
        """Readings that do not fit the others.

        A wild reading makes the whole green look rough, and a rough green forgives it. So they are judged by the kernel of
        the calmer half of the readings, in one of which a single wild one is not.
        """
        if len(self.readings) < FEWEST_TO_JUDGE:
            return []
        kind = self.best.kernel.kind
        halves = [_tried(kind, half, self.place_sd) for half in (self.readings[::2], self.readings[1::2])]
        kernels = [max(half, key=lambda each: each.evidence).kernel for half in halves]
        calm = min([*kernels, self.best.kernel], key=lambda kernel: kernel.rate * kernel.spread)
        return Process(calm, self.readings, self.place_sd).strangers(STRANGE)


def _gain(first: Row, second: Row, i: int, noise: float) -> float:
    """By how much the sum of all variances falls with a reading at i and i + 1, whose covariances are given."""
    a, b, c = first[i] + noise, first[i + 1], second[i + 1] + noise
    u, v, w = sumprod(first, first), sumprod(first, second), sumprod(second, second)
    return (c * u - 2 * b * v + a * w) / (a * c - b * b)


def survey(readings: Sequence[Reading], place_sd: float) -> Survey:
    """What readings of the tilt say of the green; ``place_sd`` is how far each coordinate of a place may be off, m."""
    tried = [
        (each.evidence - (SMOOTH if kind == "squared_exponential" else 0.0), each)
        for kind in KINDS
        for each in _tried(kind, readings, place_sd)
    ]
    best = max(evidence for evidence, _ in tried)
    likely = sorted((each for each in tried if each[0] > best - UNLIKELY), key=lambda each: -each[0])
    weights = [exp(evidence - best) for evidence, _ in likely]
    total = sum(weights)
    parts = tuple((weight / total, process) for weight, (_, process) in zip(weights, likely, strict=True))
    return Survey(tuple(readings), place_sd, parts)


def _tried(kind: Kind, readings: Sequence[Reading], place_sd: float) -> list[Process]:
    """Processes over a lattice of lengths and spreads: those that are likely, and their neighbours.

    The climb begins where half of the readings lead, which costs an eighth.
    """
    lengths, spreads = _steps(SHORTEST, LONGEST), _steps(FLATTEST, STEEPEST)
    start = (len(lengths) // 2, len(spreads) // 2)
    if len(readings) > FEW:
        half = max(_tried(kind, readings[::2], place_sd), key=lambda each: each.evidence).kernel
        start = (lengths.index(half.length), spreads.index(half.spread))
    found: dict[tuple[int, int], Process] = {}
    waiting = [start]
    best = float("-inf")
    while waiting:
        # the likeliest way first: from a top few steps lead on
        i, j = node = waiting.pop(0)
        if node in found or not (0 <= i < len(lengths) and 0 <= j < len(spreads)):
            continue
        found[node] = Process(Kernel(kind, lengths[i], spreads[j], TREND), readings, place_sd)
        evidence = found[node].evidence
        if evidence > best - UNLIKELY:
            near = [(i - 1, j), (i + 1, j), (i, j - 1), (i, j + 1)]
            waiting = near + waiting if evidence > best else waiting + near
        best = max(best, evidence)
    return list(found.values())


def _steps(low: float, high: float) -> list[float]:
    return [low * RATIO**i for i in range(round(log(high / low, RATIO)) + 1)]
