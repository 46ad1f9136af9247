"""The honest answer on the screen: in words, drawn, and in tables."""

import re
from typing import Any

from playwright.sync_api import Page, expect

PUTT = {"distance_m": 3.048, "slope_percent": 2.0, "fall_deg": 90.0, "stimp_ft": 10.0, "past_m": 0.3048}
SCREENS = [(320, 568), (390, 844), (1280, 800)]


def with_the_sample(phone: Any, **saved: Any) -> Page:
    page: Page = phone.open("#record", putt=PUTT, **saved)
    page.get_by_role("button", name="File").click()
    page.get_by_role("button", name="Load an invented player").click()
    expect(page.get_by_text("An invented player is loaded.")).to_be_visible()
    return page


def found(page: Page) -> Page:
    page.goto(page.url.split("#")[0] + "#findings")
    expect(page.locator(".findings h2").first).to_be_visible(timeout=60_000)
    return page


def test_what_is_said_of_the_invented_player(phone: Any) -> None:
    page = found(with_the_sample(phone))
    is_named_first(page)
    has_its_words_and_its_table(page)
    is_given_in_the_words_of_the_screen(page)
    is_one_page(page)
    for colours in ("dark", "light"):
        page.emulate_media(color_scheme=colours)
        assert phone.violations() == []
    page.get_by_role("link", name="The session planned from this").click()
    expect(page.locator(".plan li").filter(has_text="Needs work the most.").first).to_contain_text("Slope from a shim")


def is_named_first(page: Page) -> None:
    expect(page.get_by_role("heading", level=1)).to_contain_text(re.compile("Reading costs you most: \\d+ putts in 100"))
    expect(page.get_by_text("The invented player is among them.")).to_be_visible()
    rows = page.locator("table").first.locator("tbody tr")
    expect(rows).to_have_count(4)
    expect(rows.first).to_contain_text("Reading")
    expect(page.locator("section").filter(has_text="Reading").get_by_text("too little break")).to_be_visible()


def has_its_words_and_its_table(page: Page) -> None:
    drawn = page.locator("section").filter(has=page.locator("svg[role=img]"))
    expect(drawn).to_have_count(5)
    for section in drawn.all():
        assert len(section.locator("svg[role=img]").get_attribute("aria-label") or "") > 30
        for fold in section.locator("summary").all():
            fold.click()
        assert section.get_by_role("table").count() >= 1
    misses = page.locator(".ball").count()
    for caption in ("Where misses stopped", "Misses by start line and roll"):
        cells = page.get_by_role("table", name=caption).locator("td").all_inner_texts()
        assert sum(int(cell) for cell in cells) == misses
    published = page.get_by_role("table", name="Made of 100, as published")
    expect(published.get_by_role("row", name="10 40 34")).to_be_visible()


def is_given_in_the_words_of_the_screen(page: Page) -> None:
    with page.expect_download() as given:
        page.get_by_role("button", name="Share").click()
    expect(page.get_by_text("Saved with the downloads.")).to_be_visible()
    assert given.value.suggested_filename == "borrowline-findings.txt"
    report = given.value.path().read_text("utf-8")
    assert report.splitlines()[0] == page.get_by_role("heading", level=1).inner_text()
    assert "The invented player is among them." in report
    assert "for practice. In a round, Rule 4.3a" in report
    for name in (
        "Fewer putts on 100 holes",
        "Putts made by distance",
        "Before and in the last four weeks",
        "Putts made, by week",
    ):
        for row in page.get_by_role("table", name=name).locator("tbody tr").all():
            assert " | ".join(row.locator("th, td").all_inner_texts()) in report
    for said in page.locator("section p:not(.quiet)").all_inner_texts():
        assert said in report
    page.evaluate(
        """() => {
          navigator.canShare = () => true;
          navigator.share = async ({ files: [file] }) => { window.shared = await file.text(); };
        }"""
    )
    page.get_by_role("button", name="Share").click()
    expect(page.get_by_text("Given to the phone.")).to_be_visible()
    assert page.evaluate("window.shared") == report


def is_one_page(page: Page) -> None:
    for paper in ("A4", "Letter"):
        assert len(re.findall(rb"/Type\s*/Page\b", page.pdf(prefer_css_page_size=True, format=paper))) == 1, paper


def test_nothing_is_claimed_of_nothing(phone: Any) -> None:
    page = found(phone.open("#findings", putt=PUTT))
    expect(page.get_by_role("heading", level=1)).to_have_text("Log putts, and this says what costs you most.")
    expect(page.get_by_text("Not enough yet").first).to_be_visible()
    expect(page.locator("table")).to_have_count(0)


def test_the_answer_follows_the_other_hand_and_a_new_putt_west_of_greenwich(phone: Any) -> None:
    phone.page.context.new_cdp_session(phone.page).send("Emulation.setTimezoneOverride", {"timezoneId": "America/Los_Angeles"})
    page = found(with_the_sample(phone))
    weeks = page.get_by_role("table", name="Putts made, by week").locator("tbody th").all_inner_texts()
    assert {page.evaluate("day => new Date(day).getDay()", week) for week in weeks} == {1}  # Mondays
    expect(page.get_by_text("left, a pull")).to_be_visible()
    page.get_by_label("left-handed").check(force=True)
    expect(page.get_by_text("left, a push")).to_be_visible(timeout=30_000)
    page.reload()
    expect(page.get_by_text("left, a push")).to_be_visible(timeout=60_000)
    rests = page.get_by_text(re.compile(r"^From \d+ putts"))
    before = rests.inner_text()
    page.get_by_role("link", name="Record").first.click()
    page.get_by_role("button", name="Putt", exact=True).click()
    page.get_by_role("button", name="Holed", exact=True).click()
    expect(page.get_by_role("button", name="Take back")).to_be_visible()
    found(page)
    expect(rests).not_to_have_text(before)


def test_findings_are_stopped_and_tried_again(phone: Any) -> None:
    page = with_the_sample(phone)
    # The engine's steps wait until the test lets them go
    page.evaluate(
        """() => {
          const post = (window.post = Worker.prototype.postMessage);
          Worker.prototype.postMessage = function (message) {
            if (String(message).includes('"findings"')) window.held = () => post.call(this, message);
            else post.call(this, message);
          };
        }"""
    )
    page.get_by_role("link", name="Findings").click()
    expect(page.get_by_role("progressbar", name="Putts gone through")).to_be_visible()
    page.get_by_role("button", name="Stop", exact=True).click()
    expect(page.get_by_role("alert")).to_contain_text("No new findings: you stopped it.")
    expect(page.get_by_role("progressbar")).to_have_count(0)
    page.evaluate("() => { window.held?.(); Worker.prototype.postMessage = window.post; }")
    page.get_by_role("button", name="Try again").click()
    expect(page.get_by_role("heading", level=1)).to_contain_text("costs you most", timeout=30_000)
    expect(page.get_by_role("alert")).to_have_count(0)


def test_findings_that_failed_are_tried_again(phone: Any) -> None:
    page = with_the_sample(phone)
    page.evaluate(
        """() => {
          const post = Worker.prototype.postMessage;
          Worker.prototype.postMessage = function (message) {
            if (String(message).includes('"findings"')) Worker.prototype.postMessage = post;
            post.call(this, String(message).includes('"findings"') ? '{"ask":"nothing"}' : message);
          };
        }"""
    )
    page.get_by_role("link", name="Findings").click()
    expect(page.get_by_role("alert")).to_contain_text("No new findings: ask takes one of")
    page.get_by_role("button", name="Try again").click()
    expect(page.get_by_role("heading", level=1)).to_contain_text("costs you most", timeout=30_000)
    expect(page.get_by_role("alert")).to_have_count(0)


# A season: all that may be known of a putt, every change and every band of distance, more weeks than are shown
SEASON = """async () => {
  const db = await import('/records/db.js');
  const random = i => (Math.imul(i + 1, 2654435761) >>> 0) / 2 ** 32;
  await db.write(Array.from({ length: 160 }, (_, i) => {
    const [a, b, c, d] = [0, 1, 2, 3].map(k => random(4 * i + k));
    const at = new Date(Date.now() - i * 2e7).toISOString();
    return { kind: 'putt', id: `p${i}`, at, changed: at, place: '', text: '', distance_m: 0.5 + 11 * a * a,
      stimp_ft: 10, slope_percent: 2, fall_deg: 90, past_m: 0.3, aim_deg: 4 + 2 * b,
      line_error_deg: c - 0.5, felt_percent: 1 + d,
      result: d < 0.4 ? 'holed' : { x_m: d - 0.4 + 0.1 * a, y_m: 0.4 * (b - 0.5) - 0.1 } };
  }));
}"""


def test_the_report_of_a_season_is_one_page(phone: Any) -> None:
    page = phone.open("#about", settings={"distance": "m", "aim": "cm"})
    page.evaluate(SEASON)
    page = found(page)
    expect(page.get_by_role("table", name=re.compile("Before and in the last four weeks"))).to_be_visible()
    is_one_page(page)


def test_the_screens_fit_and_can_be_heard(phone: Any) -> None:
    page = with_the_sample(phone, settings={"distance": "paces", "aim": "balls"})
    for name in ("File", "Notes", "Putt"):
        page.get_by_role("button", name=name, exact=True).click()
        for colours in ("dark", "light"):
            page.emulate_media(color_scheme=colours)
            assert phone.violations() == []
        assert phone.misfits(*SCREENS) == []
    found(page)
    assert phone.misfits(*SCREENS) == []
