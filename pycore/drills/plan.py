"""The plan of a session: the same question has the same plan."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import get_args

from pycore.drills.drill import Drill, Place, Skill, Thing

SKILLS: tuple[Skill, ...] = get_args(Skill)
LONG = 15  # minutes; from here on set-up and the last putt take three minutes in place of two
USUAL = 6  # minutes of a block; short enough to stay with it


@dataclass(frozen=True)
class Block:
    """A drill, its minutes, and why it stands there; ``instead`` could be done in its place."""

    drill: Drill
    minutes: int
    why: str
    instead: tuple[Drill, ...]


def plan(
    minutes: int, place: Place, at_hand: frozenset[Thing], weights: Mapping[Skill, float], drills: Iterable[Drill]
) -> list[Block]:
    """Set-up, then what needs work the most, then a putt that must be holed: to the minute, with what is at hand.

    Parameters
    ----------
    minutes : the whole session, 10 or more.
    weights : how much work each of ``SKILLS`` needs; any scale, all nought for even.
    drills : the catalogue; it holds for every role a drill that needs nothing.
    """
    fitting = [drill for drill in drills if drill.fits(place, at_hand)]
    first, last = (_best([drill for drill in fitting if drill.role == role]) for role in ("set_up", "last"))
    ends = 3 if minutes >= LONG else 2
    main = [drill for drill in fitting if drill.role == "main"]
    chosen = _chosen(minutes - 2 * ends, main, weights)
    heaviest = max(weights, key=weights.__getitem__)
    most = heaviest if len(set(weights.values())) > 1 else None
    blocks = [(first, ends), *_timed(minutes - 2 * ends, chosen), (last, ends)]
    return [Block(drill, time, _why(drill, most), _instead(drill, time, fitting)) for drill, time in blocks]


def _best(drills: Sequence[Drill]) -> Drill:
    """The drill that makes the most of what is at hand."""
    return max(drills, key=lambda drill: (len(drill.needs), drill.id))


def _chosen(minutes: int, drills: Sequence[Drill], weights: Mapping[Skill, float]) -> list[Drill]:
    """Drills for ``minutes``: each next one from the skill that is furthest behind its weight, fresh ones first."""
    there = [skill for skill in SKILLS if any(drill.skill == skill for drill in drills)]
    weighed = {skill: weights[skill] for skill in there}
    if not any(weighed.values()):
        weighed = dict.fromkeys(there, 1.0)
    chosen: list[Drill] = []
    wanted = max(1, round(minutes / USUAL))
    while len(chosen) < wanted or sum(drill.most for drill in chosen) < minutes:
        given = {skill: sum(drill.skill == skill for drill in chosen) for skill in there}
        ranked = sorted(there, key=lambda skill: -weighed[skill] / (2 * given[skill] + 1))  # Sainte-Lague
        skill = next((skill for skill in ranked if weighed[skill] > 0), there[0])
        before = chosen[-1:]
        candidates = [drill for drill in drills if drill.skill == skill] if len(there) > 1 else list(drills)
        chosen.append(min(candidates, key=lambda drill: ([drill] == before, chosen.count(drill), -len(drill.needs), drill.id)))
    while len(chosen) > 1 and sum(drill.least for drill in chosen) > minutes:
        chosen.pop()
    return chosen


def _timed(minutes: int, drills: Sequence[Drill]) -> list[tuple[Drill, int]]:
    """Each drill's minutes: its least, then minute by minute to the shortest that may still grow."""
    times = [drill.least for drill in drills]
    while sum(times) < minutes:
        grows = [i for i, drill in enumerate(drills) if times[i] < drill.most]
        times[min(grows, key=lambda i: times[i])] += 1
    return list(zip(drills, times, strict=True))


def _why(drill: Drill, most: Skill | None) -> str:
    return f"Needs work the most. {drill.why}" if drill.role == "main" and drill.skill == most else drill.why


def _instead(drill: Drill, minutes: int, fitting: Sequence[Drill]) -> tuple[Drill, ...]:
    others = [
        other
        for other in fitting
        if other is not drill and other.role == drill.role and (drill.role != "main" or other.least <= minutes <= other.most)
    ]
    return tuple(sorted(others, key=lambda other: (other.skill != drill.skill, other.id)))
