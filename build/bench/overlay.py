"""The line on a photograph while a mark is dragged: from the touch to the redrawn picture, against one frame."""

from pathlib import Path
from statistics import median

from playwright.sync_api import Playwright

import browser
from bench.row import Row, milliseconds
from server import Site

FRAME = 1 / 60  # s
TIME = """async () => {
  const { createEngine } = await import('/engine/client.js');
  const { cameraFields } = await import('/features/sight/asks.js');
  const { drawn } = await import('/features/sight/overlay.js');
  const engine = createEngine();
  const putt = { distance_m: 3, stimp_ft: 10, slope_percent: 2, fall_deg: 90, past_m: 0.3 };
  const picture = Object.assign(document.createElement('canvas'), { width: 1200, height: 1600 });
  picture.getContext('2d').fillRect(0, 0, 1200, 1600);
  const state = {
    read: { putt, value: await engine.ask('read', putt) },
    window: { putt, value: await engine.ask('window', putt) },
    putt,
    sighted: { eye: 'standing', standing_m: 1.6, lens_mm: 26, roll_deg: 0 },
  };
  const taken = [];
  for (let i = 0; i < 60; i += 1) {
    const photo = { picture, lens_mm: 26, ball: [0.5, 0.7], hole: [0.5 + i / 600, 0.4] };
    const start = performance.now();
    const asked = cameraFields({ ...state, sighting: { photo } });
    const camera = { ...(await engine.ask('camera', asked)), asked };
    drawn({ ...state, sighting: { photo, answers: { camera }, refusals: {} } });
    taken.push(performance.now() - start);
  }
  return taken.slice(10);
}"""


def rows(playwright: Playwright, folder: Path, store: Path) -> list[Row]:
    site = Site(folder)
    context = browser.open_store(playwright, store / "browser-overlay")
    page = context.new_page()
    page.goto(site.url + "licences.txt")  # the site's origin and policy, without the app's own engine
    taken: list[float] = page.evaluate(TIME)
    seconds = median(taken) / 1e3
    context.close()
    site.stop()
    return [
        Row(
            "line on a photograph, mark dragged", milliseconds(seconds), f"one frame, {milliseconds(FRAME)}", seconds / FRAME, 1
        )
    ]
