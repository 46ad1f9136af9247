"""Films of struck balls, drawn by OpenCV as a phone behind the ball would take them: Chromium plays them for a camera."""

import math
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path

import cv2
import numpy as np

from tests.struck_balls import HOLE, RADIUS, Camera, Rolled, Strike

RATE = 30
SUBFRAMES = 4  # moments of an exposure
EXPOSED_S = 0.012
FINE = 16  # OpenCV's parts of a pixel
WHITE, DARK = (238, 240, 236), (18, 22, 20)


@dataclass
class Scene:
    """A putt, who films it, and what else is in the picture."""

    strike: Strike
    camera: Camera
    texture: str = "grass"
    still_s: float = 3.0
    after_s: float = 1.2
    noise: float = 3.0
    light: float = 1.0
    ball: bool = True
    legs: bool = False
    shadow: bool = False
    second: bool = False
    steps: bool = False  # exposure
    hidden: tuple[float, float] | None = None  # s after the strike
    nudged: float | None = None  # px, from a second after the strike on
    seed: int = 1
    rolled: Rolled = field(init=False)

    def __post_init__(self) -> None:
        self.rolled = Rolled(self.strike, np.random.default_rng(self.seed))

    @property
    def seconds(self) -> float:
        return self.still_s + self.rolled.end + self.after_s

    def pixel(self, x: float, y: float = 0.0, z: float = 0.0) -> tuple[float, float]:
        (at,), _ = self.camera.see(np.array([[x, y, z]], float))
        return float(at[0]), float(at[1])


def write(scenes: list[Scene], path: Path) -> None:
    """JPEG frames one after another, as Chromium's fake camera plays them: putt after putt, then from the first again."""
    with path.open("wb") as file:
        for scene in scenes:
            file.writelines(frames(scene))


def frames(scene: Scene) -> Iterator[bytes]:
    """The frames of a putt, each a JPEG."""
    width, height = scene.camera.size
    rng = np.random.default_rng(scene.seed)
    ground = _ground(scene, np.random.default_rng(1))  # the same green for all
    noises = [rng.normal(0, scene.noise, (height, width, 1)).astype(np.int16) for _ in range(4)]
    for i in range(round(scene.seconds * RATE)):
        frame = _frame(scene, ground, i / RATE - scene.still_s)
        frame = np.clip(frame.astype(np.int16) + noises[i % 4], 0, 255).astype(np.uint8)
        yield cv2.imencode(".jpg", frame, [cv2.IMWRITE_JPEG_QUALITY, 88])[1].tobytes()


def _ground(scene: Scene, rng: np.random.Generator) -> np.ndarray:
    """The green without its ball: a texture in the ground's own plane, as the camera sees it."""
    scale, back, wide = 100, 1.2, 6.0  # px a metre; m behind the ball and to each side
    far = scene.strike.distance + 8.0
    high, across = int((back + far) * scale), int(2 * wide * scale)
    rough = rng.normal(0, 1, (high, across)).astype(np.float32)
    if scene.texture == "grass":
        pattern = cv2.GaussianBlur(rough, (3, 3), 0) * 16 + cv2.GaussianBlur(rough, (31, 31), 0) * 90
        base = np.array([52, 118, 66], np.float32)
    else:
        weave = 7 * (np.sin(np.arange(across) * 0.9)[None, :] + np.sin(np.arange(high) * 0.7)[:, None])
        pattern = rough * 5 + weave.astype(np.float32)
        base = np.array([96, 92, 104], np.float32)
    ground = np.clip(base + pattern[:, :, None], 0, 255).astype(np.uint8)
    corners = np.array([[-0.3, -1], [-0.3, 1], [scene.strike.distance, 1], [scene.strike.distance, -1]], float)
    from_ = np.array([[(y + wide) * scale, (x + back) * scale] for x, y in corners], np.float32)
    to = np.array([scene.pixel(x, y) for x, y in corners], np.float32)
    turn = cv2.getPerspectiveTransform(from_, to)
    picture = cv2.warpPerspective(ground, turn, scene.camera.size, flags=cv2.INTER_AREA, borderMode=cv2.BORDER_REFLECT)
    ring = [(scene.strike.distance + HOLE * math.cos(a), HOLE * math.sin(a)) for a in np.linspace(0, 2 * math.pi, 40)]
    _fill(picture, np.array([scene.pixel(x, y) for x, y in ring]), DARK)
    if scene.second:
        _ball(
            picture, *scene.pixel(scene.strike.distance * 0.5, 0.35, RADIUS), _width(scene, scene.strike.distance * 0.5, 0.35)
        )
    return picture


def _width(scene: Scene, x: float, y: float) -> float:
    _, (depth,) = scene.camera.see(np.array([[x, y, RADIUS]], float))
    return float(scene.camera.focal * 2 * RADIUS / depth)


def _fill(picture: np.ndarray, points: np.ndarray, colour: tuple[int, int, int]) -> None:
    cv2.fillPoly(picture, [np.round(points * FINE).astype(np.int32)], colour, cv2.LINE_AA, 4)


def _ball(picture: np.ndarray, u: float, v: float, width: float) -> None:
    centre, radius = (round(u * FINE), round(v * FINE)), width / 2
    cv2.circle(picture, centre, round(radius * FINE), (200, 204, 200), -1, cv2.LINE_AA, 4)
    cv2.circle(picture, (centre[0], round((v - 0.06 * width) * FINE)), round(0.42 * width * FINE), WHITE, -1, cv2.LINE_AA, 4)


def _frame(scene: Scene, ground: np.ndarray, t: float) -> np.ndarray:
    frame = ground.copy()
    hidden = scene.hidden and scene.hidden[0] < t < scene.hidden[1]
    if scene.ball and not hidden:
        _moving(scene, frame, t)
    if scene.legs and t > -1.2:
        swing = math.sin(3 * t)
        u, v = scene.pixel(0.1, 0.3 + 0.03 * swing)
        cv2.line(frame, (int(u), int(v)), (int(u - 30 - 25 * swing), 0), (60, 50, 90), 70, cv2.LINE_AA)
        head = -0.12 - 0.25 * max(0.0, math.sin(4 * (t + 0.8))) if t < 0 else min(0.5, -0.1 + 0.8 * t)
        if t < 0.6:
            points = [scene.pixel(head + dx, dy, 0.01) for dx, dy in ((0, -0.05), (0.03, -0.05), (0.03, 0.05), (0, 0.05))]
            if head < -0.06 or head > 0.2:
                _fill(frame, np.array(points) + np.array([60, 0]), (150, 150, 150))
    light = scene.light
    if scene.steps and t > 0.8:
        light *= 0.82
    if scene.shadow:
        edge = int(scene.camera.size[0] * (0.25 * t + 0.2))
        if edge > 0:
            frame[:, :edge] = (frame[:, :edge] * 0.62).astype(np.uint8)
    if light != 1:
        frame = np.clip(frame * light, 0, 255).astype(np.uint8)
    if scene.nudged and t > 1.0:
        frame = cv2.warpAffine(
            frame,
            np.array([[1, 0, scene.nudged], [0, 1, scene.nudged / 2]], float),
            scene.camera.size,
            borderMode=cv2.BORDER_REFLECT,
        )
    return frame


def _moving(scene: Scene, frame: np.ndarray, t: float) -> None:
    """The ball over the time that a frame is exposed."""
    spots = []
    for k in range(SUBFRAMES if 0 < t < scene.rolled.end else 1):
        at = scene.rolled.at(t + EXPOSED_S * (k / (SUBFRAMES - 1) - 0.5) if SUBFRAMES > 1 else t)
        if at is not None:
            u, v = scene.pixel(float(at[0]), float(at[1]), RADIUS)
            spots.append((u, v, _width(scene, float(at[0]), float(at[1]))))
    if not spots:
        return
    side = int(max(w for *_, w in spots) * 2 + max(abs(a[1] - spots[0][1]) for a in spots)) + 4
    u0, v0 = int(spots[0][0]) - side, int(spots[0][1]) - side
    left, top = max(0, u0), max(0, v0)
    part = frame[top : max(top, v0 + 2 * side), left : max(left, u0 + 2 * side)]
    if not part.size:
        return
    total = np.zeros(part.shape, np.float32)
    for u, v, w in spots:
        drawn = part.copy()
        _ball(drawn, u - left, v - top, w)
        total += drawn
    part[:] = (total / len(spots)).astype(np.uint8)
