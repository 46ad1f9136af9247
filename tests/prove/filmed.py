"""Putts drawn frame by frame and seen by the app's own finder: from the pixels to start, launch and result."""

import json
import math
import subprocess
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import cv2
import numpy as np

import environment
from prove import Proof, Row
from pycore.fields import parse
from pycore.watch.endpoints import answer_watched
from pycore.watch.requests import WatchedFields
from tests.filmed_balls import RATE, Scene, frames
from tests.struck_balls import Camera, Strike

SHORT = 1
PLAYER = Path(__file__).parents[1] / "ball-watch.mjs"
SMALL, USUAL = (450, 800), (720, 1280)
FEW = 5  # cases; fewer are drawn small, to be quick
TOUCH = 1 / 60  # of the picture's width, that a touch is off
WITHIN = 1.96
ENOUGH = 40


def prove(cases: int = 40) -> Proof:
    chance = np.random.default_rng(20261127)
    starts, launches, inside, wrong, unseen, lost = [], [], [], 0, 0, 0
    speeds, tilts = [], []
    for case in range(cases):
        scene = _scene(chance, SMALL if cases < FEW else USUAL)
        seen = _watched(scene, chance)
        yield (case + 1) / cases
        if seen is None or seen["start_deg"] is None or seen["launch_mps"] is None:
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
    ]


def _rms(errors: list[float]) -> float:
    return float(np.sqrt(np.mean(np.square(errors)))) if errors else 0.0


def _scene(chance: np.random.Generator, size: tuple[int, int]) -> Scene:
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
        still_s=1.6,
        noise=chance.uniform(1, 4),
        legs=bool(chance.integers(2)),
        shadow=bool(chance.integers(2)),
        second=bool(chance.integers(2)),
        steps=bool(chance.integers(2)),
        hidden=(hidden, hidden + 0.2) if chance.integers(2) else None,
        seed=int(chance.integers(1000)),
    )


def _watched(scene: Scene, chance: np.random.Generator) -> dict[str, Any] | None:
    """What is told of it; None where no roll was seen."""
    strike, camera = scene.strike, scene.camera
    off = TOUCH * camera.size[0]
    touches = np.array([scene.pixel(0, 0, 0.02), scene.pixel(strike.distance)]) + chance.uniform(-off, off, (2, 2))
    seen = played(scene, touches)
    if not seen["rolls"] or not seen["hole"]:
        return None
    tilt = np.array(strike.downhill) + chance.normal(0, 0.003, 2)
    fov = math.degrees(2 * math.atan(camera.size[1] / 2 / (camera.focal * (1 + chance.normal(0, 0.015)))))
    request = {
        "frames": seen["rolls"][0],
        "width_px": camera.size[0],
        "height_px": camera.size[1],
        "fov_deg": fov,
        "pitch_deg": math.degrees(camera.pitch) + chance.normal(0, 0.4),
        "roll_deg": chance.normal(0, 0.4),
        "eye_height_m": camera.height + chance.normal(0, 0.02),
        "hole_px": [seen["hole"]["u"], seen["hole"]["v"]],
        "distance_m": strike.distance,
        "slope_percent": 100 * float(np.hypot(*tilt)),
        "fall_deg": -math.degrees(math.atan2(tilt[1], tilt[0])),
        "tilt_sd_percent": 0.3,
        "stimp_ft": strike.stimp_ft + chance.normal(0, 0.7),
        "stimp_sd_ft": 0.7,
    }
    work = answer_watched(parse(WatchedFields, request))
    while True:
        try:
            next(work)
        except StopIteration as done:
            return dict(done.value)


def played(scene: Scene, touches: np.ndarray) -> dict[str, Any]:
    width, height = scene.camera.size
    near = width // 9
    numbers = [width, height, RATE, near, *touches.ravel()]
    with subprocess.Popen(
        [environment.node(), str(PLAYER), *map(str, numbers)], stdin=subprocess.PIPE, stdout=subprocess.PIPE
    ) as player:
        assert player.stdin
        assert player.stdout
        for light in _lights(scene):
            player.stdin.write(light)
        player.stdin.close()
        told: dict[str, Any] = json.loads(player.stdout.read())
    return told


def _lights(scene: Scene) -> Iterator[bytes]:
    """The frames as the finder has them, once they have been a JPEG."""
    for jpeg in frames(scene):
        picture = cv2.imdecode(np.frombuffer(jpeg, np.uint8), cv2.IMREAD_COLOR).astype(np.uint32)
        yield ((picture[:, :, 2] * 54 + picture[:, :, 1] * 183 + picture[:, :, 0] * 19) >> 8).astype(np.uint8).tobytes()
