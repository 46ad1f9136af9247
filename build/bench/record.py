"""A record of 20,000 putts and 300 rounds: its findings, its list under a finger, and the start of the app that holds it."""

from pathlib import Path
from statistics import median

from playwright.sync_api import BrowserContext, Page, Playwright

import browser
import dist
from bench.answers import START
from bench.row import Row, milliseconds
from bench.start import COMPLETE, ROUNDS, start, until
from browser import SNAPSHOT_KEPT
from server import Site

PUTTS = 20_000
COUNTED = 300  # rounds
COUNTED_LIMIT = 1.0  # s
FINDINGS_LIMIT = 3.0  # s
FRAME_LIMIT = 0.050  # s
START_LIMIT = 1.05  # times the start without a putt
SCROLLS = 3
# No two alike, over two years, four in ten holed, every fourth with what else may be known
FILL = """async count => {
  const db = await import('/records/db.js');
  const random = i => (Math.imul(i + 1, 2654435761) >>> 0) / 2 ** 32;
  const entries = Array.from({ length: count }, (_, i) => {
    const [a, b, c, d] = [0, 1, 2, 3].map(k => random(4 * i + k));
    const at = new Date(Date.UTC(2025, 0, 1) + i * 3_150_000).toISOString();
    const aim_deg = 6 * b * Math.sin(c * 6.28);
    return { kind: 'putt', id: `p${i}`, at, changed: at, place: `Larkmoor ${i % 9}`, text: '',
      distance_m: 0.8 + 7 * a, stimp_ft: 9 + (i % 4) / 2,
      slope_percent: 0.5 + 2 * b, fall_deg: 360 * c, past_m: 0.3, aim_deg,
      result: d < 0.4 ? 'holed' : { x_m: d - 0.5, y_m: 0.3 * (b - 0.5) },
      ...(i % 4 ? {} : { gate: 'left', line_error_deg: c - 0.5, felt_percent: 2 * b }) };
  });
  for (let i = 0; i < count; i += 2000) await db.write(entries.slice(i, i + 2000));
}"""
FIND = """async () => {
  const db = await import('/records/db.js');
  const putts = (await db.readAll()).map(({ kind, changed, place, text, ...putt }) => putt);
  const taken = [];
  for (let i = 0; i < 3; i += 1) {
    const start = performance.now();
    // Another putt fewer each time, and none that was solved before
    await engine.ask('findings', { putts: putts.slice(500 * i) });
    taken.push(performance.now() - start);
  }
  return taken;
}"""
COUNT = """async count => {
  const random = i => (Math.imul(i + 1, 2654435761) >>> 0) / 2 ** 32;
  const result = (k, taken) => (k === taken - 1 ? 'holed' : 'missed');
  const putts = (i, taken) => Array.from({ length: taken }, (_, k) =>
    ({ distance_m: k ? null : 0.5 + 15 * random(i), result: result(k, taken), side: 'left', length: 'short' }));
  const holes = (r) => Array.from({ length: 18 }, (_, h) => ({ hole: h + 1, putts: putts(18 * r + h, 1 + (h % 3)) }));
  const day = (r) => new Date(Date.UTC(2025, 0, 1 + 2 * r)).toISOString();
  const rounds = Array.from({ length: count }, (_, r) => ({ id: `r${r}`, at: day(r), holes: holes(r) }));
  const taken = [];
  for (let i = 0; i < 3; i += 1) {
    const start = performance.now();
    await engine.ask('rounds', { rounds: rounds.slice(i) });
    taken.push(performance.now() - start);
  }
  return taken;
}"""
SCROLL = """async () => {
  const page = document.querySelector('main');
  page.scrollTop = 0;
  const frame = () => new Promise(requestAnimationFrame);
  const taken = [];
  for (let i = 0, last = await frame(); i < 120; i += 1) {
    // A slow drag, then flings through the whole list
    page.scrollTop += i < 60 ? 40 : page.scrollHeight / 70;
    const now = await frame();
    taken.push(now - last);
    last = now;
  }
  return taken.slice(2);
}"""
READY = "() => document.querySelector('.engine')?.textContent === ''"


def rows(playwright: Playwright, folder: Path, store: Path) -> list[Row]:
    site = Site(folder, dist.modules())
    stores = {kind: store / f"browser-record-{kind}" for kind in ("full", "empty")}
    full, empty = (browser.open_store(playwright, each) for each in stores.values())
    page = full.new_page()
    page.goto(site.url + "licences.txt")  # the site's origin and policy, without the app's own engine
    page.evaluate(FILL, PUTTS)
    page.evaluate(START)
    found: list[float] = page.evaluate(FIND)
    seconds = median(found) / 1e3
    counted: list[float] = page.evaluate(COUNT, COUNTED)
    worst = _scrolled(page, site) / 1e3
    page.close()
    for context in (full, empty):
        _settle(context, site)
        context.close()
    site.stop()
    starts = [{kind: start(playwright, each, site.url)["live"] for kind, each in stores.items()} for _ in range(ROUNDS)]
    with_putts, without = (median(each[kind] for each in starts) for kind in stores)
    what = f"{PUTTS:,} putts"
    return [
        Row(f"findings of {what}", milliseconds(seconds), f"limit {FINDINGS_LIMIT:g} s", seconds / FINDINGS_LIMIT, 1),
        Row(
            f"{COUNTED} rounds counted",
            milliseconds(median(counted) / 1e3),
            f"limit {COUNTED_LIMIT:g} s",
            median(counted) / 1e3 / COUNTED_LIMIT,
            1,
        ),
        Row(
            f"list of {what}, longest frame", milliseconds(worst), f"limit {milliseconds(FRAME_LIMIT)}", worst / FRAME_LIMIT, 1
        ),
        Row(
            f"start with {what} kept",
            milliseconds(with_putts),
            f"with none {milliseconds(without)}",
            with_putts / without,
            START_LIMIT,
        ),
    ]


def _settle(context: BrowserContext, site: Site) -> None:
    """The app as on its second day."""
    page = context.new_page()
    page.goto(site.url)
    until(page, SNAPSHOT_KEPT)
    until(page, COMPLETE)
    page.close()


def _scrolled(page: Page, site: Site) -> float:
    page.goto(site.url + "#record")
    page.get_by_role("button", name="Notes", exact=True).click()
    page.locator(".entry").first.wait_for()
    until(page, READY)
    # The worst of all: what the first leaves behind is not to slow the third
    longest: list[float] = [max(page.evaluate(SCROLL)) for _ in range(SCROLLS)]
    return max(longest)
