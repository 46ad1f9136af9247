"""The level on a phone whose sensor the browser plays: slope, fall, zero, and each way it can fail."""

import itertools
import math
import re
from collections.abc import Callable
from datetime import UTC, datetime
from typing import Any

import pytest
from playwright.sync_api import Page, expect

PUTT = {"distance_m": 3.048, "slope_percent": 2.0, "fall_deg": 90.0, "stimp_ft": 10.0, "past_m": 0.3048}
STATIONS: dict[str, Any] = {
    "distance_m": 3.048,
    "stimp_ft": 10.0,
    "past_m": 0.3048,
    "stations": [{"at_m": 0, "slope_percent": 1, "fall_deg": 90}, {"at_m": 3, "slope_percent": 2, "fall_deg": 45}],
}
SLOPE_PERCENT = 0.1  # what a level promises
FALL_DEG = 5
SETTLE_MS = 10_000
KEPT_MS = 3200  # what was shown longer ago is forgotten
# A page whose time the test makes pass, and that tells ten times as often; what counts the engine's silence stays as it is
HASTE = """(() => {
  const now = performance.now.bind(performance), every = setInterval;
  let passed = 0;
  performance.now = () => now() + passed;
  globalThis.setInterval = (work, ms) => every(work, ms < 500 ? ms / 10 : ms);
  globalThis.pass = (ms) => { passed += ms; };
  addEventListener('deviceorientation', ({ beta, gamma }) => { globalThis.heard = [beta, gamma]; });
})()"""


class Sensor:
    """The phone's tilt, as Chromium's own override gives it."""

    def __init__(self, page: Page) -> None:
        self.page = page
        page.add_init_script(HASTE)
        self.session = page.context.new_cdp_session(page)
        self.shown = [0.0, 0.0]

    def show(self, beta: float, gamma: float, alpha: float = 0) -> None:
        self.session.send("DeviceOrientation.setDeviceOrientationOverride", {"alpha": alpha, "beta": beta, "gamma": gamma})
        self.shown = [beta, gamma]

    def wait(self, ms: float) -> None:
        """Keep still for so long: the browser hands on what it was given, and time passes."""
        heard = "shown => globalThis.heard?.every((told, i) => Math.abs(told - shown[i]) < 0.11)"
        self.page.wait_for_function(heard, arg=self.shown)
        self.page.evaluate("ms => pass(ms)", ms)

    def lie(
        self,
        slope_percent: float,
        fall_deg: float,
        turned_deg: float = 0,
        bias_deg: tuple[float, float] = (0, 0),
        told: bool = False,
    ) -> None:
        """Lie on a slope whose fall line lies ``fall_deg`` clockwise from the phone's first top; ``told`` by a phone that
        knows its own turning."""
        fall, tilt = math.radians(fall_deg - turned_deg), math.atan(slope_percent / 100)
        # up leans away from the fall line; the bias adds to both angles while they are small
        x, y = -math.sin(tilt) * math.sin(fall), -math.sin(tilt) * math.cos(fall)
        beta, gamma = math.degrees(math.asin(y)) + bias_deg[0], math.degrees(math.atan2(-x, math.cos(tilt))) + bias_deg[1]
        self.show(beta, gamma, (110 - turned_deg) % 360 if told else 0)


@pytest.fixture
def sensor(phone: Any) -> Sensor:
    return Sensor(phone.page)


def shows(page: Page, slope: float, fall: float) -> None:
    """Slope and fall line are on the screen, as near as a level promises."""
    near = f"""() => {{
      const [slope] = document.querySelector('.measured .big')?.textContent.split(' ').map(Number) ?? [];
      const [, fall] = document.querySelector('.fall-words')?.textContent.match(/(\\d+)°/) ?? [];
      const turned = (Number(fall) - {fall} + 540) % 360 - 180;
      return Math.abs(slope - {slope}) < {SLOPE_PERCENT} + 1e-9 && Math.abs(turned) <= {FALL_DEG};
    }}"""
    page.wait_for_function(near)


def start(page: Page) -> None:
    page.get_by_role("button", name="Start the level").click()


def test_forty_slopes(phone: Any, sensor: Sensor) -> None:
    sensor.lie(1, 0)
    page = phone.open("#green", putt=PUTT)
    start(page)
    expect(page.locator(".measured .big")).to_contain_text(re.compile(r"^\d"), timeout=60_000)
    for slope, fall in itertools.product((1, 1.2, 1.5, 2, 2.4, 3, 3.6, 4.5, 5.5, 7), (0, 72, 158, 290)):
        # a sensor is never quite still: it plays over the browser's tenth of a degree, and the mean lies between
        for step in range(8):
            sensor.lie(slope, fall, bias_deg=((step - 3.5) / 80, (3.5 - step) / 80))
            sensor.wait(KEPT_MS / 8)
        shows(page, slope, fall)


def test_a_slow_engine_is_no_blind_level(phone: Any, sensor: Sensor) -> None:
    """Each answer comes when there are newer readings."""
    phone.page.add_init_script("""{
      const { postMessage } = Worker.prototype, later = setTimeout;
      Worker.prototype.postMessage = function (asked) { later(() => postMessage.call(this, asked), 500); };
    }""")
    sensor.lie(2, 120)
    page = phone.open("#green", putt=PUTT)
    start(page)
    shows(page, 2, 120)


def test_a_settled_slope_goes_into_the_read_with_its_spread(phone: Any, sensor: Sensor) -> None:
    sensor.lie(3, 270)
    page = phone.open("#green", putt=PUTT)
    start(page)
    expect(page.get_by_text("✓ Settled")).to_be_visible(timeout=SETTLE_MS)
    page.get_by_role("button", name="Take into the read").click()
    putt = phone.kept("putt")
    assert (putt["slope_percent"], putt["fall_deg"]) == (pytest.approx(3, abs=0.1), 270)
    # a phone never turned is half a degree off, and lies 0.15 degrees otherwise each time
    assert (putt["tilt_source"], putt["tilt_sd_percent"]) == ("level", pytest.approx(0.91, abs=0.03))
    page.get_by_role("button", name="Undo").click()
    assert phone.kept("putt") == PUTT


def test_a_place_of_the_putt_takes_it(phone: Any, sensor: Sensor) -> None:
    sensor.lie(4, 100)
    page = phone.open("#green", putt=STATIONS)
    start(page)
    page.get_by_role("button", name="Take at 9.8 ft").click()
    first, second = phone.kept("putt.stations")
    assert first == STATIONS["stations"][0]
    assert (second["at_m"], second["fall_deg"], second["tilt_source"]) == (3, 100, "level")
    assert second["slope_percent"] == pytest.approx(4, abs=0.1)
    page.get_by_label("From the ball").fill("5")
    page.keyboard.press("Tab")
    page.get_by_role("button", name="Add this place").click()
    assert [place["at_m"] for place in phone.kept("putt.stations")] == [0, pytest.approx(5 * 0.3048), 3]
    page.get_by_role("button", name="Take as the only slope; 3 places go").click()
    assert "stations" not in phone.kept("putt")


TURNED = [("Zero it: half a turn", (0, 180)), ("By quarter turns", (0, 90, 180, 270))]


@pytest.mark.parametrize(("how", "turns"), TURNED)
def test_two_degrees_of_bias_go_by_turning(phone: Any, sensor: Sensor, how: str, turns: tuple[int, ...]) -> None:
    bias = (1.4, -1.4)
    sensor.lie(2.5, 60, 0, bias)
    page = phone.open("#green", putt=PUTT)
    start(page)
    page.get_by_role("button", name=how).click()
    for turned in turns:
        sensor.lie(2.5, 60, turned, bias)
        sensor.wait(KEPT_MS)
        page.get_by_role("button", name="Take this position").click(timeout=SETTLE_MS)
    expect(page.get_by_text("Phone zeroed")).to_be_visible()
    assert phone.kept("calibration.phone.bias_deg") == pytest.approx(bias, abs=0.1)
    # taken as it lies now, the slope would be read the wrong way round
    expect(page.get_by_text("Turn it back, top to the hole.")).to_be_visible()
    expect(page.get_by_role("button", name=re.compile("^Take"))).to_have_count(0)
    page.get_by_role("button", name="Its top points to the hole").click()
    sensor.lie(2.5, 60, 0, bias)
    sensor.wait(KEPT_MS)
    shows(page, 2.5, 60)
    page.reload()
    expect(page.get_by_text(re.compile("This phone is 2° off"))).to_be_visible()
    page.get_by_role("button", name="Forget").click()
    expect(page.get_by_text("Not zeroed")).to_be_visible()
    page.get_by_role("button", name="Undo").click()
    expect(page.get_by_text(re.compile("This phone is 2° off"))).to_be_visible()


@pytest.mark.parametrize(("how", "turns"), TURNED)
def test_a_phone_that_knows_its_turning_goes_on_by_itself(phone: Any, sensor: Sensor, how: str, turns: tuple[int, ...]) -> None:
    sensor.lie(2.5, 60, 0, (0.5, 0.3), told=True)
    page = phone.open("#green", putt=PUTT)
    start(page)
    page.get_by_role("button", name=how).click()
    sensor.wait(KEPT_MS)
    page.get_by_role("button", name="Take this position").click(timeout=SETTLE_MS)
    for n, turned in enumerate(turns[1:], 2):
        expect(page.get_by_role("heading", name=f"Position {n} of {len(turns)}")).to_be_visible(timeout=SETTLE_MS)
        sensor.lie(2.5, 60, turned, (0.5, 0.3), told=True)
        sensor.wait(KEPT_MS)
        page.wait_for_timeout(300)
        sensor.wait(KEPT_MS)
    expect(page.get_by_text("Turn it back, top to the hole.")).to_be_visible(timeout=SETTLE_MS)
    sensor.lie(2.5, 60, 0, (0.5, 0.3), told=True)
    sensor.wait(KEPT_MS)
    shows(page, 2.5, 60)
    expect(page.get_by_role("button", name="Take into the read")).to_be_visible()


def test_a_zero_of_another_day_asks_to_be_renewed(phone: Any, sensor: Sensor) -> None:
    sensor.lie(2, 90)
    page = phone.open("#green", putt=PUTT, calibration={"phone": {"bias_deg": [0, 0], "date": "2026-05-03"}})
    start(page)
    expect(page.get_by_text("zero it anew today")).to_be_visible(timeout=30_000)
    page.get_by_role("button", name="Take into the read, ±0.9").click()
    assert phone.kept("putt.tilt_sd_percent") == pytest.approx(0.91, abs=0.03)


def test_the_read_sends_to_the_level_and_gets_the_slope_back(phone: Any, sensor: Sensor) -> None:
    sensor.lie(3, 270)
    page = phone.ready(putt=PUTT)
    page.locator(".cell[aria-label^='Slope']").click()
    page.get_by_role("button", name="Lay the phone down").click()
    page.get_by_role("button", name="Take into the read").click(timeout=SETTLE_MS)
    expect(page.locator(".answer h1")).to_contain_text("right of the cup")
    expect(page.get_by_text("How steep, measured with a level")).to_be_visible()
    page.get_by_role("button", name="Undo").click()
    expect(page.locator(".answer h1")).to_contain_text("left of the cup")
    assert phone.kept("putt") == PUTT


@pytest.mark.parametrize(("told", "most"), [(True, 6), (False, 8)])
def test_from_opening_to_a_zeroed_measured_read_takes_few_touches(phone: Any, sensor: Sensor, told: bool, most: int) -> None:
    """It took nine, and typing; a phone that knows its own turning needs two less than one that does not."""
    sensor.lie(2.5, 60, 0, (0.4, 0.2), told)
    page = phone.ready()
    page.evaluate("() => { globalThis.touches = 0; addEventListener('click', () => { globalThis.touches += 1; }, true); }")
    page.locator("#entry").click()
    page.keyboard.type("14")
    page.keyboard.press("Enter")
    page.locator(".cell[aria-label^='Slope']").click()
    page.get_by_role("button", name="Lay the phone down").click()
    page.get_by_role("button", name="Zero it: half a turn").click(timeout=SETTLE_MS)
    sensor.wait(KEPT_MS)
    page.get_by_role("button", name="Take this position").click(timeout=SETTLE_MS)
    sensor.lie(2.5, 60, 180, (0.4, 0.2), told)
    sensor.wait(KEPT_MS)
    page.wait_for_timeout(300)
    sensor.wait(KEPT_MS)
    if not told:
        page.get_by_role("button", name="Take this position").click(timeout=SETTLE_MS)
    expect(page.get_by_text("Turn it back, top to the hole.")).to_be_visible(timeout=SETTLE_MS)
    if not told:
        page.get_by_role("button", name="Its top points to the hole").click()
    sensor.lie(2.5, 60, 0, (0.4, 0.2), told)
    sensor.wait(KEPT_MS)
    shows(page, 2.5, 60)
    page.get_by_role("button", name="Take into the read").click()
    expect(page.locator(".answer h1")).to_contain_text("left of the cup")
    putt = phone.kept("putt")
    assert putt["distance_m"] == pytest.approx(14 * 0.3048)
    assert (putt["tilt_source"], putt["slope_percent"]) == ("level", pytest.approx(2.5, abs=SLOPE_PERCENT + 1e-9))
    assert page.evaluate("globalThis.touches") <= most


def test_positions_that_disagree_are_refused(phone: Any, sensor: Sensor) -> None:
    sensor.show(3, 0)
    page = phone.open("#green", putt=PUTT)
    start(page)
    page.get_by_role("button", name="Zero it: half a turn").click()
    for beta in (5, 5.2):
        sensor.show(beta, 0)
        sensor.wait(KEPT_MS)
        page.get_by_role("button", name="Take this position").click(timeout=SETTLE_MS)
    expect(page.get_by_role("alert")).to_contain_text("more than a phone is ever off")
    expect(page.get_by_role("heading", name="Position 1 of 2")).to_be_visible()


def test_a_standing_and_a_moving_phone(phone: Any, sensor: Sensor) -> None:
    sensor.show(70, 0)
    page = phone.open("#green", putt=PUTT)
    start(page)
    expect(page.get_by_role("alert")).to_contain_text("the phone stands: lay it flat", timeout=30_000)
    page.get_by_role("button", name="Stop the level").click()
    start(page)
    for i in range(14):
        sensor.show(2 * (i % 2), 0)
        page.wait_for_timeout(120)
    expect(page.get_by_role("alert")).to_contain_text("the phone moves: let go of it")


def type_slope(phone: Any) -> None:
    page = phone.page
    page.get_by_label("Slope", exact=True).fill("2.7")
    page.get_by_label("Falls", exact=True).fill("45")
    page.keyboard.press("Tab")
    page.get_by_role("button", name="Take what is typed").click()
    assert phone.kept("putt.slope_percent") == 2.7
    assert phone.kept("putt.fall_deg") == 45


def test_a_phone_without_a_sensor_takes_typing(phone: Any) -> None:
    page = phone.open("#green", putt=PUTT)
    page.evaluate("addEventListener('deviceorientation', (event) => event.stopImmediatePropagation(), true)")
    start(page)
    expect(page.get_by_role("alert")).to_contain_text("gives no tilt", timeout=SETTLE_MS)
    page.get_by_label("Slope", exact=True).fill("12")
    page.keyboard.press("Tab")
    expect(page.get_by_text("Slope takes 0 to 8")).to_be_visible()
    type_slope(phone)


@pytest.mark.parametrize("answer", ["Promise.resolve('denied')", "Promise.reject(new Error('no touch'))"])
def test_a_refusal_of_leave_is_said(phone: Any, answer: str) -> None:
    phone.page.add_init_script(f"DeviceOrientationEvent.requestPermission = () => {answer}")
    page = phone.open("#green", putt=PUTT)
    start(page)
    expect(page.get_by_role("alert")).to_contain_text("refused to this page")
    type_slope(phone)


def test_leave_given_starts_the_level(phone: Any, sensor: Sensor) -> None:
    phone.page.add_init_script("DeviceOrientationEvent.requestPermission = () => Promise.resolve('granted')")
    sensor.lie(2.1, 90)
    page = phone.open("#green", putt=PUTT)
    start(page)
    expect(page.locator(".measured .big")).to_contain_text(re.compile(r"^[12]\.\d"), timeout=30_000)


def test_a_slope_steeper_than_a_read_takes_is_refused(phone: Any, sensor: Sensor) -> None:
    sensor.lie(11, 90)
    page = phone.open("#green", putt=PUTT)
    start(page)
    page.get_by_role("button", name="Take into the read").click(timeout=30_000)
    expect(page.get_by_role("alert")).to_contain_text("up to 8 %; this is 11")
    assert phone.kept("putt") == PUTT


def test_a_floor_level_enough(phone: Any, sensor: Sensor, engine: Callable[..., Any]) -> None:
    sensor.lie(1.8, 30)
    page = phone.open("#green", putt=PUTT, calibration={"phone": {"bias_deg": [0, 0], "date": datetime.now(UTC).isoformat()}})
    start(page)
    expect(page.get_by_text("Not level enough for mirror and laser.")).to_be_visible(timeout=30_000)
    shift = engine("floor", slope_percent=1.8, slope_sd_percent=0.1, eye_m=1.5)["shift_m"] / 0.0254
    said = re.search(r"eye line ([\d.]+)", page.get_by_text("moves the eye line").inner_text())
    assert said is not None
    assert float(said[1]) == pytest.approx(shift, abs=0.1)
