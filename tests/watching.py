"""A page that watches a film in place of a camera, marked and left to itself: for the tests, and for what takes longer."""

import json
import math
import re
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from playwright.sync_api import Browser, Page, Playwright, expect

import browser
import environment
from tests import touching
from tests.filmed_balls import Scene
from tests.struck_balls import Camera, Strike

DOWNHILL = (0.0, -0.01)
SIZE = (400, 720)  # a slow machine has to play it
DISTANCE, STIMP = 2.5, 10.0
PUTT = {"distance_m": DISTANCE, "slope_percent": 1.0, "fall_deg": 90.0, "stimp_ft": STIMP, "past_m": 0.3048}
CAMERA = Camera(SIZE, 621.0, 0.9, 0.05, 0.7, 0.3, 0.0, 0.0, 0.0, DOWNHILL)
ENTRIES = "async () => (await (await import('/records/db.js')).readAll()).filter(({ kind }) => kind === 'putt')"
# A phone's browser turns the camera's picture to the way the phone is held; the fake one is asked for it turned
UPRIGHT = """(() => {
  const devices = navigator.mediaDevices;
  const open = devices?.getUserMedia.bind(devices);
  if (open) devices.getUserMedia = ({ video: { width, height, ...video }, ...wanted }) =>
    open({ ...wanted, video: { ...video, width: height, height: width } });
})()"""


def film_mm(camera: Camera, focal: float) -> float:
    """A lens of ``focal`` px, as for 35 mm film."""
    return focal * math.hypot(36, 24) / math.hypot(*camera.size)


def held(pitch: float, roll: float = 0.0) -> dict[str, float]:
    """How a phone is turned that looks down by ``pitch`` and leans clockwise by ``roll`` (rad), as its browser tells it."""
    right, top, out = -math.sin(roll) * math.cos(pitch), math.cos(roll) * math.cos(pitch), math.sin(pitch)
    return {"alpha": 20, "beta": math.degrees(math.asin(top)), "gamma": math.degrees(math.atan2(-right, out))}


@dataclass(frozen=True)
class Told:
    """What the phone is told: the putt as it was read, its lens, how it is held, and where ball and hole are touched (px)."""

    putt: dict[str, Any]
    sighted: dict[str, float]
    held: dict[str, float]
    ball: tuple[float, float]
    hole: tuple[float, float]


def scene(speed: float, start_deg: float, **more: Any) -> Scene:
    strike = Strike(DISTANCE, DOWNHILL, STIMP, speed, math.radians(start_deg), more.pop("slip", 0.0))
    return Scene(strike, CAMERA, **more)


def told(seen: Scene) -> Told:
    """All as it is, ball and hole touched somewhat beside them."""
    ball, hole = seen.pixel(0.0, 0.0, 0.021), seen.pixel(DISTANCE)
    sighted = {"film_m": CAMERA.height, "film_mm": film_mm(CAMERA, CAMERA.focal)}
    return Told(PUTT, sighted, held(CAMERA.pitch), (ball[0] + 6, ball[1] - 4), (hole[0] - 5, hole[1] + 3))


def launched(playwright: Playwright, film: Path) -> Browser:
    """A browser whose camera plays ``film``: each time it is opened from the first frame, and again after the last."""
    flags = [
        "--use-fake-device-for-media-stream",
        "--use-fake-ui-for-media-stream",
        f"--use-file-for-fake-video-capture={film}",
    ]
    return playwright.chromium.launch(executable_path=environment.chromium(), args=[*browser.FLAGS, *flags])


def ready(page: Page, url: str, known: Told) -> None:
    """The watch of a putt that has been read, before the camera is opened."""
    record = {"schema": 1, "cautioned": True, "putt": known.putt, "sighted": known.sighted}
    page.add_init_script(f"localStorage.borrowline ??= {json.dumps(json.dumps(record))}")
    page.add_init_script(UPRIGHT)
    page.goto(url)
    expect(page.get_by_role("button", name=re.compile(r"^Make .*%"))).to_be_visible(timeout=60_000)
    page.context.new_cdp_session(page).send("DeviceOrientation.setDeviceOrientationOverride", known.held)
    page.get_by_role("link", name="Watch it").click()


def touch(page: Page, place: tuple[float, float], size: tuple[int, int] = SIZE) -> None:
    touching.touch(page, ".film", size, place)


def mark(page: Page, known: Told, size: tuple[int, int] = SIZE) -> None:
    """Touches ball and hole; a ball that rolls just then is waited for."""
    page.get_by_role("button", name="Open the camera").click()
    says = page.locator(".watch-says")
    expect(says).to_have_text("Touch the ball", timeout=20_000)
    for _ in range(40):
        touch(page, known.ball, size)
        expect(says).to_have_text("Touch the middle of the hole")
        if not page.get_by_role("alert").count():
            break
        page.get_by_role("button", name="Mark again").click()
        page.wait_for_timeout(400)
    touch(page, known.hole, size)
