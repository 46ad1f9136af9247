"""Feet and eye: felt, measured, learned, and into the read with what is not known."""

from collections.abc import Callable
from datetime import datetime
from typing import Any

import pytest
from playwright.sync_api import Page, expect

PUTT = {"distance_m": 3.048, "slope_percent": 2.0, "fall_deg": 90.0, "stimp_ft": 10.0, "past_m": 0.3048}
TRIALS = [
    {"felt_percent": felt, "measured_percent": measured, "fall": fall, "date": "2026-11-24"}
    for felt, measured, fall in (
        (1.5, 2.1, "right"),
        (1, 1.4, "right"),
        (2, 2.6, "right"),
        (1, 1.5, "right"),
        (2.5, 2.1, "left"),
        (3, 2.4, "left"),
        (2, 1.6, "left"),
        (1.5, 1.2, "left"),
    )
]
PLAIN = [{name: value for name, value in trial.items() if name != "date"} for trial in TRIALS]
SCREENS = [(320, 568), (390, 844), (844, 390)]


def show(phone: Any, part: str, screen: str = "practice", **record: Any) -> Page:
    page = phone.open(f"#{screen}", putt=PUTT, **record)
    page.get_by_role("button", name=part, exact=True).click()
    return page


def fill(page: Page, label: str, text: str) -> None:
    page.get_by_role("textbox", name=label, exact=True).fill(text)
    page.keyboard.press("Tab")


def test_felt_first_then_measured(phone: Any) -> None:
    page = show(phone, "Feet")
    expect(page.get_by_role("textbox", name="Measured")).to_have_count(0)
    page.get_by_label("toes").check(force=True)
    fill(page, "Felt", "1.5")
    fill(page, "Measured", "2.2")
    page.get_by_role("button", name="Keep this trial").click()
    (trial,) = phone.kept("calibration.feet")
    assert (trial["felt_percent"], trial["measured_percent"], trial["fall"]) == (1.5, 2.2, "toes")
    expect(page.get_by_role("heading", name="After 1 trial")).to_be_visible(timeout=60_000)
    page.get_by_role("button", name="Undo").click()
    assert phone.kept("calibration.feet") == []


def test_what_the_feet_have_shown(phone: Any, engine: Callable[..., Any]) -> None:
    page = show(phone, "Feet", calibration={"feet": TRIALS})
    found = engine("feel", trials=PLAIN)
    row = page.get_by_role("row", name="Falls right")
    expect(row).to_contain_text(f"{found['groups'][1]['bias']['value']:.1f}".replace("-", "\u2212"), timeout=60_000)
    assert found["sides"][0]["differs"]
    expect(page.get_by_text("more felt, beyond chance")).to_be_visible()


def test_a_felt_slope_goes_into_the_read_corrected_with_its_spread(phone: Any, engine: Callable[..., Any]) -> None:
    page = show(phone, "Feet", calibration={"feet": TRIALS})
    fill(page, "Felt", "2")
    felt = engine("felt", trials=PLAIN, felt_percent=2, fall="right")
    expect(page.get_by_text(f"Likely {felt['slope_percent']:.1f}")).to_be_visible(timeout=60_000)
    expect(page.get_by_text("if the slope were known")).to_be_visible()
    page.get_by_role("button", name="Take as felt into the read").click()
    assert phone.kept("putt.slope_percent") == pytest.approx(felt["slope_percent"], abs=0.05)
    assert phone.kept("putt.fall_deg") == 90
    assert phone.kept("felt.correction_percent") == pytest.approx(felt["correction_percent"])
    putt = phone.kept("putt")
    assert putt.pop("tilt_source") == "felt"
    sd = putt.pop("tilt_sd_percent")
    assert sd == pytest.approx(felt["slope_sd_percent"], abs=0.005)
    sure = engine("window", **putt)["make_probability"]
    chance = engine("window", **putt, player=phone.kept("player"), tilt_sd_percent=sd)["make_probability"]
    assert chance < sure
    page.get_by_role("link", name="Read", exact=True).click()
    expect(page.get_by_role("button", name=f"Make {round(chance * 100)}")).to_be_visible(timeout=60_000)
    page.get_by_role("link", name="Practice").click()
    page.get_by_role("button", name="Undo").click()
    assert phone.kept("putt") == PUTT
    assert phone.kept("felt") is None


def test_the_eye_guesses_and_learns(phone: Any, engine: Callable[..., Any]) -> None:
    page = show(phone, "Eye")
    picture = page.locator(".look")
    picture.wait_for(timeout=60_000)
    truth = engine("look", case=int(picture.get_attribute("data-case") or ""))
    words = {"left": "left", "right": "right", "toes": "downhill", "heels": "uphill"}
    page.get_by_label(words[truth["fall"]], exact=True).check(force=True)
    fill(page, "Your guess", "2.5")
    page.get_by_role("button", name="Guess", exact=True).click()
    expect(page.get_by_text(f"It is {truth['slope_percent']:g}\xa0%")).to_be_visible()
    (trial,) = phone.kept("calibration.eye")
    assert trial == {**trial, "felt_percent": 2.5, "measured_percent": truth["slope_percent"], "fall": truth["fall"]}
    page.get_by_role("button", name="Next green").click()
    expect(picture).not_to_have_attribute("data-case", str(truth))
    expect(page.get_by_role("button", name="Guess", exact=True)).to_be_disabled()
    # the wrong way is told, and no trial of how much
    other = engine("look", case=int(picture.get_attribute("data-case") or ""))["fall"]
    page.get_by_label(words["left" if other != "left" else "right"], exact=True).check(force=True)
    fill(page, "Your guess", "1")
    page.get_by_role("button", name="Guess", exact=True).click()
    expect(page.get_by_text("The wrong way: not counted.")).to_be_visible()
    assert len(phone.kept("calibration.eye")) == 1


def test_a_broken_calibration_gives_way(phone: Any) -> None:
    page = show(phone, "Feet", calibration={"feet": [{"felt_percent": "much"}], "phone": 3, "speeds": TRIALS, "ball": "kicked"})
    expect(page.get_by_text("Stand facing the hole")).to_be_visible()
    fill(page, "Felt", "1")
    expect(page.get_by_text("No trial of this kind yet")).to_be_visible(timeout=60_000)


ROLL = {"distance_m": 6.1, "time_s": 4.7, "place": "", "date": datetime.now().astimezone().isoformat()}
FULL = {"feet": TRIALS, "eye": TRIALS, "rolls": [{**ROLL, "way": way} for way in ("out", "back")]}
FULL["speeds"] = [{"place": "A long name of a course (demo)", "date": "2026-11-24", "stimp_ft": 11.2, "stimp_sd_ft": 0.4}]


def test_it_fits_and_reads_aloud(phone: Any) -> None:
    page = show(phone, "Speed", "green", calibration=FULL)
    page.locator(".result").wait_for(timeout=60_000)
    for screen, parts in (("Green", ("Level", "Speed", "Compare")), ("Practice", ("Feet", "Eye"))):
        page.get_by_role("link", name=screen, exact=True).click()
        for part in parts:
            page.get_by_role("button", name=part, exact=True).click()
            page.wait_for_timeout(600)
            assert phone.misfits(*SCREENS) == [], part
            assert phone.violations() == [], part
