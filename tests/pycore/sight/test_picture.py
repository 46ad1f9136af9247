"""Pictures of any green by a phone held anyhow, against OpenCV's camera stood in a world whose z is straight up."""

import json
import math
from dataclasses import dataclass

import cv2
import numpy as np
import pytest

from pycore.api import answer

PIXEL = 1.0
SIZE = (1200, 1600)
FIELD_DEG, LENGTH, EYE = 66.0, 4.0, 1.6
FOCAL = SIZE[1] / 2 / math.tan(math.radians(FIELD_DEG) / 2)
KNOWN = {"width_px": SIZE[0], "height_px": SIZE[1], "distance_m": LENGTH, "eye_height_m": EYE, "fov_deg": FIELD_DEG}
CURVE = [[x, 0.4 * math.sin(math.pi * x / LENGTH)] for x in np.linspace(0, LENGTH, 20).tolist()]
PLANE = {"slope_percent": 3.0, "fall_deg": 70.0}
# down to the right near the ball, to the left at the hole, and bent along the line too
STATIONS = {
    "stations": [
        {"at_m": 0, "slope_percent": 4, "fall_deg": 40},
        {"at_m": 2, "slope_percent": 1, "fall_deg": 180},
        {"at_m": 4, "slope_percent": 4, "fall_deg": 250},
    ]
}


@dataclass
class Phone:
    """Its attitude as a browser tells it, from three turns that OpenCV makes; the camera looks along minus z."""

    alpha_deg: float
    beta_deg: float
    gamma_deg: float
    screen_deg: float = 0.0

    @property
    def rows(self) -> np.ndarray:
        """Right, down and forward in the world of the compass."""

        def turn(deg, *axis):
            return cv2.Rodrigues(np.radians(deg) * np.array(axis, float))[0]

        device = turn(self.alpha_deg, 0, 0, 1) @ turn(self.beta_deg, 1, 0, 0) @ turn(self.gamma_deg, 0, 1, 0)
        return (device @ turn(-self.screen_deg, 0, 0, 1) @ np.diag([1, -1, -1])).T


# the compass is 50 degrees off the putt, to the left of which the world's y points
TO_PUTT = cv2.Rodrigues(np.array([0, 0, np.radians(-50.0)]))[0]
PHONES = {
    "upright": Phone(-40, 65, 2),
    "leaning": Phone(-42, 60, -12),
    "on its side": Phone(48, 6, -68, screen_deg=90),
}


def height(surface, x, y):
    """Integral of the downhill vector, by midpoints along the line, then across; what is told of one slope is a plane."""
    told = surface.get("stations") or [{"at_m": 0, **surface}]
    ways = [s["slope_percent"] / 100 * np.exp(-1j * np.radians(s["fall_deg"])) for s in told]
    at = [s["at_m"] for s in told]

    def downhill(place):
        return np.interp(place, at, np.real(ways)), np.interp(place, at, np.imag(ways))

    middles = (np.arange(2000) + 0.5) / 2000 * x
    return -np.mean(downhill(middles)[0]) * x - downhill(x)[1] * y


def world(surface, points):
    """Places of the green; on one slope they are measured along it, as a tape on the ground is."""
    if "stations" in surface:
        return np.array([[x, y, height(surface, x, y)] for x, y in points])
    rise = height(surface, 1, 0), height(surface, 0, 1)
    along = np.array([1, 0, rise[0]]) / math.hypot(1, rise[0])
    normal = np.array([-rise[0], -rise[1], 1]) / math.sqrt(1 + rise[0] ** 2 + rise[1] ** 2)
    return np.array(points) @ np.array([along, np.cross(normal, along)])


def eye(surface):
    """Behind the ball and a little to the side, ``EYE`` over the green."""
    if "stations" in surface:
        return np.array([-2.0, 0.2, height(surface, -2.0, 0.2) + EYE])
    foot = world(surface, [[-2.0, 0.2]])[0]
    one, two = world(surface, [[1, 0], [0, 1]])
    return foot + EYE * np.cross(one, two)


def seen(surface, phone, points):
    rows = phone.rows @ TO_PUTT.T
    lens = np.array([[FOCAL, 0, SIZE[0] / 2], [0, FOCAL, SIZE[1] / 2], [0, 0, 1]])
    turned = cv2.Rodrigues(rows)[0]
    return cv2.projectPoints(world(surface, points), turned, -rows @ eye(surface), lens, None)[0][:, 0]


def ask(**request):
    reply = json.loads(answer(json.dumps(request)))
    assert reply["ok"], reply
    return reply["value"]


@pytest.mark.parametrize("surface", [PLANE, STATIONS], ids=["plane", "stations"])
@pytest.mark.parametrize("phone", PHONES.values(), ids=PHONES)
@pytest.mark.parametrize("unknown", ["fov_deg", None])
def test_the_line_lies_on_the_green_in_a_photograph(surface, phone, unknown):
    expected = seen(surface, phone, CURVE)
    ends = {"ball_px": expected[0].tolist(), "hole_px": expected[-1].tolist()}
    known = {name: value for name, value in KNOWN.items() if name != unknown}
    value = ask(ask="camera", **known, **surface, **ends, held=vars(phone), points_m=CURVE)
    # what the plane leaves of the second order in a green of several slopes
    near = PIXEL if "stations" not in surface else 4 * PIXEL
    assert np.abs(np.array(value["points_px"]) - expected).max() < near
    assert value["eye_height_m"] == pytest.approx(EYE, abs=0.01)
    assert value["fov_deg"] == pytest.approx(FIELD_DEG, abs=0.3)


def test_one_plane_would_miss_a_green_of_several_slopes():
    expected = seen(STATIONS, PHONES["upright"], CURVE)
    ends = {"ball_px": expected[0].tolist(), "hole_px": expected[-1].tolist()}
    roll_deg = ask(ask="camera", **KNOWN, **STATIONS, **ends, held=vars(PHONES["upright"]), points_m=CURVE)["roll_deg"]
    middle = {name: STATIONS["stations"][1][name] for name in ("slope_percent", "fall_deg")}
    value = ask(ask="camera", **KNOWN, **middle, **ends, roll_deg=roll_deg, points_m=CURVE)
    assert np.abs(np.array(value["points_px"]) - expected).max() > 8 * PIXEL


@pytest.mark.parametrize("phone", PHONES.values(), ids=PHONES)
def test_the_line_stays_on_the_green_while_the_phone_turns(phone):
    """Each mark is touched, and the line then drawn, as the phone is held another way."""
    at_ball = phone
    at_hole = Phone(phone.alpha_deg + 3, phone.beta_deg + 2, phone.gamma_deg, phone.screen_deg)
    now = Phone(phone.alpha_deg - 4, phone.beta_deg - 3, phone.gamma_deg + 5, phone.screen_deg)
    marks = {
        "ball": {"at_px": seen(PLANE, at_ball, [[0, 0]])[0].tolist(), "held": vars(at_ball)},
        "hole": {"at_px": seen(PLANE, at_hole, [[LENGTH, 0]])[0].tolist(), "held": vars(at_hole)},
    }
    value = ask(ask="follow", **KNOWN, **PLANE, **marks, now=vars(now), points_m=CURVE)
    assert np.abs(np.array(value["points_px"]) - seen(PLANE, now, CURVE)).max() < PIXEL


def test_a_moving_picture_takes_the_pitch_in_and_says_how_far_it_may_be_off():
    """Told a height that is 10 cm too large, by a phone whose pitch is right; without the pitch the line lies farther off."""
    phone = PHONES["upright"]
    expected = seen(PLANE, phone, CURVE)
    touches = {"ball": expected[0].tolist(), "hole": expected[-1].tolist()}
    marks = {name: {"at_px": at, "held": vars(phone)} for name, at in touches.items()}
    told = {**KNOWN, **PLANE, "eye_height_m": EYE + 0.1, "points_m": CURVE}
    followed = ask(ask="follow", **told, **marks, now=vars(phone))
    marked = ask(ask="marked", **told, **marks)
    ends = {f"{name}_px": at for name, at in touches.items()}
    camera = ask(ask="camera", **told, **ends, held=vars(phone))
    unpitched = ask(ask="camera", **told, **ends, roll_deg=camera["roll_deg"])

    def off(value):
        return np.abs(np.array(value["points_px"]) - expected).max()

    assert followed["points_px"] == marked["points_px"] == camera["points_px"]
    assert marked["error_px"] == pytest.approx(camera["error_px"])
    beside = ask(ask="camera", **told | {"points_m": [(LENGTH, -0.05), (LENGTH, 0.05)]}, **ends, held=vars(phone))
    wide = np.linalg.norm(np.subtract(*beside["points_px"]))
    assert marked["error_m"] == pytest.approx(marked["error_px"] * 0.1 / wide, rel=0.02)
    assert off(followed) < 0.9 * off(unpitched)
    assert off(followed) < marked["error_px"] < unpitched["error_px"]


def test_a_pitch_that_speaks_against_the_rest_is_told_beside_it():
    phone = PHONES["upright"]
    expected = seen(PLANE, phone, CURVE)
    ends = {"ball_px": expected[0].tolist(), "hole_px": expected[-1].tolist()}
    told = {**KNOWN, **PLANE, **ends, "points_m": CURVE}
    value = ask(ask="camera", **told, held={**vars(phone), "beta_deg": phone.beta_deg - 10})
    assert value["told_pitch_deg"] - value["pitch_deg"] == pytest.approx(10, abs=0.3)


def test_a_hole_with_the_ball_behind_the_phone_is_refused():
    at_ball, at_hole = Phone(0, 70, 0), Phone(150, 70, 0)
    marks = {
        "ball": {"at_px": [600, 900], "held": vars(at_ball)},
        "hole": {"at_px": [600, 700], "held": vars(at_hole)},
    }
    request = {"ask": "follow", **KNOWN, **PLANE, **marks, "now": vars(at_hole), "points_m": CURVE}
    reply = json.loads(answer(json.dumps(request)))
    assert (reply["code"], reply["field"]) == ("no_camera", "hole")
    assert "behind the ball" in reply["message"]


def test_a_cropped_picture_has_its_middle_elsewhere():
    phone, cut = PHONES["leaning"], np.array([150.0, 420.0])
    expected = seen(PLANE, phone, CURVE) - cut
    told = {**KNOWN, "width_px": 900, "height_px": 1000, "middle_px": [600 - cut[0], 800 - cut[1]]}
    told["fov_deg"] = 2 * math.degrees(math.atan(500 / FOCAL))
    ends = {"ball_px": expected[0].tolist(), "hole_px": expected[-1].tolist()}
    value = ask(ask="camera", **told, **PLANE, **ends, held=vars(phone), points_m=CURVE)
    assert np.abs(np.array(value["points_px"]) - expected).max() < PIXEL


def test_a_lens_is_told_by_a_thing_of_known_length():
    stick = np.array([[-0.4, 0.3, 1.5], [0.4, 0.1, 1.5]])  # m, square to the lens
    lens = np.array([[FOCAL, 0, SIZE[0] / 2], [0, FOCAL, SIZE[1] / 2], [0, 0, 1]])
    ends = cv2.projectPoints(stick, np.zeros(3), np.zeros(3), lens, None)[0][:, 0]
    length = float(np.linalg.norm(stick[1] - stick[0]))
    size = {"width_px": SIZE[0], "height_px": SIZE[1]}
    value = ask(ask="lens", **size, ends_px=ends.tolist(), length_m=length, distance_m=1.5)
    assert value["fov_deg"] == pytest.approx(FIELD_DEG, abs=0.01)
    assert 0 < value["error_deg"] < 1
    diagonal = 2 * math.degrees(math.atan(math.hypot(36, 24) / 2 / value["lens_mm"]))
    assert diagonal == pytest.approx(2 * math.degrees(math.atan(math.hypot(*SIZE) / 2 / FOCAL)), abs=0.01)
    reply = json.loads(answer(json.dumps({"ask": "lens", **size, "ends_px": [[5, 5], [8, 5]], "length_m": 1, "distance_m": 1})))
    assert (reply["code"], reply["field"]) == ("no_lens", "ends_px")
