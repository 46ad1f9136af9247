"""The whole way from the camera to the kept putt: films drawn by OpenCV, played by Chromium in place of a camera."""

import json
import math
import re
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page, Playwright, expect

import browser
import environment
from tests.filmed_balls import Scene, write
from tests.struck_balls import Camera, Rolled, Strike

DOWNHILL = (0.0, -0.01)
SIZE = (400, 720)  # a slow machine has to play it, and Chromium would cut off more
DISTANCE, STIMP = 2.5, 10.0
PUTT = {"distance_m": DISTANCE, "slope_percent": 1.0, "fall_deg": 90.0, "stimp_ft": STIMP, "past_m": 0.3048}
CAMERA = Camera(SIZE, 621.0, 0.9, 0.05, 0.7, 0.3, 0.0, 0.0, 0.0, DOWNHILL)
FILM_MM = CAMERA.focal * math.hypot(36, 24) / math.hypot(*SIZE)
HELD = {"alpha": 20, "beta": 90 - math.degrees(CAMERA.pitch), "gamma": 0}
ENTRIES = "async () => (await (await import('/records/db.js')).readAll()).filter(({ kind }) => kind === 'putt')"

type Filmed = Callable[..., Page]


def scene(speed: float, start_deg: float, **more: Any) -> Scene:
    strike = Strike(DISTANCE, DOWNHILL, STIMP, speed, math.radians(start_deg), more.pop("slip", 0.0))
    return Scene(strike, CAMERA, **more)


@pytest.fixture
def filmed(playwright: Playwright, site: Any, tmp_path: Path) -> Iterator[Filmed]:
    """Opens the watch on a phone whose camera sees the given putts."""
    opened: list[Any] = []
    errors: list[str] = []

    def filmed(*scenes: Scene) -> Page:
        film = tmp_path / "putts.mjpeg"
        write(list(scenes), film)
        flags = [
            "--use-fake-device-for-media-stream",
            "--use-fake-ui-for-media-stream",
            f"--use-file-for-fake-video-capture={film}",
        ]
        launched = playwright.chromium.launch(executable_path=environment.chromium(), args=[*browser.FLAGS, *flags])
        opened.append(launched)
        page = launched.new_context(viewport=browser.PHONE, has_touch=True).new_page()
        page.on("console", lambda message: errors.append(message.text) if message.type == "error" else None)
        page.on("pageerror", lambda error: errors.append(str(error)))
        record = {"schema": 1, "cautioned": True, "putt": PUTT, "sighted": {"film_m": CAMERA.height, "film_mm": FILM_MM}}
        page.add_init_script(f"localStorage.borrowline ??= {json.dumps(json.dumps(record))}")
        page.goto(site.url)
        expect(page.get_by_role("button", name=re.compile(r"^Make .*%"))).to_be_visible(timeout=60_000)
        page.context.new_cdp_session(page).send("DeviceOrientation.setDeviceOrientationOverride", HELD)
        page.get_by_role("link", name="Watch it").click()
        return page

    yield filmed
    for each in opened:
        each.close()
    assert errors == []


def touch(page: Page, place: tuple[float, float]) -> None:
    page.locator(".film").evaluate(
        """(film, [x, y]) => {
          const box = film.getBoundingClientRect();
          const at = { clientX: box.left + x * box.width, clientY: box.top + y * box.height, bubbles: true };
          film.dispatchEvent(new MouseEvent('click', at));
        }""",
        [place[0] / SIZE[0], place[1] / SIZE[1]],
    )


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


def test_from_the_camera_to_the_kept_putt_without_another_touch(filmed: Filmed, until: Any) -> None:
    """A machine that is busy plays the film slowly, which a clock takes for a slow ball: what hangs on no clock is held here,
    the launch in ``tests/prove/filmed.py``."""
    putts = [scene(1.62, 3.2, legs=True, second=True), scene(1.95, 4.4, second=True, slip=0.4)]
    page = filmed(*putts)
    mark(page, putts[0])
    page.get_by_role("button", name="Keep pictures").click()
    try:
        until(page, f"({ENTRIES})().then((putts) => putts.length >= 2)", 120)
    except BaseException:
        pytest.fail(page.locator("main").inner_text())
    for entry in page.evaluate(ENTRIES):
        rolled = min((each.rolled for each in putts), key=lambda each: abs(_start(each) - entry["start_deg"]))
        assert entry["start_deg"] == pytest.approx(_start(rolled), abs=0.4)
        assert 0 < entry["start_sd_deg"] < 0.5
        stop = entry["result"]["x_m"], entry["result"]["y_m"]
        assert stop == pytest.approx((rolled.rest[0] - DISTANCE, rolled.rest[1]), abs=0.15)
        assert entry["finish_sd_m"] > 0
        assert 5_000 < len(entry["picture"]) < 100_000
    expect(page.locator(".watch-words")).to_have_text(re.compile("left|right|line"))
    track = page.locator(".film video").evaluate_handle("video => video.srcObject.getVideoTracks()[0]")
    page.evaluate("location.hash = 'read'")
    until(page, "!document.querySelector('.film')")
    assert track.evaluate("track => track.readyState") == "ended"


def _start(rolled: Rolled) -> float:
    return math.degrees(rolled.as_rolled()[1])


# A camera whose picture the page draws itself: bare grass
DRAWN = """() => {
  navigator.mediaDevices.getUserMedia = async () => {
    const canvas = Object.assign(document.createElement('canvas'), { width: 450, height: 800 });
    const pen = canvas.getContext('2d');
    setInterval(() => {
      pen.fillStyle = '#3a7d44';
      pen.fillRect(0, 0, 450, 800);
    }, 33);
    const stream = canvas.captureStream(30);
    window.track = stream.getVideoTracks()[0];
    return stream;
  };
}"""


def test_without_leave_for_the_camera_the_putt_is_noted_by_hand(phone: Any) -> None:
    page = phone.ready(putt=PUTT)
    page.evaluate(
        "() => { navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('', 'NotAllowedError')); }"
    )
    page.get_by_role("link", name="Watch it").click()
    page.get_by_role("button", name="Open the camera").click()
    expect(page.get_by_role("alert")).to_contain_text("note the putt by hand")
    expect(page.get_by_role("button", name="Open the camera")).to_be_visible()


def test_bare_grass_is_no_ball_and_a_camera_taken_away_is_said(phone: Any) -> None:
    page = phone.ready(putt=PUTT)
    page.context.new_cdp_session(page).send("DeviceOrientation.setDeviceOrientationOverride", HELD)
    page.evaluate(DRAWN)
    page.get_by_role("link", name="Watch it").click()
    page.get_by_role("button", name="Open the camera").click()
    expect(page.locator(".watch-says")).to_have_text("Touch the ball")
    touch(page, (225, 600))
    expect(page.get_by_role("alert")).to_contain_text("No ball shows there")
    page.evaluate("track.dispatchEvent(new Event('ended'))")
    expect(page.get_by_role("alert")).to_contain_text("taken the camera away")
    assert page.evaluate("track.readyState") == "ended"


def test_it_is_reached_from_the_greens_speed_and_from_a_block_that_it_counts(phone: Any) -> None:
    plan = {"minutes": 10, "place": "green", "at_hand": [], "weights": {}}
    blocks: list[dict[str, Any]] = [
        {"drill": drill, "minutes": 5, "why": "Why.", "instead": []} for drill in ("foot_past", "walk_in")
    ]
    page = phone.open("#green", putt=PUTT, practice={**plan, "blocks": blocks, "planned": plan})
    page.get_by_role("button", name="Speed", exact=True).click()
    page.get_by_role("link", name="Let the phone watch the roll").click()
    expect(page.get_by_role("heading", name="Watch")).to_be_visible()
    expect(page.get_by_text("In the session")).to_have_count(0)
    page.get_by_role("link", name="Practice").click()
    page.get_by_role("button", name="Start", exact=True).click()
    page.locator(".run .count.good").click()
    page.get_by_role("link", name="Let the phone watch").click()
    expect(page.get_by_text("In the session: 1 good, 0 not")).to_be_visible()
    page.get_by_role("link", name="Back to it").click()
    page.get_by_role("button", name="Skip").click()
    expect(page.locator(".run-head")).to_contain_text("2 of 2")
    expect(page.get_by_role("link", name="Let the phone watch")).to_have_count(0)
