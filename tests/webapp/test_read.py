"""The main job: set the putt with a thumb, and read where and how hard."""

import math
import re
from collections.abc import Callable
from typing import Any

from playwright.sync_api import Page, expect

PUTT = {"distance_m": 3.048, "slope_percent": 2.0, "fall_deg": 90.0, "stimp_ft": 10.0, "past_m": 0.3048}
INCH_M = 0.0254
FRAME_S = 1 / 30


def words(page: Page, selector: str) -> str:
    return " ".join(page.locator(selector).first.inner_text().split())


def choose(page: Page, name: str) -> None:
    page.locator(f".cell[aria-label^='{name}']").click()


def test_aim_pace_and_shape_are_said_in_words(phone: Any, engine: Callable[..., Any]) -> None:
    read = engine("read", **PUTT)
    page = phone.ready(putt=PUTT)
    assert words(page, ".answer h1") == f"Aim {read['aim_offset_m'] / INCH_M:.0f} in left of the cup"
    assert words(page, ".answer .pace") == f"Plays like {read['plays_like_m'] / 0.3048:.1f} ft on the level".replace(".0 ", " ")
    assert words(page, ".answer .shape").startswith("Left to right, ")


def test_the_answer_changes_while_the_finger_is_down(phone: Any) -> None:
    page = phone.ready(putt=PUTT)
    box = page.locator("#ruler").bounding_box()
    before = words(page, ".answer .pace")
    page.mouse.move(300, box["y"] + 30)
    page.mouse.down()
    page.mouse.move(250, box["y"] + 30, steps=5)
    expect(page.locator(".answer .pace")).not_to_have_text(before)
    lifted_at = words(page, ".answer .pace")
    expect(page.get_by_label("Distance, feet")).not_to_have_value("10")
    assert lifted_at != before
    page.mouse.up()


def test_the_tape_follows_the_finger_stop_by_stop(phone: Any) -> None:
    page = phone.ready(putt=PUTT)
    box = page.locator("#ruler").bounding_box()
    page.mouse.move(300, box["y"] + 30)
    page.mouse.down()
    page.mouse.move(300 - 2 * 11, box["y"] + 30, steps=4)
    page.mouse.up()
    expect(page.get_by_label("Distance, feet")).to_have_value("11")


def test_the_dial_turns_the_break(phone: Any) -> None:
    page = phone.ready(putt=PUTT)
    choose(page, "Falls")
    box = page.locator("#dial").bounding_box()
    x, y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    page.mouse.move(x + 40, y)
    page.mouse.down()
    for deg in range(90, 275, 15):
        page.mouse.move(x + 40 * math.sin(math.radians(deg)), y - 40 * math.cos(math.radians(deg)))
    page.mouse.up()
    expect(page.locator("#dial")).to_have_attribute("aria-valuetext", "falls left, 270 degrees")
    expect(page.locator(".answer .shape")).to_contain_text("Right to left")
    expect(page.locator(".answer h1")).to_contain_text("right of the cup")


def test_a_number_can_be_typed_exactly(phone: Any, engine: Callable[..., Any]) -> None:
    page = phone.ready(putt=PUTT)
    page.get_by_label("Distance, feet").fill("8,3")
    page.keyboard.press("Enter")
    read = engine("read", **{**PUTT, "distance_m": 8.3 * 0.3048})
    expect(page.locator(".answer .pace")).to_contain_text(f"{read['plays_like_m'] / 0.3048:.1f}".removesuffix(".0"))


def test_a_bad_entry_says_what_fits_and_keeps_the_read(phone: Any) -> None:
    page = phone.ready(putt=PUTT)
    before = words(page, ".answer")
    pace = page.locator(".answer .pace").text_content()
    for typed, said in (
        ("500", "Distance takes 1 to 98.4\xa0ft; “500” does not fit."),
        ("ten", "Distance takes a number of feet"),
    ):
        page.get_by_label("Distance, feet").fill(typed)
        page.keyboard.press("Enter")
        expect(page.get_by_role("alert")).to_contain_text(said)
        expect(page.get_by_label("Distance, feet")).to_have_value(typed)
        assert words(page, ".answer") == before
    page.get_by_label("Distance, feet").fill("12")
    page.keyboard.press("Enter")
    expect(page.get_by_role("alert")).to_have_count(0)
    expect(page.locator(".answer .pace")).not_to_have_text(pace)


def test_a_putt_that_cannot_be_stopped_says_why_and_keeps_the_slope(phone: Any) -> None:
    page = phone.open(putt={**PUTT, "slope_percent": 8.0, "fall_deg": 0.0, "stimp_ft": 13.0, "distance_m": 6.0})
    expect(page.locator(".answer h1")).to_have_text("No such putt", timeout=60_000)
    assert len(words(page, ".answer .shape").split()) > 6
    assert page.locator(".hachures").get_attribute("d")
    assert page.locator(".path").count() == 0
    choose(page, "Slope")
    page.get_by_label("Slope, percent").fill("2")
    page.keyboard.press("Enter")
    expect(page.locator(".answer .pace")).to_contain_text("on the level")


def test_the_picture_is_to_scale(phone: Any, engine: Callable[..., Any]) -> None:
    """One foot of the scale bar, the hole and the aim agree with each other in pixels."""
    page = phone.ready(putt={**PUTT, "distance_m": 1.0})
    read = engine("read", **{**PUTT, "distance_m": 1.0})
    hole = page.locator(".picture > .hole")
    scale = 2 * float(hole.get_attribute("r")) / 0.108
    ball = page.locator("[data-rolling] .ball")
    assert math.isclose(2 * float(ball.get_attribute("r")) / scale, 0.04267, abs_tol=1e-6)
    start_line = [float(n) for n in re.findall(r"[\d.]+", page.locator(".start-line").get_attribute("d"))]
    x0, y0, x1, y1 = start_line
    pixel_m = 0.05 / scale
    assert math.isclose((y0 - y1) / scale, 1.0, abs_tol=pixel_m)
    assert math.isclose((x0 - x1) / scale, read["aim_offset_m"], abs_tol=pixel_m)
    bar = [float(n) for n in re.findall(r"[\d.]+", page.locator(".scale-bar path").get_attribute("d"))]
    feet = float(page.locator(".scale-bar text").text_content().split()[0])
    assert math.isclose(abs(bar[3] - bar[0]) / scale, feet * 0.3048, abs_tol=pixel_m)


def test_the_ball_rolls_in_real_time_and_drops(phone: Any, engine: Callable[..., Any]) -> None:
    page = phone.ready(putt=PUTT)
    still = page.locator("[data-rolling]").get_attribute("transform")
    took_s = page.evaluate(
        """() => new Promise(resolve => {
          const ball = document.querySelector('[data-rolling] .ball'), whole = ball.getAttribute('r');
          document.querySelector('.roll').click();
          const start = performance.now();
          (function look() {
            if (ball.getAttribute('r') !== whole) return resolve((performance.now() - start) / 1000);
            requestAnimationFrame(look);
          })();
        })"""
    )
    assert page.locator("[data-rolling]").get_attribute("transform") != still
    assert took_s >= engine("read", **PUTT)["time_s"] - FRAME_S


def test_several_slopes_make_another_read(phone: Any, engine: Callable[..., Any]) -> None:
    page = phone.ready(putt=PUTT)
    page.get_by_role("button", name="Slopes").click()
    page.get_by_role("button", name="Add a place").click()
    page.locator("#station-1-fall_deg").fill("270")
    page.locator("#station-1-fall_deg").press("Enter")
    stations = [
        {"at_m": 0, "slope_percent": 2, "fall_deg": 90},
        {"at_m": PUTT["distance_m"], "slope_percent": 2, "fall_deg": 270},
    ]
    level = {name: PUTT[name] for name in ("distance_m", "stimp_ft", "past_m")}
    aim = engine("read", **level, stations=stations)["aim_offset_m"]
    page.get_by_role("button", name="Done").click()
    expect(page.get_by_role("button", name="2 slopes")).to_be_visible()
    expect(page.locator(".station")).to_have_count(2)
    expect(page.locator(".answer h1")).to_contain_text(f"{abs(aim) / INCH_M:.1f}".removesuffix(".0"))


def test_the_player_changes_the_odds(phone: Any) -> None:
    page = phone.ready(putt=PUTT)
    odds = page.get_by_role("button", name=re.compile("^Make"))
    tour = odds.inner_text()
    odds.click()
    page.get_by_role("button", name="amateur").click()
    page.get_by_role("button", name="Done").click()
    expect(odds).not_to_have_text(tour)


def test_each_error_has_its_cost(phone: Any, engine: Callable[..., Any]) -> None:
    page = phone.ready(putt=PUTT)
    page.get_by_role("button", name="A miss").click()
    rows = page.locator(".costs tbody tr")
    expect(rows).to_have_count(len(engine("sensitivity", **PUTT)["rows"]))
    said = rows.all_inner_texts()
    for row, text in zip(engine("sensitivity", **PUTT)["rows"], said, strict=True):
        assert ("drops" in text) == row["holed"]


def test_a_dead_engine_is_restarted_and_the_page_says_so(phone: Any) -> None:
    page = phone.ready(putt=PUTT)
    page.workers[0].evaluate("setTimeout(() => { throw new Error('killed by the test'); })")
    expect(page.get_by_role("status")).to_have_text("Engine restarted", timeout=60_000)
    phone.errors.clear()
    page.locator("#ruler").press("PageUp")
    expect(page.locator(".answer .pace")).to_contain_text("15")
    expect(page.get_by_role("status")).to_have_text("")
