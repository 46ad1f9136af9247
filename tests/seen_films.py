"""Two ways from a drawn film to what the app tells of it: in Node, and in a browser.

In the browser the built site watches it through its camera until the putt is kept. Its fake camera stamps a frame when it comes
to read it, late on a busy machine, and not when the ball was there: so the film is played slowly, and each frame's time is
drawn into its lower edge and told in the stamp's place. In Node the frames go to the app's own finder and on to the engine as
fast as they come: that is what the tests have time for.
"""

import json
import math
import subprocess
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import cv2
import numpy as np
from playwright.sync_api import Page, expect, sync_playwright

import browser
import dist
import environment
from pycore.fields import parse
from pycore.watch.endpoints import answer_watched
from pycore.watch.requests import WatchedFields
from server import Site
from tests.filmed_balls import RATE, Scene, frames
from tests.watching import ENTRIES, Told, launched, mark, ready

PLAYER = Path(__file__).with_name("ball-watch.mjs")
WORKS_S = 4.0  # after a film, until what was seen is told
LOOKS_MS = 100
KEPT = ("start_deg", "start_sd_deg", "launch_mps", "launch_sd_mps")
# What the engine tells the page of each film
HEARS = """(() => {
  window.told = [];
  const Plain = Worker;
  window.Worker = class extends Plain {
    constructor(...given) {
      super(...given);
      this.addEventListener('message', ({ data: { reply } }) => {
        const value = reply && JSON.parse(reply).value;
        if (value?.path_px) told.push(value);
      });
    }
  };
})()"""
# The moment of each frame by the code in it, once each, in place of the stamp
CLOCK = """(() => {
  const [bits, side, rate] = %s;
  const pen = new OffscreenCanvas(bits, 1).getContext('2d', { willReadFrequently: true });
  const video = HTMLVideoElement.prototype;
  const plain = video.requestVideoFrameCallback;
  let [last, before] = [-1, 0];
  video.requestVideoFrameCallback = function (tell) {
    return plain.call(this, (now, told) => {
      pen.drawImage(this, 0, this.videoHeight - side, bits * side, side, 0, 0, bits, 1);
      const { data } = pen.getImageData(0, 0, bits, 1);
      const code = Array.from({ length: bits }, (_, i) => (data[4 * i] > 128 ? 2 ** i : 0)).reduce((a, b) => a + b);
      if (code === last) return this.requestVideoFrameCallback(tell);
      if (code < last) before += last + 1;
      last = code;
      tell(now, { ...told, captureTime: (1000 * (before + code)) / rate });
    });
  };
})()"""
CODE_BITS, CODE_PX = 12, 16
SLOWER = 3  # times, than it was filmed
SAYS = "document.querySelector('.watch-says')?.textContent"
MOVED = "moved"

# What is told of a film; ``MOVED`` where the phone was; None where no roll was seen
type Seen = dict[str, Any] | str | None
type Watch = Callable[[Scene, Told], Seen]


def played(scene: Scene, ball: tuple[float, float], hole: tuple[float, float]) -> dict[str, Any]:
    """What the finder makes of a film whose ball and hole are touched there (px)."""
    width, height = scene.camera.size
    numbers = [width, height, RATE, width // 9, *ball, *hole]
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


def in_node(scene: Scene, known: Told) -> Seen:
    seen = played(scene, known.ball, known.hole)
    if not seen["rolls"]:
        return MOVED if MOVED in seen["phases"] else None
    width, height = scene.camera.size
    focal = known.sighted["film_mm"] * math.hypot(width, height) / math.hypot(36, 24)
    green = {name: value for name, value in known.putt.items() if name != "past_m" and not name.endswith("_source")}
    request = {
        **green,
        "frames": seen["rolls"][0],
        "width_px": width,
        "height_px": height,
        "fov_deg": math.degrees(2 * math.atan(height / 2 / focal)),
        "held": {f"{name}_deg": value for name, value in known.held.items()},
        "eye_height_m": known.sighted["film_m"],
        "hole_px": [seen["hole"]["u"], seen["hole"]["v"]] if seen["hole"] else known.hole,
    }
    work = answer_watched(parse(WatchedFields, request))
    while True:
        try:
            next(work)
        except StopIteration as done:
            return dict(done.value)


@contextmanager
def in_browser() -> Iterator[Watch]:
    site = Site(dist.build(), dist.modules())
    with sync_playwright() as playwright, tempfile.TemporaryDirectory() as folder:
        film = Path(folder) / "putt.y4m"
        chromium = launched(playwright, film)

        def watch(scene: Scene, known: Told) -> Seen:
            _write(scene, film)
            context = chromium.new_context(viewport=browser.PHONE, has_touch=True)
            try:
                page = context.new_page()
                page.add_init_script(HEARS)
                page.add_init_script(CLOCK % json.dumps([CODE_BITS, CODE_PX, RATE]))
                ready(page, site.url, known)
                mark(page, known, scene.camera.size)
                return _watched(page, scene)
            finally:
                context.close()

        yield watch
        chromium.close()
    site.stop()


def _write(scene: Scene, path: Path) -> None:
    width, height = scene.camera.size
    with path.open("wb") as file:
        file.write(f"YUV4MPEG2 W{width} H{height} F{RATE}:{SLOWER}\n".encode())
        for i, jpeg in enumerate(frames(scene)):
            picture = cv2.imdecode(np.frombuffer(jpeg, np.uint8), cv2.IMREAD_COLOR)
            assert picture is not None
            for bit in range(CODE_BITS):
                picture[-CODE_PX:, bit * CODE_PX : (bit + 1) * CODE_PX] = 255 * (i >> bit & 1)
            file.write(b"FRAME\n" + cv2.cvtColor(picture, cv2.COLOR_BGR2YUV_I420).tobytes())


def _watched(page: Page, scene: Scene) -> Seen:
    """What is told of the first putt after the phone is ready, and kept."""
    lasts = SLOWER * scene.seconds
    if not _comes(page, f"/Ready|rolls/.test({SAYS})", 2 * lasts):
        return None
    if not _comes(page, f"told.length > 0 || /{MOVED}/.test({SAYS})", lasts + WORKS_S):
        return None
    told: dict[str, Any] | None = page.evaluate("told[0] ?? null")
    if told is None:
        return MOVED
    if told["start_deg"] is None and told["launch_mps"] is None:
        return told
    expect(page.locator(".seen-putt")).to_be_visible()
    if told["result"] == "unseen":
        page.get_by_role("button", name="Holed" if scene.rolled.holed else "Missed", exact=True).click()
    expect(page.get_by_text("Kept in the notes")).to_be_visible()
    (entry,) = page.evaluate(ENTRIES)
    return {**told, **{name: entry.get(name) for name in KEPT}}


def _comes(page: Page, script: str, seconds: float) -> bool:
    """Whether it comes true in time; the page's policy lets nothing wait for it there."""
    end = time.monotonic() + seconds
    while not page.evaluate(script):
        if time.monotonic() > end:
            return False
        page.wait_for_timeout(LOOKS_MS)
    return True
