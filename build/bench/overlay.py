"""The line on a photograph while a mark is dragged, and over the moving picture while the phone turns: from the touch or the
turn to the redrawn picture, against one frame; and the frames of the balls that roll in the view."""

from pathlib import Path
from statistics import median

from playwright.sync_api import Playwright

from bench.page import opened
from bench.row import Row, milliseconds

FRAME = 1 / 60  # s
TIME = """async () => {
  const { createEngine } = await import('/engine/client.js');
  const { cameraFields, followFields } = await import('/features/line/questions.js');
  const { draw } = await import('/features/line/overlay.js');
  const engine = createEngine();
  const putt = { distance_m: 3, stimp_ft: 10, slope_percent: 2, fall_deg: 90, past_m: 0.3 };
  const picture = Object.assign(document.createElement('canvas'), { width: 1200, height: 1600 });
  picture.getContext('2d').fillRect(0, 0, 1200, 1600);
  const state = {
    read: { putt, value: await engine.ask('read', putt) },
    window: { putt, value: await engine.ask('window', putt) },
    putt,
    sighted: { eye: 'standing', standing_m: 1.6, lens_mm: 26, live_mm: 26, roll_deg: 0 },
  };
  const canvas = Object.assign(document.createElement('canvas'), { width: 1200, height: 1600 });
  const held = { alpha_deg: 0, beta_deg: 64, gamma_deg: 0, screen_deg: 0 };
  async function time(name, fields, linePages) {
    const taken = [];
    for (const linePage of linePages) {
      const start = performance.now();
      const asked = fields({ ...state, linePage });
      const answer = { ...(await engine.ask(name, asked)), asked };
      draw(canvas, { ...state, linePage, answers: { [name]: answer }, refusals: {} });
      taken.push(performance.now() - start);
    }
    return taken.slice(10);
  }
  const steps = Array.from({ length: 60 }, (_, i) => i / 600);
  const photo = { picture, lens_mm: 26, held, ball: [0.5, 0.7] };
  const live = { width: 1200, height: 1600, ball: { at: [0.5, 0.7], held }, hole: { at: [0.5, 0.4], held } };
  return [
    await time('camera', cameraFields, steps.map(by => ({ photo: { ...photo, hole: [0.5 + by, 0.4] } }))),
    await time('follow', followFields, steps.map(by => ({ live: { ...live, held: { ...held, alpha_deg: 100 * by } } }))),
  ];
}"""
WHATS = "line on a photograph, mark dragged", "line over the moving picture, phone turned"
WATCHED = 3.0  # s
# The balls of the view roll one after the other; each frame of the page draws one
ROLL = """async (seconds) => {
  document.querySelector('.roll').click();
  let frames = 0, now = 0;
  const start = await new Promise(requestAnimationFrame);
  for (; now - start < 1000 * seconds; frames += 1) now = await new Promise(requestAnimationFrame);
  return 1000 * frames / (now - start);
}"""
MISSED_FRAMES = 1.05  # one in twenty


def rows(playwright: Playwright, folder: Path, store: Path) -> list[Row]:
    with opened(playwright, folder, store / "browser-overlay") as page:
        taken: list[list[float]] = page.evaluate(TIME)
    with opened(playwright, folder, store / "browser-roll", "#line") as page:
        page.get_by_role("button", name="Roll", exact=True).wait_for()
        rate: float = page.evaluate(ROLL, WATCHED)
    return [
        *(
            Row(what, milliseconds(seconds), f"one frame, {milliseconds(FRAME)}", seconds / FRAME, 1)
            for what, seconds in zip(WHATS, (median(each) / 1e3 for each in taken), strict=True)
        ),
        Row("balls rolling in the view", f"{rate:.0f} frames/s", f"{1 / FRAME:.0f} frames/s", 1 / FRAME / rate, MISSED_FRAMES),
    ]
