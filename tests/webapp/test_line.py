"""The line where the eye has it: in perspective, as chalk, off a ramp, by a link."""

import math
import re
from collections.abc import Callable
from typing import Any

import pytest
from playwright.sync_api import Page, expect

PUTT = {"distance_m": 3.048, "slope_percent": 2.5, "fall_deg": 70.0, "stimp_ft": 10.0, "past_m": 0.3048}
STATIONS = [{"at_m": 0, "slope_percent": 2, "fall_deg": 90}, {"at_m": 3, "slope_percent": 1, "fall_deg": 270}]
STANDS = [("ball", "standing", 1.6), ("ball", "crouching", 0.7), ("low", "crouching", 0.7), ("hole", "standing", 1.6)]
DAMAGED = ["putt?m=3", "putt?m=3&stimp=10&past=0.3&slope=2&fall=x", "putt?m=300&stimp=10&past=0&slope=2&fall=0"]
FOOT_M, INCH_M = 0.3048, 0.0254
PIXEL = 0.1
CARD_MM, PX_PER_MM = 85, 96 / 25.4
HALF_TENTH = 0.051
DROP_SOUND_S = 0.4
# The view is drawn for the size that its stage has
SIZED = (
    """document.querySelector('.seen')?.getAttribute('height') === String(document.querySelector('.eye-stage').clientHeight)"""
)
ON_LINE_PX = 2.0


def show(page: Page, part: str) -> None:
    page.get_by_role("link", name="Line", exact=True).click()
    page.locator(".parts").get_by_role("button", name=part).click()


def numbers(text: str) -> list[float]:
    return [float(n) for n in re.findall(r"-?\d+\.?\d*", text)]


def test_the_view_is_drawn_where_the_engine_has_it(phone: Any, engine: Callable[..., Any]) -> None:
    page = phone.ready(putt=PUTT)
    show(page, "See")
    picture = page.locator(".seen")
    for stand, eye, height_m in STANDS:
        page.locator(f"input[name=stand][value={stand}]").check()
        page.locator(f"input[name=eye][value={eye}]").check()
        size = {f"{side}_px": float(picture.get_attribute(side)) for side in ("width", "height")}
        seen = engine("view", **PUTT, stand=stand, eye_height_m=height_m, back_m=2, **size)
        expect(picture.locator(".ball")).to_have_attribute("cx", str(seen["chosen"][0][1]).removesuffix(".0"))
        hole = numbers(picture.locator(".hole").get_attribute("d"))
        assert hole == pytest.approx([each for pixel in seen["hole"] for each in pixel], abs=PIXEL)
        line = numbers(picture.locator(".path").get_attribute("d"))
        assert line[:2] == pytest.approx(seen["chosen"][0][1:3], abs=PIXEL)
        high = numbers(picture.locator(".high").get_attribute("d"))
        assert high[-2:] == pytest.approx(seen["high"][-1][1:3], abs=PIXEL)


@pytest.mark.parametrize("phone", [{"reduced_motion": "reduce"}], indirect=True)
def test_the_balls_come_one_after_another_without_motion(phone: Any, until: Any, engine: Callable[..., Any]) -> None:
    page = phone.ready(putt=PUTT)
    show(page, "See")
    page.locator(".rolling-name").wait_for(state="attached")
    page.locator(".high").wait_for(state="attached")
    until(page, SIZED)
    page.evaluate(
        """() => {
          const soon = setTimeout, start = AudioBufferSourceNode.prototype.start;
          window.setTimeout = (act, ms) => soon(act, ms / 5);
          AudioBufferSourceNode.prototype.start = function () { heard.push(this.buffer.duration); start.call(this); };
          const name = document.querySelector('.rolling-name'), ball = document.querySelector('[data-rolls]');
          Object.assign(window, { seen: [], heard: [], places: new Set(), over: false });
          new MutationObserver(() => {
            if (name.textContent) seen.push(name.textContent.split(':')[0]);
            else if (seen.length === 4) window.over = true;
          }).observe(name, { childList: true });
          new MutationObserver(() => places.add(ball.getAttribute('cx'))).observe(ball, { attributeFilter: ['cx'] });
        }"""
    )
    page.get_by_role("button", name="Roll", exact=True).click()
    until(page, "over", seconds=10)
    assert page.evaluate("seen") == ["High and soft", "Chosen", "Low and firm", "Chosen, missed"]
    assert page.evaluate("places.size") <= 5  # where each ball ends, and where it lay
    read = engine("read", **PUTT)
    past_s = read["path"][-1][0] - read["time_s"]
    drops = [pytest.approx(DROP_SOUND_S, abs=0.01)] * 3
    assert page.evaluate("heard") == [*drops, pytest.approx(past_s, abs=0.05)]


def test_the_balls_roll_in_real_time(phone: Any, engine: Callable[..., Any]) -> None:
    putt = {**PUTT, "distance_m": 1.0}
    page = phone.ready(putt=putt)
    show(page, "See")
    page.locator(".seen .hole").wait_for()
    took_s = page.evaluate(
        """() => new Promise(resolve => {
          const name = document.querySelector('.rolling-name'), start = performance.now();
          document.querySelector('.roll').click();
          (function look() {
            if (name.textContent.startsWith('Chosen')) return resolve((performance.now() - start) / 1000);
            requestAnimationFrame(look);
          })();
        })"""
    )
    assert took_s >= engine("window", **putt)["high_line"][-1][0]


def test_a_ball_rolls_on_where_the_view_is_drawn_anew(phone: Any, until: Any) -> None:
    page = phone.ready(putt=PUTT)
    show(page, "See")
    until(page, SIZED)
    page.evaluate(
        """() => {
          const [ball, high] = ['[data-rolls]', '.high'].map(each => document.querySelector(each));
          Object.assign(window, { off: 0, lines: new Set() });
          document.querySelector('.roll').click();
          requestAnimationFrame(function look() {
            const [x, y] = ['cx', 'cy'].map(name => Number(ball.getAttribute(name)));
            const foot = y + Number(ball.getAttribute('r'));
            const steps = Array.from({ length: 400 }, (_, i) => high.getPointAtLength(high.getTotalLength() * i / 399));
            window.off = Math.max(off, Math.min(...steps.map(point => Math.hypot(point.x - x, point.y - foot))));
            lines.add(high.getAttribute('d'));
            if (document.querySelector('.rolling-name').textContent.startsWith('High')) requestAnimationFrame(look);
          });
        }"""
    )
    page.wait_for_timeout(300)
    page.set_viewport_size({"width": 390, "height": 640})
    until(page, SIZED)
    page.wait_for_timeout(300)
    assert page.locator(".rolling-name").text_content().startswith("High")
    assert page.evaluate("lines.size") == 2
    assert page.evaluate("off") < ON_LINE_PX


def test_the_chalk_list_is_the_engines(phone: Any, engine: Callable[..., Any]) -> None:
    page = phone.ready(putt=PUTT)
    show(page, "Chalk")
    rows = engine("chalk", **PUTT, every_m=FOOT_M)["rows"]
    drawn = page.locator(".chalk tbody tr")
    expect(drawn).to_have_count(len(rows))
    for row, text in zip(rows, drawn.all_inner_texts(), strict=True):
        at, chosen, *_ = numbers(text)
        assert at == round(row["at_m"] / FOOT_M)
        assert chosen == pytest.approx(abs(row["chosen_m"]) / INCH_M, abs=HALF_TENTH)
        assert "L" in text
    page.evaluate("() => { speechSynthesis.speak = said => { window.said = said.text; }; }")
    page.get_by_role("button", name="Say the dots").click()
    said = page.evaluate("window.said").split(". ")
    assert len(said) == len(rows)
    assert numbers(said[0]) == [1, pytest.approx(abs(rows[0]["chosen_m"]) / INCH_M, abs=HALF_TENTH)]
    assert "inches left" in said[0]


def test_the_ramp_is_put_right_by_a_trial(phone: Any, engine: Callable[..., Any]) -> None:
    page = phone.ready(putt=PUTT)
    show(page, "Ramp")
    big = page.locator(".result .big")
    launch = engine("read", **PUTT)["launch_mps"]
    expect(big).to_contain_text(f"{launch**2 / (10 / 7 * 9.80665) / INCH_M:.1f}".removesuffix(".0"))
    page.get_by_label("Let go at").fill("12")
    page.get_by_label("Rolled, on the level").fill("8")
    page.keyboard.press("Tab")
    tried = engine("ramp", launch_mps=launch, stimp_ft=10, trial={"height_m": 12 * INCH_M, "rolled_m": 8 * FOOT_M})
    expect(big).to_contain_text(f"{tried['height_m'] / INCH_M:.1f}".removesuffix(".0"))
    # on another day's green the ramp has lost no more
    page.get_by_role("link", name="Read", exact=True).click()
    page.get_by_role("button", name="Stimp").click()
    page.get_by_role("textbox", name=re.compile("^Stimp")).fill("8")
    page.keyboard.press("Tab")
    slow = engine("read", **{**PUTT, "stimp_ft": 8.0})["launch_mps"]
    show(page, "Ramp")
    expect(page.get_by_text("tried at Stimp 10.")).to_be_visible()
    expect(big).to_contain_text(f"{tried['height_m'] * (slow / launch) ** 2 / INCH_M:.1f}".removesuffix(".0"))
    page.get_by_label("Rolled, on the level").fill("60")
    page.keyboard.press("Tab")
    expect(page.get_by_role("alert")).to_contain_text("does not roll so far")
    page.get_by_role("button", name="Forget the trial").click()
    expect(page.get_by_role("alert")).to_have_count(0)


def test_a_damaged_link_says_so_and_keeps_the_putt(phone: Any) -> None:
    page = phone.ready(putt=PUTT)
    for fragment in DAMAGED:
        page.evaluate("fragment => { location.hash = fragment; }", fragment)
        alert = page.get_by_role("alert")
        expect(alert).to_be_visible()
        assert len(alert.inner_text().split()) > 6
        expect(page.get_by_role("button", name="Read it")).to_have_count(0)
        page.get_by_role("button", name="Close").click()
    page.get_by_role("link", name="Read", exact=True).click()
    expect(page.get_by_label("Distance, feet")).to_have_value("10")


def test_no_such_putt_is_said_in_the_view(phone: Any) -> None:
    page = phone.open("#line", putt={**PUTT, "slope_percent": 8.0, "fall_deg": 0.0, "stimp_ft": 13.0})
    expect(page.locator(".eye-stage [role=alert]")).to_contain_text("No such putt", timeout=60_000)


@pytest.mark.parametrize("fragment", ["putt", "putt%3Fm=4&stimp=10", "putt?m=4"])
def test_a_damaged_link_is_told(phone: Any, fragment: str) -> None:
    page = phone.open(f"#{fragment}")
    expect(page.get_by_role("alert")).to_contain_text("The link is cut short or damaged")


def test_a_straight_putt_that_was_sent_is_aimed_dead_centre(phone: Any) -> None:
    page = phone.open("#putt%3Fm=3&stimp=10&past=0.3&slope=2&fall=180")
    expect(page.get_by_text("Aim dead centre.")).to_be_visible(timeout=60_000)


def test_the_eyes_height_is_kept(phone: Any) -> None:
    page = phone.ready(putt=PUTT)
    show(page, "See")
    page.get_by_role("link", name="Eye 63 in high, 6.6 ft back").click()
    page.get_by_label("Eye, standing").fill("70")
    page.get_by_label("Eye, crouching").fill("30")
    page.get_by_label("Eye behind ball or hole").fill("9")
    page.keyboard.press("Tab")
    page.wait_for_timeout(500)
    page.reload()
    expect(page.get_by_label("Eye, standing")).to_have_value("70")
    show(page, "See")
    expect(page.get_by_role("link", name="Eye 70 in high, 9 ft back")).to_be_visible()
    page.locator("input[name=eye][value=crouching]").check()
    page.get_by_role("link", name="Eye 30 in high, 9 ft back").click()
    page.get_by_label("Eye, standing").fill("700")
    page.keyboard.press("Tab")
    expect(page.get_by_role("alert")).to_contain_text("Eye, standing takes")
    assert math.isclose(phone.kept("sighted.standing_m"), 70 * INCH_M)


@pytest.mark.parametrize("phone", [{"viewport": {"width": 320, "height": 640}}], indirect=True)
def test_every_part_fits_a_small_screen_and_can_be_heard(phone: Any) -> None:
    page = phone.ready(putt=PUTT)
    for part in ("See", "Photo", "Chalk", "Ramp", "Send"):
        show(page, part)
        page.evaluate("new Promise(requestAnimationFrame)")
        assert phone.misfits() == [], part
        assert phone.violations() == [], part


def test_the_pocket_card_prints_on_one_page_and_says_practice(phone: Any) -> None:
    page = phone.ready(putt=PUTT)
    show(page, "Send")
    page.get_by_role("link", name="To the card").click()
    page.locator(".parts").get_by_role("button", name="Compare").click()
    expect(page.locator(".card")).to_contain_text("Rule 4.3a")
    page.emulate_media(media="print")
    width = page.locator(".card").bounding_box()["width"]
    assert width == pytest.approx(CARD_MM * PX_PER_MM, abs=1)
    for paper in ("Letter", "A4", "A5"):
        printed = page.pdf(prefer_css_page_size=True, format=paper)
        assert len(re.findall(rb"/Type\s*/Page\b", printed)) == 1, paper
