"""A putt: how far, on what green, and how far past the hole it is meant to run."""

from cmath import phase
from dataclasses import dataclass
from functools import cached_property
from math import cos, hypot, inf, pi, sin

from pycore.constants import HOLE_RADIUS
from pycore.green.speed import deceleration, friction
from pycore.green.surface import Green
from pycore.putt.hole import capture_speed
from pycore.putt.roll import PlaneRoll, Roll, State
from pycore.putt.trace import FINE, Trace
from pycore.roots import glance, zero

STEPS = 10  # errors of one step that a whole path is off by, or so
LEVEL = 1e-9  # rise over run; such a slope moves a putt of 30 m by less than a micrometre
LOOKS = 12  # how many times a roll is looked at in the search for its nearest points
SETTLED = 1e-6  # of the speed, in that search
ALL_BUT_REST = 1e-6  # of the speed; at rest itself the ball has no way to go
CLOSE = 4 * HOLE_RADIUS  # m; a ball that comes so near is not looked for elsewhere
GLANCE = 0.01  # of the speed; how far apart the first two looks are where the nearest point is likely to be


@dataclass(frozen=True)
class Finish:
    """How a roll ends at the hole: the s, state and distance (m) of its nearest point to the hole's centre.

    ``margin`` (m/s) says how much faster the ball could have been there; the hole takes it if that is not negative.
    """

    s: float
    state: State
    offset: float
    margin: float

    @property
    def holed(self) -> bool:
        """Whether the ball drops."""
        return self.margin >= 0


@dataclass(frozen=True)
class Putt:
    """The ball lies at 0, 0 and the hole at ``distance``, 0.

    Parameters
    ----------
    distance : from ball to hole, m.
    surface : the green's shape.
    stimp_ft : the green's speed, Stimpmeter feet.
    past : how far past the hole's centre the ball would roll, were the hole covered, m.
    step_error : for rolls that are followed step by step, the most that one step may be wrong by, m and m/s.
    """

    distance: float
    surface: Green
    stimp_ft: float
    past: float = 0.0
    step_error: float = FINE

    @property
    def exactness(self) -> float:
        """How exactly (m) a ball followed so can be made to stop somewhere."""
        return STEPS * self.step_error

    @cached_property
    def drag(self) -> float:
        """Deceleration on the level, m/s2."""
        return deceleration(self.stimp_ft)

    @cached_property
    def rho(self) -> float:
        """Friction: the slope on which no rolling ball stops, rise over run."""
        return friction(self.stimp_ft)

    @cached_property
    def downhill(self) -> complex:
        """Downhill vector at the hole, rise over run."""
        downhill = complex(*self.surface.downhill(self.distance, 0.0))
        return downhill if abs(downhill) > LEVEL else 0j

    def plays_like(self, launch: float) -> float:
        """The distance (m) of a putt on the level that takes the same ``launch`` (m/s)."""
        return launch**2 / (2 * self.drag) - self.past

    def roll(self, launch: float, aim: float) -> Roll:
        """The roll, hole covered, of a ball struck at ``launch`` (m/s) in the direction ``aim`` (rad)."""
        start = State(0.0, 0.0, 0.0, aim, launch)
        if not self.surface.is_plane:
            return Trace(self.surface, self.drag, self.rho, start, self.step_error)
        slope = abs(self.downhill)
        return PlaneRoll(self.drag / hypot(1, slope), slope / self.rho, phase(self.downhill), start)

    def finish(self, roll: Roll, guess: float | None = None) -> Finish:
        """Where ``roll`` is nearest to the hole's centre, and whether the hole takes it.

        ``guess`` is the share of its speed that the ball may have left there, if a like roll has told.
        """
        slope, uphill = abs(self.downhill), phase(self.downhill) + pi
        s, state, offset = min(self._passes(roll, guess), key=lambda found: found[2])
        margin = capture_speed(offset, slope, state.heading - uphill) - state.speed
        if margin < 0 and offset < HOLE_RADIUS and not roll.runs_away:
            rest = roll.at(inf)
            if self._offset(rest) < HOLE_RADIUS:
                # too fast for the hole where it passed, yet it comes to rest over it
                margin = capture_speed(self._offset(rest), slope, rest.heading - uphill)
        return Finish(s, state, offset, margin)

    def _offset(self, state: State) -> float:
        return hypot(state.x - self.distance, state.y)

    def _passes(self, roll: Roll, guess: float | None) -> list[tuple[float, State, float]]:
        """Where the ball is nearest to the hole's centre for a time: s, state and distance (m) of each place."""

        def leaving(left: float) -> float:
            """Positive while the ball goes away from the hole."""
            _, x, y, heading, _ = roll.at(roll.s_left(left))
            return (x - self.distance) * cos(heading) + y * sin(heading)

        def place(left: float) -> tuple[float, State, float]:
            s = roll.s_left(left)
            state = roll.at(s)
            return s, state, self._offset(state)

        if guess is None:
            # most balls pass the hole with the energy that the straight line leaves them, or nearly so
            pull = self.downhill.real / self.rho - 1
            guess = max(0.0, 1 + 2 * self.drag * self.distance * pull / roll.start.speed**2) ** 0.5
        if guess > 2 * GLANCE and not roll.runs_away:
            left = glance(leaving, min(guess, 1 - GLANCE), GLANCE, SETTLED)
            if left is not None and ALL_BUT_REST < left < 1:
                found = place(left)
                if found[2] < CLOSE:
                    return [found]
        looks = [1 - look / LOOKS for look in range(LOOKS)] + [ALL_BUT_REST]
        passes = [place(1.0), place(0.0)]
        values = [leaving(left) for left in looks]
        for before, after, at_before, at_after in zip(looks, looks[1:], values, values[1:], strict=False):
            if at_before < 0 <= at_after:
                passes.append(place(zero(leaving, before, after, at_before, at_after, SETTLED)))
        return passes
