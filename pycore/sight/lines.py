"""The three lines of a putt: the one that was read, the softest with the most borrow, the firmest with the least."""

from dataclasses import dataclass

from pycore.putt.putt import Putt
from pycore.putt.roll import Roll
from pycore.putt.solve import Read, solve
from pycore.putt.window import window


@dataclass(frozen=True)
class Lines:
    """A putt, its read, and the high and low lines; None where the hole takes no ball near the pace that was read."""

    read: Read
    putt: Putt
    high: Roll | None
    low: Roll | None


def lines(putt: Putt) -> Lines | None:
    """The lines of ``putt``, or None where there is no such putt."""
    found = solve(putt)
    if found is None:
        return None
    holes = window(putt, found)
    high, low = (putt.roll(*start) for start in holes.extremes(found.aim)) if holes else (None, None)
    return Lines(found, putt, high, low)
