"""The picture of a watched putt: a film that the tests draw, seen by the app's finder, the way seen over the line meant."""

import json
import math
from pathlib import Path
from typing import Any

import cv2
import numpy as np

from pycore.api import answer
from tests.filmed_balls import Scene, frames
from tests.seen_films import played
from tests.struck_balls import Camera, Strike

SIZE = (720, 1280)
DISTANCE, STIMP_FT, DOWNHILL = 3.2, 10.0, (0.0, -0.02)
PUTT = {"distance_m": DISTANCE, "stimp_ft": STIMP_FT, "slope_percent": 2.0, "fall_deg": 90.0}
CAMERA = Camera(SIZE, 1050.0, 0.9, 0.1, 0.7, 0.27, 0.0, -0.03, 0.0, DOWNHILL)
LAUNCH, OFF_DEG = 1.98, 0.9  # the ball starts so far left of the line meant
MEANT, SEEN, CASING = (255, 255, 255), (0, 212, 255), (20, 30, 20)
SHOWN_AT = 70  # the frame under the lines
TOP = 280  # px of sky and far green that are cut away


def take(path: Path) -> None:
    """Write the picture."""
    read = _ask("read", **PUTT, past_m=0.3)
    strike = Strike(DISTANCE, DOWNHILL, STIMP_FT, LAUNCH, math.radians(read["aim_deg"] + OFF_DEG))
    scene = Scene(strike, CAMERA, still_s=1.6, second=True, noise=2.0)
    seen = played(scene, scene.pixel(0, 0, 0.02), scene.pixel(DISTANCE))
    told = _ask(
        "watched",
        **PUTT,
        frames=seen["rolls"][0],
        width_px=SIZE[0],
        height_px=SIZE[1],
        fov_deg=math.degrees(2 * math.atan(SIZE[1] / 2 / CAMERA.focal)),
        pitch_deg=math.degrees(CAMERA.pitch),
        roll_deg=0,
        eye_height_m=CAMERA.height,
        hole_px=[seen["hole"]["u"], seen["hole"]["v"]],
        aim_deg=read["aim_deg"],
        points_m=[[x, y] for t, x, y, _ in read["path"] if t <= read["time_s"]],
    )
    jpegs = list(frames(scene))
    picture = cv2.imdecode(np.frombuffer(jpegs[SHOWN_AT], np.uint8), cv2.IMREAD_COLOR)
    assert picture is not None
    meant = [point for point in told["points_px"] if point]
    for a, b in zip(meant[::2], meant[1::2], strict=False):
        _line(picture, [a, b], MEANT)
    _line(picture, told["path_px"], SEEN)
    _says(picture, told["words"])
    cv2.imwrite(str(path), picture[TOP:], [cv2.IMWRITE_JPEG_QUALITY, 82])


def _ask(name: str, **fields: Any) -> dict[str, Any]:
    reply = json.loads(answer(json.dumps({"ask": name, **fields})))
    assert reply["ok"], reply
    return dict(reply["value"])


def _line(picture: np.ndarray, points: list[list[float]], colour: tuple[int, int, int]) -> None:
    drawn = np.round(np.array(points) * 16).astype(np.int32)
    for ink, width in ((CASING, 7), (colour, 4)):
        cv2.polylines(picture, [drawn], False, ink, width, cv2.LINE_AA, 4)


def _says(picture: np.ndarray, words: str) -> None:
    for ink, width in ((CASING, 8), (MEANT, 2)):
        cv2.putText(picture, words, (24, TOP + 60), cv2.FONT_HERSHEY_SIMPLEX, 1.0, ink, width, cv2.LINE_AA)
