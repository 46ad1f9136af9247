"""The main jobs in other engines than Chromium's, in the order in which a player comes to them."""

import json
from pathlib import Path
from typing import Any

READ = "document.querySelector('.window:not(.stale)') && document.querySelector('.answer .pace').innerText"
READY = "document.querySelector('.engine')?.textContent === ''"
INSTALLED = "navigator.serviceWorker.getRegistration().then((found) => found?.active?.state === 'activated')"
SNAPSHOT = "caches.open('borrowline-snapshots').then((cache) => cache.keys()).then((keys) => keys.length)"
ENTRY = "document.querySelector('#entry').value"


def go(browser: Any, screen: str) -> None:
    browser.click(".screens a", screen)
    browser.until("document.title.startsWith(arguments[0])", screen)


def test_the_first_visit_reads(used: Any) -> None:
    browser, _ = used
    assert browser.until(READ)
    assert browser.until(INSTALLED)


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


def test_a_later_start_needs_no_network(used: Any) -> None:
    browser, site = used
    browser.until(SNAPSHOT)
    go(browser, "Read")
    site.stop()
    browser.open(site.url)
    assert browser.until(READ)
    assert browser.until(READY)
    go(browser, "Record")
    browser.click(".pick", "Notes")
    browser.until("document.body.innerText.includes('Slow after rain')")
