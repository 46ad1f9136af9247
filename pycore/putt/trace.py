"""A ball that rolls on a green whose tilt changes, step by step.

The equations and the variable are those of ``roll``: with s = -ln w, ds = d dt/v, and the velocity u obeys
du/ds = -u + |u| g/rho, where g is the downhill vector: nothing in it is singular while the ball comes to rest. Places
and vectors are complex numbers, x + iy. Each step is of Dormand and Prince's order 5(4) (J. Comput. Appl. Math.
6(1):19-26, 1980) and stays inside one patch of the green, on which g is linear; the last millimetres before rest are a
roll on the plane that the ball then lies on.
"""

from bisect import bisect_right
from cmath import phase, rect
from collections.abc import Callable, Sequence
from math import copysign, exp, hypot, inf, log, sqrt
from typing import NamedTuple

from pycore.green.surface import Green, Patch, Piece
from pycore.putt.roll import TOO_FAR, PlaneRoll, State, rest_factor
from pycore.roots import zero

LAST_ROLL = 0.002  # m; a ball with less than this to go rolls to rest on the plane it lies on
SHORTEST_REST = 0.25  # least that ``rest_factor`` comes to: straight up a slope that all but holds the ball
TOO_SLOW = 1e-6  # m/s; a ball this slow that is not at rest yet will not be
FINE = 1e-7  # m and m/s; error of one step, unless a search can do with more
SEAM = 1e-7  # m; a place this near to where two patches meet lies on the seam
LANDING = 1e-10  # of a step; how exactly a step that leaves its patch is cut at the seam
NEWTONS = 8  # steps to there; three are usual
FIRST_STEP = 0.2  # of s, the logarithm of the speed left
MOST_STEPS = 150  # balls that rest need 100 at most, on the most broken greens; one that is still on its way then runs away


class Point(NamedTuple):
    """Place (m), velocity (m/s), and time (s) + i length of the path (m)."""

    z: complex
    u: complex
    q: complex


Rates = tuple[complex, complex, complex]  # of a point; made a million times, so no more than a tuple
Rate = Callable[[complex, complex], Rates]


class Course(NamedTuple):
    """How a quantity goes on over a step: by so much after each share of it."""

    a: float
    b: float
    c: float
    d: float

    def at(self, share: float) -> float:
        """What has come to it."""
        return share * (self.a + share * (self.b + share * (self.c + share * self.d)))

    def share(self, gain: float) -> float:
        """The share of the step after which ``gain`` has come to it; ``gain`` lies between nothing and the whole."""
        whole = self.at(1.0)
        share = gain / whole if whole else 0.0
        for _ in range(NEWTONS):
            rate = self.a + share * (2 * self.b + share * (3 * self.c + share * 4 * self.d))
            step = (gain - self.at(share)) / rate if rate else inf
            share += step
            if not 0 <= share <= 1:
                break
            if abs(step) < LANDING:
                return share
        return zero(lambda share: self.at(share) - gain, 0.0, 1.0, -gain, whole - gain, LANDING)


class Step(NamedTuple):
    """A step of ``h`` from ``s`` and ``point``, with the seven rates met on the way."""

    s: float
    h: float
    point: Point
    rates: tuple[Rates, ...]

    def at(self, share: float) -> Point:
        """The point after a share of the step; fourth order (Shampine, Math. Comp. 46:135-150, 1986)."""
        b1, b3, b4, b5, b6, b7 = (self.h * share * (a + share * (b + share * (c + share * d))) for a, b, c, d in _DENSE)
        z, u, q = self.point
        (z1, u1, q1), _, (z3, u3, q3), (z4, u4, q4), (z5, u5, q5), (z6, u6, q6), (z7, u7, q7) = self.rates
        return Point(
            z + b1 * z1 + b3 * z3 + b4 * z4 + b5 * z5 + b6 * z6 + b7 * z7,
            u + b1 * u1 + b3 * u3 + b4 * u4 + b5 * u5 + b6 * u6 + b7 * u7,
            q + b1 * q1 + b3 * q3 + b4 * q4 + b5 * q5 + b6 * q6 + b7 * q7,
        )

    def course(self, rates: Sequence[float]) -> Course:
        """That of a quantity of which the seven rates are given; as ``at``."""
        k1, _, k3, k4, k5, k6, k7 = rates
        return Course(
            *(self.h * (b1 * k1 + b3 * k3 + b4 * k4 + b5 * k5 + b6 * k6 + b7 * k7) for b1, b3, b4, b5, b6, b7 in _BY_POWER)
        )


class Trace:
    """A roll on ``surface`` from ``start`` to rest.

    Parameters
    ----------
    drag : deceleration on the level, m/s2.
    rho : friction: the slope (rise over run) on which no rolling ball stops.
    step_error : the most that one step may be wrong by, m and m/s.
    """

    def __init__(self, surface: Green, drag: float, rho: float, start: State, step_error: float = FINE) -> None:
        self.surface, self.drag, self.rho, self.step_error = surface, drag, rho, step_error
        self.start = start
        self.runs_away = False
        self.tail: PlaneRoll | None = None
        self.steps: list[Step] = []
        self.last = Point(complex(start.x, start.y), rect(start.speed, start.heading), complex(start.t))
        self.s = 0.0
        self._follow()
        self._begins = [step.s for step in self.steps]

    def at(self, s: float) -> State:
        """State at ``s``: 0 at the start, infinity at rest."""
        if self.tail and s >= self.s:
            return self.tail.at(s - self.s)
        if not self.steps:
            return self.start
        step = self.steps[max(0, bisect_right(self._begins, s) - 1)]
        z, u, q = step.at((s - step.s) / step.h)
        return State(q.real, z.real, z.imag, phase(u), abs(u))

    def s_left(self, share: float) -> float:
        """The s at which about ``share`` of the speed is left: 1 at the start, 0 at rest or ``TOO_FAR`` away."""
        if not self.tail:
            return (1 - share) * self.s
        return -log(share) / (1 - self.tail.tilt) if share else inf

    def share_left(self, s: float) -> float:
        """The inverse of ``s_left``."""
        return exp((self.tail.tilt - 1) * s) if self.tail else 1 - s / self.s

    def to_rest(self) -> float:
        """Length of the whole path (m); infinite where the ball runs away."""
        return self.last.q.imag + self.tail.to_rest() if self.tail else inf

    def before_rest(self, length: float) -> State:
        """State with ``length`` (m) of path left to rest, on a ball that rests and rolls at least that far."""
        assert self.tail
        gone = self.last.q.imag + self.tail.to_rest() - length
        if gone >= self.last.q.imag:
            return self.tail.before_rest(length)
        step = next(step for step in reversed(self.steps) if step.point.q.imag <= gone)
        course = step.course([each[2].imag for each in step.rates])
        return self.at(step.s + step.h * course.share(gone - step.point.q.imag))

    def _follow(self) -> None:
        origin = self.last.z
        patch = self.surface.patch_at(origin.real)
        h = FIRST_STEP
        rate, now = self._rate(self.surface.patches[patch]), None
        for _ in range(MOST_STEPS):
            z, u, _ = self.last
            if abs(z - origin) > TOO_FAR:
                break
            if self._rests():
                return
            if abs(u) < TOO_SLOW:
                break
            now = now or rate(z, u)
            try:
                rates, after, error = _step(rate, self.last, now, h)
            except OverflowError:
                error = inf
            # aside of two stations close together the green is a wall: a step into it comes to numbers without end, or none
            if not error <= self.step_error:
                h *= max(0.2, 0.9 * (self.step_error / error) ** 0.2) if error < inf else 0.2
                continue
            step = Step(self.s, h, self.last, rates)
            edge, side = self._seam(patch, after.z.real)
            short_of_it = side * (z.real - edge)
            self.steps.append(step)
            if short_of_it < -SEAM:
                # the green bends at the seam: the step counts as far as there
                share = step.course([each[0].real for each in rates]).share(edge - z.real)
                after, now = step.at(share), None
                self.s += share * h
            else:
                now = rates[-1]  # the last rate of a step is the first of the next one on the same patch
                self.s += h
                h *= min(4.0, 0.9 * (self.step_error / max(error, 1e-14)) ** 0.2)
            self.last = after
            under = self.surface.patch_at(after.z.real + copysign(SEAM, after.u.real))
            if under != patch:
                patch, rate, now = under, self._rate(self.surface.patches[under]), None
                if self._stays_on(patch):
                    return
        self.runs_away = True

    def _rests(self) -> bool:
        """Whether the ball is about to rest where it is; ``tail`` is then the rest of its roll."""
        z, u, _ = self.last
        if abs(u) ** 2 > LAST_ROLL * self.drag / SHORTEST_REST:
            return False
        downhill = complex(*self.surface.downhill(z.real, z.imag))
        drag, tilt = self.drag / hypot(1, abs(downhill)), abs(downhill) / self.rho
        if abs(u) ** 2 / drag * rest_factor((phase(u) - phase(downhill)) / 2, tilt) > LAST_ROLL:
            return False
        self.tail = self._on_plane(downhill)
        return True

    def _stays_on(self, patch: int) -> bool:
        """Whether the ball rests on the plane of its patch without leaving it; ``tail`` is then the rest of its roll."""
        patches = self.surface.patches
        if 0 < patch < len(patches) - 1 or len(patches) == 1:
            return False
        side, edge = (1, patches[patch].start) if patch else (-1, patches[1].start)
        z, u, _ = self.last
        downhill = complex(*patches[patch].downhill(z.real, z.imag))
        if side * u.real < 0 or abs(downhill) >= self.rho:
            return False
        roll = self._on_plane(downhill)
        # on a plane x has one turn at most: going away from the edge, the ball comes nearest to it where it is or rests
        if side * (roll.at(inf).x - edge) < 0:
            return False
        self.tail = roll
        return True

    def _on_plane(self, downhill: complex) -> PlaneRoll:
        """The roll from here on the plane that falls so (rise over run)."""
        z, u, q = self.last
        drag, tilt = self.drag / hypot(1, abs(downhill)), abs(downhill) / self.rho
        return PlaneRoll(drag, tilt, phase(downhill), State(q.real, z.real, z.imag, phase(u), abs(u)))

    def _seam(self, patch: int, x: float) -> tuple[float, int]:
        """Where a ball at x has left its patch, and on which side: -1, 1, or 0 if it has not."""
        patches = self.surface.patches
        if x < patches[patch].start - SEAM:
            return patches[patch].start, -1
        if patch + 1 < len(patches) and x > patches[patch + 1].start + SEAM:
            return patches[patch + 1].start, 1
        return x, 0

    def _rate(self, patch: Piece) -> Rate:
        drag, rho = self.drag, self.rho
        if not isinstance(patch, Patch):
            downhill = patch.downhill

            def on_relief(z: complex, u: complex) -> Rates:
                gx, gy = downhill(z.real, z.imag)
                v = abs(u)
                time, pull = v * sqrt(1 + gx * gx + gy * gy) / drag, v / rho
                return time * u, complex(pull * gx, pull * gy) - u, complex(time, time * v)

            return on_relief
        gx0, gxx, gy0, gxy = patch.gx, patch.gxx, patch.gy, patch.gxy

        def rate(z: complex, u: complex) -> Rates:
            x = z.real
            gx, gy = gx0 + gxx * x + gxy * z.imag, gy0 + gxy * x
            v = abs(u)
            time, pull = v * sqrt(1 + gx * gx + gy * gy) / drag, v / rho
            return time * u, complex(pull * gx, pull * gy) - u, complex(time, time * v)

        return rate


def _step(rate: Rate, start: Point, k1: Rates, h: float) -> tuple[tuple[Rates, ...], Point, float]:
    """One Dormand-Prince step, given its first rate: its seven rates, where it ends, and its error."""
    z, u, q = start
    z1, u1, q1 = k1
    k2 = rate(z + h * 0.2 * z1, u + h * 0.2 * u1)
    z2, u2, _ = k2
    k3 = rate(z + h * (3 / 40 * z1 + 9 / 40 * z2), u + h * (3 / 40 * u1 + 9 / 40 * u2))
    z3, u3, q3 = k3
    a, b, c = 44 / 45, -56 / 15, 32 / 9
    k4 = rate(z + h * (a * z1 + b * z2 + c * z3), u + h * (a * u1 + b * u2 + c * u3))
    z4, u4, q4 = k4
    a, b, c, d = 19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729
    k5 = rate(z + h * (a * z1 + b * z2 + c * z3 + d * z4), u + h * (a * u1 + b * u2 + c * u3 + d * u4))
    z5, u5, q5 = k5
    a, b, c, d, e = 9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656
    k6 = rate(z + h * (a * z1 + b * z2 + c * z3 + d * z4 + e * z5), u + h * (a * u1 + b * u2 + c * u3 + d * u4 + e * u5))
    z6, u6, q6 = k6
    a, c, d, e, f = 35 / 384, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84
    end = Point(
        z + h * (a * z1 + c * z3 + d * z4 + e * z5 + f * z6),
        u + h * (a * u1 + c * u3 + d * u4 + e * u5 + f * u6),
        q + h * (a * q1 + c * q3 + d * q4 + e * q5 + f * q6),
    )
    k7 = rate(end.z, end.u)
    z7, u7, _ = k7
    a, c, d, e, f, g = -71 / 57600, 71 / 16695, -71 / 1920, 17253 / 339200, -22 / 525, 1 / 40
    error = abs(h) * max(
        abs(a * z1 + c * z3 + d * z4 + e * z5 + f * z6 + g * z7),
        abs(a * u1 + c * u3 + d * u4 + e * u5 + f * u6 + g * u7),
    )
    return (k1, k2, k3, k4, k5, k6, k7), end, error


# Weights of the seven rates (the second has none) after a share of the step, as cubics in that share
_DENSE = (
    (1.0, -8048581381 / 2820520608, 8663915743 / 2820520608, -12715105075 / 11282082432),
    (0.0, 131558114200 / 32700410799, -68118460800 / 10900136933, 87487479700 / 32700410799),
    (0.0, -1754552775 / 470086768, 14199869525 / 1410260304, -10690763975 / 1880347072),
    (0.0, 127303824393 / 49829197408, -318862633887 / 49829197408, 701980252875 / 199316789632),
    (0.0, -282668133 / 205662961, 2019193451 / 616988883, -1453857185 / 822651844),
    (0.0, 40617522 / 29380423, -110615467 / 29380423, 69997945 / 29380423),
)

_BY_POWER = tuple(zip(*_DENSE, strict=True))
