"""The practice screens: tempo heard and seen, tempo found, drills drawn to scale, the strip at its true size."""

from collections.abc import Callable
from typing import Any

import pytest
from playwright.sync_api import Page, expect

MM_PX = 96 / 25.4  # CSS: an inch is 96 px
FOOT_MM = 304.8


def opened(phone: Any, tab: str, **practice: Any) -> Page:
    page = phone.open("#practice", **({"practice": practice} if practice else {}))
    expect(page.locator(".plan strong").first).not_to_be_empty(timeout=60_000)
    page.locator(".tabs").get_by_role("button", name=tab).click()
    return page


def drill(phone: Any, name: str) -> Page:
    page = opened(phone, "Drills")
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


def test_the_head_goes_where_the_sound_is(phone: Any, engine: Callable[..., Any]) -> None:
    """In the rest after a stroke the head is through, at the top it is back: read off beside the sound's own clock."""
    page = opened(phone, "Tempo")
    page.locator(".pendulum-head").wait_for()
    page.evaluate(
        """() => {
          const head = document.querySelector('.pendulum-head');
          window.seen = [];
          new MutationObserver(() => {
            const x = Number(/translate\\(([-\\d.]+)/.exec(head.getAttribute('transform'))[1]);
            window.seen.push([document.querySelector('.pendulum').dataset.word, x]);
          }).observe(head, { attributes: true });
        }"""
    )
    page.get_by_role("button", name="Play").click()
    page.wait_for_function("() => window.seen.some(([word]) => word === 'rest')", timeout=15_000)
    seen = page.evaluate("window.seen")
    assert min(x for word, x in seen if word in ("back", "through")) < 120
    assert max(x for word, x in seen if word in ("through", "rest")) > 220
    page.get_by_role("button", name="Stop").click()
    expect(page.get_by_role("button", name="Play")).to_be_visible()


@pytest.mark.parametrize("phone", [{"reduced_motion": "reduce"}], indirect=True)
def test_reduced_motion_says_it_in_words(phone: Any) -> None:
    page = opened(phone, "Tempo")
    page.get_by_role("button", name="Play").click()
    page.wait_for_function("() => document.querySelector('.pendulum').dataset.word === 'through'", timeout=15_000)
    assert "translate(170.0 130.0)" in str(page.locator(".pendulum-head").get_attribute("transform"))


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
    page.wait_for_function("() => JSON.parse(localStorage.borrowline ?? 'null')?.practice.tempo.ratio === 2.4")


def test_headphones_are_allowed_for(phone: Any) -> None:
    """Four taps, each 0.2 s after the high note; what the phone itself adds is in it too."""
    page = opened(phone, "Tempo", tempo=TEMPO | {"rest_s": 0.5})
    page.get_by_text("Headphones and lock screen").click()
    page.evaluate("() => { window.tap = () => document.querySelector('details .go').click(); }")
    page.get_by_role("button", name="Play").click()
    page.evaluate(
        """() => new Promise((done) => {
          let taps = 0, was = '';
          const moved = () => document.querySelector('.pendulum-head').getAttribute('transform');
          const head = () => Number(/translate\\(([-\\d.]+)/.exec(moved())[1]);
          let before = 0;
          const look = () => {
            const x = head();
            if (before && before < 170 && x >= 170 && document.querySelector('.pendulum').dataset.word === 'through') {
              setTimeout(tap, 200);
              if (++taps === 4) return setTimeout(done, 400);
            }
            before = x;
            requestAnimationFrame(look);
          };
          look();
        })"""
    )
    delay = page.evaluate(
        "new Promise(r => setTimeout(() => r(JSON.parse(localStorage.borrowline).practice.tempo.delay_s), 900))"
    )
    assert delay == pytest.approx(0.2, abs=0.12)


def test_my_tempo_from_taps(phone: Any) -> None:
    page = opened(phone, "Tempo")
    page.get_by_role("button", name="Find my tempo").click()
    page.get_by_role("button", name="Tap the strokes").click()
    page.locator(".tap").wait_for()
    # three strokes at their own times, which is what the page takes: not when it comes to handle them
    page.evaluate(
        """() => [0, 3, 6].flatMap((start) => [start, start + 0.66, start + 0.96]).forEach((at) => {
          const event = new PointerEvent('pointerdown', { bubbles: true });
          Object.defineProperty(event, 'timeStamp', { value: 5000 + at * 1000 });
          document.querySelector('.tap').dispatchEvent(event);
        })"""
    )
    expect(page.locator(".tap")).to_contain_text("3")
    page.get_by_role("button", name="That was it").click()
    expect(page.locator(".found")).to_contain_text("2.2 : 1")
    expect(page.locator(".found")).to_contain_text("0.66 s back, 0.3 s through, from 3 strokes")
    page.get_by_role("button", name="Use it").click()
    page.locator(".tabs").get_by_role("button", name="Tempo").click()
    expect(page.get_by_label("Ratio")).to_have_value("2.2")


def test_my_tempo_from_a_swing(phone: Any) -> None:
    page = opened(phone, "Tempo")
    page.get_by_role("button", name="Find my tempo").click()
    page.get_by_role("button", name="Swing the phone").click()
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
    expect(page.locator(".found")).to_contain_text("2 : 1")


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
        page.get_by_label("Back").fill(back)
        page.get_by_label("Roll").fill(roll)
        page.get_by_role("button", name="Add at Stimp 10").click()
    expect(page.get_by_text("back for the putt in hand")).to_be_visible()
    page.get_by_label("Back").fill("80")
    page.get_by_label("Roll").fill("12")
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


def test_the_strip_prints_at_its_true_size(phone: Any) -> None:
    page = drill(phone, "Laser along")
    expect(page.locator(".figures")).to_contain_text("12 mm inside, 33 mm up")
    page.get_by_label("Lie").fill("79")
    page.keyboard.press("Tab")
    expect(page.locator(".figures")).not_to_contain_text("12 mm inside")
    page.get_by_role("button", name="Strip to print").click()
    page.emulate_media(media="print")
    strips = page.locator(".strip")
    for i in range(2):
        box = strips.nth(i).bounding_box()
        assert box is not None
        assert box["width"] == pytest.approx(250 * MM_PX, abs=0.5)
        bar = strips.nth(i).locator("path.d-line").last
        assert bar.evaluate("bar => bar.getBBox().width * bar.getScreenCTM().a") == pytest.approx(100 * MM_PX, abs=0.5)
    expect(page.locator(".tabs")).to_be_hidden()


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
        assert 1 <= page.locator(".steps li").count() <= 4, name
        page.get_by_role("button", name="All drills").click()
