"""The plan of a session: the same question has the same plan.

Set-up comes first and a putt that must drop last; no drill comes twice; no skill takes more than two fifths of the time unless
the weights put it before all others; from twenty minutes on the tempo is in it.
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from math import inf
from typing import get_args

from pycore.drills.drill import Drill, Place, Skill, Thing

SKILLS: tuple[Skill, ...] = get_args(Skill)
LONG = 15  # minutes; from here on set-up and the last putt take three minutes in place of two
USUAL = 6  # minutes of a block; short enough to stay with it
MOST_SHARE = 0.4  # of a session for one skill
TEMPO, TEMPO_FROM = "tempo", 20  # the drill, and the minutes from which on it is in every plan


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
    drills : the catalogue; it holds for every role a drill that needs nothing, and main ones of three skills.
    """
    fitting = [drill for drill in drills if drill.fits(place, at_hand)]
    first, last = (_best([drill for drill in fitting if drill.role == role]) for role in ("set_up", "last"))
    ends = 3 if minutes >= LONG else 2
    most = _heaviest(weights)
    room = {skill: inf if skill == most else MOST_SHARE * minutes for skill in SKILLS}
    for end in (first, last):
        room[end.skill] -= ends
    main = [drill for drill in fitting if drill.role == "main"]
    blocks = [(first, ends), *_main(minutes - 2 * ends, main, weights, room, minutes >= TEMPO_FROM), (last, ends)]
    chosen = {drill.id for drill, _ in blocks}
    return [Block(drill, time, _why(drill, most), _instead(drill, time, fitting, chosen)) for drill, time in blocks]


def _heaviest(weights: Mapping[Skill, float]) -> Skill | None:
    """The one skill that needs work the most; None where two share that."""
    ranked = sorted(SKILLS, key=lambda skill: -weights[skill])
    return ranked[0] if weights[ranked[0]] > weights[ranked[1]] else None


def _best(drills: Sequence[Drill]) -> Drill:
    """The drill that makes the most of what is at hand."""
    return max(drills, key=lambda drill: (len(drill.needs), drill.id))


def _main(
    minutes: int, drills: Sequence[Drill], weights: Mapping[Skill, float], room: Mapping[Skill, float], tempo: bool
) -> list[tuple[Drill, int]]:
    """What fills ``minutes``: as many blocks as are usual, or the next number of them that comes out."""
    wanted = max(1, round(minutes / USUAL))
    for count in sorted(range(1, len(drills) + 1), key=lambda n: (abs(n - wanted), -n)):
        timed = _timed(minutes, _chosen(count, minutes, drills, weights, room, tempo), room)
        if timed:
            return timed
    raise ValueError(f"no drills fill {minutes} minutes")


def _chosen(
    count: int,
    minutes: int,
    drills: Sequence[Drill],
    weights: Mapping[Skill, float],
    room: Mapping[Skill, float],
    tempo: bool,
) -> list[Drill]:
    """So many drills: each next one from the skill that is furthest behind its weight, where that has time left."""
    even = not any(weights[drill.skill] for drill in drills)
    chosen: list[Drill] = [drill for drill in drills if tempo and drill.id == TEMPO]
    while len(chosen) < count:
        left = minutes - sum(drill.least for drill in chosen)
        could = [
            drill
            for drill in drills
            if drill not in chosen
            and drill.least <= min(left, room[drill.skill] - sum(d.least for d in chosen if d.skill == drill.skill))
        ]
        if not could:
            break
        given = {skill: sum(drill.skill == skill for drill in chosen) for skill in SKILLS}

        def behind(drill: Drill, given: Mapping[Skill, int] = given) -> float:
            # Sainte-Lague; what has no weight comes after all that has
            weight = 1.0 if even else weights[drill.skill]
            return -weight / (2 * given[drill.skill] + 1)

        chosen.append(
            min(
                could,
                key=lambda drill: (behind(drill), SKILLS.index(drill.skill), drill.id != TEMPO, -len(drill.needs), drill.id),
            )
        )
    # the tempo stands where its weight would have put it: after what needs more work
    return sorted(chosen, key=lambda drill: -(1.0 if even else weights[drill.skill])) if tempo else chosen


def _timed(minutes: int, drills: Sequence[Drill], room: Mapping[Skill, float]) -> list[tuple[Drill, int]]:
    """Each drill's minutes: its least, then minute by minute to the shortest that may still grow; empty where none may."""
    times = [drill.least for drill in drills]
    if sum(times) > minutes:
        return []
    while sum(times) < minutes:
        spent = {skill: sum(t for d, t in zip(drills, times, strict=True) if d.skill == skill) for skill in SKILLS}
        grows = [i for i, d in enumerate(drills) if times[i] < d.most and spent[d.skill] + 1 <= room[d.skill]]
        if not grows:
            return []
        times[min(grows, key=lambda i: times[i])] += 1
    return list(zip(drills, times, strict=True))


def _why(drill: Drill, most: Skill | None) -> str:
    return f"Needs work the most. {drill.why}" if drill.role == "main" and drill.skill == most else drill.why


def _instead(drill: Drill, minutes: int, fitting: Sequence[Drill], chosen: set[str]) -> tuple[Drill, ...]:
    """What could take its place and is not in the plan: of its own skill, so that the shares stay, or for an end any."""
    others = [
        other
        for other in fitting
        if other.id not in chosen
        and other.role == drill.role
        and (drill.role != "main" or (other.skill == drill.skill and other.least <= minutes <= other.most))
    ]
    return tuple(sorted(others, key=lambda other: other.id))
