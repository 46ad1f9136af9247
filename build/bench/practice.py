"""What a session waits for: its plan, and the schedule of a tempo."""

from pathlib import Path

from playwright.sync_api import Playwright

from bench.answers import START, answered
from bench.page import opened
from bench.row import Row

LIMIT = 0.020  # s
ASKS = (
    ("tempo schedule", "tempo", {"ratio": 2, "rest_s": 2.4, "strokes": 20, "count_in": 4}, "forward_s", 0.3, 0.001),
    ("plan", "plan", {"place": "green", "at_hand": ["ball", "hole", "balls", "level_floor"]}, "minutes", 10, 1),
)
# Another value each time: no answer may come from memory
TIME = """async ({ ask, fields, varied, first, step }) => {
  const taken = [];
  for (let i = 0; i < 50; i += 1) {
    const start = performance.now();
    await engine.ask(ask, { ...fields, [varied]: first + i * step });
    taken.push(performance.now() - start);
  }
  return taken.slice(10);
}"""


def rows(playwright: Playwright, folder: Path, store: Path) -> list[Row]:
    result = []
    with opened(playwright, folder, store / "browser-practice") as page:
        page.evaluate(START)
        for what, ask, fields, varied, first, step in ASKS:
            asked = {"ask": ask, "fields": fields, "varied": varied, "first": first, "step": step}
            result.append(answered(what, page.evaluate(TIME, asked), LIMIT))
    return result
