"""The days before a first tee time: what is practised when, and for how long."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, timedelta

from pycore.drills.drill import Place, Skill

LONGEST = 7  # days before
LIGHT = 15  # minutes of the day before, and of the warm-up
USUAL = 30  # minutes of the other days


@dataclass(frozen=True)
class Session:
    """One session of a day: where, how long, what weighs in it, and what it is for."""

    name: str
    place: Place
    minutes: int
    weights: Mapping[Skill, float]
    why: str


def _weights(**heavy: float) -> dict[Skill, float]:
    skills: tuple[Skill, ...] = ("alignment", "start_line", "pace", "reading", "tempo")
    return {skill: heavy.get(skill, 1.0) for skill in skills}


GREENS = Session(
    "Greens", "green", USUAL, _weights(reading=4.0, pace=3.0), "Measure the greens' speed and walk one green before all else."
)
LAG = Session("Long putts", "green", USUAL, _weights(pace=4.0), "With the speed known, length comes before line.")
SHORT = Session(
    "Short putts", "green", USUAL, _weights(start_line=4.0, alignment=3.0), "Line comes last: the putts that have to drop."
)
EVENING = Session("In the room", "room", 20, _weights(tempo=3.0), "The same tempo in a strange room, before sleep.")
DAY_BEFORE = Session("Light", "green", LIGHT, _weights(tempo=3.0), "Nothing new: a few putts of each length, then rest.")
WARM_UP = Session("Warm-up", "green", LIGHT, _weights(pace=3.0), "The day's speed first: it may have changed overnight.")


def week(first_tee: date, days_before: int) -> list[tuple[date, list[Session]]]:
    """Each day from ``days_before`` (0 to 7) to the first round, with its sessions: speed and survey first, then long putts,
    then short ones; light the day before. Common practice, no measured order.
    """
    plan: list[tuple[date, list[Session]]] = []
    for left in range(days_before, -1, -1):
        since = days_before - left
        if left == 0:
            sessions = [WARM_UP]
        elif left == 1:
            # who arrives the day before still has to learn the speed
            sessions = [GREENS if since == 0 else DAY_BEFORE]
        else:
            sessions = [(GREENS, LAG, SHORT)[since] if since < 3 else (LAG, SHORT)[(since - 3) % 2], EVENING]
        plan.append((first_tee - timedelta(days=left), sessions))
    return plan
