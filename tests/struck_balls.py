"""Balls that NumPy and SciPy strike and OpenCV's camera films: nothing of the engine is in them.

A ball may slip at first: friction 0.3 to 0.5 of its weight works against the slip, sideways as well on a slope, until it rolls.
Equations of the roll and of the hole: Penner, Can. J. Phys. 80(2):83-96, 2002.
"""

import math
from dataclasses import dataclass, field
from functools import cached_property
from typing import Any

import cv2
import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import root

G = 9.80665
ROLLS = 5 / 7
RADIUS = 0.04267 / 2
HOLE = 0.054
FOOT = 0.3048
STILL = 0.6  # s that a ball at rest is filmed


@dataclass(frozen=True)
class Strike:
    """A struck ball on a plane: slope as a vector (rise over run, downhill), what friction takes, what it does at the hole."""

    distance: float
    downhill: tuple[float, float]
    stimp_ft: float
    speed: float
    direction: float
    slip: float = 0.0
    skid: float = 0.4

    @property
    def drag(self) -> float:
        return 1.83**2 / (2 * self.stimp_ft * FOOT)

    @property
    def pull(self) -> np.ndarray:
        return G * np.array(self.downhill) / math.sqrt(1 + self.downhill[0] ** 2 + self.downhill[1] ** 2)


class Rolled:
    """Where the ball is at each time (s); ``after`` the end it rests, or is gone where it dropped."""

    def __init__(self, strike: Strike, rng: np.random.Generator | None = None) -> None:
        self.strike = strike
        v0 = strike.speed * np.array([math.cos(strike.direction), math.sin(strike.direction)])
        self.parts: list[tuple[float, float, Any]] = []
        start = np.array([0.0, 0.0, *v0])
        at = 0.0
        if strike.slip > 0:
            start, at = self._skid(start, strike.slip * v0)
        self.rolls_from = at
        self.began = start.copy()
        self.rest, self.end, whole = roll(strike.drag, strike.pull, start, at)
        self.parts.append((at, self.end, whole))
        self.holed, self.met, self.offset = False, math.inf, math.inf
        self._at_hole(at, rng)

    def _skid(self, start: np.ndarray, slip: np.ndarray) -> tuple[np.ndarray, float]:
        strike = self.strike

        def rate(_: float, y: np.ndarray) -> list[float]:
            size = max(1e-9, math.hypot(y[4], y[5]))
            rub = strike.skid * G * y[4:6] / size
            return [y[2], y[3], *(strike.pull - rub), *(strike.pull - 3.5 * rub)]

        def grips(_: float, y: np.ndarray) -> float:
            return float(math.hypot(y[4], y[5]) - 0.01)

        grips.terminal = True  # type: ignore[attr-defined]
        found = solve_ivp(rate, (0, 2), [*start, *slip], events=grips, dense_output=True, rtol=1e-8, atol=1e-9)
        self.parts.append((0.0, float(found.t[-1]), found.sol))
        return found.y[:4, -1], float(found.t[-1])

    def _at_hole(self, since: float, rng: np.random.Generator | None) -> None:
        strike = self.strike
        times = np.linspace(0, self.end, 3001)
        places = np.concatenate([whole(times[(times >= a) & (times <= b)])[:4].T for a, b, whole in self.parts])
        times = np.concatenate([times[(times >= a) & (times <= b)] for a, b, _ in self.parts])
        apart = np.hypot(places[:, 0] - strike.distance, places[:, 1])
        nearest = int(np.argmin(apart))
        self.offset = float(apart[nearest])
        if self.offset >= HOLE:
            return
        speed = float(np.hypot(*places[nearest, 2:]))
        slope = math.hypot(*strike.downhill)
        heading = math.atan2(places[nearest, 3], places[nearest, 2])
        uphill = math.atan2(-strike.downhill[1], -strike.downhill[0])
        allowed = (
            1.63 * (1 - (self.offset / HOLE) ** 2) / math.sqrt(1 - math.cos(heading - uphill) * math.sin(math.atan(slope)))
        )
        over = np.nonzero(apart < HOLE)[0]
        self.met = float(times[over[0]])
        self.margin = allowed - speed
        if speed <= allowed:
            self.holed, self.end = True, float(times[min(nearest, over[0] + 40)])
            return
        if rng is not None:  # it goes on with less, turned a little
            state = places[nearest]
            turn, keeps = rng.uniform(-0.7, 0.7), rng.uniform(0.5, 0.9)
            vx, vy = keeps * state[2], keeps * state[3]
            start = np.array(
                [state[0], state[1], vx * math.cos(turn) - vy * math.sin(turn), vx * math.sin(turn) + vy * math.cos(turn)]
            )
            at = float(times[nearest])
            self.rest, self.end, whole = roll(strike.drag, strike.pull, start, at)
            self.parts = [(a, min(b, at), sol) for a, b, sol in self.parts] + [(at, self.end, whole)]

    def _on(self, t: float) -> np.ndarray:
        if t <= 0:
            return np.array([0.0, 0.0, 0.0, 0.0])
        for begin, end, whole in reversed(self.parts):
            if t >= begin:
                return whole(min(t, end))[:4]
        raise AssertionError

    def at(self, t: float) -> np.ndarray | None:
        """x, y (m); None where it dropped."""
        if self.holed and t > self.end:
            return None
        return self._on(t)[:2]

    def as_rolled(self) -> tuple[float, float]:
        """Launch (m/s) and direction (rad) of the ball that rolls from the start and comes to rest where this one does."""
        strike = self.strike
        if not strike.slip:
            return strike.speed, strike.direction
        wanted, _, _ = roll(strike.drag, strike.pull, self.began, 0.0)

        def off(guess: np.ndarray) -> np.ndarray:
            v, a = guess
            rest, _, _ = roll(strike.drag, strike.pull, np.array([0, 0, v * math.cos(a), v * math.sin(a)]), 0.0)
            return rest - wanted

        found = root(off, [0.85 * strike.speed, strike.direction], tol=1e-7)
        return float(found.x[0]), float(found.x[1])


def roll(drag: float, pull: np.ndarray, start: np.ndarray, at: float) -> tuple[np.ndarray, float, Any]:
    """A rolling ball to its rest: where, when, and its whole way."""

    def rate(_: float, y: np.ndarray) -> list[float]:
        size = max(1e-9, math.hypot(y[2], y[3]))
        return [y[2], y[3], *(ROLLS * pull - drag * y[2:4] / size)]

    def rests(_: float, y: np.ndarray) -> float:
        return float(math.hypot(y[2], y[3]) - 0.005)

    rests.terminal = True  # type: ignore[attr-defined]
    rests.direction = -1  # type: ignore[attr-defined]
    found = solve_ivp(rate, (at, at + 25), start, events=rests, dense_output=True, rtol=1e-7, atol=1e-8)
    return found.y[:2, -1], float(found.t[-1]), found.sol


@dataclass(frozen=True)
class Camera:
    """A phone behind the ball. Angles in rad, places in m from the ball; ``turned`` is left of the line."""

    size: tuple[int, int]
    focal: float
    back: float
    aside: float
    height: float
    pitch: float
    roll: float
    turned: float
    k1: float
    downhill: tuple[float, float]

    @cached_property
    def _stands(self) -> tuple[np.ndarray, ...]:
        """The green's axes, where the lens is, which way it looks, and OpenCV's turn and shift."""
        gx, gy = self.downhill
        along = np.array([1, 0, -gx]) / math.hypot(1, gx)
        normal = np.array([gx, gy, 1]) / math.sqrt(1 + gx * gx + gy * gy)
        left = np.cross(normal, along)
        place = -self.back * along + self.aside * left + self.height * normal
        flat = np.array([along[0], along[1], 0]) / math.hypot(along[0], along[1])
        beside = np.array([-flat[1], flat[0], 0])
        ahead = math.cos(self.turned) * flat + math.sin(self.turned) * beside
        right = math.sin(self.turned) * flat - math.cos(self.turned) * beside
        forward = math.cos(self.pitch) * ahead - math.sin(self.pitch) * np.array([0, 0, 1])
        down = np.cross(forward, right)
        turn = np.array(
            [
                math.cos(self.roll) * right + math.sin(self.roll) * down,
                -math.sin(self.roll) * right + math.cos(self.roll) * down,
                forward,
            ]
        )
        return np.array([along, left, normal]), place, forward, cv2.Rodrigues(turn)[0], -turn @ place

    def see(self, places: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """Pixels of places (m: along, left, off the green), and their depths."""
        axes, place, forward, turn, shift = self._stands
        world = np.asarray(places) @ axes
        lens = np.array([[self.focal, 0, self.size[0] / 2], [0, self.focal, self.size[1] / 2], [0, 0, 1]])
        bend = np.array([self.k1, 0, 0, 0, 0])
        return cv2.projectPoints(world, turn, shift, lens, bend)[0][:, 0], (world - place) @ forward


@dataclass
class Film:
    """What the engine is asked, and what is true."""

    request: dict
    launch: float
    start_deg: float
    deceleration: float
    across_percent: float
    stimp_ft: float
    result: str
    stop: np.ndarray | None
    seen_to: float
    told: dict = field(default_factory=dict)


def film(rng: np.random.Generator, low: bool = False, **fixed: float) -> Film:
    """A putt of 4 to 25 ft, filmed by a phone whose lens, pitch and height are told somewhat wrong."""
    while True:
        found = _film(rng, low, fixed)
        if found:
            return found


def _disc(rng: np.random.Generator, radius: float) -> np.ndarray:
    turn, far = rng.uniform(0, 2 * math.pi), radius * math.sqrt(rng.uniform())
    return far * np.array([math.cos(turn), math.sin(turn)])


def _film(rng: np.random.Generator, low: bool, fixed: dict) -> Film | None:
    distance = fixed.get("distance", rng.uniform(4, 25) * FOOT)
    slope, fall = rng.uniform(0, 0.03), rng.uniform(0, 2 * math.pi)
    downhill = slope * math.cos(fall), slope * math.sin(fall)
    stimp_ft = rng.uniform(8, 12.5)
    drag = 1.83**2 / (2 * stimp_ft * FOOT)
    along = drag - ROLLS * G * downhill[0]
    if along < 0.2:
        return None
    # aimed well enough by the parabola of the putt, then off as players are
    past = rng.uniform(0.0, 0.9)
    launch = math.sqrt(2 * along * (distance + past)) * rng.normal(1, 0.04)
    t = (launch - math.sqrt(max(0.0, launch**2 - 2 * along * distance))) / along
    direction = -ROLLS * G * downhill[1] * t * t / 2 / distance + math.radians(rng.normal(0, 0.9))
    slip = rng.choice([0.0, rng.uniform(0.1, 1.0), 1.0])
    strike = Strike(distance, downhill, stimp_ft, launch * (1 + 0.22 * slip), direction, slip, rng.uniform(0.3, 0.5))
    rolled = Rolled(strike, rng)
    size = (720, 1280)
    for _ in range(40):
        height = rng.uniform(0.1, 0.3) if low else rng.uniform(0.3, 1.7)
        back = rng.uniform(2.0, 3.5) if low else rng.uniform(0.5, 2.0)
        view = math.radians(rng.uniform(56, 70))
        near, far = math.atan2(height, back), math.atan2(height, back + distance)
        if near - far < view - math.radians(8):
            break
    else:
        return None
    focal = size[1] / 2 / math.tan(view / 2)
    pitch = (near + far) / 2 + rng.uniform(-0.02, 0.02)
    camera = Camera(
        size,
        focal,
        back,
        rng.uniform(-0.15, 0.15) * back,
        height,
        pitch,
        math.radians(rng.normal(0, 2)),
        math.radians(rng.uniform(-3, 3)),
        rng.uniform(-0.05, 0.05),
        downhill,
    )
    (ball, hole), depths = camera.see(np.array([[0, 0, 0], [distance, 0, 0]], float))
    if not all(15 < u < size[0] - 15 and 15 < v < size[1] - 5 for u, v in (ball, hole)) or min(depths) < 0.2:
        return None
    frames, last, left = _frames(rng, camera, rolled)
    marks = [list(map(float, at + _disc(rng, 1.5))) for at in (ball, hole)]
    told_tilt = np.array(downhill) + rng.normal(0, 0.005, 2)
    request = {
        "frames": frames,
        "width_px": size[0],
        "height_px": size[1],
        "fov_deg": math.degrees(2 * math.atan(size[1] / 2 / (focal * (1 + rng.uniform(-0.05, 0.05))))),
        "pitch_deg": math.degrees(camera.pitch) + rng.uniform(-1, 1),
        "roll_deg": math.degrees(camera.roll) + rng.uniform(-1, 1),
        "eye_height_m": height + rng.uniform(-0.05, 0.05),
        "ball_px": marks[0],
        "hole_px": marks[1],
        "distance_m": distance * (1 + rng.normal(0, 0.003)),
        "slope_percent": 100 * float(np.hypot(*told_tilt)),
        "fall_deg": -math.degrees(math.atan2(told_tilt[1], told_tilt[0])),
        "tilt_sd_percent": 0.5,
        "stimp_ft": stimp_ft + rng.normal(0, 0.7),
        "stimp_sd_ft": 0.7,
    }
    request["eye_height_m"] = max(0.05, request["eye_height_m"])
    request["stimp_ft"] = min(15, max(5, request["stimp_ft"]))
    launch, direction = rolled.as_rolled()
    return Film(
        request,
        launch,
        math.degrees(direction),
        strike.drag - ROLLS * G * downhill[0],
        100 * downhill[1],
        stimp_ft,
        "holed" if rolled.holed else "missed",
        None if rolled.holed else rolled.rest,
        last,
        {"height": height, "back": back, "distance": distance, "slip": slip, "left": left, "offset": rolled.offset},
    )


def _frames(rng: np.random.Generator, camera: Camera, rolled: Rolled) -> tuple[list, float, bool]:
    """Places of the ball's centre in the frames of a film, as a phone sees them; how far it was seen, and whether it left."""
    size, rate = camera.size, rng.uniform(24, 60)
    shutter, blur = rng.uniform(0, 0.025), rng.uniform(-1, 1) / 3
    noise, wide, widths = rng.uniform(0.2, 1.0), rng.uniform(-0.08, 0.08), rng.uniform() < 0.8
    dropped, wrong = rng.uniform(0, 0.08), rng.uniform(0, 0.02)
    begins = -rng.integers(0, 12) / rate - rng.uniform(0, 1 / rate)
    frames, last, left = [], 0.0, False
    clock = rng.uniform(0, 1000)
    for i in range(2000):
        t = begins + i / rate
        if t > rolled.end + (0.0 if rolled.holed else STILL):
            break

        def pixel(time: float):
            at = rolled.at(time)
            if at is None:
                return None, 0.0
            (seen,), (depth,) = camera.see(np.array([[*at, RADIUS]]))
            return seen, depth

        seen, depth = pixel(t)
        for _ in range(2):  # a row is exposed later the lower it is
            if seen is not None:
                seen, depth = pixel(t + shutter * seen[1] / size[1])
        if seen is None:
            break
        width = camera.focal * 2 * RADIUS / depth
        if not (width / 2 < seen[0] < size[0] - width / 2 and 0 < seen[1] < size[1] - width / 2):
            left = True
            break
        last = max(last, float(np.hypot(*rolled.at(t))))
        if rng.uniform() < dropped:
            continue
        before, _ = pixel(t + shutter * seen[1] / size[1] - 0.005)
        if t > 0 and before is not None:
            motion = (seen - before) / 0.005
            shift = blur * motion * 0.02 * rng.uniform(0.7, 1.3)
            size_of = np.hypot(*shift)
            if size_of > width / 3:
                shift *= width / 3 / size_of
            seen = seen + shift
        seen = seen + rng.normal(0, noise, 2)
        if rng.uniform() < wrong:
            seen = np.array([rng.uniform(0, size[0]), rng.uniform(0, size[1])])
        measured = max(2.0, width * (1 + wide) + rng.normal(0, 1)) if widths else None
        frames.append([clock + t, float(seen[0]), float(seen[1]), measured])
    return frames, last, left
