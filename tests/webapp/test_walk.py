"""A green walked once: the walk with a sensor that the browser plays, its map, and the putts on it."""

import re
from cmath import phase
from datetime import datetime, timedelta
from math import degrees, hypot
from typing import Any

import numpy as np
import pytest
from playwright.sync_api import Page, expect

import browser
from tests.invented_greens import SIDE, invented, walk
from tests.webapp.test_green import Sensor

PACE_M = 0.9144
INCH_M = 0.0254
ZEROED = {"phone": {"bias_deg": [0.1, -0.2], "date": "2026-05-03"}}
LIE_MS = 3300  # how long a phone has to lie before what it showed in the hand is forgotten
SEED = """async (green) => (await import('/records/db.js')).write([green])"""


# A page whose time the test makes pass, and whose sensor is heard ten times as often; the engine's patience stays its own
HASTE = """(() => {
  const now = performance.now.bind(performance), every = setInterval;
  let passed = 0;
  performance.now = () => now() + passed;
  globalThis.setInterval = (work, ms) => every(work, ms === 250 ? 25 : ms);
  globalThis.pass = (ms) => { passed += ms; };
  addEventListener('deviceorientation', ({ beta, gamma }) => { globalThis.heard = [beta, gamma]; });
})()"""


class Walker(Sensor):
    """The phone's tilt on a walk."""

    def __init__(self, page: Page) -> None:
        page.add_init_script(HASTE)
        self.page, self.shown = page, [0.0, 0.0]
        self.session = page.context.new_cdp_session(page)


def points(number: int) -> list[dict[str, float]]:
    return [
        {
            "x_m": each.place.real,
            "y_m": each.place.imag,
            "slope_percent": 100 * abs(each.gradient),
            "fall_deg": (90 - degrees(phase(each.gradient))) % 360,
            "sd_percent": 0.12,
        }
        for each in invented(number).read(walk(5), np.random.default_rng(number))
    ]


GREEN: dict[str, Any] = {
    "kind": "green",
    "id": "lower",
    "at": "2026-05-03T10:00:00.000Z",
    "changed": "2026-05-03T10:00:00.000Z",
    "place": "Larkmoor (invented)",
    "text": "",
    "name": "Lower green",
    "breadth_m": SIDE,
    "length_m": SIDE,
    "places": 25,
    "points": points(3),
    "holes": {},
}


def open_map(phone: Any, **settings: Any) -> Page:
    """The map of a green that has been walked."""
    page: Page = phone.open("#walk", settings=settings, calibration=ZEROED)
    expect(page.get_by_text("A new green")).to_be_visible()
    page.evaluate(SEED, GREEN)
    page.reload()
    expect(page.locator("svg.map .contour.known")).to_be_attached(timeout=60_000)
    return page


def touch(page: Page, x_m: float, y_m: float) -> None:
    """A place of the map, whose edge is the green's."""
    edge = page.locator("svg.map > .edge").bounding_box()
    assert edge
    page.mouse.click(edge["x"] + edge["width"] * x_m / SIDE, edge["y"] + edge["height"] * (1 - y_m / SIDE))


def test_a_walk_loses_nothing_when_it_is_killed(phone: Any) -> None:
    sensor = Walker(phone.page)
    phone.page.add_init_script("globalThis.spoken = []; speechSynthesis.speak = ({ text }) => spoken.push(text)")
    sensor.show(0, 0)
    page = phone.open("#walk", calibration=ZEROED)
    page.get_by_role("button", name="Lay out the walk").click()

    def lay(slope: float, fall: float, count: int) -> None:
        sensor.show(40, 10)  # in the hand
        sensor.wait(200)
        expect(page.locator(".measured .say")).not_to_contain_text("Lift it")  # it has felt the hand
        sensor.lie(slope, fall, bias_deg=(0.1, -0.2))
        sensor.wait(LIE_MS)
        expect(page.locator(".next")).to_contain_text(f"{count} taken", timeout=60_000)

    page.get_by_role("button", name="Start walking").click()
    for i in range(3):
        lay(1.5 + i, 60 * i, i + 1)
    assert page.evaluate("spoken") == [
        "1 on, 1 from the left",
        "Taken. 1 on, 4 from the left",
        "Taken. 1 on, 7 from the left",
        "Taken. 1 on, 10 from the left",
    ]
    page.reload()
    expect(page.locator("svg.map")).to_be_visible(timeout=60_000)
    page.get_by_role("button", name="Readings").click()
    expect(page.locator(".list li")).to_have_count(3)
    for i, way in enumerate(("falls on", "falls on and right", "falls back and right")):
        row = page.locator(".list li").nth(i)
        expect(row).to_contain_text(way)
        # a browser tells tenths of a degree
        assert float(re.findall(r"([\d.]+)\s%", row.inner_text())[0]) == pytest.approx(1.5 + i, abs=0.15)
    page.get_by_role("button", name="Walk", exact=True).click()
    page.get_by_role("button", name="Start walking").click()
    lay(2, 270, 4)
    page.get_by_role("button", name="Take the last back").click()
    expect(page.locator(".next")).to_contain_text("3 taken")


def test_without_a_zeroed_phone_there_is_no_walk(phone: Any) -> None:
    page = phone.open("#walk")
    page.get_by_role("button", name="Lay out the walk").click()
    expect(page.get_by_role("link", name="Zero the phone")).to_be_visible()
    expect(page.get_by_role("button", name="Start walking")).to_have_count(0)
    page.get_by_label("Slope").fill("1.8")
    page.get_by_label("Falls").fill("120")
    page.get_by_label("Falls").blur()
    page.get_by_role("button", name="Take it there").click()
    expect(page.locator(".next")).to_contain_text("1 taken")
    # and at a place of one's own choosing, by touch
    page.locator(".sketch").scroll_into_view_if_needed()
    edge = page.locator(".sketch .edge").bounding_box()
    assert edge
    page.mouse.click(edge["x"] + edge["width"] / 2, edge["y"] + edge["height"] / 4)
    expect(page.locator(".next .big")).to_have_text("10.5 on 7 right")


@pytest.mark.alone
def test_ball_and_hole_are_touched_and_the_putt_is_read(phone: Any, engine: Any) -> None:
    page = open_map(phone, aim="in")
    expect(page.get_by_text("Touch where the ball lies")).to_be_visible()
    touch(page, 4, 3)
    shown = page.locator(".map-read")
    expect(shown).to_contain_text("Make", timeout=60_000)
    putt = phone.kept("putt")
    ball, hole = putt["survey"]["ball"], putt["survey"]["hole"]
    assert ball == pytest.approx([4, 3], abs=0.05)
    assert putt["distance_m"] == pytest.approx(hypot(hole[0] - ball[0], hole[1] - ball[1]))
    read = engine("read", survey=putt["survey"], stimp_ft=putt["stimp_ft"], past_m=putt["past_m"])
    aim = abs(read["aim_offset_m"]) / INCH_M
    number = float(re.findall(r"[\d.]+", page.locator(".map-read .big").inner_text())[0])
    assert number == pytest.approx(aim, abs=0.5)
    spread = float(re.findall(r"± (\d+)", shown.inner_text())[0])
    assert spread == pytest.approx(read["aim_offset_sd_m"] / INCH_M, abs=0.5)
    # the hole goes where it is dragged, by arrow keys too
    page.get_by_role("button", name="Hole, ").press("ArrowLeft")
    for _ in range(100):
        if phone.kept("putt.survey.hole") != hole:
            break
    assert phone.kept("putt.survey.hole") == pytest.approx([hole[0] - 0.1, hole[1]])
    page.get_by_role("button", name="Hole is here today").click()
    expect(page.get_by_text("The hole is here today.")).to_be_visible()
    page.reload()
    expect(page.locator(".map-read")).to_contain_text("Make", timeout=60_000)
    # tomorrow it is where it was until it is cut anew, and the day before is not forgotten
    page.get_by_role("button", name="Hole, ").press("ArrowUp")
    page.clock.set_fixed_time(datetime.now() + timedelta(days=1))
    page.get_by_role("button", name="Hole is here today").click()
    expect(page.get_by_text("The hole is here today.")).to_be_visible()
    holes = next(iter(page.evaluate(GREENS)))["holes"]
    assert [holes[day] for day in sorted(holes)] == [
        pytest.approx([hole[0] - 0.1, hole[1]]),
        pytest.approx([hole[0] - 0.1, hole[1] + 0.1]),
    ]
    assert phone.violations() == []


def test_a_putt_of_the_map_is_seen_from_behind_and_leaves_it_when_it_is_changed(phone: Any) -> None:
    page = open_map(phone)
    touch(page, SIDE / 2, SIDE / 4 + 0.4)  # on the ball where it is drawn before it is placed
    expect(page.locator(".map-read")).to_contain_text("Make", timeout=60_000)
    page.get_by_role("link", name="From behind the ball").click()
    expect(page.locator("svg.seen")).to_be_visible(timeout=60_000)
    page.get_by_role("link", name="Read", exact=True).click()
    expect(page.get_by_role("button", name="7 slopes")).to_be_visible()
    page.locator(".cell[aria-label^='Stimp']").click()
    page.locator("#ruler").press("ArrowRight")
    assert "survey" in phone.kept("putt")
    page.locator(".cell[aria-label^='Distance']").click()
    page.locator("#ruler").press("ArrowRight")
    assert "survey" not in phone.kept("putt")
    assert len(phone.kept("putt.stations")) == 7


def test_a_putt_is_found_and_taken(phone: Any, engine: Any) -> None:
    page = open_map(phone)
    page.get_by_role("button", name="Find a putt").click()
    page.get_by_role("radio", name="any", exact=True).first.check()
    first = page.locator(".found button").first
    expect(first).to_be_visible(timeout=60_000)
    want = {"distance_m": [0.9 * 3.6576, 1.1 * 3.6576], "slope_percent": [1.7, 2.3], "break": None, "way": None}
    putts = engine("find_putts", survey={"points": GREEN["points"], "place_sd_m": 0.25}, want=want, hole=None)["putts"]
    x, y = (f"{side / PACE_M:.1f}".removesuffix(".0") for side in putts[0]["ball"])
    expect(first).to_contain_text(f"from {y} on, {x} from the left", timeout=60_000)
    expect(page.locator(".found li")).to_have_count(len(putts))
    first.click()
    expect(page.locator(".map-read")).to_contain_text("Make", timeout=60_000)
    for _ in range(100):
        if "survey" in phone.kept("putt"):
            break
    assert phone.kept("putt.survey.ball") == pytest.approx(putts[0]["ball"], abs=1e-3)


PUTT: dict[str, Any] = {
    "kind": "putt",
    **{name: GREEN[name] for name in ("at", "changed", "place", "text")},
    "id": "kept",
    "distance_m": 4.0,
    "stimp_ft": 10.0,
    "past_m": 0.3,
    "aim_deg": 3.0,
    "result": "holed",
    "stations": [
        {"at_m": 0, "slope_percent": 1.5, "fall_deg": 90, "tilt_source": "level", "tilt_sd_percent": 0.2},
        {"at_m": 4, "slope_percent": 2, "fall_deg": 45, "tilt_source": "level", "tilt_sd_percent": 0.25},
    ],
}
KEPT_SLOPES = [(0, 1.5, 90, 0.2), (4, 2, 45, 0.25)]
GREENS = "() => import('/records/db.js').then((db) => db.readAll()).then((all) => all.filter(({ kind }) => kind === 'green'))"


def test_a_team_mates_walk_is_taken_in_and_joined_and_a_kept_putt_lends_its_slopes(phone: Any, engine: Any) -> None:
    page = open_map(phone)
    page.get_by_role("button", name="Greens", exact=True).click()
    with page.expect_download() as sent:
        page.get_by_role("button", name="Send").click()
    file = sent.value.path()
    # the team-mate, who has walked the same green
    phone.show(browser.PHONE)
    page.goto(phone.url + "licences.txt")
    phone.open("#record")
    page.get_by_role("button", name="File").click()
    page.locator("input[type=file]").set_input_files(file)
    page.get_by_role("button", name="Take in").click()
    expect(page.locator(".preview")).to_have_count(0)
    mine = {**GREEN, "id": "mine", "name": "Mine", "points": [{**each, "x_m": each["x_m"] + 1} for each in GREEN["points"]]}
    for entry in ({**mine, "changed": "2026-05-04T10:00:00.000Z"}, PUTT):
        page.evaluate(SEED, entry)
    page.goto(phone.url + "#walk")
    page.reload()
    page.get_by_role("button", name="Greens", exact=True).click()
    page.get_by_role("button", name="Join Lower green to Mine").click()
    expect(page.locator(".greens li")).to_have_count(1)
    # two touches and the putt's slopes are the green's: as the engine places them
    page.get_by_role("button", name="Readings", exact=True).click()
    page.get_by_role("button", name="Place it").click()
    page.get_by_role("button", name=re.compile("Take this putt.s slopes")).click()
    expect(page.get_by_text("Its slopes are among the readings.")).to_be_visible()
    green = next(each for each in page.evaluate(GREENS) if each["id"] == "mine")
    assert green["points"][:50] == mine["points"] + GREEN["points"]
    slopes = [{"at_m": at, "slope_percent": slope, "fall_deg": fall, "sd_percent": sd} for at, slope, fall, sd in KEPT_SLOPES]
    where = {"ball": [SIDE / 2, SIDE / 4], "hole": [SIDE / 2, 2 * SIDE / 3]}
    read = engine("survey_points", **where, distance_m=4, slopes=slopes)["points"]
    assert green["points"][50:] == [pytest.approx(each, abs=1e-3) for each in read]


def test_a_drill_asks_the_map_for_its_putt(phone: Any) -> None:
    page = open_map(phone)
    page.goto(phone.url + "#practice")
    page.get_by_role("button", name="Drills", exact=True).click()
    page.get_by_role("button", name="Shallow breaks").click()
    expect(page.get_by_role("button", name="Where on the green")).to_be_visible()
    # a block of it asks too, and goes on meanwhile
    page.goto(phone.url + "#plan?place=green&do=shallow_breaks.8~foot_past.6")
    page.get_by_role("button", name="Take it").click(timeout=60_000)
    page.get_by_role("button", name="Start", exact=True).click()
    expect(page.locator(".run-next")).to_contain_text("Let the phone watch")
    assert phone.misfits((390, 844), (320, 640)) == []
    page.get_by_role("button", name="Where on the green").click()
    found = page.locator(".found button").first
    expect(found).to_contain_text(re.compile(r"(9|10|11)(\.\d)?\sft"), timeout=60_000)
    found.tap()
    expect(page.locator(".map-read")).to_contain_text("Make", timeout=60_000)
    page.get_by_role("link", name="Practice").click()
    expect(page.locator(".run-name")).to_have_text("Shallow breaks")


@pytest.mark.parametrize(
    "phone",
    [{"viewport": {"width": 390, "height": 844}}, {"viewport": {"width": 320, "height": 640}, "color_scheme": "dark"}],
    indirect=True,
    ids=str,
)
def test_it_fits_the_phone(phone: Any) -> None:
    page = open_map(phone, theme="system")
    touch(page, 4, 3)
    expect(page.locator(".map-read")).to_contain_text("Make", timeout=60_000)
    assert phone.misfits() == []
    page.get_by_role("button", name="Find a putt").click()
    expect(page.locator(".find")).to_be_visible()
    assert phone.misfits() == []
    for name in ("Walk", "Readings", "Greens"):
        page.get_by_role("button", name=name, exact=True).click()
        assert phone.misfits() == []
        assert phone.violations() == []
