"""The record as a file and back: nothing lost, nothing twice, nothing half."""

import csv
import io
import json
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from playwright.sync_api import Page, expect

PUTT = {"distance_m": 3.0, "slope_percent": 2.0, "fall_deg": 90.0, "stimp_ft": 10.0, "past_m": 0.3}
KEPT = """() => import('/records/db.js').then(db => db.readAll())"""
KEPT_99 = """() => new Promise((resolve) => {
  const open = indexedDB.open('borrowline', 99);
  open.onsuccess = () => {
    const all = open.result.transaction('entries').objectStore('entries').getAll();
    all.onsuccess = () => { open.result.close(); resolve(all.result); };
  };
})"""


def entry(name: str, **fields: Any) -> dict[str, Any]:
    at = "2026-05-03T17:30:00.000Z"
    return {
        "kind": "putt",
        "id": name,
        "at": at,
        "changed": at,
        "place": "",
        "text": "",
        **PUTT,
        "aim_deg": 6.0,
        "result": "holed",
        **fields,
    }


def a_file(*entries: Any, **fields: Any) -> str:
    """A file as the first version wrote it; every test but those of what came later takes one in."""
    return json.dumps({"format": "borrowline-record", "version": 1, "entries": entries, "before": [], **fields})


@pytest.fixture
def files(phone: Any) -> Page:
    page: Page = phone.open("#notes", putt=PUTT)
    page.get_by_role("button", name="File").click()
    return page


def give(page: Page, text: str, name: str = "record.json") -> None:
    page.locator("input[type=file]").set_input_files({"name": name, "mimeType": "text/plain", "buffer": text.encode()})


def take(page: Page, text: str) -> None:
    give(page, text)
    page.get_by_role("button", name="Take in").click()
    expect(page.locator(".preview")).to_have_count(0)


def exported(page: Page, button: str, tmp_path: Path) -> str:
    with page.expect_download() as download:
        page.get_by_role("button", name=button).click()
    path = tmp_path / download.value.suggested_filename
    download.value.save_as(path)
    return path.read_bytes().decode()


RICH = [
    entry("a", gate="left", line_error_deg=-0.5, felt_percent=1.5, place='Quill "Bay", north', text="two\nlines"),
    entry("b", result={"x_m": -0.3, "y_m": 0.12}, at="2026-05-04T09:00:00.000Z", changed="2026-05-05T09:00:00.000Z"),
    {
        "kind": "note",
        "id": "n",
        "at": "2026-05-04T08:00:00.000Z",
        "changed": "2026-05-04T08:00:00.000Z",
        "place": "",
        "text": "é ☂",
    },
]
BENT = {name: value for name, value in entry("s").items() if name not in ("slope_percent", "fall_deg")}
BENT["stations"] = [{"at_m": 0, "slope_percent": 1, "fall_deg": 90}, {"at_m": 3, "slope_percent": 2, "fall_deg": 45}]


def test_export_wipe_import_is_equal(files: Page, tmp_path: Path) -> None:
    take(files, a_file(*RICH, BENT))
    take(files, a_file(entry("a", changed="2026-06-01T00:00:00.000Z", text="mended")))
    before = files.evaluate(KEPT)
    earlier = files.evaluate("() => import('/records/db.js').then(db => db.readAllBefore())")
    assert len(earlier) == 1
    whole, putts = exported(files, "Export everything", tmp_path), exported(files, "Export putts as a table", tmp_path)
    files.get_by_role("button", name="Delete everything").click()
    files.get_by_role("button", name="Yes, delete everything").click()
    expect(files.get_by_text("Everything is deleted.")).to_be_visible()
    take(files, whole)
    assert files.evaluate(KEPT) == before
    assert files.evaluate("() => import('/records/db.js').then(db => db.readAllBefore())") == earlier
    rows = list(csv.DictReader(io.StringIO(putts)))
    assert {row["id"] for row in rows} == {"a", "b", "s"}
    assert next(row for row in rows if row["id"] == "b")["y_m"] == "0.12"
    files.get_by_role("button", name="Delete everything").click()
    files.get_by_role("button", name="Yes, delete everything").click()
    expect(files.get_by_text("Everything is deleted.")).to_be_visible()
    take(files, putts)
    assert files.evaluate(KEPT) == [each for each in before if each["kind"] == "putt"]


DRILL = {"id": "d1", "session": "s1", "drill": "gate", "date": "2026-05-03T17:30:00.000Z", "spent_s": 300, "good": 14, "bad": 6}
SAVED = "JSON.parse(localStorage.borrowline ?? 'null')"


def test_drill_results_calibration_and_settings_come_back_from_the_file(phone: Any, tmp_path: Path) -> None:
    speed = {"place": "Larkmoor", "date": "2026-05-03T17:30:00.000Z", "stimp_ft": 10.5, "stimp_sd_ft": 0.2}
    page = phone.open(
        "#notes", putt=PUTT, settings={"aim": "cups"}, calibration={"speeds": [speed]}, practice={"finished": [DRILL]}
    )
    page.get_by_role("button", name="File").click()
    whole = exported(page, "Export everything", tmp_path)
    page.get_by_role("button", name="Delete everything").click()
    expect(page.get_by_role("alert")).to_contain_text("1 drill results, calibration and settings?")
    page.get_by_role("button", name="Yes, delete everything").click()
    page.wait_for_function(f"() => {SAVED}?.practice.finished.length === 0")
    assert page.evaluate(f"() => [{SAVED}.settings.aim, {SAVED}.calibration.speeds]") == ["in", []]
    give(page, whole)
    expect(page.locator(".preview")).to_contain_text("1 drill results. Other settings and calibration than here.")
    page.get_by_role("button", name="Take in 1, and replace settings and calibration").click()
    page.wait_for_function(f"() => {SAVED}?.settings.aim === 'cups'")
    assert page.evaluate(f"() => [{SAVED}.calibration.speeds, {SAVED}.practice.finished]") == [[speed], [DRILL]]
    newer, older = {**DRILL, "date": "2026-05-04T17:30:00.000Z", "good": 15}, {**DRILL, "date": "2026-05-01T17:30:00.000Z"}
    for drill in (newer, older):
        give(page, a_file(version=2, drills=[drill, {"id": "bad"}], phone={"settings": {"aim": "yards"}}))
        expect(page.locator(".preview")).to_contain_text("Drill result 2: it takes id")
        expect(page.locator(".preview")).to_contain_text("settings of the settings and calibration")
        page.get_by_role("button", name="Take in the other 1" if drill is newer else "Done").click()
    page.wait_for_function(f"() => {SAVED}?.practice.finished[0].good === 15")


def test_what_a_newer_app_kept_stays_untouched(phone: Any) -> None:
    newer = json.dumps({"schema": 99, "putt": {"shape": "unknown"}})
    phone.page.add_init_script(f"localStorage.borrowline = {json.dumps(newer)}")
    page = phone.open("#notes")
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
            open.result.createObjectStore('entries', { keyPath: 'id' }).put({ id: 'kept', shape: 'unknown' });
          };
          open.onsuccess = () => { open.result.close(); resolve(); };
        })"""
    )
    page.get_by_role("link", name="Notes").click()
    expect(page.get_by_text("A newer Borrowline has written here.")).to_be_visible()
    page.get_by_role("button", name="Holed").click()
    page.get_by_role("button", name="File").click()
    page.get_by_role("button", name="Delete everything").click()
    page.get_by_role("button", name="Yes, delete everything").click()
    expect(page.get_by_text("A newer Borrowline has written here.")).to_be_visible()
    assert page.evaluate(KEPT_99) == [{"id": "kept", "shape": "unknown"}]


def test_the_newer_wins_and_none_is_twice(files: Page) -> None:
    take(files, a_file(entry("a"), entry("b", changed="2026-05-09T00:00:00.000Z")))
    newer, older = entry("a", changed="2026-05-08T00:00:00.000Z", text="newer"), entry("b", text="older")
    give(files, a_file(newer, older, entry("c"), entry("c")))
    expect(files.locator(".preview")).to_contain_text("1 new. 1 newer than here. 2 here already.")
    assert len(files.evaluate(KEPT)) == 2
    files.get_by_role("button", name="Take in 2").click()
    expect(files.get_by_text("1 new, 1 changed.")).to_be_visible()
    assert {each["id"]: each["text"] for each in files.evaluate(KEPT)} == {"a": "newer", "b": "", "c": ""}


def test_bad_rows_are_named_and_left_out_only_with_consent(files: Page) -> None:
    head = "id,at,distance_m,stimp_ft,slope_percent,fall_deg,past_m,aim_deg,result,x_m,y_m"
    good = "g,2026-05-03T17:30:00Z,3,10,2,90,0.3,6,missed,0.4,-0.1"
    give(files, f"{head}\n{good}\nx,2026-05-03T17:30:00Z,300,10,2,90,0.3,6,holed,,\nshort,row\n", "putts.csv")
    preview = files.locator(".preview")
    expect(preview).to_contain_text("Line 3: distance_m is 300; it takes a number from 0.3 to 30")
    expect(preview).to_contain_text("Line 4: it has 2 cells; the first line has 11")
    assert files.evaluate(KEPT) == []
    files.get_by_role("button", name="Take in the other 1").click()
    expect(preview).to_have_count(0)
    assert [each["id"] for each in files.evaluate(KEPT)] == ["g"]


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("", "This is no record of Borrowline"),
        ("{", "The file is cut off or no JSON"),
        ('{"format":"other"}', "This is no record of Borrowline"),
        (a_file(version=3), "from a newer Borrowline"),
        (a_file(version="old"), "its version is none"),
        ("a,b\n1,2\n", "This is no record of Borrowline"),
        ("id,distance_m,result,speed_mph\n", "names speed_mph"),
    ],
)
def test_what_is_no_record_is_refused(files: Page, text: str, said: str) -> None:
    give(files, text)
    expect(files.locator(".said")).to_contain_text(said)
    assert files.evaluate(KEPT) == []


ANYTHING = st.recursive(
    st.none() | st.booleans() | st.floats() | st.integers() | st.text(max_size=20),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.sampled_from(sorted(entry("a"))), inner, max_size=4),
    max_leaves=8,
)
ENTRIES = st.fixed_dictionaries(
    {}, optional={name: st.just(value) | ANYTHING for name, value in {**entry("a"), "stations": [], "gate": "left"}.items()}
)
ROWS = st.lists(st.text(alphabet='",\n\r;a1é', max_size=30), max_size=6)
FILES = st.one_of(
    st.text(max_size=60),
    st.lists(ENTRIES | ANYTHING, max_size=4).map(lambda entries: a_file(*entries)),
    ROWS.map(lambda rows: "\n".join(["id,at,distance_m,result", *rows])),
    st.tuples(st.lists(ANYTHING, max_size=2), ANYTHING).map(lambda more: a_file(version=2, drills=more[0], phone=more[1])),
    st.tuples(st.integers(0, 400), st.text(max_size=3)).map(lambda cut: a_file(*RICH)[: cut[0]] + cut[1]),
)
BATCH = 100


def test_no_file_breaks_the_import(files: Page) -> None:
    """Two thousand files: each is refused in words, or falls into good entries that stay as they are and named bad ones."""
    read = """async texts => {
      const { fromFile, preview, toJson } = await import('/records/transfer.js');
      const { checked } = await import('/records/entry.js');
      return texts.map(text => {
      let file;
      try { file = fromFile(text); }
      catch (error) { return error.constructor === Error && error.message.length > 10; }
      const again = fromFile(toJson(file.entries, file.before, file.drills, file.phone));
      const { fresh, newer, kept } = preview([], { practice: { finished: [] } }, file);
      return JSON.stringify(again.entries) === JSON.stringify(file.entries.map(checked)) && !again.bad.length
        && JSON.stringify([again.drills, again.phone]) === JSON.stringify([file.drills, file.phone])
        && fresh.length + newer.length + kept === file.entries.length && file.bad.every(why => typeof why === 'string');
      });
    }"""

    @settings(max_examples=20, deadline=None, suppress_health_check=list(HealthCheck))
    @given(st.lists(FILES, min_size=BATCH, max_size=BATCH))
    def read_all(texts: list[str]) -> None:
        good = files.evaluate(read, texts)
        assert all(good), texts[good.index(False)]

    read_all()
