"""Films of balls that SciPy rolls and OpenCV projects, and what is made of them. Many are in ``tests/prove/watched.py``."""

import math

import numpy as np
import pytest

from pycore.units import FOOT
from pycore.watch import endpoints, fit
from pycore.watch import scene as scene_module
from pycore.watch.examples import EXAMPLES
from tests.struck_balls import HOLE, RADIUS, Camera, Film, Rolled, Strike, film

SIZE = (720, 1280)


def shown(strike, camera, upto=math.inf, fps=30):
    """Frames of a ball, exact but for rounding to a hundredth of a pixel."""
    rolled, frames = Rolled(strike), []
    for i in range(-5, 400):
        t = i / fps
        at = rolled.at(t)
        if at is None or t > min(rolled.end + 0.5, upto):
            break
        (seen,), (depth,) = camera.see(np.array([[*at, RADIUS]]))
        frames.append([5 + t, *(round(float(x), 2) for x in seen), float(camera.focal * 2 * RADIUS / depth)])
    (ball, hole), _ = camera.see(np.array([[0, 0, 0], [strike.distance, 0, 0]], float))
    return {
        "frames": frames,
        "width_px": SIZE[0],
        "height_px": SIZE[1],
        "fov_deg": math.degrees(2 * math.atan(SIZE[1] / 2 / camera.focal)),
        "pitch_deg": math.degrees(camera.pitch),
        "roll_deg": math.degrees(camera.roll),
        "eye_height_m": camera.height,
        "ball_px": [float(x) for x in ball],
        "hole_px": [float(x) for x in hole],
        "distance_m": strike.distance,
    }


def phone(downhill=(0.0, 0.0), **changed):
    known = {"back": 1.0, "aside": 0.1, "height": 0.6, "pitch": 0.24, "roll": 0.02, "turned": 0.01, "k1": 0.0}
    return Camera(SIZE, 1000.0, **{**known, **changed}, downhill=downhill)


STRAIGHT = Strike(3.0, (0.0, 0.0), 10.0, 1.95, math.radians(2.0))
READ = {"slope_percent": 0, "fall_deg": 0, "stimp_ft": 10}


def test_a_ball_on_the_level(engine_ask):
    seen = engine_ask("watched", **shown(STRAIGHT, phone()), **READ)
    assert seen["start_deg"] == pytest.approx(2.0, abs=0.05)
    assert seen["launch_mps"] == pytest.approx(1.95, rel=0.01)
    assert seen["deceleration_mps2"] == pytest.approx(STRAIGHT.drag, abs=0.01)
    assert seen["across_percent"] == pytest.approx(0, abs=0.05)
    assert seen["stimp_ft"] == pytest.approx(10, abs=2 * seen["stimp_sd_ft"])
    assert seen["moment_s"] == pytest.approx(5 / 30, abs=0.02)
    rest = Rolled(STRAIGHT).rest
    assert (seen["stop"]["x_m"], seen["stop"]["y_m"]) == pytest.approx(tuple(rest), abs=0.05)
    assert seen["result"] == "missed"
    assert seen["words"].startswith("2 degrees left, ")
    assert seen["untold"] == []
    assert len(seen["path"]) == len(seen["path_px"])
    assert seen["seen_m"] == pytest.approx(rest[0], abs=0.1)


def test_a_skid_is_no_launch(engine_ask):
    """A ball that slips at first is told as the rolling ball that ends where it does."""
    strike = Strike(3.0, (0.0, 0.0), 10.0, 2.3, 0.0, slip=1.0)
    seen = engine_ask("watched", **shown(strike, phone()), **READ)
    assert seen["launch_mps"] == pytest.approx(Rolled(strike).as_rolled()[0], rel=0.01)
    assert seen["launch_mps"] < 0.95 * strike.speed


def test_the_words_count_from_the_line_meant(engine_ask):
    asked = shown(STRAIGHT, phone())
    assert engine_ask("watched", **asked, **READ, aim_deg=2.0)["words"].startswith("On line, ")
    said = engine_ask("watched", **asked, **READ, aim_deg=2.5, unit="m")["words"]
    assert said.startswith("Half a degree right, ")
    assert "centimetres past" in said


def test_holed_missed_and_unseen(engine_ask):
    holed = Strike(3.0, (0.0, 0.0), 10.0, 1.95, 0.0)
    asked = shown(holed, phone())
    assert Rolled(holed).holed
    told = engine_ask("watched", **asked, **READ)
    assert (told["result"], told["stop"]) == ("holed", None)
    assert {"field": "stop", "why": "it dropped"} in told["untold"]
    assert told["launch_mps"] == pytest.approx(1.95, rel=0.01)
    lost = engine_ask("watched", **shown(holed, phone(), upto=1.0), **READ)
    assert (lost["result"], lost["stop"]) == ("unseen", None)


def test_a_ball_that_is_seen_well_beyond_the_hole_has_missed(engine_ask):
    """Where it stops is then not told, whatever comes of it later."""
    beyond = Strike(2.0, (0.0, 0.0), 10.0, 2.4, math.radians(4.0))
    told = engine_ask("watched", **shown(beyond, phone(), upto=1.6), **READ)
    assert Rolled(beyond).at(1.6)[0] > 2.3
    assert (told["result"], told["stop"]) == ("missed", None)
    assert "the ball left the picture beyond the hole" in [each["why"] for each in told["untold"]]


def test_a_ball_does_not_rest_where_the_hole_is(engine_ask):
    """It would have dropped: then the hole was marked wrong, or another thing lies there. Half a foot beside it may."""
    strike = Strike(9.0, (0.0, 0.0), 10.0, 1.95, 0.0)
    camera = phone()
    x, y = Rolled(strike).rest
    for aside, result in ((0.0, "unseen"), (0.15, "missed")):
        (marked,), _ = camera.see(np.array([[x, y + aside, 0.0]]))
        asked = {**shown(strike, camera), "hole_px": [float(each) for each in marked], "distance_m": math.hypot(x, y + aside)}
        told = engine_ask("watched", **asked, **READ)
        assert told["result"] == result
        assert ("something rests where the hole is" in [each["why"] for each in told["untold"]]) == (result == "unseen")


@pytest.mark.parametrize("upto", [2.2, 2.6])
def test_a_ball_that_rolls_away_from_a_low_lens_does_not_rest(engine_ask, upto):
    """Its film ends at 0.7 or 0.5 m/s: a metre and less over the green are then 2 px and less in the picture's height."""
    asked = shown(Strike(3.0, (0.0, 0.0), 10.0, 1.95, math.radians(2.5)), phone(back=1.5, height=0.1, pitch=0.03), upto)
    told = engine_ask("watched", **asked, **READ)
    assert (told["result"], told["stop"]) == ("unseen", None)


@pytest.mark.parametrize("k1", [-0.05, 0.05])
def test_a_bent_lens_moves_no_ball_that_rests_near_the_pictures_end(engine_ask, k1):
    strike = Strike(3.0, (0.0, 0.0), 10.0, 1.95, math.radians(4))
    stop = engine_ask("watched", **shown(strike, phone(k1=k1, height=1.2, back=0.6, pitch=0.7)), **READ)["stop"]
    assert (stop["x_m"], stop["y_m"]) == pytest.approx(tuple(Rolled(strike).rest), abs=0.01)


def test_a_ball_that_the_rim_throws_off_is_not_fitted_after_it(engine_ask):
    fast = Strike(3.0, (0.0, 0.0), 10.0, 2.6, math.atan2(0.04, 3.0))
    asked = shown(fast, phone())
    rolled = Rolled(fast, np.random.default_rng(3))
    assert rolled.met < math.inf
    assert not rolled.holed
    for frame in asked["frames"]:
        (frame[1:3],), _ = phone().see(np.array([[*rolled.at(frame[0] - 5), RADIUS]]))
        frame[1:3] = map(float, frame[1:3])
    seen = engine_ask("watched", **asked, **READ)
    assert seen["start_deg"] == pytest.approx(math.degrees(fast.direction), abs=0.06)
    assert seen["result"] == "missed"


def test_without_a_hole_it_tells_speed_alone(engine_ask):
    asked = shown(STRAIGHT, phone())
    del asked["hole_px"], asked["distance_m"]
    seen = engine_ask("watched", **asked)
    assert seen["start_deg"] is None
    assert {"field": "start_deg", "why": "no hole is marked, so there is no line"} in seen["untold"]
    assert seen["stimp_ft"] is None
    assert seen["deceleration_mps2"] == pytest.approx(STRAIGHT.drag, abs=0.03)


def test_the_ball_is_a_ruler(engine_ask):
    """Told neither the lens's height nor the distance, the ball's width gives the scale."""
    asked = shown(STRAIGHT, phone())
    del asked["eye_height_m"], asked["distance_m"]
    seen = engine_ask("watched", **asked, **READ)
    assert seen["launch_mps"] == pytest.approx(1.95, abs=2 * seen["launch_sd_mps"])
    assert seen["launch_sd_mps"] > 2 * engine_ask("watched", **shown(STRAIGHT, phone()), **READ)["launch_sd_mps"]


def test_a_green_that_bends(engine_ask):
    """Stations along the line are taken as read; the tilt told wrong by 0.4 % is found."""
    downhill = (0.0, 0.02)
    strike = Strike(3.0, downhill, 10.0, 1.95, math.radians(-4))
    asked = shown(strike, phone(downhill))
    stations = [{"at_m": at, "slope_percent": 1.6, "fall_deg": -90} for at in (0.0, 1.5, 3.0)]
    seen = engine_ask("watched", **asked, stations=stations, stimp_ft=10, tilt_sd_percent=0.5)
    assert seen["across_percent"] == pytest.approx(2.0, abs=0.1)
    assert seen["start_deg"] == pytest.approx(-4, abs=0.1)


def test_wrong_frames_are_let_go(engine_ask):
    asked = shown(STRAIGHT, phone())
    rng = np.random.default_rng(1)
    for frame in asked["frames"][8::9]:
        frame[1:3] = float(rng.uniform(0, 720)), float(rng.uniform(0, 1280))
    seen = engine_ask("watched", **asked, **READ)
    assert seen["start_deg"] == pytest.approx(2.0, abs=0.06)
    assert seen["launch_mps"] == pytest.approx(1.95, rel=0.01)


def test_a_wrong_lens_shows_in_the_spread(engine_ask):
    """From low down and far behind, less is known."""
    near = engine_ask("watched", **shown(STRAIGHT, phone()), **READ)
    low = engine_ask("watched", **shown(STRAIGHT, phone(back=3.0, height=0.1, pitch=0.02)), **READ)
    assert low["launch_sd_mps"] > 1.3 * near["launch_sd_mps"]


@pytest.mark.parametrize("step", [0.03, 0.1, 1.0])
def test_nothing_rolls(engine_ask, step: float):
    asked = shown(STRAIGHT, phone())
    asked["frames"] = [[i * step, 355.0, 880.0, 30.0] for i in range(40)]
    seen = engine_ask("watched", **asked, **READ)
    assert seen["result"] == "unseen"
    assert all(seen[name] is None for name in ("start_deg", "launch_mps", "stop", "stimp_ft"))
    assert seen["words"].startswith("Not seen: ")


@pytest.mark.parametrize(
    ("changed", "field"),
    [
        ({"frames": [[0, 1, 2, 3], [0, 1, 2, 3]]}, "frames[1][0]"),
        ({"frames": [[0, 1, None, 3]]}, "frames[0]"),
        ({"frames": [[0, 1, 50_000, 3]]}, "frames[0][2]"),
        ({"frames": [[0, 1, 2]]}, "frames[0]"),
        ({"pitch_deg": None}, "pitch_deg"),
        ({"hole_px": [360, 1270]}, "hole_px"),
    ],
)
def test_refusals_name_the_field(refused, changed, field):
    assert refused(**{"name": "watched", **shown(STRAIGHT, phone()), **READ, **changed})["field"] == field


def test_the_example(engine_ask):
    seen = engine_ask("watched", **{name: value for name, value in EXAMPLES[0].items() if name != "ask"})
    assert seen["start_deg"] == pytest.approx(4.2, abs=0.2)


def test_a_film_as_a_phone_takes_it(engine_ask):
    shot: Film = film(np.random.default_rng(11), distance=10 * FOOT)
    seen = engine_ask("watched", **shot.request)
    assert seen["start_deg"] == pytest.approx(shot.start_deg, abs=4 * seen["start_sd_deg"])
    assert seen["launch_mps"] == pytest.approx(shot.launch, abs=4 * seen["launch_sd_mps"])


def test_a_rim_beyond_the_first_guess_is_heeded(engine_ask):
    """A ball that would just have died past the hole is turned by its rim: the first guess stops it short of that."""
    rng = np.random.default_rng(20261129)
    shot = [film(rng) for _ in range(4)][-1]
    assert shot.told["offset"] < HOLE
    seen = engine_ask("watched", **shot.request)
    assert seen["start_deg"] == pytest.approx(shot.start_deg, abs=0.15)
    assert seen["result"] == shot.result == "missed"


def test_what_was_believed_before_is_taken_out_of_what_a_film_says():
    """Two normals multiplied: 0 and 2, each of spread 1, make 1 of variance a half; a film that told nothing tells nothing."""
    assert endpoints._apart(1.0, 0.5, 0.0, 1.0) == pytest.approx((2.0, 1.0))
    assert endpoints._apart(0.3, 1.0, 0.3, 1.0) == (0.3, math.inf)


def test_a_ball_whose_width_is_not_known_is_no_ruler(engine_ask):
    """Without its width and the lens's height, what is seen is less sure, never more."""
    asked = {**shown(STRAIGHT, phone(), upto=1.2), **READ, "eye_height_m": None}
    bare = {**asked, "frames": [[t, u, v, None] for t, u, v, _ in asked["frames"]]}
    with_it, without = (engine_ask("watched", **each) for each in (asked, bare))
    assert without["launch_sd_mps"] > with_it["launch_sd_mps"]
    assert without["launch_mps"] == pytest.approx(1.95, rel=0.02)


def test_how_frames_change_with_each_number(engine_ask, monkeypatch):
    """The fit's derivatives of all that is seen beside NumPy's central differences, with a step of its own."""
    fits = []

    class Kept(fit.Fit):
        def __init__(self, *given):
            super().__init__(*given)
            fits.append(self)

    monkeypatch.setattr(endpoints, "Fit", Kept)
    strike = Strike(3.0, (0.0, 0.0), 10.0, 2.3, math.radians(1.0), slip=0.5)
    engine_ask("watched", **shown(strike, phone(), upto=1.0), **READ)
    now, scene, heights = fits[-1].now, fits[-1].scene, fits[-1].heights
    n, ways = len(scene.frames), np.array(fits[-1].ways)

    def seen(numbers):
        places = scene.seen(numbers, scene.places(numbers, scene.way(numbers)), heights)
        (du, dv), (u, v, width) = ways.T, np.array(places).T
        return np.concatenate([u * du + v * dv, u * dv - v * du, width])

    for j in range(scene_module.NUMBERS):
        step = 3e-4 * np.eye(scene_module.NUMBERS)[j]
        central = (seen([*(now.numbers + step)]) - seen([*(now.numbers - step)])) / 6e-4
        own = np.array(fits[-1]._column(now, j, [[1.0] * n] * 3)[: 3 * n])
        off = np.sort(np.abs(own - central))[:-3]  # but in the one frame in which the ball sets off
        assert off.max() <= 0.01 * np.abs(central).max() + 1e-3, j
