"""The numbers of a scene that a film makes likeliest: damped Gauss-Newton steps under a loss that lets wrong frames go.

What a frame is off is taken apart along and across the ball's way in the picture: blur moves a ball's centre along it. How far
frames are usually off is measured on the film itself. The loss is Geman and McClure's, narrowed in stages (A. Blake and A.
Zisserman, Visual Reconstruction, 1987, ch. 7); the damping is Marquardt's (SIAM J. Appl. Math. 11:431-441, 1963).
"""

from collections.abc import Generator, Sequence
from dataclasses import dataclass
from math import hypot, sqrt, sumprod

from pycore.stats.intervals import median
from pycore.stats.linear import Row, backward, cholesky, forward, inverse
from pycore.watch.ball import Place, Way
from pycore.watch.scene import NUMBERS, OF_TIME, OF_WAY, STEPS, Scene, Seen

# A ball's centre in a frame is off by so much, and by so much of its width; assumed, scaled
CENTRE_PX, CENTRE_SHARE = 0.5, 0.04
STILL_PX = 1e-3  # px between two frames; what goes less goes no way
WIDTH_PX, WIDTH_SHARE = 1.0, 0.05  # the same of its width
LEAST_SCALE = 0.5  # of these; no film is better
CUT = 3.5  # deviations from which a frame is let go
STAGES = (12.0, 4.0, 1.5, 1.0, 1.0)  # how much wider the loss is
TURNS = 6  # steps at most in a stage
SETTLED = 1e-3  # of the cost, by which a step has to lower it
DAMPING, SOFTER, HARDER, MOST_DAMPING = 1e-3, 0.2, 8.0, 1e6
NORMAL = 1.4826  # standard deviations of a normal error in its median size
MOST_ALIKE = 0.8  # correlation of one frame's error with the next one's


@dataclass(frozen=True)
class Fitted:
    """The likeliest numbers, their covariance, the weight (0 to 1) of each frame, and where the ball is in each."""

    numbers: Row
    covariance: list[Row]
    weights: Row
    places: list[Place]
    way: Way


@dataclass
class _Looked:
    """A film held against a list of numbers: what is off, in deviations of a usual frame, along, across and in width."""

    numbers: Row
    way: Way
    places: list[Place]
    seen: list[Seen]
    marks: list[Seen]
    along: Row
    across: Row
    width: Row
    weights: Row
    cost: float


class Fit:
    """A fit under way: ``heeded`` says which frames count at all."""

    def __init__(self, scene: Scene, start: Sequence[float], heeded: Sequence[bool]) -> None:
        self.scene = scene
        self.beliefs = scene.beliefs(start)
        self.heeded = heeded
        self.known = [frame.width is not None for frame in scene.frames]
        self.scales = [1.0, 1.0, 1.0]
        self.soft = STAGES[0]
        known = scene.known
        self.mark_sds = [known.ball_sd] * 2 + [known.mark_sd] * 2
        self.marked = [*known.ball, *(known.hole or ())]
        self._settle(list(start))

    def _settle(self, start: Row) -> None:
        """What stays as it is through a stage: which way the ball goes in each frame, and how far a frame may be off."""
        scene = self.scene
        places = scene.places(start, scene.way(start))
        self.heights = scene.rises(places)
        seen = scene.seen(start, places, self.heights)
        self.ways = [_way(seen, i) for i in range(len(seen))]
        self.sds = [hypot(CENTRE_PX, CENTRE_SHARE * each.width) for each in seen]
        self.width_sds = [hypot(WIDTH_PX, WIDTH_SHARE * each.width) for each in seen]
        self.now = self._look(start)

    def run(self, stages: Sequence[float] = STAGES) -> Generator[float, None, Fitted]:
        """Yields the share done."""
        for i, soft in enumerate(stages):
            self.soft = soft
            self._settle(self.now.numbers)
            yield from ((i + share) / len(stages) for share in self._stage())
            self._rescale()
        return self._fitted()

    def _stage(self) -> Generator[float]:
        damping = DAMPING
        for turn in range(TURNS):
            gram, right = self._normal(self.now, 1.0, 1.0, 1.0)
            before = self.now.cost
            while damping < MOST_DAMPING:
                damped = [[*row[:-1], row[-1] * (1 + damping)] for row in gram]
                factor = cholesky(damped)
                step = backward(factor, forward(factor, right))
                tried = self._tried([a + b for a, b in zip(self.now.numbers, step, strict=True)])
                if tried and tried.cost < before:
                    self.now, damping = tried, damping * SOFTER
                    break
                damping *= HARDER
            yield (turn + 1) / TURNS
            if before - self.now.cost < SETTLED * before:
                return

    def _tried(self, numbers: Row) -> _Looked | None:
        """A look with numbers that a step has led to; None where no ball rolls so."""
        try:
            return self._look(numbers)
        except (ArithmeticError, ValueError):
            return None

    def _rescale(self) -> None:
        """How far this film's frames are usually off."""
        now = self.now
        for k, (off, counts) in enumerate(((now.along, None), (now.across, None), (now.width, self.known))):
            sizes = [
                abs(each)
                for i, each in enumerate(off)
                if self.heeded[i] and now.places[i] != (0.0, 0.0) and (counts is None or counts[i])
            ]
            if len(sizes) > 4:
                self.scales[k] = max(LEAST_SCALE, self.scales[k] * NORMAL * median(sizes))

    def _look(self, numbers: Row) -> _Looked:
        scene = self.scene
        way = scene.way(numbers)
        places = scene.places(numbers, way)
        seen, marks = scene.seen(numbers, places, self.heights), scene.marks(numbers)
        a, b, c = self.scales
        along, across, width = [], [], []
        for frame, at, (du, dv), sd, width_sd in zip(scene.frames, seen, self.ways, self.sds, self.width_sds, strict=True):
            u, v = frame.u - at.u, frame.v - at.v
            along.append((u * du + v * dv) / (sd * a))
            across.append((u * dv - v * du) / (sd * b))
            width.append(0.0 if frame.width is None else (frame.width - at.width) / (width_sd * c))
        cut = (CUT * self.soft) ** 2
        cost, weights = 0.0, []
        for heeded, x, y, z in zip(self.heeded, along, across, width, strict=True):
            loose = 1 + (x * x + y * y + min(z * z, cut)) / cut
            weights.append(1 / (loose * loose) if heeded else 0.0)
            cost += cut * (1 - 1 / loose) if heeded else 0.0
        cost += sum(
            ((seen - told) / sd) ** 2
            for seen, told, sd in zip([x for mark in marks for x in mark[:2]], self.marked, self.mark_sds, strict=False)
        )
        cost += sum(((value - mean) / sd) ** 2 for value, (mean, sd) in zip(numbers, self.beliefs, strict=True))
        return _Looked(numbers, way, places, seen, marks, along, across, width, weights, cost)

    def _normal(self, now: _Looked, *alike: float) -> tuple[list[Row], Row]:
        """The normal equations about ``now``; frames count less where the errors of one and the next are ``alike``."""
        roots = [
            [sqrt(weight / like) / (sd * scale) for weight, sd in zip(now.weights, sds, strict=True)]
            for scale, like, sds in zip(self.scales, alike, (self.sds, self.sds, self.width_sds), strict=True)
        ]
        roots[2] = [root if known else 0.0 for root, known in zip(roots[2], self.known, strict=True)]
        columns = [self._column(now, j, roots) for j in range(NUMBERS)]
        off = [
            *(e * sqrt(w / alike[0]) for e, w in zip(now.along, now.weights, strict=True)),
            *(e * sqrt(w / alike[1]) for e, w in zip(now.across, now.weights, strict=True)),
            *(e * sqrt(w / alike[2]) for e, w in zip(now.width, now.weights, strict=True)),
            *(
                (told - seen) / sd
                for told, seen, sd in zip(self.marked, [x for mark in now.marks for x in mark[:2]], self.mark_sds, strict=False)
            ),
        ]
        gram = [[sumprod(columns[i], columns[j]) for j in range(i + 1)] for i in range(NUMBERS)]
        right = [sumprod(column, off) for column in columns]
        for i, (mean, sd) in enumerate(self.beliefs):
            gram[i][i] += 1 / sd**2
            right[i] += (mean - now.numbers[i]) / sd**2
        return gram, right

    def _column(self, now: _Looked, j: int, roots: Sequence[Row]) -> Row:
        """How all that is seen changes with a number."""
        scene, step = self.scene, STEPS[j]
        numbers = now.numbers.copy()
        numbers[j] += step
        way = scene.way(numbers) if j in OF_WAY else now.way
        places = scene.places(numbers, way) if j in OF_TIME else now.places
        seen = scene.seen(numbers, places, self.heights)
        along, across, width = [], [], []
        for at, before, (du, dv), a, b, c in zip(seen, now.seen, self.ways, *roots, strict=True):
            u, v = (at.u - before.u) / step, (at.v - before.v) / step
            along.append((u * du + v * dv) * a)
            across.append((u * dv - v * du) * b)
            width.append((at.width - before.width) / step * c)
        marks = zip(scene.marks(numbers), now.marks, self.mark_sds[::2], strict=False)
        moved = [x for at, before, sd in marks for x in ((at.u - before.u) / step / sd, (at.v - before.v) / step / sd)]
        return [*along, *across, *width, *moved]

    def _fitted(self) -> Fitted:
        now = self.now
        alike = [self._alike(off) for off in (now.along, now.across, now.width)]
        gram, _ = self._normal(now, *alike)
        return Fitted(now.numbers, inverse(cholesky(gram)), now.weights, now.places, now.way)

    def _alike(self, off: Sequence[float]) -> float:
        """How many frames tell as much as one would, were their errors apart from each other."""
        kept = [e for e, w, at in zip(off, self.now.weights, self.now.places, strict=True) if w > 0.2 and at != (0.0, 0.0)]
        total = sumprod(kept, kept)
        if len(kept) < 8 or not total:
            return 1.0
        shared = min(MOST_ALIKE, max(0.0, sumprod(kept[1:], kept[:-1]) / total))
        return (1 + shared) / (1 - shared)


def _way(seen: Sequence[Seen], i: int) -> tuple[float, float]:
    """Which way the ball goes in the picture, one long; up where it does not go."""
    before, after = seen[max(0, i - 1)], seen[min(len(seen) - 1, i + 1)]
    du, dv = after.u - before.u, after.v - before.v
    size = hypot(du, dv)
    return (du / size, dv / size) if size > STILL_PX else (0.0, -1.0)
