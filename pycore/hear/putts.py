"""Which of the sounds are putts: a strike, and after a time that the floor allows what the ball met.

The row of putts that leaves the least unexplained is taken; then each is held against how the others sounded.
"""

from bisect import bisect_left
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import combinations
from math import log10, sqrt
from typing import Literal

from pycore.hear.clicks import Click
from pycore.hear.pace import MOMENT, Floor, Run, launch_of

Part = Literal["impact", "arrival", "other"]
Reason = Literal["lasting", "tone", "rebound", "alone"]

FASTEST = 6.0  # m/s; a putt of 30 m on a fast green leaves so
SLOWINGS = 0.09, 1.9  # m/s2; floors of 60 and of 3 ft
LEAST_S = 0.15  # from a strike to what it meets
NEXT_S = 0.6  # from the last that a ball met to the next strike
REBOUND_S = 1.5  # after it a ball may meet something again
QUIET_S = 1.0  # before a strike a player stands still
QUIET = 0.25  # worth of that
BETWEEN = 0.35  # cost of a click between strike and arrival, by its own worth
HALF_WORTH_DB = 20.0  # over the background; a louder click is worth more, up to 1
BEATS = 4  # in a row
EVEN_S = 0.004  # so evenly
CYCLE_S = 0.4, 14.0  # as a tempo has it
SAME_DB = 2.5  # and so alike, below 3 kHz
THUD = 0.8  # of a click's worth
LEAST_WORTH = 1.2  # of a putt
FAINTEST = 1e-4  # of full scale; a band with less in it is empty
ALIKE_DB = 7.0  # spread of how a strike or a mark sounds from putt to putt
TELLS = 3  # putts from which on there is a usual sound
FAR = 3.0  # spreads; farther off is another sound
UNLIKE = 1.5  # worth that a sound unlike the usual costs at most
IMPOSSIBLE = 9.0  # worth; more than any putt has
SHORT_BY = 0.3  # of the launch's square; a ball that would have stopped so far before the mark never met it
DOUBTFUL = 0.5  # worth that one costs which would have stopped just before it
LANE = 0.06  # of the floor's slowing; how far it may differ from putt to putt
CHOICES = 8  # arrivals tried for each mark


@dataclass(frozen=True)
class Putt:
    """A strike and what was met: each arrival with its mark's place in the list of marks."""

    strike: Click
    met: tuple[tuple[int, Click], ...]

    def run(self, marks: Sequence[float]) -> Run:
        """Its distances and times."""
        return Run(tuple((marks[m], click.at - self.strike.at) for m, click in self.met))

    @property
    def last(self) -> float:
        """When it met the last mark, s."""
        return self.met[-1][1].at


type Sounds = Callable[[Click, int | None], float | None]
"""How far a click is, in spreads, from how strikes (None) or a mark usually sound; None where that is not known."""


def row(sounds: Sequence[Click], marks: Sequence[float], floor: Floor | None, friction: float | None) -> list[Putt]:
    """The putts among ``sounds``; with no ``floor`` only those that met two marks or more."""
    clicks = [each for each in sounds if each.kind == "click" or (each.kind == "tone" and not each.beaten)]
    putts = _best(clicks, marks, floor, friction, lambda click, mark: None)
    if len(putts) < TELLS:
        return putts
    putts = _best(clicks, marks, floor, friction, _usual(putts))
    usual = _usual(putts)
    return [putt for putt in putts if all((usual(c, m) or 0) <= FAR for c, m in _parts(putt))]


def without_beat(sounds: Sequence[Click]) -> list[Click]:
    """The sounds, with what comes back like a clock's taken out of a putt's reach.

    A row of sounds that are mostly notes tells the clock; what keeps time with it belongs to it. By itself a row of clicks is
    none: a player may strike evenly.
    """
    short = [each for each in sounds if each.kind != "lasting"]
    times = [each.at for each in short]

    def like(first: Click, at: float) -> Click | None:
        k = bisect_left(times, at - EVEN_S)
        while k < len(times) and times[k] <= at + EVEN_S:
            if all(abs(a - b) < SAME_DB for a, b in zip(_colour(first)[:-1], _colour(short[k])[:-1], strict=True)):
                return short[k]
            k += 1
        return None

    rows: list[tuple[float, list[Click]]] = []
    for i, first in enumerate(short):
        for second in short[i + 1 :]:
            cycle = second.at - first.at
            if cycle > CYCLE_S[1]:
                break
            row = [like(first, first.at + n * cycle) for n in range(BEATS)] if cycle >= CYCLE_S[0] else [None]
            if all(row):
                rows.append((cycle, [each for each in row if each]))
    clocks = [cycle for cycle, row in rows if sum(each.kind == "tone" for each in row) > BEATS / 2]
    beaten = {each.at for cycle, row in rows if any(abs(cycle - clock) < EVEN_S for clock in clocks) for each in row}
    return [replace(each, kind="tone", beaten=True) if each.at in beaten else each for each in sounds]


def _parts(putt: Putt) -> Iterator[tuple[Click, int | None]]:
    yield putt.strike, None
    for mark, click in putt.met:
        yield click, mark


def _usual(putts: Sequence[Putt]) -> Sounds:
    heard: dict[int | None, list[list[float]]] = {}
    for putt in putts:
        for click, mark in _parts(putt):
            heard.setdefault(mark, []).append(_colour(click))
    middles = {
        mark: [sorted(part)[len(part) // 2] for part in zip(*colours, strict=True)]
        for mark, colours in heard.items()
        if len(colours) >= TELLS
    }

    def far(click: Click, mark: int | None) -> float | None:
        middle = middles.get(mark)
        if middle is None:
            return None
        own = _colour(click)
        return sqrt(sum((a - b) ** 2 for a, b in zip(own, middle, strict=True)) / len(own)) / ALIKE_DB

    return far


def _colour(click: Click) -> list[float]:
    """Its peaks, dB."""
    return [20 * log10(max(peak, FAINTEST)) for peak in click.peaks]


def _worth(click: Click) -> float:
    """From 0 to 1; what is heard as a note may still be a thud."""
    return click.over / (click.over + HALF_WORTH_DB) * (1.0 if click.kind == "click" else THUD)


def _best(
    clicks: Sequence[Click], marks: Sequence[float], floor: Floor | None, friction: float | None, sounds: Sounds
) -> list[Putt]:
    """The row of putts, one after another, that is worth the most."""
    best: list[tuple[float, Putt | None, int]] = [(0.0, None, 0)] * (len(clicks) + 1)
    for i in range(len(clicks) - 1, -1, -1):
        best[i] = (best[i + 1][0], None, i + 1)
        if not clicks[i].strike or clicks[i].kind != "click":
            continue
        for putt in _putts(clicks, i, marks, floor):
            worth = _worth_of(putt, clicks, i, marks, floor, friction, sounds)
            if worth < LEAST_WORTH:
                continue
            following = next((k for k in range(i + 1, len(clicks)) if clicks[k].at > putt.last + NEXT_S), len(clicks))
            if worth + best[following][0] > best[i][0]:
                best[i] = (worth + best[following][0], putt, following)
    putts, i = [], 0
    while i < len(clicks):
        _, chosen, i = best[i]
        if chosen:
            putts.append(chosen)
    return putts


def _putts(clicks: Sequence[Click], i: int, marks: Sequence[float], floor: Floor | None) -> Iterator[Putt]:
    """Every putt that ``clicks[i]`` could have begun."""
    start = clicks[i].at
    slowest = max(SLOWINGS[0], floor.slowing * (1 - LANE) - 2 * floor.sd) if floor else SLOWINGS[0]
    could: list[list[tuple[int, Click]]] = []
    for m, mark in enumerate(marks):
        since, until = start + max(LEAST_S, mark / FASTEST), start + sqrt(2 * mark / slowest)
        near = [click for click in clicks[i + 1 :] if since <= click.at <= until]
        could.append([(m, click) for click in near[:CHOICES]])
    for count in range(len(marks), 0 if floor else 1, -1):
        for chosen in combinations(range(len(marks)), count):
            yield from (Putt(clicks[i], met) for met in _rising([could[m] for m in chosen]))


def _rising(choices: Sequence[Sequence[tuple[int, Click]]]) -> Iterator[tuple[tuple[int, Click], ...]]:
    if not choices:
        yield ()
        return
    for first in choices[0]:
        for rest in _rising(choices[1:]):
            if not rest or rest[0][1].at > first[1].at + LEAST_S / 2:
                yield (first, *rest)


def _worth_of(
    putt: Putt,
    clicks: Sequence[Click],
    i: int,
    marks: Sequence[float],
    floor: Floor | None,
    friction: float | None,
    sounds: Sounds,
) -> float:
    used = {click.at for _, click in putt.met}
    worth = _worth(putt.strike) + sum(_worth(click) for _, click in putt.met)
    if not i or clicks[i - 1].at < putt.strike.at - QUIET_S:
        worth += QUIET
    between = (click for click in clicks[i + 1 :] if click.at < putt.last and click.at not in used)
    worth -= BETWEEN * sum(_worth(click) for click in between if click.kind == "click")
    for click, mark in _parts(putt):
        off = sounds(click, mark)
        if off is not None:
            worth -= min(UNLIKE, off * off / 4)
    return worth - _strain(putt.run(marks), floor, friction)


def _strain(run: Run, floor: Floor | None, friction: float | None) -> float:
    """How badly the moments of two marks or more fit a ball that rolls on this floor; 0 for a single one."""
    if len(run.met) < 2:
        return 0.0
    (d1, t1), (d2, t2) = run.met[0], run.met[-1]
    slowing = 2 * (d1 / t1 - d2 / t2) / (t2 - t1)
    speed = d1 / t1 + slowing * t1 / 2
    if not SLOWINGS[0] / 2 <= slowing <= SLOWINGS[1] or speed <= slowing * t2:
        return IMPOSSIBLE
    if floor is None:
        return 0.0
    expected = launch_of(Run(run.met[:1]), floor.slowing, friction)
    left = expected * expected - 2 * floor.slowing * d2
    if left <= 0:
        return IMPOSSIBLE if left < -SHORT_BY * expected * expected else DOUBTFUL
    # a moment is as unsure as the slowing makes the way from the first mark to this one
    then = t1 + (d2 - d1) / ((expected - floor.slowing * t1 + sqrt(left)) / 2)
    unsure = sqrt((3 * MOMENT) ** 2 + ((then - t1) * (floor.sd / floor.slowing + LANE) * 0.5) ** 2)
    return min(IMPOSSIBLE, ((t2 - then) / unsure) ** 2 / 8)


def why_left(click: Click, putts: Sequence[Putt]) -> Reason:
    """Why a sound belongs to no putt."""
    if click.kind != "click":
        return click.kind
    if any(0 < click.at - putt.last <= REBOUND_S for putt in putts):
        return "rebound"
    return "alone"
