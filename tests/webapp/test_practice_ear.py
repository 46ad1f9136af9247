"""Pace by ear, through the browser's own microphone: Chromium plays a file of putts that numpy made."""

import json
import re
import wave
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from playwright.sync_api import Page, Playwright, expect

import browser
import environment
from tests import sounds

MARK_M, STIMP_FT, MEANT_M = 2.5, 9.0, 4.0
LAUNCHES = (2.1, 2.25, 2.4)
ENTRIES = "async () => (await import('/records/db.js')).readAll()"
EAR = {"wall_m": MARK_M, "paper_m": 0, "meant_m": MEANT_M, "floor_ft": STIMP_FT, "floor_sd_ft": 0.45}
BLOCK = {"drill": "pace_by_ear", "minutes": 6, "why": "Why.", "instead": []}
PLANNED = {"minutes": 20, "place": "room", "at_hand": ["level_floor"], "weights": {}}


def putted(folder: Path) -> Path:
    """A file of three putts in a room with an echo and a little noise."""
    room = sounds.Room(48_000, 13, 7, stimp_ft=STIMP_FT, marks_m=(MARK_M,))
    for i, launch in enumerate(LAUNCHES):
        room.putt(2 + 4 * i, launch)
    room.echo()
    room.noise(room.white(), 24)
    path = folder / "putts.wav"
    with wave.open(str(path), "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(2)
        file.setframerate(room.rate)
        file.writeframes((np.clip(room.sound, -1, 1) * 32767).astype("<i2").tobytes())
    return path


def open_ear(page: Page, url: str) -> None:
    record = {"schema": 1, "cautioned": True, "practice": {"blocks": [BLOCK], "planned": PLANNED, "ear": EAR}}
    page.add_init_script(f"localStorage.borrowline ??= {json.dumps(json.dumps(record))}")
    page.goto(url + "#practice")
    page.get_by_role("button", name="Drills", exact=True).click()
    page.get_by_role("button", name="Pace by ear").click(timeout=60_000)
    page.get_by_role("button", name="Start this drill").click()
    page.get_by_role("button", name="It is set up").click()


def test_putts_are_heard_counted_and_shown(playwright: Playwright, site: Any, tmp_path: Path) -> None:
    flags = ["--use-fake-ui-for-media-stream", "--use-fake-device-for-media-stream"]
    context = browser.open_store(
        playwright,
        tmp_path / "profile",
        executable_path=environment.chromium(),
        args=[*browser.FLAGS, *flags, f"--use-file-for-fake-audio-capture={putted(tmp_path)}%noloop"],
        viewport=browser.PHONE,
        service_workers="block",
    )
    page = context.pages[0]
    open_ear(page, site.url)
    page.get_by_role("button", name="Listen", exact=True).click()
    expect(page.get_by_text("3 putts: lean", exact=False)).to_be_visible(timeout=90_000)
    counted = [int(page.locator(f".count{which} .big").inner_text()) for which in (".good", ":not(.good)")]
    assert sum(counted) == len(LAUNCHES)
    # 2.4 m/s on this floor rolls 4.7 m, less what a skid takes off: long of 4 m
    expect(page.locator(".ear-last")).to_contain_text("% long")
    page.get_by_role("button", name="End", exact=True).click()
    (block,) = [each for each in page.evaluate(ENTRIES) if each["kind"] == "drill"]
    assert (block["good"], block["bad"]) == tuple(counted)
    assert block["heard"]["meant_m"] == MEANT_M
    assert len(block["heard"]["rolls_m"]) == len(LAUNCHES)
    assert 0.02 < block["heard"]["roll_sd_m"] / MEANT_M < 0.1  # the floor's 5 %, less what one mark needs of it
    context.close()


# The way out is the way in, as with an earpiece held to the microphone; then it is taken away, and strikes come by themselves
LOOP = """
const connect = AudioNode.prototype.connect;
AudioNode.prototype.connect = function (to, ...more) {
  if (to === this.context.destination && !(this instanceof AudioWorkletNode)) {
    window.air = this.context.createMediaStreamDestination();
    connect.call(this, window.air);
    new MutationObserver((_, seen) => {
      if (!document.body.textContent.includes('Earpiece back on')) return;
      seen.disconnect();
      this.disconnect(window.air);
    }).observe(document, { childList: true, subtree: true });
  }
  return connect.call(this, to, ...more);
};
const start = AudioBufferSourceNode.prototype.start;
AudioBufferSourceNode.prototype.start = function (when, ...more) {
  if (this.loop) window.began = when;
  return start.call(this, when, ...more);
};
navigator.mediaDevices.getUserMedia = async () => new MediaStream(window.air.stream.getTracks().map(track => track.clone()));
"""
STRIKE = """([first, cycle, off]) => {
  const context = air.context;
  const buffer = context.createBuffer(1, 4800, context.sampleRate);
  buffer.copyToChannel(Float32Array.from({ length: 4800 }, (_, i) => 0.5 * Math.sin(0.24 * i) * Math.exp(-i / 190)), 0);
  const next = Math.ceil((context.currentTime + 3 - began - first) / cycle);  // the hand's time is over then
  for (let i = 0; i < 4; i++) {
    const strike = new AudioBufferSourceNode(context, { buffer });
    strike.connect(air);
    strike.start(began + first + (next + i) * cycle + off);
  }
}"""


def test_strikes_are_told_from_the_beat(phone: Any, engine: Any) -> None:
    tempo = {"forward_s": 0.3, "ratio": 2, "rest_s": 0.8, "strokes": 40}
    phone.page.add_init_script(LOOP)
    page = phone.open("#tempo", practice={"tempo": {**tempo, "volume": 0.8, "muted": False, "vibrate": False, "delay_s": 0}})
    page.get_by_role("button", name="Play", exact=True).click(timeout=60_000)
    page.get_by_text("Strike against the beat").click()
    page.get_by_role("button", name="Listen to the strike").click()
    expect(page.get_by_text("Hold an earpiece to the microphone")).to_be_visible()
    expect(page.get_by_text("Earpiece back on")).to_be_visible(timeout=60_000)
    told = engine("tempo", **tempo)
    page.evaluate(STRIKE, [told["lead_s"] + told["back_s"] + told["forward_s"], told["cycle_s"], 0.06])
    expect(page.get_by_text(re.compile("^4 strikes: 0.0[567] s late"))).to_be_visible(timeout=60_000)
    page.get_by_role("button", name="Stop listening").dblclick()  # the second touch is meant for the first
    expect(page.get_by_role("button", name="Listen to the strike")).to_be_visible()
    page.get_by_role("button", name="Stop", exact=True).click()
    expect(page.get_by_role("button", name="Listen to the strike")).to_be_disabled()


@pytest.mark.parametrize(
    ("error", "words"),
    [
        ("NotAllowedError", "does not let the app listen"),
        ("NotFoundError", "There is no microphone here"),
        ("NotReadableError", "Another app holds the microphone"),
    ],
)
def test_each_failure_has_its_words(phone: Any, error: str, words: str) -> None:
    page = phone.page
    page.add_init_script(f"navigator.mediaDevices.getUserMedia = async () => {{ throw new DOMException('no', '{error}'); }}")
    open_ear(page, phone.url)
    page.get_by_role("button", name="Listen", exact=True).click()
    expect(page.get_by_role("status").filter(has_text=words)).to_be_visible()
    expect(page.get_by_role("button", name="Listen", exact=True)).to_be_enabled()


def test_who_goes_elsewhere_while_the_phone_asks_is_not_listened_to(phone: Any) -> None:
    page = phone.page
    page.add_init_script(
        """navigator.mediaDevices.getUserMedia = () => new Promise((given) => {
          window.allow = () => {
            window.track = new AudioContext().createMediaStreamDestination().stream;
            given(window.track);
          };
        });"""
    )
    open_ear(page, phone.url)
    page.get_by_role("button", name="Listen", exact=True).click()
    page.get_by_role("button", name="Skip", exact=True).click()
    page.evaluate("allow()")
    page.wait_for_function("() => track.getAudioTracks()[0].readyState === 'ended'")
