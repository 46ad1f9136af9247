"""A place's book: a putt worth keeping is studied with its break hidden, and tried at the speed of today."""

from typing import Any

from playwright.sync_api import expect

PUTT = {"distance_m": 3.048, "slope_percent": 2.0, "fall_deg": 90.0, "stimp_ft": 10.0, "past_m": 0.3048}
KEPT = "() => import('/records/db.js').then((db) => db.readAll())"


def test_a_putt_is_kept_studied_and_tried(phone: Any, engine: Any) -> None:
    page = phone.open("#book", schema=3, putt=PUTT, place="Larkmoor", settings={"aim": "degrees", "stimp_ft": 12})
    expect(page.get_by_text("Rule 4.3a lets you use none of it")).to_be_visible()
    page.get_by_label("Name of the putt in hand").fill("9, back left")
    page.get_by_role("button", name="Keep it").click()
    expect(page.get_by_text("Kept in the book.")).to_be_visible()
    (entry,) = page.evaluate(KEPT)
    assert (entry["kind"], entry["name"], entry["place"]) == ("worth", "9, back left", "Larkmoor")
    page.get_by_role("button", name="9, back left").click()
    aim = engine("read", **PUTT)["aim_deg"]
    expect(page.get_by_text(f"{aim:.1f}")).to_have_count(0)
    page.get_by_label("Your aim").fill(f"{aim + 1:.1f}")
    page.keyboard.press("Tab")
    page.get_by_role("button", name="See it").click()
    expect(page.locator(".say")).to_contain_text(f"{aim:.1f} °", timeout=60_000)
    expect(page.locator(".say")).to_contain_text("farther left")
    assert phone.misfits() == []
    assert phone.violations() == []
    page.get_by_role("button", name="Try it at today").click()
    assert phone.kept("putt.stimp_ft") == 12
    assert phone.kept("putt.distance_m") == PUTT["distance_m"]
