"""The endpoints of a picture: camera, marked, follow, lens."""

from collections.abc import Sequence
from dataclasses import replace
from math import degrees
from typing import Any

from pycore.endpoint import Endpoint
from pycore.errors import Refusal
from pycore.sight import answers, doubt, lens, pose, requests
from pycore.sight.attitude import followed
from pycore.sight.camera import Camera, Pixel, rounded
from pycore.sight.ground import Ground
from pycore.sight.pose import Picture
from pycore.sight.vectors import Vector

SETTLES = 3  # turns in which the height under a camera is found


def answer_camera(fields: requests.CameraFields | requests.MarkedFields) -> answers.CameraAnswer:
    """Where places of the green lie in a photograph of it, or in the moving picture as it was touched."""
    ground = fields.ground()
    picture, found = _found(fields.picture(), ground)
    points = _places(fields, ground)
    error = doubt.error(picture, found, points)
    across = found.depth(ground.place(fields.distance, 0.0)) / found.focal
    x, y, z = found.place
    return {
        "points_px": _drawn(found, points),
        "error_px": error,
        "error_m": None if error is None else error * across,
        "eye_height_m": z - ground.rise(x, y),
        "pitch_deg": degrees(pose.pitch_of(picture, found)),
        "told_pitch_deg": None if picture.pitch is None else degrees(picture.pitch),
        "height_sd_m": doubt.STATURE,
        "pitch_sd_deg": degrees(doubt.TURN),
        "roll_deg": degrees(picture.roll),
        "fov_deg": degrees(pose.field_of(picture, found)),
    }


def answer_follow(fields: requests.FollowFields) -> answers.FollowAnswer:
    """Where places of the green lie in the moving picture, of a phone that is turned but not carried about."""
    ground = fields.ground()
    _, found = _found(fields.picture(), ground)
    now = followed(found, fields.hole.held.attitude(), fields.now.attitude())
    return {"points_px": _drawn(now, _places(fields, ground))}


def answer_lens(fields: requests.LensFields) -> answers.LensAnswer:
    """How wide a camera sees."""
    ends = requests.pixel(fields.ends_px[0]), requests.pixel(fields.ends_px[1])
    size = fields.width_px, fields.height_px
    focal = lens.focal(ends, fields.length_m, fields.distance_m)
    nearer = focal - lens.focal(((0.0, 0.0), (doubt.TOUCH, 0.0)), fields.length_m, fields.distance_m)
    if nearer <= 0 or not requests.NARROWEST <= degrees(lens.field(size[1], focal)) <= requests.WIDEST:
        raise Refusal(
            "no_lens", "no lens shows it so: check its length and how far off it is, and touch its two ends", "ends_px"
        )
    field = lens.field(size[1], focal)
    return {
        "fov_deg": degrees(field),
        "error_deg": degrees(lens.field(size[1], nearer) - field),
        "lens_mm": lens.film_mm(size, focal),
    }


def _found(picture: Picture, ground: Ground) -> tuple[Picture, Camera]:
    """The camera of a picture, whose height is told over the green under it; and the picture with that over the plane."""
    told = picture.height
    try:
        found = doubt.likeliest(picture)
        if told is not None and not ground.surface.is_plane:
            for _ in range(SETTLES):
                picture = replace(picture, height=told + ground.rise(found.place[0], found.place[1]))
                found = doubt.likeliest(picture, found)
    except Refusal as refusal:
        raise refusal.about("hole_px") from None
    return picture, found


def _places(fields: requests.PictureFields, ground: Ground) -> list[Vector]:
    return [ground.place(at[0], at[1]) for at in fields.points_m]


def _drawn(seen: Camera, places: Sequence[Vector]) -> list[Pixel | None]:
    return [pixel and rounded(pixel) for pixel in map(seen.pixel, places)]


ENDPOINTS: dict[str, Endpoint[Any, Any]] = {
    "camera": Endpoint(requests.CameraFields, answer_camera),
    "marked": Endpoint(requests.MarkedFields, answer_camera),
    "follow": Endpoint(requests.FollowFields, answer_follow),
    "lens": Endpoint(requests.LensFields, answer_lens),
}

_HELD = {"alpha_deg": 10, "beta_deg": 70, "gamma_deg": 1}
_SEEN = {"width_px": 1200, "height_px": 1600, "distance_m": 2.5, "eye_height_m": 1.6, "fov_deg": 66}
_MARKS = {"ball": {"at_px": [600, 1300], "held": _HELD}, "hole": {"at_px": [640, 700], "held": _HELD}}
EXAMPLES: list[dict[str, Any]] = [
    {
        "ask": "camera",
        **_SEEN,
        "ball_px": [600, 1300],
        "hole_px": [640, 700],
        "held": _HELD,
        "slope_percent": 2,
        "fall_deg": 90,
        "points_m": [[0, 0], [2.5, 0.2]],
    },
    {"ask": "marked", **_SEEN, **_MARKS, "points_m": [[0, 0], [2.5, 0.2]]},
    {"ask": "follow", **_SEEN, **_MARKS, "now": _HELD, "points_m": [[0, 0], [2.5, 0.2]]},
    {
        "ask": "lens",
        "width_px": 1200,
        "height_px": 1600,
        "ends_px": [[100, 800], [1100, 800]],
        "length_m": 1,
        "distance_m": 1.2,
    },
]
