"""A place's book: a putt worth keeping is studied with its break hidden, and tried at the speed of today."""

from pathlib import Path
from typing import Any

from PIL import Image
from playwright.sync_api import expect

PUTT = {"distance_m": 3.048, "slope_percent": 2.0, "fall_deg": 90.0, "stimp_ft": 10.0, "past_m": 0.3048}
KEPT = "() => import('/records/db.js').then((db) => db.readAll())"


def test_a_putt_is_kept_studied_and_tried(phone: Any, engine: Any, tmp_path: Path) -> None:
    page = phone.open("#book", schema=3, putt=PUTT, place="Larkmoor", settings={"aim": "degrees", "stimp_ft": 12})
    expect(page.get_by_text("Rule 4.3a lets you use none of it")).to_be_visible()
    page.get_by_label("Name of the putt in hand").fill("9, back left")
    page.get_by_role("button", name="Keep it").click()
    expect(page.get_by_text("Kept in the book.")).to_be_visible()
    (entry,) = page.evaluate(KEPT)
    assert (entry["kind"], entry["name"], entry["place"]) == ("worth", "9, back left", "Larkmoor")
    page.get_by_role("button", name="9, back left").click()
    Image.new("RGB", (3000, 2000), "green").save(tmp_path / "green.png")
    page.locator("input[type=file]").set_input_files(tmp_path / "green.png")
    photograph = page.get_by_role("img", name="Photograph of 9, back left")
    expect(photograph).to_be_visible()
    assert page.evaluate("() => document.querySelector('img.entry-picture').decode().then(() => true)")
    assert photograph.evaluate("image => [image.naturalWidth, image.naturalHeight]") == [640, 427]
    assert page.evaluate(KEPT)[0]["picture"].startswith("data:image/jpeg")
    aim = engine("read", **PUTT)["aim_deg"]
    expect(page.get_by_text(f"{aim:.1f}")).to_have_count(0)
    page.get_by_label("Your aim").fill(f"{aim + 1:.1f}")
    page.keyboard.press("Tab")
    page.get_by_role("button", name="See it").click()
    expect(page.locator(".say")).to_contain_text(f"{aim:.1f} °", timeout=60_000)
    expect(page.locator(".say")).to_contain_text("farther left")
    assert phone.misfits() == []
    assert phone.violations() == []
    page.get_by_role("button", name="Delete the photograph").click()
    expect(photograph).to_have_count(0)
    assert "picture" not in page.evaluate(KEPT)[0]
    page.get_by_role("button", name="Try it at today").click()
    assert phone.kept("putt.stimp_ft") == 12
    assert phone.kept("putt.distance_m") == PUTT["distance_m"]
