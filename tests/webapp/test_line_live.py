"""The line over the moving picture of a camera that Chromium plays from a file, as the phone is turned."""

import json
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from playwright.sync_api import Page, Playwright, ViewportSize, expect

import browser
import environment
from bench.photograph import EYE_M, LENS_MM, PITCH_DEG, SIZE, Photograph
from tests.touching import touch

PUTT = {"distance_m": 4.0, "slope_percent": 4.5, "fall_deg": 80.0, "stimp_ft": 11.0, "past_m": 0.3048}
SEEN = Photograph(PUTT)
NEAR_PX = 3  # of the picture, between the drawn line and where it has to be
WHITE = 230
HELD = {"alpha": 20, "beta": 90 - PITCH_DEG, "gamma": 0}
TURNED = {"alpha": 12, "beta": 90 - PITCH_DEG - 4, "gamma": 0}


@pytest.fixture
def filmed(playwright: Playwright, site: Any, tmp_path: Path) -> Iterator[Page]:
    """A page on a phone whose camera sees the drawn green."""
    film = tmp_path / "green.mjpeg"
    SEEN.picture().save(film, "JPEG", quality=95)
    flags = [
        "--use-fake-device-for-media-stream",
        "--use-fake-ui-for-media-stream",
        f"--use-file-for-fake-video-capture={film}",
    ]
    launched = playwright.chromium.launch(executable_path=environment.chromium(), args=[*browser.FLAGS, *flags])
    page = launched.new_context(viewport=browser.PHONE, has_touch=True).new_page()
    errors: list[str] = []
    page.on("console", lambda message: errors.append(message.text) if message.type == "error" else None)
    page.on("pageerror", lambda error: errors.append(str(error)))
    sighted = {"standing_m": EYE_M, "live_mm": LENS_MM}
    record = {"schema": 1, "cautioned": True, "putt": PUTT, "sighted": sighted}
    page.add_init_script(f"localStorage.borrowline ??= {json.dumps(json.dumps(record))}")
    page.goto(site.url + "#line")
    yield page
    launched.close()
    assert errors == []


def white_at(page: Page, canvas: str, places: list[tuple[float, float]]) -> list[bool]:
    """Whether the line is drawn near each place."""
    return page.locator(canvas).evaluate(
        """(canvas, [places, near, white, wide]) => {
          const pen = canvas.getContext('2d'), scale = canvas.width / wide, side = 2 * near + 1;
          return places.map(([u, v]) => {
            const { data } = pen.getImageData(Math.round(u * scale) - near, Math.round(v * scale) - near, side, side);
            for (let i = 0; i < data.length; i += 4) if (Math.min(data[i], data[i + 1], data[i + 2]) > white) return true;
            return false;
          });
        }""",
        [places, NEAR_PX, WHITE, SIZE[0]],
    )


def is_taken_without_a_scroll(page: Page) -> None:
    """The button is in sight below the picture, which has its lines and its touches where it is, on small phones too."""
    take, foot = page.get_by_role("button", name="Take this picture"), page.locator(".foot")
    for viewport in (ViewportSize(width=320, height=640), browser.PHONE):
        page.set_viewport_size(viewport)
        page.evaluate("scrollTo(0, 0)")
        expect(take).to_be_in_viewport(ratio=1)
        picture, button = page.locator("video").bounding_box(), take.bounding_box()
        assert picture == page.locator(".over-video").bounding_box() == page.locator(".photo").bounding_box()
        assert picture["y"] + picture["height"] <= button["y"]
        assert button["y"] + button["height"] <= foot.bounding_box()["y"]


@pytest.fixture
def soon(filmed: Page) -> Callable[[Callable[[], bool]], None]:
    """Waits for something to come true."""

    def soon(holds: Callable[[], bool]) -> None:
        for _ in range(200):
            if holds():
                return
            filmed.wait_for_timeout(50)
        pytest.fail("never came true")

    return soon


def test_the_line_stays_on_the_green_while_the_phone_turns(filmed: Page, soon: Any, engine: Callable[..., Any]) -> None:
    page = filmed
    phone = page.context.new_cdp_session(page)

    def hold(attitude: dict[str, float]) -> None:
        phone.send("DeviceOrientation.setDeviceOrientationOverride", attitude)

    read = engine("read", **PUTT)
    line = [(x, y) for _, x, y, _ in read["path"] if 0.2 < x < PUTT["distance_m"] - 0.15]
    hold(HELD)
    page.locator(".parts").get_by_role("button", name="Photo").click()
    page.get_by_role("button", name="Open the camera").click()
    expect(page.get_by_text("Touch the ball")).to_be_visible(timeout=15_000)
    video = page.locator("video")
    soon(lambda: video.evaluate("video => video.videoWidth > 0"))
    wide, high = video.evaluate("video => [video.videoWidth, video.videoHeight]")
    assert wide / high == pytest.approx(SIZE[0] / SIZE[1], abs=0.01)
    is_taken_without_a_scroll(page)
    touch(page, ".photo", SIZE, SEEN.pixel(0, 0))
    expect(page.get_by_text("Touch the middle of the hole")).to_be_visible()
    touch(page, ".photo", SIZE, SEEN.pixel(PUTT["distance_m"], 0))
    expect(page.get_by_text("Stand still, or mark again")).to_be_visible()
    expect(page.get_by_text("Off by up to")).to_be_visible()
    for attitude, green in ((HELD, SEEN), (TURNED, Photograph(PUTT, left_deg=-8, down_deg=PITCH_DEG + 4))):
        hold(attitude)
        where = [green.pixel(*place) for place in line]
        where = [place for place in where if 9 < place[0] < SIZE[0] - 9 and 9 < place[1] < SIZE[1] - 9]
        assert len(where) > 10
        soon(lambda places=where: all(white_at(page, ".over-video", places)))
    assert np.mean(white_at(page, ".over-video", [SEEN.pixel(*place) for place in line])) < 0.3
    hold(HELD)
    soon(lambda: all(white_at(page, ".over-video", [SEEN.pixel(*place) for place in line])))
    page.get_by_role("button", name="Take this picture").click()
    expect(page.get_by_text("Off by up to")).to_be_visible()
    expect(page.get_by_text("leans right, told by the phone")).to_be_visible()
    expect(page.get_by_text("than the marks say")).to_have_count(0)
    page.get_by_label("Eye, standing").fill("90")
    page.keyboard.press("Tab")
    expect(page.get_by_text("flatter than the marks say")).to_be_visible()
    page.get_by_label("Eye, standing").fill("63")
    page.keyboard.press("Tab")
    soon(lambda: np.mean(white_at(page, "canvas#photo", [SEEN.pixel(*place) for place in line])) > 0.9)
    page.get_by_role("button", name="Another picture").click()
    page.get_by_role("button", name="Open the camera").click()
    expect(video).to_be_visible()
    track = video.evaluate_handle("video => video.srcObject.getVideoTracks()[0]")
    page.locator(".parts").get_by_role("button", name="Chalk").click()
    assert track.evaluate("track => track.readyState") == "ended"


def test_without_a_camera_the_photograph_is_left(phone: Any) -> None:
    page = phone.ready(putt=PUTT)
    page.evaluate(
        "() => { navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('', 'NotAllowedError')); }"
    )
    page.evaluate("location.hash = 'line'")
    page.locator(".parts").get_by_role("button", name="Photo").click()
    page.get_by_role("button", name="Open the camera").click()
    expect(page.get_by_role("alert")).to_contain_text("take a photograph instead")
    expect(page.locator("input[type=file]")).to_have_count(1)
