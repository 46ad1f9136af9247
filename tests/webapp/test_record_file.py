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


AT = "2026-05-03T17:30:00.000Z"


def head(own: str, at: str = AT, **fields: Any) -> dict[str, Any]:
    return {"id": own, "at": at, "changed": at, "place": "", "text": "", **fields}


def entry(name: str, **fields: Any) -> dict[str, Any]:
    return {"kind": "putt", **head(name), **PUTT, "aim_deg": 6.0, "result": "holed", **fields}


def a_file(*entries: Any, **fields: Any) -> str:
    """A file as the first version wrote it."""
    return json.dumps({"format": "borrowline-record", "version": 1, "entries": entries, "before": [], **fields})


@pytest.fixture
def files(phone: Any) -> Page:
    page: Page = phone.open("#record", putt=PUTT)
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
    head("n", "2026-05-04T08:00:00.000Z", kind="note", text="é ☂"),
    head("w", "2026-05-04T07:00:00.000Z", kind="note", weather="rain, then sun", stimp_ft=9.5, stimp_sd_ft=0.2),
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


OLD_DRILL = {"id": "d1", "session": "s1", "drill": "start_gate", "date": AT, "spent_s": 300, "good": 14, "bad": 6}
OLD_SPEEDS = [
    {"place": "Larkmoor", "date": "2026-05-02", "stimp_ft": 10.5, "stimp_sd_ft": 0.2},
    {"place": "Quill Bay", "date": "2026-05-01", "stimp_ft": 16.2, "stimp_sd_ft": None},  # more than a read takes
]
COUNTS: dict[str, Any] = {"spent_s": 300, "good": 14, "bad": 6}
DRILL = head("d1", kind="drill", session="s1", drill="start_gate", name="start gate", **COUNTS)
NOON = "2026-05-02T12:00:00.000Z"
SPEED = head("speed 2026-05-02 10.5 Larkmoor", NOON, kind="note", place="Larkmoor", stimp_ft=10.5, stimp_sd_ft=0.2)
MARKS = "import('/records/db.js').then((db) => db.readMarks())"
# As the first version of the database was made, by itself and in its twin
FIRST_DATABASE = """async (entries) => {
  const twin = await navigator.storageBuckets?.open('borrowline-twin', { durability: 'strict' });
  for (const factory of [indexedDB, ...(twin ? [twin.indexedDB] : [])]) await new Promise((resolve, reject) => {
    const open = factory.open('borrowline', 1);
    open.onerror = () => reject(open.error);
    open.onupgradeneeded = () => {
      const kept = open.result.createObjectStore('entries', { keyPath: 'id' });
      open.result.createObjectStore('before', { keyPath: ['id', 'changed'] }).put(entries[0]);
      open.result.createObjectStore('marks', { keyPath: 'id' }).put({ id: 'exported', value: '2026-05-01T00:00:00.000Z' });
      for (const entry of entries) kept.put(entry);
    };
    open.onsuccess = () => { open.result.close(); resolve(); };
  });
}"""
BY_ID = f"() => ({KEPT})().then((all) => Object.fromEntries(all.map((each) => [each.id, each])))"


def test_what_the_first_versions_kept_comes_along(phone: Any, until: Any) -> None:
    """Entries in the first database; drill results and green speeds beside settings and calibration."""
    page = phone.open("licences.txt")  # no app, which would open the database
    page.evaluate(FIRST_DATABASE, RICH)
    old = {
        "schema": 1,
        "putt": PUTT,
        "calibration": {"place": "Larkmoor", "speeds": OLD_SPEEDS, "feet": "damaged"},
        "practice": {"finished": [OLD_DRILL, {"id": "damaged"}], "minutes": 35},
    }
    page.evaluate("old => { localStorage.borrowline = old; }", json.dumps(old))
    page.goto(phone.url)
    until(page, f"{MARKS}.then(({{ schema }}) => schema === 4)")
    kept = page.evaluate(BY_ID)
    assert kept["d1"] == DRILL
    assert kept["speed 2026-05-02 10.5 Larkmoor"] == SPEED
    assert kept["speed 2026-05-01 16.2 Quill Bay"]["text"] == "Stimp 16.2"
    assert {name: kept[name] for name in ("a", "b", "n", "w")} == {each["id"]: each for each in RICH}
    assert len(kept) == 7
    page.get_by_role("link", name="Record").click()
    page.get_by_role("button", name="File").click()
    expect(page.get_by_text("7 entries on this phone, exported")).to_be_visible()
    page.get_by_role("link", name="Practice").click()
    page.get_by_text("35 min").wait_for()
    page.get_by_role("link", name="Green").click()
    page.get_by_role("button", name="Speed", exact=True).click()
    expect(page.get_by_text("Larkmoor, 2 May 2026")).to_be_visible()
    expect(page.locator("#place")).to_have_value("Larkmoor")


def test_drill_results_calibration_and_settings_come_back_from_the_file(phone: Any, tmp_path: Path) -> None:
    page = phone.open("#record", putt=PUTT, settings={"aim": "cups"}, calibration={"home_stimp_ft": 8.5})
    page.get_by_role("button", name="File").click()
    take(page, a_file(DRILL, SPEED, version=3))
    whole = exported(page, "Export everything", tmp_path)
    page.get_by_role("button", name="Delete everything").click()
    expect(page.get_by_role("alert")).to_contain_text("2 entries, what they were before, calibration and settings?")
    page.get_by_role("button", name="Yes, delete everything").click()
    assert phone.kept("settings.aim") == "in"
    assert phone.kept("calibration.home_stimp_ft") == 10
    assert page.evaluate(KEPT) == []
    give(page, whole)
    expect(page.locator(".preview")).to_contain_text("2 new. 0 newer than here. 0 here already. Other settings and calibration")
    page.get_by_role("button", name="Take in 2, and replace settings and calibration").click()
    expect(page.locator(".preview")).to_have_count(0)
    assert phone.kept("settings.aim") == "cups"
    assert phone.kept("calibration.home_stimp_ft") == 8.5
    assert page.evaluate(KEPT) == [DRILL, SPEED]


def test_a_file_of_the_second_version_keeps_its_drill_results_and_speeds(files: Page) -> None:
    phone = {"calibration": {"speeds": OLD_SPEEDS}, "settings": {"aim": "yards"}}
    give(files, a_file(entry("a"), version=2, drills=[OLD_DRILL, {"id": "bad"}], phone=phone))
    expect(files.locator(".preview")).to_contain_text("4 new.")
    expect(files.locator(".preview")).to_contain_text("Entry 3: at is missing")
    expect(files.locator(".preview")).to_contain_text("settings of the settings and calibration")
    files.get_by_role("button", name="Take in the other 4").click()
    expect(files.locator(".preview")).to_have_count(0)
    kept = files.evaluate(BY_ID)
    assert kept["d1"] == DRILL
    assert kept[SPEED["id"]] == SPEED
    for drill, button in (({**OLD_DRILL, "date": "2026-05-04T17:30:00.000Z", "good": 15}, "Take in 1"), (OLD_DRILL, "Done")):
        give(files, a_file(version=2, drills=[drill]))
        files.get_by_role("button", name=button).click()
        expect(files.locator(".preview")).to_have_count(0)
    assert files.evaluate(BY_ID)["d1"]["good"] == 15


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


def test_what_was_changed_since_the_preview_stays(files: Page) -> None:
    take(files, a_file(entry("a", text="old")))
    give(files, a_file(entry("a", changed="2026-05-04T00:00:00.000Z", text="from the file")))
    expect(files.locator(".preview")).to_contain_text("1 newer than here.")
    other = files.context.new_page()
    other.goto(files.url)
    other.get_by_role("button", name="Notes", exact=True).click()
    other.locator(".entry").click()
    other.get_by_label("Remark").fill("mended")
    other.keyboard.press("Tab")
    expect(other.locator(".before li")).to_have_count(1)
    files.get_by_role("button", name="Take in").click()
    expect(files.locator(".said")).to_have_text("0 new, 0 changed.")
    assert [each["text"] for each in files.evaluate(KEPT)] == ["mended"]


def test_the_flags_of_a_table_are_read_as_spreadsheets_write_them(files: Page) -> None:
    head = "id,at,distance_m,stimp_ft,slope_percent,fall_deg,past_m,aim_deg,result,sample,gone"
    row = "2026-05-03T17:30:00Z,3,10,2,90,0.3,6,holed"
    give(files, f"{head}\na,{row},TRUE,TRUE\nb,{row},FALSE,\nc,{row},no idea,yes\n", "putts.csv")
    expect(files.locator(".preview li")).to_have_text('Line 4: sample is "no idea"; it takes true, false or nothing')
    files.get_by_role("button", name="Take in the other 2").click()
    expect(files.locator(".preview")).to_have_count(0)
    assert {each["id"]: (each.get("sample"), each.get("gone")) for each in files.evaluate(KEPT)} == {
        "a": (True, True),
        "b": (None, None),
    }


def test_a_table_of_putts_is_no_export_of_the_record(files: Page, tmp_path: Path) -> None:
    take(files, a_file(entry("a")))
    exported(files, "Export putts as a table", tmp_path)
    files.get_by_role("button", name="Notes", exact=True).click()
    expect(files.get_by_text("This record has never been exported.")).to_be_visible()
    files.get_by_role("button", name="File").click()
    exported(files, "Export everything", tmp_path)
    expect(files.get_by_text("1 entry on this phone, exported")).to_be_visible()
    files.get_by_role("button", name="Delete everything").click()
    files.get_by_role("button", name="Yes, delete everything").click()
    expect(files.get_by_text("0 entries on this phone. Nothing leaves it")).to_be_visible()


def test_an_import_that_fails_midway_leaves_nothing_behind(files: Page) -> None:
    take(files, a_file(entry("a", text="as it was")))
    files.evaluate(
        """() => {
          const put = IDBObjectStore.prototype.put;
          let left = 2;
          IDBObjectStore.prototype.put = function (...entry) {
            if (!left--) throw new DOMException('full', 'QuotaExceededError');
            return put.apply(this, entry);
          };
        }"""
    )
    give(files, a_file(entry("a", changed="2026-06-01T00:00:00.000Z"), entry("b"), entry("c")))
    files.get_by_role("button", name="Take in 3").click()
    expect(files.get_by_role("alert")).to_contain_text("Nothing was lost")
    expect(files.locator(".preview")).to_be_visible()
    assert files.evaluate(KEPT) == [entry("a", text="as it was")]


def test_what_is_no_record_is_refused(files: Page) -> None:
    for text, said in (
        ("", "This is no record of Borrowline"),
        ("{", "The file is cut off or no JSON"),
        ('{"format":"other"}', "This is no record of Borrowline"),
        (a_file(version=6), "from a newer Borrowline"),
        (a_file(version="old"), "its version is none"),
        ("a,b\n1,2\n", "This is no record of Borrowline"),
        ("id,distance_m,result,speed_mph\n", "names speed_mph"),
    ):
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
DRILLS = st.fixed_dictionaries({}, optional={name: st.just(value) | ANYTHING for name, value in DRILL.items()})
ROWS = st.lists(st.text(alphabet='",\n\r;a1é', max_size=30), max_size=6)
FILES = st.one_of(
    st.text(max_size=60),
    st.lists(ENTRIES | ANYTHING, max_size=4).map(lambda entries: a_file(*entries)),
    ROWS.map(lambda rows: "\n".join(["id,at,distance_m,result", *rows])),
    st.tuples(st.lists(st.just(OLD_DRILL) | ANYTHING, max_size=2), ANYTHING).map(
        lambda more: a_file(version=2, drills=more[0], phone=more[1])
    ),
    st.tuples(st.lists(ENTRIES | DRILLS | ANYTHING, max_size=4), ANYTHING).map(
        lambda more: a_file(*more[0], version=3, phone=more[1])
    ),
    st.tuples(st.integers(0, 400), st.text(max_size=3)).map(lambda cut: a_file(*RICH)[: cut[0]] + cut[1]),
)
BATCH = 50


def test_no_file_breaks_the_import(files: Page) -> None:
    """Three hundred files: each is refused in words, or falls into good entries that stay as they are and named bad ones."""
    read = """async texts => {
      const { fromFile, preview, toJson } = await import('/records/transfer.js');
      const { checked } = await import('/records/entry.js');
      const { createParts } = await import('/records/parts.js');
      const phone = ['green', 'line', 'read', 'settings'].map(name => import(`/features/${name}/kept.js`));
      const parts = createParts(Object.assign({}, ...(await Promise.all(phone)).map(({ keeps }) => keeps)));
      return texts.map(text => {
      let file;
      try { file = fromFile(text, parts); }
      catch (error) { return error.constructor === Error && error.message.length > 10; }
      const again = fromFile(toJson(file.entries, file.before, file.phone), parts);
      const { fresh, newer, kept } = preview([], {}, file);
      return JSON.stringify(again.entries) === JSON.stringify(file.entries.map(checked)) && !again.bad.length
        && JSON.stringify(again.phone) === JSON.stringify(file.phone)
        && fresh.length + newer.length + kept === file.entries.length && file.bad.every(why => typeof why === 'string');
      });
    }"""

    @settings(max_examples=6, deadline=None, suppress_health_check=list(HealthCheck))
    @given(st.lists(FILES, min_size=BATCH, max_size=BATCH))
    def read_all(texts: list[str]) -> None:
        good = files.evaluate(read, texts)
        assert all(good), texts[good.index(False)]

    read_all()


def test_another_players_record_is_looked_at_and_never_mixed_unasked(files: Page, phone: Any) -> None:
    take(files, a_file(entry("mine")))
    files.locator("#player-name").fill("Ash")
    files.keyboard.press("Tab")
    theirs = {"settings": {"name": "Rowan"}}
    give(files, a_file(entry("theirs"), entry("more"), version=3, phone=theirs))
    expect(files.locator(".preview")).to_contain_text("The record of Rowan")
    expect(files.get_by_role("button", name="Mix in 2", exact=True)).to_be_visible()
    files.get_by_role("button", name="Look at it beside mine").click()
    expect(files.get_by_text("Looking at Rowan, read only.")).to_be_visible()
    expect(files.locator(".entry")).to_have_count(2)
    files.get_by_role("button", name="Putt", exact=True).click()
    files.get_by_role("button", name="Holed", exact=True).click()
    expect(files.get_by_text("nothing is changed meanwhile")).to_be_visible()
    assert [each["id"] for each in files.evaluate(KEPT)] == ["mine"]
    files.get_by_role("button", name="Back to mine").click()
    files.get_by_role("button", name="Notes", exact=True).click()
    expect(files.locator(".entry")).to_have_count(1)
    assert phone.kept("settings.name") == "Ash"
