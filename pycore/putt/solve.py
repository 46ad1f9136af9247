"""The read: where to start the ball and how hard."""

from cmath import phase, rect
from collections.abc import Callable
from dataclasses import dataclass, replace
from math import copysign, cos, exp, hypot, inf, log, pi, sin

from pycore.green.surface import Surface
from pycore.putt.putt import Putt
from pycore.putt.roll import PlaneRoll, Roll, State
from pycore.putt.strike import Strike, corrected
from pycore.roots import zero

SHARE = 1e-13  # of the speed, and of half a turn: how exactly a plane putt is solved
STEEPEST_START = 0.9  # of rho; the steepest plane from which the search for any other putt starts
FINEST_BEND = 0.03  # of the way from plane to green; where not even that can be followed there is no putt
FINEST_PACE = 0.1  # of the way from one pace to another
ROUGH = 1e-5  # m and m/s in a step; on the way there, and where it need only be told how reads differ
FIRMEST = 1.0  # m past the hole; the firmest pace that is tried where a softer one has no answer


@dataclass(frozen=True)
class Read:
    """The strike of a putt, the ball's state at the hole's centre, and the roll, hole covered."""

    strike: Strike
    hole: State
    roll: Roll

    @property
    def aim(self) -> float:
        """Start line, rad left of the hole."""
        return self.strike.aim

    @property
    def launch(self) -> float:
        """Launch speed, m/s."""
        return self.strike.launch


@dataclass(frozen=True)
class NoPutt:
    """No ball comes over the hole and stops ``past`` beyond it. One that stops ``instead`` (m) beyond does, if any."""

    instead: float | None


type Reading = Read | NoPutt
type Solution = Read | None


def read(putt: Putt) -> Reading:
    """Aim and speed that take the ball over the hole's centre and would stop it ``putt.past`` further along its path.

    Of several it is the one that curves least. Where there is none, a pace that has one is sought up to ``FIRMEST`` past the
    hole.
    """
    return solve(putt) or NoPutt(_instead(putt))


def solve(putt: Putt, like: Read | None = None) -> Solution:
    """The read, or None where there is no such putt; ``like`` is that of a putt which differs little."""
    if abs(putt.downhill) >= putt.rho:
        return None  # no ball stops where the hole is
    if not putt.surface.is_plane:
        return _on_green(putt, like)
    strike = _on_plane(putt)
    roll = putt.roll(strike.launch, strike.aim)
    return Read(strike, roll.before_rest(putt.past), roll)


def paced(putt: Putt, like: Read) -> Solution:
    """The same, where ``like`` is the read of this very putt at another pace."""
    if putt.surface.is_plane:
        return solve(putt)
    return _shoot(putt, like.strike, like.roll) or solve(putt)


def _on_plane(putt: Putt) -> Strike:
    """Solve a putt on a plane.

    All rolls with one start direction have one shape, and differ in size as the speed squared. So for each share of its
    speed that the ball has left at the hole one direction leads there, and the length left to roll, measured in putts,
    tells which share it is.
    """
    line = -phase(putt.downhill)  # direction of the hole, from straight downhill
    drag, tilt = putt.drag / hypot(1, abs(putt.downhill)), abs(putt.downhill) / putt.rho
    along = abs(line)

    def towards_hole(left: float) -> tuple[PlaneRoll, State]:
        """The roll at 1 m/s that has the hole in its way with ``left`` of its speed left, and its state there."""
        s = -log(left) / (1 - tilt) if left else inf
        w, turn = exp(-s), exp(-tilt * s) if tilt else 1.0
        down = (1 - left * left) / (2 - 2 * tilt), (1 - (w * turn) ** 2) / (2 + 2 * tilt)
        side = (1 - w * left) / (2 - tilt), (1 - w * w * turn) / (2 + tilt)

        def inside(half: float) -> float:
            """Positive where the ball passes the hole on its downhill side."""
            c, d = cos(half), sin(half)
            x = c**4 * down[0] - d**4 * down[1]
            y = 2 * c * d * (c * c * side[0] + d * d * side[1])
            return x * sin(along) - y * cos(along)

        straight, uphill = inside(along / 2), inside(pi / 2)
        # where the slope bends the way by less than rounding does, the straight way it is
        half = zero(inside, along / 2, pi / 2, straight, uphill, SHARE) if uphill < 0 < straight else along / 2
        roll = PlaneRoll(drag, tilt, 0.0, State(0.0, 0.0, 0.0, 2 * half, 1.0))
        return roll, roll.at(s)

    def too_long(left: float) -> float:
        roll, state = towards_hole(left)
        ahead, behind = roll.rest_after(state) * putt.distance, putt.past * hypot(state.x, state.y)
        return (ahead - behind) / (ahead + behind)

    left = zero(too_long, 0.0, 1.0, -putt.past, 1.0, SHARE)
    roll, state = towards_hole(left)
    launch = (putt.distance / hypot(state.x, state.y)) ** 0.5
    return Strike(launch, copysign(roll.start.heading, line) - line)


def near(putt: Putt, like: Strike) -> Strike | None:
    """The strike of the read, solved as exactly as the reads of a doubt have to be; ``like`` is that of a like putt."""
    if abs(putt.downhill) >= putt.rho:
        return None
    if putt.surface.is_plane:
        return _on_plane(putt)
    found = _shoot(_rough(putt), like)
    return found.strike if found else None


def _on_green(putt: Putt, like: Read | None) -> Solution:
    """Solve a putt on a green that is no plane."""
    if like and (found := _shoot(putt, like.strike)):
        return found
    nearly = _bent(putt)
    return nearly if nearly is None or putt.step_error >= ROUGH else _shoot(putt, nearly.strike)


def _bent(putt: Putt) -> Solution:
    """Nearly solve a putt on such a green, by bending a plane into it as fast as the putt can follow."""
    mean = putt.surface.mean(putt.distance)
    mean = replace(mean, slope=min(mean.slope, STEEPEST_START * putt.rho))
    plane = _on_plane(replace(putt, surface=Surface(mean)))
    found: Solution = None

    def shoot(share: float, like: Strike) -> Strike | None:
        nonlocal found
        bent = _rough(replace(putt, surface=putt.surface.bent(mean, share)))
        found = _shoot(bent, like) if abs(bent.downhill) < bent.rho else None
        return found.strike if found else None

    done, _ = followed(plane, shoot, FINEST_BEND)
    return found if done == 1 else None


def followed(
    start: Strike, shoot: Callable[[float, Strike], Strike | None], finest: float, before: Strike | None = None
) -> tuple[float, Strike]:
    """How far a change can be followed, 1 if all the way, in steps of more than ``finest``, and the strike there.

    ``start`` is the strike where nothing has changed yet, ``before`` that of the whole change the other way, where it is
    known. ``shoot`` finds that after a share of the change, near one which the two before lead to.
    """
    before = before or start
    strike, done, last, step = start, 0.0, 1.0, 1.0
    while done < 1 and step > finest:
        share = min(1.0, done + step)
        found = shoot(share, strike.beyond(before, (share - done) / last))
        if found:
            before, strike, last, done = strike, found, share - done, share
            step *= 2
        else:
            step /= 2
    return done, strike


def _rough(putt: Putt) -> Putt:
    return replace(putt, step_error=max(putt.step_error, ROUGH))


def _shoot(putt: Putt, strike: Strike, known: Roll | None = None) -> Solution:
    """Correct ``strike``, whose roll may be ``known``, until the ball is over the hole ``past`` before its rest."""
    roll, hole = known, None

    def miss(tried: Strike) -> complex | None:
        nonlocal roll, hole
        if not known or tried is not strike:
            roll = putt.roll(tried.launch, tried.aim)
        assert roll
        if roll.runs_away:
            return None
        lacking = putt.past - roll.to_rest()
        if lacking > 0:
            return -putt.distance - rect(lacking, tried.aim)
        hole = roll.before_rest(putt.past)
        return complex(hole.x - putt.distance, hole.y)

    found = corrected(strike, miss, putt.exactness)
    return Read(found, hole, roll) if found and hole and roll else None


def _instead(putt: Putt) -> float | None:
    """A pace past the hole that has an answer: from the firmest or the softest tried, as near to ``putt.past`` as it goes."""
    for past in (FIRMEST, 0.0):
        tried = replace(putt, past=past)
        strike = _nearly(tried)
        if strike is None:
            continue

        def shoot(share: float, like: Strike, past: float = past) -> Strike | None:
            return near(replace(putt, past=past + share * (putt.past - past)), like)

        done, _ = followed(strike, shoot, FINEST_PACE)
        nearest = past + done * (putt.past - past)
        return nearest if done and _nearly(replace(putt, past=nearest)) else past
    return None


def _nearly(putt: Putt) -> Strike | None:
    """The strike of the read, nearly, where there is one."""
    if abs(putt.downhill) >= putt.rho:
        return None
    if putt.surface.is_plane:
        return _on_plane(putt)
    found = _bent(putt)
    return found.strike if found else None
