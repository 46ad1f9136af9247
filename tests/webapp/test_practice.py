"""The practice screens: tempo heard and seen, tempo found, drills drawn to scale, the strip at its true size."""

import re
from collections.abc import Callable
from typing import Any

import pytest
from playwright.sync_api import Page, expect

MM_PX = 96 / 25.4  # CSS: an inch is 96 px
FOOT_MM = 304.8


def opened(phone: Any, tab: str, settings: dict[str, str] | None = None, **practice: Any) -> Page:
    page = phone.open("#practice", settings=settings or {}, **({"practice": practice} if practice else {}))
    expect(page.locator(".plan strong").first).not_to_be_empty(timeout=60_000)
    page.locator(".tabs").get_by_role("button", name=tab).click()
    return page


def drill(phone: Any, name: str) -> Page:
    page = opened(phone, "Drills", settings={"distance": "m"})
    page.get_by_role("button", name=name).click()
    return page


TEMPO = {
    "forward_s": 0.3,
    "ratio": 2,
    "rest_s": 2.4,
    "strokes": 20,
    "volume": 0.8,
    "muted": False,
    "vibrate": True,
    "delay_s": 0,
}


LATE_S = 0.03  # what the phone itself adds, between the page and the ear
AHEAD_S = 0.15  # from the touch to the first beat
# The sound's clock, as the test sets it
CLOCK = f"""window.now = 0; window.buzzes = 0; window.gains = [];
Object.defineProperty(AudioContext.prototype, 'currentTime', {{ get: () => now }});
Object.defineProperty(AudioContext.prototype, 'outputLatency', {{ get: () => {LATE_S} }});
const make = AudioContext.prototype.createGain;
AudioContext.prototype.createGain = function () {{ const gain = make.call(this); gains.push(gain); return gain; }};
navigator.vibrate = () => buzzes++;"""


def playing(phone: Any, **tempo: Any) -> Page:
    phone.page.add_init_script(CLOCK)
    page = opened(phone, "Tempo", tempo=TEMPO | tempo)
    page.get_by_role("button", name="Play").click()
    expect(page.get_by_role("button", name="Stop")).to_be_visible()
    return page


def shown(page: Page, heard_s: float) -> tuple[str, float]:
    """The word and the head's place from left to right, when the ear is so far from the first beat."""
    word, x = page.evaluate(
        """async (at) => {
          window.now = at;
          for (let i = 0; i < 2; i++) await new Promise(requestAnimationFrame);
          const head = document.querySelector('.pendulum-head').getAttribute('transform');
          return [document.querySelector('.pendulum').dataset.word, Number(/translate\\(([-\\d.]+)/.exec(head)[1])];
        }""",
        heard_s + AHEAD_S + LATE_S,
    )
    return word, x


def test_silent_the_head_goes_where_the_sound_would_be(phone: Any, engine: Callable[..., Any]) -> None:
    """Muted, with headphones 0.2 s late: back at the top, through at the finish, in the middle at the ball, felt there."""
    page = playing(phone, muted=True, delay_s=0.2)
    assert page.evaluate("gains[0].gain.value") == 0
    tempo = engine("tempo", forward_s=0.3)
    for cycle in (0, 7):
        start = tempo["lead_s"] + cycle * tempo["cycle_s"] + 0.2
        assert shown(page, start + 0.6) == ("through", pytest.approx(42.2, abs=0.5))  # the top, 0.44 rad on 300
        before = page.evaluate("buzzes")
        assert shown(page, start + 0.9) == ("through", pytest.approx(170, abs=0.5))
        assert shown(page, start + 1.19) == ("through", pytest.approx(297.8, abs=0.5))
        assert page.evaluate("buzzes") == before + 1
        assert shown(page, start + 3)[0] == "rest"
    page.get_by_role("button", name="Stop").click()
    expect(page.get_by_role("button", name="Play")).to_be_visible()


@pytest.mark.parametrize("phone", [{"reduced_motion": "reduce"}], indirect=True)
def test_reduced_motion_says_it_in_words(phone: Any) -> None:
    page = playing(phone)
    assert shown(page, 4 * 0.6 + 0.3) == ("back", 170)
    assert shown(page, 4 * 0.6 + 0.7) == ("through", 170)


def test_a_call_stops_the_sound_and_it_says_so(phone: Any) -> None:
    phone.page.add_init_script(
        "window.AudioContext = class extends AudioContext { constructor(options) { super(options); window.held = this; } }"
    )
    page = opened(phone, "Tempo")
    page.get_by_role("button", name="Play").click()
    expect(page.get_by_role("button", name="Stop")).to_be_visible()
    page.evaluate("held.suspend()")
    expect(page.get_by_role("alert")).to_contain_text("The phone has stopped the sound")
    page.get_by_role("button", name="Go on").click()
    expect(page.get_by_role("button", name="Stop")).to_be_visible()
    expect(page.get_by_role("alert")).to_have_count(0)
    # and when the phone is taken up again after its lock screen, without a touch
    page.evaluate("held.suspend()")
    expect(page.get_by_role("button", name="Go on")).to_be_visible()
    page.evaluate("document.dispatchEvent(new Event('visibilitychange'))")
    expect(page.get_by_role("button", name="Stop")).to_be_visible()


def test_a_tempo_other_than_two_to_one_is_said_to_be_ours(phone: Any) -> None:
    page = opened(phone, "Tempo")
    expect(page.get_by_text("interpolation")).to_have_count(0)
    page.get_by_label("Ratio").fill("2.4")
    page.keyboard.press("Tab")
    expect(page.get_by_text("the curve between is an interpolation")).to_be_visible()
    expect(page.locator(".tempo-head")).to_contain_text("0.72")
    page.get_by_label("Ratio").fill("9")
    page.keyboard.press("Tab")
    expect(page.get_by_role("alert")).to_contain_text("Ratio takes 1 to 4")
    assert phone.kept("practice.tempo.ratio") == 2.4


def test_headphones_are_allowed_for(phone: Any) -> None:
    """Four taps, each 0.2 s after the high note has left the phone."""
    page = playing(phone)
    page.get_by_text("Headphones and lock screen").click()
    for cycle in range(4):
        shown(page, 4 * 0.6 + cycle * 3.6 + 0.9 + 0.2)
        page.get_by_role("button", name="Tap with the high note").click()
    expect(page.get_by_label("Headphone delay")).to_have_value("200")


def test_my_tempo_from_taps(phone: Any) -> None:
    page = opened(phone, "Tempo")
    page.get_by_role("button", name="Find my tempo").click()
    page.get_by_role("button", name="Tap the strokes").click()
    page.locator(".tap").wait_for()
    # three strokes at their own times, which is what the page takes: not when it comes to handle them
    page.evaluate(
        """() => [0, 0.64, 0.94, 3, 3.66, 3.96, 6, 6.68, 6.98].forEach((at) => {
          const event = new PointerEvent('pointerdown', { bubbles: true });
          Object.defineProperty(event, 'timeStamp', { value: 5000 + at * 1000 });
          document.querySelector('.tap').dispatchEvent(event);
        })"""
    )
    expect(page.locator(".tap")).to_contain_text("3")
    page.get_by_role("button", name="That was it").click()
    expect(page.locator(".found")).to_contain_text("2.2 : 1")
    expect(page.locator(".found")).to_contain_text(
        "0.66 s back, give or take 0.02; 0.3 s through, give or take 0. From 3 strokes."
    )
    page.get_by_role("button", name="Use it").click()
    page.locator(".tabs").get_by_role("button", name="Tempo").click()
    expect(page.get_by_label("Ratio")).to_have_value("2.2")


def test_my_tempo_from_a_swing(phone: Any) -> None:
    page = opened(phone, "Tempo")
    page.get_by_role("button", name="Find my tempo").click()
    page.get_by_role("button", name="Swing the phone").click()
    # leave to feel the motion comes a moment after the touch, to whoever asked first
    page.evaluate(
        "async () => { for (const kind of [DeviceMotionEvent, DeviceOrientationEvent]) await kind.requestPermission?.(); }"
    )
    # Grober's pendulum at 0.6 and 0.3 s, one stroke every 3.2 s, 60 samples a second
    page.evaluate(
        """() => {
          for (let i = 0; i < 60 * 10; i++) {
            const t = i / 60, s = (t - 0.8 + 3.2) % 3.2, turn = Math.PI / 3;
            const pace = s < 0.6 ? (2 * turn) / 0.6 : turn / 0.3, u = s < 0.6 ? pace * s : 2 * turn + pace * (s - 0.6);
            const rate = s < 1.2 ? 10 * pace * (Math.cos(2 * u) - Math.cos(u)) : 0;
            const rotationRate = { alpha: 0.2, beta: rate, gamma: 0.1 * rate };
            const event = new DeviceMotionEvent('devicemotion', { rotationRate });
            Object.defineProperty(event, 'timeStamp', { value: 1000 + t * 1000 });
            dispatchEvent(event);
          }
        }"""
    )
    page.get_by_role("button", name="That was it").click()
    expect(page.locator(".found .big")).to_have_text(re.compile(r"^\s*(1\.9[5-9]|2|2\.0[1-5]) : 1"))
    low, high = map(float, re.findall(r"[\d.]+", page.locator(".found .say").inner_text()))
    assert low < 2 < high


def test_nothing_felt_is_said(phone: Any) -> None:
    page = opened(phone, "Tempo")
    page.get_by_role("button", name="Find my tempo").click()
    page.get_by_role("button", name="Tap the strokes").click()
    page.get_by_role("button", name="That was it").click()
    expect(page.get_by_role("alert")).to_contain_text("Three taps a stroke")


def test_stroke_length_takes_three_strokes_and_a_read(phone: Any) -> None:
    page = phone.ready()
    page.get_by_role("link", name="Practice").click()
    page.locator(".tabs").get_by_role("button", name="Tempo").click()
    page.get_by_role("button", name="Stroke length").click()
    for back, roll in (("4", "3"), ("8", "12"), ("12", "27")):
        expect(page.get_by_text("back for the putt in hand")).to_have_count(0)
        page.get_by_role("textbox", name="Back").fill(back)
        page.get_by_role("textbox", name="Roll").fill(roll)
        page.get_by_role("button", name="Add at Stimp 10").click()
    expect(page.get_by_text("back for the putt in hand")).to_be_visible()
    expect(page.get_by_text("10 ft on Stimp 10")).to_be_visible()
    back = page.locator(".practice .big")
    before = back.inner_text()
    page.get_by_role("link", name="Read").click()
    page.get_by_role("slider", name="Distance").press("End")
    page.get_by_role("link", name="Practice").click()
    expect(back).not_to_have_text(before)
    page.get_by_role("textbox", name="Back").fill("80")
    page.get_by_role("textbox", name="Roll").fill("12")
    page.get_by_role("button", name="Add at Stimp 10").click()
    expect(page.get_by_role("alert")).to_contain_text("Back takes")
    page.get_by_role("button", name="Remove stroke 3").click()
    expect(page.get_by_text("back for the putt in hand")).to_have_count(0)


def test_the_gate_is_drawn_to_scale(phone: Any) -> None:
    page = drill(phone, "Start gate")
    expect(page.locator(".figures")).to_contain_text("Gap 53 mm")
    balls = page.evaluate(
        "[...document.querySelectorAll('.drawing .d-ball')].map(b => ['cx', 'cy', 'r'].map(k => Number(b.getAttribute(k))))"
    )
    (x0, y0, r), (x1, y1, _), (x2, y2, _) = balls
    assert 2 * r == pytest.approx(42.67, abs=0.01)
    assert (x1 - x0, x2 - x0) == pytest.approx((FOOT_MM, FOOT_MM))
    assert abs(y2 - y1) - 2 * r == pytest.approx(53.3, abs=0.2)
    assert (y1 + y2) / 2 == pytest.approx(y0)
    page.get_by_label("Gap", exact=True).fill("80")
    page.keyboard.press("Tab")
    # by hand: posts' centres 61.3 mm off the line, 304.8 mm ahead; the ball passes 42.7 mm from one: 3.5 degrees
    expect(page.locator(".figures")).to_contain_text("Gap 80 mm, 30 cm ahead: starts within 3.5° pass; 53 mm would pass two")


def test_the_strip_prints_at_its_true_size(phone: Any) -> None:
    page = drill(phone, "Laser along")
    expect(page.locator(".figures")).to_contain_text("12 mm inside, 33 mm up")
    page.get_by_label("Lie").fill("79")
    page.keyboard.press("Tab")
    expect(page.locator(".figures")).not_to_contain_text("12 mm inside")
    page.get_by_role("button", name="Arc to print").click()
    assert len(re.findall(rb"/Type */Page\b", page.pdf(prefer_css_page_size=True, format="A4"))) == 1
    page.emulate_media(media="print")
    # what the margins leave of a sheet of A4 on its side
    page.set_viewport_size({"width": round(273 * MM_PX), "height": round(186 * MM_PX)})
    for strip in page.locator(".strip").all():
        box = strip.bounding_box()
        assert box is not None
        assert box["width"] == pytest.approx(250 * MM_PX, abs=0.5)
        assert box["x"] + box["width"] <= 273 * MM_PX
        assert box["y"] + box["height"] <= 186 * MM_PX
        bar = strip.locator("path.d-line").last
        assert bar.evaluate("bar => bar.getBBox().width * bar.getScreenCTM().a") == pytest.approx(100 * MM_PX, abs=0.5)
    expect(page.locator(".tabs")).to_be_hidden()


@pytest.mark.parametrize(("handed", "left"), [("right", "Back"), ("left", "Through")])
def test_the_arc_is_the_players_own(phone: Any, handed: str, left: str) -> None:
    """The face's drawing has the feet above the line, so a left-hander's backswing is to the right."""
    page = phone.open("#practice", settings={"handed": handed, "distance": "m"})
    page.locator(".tabs").get_by_role("button", name="Drills").click()
    page.get_by_role("button", name="Laser along").click(timeout=60_000)
    words = page.locator(".drawing text")
    expect(words.first).to_have_text(left)
    expect(page.locator(".figures")).to_contain_text("12 mm inside")
    page.get_by_label("Stroke turns above the grip").fill("0")
    page.keyboard.press("Tab")
    expect(page.locator(".figures")).to_contain_text("18 mm inside")  # by hand: r 0.864, (r - sqrt(r2 - 0.09)) cos 70


def test_cautions_stand_where_they_apply(phone: Any) -> None:
    page = drill(phone, "Laser along")
    cautions = page.get_by_role("list", name="Cautions")
    expect(cautions).to_contain_text("never towards eyes")
    expect(cautions).to_contain_text("ask a physician")
    page.get_by_role("button", name="All drills").click()
    page.get_by_role("button", name="Start gate").click()
    expect(page.get_by_role("heading", name="Start gate")).to_be_visible()
    expect(cautions).to_have_count(0)


def test_every_drill_has_a_drawing_and_steps(phone: Any) -> None:
    page = opened(phone, "Drills")
    names = page.locator(".skill .row strong").all_inner_texts()
    assert len(names) >= 12
    for name in names:
        page.locator(".row", has_text=name).click()
        expect(page.locator("h1")).to_have_text(name)
        assert page.locator(".drawing > *").count() > 0, name
        # above what comes late, so that it does not move under a thumb
        back, late = page.get_by_role("button", name="All drills").bounding_box(), page.locator(".drawing").bounding_box()
        assert back["y"] < late["y"], name
        assert 1 <= page.locator(".steps li").count() <= 4, name
        page.get_by_role("button", name="All drills").click()
