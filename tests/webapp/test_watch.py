"""The whole way from the camera to the kept putt: films drawn by OpenCV, played by Chromium in place of a camera."""

import math
import re
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page, Playwright, expect

import browser
from tests.filmed_balls import Scene, write
from tests.struck_balls import Rolled
from tests.watching import CAMERA, DISTANCE, ENTRIES, PUTT, SIZE, held, launched, mark, ready, scene, told, touch

Filmed = Callable[..., Page]


@pytest.fixture
def filmed(playwright: Playwright, site: Any, tmp_path: Path) -> Iterator[Filmed]:
    """Opens the watch on a phone whose camera sees the given putts."""
    opened: list[Any] = []
    errors: list[str] = []

    def filmed(*scenes: Scene) -> Page:
        film = tmp_path / "putts.mjpeg"
        write(list(scenes), film)
        opened.append(launched(playwright, film))
        page: Page = opened[-1].new_context(viewport=browser.PHONE, has_touch=True).new_page()
        page.on("console", lambda message: errors.append(message.text) if message.type == "error" else None)
        page.on("pageerror", lambda error: errors.append(str(error)))
        ready(page, site.url, told(scenes[0]))
        return page

    yield filmed
    for each in opened:
        each.close()
    assert errors == []


def test_from_the_camera_to_the_kept_putt_without_another_touch(filmed: Filmed, until: Any) -> None:
    """A machine that is busy plays the film slowly, which a clock takes for a slow ball: what hangs on no clock is held here,
    the launch in ``tests/prove/filmed.py``."""
    putts = [scene(1.62, 3.2, legs=True, second=True), scene(1.95, 4.4, second=True, slip=0.4)]
    page = filmed(*putts)
    mark(page, told(putts[0]))
    page.get_by_label(re.compile("^the app")).check(force=True)
    page.get_by_role("button", name="Keep pictures").click()
    page.locator(".film video").evaluate("video => { video.onemptied = () => { video.dataset.beganAnew = ''; }; }")
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
        assert entry["read"] == "app"
        assert 5_000 < len(entry["picture"]) < 100_000
    expect(page.locator(".watch-words")).to_have_text(re.compile("left|right|line"))
    assert page.locator(".film video").get_attribute("data-began-anew") is None, "a video that begins anew is black at first"
    track = page.locator(".film video").evaluate_handle("video => video.srcObject.getVideoTracks()[0]")
    page.evaluate("location.hash = 'read'")
    until(page, "!document.querySelector('.film')")
    assert track.evaluate("track => track.readyState") == "ended"


def _start(rolled: Rolled) -> float:
    return math.degrees(rolled.as_rolled()[1])


# A camera whose picture the page draws itself: rough grass, a ball and a hole, as `shown` has them
DRAWN = """() => {
  window.shown = { ball: false, gone: 0, goes: 0, lit: 1, shift: 0, every_ms: 33 };
  const grass = new OffscreenCanvas(520, 800);
  const blade = grass.getContext('2d');
  for (let y = 0, state = 1; y < 800; y += 4)
    for (let x = 0; x < 520; x += 4) {
      state = (state * 16807) % 2147483647;
      blade.fillStyle = `rgb(50 ${100 + (state % 40)} 60)`;
      blade.fillRect(x, y, 4, 4);
    }
  navigator.mediaDevices.getUserMedia = async () => {
    const canvas = Object.assign(document.createElement('canvas'), { width: 450, height: 800 });
    const pen = canvas.getContext('2d');
    const disc = (u, v, wide, high, ink) => {
      pen.fillStyle = ink;
      pen.beginPath();
      pen.ellipse(u + shown.shift, v, wide, high, 0, 0, 7);
      pen.fill();
    };
    const draw = () => {
      pen.filter = `brightness(${shown.lit})`;
      pen.drawImage(grass, shown.shift - 35, 0);
      disc(240, 250, 14, 5, '#101010');
      shown.gone += shown.goes;
      if (shown.ball) disc(225 + shown.gone, 600, 15, 15, '#f0f0f0');
      setTimeout(draw, shown.every_ms);
    };
    draw();
    const stream = canvas.captureStream();
    window.track = stream.getVideoTracks()[0];
    Object.defineProperty(track, 'label', { value: 'Rear camera' });
    return stream;
  };
}"""


SCREENS = [(320, 640), (390, 844)]
# By how much the picture lies over the words above it, px
COVERS = """() => {
  const [says, film] = ['.watch-says', '.film'].map((each) => document.querySelector(each).getBoundingClientRect());
  return document.querySelector('.watch-says').scrollHeight + says.top - film.top;
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


def drawn(phone: Any) -> Page:
    page: Page = phone.ready(putt=PUTT)
    page.context.new_cdp_session(page).send("DeviceOrientation.setDeviceOrientationOverride", held(CAMERA.pitch))
    page.evaluate(DRAWN)
    page.get_by_role("link", name="Watch it").click()
    page.get_by_role("button", name="Open the camera").click()
    expect(page.locator(".watch-says")).to_have_text("Touch the ball")
    return page


def touch_drawn(page: Page, u: float, v: float) -> None:
    touch(page, (u * SIZE[0] / 450, v * SIZE[1] / 800))


def test_the_lens_is_measured_once_and_each_way_to_fail_has_its_own_words(phone: Any) -> None:
    page = drawn(phone)
    _measure(page)
    says, alert = page.locator(".watch-says"), page.get_by_role("alert")
    touch_drawn(page, 225, 600)
    expect(alert).to_contain_text("No ball shows there")
    page.get_by_role("button", name="Mark again").click()
    page.evaluate("shown.ball = true")
    page.wait_for_timeout(150)
    touch_drawn(page, 228, 605)
    expect(page.locator(".glass")).to_be_visible()
    assert phone.misfits(*SCREENS) == []
    touch_drawn(page, 243, 252)
    expect(says).to_have_text("Ready. Putt when you like")
    page.evaluate("shown.lit = 0.1")
    expect(says).to_contain_text("Too dark to see a ball")
    page.evaluate("shown.lit = 1")
    expect(says).to_have_text("Ready. Putt when you like")
    _strike_out(page)
    page.evaluate("Object.assign(shown, { shift: 14, every_ms: 150 })")
    expect(says).to_contain_text("The phone was moved")
    for size in phone.sized(*SCREENS):
        assert page.evaluate(COVERS) <= 0, size
    expect(page.get_by_text("Fewer than 15 pictures a second")).to_be_visible()
    page.evaluate("track.dispatchEvent(new Event('ended'))")
    expect(alert).to_contain_text("taken the camera away")
    assert page.evaluate("track.readyState") == "ended"


def _strike_out(page: Page) -> None:
    """Strikes the ball out of the picture at once; again where a busy machine has not seen it go."""
    says, alert = page.locator(".watch-says"), page.get_by_role("alert")
    for _ in range(6):
        page.evaluate("Object.assign(shown, { goes: 40, every_ms: 100 })")
        expect(says).to_have_text("No ball lies at the mark. Lay one there")
        page.evaluate("Object.assign(shown, { goes: 0, gone: 0, every_ms: 33 })")
        expect(says).to_have_text("Ready. Putt when you like")
        if alert.count():
            break
    expect(alert).to_contain_text("The ball left the picture at once")


def _measure(page: Page) -> None:
    """A thing of 36 in seen 300 px wide from 60 in: 500 px of focal length in a picture 918 px across; film has 43.27 mm."""
    expect(page.get_by_text("not measured")).to_be_visible()
    page.get_by_role("button", name="Measure the lens").click()
    touch_drawn(page, 75, 400)
    touch_drawn(page, 375, 400)
    told = page.get_by_text(re.compile(r"^[\d.]+ mm: [\d.]+° from top to bottom$")).inner_text().split()[0]
    # a touch is a whole pixel of the screen
    assert float(told) == pytest.approx(500 * 43.2666 / math.hypot(450, 800), rel=0.015)
    page.get_by_role("button", name="Keep this lens").click()
    kept = page.get_by_text(f"Lens {told} mm, measured")
    expect(kept).to_be_visible()
    page.get_by_role("button", name="Close the camera").click()
    page.get_by_role("button", name="Open the camera").click()
    expect(kept).to_be_visible()


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
