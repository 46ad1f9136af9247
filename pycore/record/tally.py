"""What is counted: make share by distance, leaves, weeks, and what has changed beyond chance."""

from collections.abc import Generator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from itertools import pairwise
from math import hypot
from typing import Literal

from pycore.record.findings import lines_suffice, skills
from pycore.record.fixed_set import Name
from pycore.record.logged import Evidence, Logged, Tallied, Unseen
from pycore.record.player import Skill
from pycore.record.published import Yardstick, expected
from pycore.stats.intervals import Estimate, Interval, Z, mean, newcombe, wilson
from pycore.units import FOOT

BANDS_FT = (0.0, 3.0, 5.0, 8.0, 12.0, 20.0, 40.0, 100.0)  # ft; ends of the bands in which make share is told: our own choice
RECENT = timedelta(days=28)
EARLIER = 100  # putts before the last weeks that are enough to know what was
FEWEST = 20  # putts on either side of a change, below which none is looked for
BEYOND = 2.73  # standard errors; 95 % for eight differences at once (Bonferroni)

What = Literal["bias", "sd"]


@dataclass(frozen=True)
class Share:
    """Putts made of those tried."""

    made: int
    tries: int

    @property
    def interval(self) -> Interval:
        """Wilson's 95 % interval of the share."""
        return wilson(self.made, self.tries)


@dataclass(frozen=True)
class Change:
    """A bias or spread before the last weeks and in them; ``beyond_chance`` says whether they differ."""

    skill: Name
    what: What
    before: Estimate
    now: Estimate
    beyond_chance: bool


def _share(putts: Sequence[Tallied]) -> Share:
    return Share(sum(putt.stop is None for putt in putts), len(putts))


@dataclass(frozen=True)
class Group:
    """Putts taken together: what was made, the share the yardstick makes from the same places, the mean distance (m)."""

    share: Share
    usual: float
    mean: float


def _group(putts: Sequence[Tallied], against: Yardstick) -> Group:
    n = len(putts)
    usual = sum(expected(each.distance, against).one for each in putts) / n
    return Group(_share(putts), usual, sum(each.distance for each in putts) / n)


def by_distance(putts: Sequence[Tallied], against: Yardstick) -> list[tuple[float, float, Group]]:
    """Make share in each band of distance (m, m) in which something was tried."""
    edges = [edge * FOOT for edge in BANDS_FT]
    bands = [(low, high, [each for each in putts if low <= each.distance < high]) for low, high in pairwise(edges)]
    return [(low, high, _group(inside, against)) for low, high, inside in bands if inside]


def by_quarter(putts: Sequence[Tallied], against: Yardstick) -> list[tuple[date, Group]]:
    """Make share in each quarter of a year, by its first day."""
    quarters: dict[date, list[Tallied]] = {}
    for each in putts:
        day = each.at.date()
        quarters.setdefault(date(day.year, day.month - (day.month - 1) % 3, 1), []).append(each)
    return [(first, _group(quarters[first], against)) for first in sorted(quarters)]


def by_week(putts: Sequence[Tallied]) -> list[tuple[date, Share]]:
    """Make share in each week, by its Monday."""
    weeks: dict[date, list[Tallied]] = {}
    for each in putts:
        day = each.at.date()
        weeks.setdefault(day - timedelta(days=day.weekday()), []).append(each)
    return [(monday, _share(weeks[monday])) for monday in sorted(weeks)]


def leaves(putts: Sequence[Tallied]) -> tuple[Share, Estimate | None]:
    """How many misses of those known stopped short of the hole, and how far misses stop beyond the pace wanted, along the
    line (m)."""
    missed = [(each.stop.real, each.past) for each in putts if isinstance(each.stop, complex)]
    lengths = [each.stop.length for each in putts if isinstance(each.stop, Unseen) and each.stop.length]
    beyond = [along - past for along, past in missed]
    short = sum(along < 0 for along, _ in missed) + lengths.count("short")
    return Share(short, len(missed) + len(lengths)), mean(beyond) if len(beyond) > 1 else None


def made_change(putts: Sequence[Tallied], until: datetime) -> tuple[Share, Share, Interval] | None:
    """Make share before the last four weeks and in them, and the 95 % interval of how much larger it has become."""
    since = until - RECENT
    before, now = _share([e for e in putts if e.at < since]), _share([e for e in putts if e.at >= since])
    if min(before.tries, now.tries) < FEWEST:
        return None
    return before, now, newcombe(now.made, now.tries, before.made, before.tries)


def wanted_before(older: Sequence[Logged], latest: Sequence[Logged]) -> list[Logged]:
    """The ``older`` putts that have to be looked at too, if what came before the last four weeks is to be known."""
    if not older:
        return []
    since = latest[-1].at - RECENT
    missing = EARLIER - sum(each.at < since for each in latest)
    return [each for each in older if each.at < since][-missing:] if missing > 0 else []


def changes(
    older: Sequence[Evidence], found: Sequence[Evidence], known: Mapping[Name, Skill], until: datetime, share: float
) -> Generator[float, None, list[Change]]:
    """Skills of the last four weeks against those before. ``found`` are the latest putts, ``known`` the skills behind them,
    ``older`` some before them. Yields ``share``, how much of the findings is done, between two parts that take long."""
    since = until - RECENT
    now = [e for e in found if e.logged.at >= since]
    before = [*older, *(e for e in found if e.logged.at < since)]
    if min(len(before), len(now)) < FEWEST:
        return []
    with_lines = lines_suffice(before) and lines_suffice(now)
    same = len(now) == len(found) and with_lines == lines_suffice(found)
    old = yield from skills(before, with_lines, share)
    yield share
    new = known if same else (yield from skills(now, with_lines, share))
    return [
        change
        for name in old
        if name in new
        for change in (
            _change(name, "bias", old[name].bias, new[name].bias),
            _change(name, "sd", old[name].sd, new[name].sd),
        )
    ]


def _change(skill: Name, what: What, before: Estimate, now: Estimate) -> Change:
    error = hypot(before.high - before.low, now.high - now.low) / (2 * Z)
    return Change(skill, what, before, now, abs(now.value - before.value) > BEYOND * error)
