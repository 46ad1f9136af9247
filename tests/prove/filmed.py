"""Putts drawn frame by frame and watched by the app in a browser: from its camera to start, launch and result as kept."""

import math
from contextlib import nullcontext

import numpy as np

from prove import Proof, Row
from tests.filmed_balls import Scene
from tests.seen_films import MOVED, in_browser, in_node
from tests.struck_balls import Camera, Strike
from tests.watching import Told, film_mm, held

SHORT = 1
SMALL, USUAL = (450, 800), (720, 1280)
FEW = 5  # cases; fewer are drawn small and seen in Node, to be quick
NUDGED_EVERY = 8  # one phone in so many is nudged while the ball rolls
STILL_S = 2.0  # in which the phone is marked
TOUCH = 1 / 60  # of the picture's width, that a touch is off
TILT_SD, STIMP_SD = 0.003, 0.7  # of what is told of the green, rise over run and ft
WITHIN = 1.96
ENOUGH = 40


def prove(cases: int = 48) -> Proof:
    chance = np.random.default_rng(20261127)
    starts, launches, inside, wrong, unseen, lost = [], [], [], 0, 0, 0
    speeds, tilts, unnoticed = [], [], 0
    few = cases < FEW
    with nullcontext(in_node) if few else in_browser() as watch:
        for case in range(cases):
            nudged = float(chance.uniform(3, 20)) if case % NUDGED_EVERY == NUDGED_EVERY - 1 else None
            scene = _scene(chance, SMALL if few else USUAL, nudged)
            seen = watch(scene, _told(scene, chance))
            yield (case + 1) / cases
            if nudged:
                unnoticed += seen != MOVED
                continue
            if not isinstance(seen, dict) or seen["start_deg"] is None or seen["launch_mps"] is None:
                lost += 1
                continue
            launch, start = scene.rolled.as_rolled()
            starts.append(seen["start_deg"] - math.degrees(start))
            launches.append(100 * (seen["launch_mps"] / launch - 1))
            inside += [
                abs(starts[-1]) < WITHIN * seen["start_sd_deg"],
                abs(seen["launch_mps"] - launch) < WITHIN * seen["launch_sd_mps"],
            ]
            if seen["seen_m"] > 3:
                if seen["stimp_ft"] is not None:
                    speeds.append(seen["stimp_ft"] - scene.strike.stimp_ft)
                if seen["across_percent"] is not None:
                    tilts.append(seen["across_percent"] - 100 * scene.strike.downhill[1])
            unseen += seen["result"] == "unseen"
            wrong += seen["result"] not in ("unseen", "holed" if scene.rolled.holed else "missed")
    enough = len(starts) >= ENOUGH / 2
    return [
        Row("start, rms error", _rms(starts), high=0.15, unit="degrees"),
        Row("launch, rms error", _rms(launches), high=2, unit="%"),
        Row("their 95 % intervals hold", 100 * float(np.mean(inside)), low=90 if enough else 0, unit="%"),
        Row("green speed, where 3 m were seen, rms error", _rms(speeds), high=0.5, unit="ft"),
        Row("tilt across, where 3 m were seen, rms error", _rms(tilts), high=0.3, unit="%"),
        Row("holed called missed or the other way", wrong, high=0),
        Row("end not seen", unseen),
        Row("putts not seen at all", lost, high=cases / 20),
        Row("phones nudged and not noticed", unnoticed, high=0),
    ]


def _rms(errors: list[float]) -> float:
    return float(np.sqrt(np.mean(np.square(errors)))) if errors else 0.0


def _scene(chance: np.random.Generator, size: tuple[int, int], nudged: float | None) -> Scene:
    """A putt of 5 to 15 ft with what else may move in the picture."""
    while True:
        distance, slope, fall = chance.uniform(1.5, 4.5), chance.uniform(0, 0.02), chance.uniform(0, 2 * math.pi)
        downhill = slope * math.cos(fall), slope * math.sin(fall)
        stimp_ft = chance.uniform(9, 12)
        along = 1.83**2 / (2 * stimp_ft * 0.3048) - 5 / 7 * 9.81 * downhill[0]
        launch = math.sqrt(2 * along * (distance + chance.uniform(0, 0.6)))
        time = (launch - math.sqrt(max(0.0, launch**2 - 2 * along * distance))) / along
        aim = -5 / 7 * 9.81 * downhill[1] * time**2 / 2 / distance + math.radians(chance.normal(0, 0.8))
        slip = float(chance.uniform(0, 1))
        strike = Strike(distance, downhill, stimp_ft, launch * (1 + 0.22 * slip), aim, slip)
        height, back = chance.uniform(0.4, 1.4), chance.uniform(0.7, 1.6)
        near, far = math.atan2(height, back), math.atan2(height, back + distance)
        focal = size[1] * chance.uniform(0.8, 0.95)
        if near - far < 2 * math.atan(size[1] / 2 / focal) - 0.2:
            break
    turned = math.radians(chance.uniform(-2, 2))
    camera = Camera(size, focal, back, chance.uniform(-0.1, 0.1), height, (near + far) / 2, 0.0, turned, 0.0, downhill)
    hidden = chance.uniform(0.3, 0.8)
    return Scene(
        strike,
        camera,
        texture=str(chance.choice(["grass", "carpet"])),
        still_s=STILL_S,
        noise=chance.uniform(1, 4),
        legs=bool(chance.integers(2)),
        shadow=bool(chance.integers(2)),
        second=bool(chance.integers(2)),
        steps=bool(chance.integers(2)),
        hidden=(hidden, hidden + 0.2) if chance.integers(2) else None,
        nudged=nudged,
        seed=int(chance.integers(1000)),
    )


def _told(scene: Scene, chance: np.random.Generator) -> Told:
    """What a phone knows of it, each somewhat off."""
    strike, camera = scene.strike, scene.camera
    off = TOUCH * camera.size[0]
    ball, hole = np.array([scene.pixel(0, 0, 0.02), scene.pixel(strike.distance)]) + chance.uniform(-off, off, (2, 2))
    tilt = np.array(strike.downhill) + chance.normal(0, TILT_SD, 2)
    putt = {
        "distance_m": strike.distance,
        "slope_percent": 100 * float(np.hypot(*tilt)),
        "fall_deg": -math.degrees(math.atan2(tilt[1], tilt[0])),
        "tilt_source": "level",
        "tilt_sd_percent": 100 * TILT_SD,
        "stimp_ft": strike.stimp_ft + chance.normal(0, STIMP_SD),
        "stimp_source": "stimpmeter",
        "stimp_sd_ft": STIMP_SD,
        "past_m": 0.3,
    }
    lens = film_mm(camera, camera.focal * (1 + chance.normal(0, 0.015)))
    pitch, roll = np.radians(chance.normal(0, 0.4, 2))
    return Told(
        putt,
        {"film_m": camera.height + chance.normal(0, 0.02), "film_mm": lens},
        held(camera.pitch + float(pitch), camera.roll + float(roll)),
        (float(ball[0]), float(ball[1])),
        (float(hole[0]), float(hole[1])),
    )
