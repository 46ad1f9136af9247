"""The main jobs in other engines than Chromium's, in the order in which a player comes to them.

Each goes on where the one before has left off: run them whole. Their folder comes first by its name, and what one worker of
several begins with no other takes from it.
"""

import json
from pathlib import Path
from typing import Any

from PIL import Image

from browser import SNAPSHOT_KEPT

READ = "document.querySelector('.window:not(.stale)') && document.querySelector('.answer .pace').innerText"
READY = "document.querySelector('.engine')?.textContent === ''"
INSTALLED = "navigator.serviceWorker.getRegistration().then((found) => found?.active?.state === 'activated')"
ENTRY = "document.querySelector('#entry').value"


def go(browser: Any, screen: str) -> None:
    browser.click(".screens a", screen)
    browser.until("document.title.startsWith(arguments[0])", screen)


def test_the_first_visit_reads(used: Any) -> None:
    browser, _ = used
    assert browser.until(READ)
    assert browser.until(INSTALLED)
    browser.until(f"({SNAPSHOT_KEPT})()")


def test_a_number_is_typed_over(used: Any) -> None:
    browser, _ = used
    browser.click(".cell", "Stimp")
    before = browser.run(f"return {ENTRY}")
    browser.type("#entry", "11\ue007")
    assert browser.until(f"{ENTRY} !== arguments[0] && {ENTRY}", before) == "11"
    go(browser, "Settings")
    browser.type("#stimp_ft, input[inputmode=decimal]", "11\ue004")
    assert browser.run("return document.querySelector('#stimp_ft, input[inputmode=decimal]').value") == "11"
    go(browser, "Read")


def test_the_ruler_is_dragged(used: Any) -> None:
    browser, _ = used
    before = browser.run(f"return {ENTRY}")
    browser.drag("#ruler", -60)
    browser.until(f"{ENTRY} !== arguments[0]", before)
    assert browser.until(READ)


def test_the_fall_line_is_dragged(used: Any) -> None:
    browser, _ = used
    browser.click(".cell", "Falls")
    falls = "document.querySelector('#dial')?.getAttribute('aria-valuetext')"
    before = browser.until(falls)
    browser.drag("#dial", -40)
    browser.until(f"{falls} !== arguments[0]", before)
    assert browser.until(READ)
    browser.click(".cell", "Distance")


def test_a_putt_is_logged_and_listed(used: Any) -> None:
    browser, _ = used
    go(browser, "Record")
    browser.click("button", "Holed")
    browser.until("document.querySelector('.logged-line button')")  # that takes it back
    browser.reload()
    browser.click(".pick", "Notes")
    assert "holed" in browser.until("document.querySelector('.entry-what')?.textContent").lower()


def test_a_file_is_taken_in_and_listed(used: Any, tmp_path: Path) -> None:
    browser, _ = used
    at = "2026-05-03T17:30:00.000Z"
    note = {"kind": "note", "id": "n1", "at": at, "changed": at, "place": "Larkmoor", "text": "Slow after rain"}
    file = tmp_path / "record.json"
    file.write_text(json.dumps({"format": "borrowline-record", "version": 3, "exported": at, "entries": [note], "before": []}))
    go(browser, "Record")
    browser.click(".pick", "File")
    browser.choose("input[type=file]", file)
    browser.click("button", "Take in")
    browser.click(".pick", "Notes")
    browser.until("document.body.innerText.includes('Slow after rain')")


def test_metres_are_chosen_and_kept(used: Any) -> None:
    browser, site = used
    go(browser, "Settings")
    browser.click(".choice label", "metres")
    go(browser, "Read")
    browser.until("document.querySelector('.cells').innerText.includes('m')")
    browser.open(site.url + "#settings")
    browser.until("document.querySelector('.choice input:checked').parentElement.innerText.trim() === 'metres'")
    browser.click(".choice label", "feet")


def test_a_photograph_is_taken_from_a_file(used: Any, tmp_path: Path) -> None:
    browser, _ = used
    picture = tmp_path / "green.jpg"
    Image.effect_noise((480, 640), 40).convert("RGB").save(picture, quality=90)
    go(browser, "Line")
    browser.click(".pick", "Photo")
    browser.choose("input[type=file]", picture)
    browser.until("document.querySelector('canvas#photo')?.width > 0 && document.body.innerText.includes('ball')")


def test_the_tempo_sounds_or_says_that_it_cannot(used: Any) -> None:
    browser, _ = used
    go(browser, "Practice")
    browser.click(".pick", "Tempo")
    browser.until("document.querySelector('.go')?.disabled === false")
    browser.click(".go", "Play")
    # A machine without a sound device: the picture goes on, and why nothing is heard is said
    browser.until("document.querySelector('.go').innerText.trim() === 'Stop'")
    browser.click(".go", "Stop")


def test_a_session_outlives_a_reload(used: Any) -> None:
    browser, site = used

    def press(name: str) -> None:
        """By the button's own click: the view is drawn anew each second, and a reference to it goes stale."""
        found = "[...document.querySelectorAll('main button')].find((each) => each.innerText.trim() === arguments[0])"
        browser.until(f"!!{found}", name)
        browser.run(f"{found}.click()", name)

    left = "document.querySelector('.run-time')?.innerText"
    browser.open(site.url + "#practice")
    browser.click(".pick", "Session")
    browser.until("document.querySelector('.plan strong')?.innerText")
    press("Start")
    before = browser.until(left)
    browser.until(f"{left} !== arguments[0]", before)
    press("Pause")
    browser.until("document.querySelector('.go')?.innerText.trim() === 'Go on'")
    paused = browser.until(left)
    browser.reload()
    assert browser.until(left) == paused
    browser.until("document.querySelector('.go')?.innerText.trim() === 'Go on'")
    press("End")


def test_the_invented_player_is_found_out_shared_printed_and_exported(used: Any, engine_name: str) -> None:
    browser, site = used
    reminder = "document.body.innerText.includes('This record has never been exported')"
    browser.open(site.url + "#record")
    browser.until(reminder)
    browser.click(".pick", "File")
    browser.click(".word", "Load an invented player")
    browser.until("document.body.innerText.includes('An invented player is loaded')")
    # The file that a player would get, read where the page gives it away
    browser.run(
        """const real = URL.createObjectURL;
        URL.createObjectURL = (file) => { file.text().then((text) => { window.given = text; }); return real(file); };
        Object.defineProperty(navigator, 'canShare', { value: undefined, configurable: true });"""
    )
    browser.click("button", "Export everything")
    file = json.loads(browser.until("window.given"))
    assert sum(each["kind"] == "putt" for each in file["entries"]) > 100
    browser.until(f"!{reminder}")
    browser.open(site.url + "#findings")
    assert browser.until("document.querySelector('.findings h2') && document.querySelector('h1').innerText")
    # Where there is no sheet to share by, a file is saved; where the driver prints, it is seen on paper
    browser.click("button", "Share")
    browser.until("document.body.innerText.includes('Saved with the downloads.')")
    browser.run("window.print = () => { window.printed = true; }")
    browser.click("button", "Print or save this page")
    assert browser.run("return window.printed")
    if engine_name == "firefox":
        assert browser.pages() == 1
    browser.open(site.url + "#record")
    browser.click(".pick", "File")
    browser.click(".word", "Remove the invented player")
    browser.until("document.body.innerText.includes('The invented player is gone')")


def test_a_later_start_needs_no_network(used: Any) -> None:
    browser, site = used
    go(browser, "Read")
    site.stop()
    browser.open(site.url)
    assert browser.until(READ)
    assert browser.until(READY)
    go(browser, "Record")
    browser.click(".pick", "Notes")
    browser.until("document.body.innerText.includes('Slow after rain')")
