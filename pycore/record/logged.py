"""A putt as it was logged, and what it says of the player."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from functools import lru_cache
from math import inf, radians
from typing import Literal

from pycore.constants import HOLE_RADIUS
from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.putt.solve import Read, solve
from pycore.record.opening import Opening, opening
from pycore.record.player import Holed, Miss, Passed
from pycore.record.strike import strike_to

SHARP_START, SHARP_LAUNCH = radians(0.3), 0.03  # the tour's spreads are 0.6 degrees and 5 % of the roll or more
BREAKS = radians(0.5)  # aim; a straighter putt says nothing of the share of break allowed

Gate = Literal["left", "right", "clean"]
Source = Literal["app", "own"]


@dataclass(frozen=True)
class Unseen:
    """A miss whose finish was not logged: on which side of the hole it stopped, and short or long, where known."""

    side: Literal["left", "right"] | None = None
    length: Literal["short", "long"] | None = None


@dataclass(frozen=True)
class Measured:
    """Start (rad, from the ball-to-hole line) and launch (m/s) as they were seen, with standard deviations: rad, and a
    fraction of the launch."""

    start: float
    start_sd: float
    launch: float
    launch_sd: float

    @property
    def tells(self) -> bool:
        """Whether it tells more than a finish would: well under what any player's starts and rolls are spread."""
        return self.start_sd < SHARP_START and self.launch_sd < SHARP_LAUNCH


@dataclass(frozen=True)
class Logged:
    """One putt: ``aim`` is the start line meant (rad), ``stop`` where it stopped from the hole's centre (m), None if holed.

    ``line_error`` is how far left of the line meant the ball's line lay (rad), ``felt`` the slope felt (rise over run).
    ``read`` says whose aim it was, None if that is not known; an ``aim`` that is not known is taken to be the one needed.
    A strike that was ``measured`` needs no finish.
    """

    id: str
    at: datetime
    putt: Putt
    aim: float | None
    stop: complex | Unseen | None
    gate: Gate | None = None
    line_error: float | None = None
    felt: float | None = None
    read: Source | None = None
    measured: Measured | None = None


@dataclass(frozen=True)
class Evidence:
    """What a logged putt says: of start and roll (from the line meant), of the ball's line, and of the share of break
    allowed, less one; None where it says nothing."""

    logged: Logged
    strike: Miss | Holed | Passed
    reading: float | None


def evidence(logged: Logged) -> Evidence | str:
    """What the putt says, or why it says nothing."""
    putt = logged.putt
    found = _read(*_key(putt))
    if found is None:
        return "no ball stops at this hole as the green is given"
    reading = _reading(logged, found)
    meant = found.aim if logged.aim is None else logged.aim
    # of a player's own read the start is measured from it; of any other it may be off by a share of the break
    share = 0.0 if logged.read == "own" and logged.aim is not None else found.aim
    if logged.measured and logged.measured.tells:
        seen = logged.measured
        return Evidence(logged, Miss(seen.start - meant, (seen.launch / found.launch) ** 2 - 1, share), reading)
    if logged.stop is None or isinstance(logged.stop, Unseen):
        window = _opening(*_key(putt))
        if window is None:
            return "no pace that the hole takes could be found"
        if logged.stop:
            return Evidence(logged, Passed(window, meant - found.aim, share, logged.stop.side, logged.stop.length), reading)
        least, most = (0.0 if logged.gate == "left" else -inf), (0.0 if logged.gate == "right" else inf)
        return Evidence(logged, Holed(window, meant - found.aim, least, most, share), reading)
    if abs(logged.stop) < HOLE_RADIUS:
        return "a ball that stops over the hole is holed; mend what was logged"
    struck = strike_to(putt, putt.distance + logged.stop.real, logged.stop.imag)
    if struck is None:
        return "no ball stops there as the green is given"
    return Evidence(logged, Miss(struck.aim - meant, (struck.launch / found.launch) ** 2 - 1, share), reading)


def off_the_ball_line(each: Evidence) -> Miss | Holed | Passed:
    """The errors of a putt whose ball's line is known, measured from that line."""
    line = each.logged.line_error
    assert line is not None
    strike = each.strike
    if isinstance(strike, Miss):
        return Miss(strike.start - line, strike.length, strike.aim)
    if isinstance(strike, Passed):
        return strike._replace(meant=strike.meant + line)
    return Holed(strike.opening, strike.meant + line, strike.least - line, strike.most - line, strike.aim)


def partition(strikes: Sequence[Miss | Holed | Passed]) -> tuple[list[Miss], list[Holed | Passed]]:
    """Misses and holed putts."""
    return [each for each in strikes if isinstance(each, Miss)], [each for each in strikes if not isinstance(each, Miss)]


def _key(putt: Putt) -> tuple[float, tuple[Station, ...], float, float]:
    assert isinstance(putt.surface, Surface)  # a kept putt has stations
    return putt.distance, putt.surface.stations, putt.stimp_ft, putt.past


# who practises one putt many times has it solved once
@lru_cache(maxsize=1024)
def _read(distance: float, stations: tuple[Station, ...], stimp_ft: float, past: float) -> Read | None:
    return solve(Putt(distance, Surface(*stations), stimp_ft, past))


@lru_cache(maxsize=1024)
def _opening(distance: float, stations: tuple[Station, ...], stimp_ft: float, past: float) -> Opening | None:
    found = _read(distance, stations, stimp_ft, past)
    return opening(Putt(distance, Surface(*stations), stimp_ft, past), found) if found else None


def _reading(logged: Logged, found: Read) -> float | None:
    if abs(found.aim) < BREAKS:
        return None
    if logged.read == "own" and logged.aim is not None:
        return logged.aim / found.aim - 1
    surface = logged.putt.surface
    if logged.felt is None or not isinstance(surface, Surface) or not surface.is_plane:
        return None
    felt = solve(replace(logged.putt, surface=Surface(replace(surface.stations[0], slope=logged.felt))))
    return felt.aim / found.aim - 1 if felt else None
