"""A page that watches a film in place of a camera, marked and left to itself: for the tests, and for what takes longer."""

import json
import math
import re
from pathlib import Path
from typing import Any

from playwright.sync_api import Browser, Page, Playwright, expect

import browser
import environment
from tests import touching
from tests.filmed_balls import Scene, write
from tests.struck_balls import Camera, Strike

DOWNHILL = (0.0, -0.01)
SIZE = (400, 720)  # a slow machine has to play it, and Chromium would cut off more
DISTANCE, STIMP = 2.5, 10.0
PUTT = {"distance_m": DISTANCE, "slope_percent": 1.0, "fall_deg": 90.0, "stimp_ft": STIMP, "past_m": 0.3048}
CAMERA = Camera(SIZE, 621.0, 0.9, 0.05, 0.7, 0.3, 0.0, 0.0, 0.0, DOWNHILL)
FILM_MM = CAMERA.focal * math.hypot(36, 24) / math.hypot(*SIZE)
HELD = {"alpha": 20, "beta": 90 - math.degrees(CAMERA.pitch), "gamma": 0}
ENTRIES = "async () => (await (await import('/records/db.js')).readAll()).filter(({ kind }) => kind === 'putt')"


def scene(speed: float, start_deg: float, **more: Any) -> Scene:
    strike = Strike(DISTANCE, DOWNHILL, STIMP, speed, math.radians(start_deg), more.pop("slip", 0.0))
    return Scene(strike, CAMERA, **more)


def launched(playwright: Playwright, film: Path, scenes: list[Scene]) -> Browser:
    """A browser whose camera sees the given putts, from the first again after the last."""
    write(scenes, film)
    flags = [
        "--use-fake-device-for-media-stream",
        "--use-fake-ui-for-media-stream",
        f"--use-file-for-fake-video-capture={film}",
    ]
    return playwright.chromium.launch(executable_path=environment.chromium(), args=[*browser.FLAGS, *flags])


def ready(page: Page, url: str) -> None:
    """The watch of a putt that has been read, before the camera is opened."""
    record = {"schema": 1, "cautioned": True, "putt": PUTT, "sighted": {"film_m": CAMERA.height, "film_mm": FILM_MM}}
    page.add_init_script(f"localStorage.borrowline ??= {json.dumps(json.dumps(record))}")
    page.goto(url)
    expect(page.get_by_role("button", name=re.compile(r"^Make .*%"))).to_be_visible(timeout=60_000)
    page.context.new_cdp_session(page).send("DeviceOrientation.setDeviceOrientationOverride", HELD)
    page.get_by_role("link", name="Watch it").click()


def touch(page: Page, place: tuple[float, float]) -> None:
    touching.touch(page, ".film", place, SIZE)


def mark(page: Page, seen: Scene) -> None:
    """Touches ball and hole, somewhat beside them; a ball that rolls just then is waited for."""
    page.get_by_role("button", name="Open the camera").click()
    says = page.locator(".watch-says")
    expect(says).to_have_text("Touch the ball", timeout=20_000)
    ball, hole = seen.pixel(0.0, 0.0, 0.021), seen.pixel(DISTANCE)
    for _ in range(40):
        touch(page, (ball[0] + 6, ball[1] - 4))
        expect(says).to_have_text("Touch the middle of the hole")
        if not page.get_by_role("alert").count():
            break
        page.get_by_role("button", name="Mark again").click()
        page.wait_for_timeout(400)
    touch(page, (hole[0] - 5, hole[1] + 3))
