"""Invented players whose putts are struck by numpy, from Penner's equations and without the engine's code."""

from dataclasses import dataclass
from functools import cache
from types import SimpleNamespace

import numpy as np
import pytest

GRAVITY, RELEASE, FOOT = 9.80665, 1.83, 0.3048  # CGPM; Holmes 1991
HOLE, FASTEST = 0.054, 1.63  # m, Rules of Golf; m/s, Penner 2002, Eq. 23
STEP_S, LONGEST_S = 0.02, 14.0
AT_REST = 0.004  # m/s; a ball slower than that rolls less than a hundredth of a millimetre
GREENS, PLAYERS, PUTTS = 160, 45, 150
PAST_M = 0.3
SKILLS = ("alignment", "start_line", "pace", "reading")


@dataclass
class Greens:
    """Planes, one to a place of each array: m, Stimpmeter feet, per cent, degrees clockwise."""

    distance_m: np.ndarray
    stimp_ft: np.ndarray
    slope_percent: np.ndarray
    fall_deg: np.ndarray

    def take(self, which):
        return Greens(self.distance_m[which], self.stimp_ft[which], self.slope_percent[which], self.fall_deg[which])


def roll(greens, launch, aim):
    """Where balls stop, hole covered, whether the hole takes them, and where and when they are nearest to it.

    Fourth-order Runge-Kutta in time on dv/dt = 5/7 g cos(slope) (downhill - rho v/|v|); places are x + iy.
    """
    rho = RELEASE**2 / (2 * greens.stimp_ft * FOOT) / (5 / 7 * GRAVITY)
    slope, fall = greens.slope_percent / 100, -np.radians(greens.fall_deg)
    force, downhill = 5 / 7 * GRAVITY / np.hypot(1, slope), slope * np.exp(1j * fall)
    place, velocity = np.zeros(len(aim), complex), launch * np.exp(1j * aim)
    nearest, fast, heading = np.abs(place - greens.distance_m), np.abs(velocity), aim.copy()
    rolling = np.ones(len(aim), bool)

    def pull(v, at):
        return force[at] * (downhill[at] - rho[at] * v / np.maximum(np.abs(v), 1e-9))

    for _ in range(int(LONGEST_S / STEP_S)):
        at = np.flatnonzero(rolling)
        if not len(at):
            break
        v, z = velocity[at], place[at]
        # no step is longer than the ball's way to rest
        h = np.minimum(STEP_S, 0.3 * np.abs(v) / (force * (rho + slope))[at])
        k1 = pull(v, at)
        k2 = pull(v + h / 2 * k1, at)
        k3 = pull(v + h / 2 * k2, at)
        k4 = pull(v + h * k3, at)
        after = z + h * v + h * h / 6 * (k1 + k2 + k3)
        chord = after - z
        share = np.clip(((greens.distance_m[at] - z) * chord.conj()).real / np.maximum(np.abs(chord) ** 2, 1e-18), 0, 1)
        away = np.abs(z + share * chord - greens.distance_m[at])
        v_after = v + h / 6 * (k1 + 2 * k2 + 2 * k3 + k4)
        closer = away < nearest[at]
        nearest[at] = np.where(closer, away, nearest[at])
        fast[at] = np.where(closer, np.abs(v + share * (v_after - v)), fast[at])
        heading[at] = np.where(closer, np.angle(v + share * (v_after - v)), heading[at])
        place[at], velocity[at] = after, v_after
        rolling[at] = np.abs(v_after) > AT_REST
    limit = FASTEST * (1 - (nearest / HOLE) ** 2) / np.sqrt(1 + np.cos(heading - fall) * slope / np.hypot(1, slope))
    rests = np.abs(place - greens.distance_m) < HOLE
    return SimpleNamespace(stop=place, holed=(nearest < HOLE) & (fast <= limit) | rests, still=~rolling)


def shoot(greens, past_m):
    """Launch (m/s) and aim (rad) that take the ball over the hole to a stop ``past_m`` further: Newton on the stop of a
    ball whose way on is straight, then on the way that it did go, which a second, softer roll tells."""
    drag = RELEASE**2 / (2 * greens.stimp_ft * FOOT)
    launch, aim = np.sqrt(2 * drag * (greens.distance_m + past_m)), np.zeros(len(drag))
    # the ball itself, one started a little to the left and one a little harder, all rolled at once
    three, (left, harder) = greens.take(np.tile(np.arange(len(drag)), 3)), 1e-4 * np.eye(3)[1:].repeat(len(drag), 1)
    for _ in range(12):
        off, *moved = np.split(_off(three, np.tile(launch, 3) * np.exp(harder), np.tile(aim, 3) + left, past_m), 3)
        if np.abs(off).max() < 1e-6:
            break
        by_aim, by_launch = ((each - off) / 1e-4 for each in moved)
        area = (by_aim.conj() * by_launch).imag
        aim = aim + np.clip((by_launch.conj() * off).imag / area, -0.2, 0.2)
        launch = launch * np.exp(np.clip(-(by_aim.conj() * off).imag / area, -0.2, 0.2))
    assert np.abs(off).max() < 1e-4
    return launch, aim


def _off(greens, launch, aim, past_m):
    """Where the ball is ``past_m`` of path before its rest, from the hole: back from the stop along the last way."""
    rho = RELEASE**2 / (2 * greens.stimp_ft * FOOT) / (5 / 7 * GRAVITY)
    slope, fall = greens.slope_percent / 100, -np.radians(greens.fall_deg)
    force, downhill = 5 / 7 * GRAVITY / np.hypot(1, slope), slope * np.exp(1j * fall)
    place, velocity, gone = np.zeros(len(aim), complex), launch * np.exp(1j * aim), np.zeros(len(aim))
    track = [(place, gone)]
    for _ in range(int(LONGEST_S / STEP_S)):
        size = np.maximum(np.abs(velocity), 1e-12)
        h = np.minimum(STEP_S, 0.3 * size / (force * (rho + slope)))

        def pull(v):
            return force * (downhill - rho * v / np.maximum(np.abs(v), 1e-12))

        k1 = pull(velocity)
        k2 = pull(velocity + h / 2 * k1)
        k3 = pull(velocity + h / 2 * k2)
        k4 = pull(velocity + h * k3)
        after = place + h * velocity + h * h / 6 * (k1 + k2 + k3)
        gone = gone + np.abs(after - place)
        place, velocity = after, velocity + h / 6 * (k1 + 2 * k2 + 2 * k3 + k4)
        track.append((place, gone))
        if np.abs(velocity).max() < AT_REST:
            break
    places, ways = np.array([p for p, _ in track]), np.array([w for _, w in track])
    wanted = ways[-1] - past_m
    spot = np.array([np.interp(w, ways[:, i], places[:, i]) for i, w in enumerate(wanted)])
    return spot - greens.distance_m


@cache
def record(count=PLAYERS):
    """The record of every player: greens, biases and spreads (rad, fractions), and each putt as it would be logged."""
    rng = np.random.default_rng(20260501)
    greens = Greens(
        rng.choice([1.0, 1.4, 1.8, 2.4, 3.0, 4.0, 5.0, 7.0], GREENS),
        rng.choice([9.0, 10.0, 11.0], GREENS),
        rng.uniform(0.5, 3.0, GREENS),
        rng.uniform(0, 360, GREENS),
    )
    launch, needed = shoot(greens, PAST_M)
    low = np.array([[-0.014, 0.004], [-0.02, 0.009], [-0.08, 0.04], [-0.35, 0.05]])
    high = np.array([[0.014, 0.014], [0.02, 0.03], [0.08, 0.12], [0.35, 0.3]])
    players = rng.uniform(low, high, (count, 4, 2))
    which = rng.integers(0, GREENS, (count, PUTTS))
    errors = players[:, None, :, 0] + players[:, None, :, 1] * rng.standard_normal((count, PUTTS, 4))
    aim = needed[which] * (1 + errors[..., 3])
    start, length = aim + errors[..., 0] + errors[..., 1], errors[..., 2]
    struck = roll(greens.take(which.ravel()), (launch[which] * np.sqrt(1 + length)).ravel(), start.ravel())
    shape = (count, PUTTS)
    return SimpleNamespace(
        greens=greens, needed=needed, players=players, which=which, errors=errors, aim=aim,
        stop=struck.stop.reshape(shape), holed=struck.holed.reshape(shape), still=struck.still.reshape(shape),
    )  # fmt: skip


def putts_of(record, player, line_every):
    """A player's putts as the endpoint takes them, the ball's line in every ``line_every``-th of them; 0 is in none."""
    greens = record.greens
    putts = []
    for i, g in enumerate(record.which[player]):
        if not record.still[player, i]:
            continue
        stop = record.stop[player, i] - greens.distance_m[g]
        line = {"line_error_deg": float(np.degrees(record.errors[player, i, 0]))}
        putts.append(
            {
                "id": f"{player}-{i}",
                "at": f"2026-05-{1 + i // 10:02}T10:{i % 10:02}:00Z",
                "distance_m": greens.distance_m[g],
                "stimp_ft": greens.stimp_ft[g],
                "slope_percent": greens.slope_percent[g],
                "fall_deg": greens.fall_deg[g],
                "past_m": PAST_M,
                "aim_deg": float(np.degrees(record.aim[player, i])),
                "read": "own",
                "result": "holed" if record.holed[player, i] else {"x_m": stop.real, "y_m": stop.imag},
                **(line if line_every and i % line_every == 0 else {}),
            }
        )
    return putts


@pytest.fixture(scope="session")
def invented():
    """Every player's record; see ``record``."""
    return record()


@pytest.fixture(scope="session")
def logged():
    return putts_of


@pytest.fixture(scope="session")
def strike():
    """The numpy strokes themselves."""
    return SimpleNamespace(Greens=Greens, roll=roll, shoot=shoot)
