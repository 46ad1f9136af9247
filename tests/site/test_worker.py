"""The engine's worker and its owner, in a browser: starts, snapshots, deaths, and answers that never queue up."""

import pytest

from browser import SNAPSHOT_KEPT
from server import Site

PUTT = {"distance_m": 2.53, "stimp_ft": 10, "slope_percent": 2, "fall_deg": 90, "past_m": 0.3048}
SNAPSHOTS = "borrowline-snapshots"
IDLE_MS = 2000  # without a question, after which the engine makes its memory ready to be kept

START = """async () => {
  const { createEngine } = await import(new URL('engine/client.js', location.href).href);
  window.states = [];
  window.engine = createEngine({ onState: (state) => states.push(state) });
}"""
ASK = "(putt) => engine.ask('read', putt)"
FAIL = "(putt) => engine.ask('read', putt).then(() => null, ({ code, message, field }) => ({ code, message, field }))"
STATES = "() => states.map(({ kind }) => kind)"
# How long a player waits for one answer while the memory is made ready, and how long that takes in all, ms
ASK_MEANWHILE = f"""async (putt) => {{
  const began = performance.now();
  let longest = 0;
  for (let asked = began; !(await ({SNAPSHOT_KEPT})()); asked = performance.now()) {{
    await engine.ask('read', putt);
    longest = Math.max(longest, performance.now() - asked);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }}
  return [longest, performance.now() - began];
}}"""
# One bit of it turned; what it was stays aside
SPOIL = f"""async () => {{
  const cache = await caches.open('{SNAPSHOTS}');
  const [request] = await cache.keys();
  const kept = await cache.match(request);
  await (await caches.open('aside')).put(request, kept.clone());
  const bytes = new Uint8Array(await kept.arrayBuffer());
  bytes[bytes.length >> 1] ^= 1;
  await cache.put(request, new Response(bytes, {{ headers: kept.headers }}));
}}"""
BACK = f"""async () => {{
  const aside = await caches.open('aside'), cache = await caches.open('{SNAPSHOTS}');
  const [request] = await aside.keys();
  await cache.put(request, await aside.match(request));
}}"""
# The mark that stands while a start from the snapshot has not answered yet
TRY = f"""async () => {{
  const cache = await caches.open('{SNAPSHOTS}');
  const [request] = await cache.keys();
  await cache.put(`${{request.url}}?tried`, new Response(''));
}}"""


def start(context, url):
    """A page of the site's origin with an engine and nothing else."""
    page = context.new_page()
    page.goto(url + "licences.txt")
    page.evaluate(START)
    return page


READY = "states.at(-1).kind === 'ready'"


@pytest.fixture
def used(dist, modules, forgetful, until):
    """A phone that has a snapshot of its own, to be harmed."""
    site, context = Site(dist, modules), forgetful.new_context()
    first = start(context, site.url)
    first.evaluate(ASK, PUTT)
    until(first, SNAPSHOT_KEPT)
    first.close()
    yield context, site.url
    context.close()
    site.stop()


@pytest.fixture
def page(installed):
    opened = start(*installed)
    yield opened
    opened.close()


def test_it_starts_from_its_files_and_the_next_time_from_the_snapshot(open_browser, site, until):
    context = open_browser()
    page = start(context, site.url)
    first = page.evaluate(ASK, PUTT)
    assert page.evaluate("states.at(-1)") == {"kind": "ready", "from": "files"}
    page.wait_for_timeout(IDLE_MS)
    longest, whole = page.evaluate(ASK_MEANWHILE, PUTT)
    assert longest < whole / 2
    context.close()

    again = start(open_browser(), site.url)
    assert again.evaluate(ASK, PUTT) == first
    assert again.evaluate("states.at(-1)") == {"kind": "ready", "from": "snapshot"}
    assert again.evaluate(FAIL, {**PUTT, "distance_m": -1})["code"] == "bad_field"


def started(used, what):
    """The app started once more; it has answered, and from what."""
    page = start(*used)
    assert page.evaluate(ASK, PUTT)["aim_deg"]
    assert page.evaluate("states.at(-1).from") == what
    return page


def test_a_snapshot_that_is_no_good_is_made_anew(used, until):
    page = started(used, "snapshot")
    page.evaluate(SPOIL)
    page.close()
    page = started(used, "files")
    assert not page.evaluate(SNAPSHOT_KEPT)
    page.evaluate(BACK)
    page.close()
    page = started(used, "snapshot")
    page.evaluate(TRY)  # as if a start from it had not answered
    page.close()
    page = started(used, "files")
    until(page, SNAPSHOT_KEPT)
    page.close()
    started(used, "snapshot").close()


def test_a_refusal_names_the_field_and_the_engine_lives_on(page):
    refusal = page.evaluate(FAIL, {**PUTT, "distance_m": -1})
    assert refusal["code"] == "bad_field"
    assert refusal["field"] == "distance_m"
    assert "30" in refusal["message"]
    assert page.evaluate(ASK, PUTT)["aim_deg"]
    assert page.evaluate(STATES).count("ready") == 1


def test_a_worker_that_dies_is_replaced_and_what_waited_is_told(page, until):
    until(page, READY)
    page.workers[0].evaluate("setTimeout(() => { throw new Error('struck'); })")
    until(page, "states.some(({ kind }) => kind === 'restarting')")
    assert "struck" in page.evaluate("states.find(({ kind }) => kind === 'restarting').reason")
    assert page.evaluate(ASK, PUTT)["aim_deg"]
    assert page.evaluate(STATES)[-2:] == ["restarting", "ready"]


def test_a_worker_that_falls_silent_is_replaced_and_what_waited_is_told(page, until):
    until(page, READY)
    page.workers[0].evaluate("self.close()")
    told = page.evaluate(
        "(putt) => Promise.all([engine.ask('read', putt), engine.ask('read', putt)]"
        ".map((asked) => asked.then(() => null, ({ code }) => code)))",
        PUTT,
    )
    assert told == ["engine_died", "engine_died"]
    assert page.evaluate(ASK, PUTT)["aim_deg"]


def test_an_engine_that_cannot_start_says_so_and_starts_when_asked_to(open_browser, site, until):
    context = open_browser()
    context.route("**/engine.zip", lambda route: route.fulfill(status=404))
    page = start(context, site.url)
    until(page, "states.at(-1).kind === 'failed'")
    assert "404" in page.evaluate("states.at(-1).reason")
    assert page.evaluate(STATES).count("restarting") == 2
    assert page.evaluate(FAIL, PUTT)["code"] == "engine_failed"
    context.unroute("**/engine.zip")
    page.evaluate("engine.restart()")
    assert page.evaluate(ASK, PUTT)["aim_deg"]


def test_of_answers_under_the_finger_the_latest_wins(page, until):
    until(page, READY)
    distances = page.evaluate(
        "async (putt) => (await Promise.all(Array.from({ length: 50 }, (_, i) =>"
        " engine.latest('read', { ...putt, distance_m: 1 + i / 50 })))).map((value) => value !== undefined)",
        PUTT,
    )
    assert distances == [True] + [False] * 48 + [True]


def test_what_was_asked_for_good_is_not_replaced(page):
    answers = page.evaluate(
        "(putt) => Promise.all([engine.ask('read', putt), engine.latest('read', putt), engine.ask('read', putt)])", PUTT
    )
    assert all(answers)


FINDINGS = """() => ({ putts: Array.from({ length: 120 }, (_, i) => ({
  id: String(i), at: `2026-05-03T17:${10 + (i % 50)}:00Z`, distance_m: 2 + i / 100, stimp_ft: 10, slope_percent: 2,
  fall_deg: 90, past_m: 0.3, aim_deg: 6, result: i % 3 ? { x_m: 0.3, y_m: -0.1 } : 'holed' })) })"""


def test_a_long_answer_tells_its_share_and_stops_when_told_to(page, until):
    until(page, READY)
    told = page.evaluate(
        f"""async () => {{
          const putts = ({FINDINGS})(), shares = [];
          const whole = await engine.latest('findings', putts, {{ onShare: (share) => shares.push(share) }});
          const stop = new AbortController(), before = [];
          const stopped = await engine.latest('findings', putts, {{
            signal: stop.signal, onShare: (share) => {{ before.push(share); stop.abort(); }} }});
          return {{ used: whole.used, shares, stopped: stopped === undefined, before: before.length }};
        }}"""
    )
    assert told["used"] == 120
    assert told["shares"] == sorted(told["shares"])
    assert 0 < told["shares"][0] < told["shares"][-1] < 1
    assert (told["stopped"], told["before"]) == (True, 1)
    assert page.evaluate(ASK, PUTT)["aim_deg"]
    assert page.evaluate(STATES).count("ready") == 1
