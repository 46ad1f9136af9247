"""A ball that is watched: the time a frame takes, and an answer from 150 of them."""

import math
from pathlib import Path

import numpy as np
from playwright.sync_api import Playwright

from bench.answers import START, answered
from bench.page import opened
from bench.row import Row, milliseconds
from tests.struck_balls import RADIUS, Camera, Rolled, Strike

FRAMES = 150
ANSWER_S, SILENCE_S, FRAME_S = 1.0, 0.25, 0.008
SIZE = (720, 1280)
CAMERA = Camera(SIZE, 1100.0, 1.0, 0.05, 0.6, 0.27, 0.0, 0.0, 0.0, (0.0, 0.01))
STRIKE = Strike(4.0, (0.0, 0.01), 10.0, 2.2, math.radians(2.0))
ASK = """async (fields) => {
  const [taken, silences] = [[], []];
  for (let i = 0; i < 7; i += 1) {
    const start = performance.now();
    let [heard, silence] = [start, 0];
    const hear = () => {
      const now = performance.now();
      [heard, silence] = [now, Math.max(silence, now - heard)];
    };
    await engine.ask('watched', { ...fields, aim_deg: i / 10 }, { onShare: hear });
    hear();
    taken.push(performance.now() - start);
    silences.push(silence);
  }
  return { taken: taken.slice(2), silences: silences.slice(2) };
}"""
# A canvas plays the video: grass, and a white ball where it was seen
FOLLOW = """async ({ sights, size }) => {
  const { createBallWatch } = await import('/device/ball-watch.js');
  const { filmOf } = await import('/device/film.js');
  const [width, height] = size;
  const video = Object.assign(document.createElement('canvas'), { width, height, videoWidth: width, videoHeight: height });
  const pen = video.getContext('2d');
  const grass = pen.createImageData(width, height);
  for (let i = 0, state = 1; i < grass.data.length; i += 4) {
    state = (state * 16807) % 2147483647;
    grass.data.set([60 + (state % 30), 110 + (state % 30), 60, 255], i);
  }
  const taken = [];
  const [[first, u, v]] = sights;
  const watch = createBallWatch({ film: filmOf(video), ball: { u, v }, onPhase: () => {}, onRoll: () => {} });
  const show = (t, [, u, v, wide]) => {
    pen.putImageData(grass, 0, 0);
    pen.fillStyle = 'white';
    pen.beginPath();
    pen.arc(u, v, wide / 2, 0, 2 * Math.PI);
    pen.fill();
    const start = performance.now();
    watch.frame(t);
    if (watch.phase === 'ready' || watch.phase === 'rolling') taken.push(performance.now() - start);
  };
  for (let i = 0; i < 45; i++) show(first - 1.5 + i / 30, sights[0]);
  for (const sight of sights) show(sight[0], sight);
  if (watch.phase !== 'rolling' && watch.phase !== 'settling') throw new Error(`the ball was not followed: ${watch.phase}`);
  return taken;
}"""


def rows(playwright: Playwright, folder: Path, store: Path) -> list[Row]:
    rolled = Rolled(STRIKE)
    times = np.linspace(-0.1, rolled.end + 0.3, FRAMES)
    sights = []
    for t in times:
        at = rolled.at(float(t))
        assert at is not None
        (seen,), (depth,) = CAMERA.see(np.array([[*at, RADIUS]]))
        sights.append([float(t) + 5, *map(float, seen), float(CAMERA.focal * 2 * RADIUS / depth)])
    (hole,), _ = CAMERA.see(np.array([[STRIKE.distance, 0.0, 0.0]]))
    fields = {
        "frames": sights,
        "width_px": SIZE[0],
        "height_px": SIZE[1],
        "fov_deg": math.degrees(2 * math.atan(SIZE[1] / 2 / CAMERA.focal)),
        "pitch_deg": math.degrees(CAMERA.pitch),
        "roll_deg": 0,
        "eye_height_m": CAMERA.height,
        "hole_px": [float(x) for x in hole],
        "distance_m": STRIKE.distance,
        "slope_percent": 1,
        "fall_deg": -90,
        "stimp_ft": 10,
    }
    with opened(playwright, folder, store / "browser-watch") as page:
        page.evaluate(START)
        asked: dict[str, list[float]] = page.evaluate(ASK, fields)
        taken: list[float] = page.evaluate(FOLLOW, {"sights": sights, "size": SIZE})
    seconds = sorted(taken)[int(0.95 * len(taken))] / 1e3
    frame = Row(
        "ball in a frame of 720p, 19 of 20", milliseconds(seconds), f"limit {milliseconds(FRAME_S)}", seconds / FRAME_S, 1
    )
    answer = answered("watched putt, 150 frames,", asked["taken"], ANSWER_S)
    silence = answered("longest time without its share told,", asked["silences"], SILENCE_S)
    return [answer, silence, frame]
