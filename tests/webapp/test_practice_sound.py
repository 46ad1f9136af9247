"""The tempo as it leaves the page: every note on its sample, whatever the page itself is doing."""

import shutil
from collections.abc import Callable
from itertools import pairwise
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import BrowserContext

# The app's own fetches go on behind a page that these tests soon close
alone = pytest.mark.parametrize("phone", [{"service_workers": "block"}], indirect=True, ids=["alone"])
TAP = """registerProcessor('tap', class extends AudioWorkletProcessor {
  quiet = 1e9;
  process([[samples]]) {
    samples?.forEach((sample, i) => {
      if (Math.abs(sample) < 1e-3) { this.quiet++; return; }
      if (this.quiet > 2400) this.port.postMessage(currentFrame + i);
      this.quiet = 0;
    });
    return true;
  }
});"""

TEN_MINUTES = 600
RATE = 48_000
STALL_MS = 1  # the most that a note may move when the page stalls
TEMPOS = {
    "issue": {"forward_s": 0.30, "ratio": 2, "rest_s": 2.4},
    "odd": {"forward_s": 0.317, "ratio": 2.3, "rest_s": 1.913},
}
# A note is where sound comes after silence; the voices fade to nothing before the next
ONSETS = """(samples) => {
  const found = [];
  let quiet = 1e9;
  for (let i = 0; i < samples.length; i++) {
    if (Math.abs(samples[i]) < 1e-3) { quiet++; continue; }
    if (quiet > 2400) found.push(i);
    quiet = 0;
  }
  return found;
}"""


def sounding(tempo: dict[str, Any]) -> list[float]:
    return [event["at_s"] for event in tempo["events"] if event["kind"] != "finish"]


@alone
@pytest.mark.parametrize("asked", TEMPOS.values(), ids=TEMPOS)
def test_ten_minutes_without_a_sample_of_drift(phone: Any, engine: Callable[..., Any], asked: dict[str, float]) -> None:
    cycle = engine("tempo", **asked)["cycle_s"]
    tempo = engine("tempo", **asked, strokes=int(TEN_MINUTES / cycle), count_in=4)
    page = phone.open("#about")
    onsets = page.evaluate(
        f"""async ({{ tempo, seconds, rate }}) => {{
          const {{ schedule }} = await import('/device/sound.js');
          const context = new OfflineAudioContext(1, seconds * rate, rate);
          schedule(context, tempo, context.destination, 0);
          return ({ONSETS})((await context.startRendering()).getChannelData(0));
        }}""",
        {"tempo": tempo, "seconds": TEN_MINUTES + 4, "rate": RATE},
    )
    expected = [at * RATE for at in sounding(tempo)]
    assert len(onsets) == len(expected)
    assert max(abs(onset - at) for onset, at in zip(onsets, expected, strict=True)) <= 1


def test_a_page_that_stalls_moves_no_note(
    site: Any,
    dist: Path,
    modules: Path,
    tmp_path: Path,
    open_browser: Callable[..., BrowserContext],
    engine: Callable[..., Any],
) -> None:
    """Taken from the sound thread itself, by a tap that counts its frames, while the page is stuck 400 ms at a time."""
    tempo = engine("tempo", forward_s=0.15, ratio=1, rest_s=0.5, strokes=2, count_in=1)
    folder = shutil.copytree(dist, tmp_path / "site")
    (folder / "tap.js").write_text(TAP)
    served = type(site)(folder, modules)
    page = open_browser(service_workers="block").pages[0]
    page.goto(served.url + "#about")
    onsets = page.evaluate(
        """async (tempo) => {
          const { schedule } = await import('/device/sound.js');
          const context = new AudioContext({ sampleRate: 48000 });
          await context.audioWorklet.addModule('/tap.js');
          const tap = new AudioWorkletNode(context, 'tap');
          const heard = [];
          tap.port.onmessage = ({ data }) => heard.push(data);
          tap.connect(context.destination);
          const when = Math.ceil((context.currentTime + 0.2) * 48000) / 48000;
          const source = schedule(context, tempo, tap, when);
          const over = new Promise((resolve) => (source.onended = resolve));
          const stall = setInterval(() => { const until = performance.now() + 400; while (performance.now() < until); }, 450);
          await over;
          clearInterval(stall);
          await new Promise((resolve) => setTimeout(resolve, 100));
          return heard.map((frame) => frame / 48000 - when);
        }""",
        tempo,
    )
    served.stop()
    expected = sounding(tempo)
    assert len(onsets) == len(expected)
    assert max(abs(onset - at) for onset, at in zip(onsets, expected, strict=True)) * 1000 < STALL_MS


@alone
def test_three_voices_are_told_apart_by_pitch(phone: Any) -> None:
    page = phone.open("#about")
    voices = page.evaluate("import('/device/sound.js').then(({ VOICES }) => VOICES)")
    pitches = sorted(voices[kind]["hz"] for kind in ("start", "top", "impact"))
    assert all(high / low >= 1.4 for low, high in pairwise(pitches))  # a good third and more
