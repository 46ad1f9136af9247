"""A putt as it was logged, and what it says of the player."""

from cmath import rect
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from functools import lru_cache
from math import hypot, inf, radians
from typing import Literal, NamedTuple

from pycore.constants import HOLE_RADIUS
from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.putt.solve import Read, near, solve
from pycore.putt.strike import Strike
from pycore.record.opening import Opening, opening
from pycore.record.player import Coarse, Holed, Laid, Miss, Passed, Strikes
from pycore.record.strike import strike_to
from pycore.record.terms import Given

SHARP_START, SHARP_LAUNCH = radians(0.3), 0.03  # the tour's spreads are 0.6 degrees and 5 % of the roll or more
FOLLOWED = 1e-5  # m and m/s in a step of a roll; no finish is logged as exactly as a tenth of a millimetre
NUDGE = 0.001  # rise over run; a tilt that shows how much tilt moves a putt
# Rise over run; a slope logged as less is off by a share of this: those that were logged too low are among them. Assumed
FLAT = 0.01
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
    A strike that was ``measured`` needs no finish. ``finish_sd`` is how sure it is where it stopped, m in each direction,
    ``tilt_sd`` how sure a tilt is that was measured, each of its parts.
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
    finish_sd: float = 0.0
    tilt_sd: float = 0.0

    @property
    def slope(self) -> float:
        """The tilt that does most nearly what its green does, rise over run."""
        return self.putt.surface.mean(self.putt.distance).slope


class Tallied(NamedTuple):
    """What is counted of a putt: when and from where (m) it was struck, where it stopped, and how far past it was meant (m)."""

    at: datetime
    distance: float
    stop: complex | Unseen | None
    past: float


@dataclass(frozen=True)
class Evidence:
    """What a logged putt says: of start and roll (from the line meant), of the ball's line, and of the share of break
    allowed, less one; None where it says nothing."""

    logged: Logged
    strike: Miss | Laid
    reading: float | None


def evidence(logged: Logged, step: float = 0.0) -> Evidence | str:
    """What the putt says, its finish told in steps of so much (m); or why it says nothing.

    Steps of a distance need no such care: how far a ball ran beyond the pace meant is told from the hole, wherever that was.
    """
    putt = logged.putt
    found = _read(*_key(putt))
    if found is None:
        return "no ball stops at this hole as the green is given"
    reading = _reading(logged, found)
    meant = found.aim if logged.aim is None else logged.aim
    given = _given(*_key(putt))
    if logged.read == "own" and logged.aim is not None:
        # the start is measured from the player's own read; any other may be off by a share of the break
        given = given._replace(aim=0.0)
    if logged.measured and logged.measured.tells:
        # what was seen of the strike itself no tilt moves; how sure it is, is its own
        seen = logged.measured
        alone = Given(given.aim, blur=seen.start_sd, stretch=2 * seen.launch_sd)
        return Evidence(logged, Miss(seen.start - meant, (seen.launch / found.launch) ** 2 - 1, alone), reading)
    rolled = putt.distance + putt.past
    off = logged.tilt_sd / hypot(logged.slope, FLAT)
    given = given._replace(blur=off * given.aside, stretch=off * given.along)
    stop = logged.stop
    if logged.finish_sd and isinstance(stop, complex) and abs(stop) < HOLE_RADIUS:
        stop = Unseen()  # seen so unsurely it may have stopped anywhere about the hole
    within = 0.0 if logged.finish_sd else step / 2 / rolled
    laid = bool(within) or not isinstance(stop, complex)
    window = _opening(*_key(putt)) if laid else None
    if laid and window is None:
        return "no pace that the hole takes could be found"
    if window and not isinstance(stop, complex):
        if stop:
            return Evidence(logged, Passed(window, meant - found.aim, given, stop.side, stop.length), reading)
        least, most = (0.0 if logged.gate == "left" else -inf), (0.0 if logged.gate == "right" else inf)
        return Evidence(logged, Holed(window, meant - found.aim, least, most, given), reading)
    assert isinstance(stop, complex)
    if abs(stop) < HOLE_RADIUS and not within:
        return "a ball that stops over the hole is holed; mend what was logged"
    struck = _strike(*_key(putt), stop)
    if struck is None:
        return "no ball stops there as the green is given"
    start, length = struck.aim - meant, (struck.launch / found.launch) ** 2 - 1
    if window:
        return Evidence(logged, Coarse(start, length, within, window, meant - found.aim, given), reading)
    unsure = logged.finish_sd / rolled
    given = given._replace(blur=hypot(given.blur, unsure), stretch=hypot(given.stretch, unsure))
    return Evidence(logged, Miss(start, length, given), reading)


def off_the_ball_line(each: Evidence) -> Miss | Laid:
    """The errors of a putt whose ball's line is known, measured from that line."""
    line = each.logged.line_error
    assert line is not None
    strike = each.strike
    if isinstance(strike, Miss):
        return strike._replace(start=strike.start - line)
    if isinstance(strike, Coarse):
        return strike._replace(start=strike.start - line, meant=strike.meant + line)
    if isinstance(strike, Passed):
        return strike._replace(meant=strike.meant + line)
    return Holed(strike.opening, strike.meant + line, strike.least - line, strike.most - line, strike.given)


def partition(strikes: Sequence[Miss | Laid]) -> Strikes:
    """Those that are known, and those that are known to have lain somewhere."""
    return [each for each in strikes if isinstance(each, Miss)], [each for each in strikes if not isinstance(each, Miss)]


def _key(putt: Putt) -> tuple[float, tuple[Station, ...], float, float]:
    assert isinstance(putt.surface, Surface)  # a kept putt has stations
    return putt.distance, putt.surface.stations, putt.stimp_ft, putt.past


# who practises one putt many times has it solved once
@lru_cache(maxsize=1024)
def _read(distance: float, stations: tuple[Station, ...], stimp_ft: float, past: float) -> Read | None:
    return solve(Putt(distance, Surface(*stations), stimp_ft, past, FOLLOWED))


@lru_cache(maxsize=1024)
def _opening(distance: float, stations: tuple[Station, ...], stimp_ft: float, past: float) -> Opening | None:
    found = _read(distance, stations, stimp_ft, past)
    return opening(Putt(distance, Surface(*stations), stimp_ft, past, FOLLOWED), found) if found else None


@lru_cache(maxsize=1024)
def _strike(distance: float, stations: tuple[Station, ...], stimp_ft: float, past: float, stop: complex) -> Strike | None:
    found = _read(distance, stations, stimp_ft, past)
    putt = Putt(distance, Surface(*stations), stimp_ft, past, FOLLOWED)
    return strike_to(putt, distance + stop.real, stop.imag, found.strike.slopes if found else None)


@lru_cache(maxsize=1024)
def _given(distance: float, stations: tuple[Station, ...], stimp_ft: float, past: float) -> Given:
    """By how much its tilt moves what the putt needs, to first order about the tilt as logged."""
    putt = Putt(distance, Surface(*stations), stimp_ft, past, FOLLOWED)
    found = _read(distance, stations, stimp_ft, past)
    assert found
    mean = putt.surface.mean(distance)
    moves = []
    for way in (NUDGE, 1j * NUDGE):
        # where the steeper green holds no ball the gentler one does
        for sign in (1, -1):
            moved = near(replace(putt, surface=putt.surface.tilted(sign * way)), found.strike)
            if moved:
                moves.append((sign * (moved.aim - found.aim) / NUDGE, sign * ((moved.launch / found.launch) ** 2 - 1) / NUDGE))
                break
        else:
            return Given(found.aim)
    (aim_along, roll_along), (aim_aside, roll_aside) = moves
    tilt, off = rect(mean.slope, mean.downhill), hypot(mean.slope, FLAT)
    return Given(
        found.aim,
        tilt.real * roll_along + tilt.imag * roll_aside,
        off * hypot(aim_along, aim_aside),
        off * hypot(roll_along, roll_aside),
    )


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
