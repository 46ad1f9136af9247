"""What the phone keeps: the last read at once, without engine or network, and nothing that a bad record can break."""

import json
import re
import shutil
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import BrowserContext, expect

import browser

PUTT = {"distance_m": 3.048, "slope_percent": 2.0, "fall_deg": 90.0, "stimp_ft": 10.0, "past_m": 0.3048}
STATIONS = [{"at_m": 0, "slope_percent": 2, "fall_deg": 90}, {"at_m": 3, "slope_percent": 1, "fall_deg": 270}]
KEY = "borrowline"
KEPT_99 = """() => new Promise((resolve) => {
  const open = indexedDB.open('borrowline', 99);
  open.onsuccess = () => {
    const all = open.result.transaction('entries').objectStore('entries').getAll();
    all.onsuccess = () => { open.result.close(); resolve(all.result); };
  };
})"""


def test_the_last_read_is_there_before_the_engine(phone: Any) -> None:
    page = phone.ready()
    page.locator("#ruler").press("PageUp")
    expect(page.locator("#entry")).to_have_value("15")
    expect(page.locator(".answer .pace")).to_contain_text("15")
    expect(page.locator(".window:not(.stale)")).to_have_count(1)
    page.wait_for_function(
        "() => (({ putt, off }) => off && putt.distance_m > 4.5)(JSON.parse(localStorage.borrowline ?? '{}').read ?? {})"
    )
    before = page.locator(".answer").inner_text()
    assert "±" in before
    # An engine that never comes up
    page.route(re.compile(r"engine/worker\.js"), lambda route: None)
    page.add_init_script("navigator.serviceWorker.register = () => new Promise(() => {})")
    page.evaluate("navigator.serviceWorker.getRegistrations().then(all => Promise.all(all.map(one => one.unregister())))")
    page.reload()
    expect(page.get_by_role("status")).to_have_text("Engine is starting")
    assert page.locator(".answer").inner_text() == before
    expect(page.locator(".path").first).to_be_attached()
    expect(page.locator("#entry")).to_have_value("15")


def test_after_the_first_visit_it_works_with_no_signal_and_so_does_a_putt_sent_by_link(
    site: Any, open_browser: Callable[..., BrowserContext], engine: Callable[..., Any]
) -> None:
    sent = {**{name: PUTT[name] for name in ("distance_m", "stimp_ft", "past_m")}, "stations": STATIONS}
    first = open_browser()
    page = first.pages[0]
    page.add_init_script(f"localStorage.{KEY} ??= {json.dumps(json.dumps({'schema': 1, 'putt': sent}))}")
    page.goto(site.url + "#line")
    page.locator(".parts").get_by_role("button", name="Send").click()
    link = page.get_by_label("Link").input_value()
    page.evaluate("navigator.serviceWorker.ready.then(() => true)")
    page.goto(site.url + "licences.txt")
    page.evaluate(f"localStorage.{KEY} = JSON.stringify({{ schema: 1, cautioned: true }})")
    first.close()
    site.stop()

    errors: list[str] = []
    page = open_browser().pages[0]
    page.on("console", lambda message: errors.append(message.text) if message.type == "error" else None)
    page.on("pageerror", lambda error: errors.append(str(error)))
    page.goto(site.url)
    page.locator("#ruler").press("PageUp")
    expect(page.locator("#entry")).to_have_value("15")
    expect(page.locator(".answer .pace")).to_contain_text("15", timeout=60_000)
    expect(page.locator(".window:not(.stale)")).to_have_count(1)
    page.goto("about:blank")
    page.goto(link)
    expect(page.get_by_text("A putt was sent to you")).to_be_visible(timeout=60_000)
    page.get_by_role("button", name="Read it").click()
    aim = abs(engine("read", **sent)["aim_offset_m"]) / 0.0254  # in, in tenths below ten
    said = f"{aim:.0f}" if aim >= 10 else f"{aim:.1f}".removesuffix(".0")
    expect(page.locator(".answer h1 .big")).to_contain_text(said, timeout=60_000)
    assert errors == []


def test_a_new_version_is_offered_and_taken_when_asked(
    site: Any, dist: Path, tmp_path: Path, open_browser: Callable[..., BrowserContext]
) -> None:
    folder = shutil.copytree(dist, tmp_path / "site")
    served = type(site)(folder)
    page = open_browser().pages[0]
    page.goto(served.url)
    page.evaluate("navigator.serviceWorker.ready.then(() => true)")
    page.reload()
    page.locator("#entry").wait_for()
    offer = page.get_by_text("A new version is ready.")
    expect(offer).to_have_count(0)
    with (folder / "precache.js").open("a") as precache:
        precache.write("self.CHANGES.unshift({ version: '9.9.9', what: ['Balls are heard.', 'Rounds are counted.'] });\n")
    page.evaluate(
        "navigator.serviceWorker.ready.then(registration => registration.update()).then(() => { window.old = true; })"
    )
    expect(offer).to_have_text("A new version is ready. Balls are heard. Rounds are counted.")
    page.get_by_role("button", name="Use it now").click()
    page.wait_for_function("() => !window.old")
    page.locator("#entry").wait_for()
    expect(offer).to_have_count(0)
    served.stop()


def test_a_broken_record_gives_way_to_the_defaults(phone: Any) -> None:
    page = phone.page
    for record in (
        "not JSON",
        "[]",
        '{"schema":99}',
        '{"schema":1,"putt":{"distance_m":"far"},"read":{"putt":{},"value":{"path":[[1]]}},"settings":7}',
    ):
        page.goto(phone.url + "licences.txt")
        phone.show(browser.PHONE)  # nothing kept from the one before
        page.evaluate("record => { localStorage.borrowline = record; }", record)
        phone.ready()
        expect(page.locator("#entry")).to_have_value("10")


def test_a_damaged_entry_takes_no_other_with_it(phone: Any) -> None:
    roll = {"distance_m": 6.1, "time_s": 4.7, "way": "out", "place": "", "date": datetime.now(UTC).isoformat()}
    page = phone.open(
        "#green", calibration={"rolls": [roll, {**roll, "time_s": "soon"}, {**roll, "way": "back"}], "ball": False}
    )
    page.get_by_role("button", name="Speed", exact=True).click()
    expect(page.get_by_role("button", name="Remove roll")).to_have_count(2)


def test_what_a_newer_app_kept_stays_untouched(phone: Any) -> None:
    newer = json.dumps({"schema": 99, "putt": {"shape": "unknown"}})
    phone.page.add_init_script(f"localStorage.borrowline = {json.dumps(newer)}")
    page = phone.open("#record")
    expect(page.get_by_text("A newer Borrowline has written here.")).to_be_visible()
    page.get_by_role("link", name="Settings").click()
    page.get_by_label("dark", exact=True).check(force=True)
    page.wait_for_timeout(500)
    assert page.evaluate("localStorage.borrowline") == newer


def test_a_newer_record_stays_untouched(phone: Any) -> None:
    page = phone.open("#settings", putt=PUTT)
    page.evaluate(
        """() => new Promise((resolve) => {
          const open = indexedDB.open('borrowline', 99);
          open.onupgradeneeded = () => {
            open.transaction.objectStore('entries').put({ id: 'kept', shape: 'unknown' });
          };
          open.onsuccess = () => { open.result.close(); resolve(); };
        })"""
    )
    page.get_by_role("link", name="Record").click()
    expect(page.get_by_text("A newer Borrowline has written here.")).to_be_visible()
    expect(page.get_by_text("How much is kept is not known yet.")).to_be_visible()
    expect(page.get_by_role("button", name="Holed", exact=True)).to_have_count(0)
    assert page.evaluate(KEPT_99) == [{"id": "kept", "shape": "unknown"}]


def test_the_caution_is_said_once(phone: Any) -> None:
    page = phone.open()
    caution = page.get_by_text("Rule 4.3a does not allow")
    expect(caution).to_be_visible()
    page.get_by_role("button", name="Understood").click()
    expect(caution).to_have_count(0)
    assert phone.kept("cautioned")
    page.reload()
    page.locator(".answer").wait_for()
    expect(caution).to_have_count(0)
    page.get_by_role("link", name="Settings").click()
    page.get_by_role("link", name="About").click()
    expect(page.get_by_text("Rule 4.3a of the Rules of Golf")).to_be_visible()


@pytest.mark.parametrize("phone", [{"color_scheme": "dark"}], indirect=True)
def test_the_screen_follows_the_phone_unless_chosen(phone: Any) -> None:
    page = phone.open()
    theme = page.locator("html")
    expect(theme).to_have_attribute("data-theme", "dark")
    page.get_by_role("link", name="Settings").click()
    page.get_by_label("light", exact=True).check(force=True)
    expect(theme).to_have_attribute("data-theme", "light")
    page.get_by_label("as the phone").check(force=True)
    expect(theme).to_have_attribute("data-theme", "dark")
    page.emulate_media(color_scheme="light")
    expect(theme).to_have_attribute("data-theme", "light")
    page.get_by_label("dark", exact=True).check(force=True)
    page.wait_for_function("() => JSON.parse(localStorage.borrowline ?? 'null')?.settings.theme === 'dark'")
    page.reload()
    expect(theme).to_have_attribute("data-theme", "dark")


def test_the_usual_speed_and_pace_last(phone: Any) -> None:
    page = phone.open("#settings")
    page.get_by_label("Usual green speed").fill("40")
    page.keyboard.press("Tab")
    expect(page.get_by_role("alert")).to_contain_text("Usual green speed takes 5 to 15")
    page.get_by_label("Usual green speed").fill("11.5")
    page.keyboard.press("Tab")
    expect(page.get_by_role("alert")).to_have_count(0)
    assert phone.kept("settings.stimp_ft") == 11.5
    page.get_by_role("link", name="Read").click()
    expect(page.locator(".cell[aria-label^='Stimp']")).to_contain_text("11.5")


def test_the_version_shown_is_the_projects(phone: Any) -> None:
    project = (Path(__file__).parents[2] / "pyproject.toml").read_text()
    version = re.search(r'^version = "(.+)"', project, re.MULTILINE)
    assert version is not None
    expect(phone.open("#about").get_by_text(f"Version {version[1]}", exact=True)).to_be_visible()
