"""A photograph of a green, drawn by numpy as a pinhole camera has it, put through the real file input."""

import json
import re
from collections.abc import Callable
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from PIL import Image
from playwright.sync_api import Page, expect

from bench.photograph import LENS_MM, SIZE, Photograph
from tests import touching

# so steep that the aim lies far out, where a plane that was not tilted would be seen to miss it
PUTT = {"distance_m": 4.0, "slope_percent": 4.5, "fall_deg": 80.0, "stimp_ft": 11.0, "past_m": 0.3048}
STATIONS = [{"at_m": 0, "slope_percent": 4, "fall_deg": 80}, {"at_m": 4, "slope_percent": 2, "fall_deg": 120}]
EXIF_IFD, FOCAL_35MM, ORIENTATION = 0x8769, 0xA405, 0x0112
PIXELS_WIDE, PIXELS_HIGH = 0xA002, 0xA003
# As stored, how it lies, what it was taken as, and whether that is another shape; a smaller one was not cropped
SHAPES = [
    ((300, 400), 1, (3024, 4032), False),
    ((400, 300), 6, (4032, 3024), False),
    ((400, 400), 1, (3024, 4032), True),
    ((300, 400), 1, (70_000, 52_500), True),
]
NEAR_PX = 2  # of the photograph, between the drawn line and where it has to be
LOOK = "() => document.querySelector('canvas#photo').toDataURL()"
BROKEN = b"\xff\xd8\xff\xe0 no picture"


def save(picture: Image.Image, path: Path, orientation: int = 1, taken: tuple[int, int] | None = None) -> Path:
    exif = Image.Exif()
    if taken:
        exif.get_ifd(EXIF_IFD).update(zip((PIXELS_WIDE, PIXELS_HIGH), taken, strict=True))
    exif[ORIENTATION] = orientation
    exif.get_ifd(EXIF_IFD)[FOCAL_35MM] = LENS_MM
    picture.save(path, quality=95, exif=exif)
    return path


def open_photo(page: Page, path: Path) -> None:
    page.evaluate("location.hash = 'line'")
    page.locator(".parts").get_by_role("button", name="Photo").click()
    again = page.get_by_role("button", name="Another picture")
    if again.count():
        again.click()
    page.locator("input[type=file]").set_input_files(path)


def touch(page: Page, x: float, y: float) -> None:
    touching.touch(page, "canvas#photo", SIZE, (x, y))


def pixels(page: Page) -> np.ndarray:
    flat = page.evaluate(
        """() => {
          const canvas = document.querySelector('canvas#photo');
          const { data } = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height);
          const text = Array.from(data.filter((_, i) => i % 4 < 3), n => String.fromCharCode(n)).join('');
          return { width: canvas.width, text };
        }"""
    )
    return np.frombuffer(flat["text"].encode("latin-1"), np.uint8).reshape(-1, flat["width"], 3)


def test_a_photograph_of_no_putt_says_so(phone: Any, tmp_path: Path) -> None:
    page = phone.open("#line", putt={**PUTT, "slope_percent": 8.0, "fall_deg": 0.0, "stimp_ft": 13.0})
    open_photo(page, save(Photograph(PUTT).picture(), tmp_path / "green.jpg"))
    expect(page.get_by_role("alert")).to_contain_text("No such putt", timeout=60_000)


def test_a_hole_beside_the_mark_of_the_ball_is_touched_too(phone: Any, tmp_path: Path) -> None:
    page = phone.ready(putt=PUTT)
    open_photo(page, save(Photograph(PUTT).picture(), tmp_path / "green.jpg"))
    box = page.locator("canvas#photo").bounding_box()
    for count, up in ((1, 0), (2, 12)):
        page.mouse.click(box["x"] + 150, box["y"] + 300 - up)
        expect(page.locator(".photo-mark")).to_have_count(count)


def test_both_marks_are_set_without_a_finger(phone: Any, tmp_path: Path) -> None:
    page = phone.ready(putt=PUTT)
    open_photo(page, save(Photograph(PUTT).picture(), tmp_path / "green.jpg"))
    for name, at in (("the ball", (0.5, 0.8)), ("the hole", (0.5, 0.4))):
        page.get_by_role("button", name=f"Set {name} by the arrow keys").focus()
        page.keyboard.press("Enter")
        mark = page.get_by_role("button", name=f"Mark of {name}")
        expect(mark).to_be_focused()
        before = mark.get_attribute("data-at") or ""
        page.keyboard.press("ArrowUp")
        expect(mark).not_to_have_attribute("data-at", before)
        x, y = map(float, (mark.get_attribute("data-at") or "").split())
        assert (x, y) == pytest.approx((at[0], at[1] - 1 / 390))
    expect(page.get_by_text("Drag a mark to correct it")).to_be_visible()


def test_the_line_lies_on_the_true_plane_of_the_green(phone: Any, engine: Callable[..., Any], tmp_path: Path) -> None:
    green = Photograph(PUTT)
    page = phone.ready(putt=PUTT)
    open_photo(page, save(green.picture(), tmp_path / "green.jpg"))
    expect(page.get_by_text(f"{LENS_MM} mm")).to_be_visible()
    expect(page.get_by_text("Touch the ball")).to_be_visible()
    touch(page, *green.pixel(0, 0))
    expect(page.get_by_text("Touch the middle of the hole")).to_be_visible()
    touch(page, *green.pixel(PUTT["distance_m"], 0))
    expect(page.get_by_text("Off by up to")).to_be_visible()
    page.wait_for_timeout(300)
    shown = pixels(page)
    read = engine("read", **PUTT)
    into = [point for point in read["path"] if 0.2 < point[1] < PUTT["distance_m"] - 0.15]
    for _, x, y, _ in into:
        u, v = map(round, green.pixel(x, y))
        near = shown[v - NEAR_PX : v + NEAR_PX + 1, u - NEAR_PX : u + NEAR_PX + 1].reshape(-1, 3)
        assert (near.min(axis=1) > 230).any(), f"no line at {x:.2f}, {y:.2f} m"
    u, v = map(round, green.pixel(PUTT["distance_m"], read["aim_offset_m"]))
    arm = shown[v - 9 : v + 10, u - 10].astype(int)  # a column through the cross's left arm
    yellow = np.flatnonzero((arm[:, 0] > 200) & (arm[:, 2] < 90))
    assert yellow.mean() == pytest.approx(9, abs=NEAR_PX)
    plain = np.asarray(green.picture())[-80:, :100].astype(int)
    assert np.abs(shown[-80:, :100].astype(int) - plain).max() < 12


def test_a_mark_is_dragged_and_the_line_follows(phone: Any, until: Any, tmp_path: Path) -> None:
    green = Photograph(PUTT)
    page = phone.ready(putt={**{name: PUTT[name] for name in ("distance_m", "stimp_ft", "past_m")}, "stations": STATIONS})
    open_photo(page, save(green.picture(), tmp_path / "green.jpg"))
    touch(page, *green.pixel(0, 0))
    touch(page, *green.pixel(PUTT["distance_m"], 0.3))
    expect(page.get_by_text("Off by up to")).to_be_visible()
    page.wait_for_timeout(300)
    before = page.evaluate(LOOK)
    mark = page.get_by_role("button", name="Mark of the hole")
    box = mark.bounding_box()
    page.mouse.move(box["x"] + 28, box["y"] + 28)
    page.mouse.down()
    page.mouse.move(box["x"] + 68, box["y"] + 38, steps=5)
    page.mouse.up()
    moved = mark.bounding_box()
    assert (moved["x"] - box["x"], moved["y"] - box["y"]) == pytest.approx((40, 10), abs=1)
    until(page, f"({LOOK})() !== {json.dumps(before)}")
    mark.press("ArrowLeft")
    page.wait_for_timeout(200)
    assert mark.bounding_box()["x"] == pytest.approx(moved["x"] - 1, abs=0.3)
    with page.expect_download() as given:
        page.get_by_role("button", name="Save or share").click()
    given.value.save_as(tmp_path / "given.jpg")
    with Image.open(tmp_path / "given.jpg") as picture:
        assert picture.size == SIZE


def test_what_cannot_be_solved_is_said_in_words(phone: Any, tmp_path: Path) -> None:
    green = Photograph(PUTT)
    page = phone.ready(putt=PUTT)
    open_photo(page, save(green.picture(), tmp_path / "green.jpg"))
    touching.touch(page, "canvas#photo", SIZE, green.pixel(PUTT["distance_m"], 0), green.pixel(0, 0))
    expect(page.get_by_role("alert")).to_contain_text("stand behind the ball")
    page.get_by_role("button", name="Mark again").click()
    expect(page.get_by_text("Touch the ball")).to_be_visible()


def test_a_cropped_photograph_is_told(phone: Any, tmp_path: Path) -> None:
    page = phone.ready(putt=PUTT)
    for i, (stored, orientation, told, cropped) in enumerate(SHAPES):
        open_photo(page, save(Image.new("RGB", stored), tmp_path / f"shaped-{i}.jpg", orientation, told))
        expect(page.locator("canvas#photo")).to_be_visible()
        expect(page.get_by_role("alert").filter(has_text="was cropped")).to_have_count(int(cropped))


TURNS = {2: 0, 3: 3, 4: 1, 5: 5, 6: 2, 7: 6, 8: 4}  # Exif orientation to Pillow's transposition that undoes it


def test_all_eight_orientations_stand_upright(phone: Any, tmp_path: Path) -> None:
    page = phone.ready(putt=PUTT)
    upright = Image.new("RGB", (300, 400), (70, 130, 60))
    upright.paste((220, 30, 30), (0, 0, 100, 100))
    for orientation in range(1, 9):
        stored = upright.transpose(Image.Transpose(TURNS[orientation])) if orientation > 1 else upright
        open_photo(page, save(stored, tmp_path / f"turned-{orientation}.jpg", orientation))
        expect(page.locator("canvas#photo")).to_have_attribute("height", "400")
        shown = pixels(page)
        assert shown.shape == (400, 300, 3)
        assert shown[50, 50, 0] > 180, orientation
        assert shown[50, 250, 0] < 110, orientation
        assert shown[350, 50, 0] < 110, orientation


def test_a_48_megapixel_photograph_and_a_broken_one(phone: Any, tmp_path: Path) -> None:
    page = phone.ready(putt=PUTT)
    large = tmp_path / "large.jpg"
    Image.new("RGB", (8000, 6000), (70, 130, 60)).save(large, quality=60)
    open_photo(page, large)
    canvas = page.locator("canvas#photo")
    expect(canvas).to_have_attribute("width", "1600", timeout=30_000)
    expect(canvas).to_have_attribute("height", "1200")
    expect(page.get_by_label("Lens")).to_be_visible()  # the file tells of none
    page.get_by_role("button", name="Another picture").click()
    broken = tmp_path / "broken.jpg"
    broken.write_bytes(BROKEN)
    page.locator("input[type=file]").set_input_files(broken)
    expect(page.get_by_role("alert")).to_have_text(re.compile("“broken.jpg” is no picture"))
    fine = save(Image.new("RGB", (300, 400)), tmp_path / "fine.jpg")
    page.locator("input[type=file]").set_input_files(fine)
    expect(page.get_by_role("alert")).to_have_count(0)
    expect(canvas).to_have_attribute("height", "400")


def test_a_lens_is_measured_once_and_kept(phone: Any, until: Any, engine: Callable[..., Any], tmp_path: Path) -> None:
    page = phone.ready(putt=PUTT)
    page.evaluate("location.hash = 'line'")
    page.locator(".parts").get_by_role("button", name="Photo").click()
    page.get_by_role("button", name="Measure the lens").click()
    page.locator("input[type=file]").set_input_files(save(Image.new("RGB", SIZE), tmp_path / "club.jpg"))
    expect(page.get_by_text("Touch one end")).to_be_visible()
    touch(page, 90, 600)
    expect(page.get_by_text("Touch its other end")).to_be_visible()
    touch(page, 810, 600)
    page.get_by_label("How long it is").fill("36")
    page.get_by_label("Lens to its middle").fill("40")
    page.keyboard.press("Tab")
    size = {"width_px": SIZE[0], "height_px": SIZE[1], "length_m": 36 * 0.0254, "distance_m": 40 * 0.0254}
    lens_mm = engine("lens", **size, ends_px=[[90, 600], [810, 600]])["lens_mm"]
    expect(page.get_by_text(f"{lens_mm:.1f} mm:")).to_be_visible()
    page.get_by_role("button", name="Keep this lens").click()
    expect(page.get_by_text(re.compile(rf"does not:\s+{lens_mm:.1f} mm, measured \d{{4}}-"))).to_be_visible()
    assert phone.kept("sighted.lens_mm") == pytest.approx(lens_mm, abs=0.01)
