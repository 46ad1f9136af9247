"""The putt's endpoints: read, window, roll, sensitivity, presets."""

from collections.abc import Generator
from math import cos, degrees, hypot, radians, tan
from typing import Any, Literal

from pycore.endpoint import Endpoint
from pycore.errors import Refusal
from pycore.green.survey_endpoints import POINTS
from pycore.green.surveyed import Surveyed
from pycore.putt import answers, chance, pace, requests, sensitivity, solve
from pycore.putt.doubt import read_sds
from pycore.putt.line_doubt import spread
from pycore.putt.putt import Putt
from pycore.putt.shape import apex, path
from pycore.putt.window import aim_tolerance, pace_tolerance, window
from pycore.units import percent_from_slope

LEAST_PACES = 8  # of those tried; with fewer the best is not looked for


def answer_read(fields: requests.ReadFields) -> answers.ReadAnswer:
    """Aim, pace and shape of a putt, and how far they may be off."""
    putt = fields.putt()
    found = _found(putt)
    sds = read_sds(putt, found, fields.doubt()) if fields.doubted else None
    if fields.survey is not None and isinstance(putt.surface, Surveyed):
        sure = spread(putt, found, putt.surface, fields.survey.walked().survey)
        told = sds or (0.0, 0.0)
        sds = hypot(told[0], sure.aim), hypot(told[1], sure.launch)
    return {
        "aim_deg": degrees(found.aim),
        "aim_offset_m": putt.distance * tan(found.aim),
        "launch_mps": found.launch,
        "aim_sd_deg": sds and degrees(sds[0]),
        "aim_offset_sd_m": sds and putt.distance * sds[0] / cos(found.aim) ** 2,
        "launch_sd_fraction": sds and sds[1],
        "entry_mps": found.hole.speed,
        "entry_deg": degrees(found.hole.heading),
        "time_s": found.hole.t,
        "apex": _point(*apex(putt, found)),
        "plays_like_m": putt.plays_like(found.launch),
        "path": path(found.roll),
    }


def answer_window(fields: requests.WindowFields) -> answers.WindowAnswer:
    """The starts and paces that hole a putt, and how often a player does."""
    putt = fields.putt()
    found = _found(putt)
    holes = window(putt, found)
    if holes is None:
        raise Refusal("no_window", "the hole takes no ball at this pace or at a softer one", "past_m")
    player = fields.player.player() if fields.player else chance.TOUR
    most, least = holes.extremes(found.aim)

    def share(who: chance.Player) -> float:
        return chance.make_probability(putt, found, holes, who, fields.doubt(who.slope_sd))

    ends = fields.player_low and fields.player_high and (fields.player_low.player(), fields.player_high.player())
    return {
        "edge": [
            (launch, degrees(low), degrees(high)) for launch, low, high in zip(holes.launch, holes.low, holes.high, strict=True)
        ],
        "launch_min_mps": holes.launch[0],
        "launch_max_mps": holes.launch[-1],
        "aim_tolerance_deg": _degrees(aim_tolerance(putt, found)),
        "pace_tolerance_fraction": pace_tolerance(putt, found),
        "high_line": _into_hole(putt, *most),
        "low_line": _into_hole(putt, *least),
        "make_probability": share(player),
        "make_interval": chance.interval(share, player, *ends) if ends else None,
    }


def answer_best_pace(fields: requests.PaceFields) -> Generator[float, None, answers.PaceAnswer]:
    """The pace that takes the fewest putts."""
    putt = Putt(fields.distance, fields.surface(), fields.stimp_ft, pace.PASTS[0])
    found = yield from pace.costs(putt, fields.striker())
    if len(found) < LEAST_PACES:
        _found(putt)
        raise Refusal("no_window", "the hole takes this ball at too few paces to tell the best", None)
    best = pace.least(found)
    return {
        "past_m": best.past,
        "expected_putts": best.putts,
        "make_probability": best.made,
        "three_putt_probability": best.three,
        "curve": [(each.past, each.putts, each.made) for each in found],
    }


def answer_roll(fields: requests.RollFields) -> answers.RollAnswer:
    """Where a strike goes."""
    putt = Putt(fields.distance, fields.surface(), fields.stimp_ft)
    roll = putt.roll(fields.launch_mps, radians(fields.aim_deg))
    end = roll.at(roll.s_left(0.0))
    return {
        "stop": None if roll.runs_away else _point(end.x, end.y),
        "runs_away": roll.runs_away,
        "time_s": end.t,
        "path": path(roll),
        "holed": putt.finish(roll).holed,
    }


def answer_sensitivity(fields: requests.PuttFields) -> answers.SensitivityAnswer:
    """What each error costs."""
    putt = fields.putt()
    return {
        "rows": [
            {
                "change": outcome.change,
                "finish": None if outcome.rest is None else _point(*outcome.rest),
                "holed": outcome.holed,
                "miss_m": outcome.miss,
            }
            for outcome in sensitivity.outcomes(putt, _found(putt))
        ]
    }


def answer_presets(fields: requests.NoFields) -> answers.PresetsAnswer:
    """The players that come with the engine."""
    source = (
        "start line and pace: Bansal and Broadie, Proc. Winter Simulation Conf. 2008 (secondary); "
        "misread: calibrated to the shares in Broadie, Every Shot Counts, 2014 (secondary)"
    )
    players: list[tuple[Literal["tour", "amateur"], chance.Player]] = [("tour", chance.TOUR), ("amateur", chance.AMATEUR)]
    return {
        "players": [
            {
                "name": name,
                "source": source,
                "start_line_sd_deg": degrees(player.start_line_sd),
                "pace_sd_fraction": player.pace_sd,
                "slope_sd_percent": percent_from_slope(player.slope_sd),
            }
            for name, player in players
        ]
    }


def _found(putt: Putt) -> solve.Read:
    """The read, or a refusal that says why there is none."""
    found = solve.read(putt)
    if isinstance(found, solve.Read):
        return found
    reason = (
        f"no ball stops {putt.past:.2f} m past this hole: "
        f"the green there falls {percent_from_slope(abs(putt.downhill)):.1f} %, "
        f"and at {putt.stimp_ft:g} ft a ball rolls on from {percent_from_slope(putt.rho):.1f} %"
    )
    if found.instead is None:
        message = f"It runs away: {reason}; no pace stops near the hole"
        raise Refusal("runs_away", message, "past_m", putt.past, unit="m")
    message = f"It runs away: {reason}; a pace of {found.instead:.2f} m past the hole would do"
    raise Refusal("runs_away", message, "past_m", putt.past, found.instead, found.instead, "m")


def _into_hole(putt: Putt, launch: float, aim: float) -> answers.Path:
    """The path of a strike to where the hole takes it."""
    roll = putt.roll(launch, aim)
    return path(roll, putt.finish(roll).s)


def _point(x: float, y: float) -> answers.Point:
    return {"x_m": x, "y_m": y}


def _degrees(angles: tuple[float, float] | None) -> tuple[float, float] | None:
    return angles and (degrees(angles[0]), degrees(angles[1]))


ENDPOINTS: dict[str, Endpoint[Any, Any]] = {
    "read": Endpoint(requests.ReadFields, answer_read),
    "window": Endpoint(requests.WindowFields, answer_window),
    "best_pace": Endpoint(requests.PaceFields, answer_best_pace),
    "roll": Endpoint(requests.RollFields, answer_roll),
    "sensitivity": Endpoint(requests.PuttFields, answer_sensitivity),
    "presets": Endpoint(requests.NoFields, answer_presets),
}

_PLANE = {"distance_m": 2.53, "stimp_ft": 10, "slope_percent": 2, "fall_deg": 90}
_STATIONS = {
    "distance_m": 3.0,
    "stimp_ft": 10,
    "stations": [{"at_m": 0, "slope_percent": 1, "fall_deg": 90}, {"at_m": 3, "slope_percent": 2, "fall_deg": 45}],
}
_SURVEY = {"points": POINTS, "ball": [2, 2], "hole": [5, 4]}
EXAMPLES: list[dict[str, Any]] = [
    *({"ask": ask, **green, "past_m": 0.3048} for ask in ("read", "window", "sensitivity") for green in (_PLANE, _STATIONS)),
    {
        "ask": "window",
        **_PLANE,
        "past_m": 0.3,
        "player": {"start_line_sd_deg": 1, "pace_sd_fraction": 0.07, "slope_sd_percent": 0.5},
    },
    {
        "ask": "window",
        **_PLANE,
        "past_m": 0.3,
        "player": {"start_line_sd_deg": 1, "pace_sd_fraction": 0.07, "slope_sd_percent": 0.5},
        "player_low": {"start_line_sd_deg": 0.8, "pace_sd_fraction": 0.06, "slope_sd_percent": 0.3},
        "player_high": {"start_line_sd_deg": 1.2, "pace_sd_fraction": 0.08, "slope_sd_percent": 0.7},
    },
    {"ask": "read", **_PLANE, "past_m": 0.3, "tilt_sd_percent": 0.3, "stimp_sd_ft": 0.5},
    {"ask": "window", **_PLANE, "past_m": 0.3, "tilt_sd_percent": 0.3, "stimp_sd_ft": 0.5},
    {"ask": "best_pace", **_PLANE},
    {"ask": "best_pace", "survey": _SURVEY, "stimp_ft": 10},
    {"ask": "roll", **_STATIONS, "launch_mps": 1.8, "aim_deg": 4},
    {"ask": "read", "survey": _SURVEY, "stimp_ft": 10, "past_m": 0.3},
    {"ask": "window", "survey": _SURVEY, "stimp_ft": 10, "past_m": 0.3},
    {"ask": "presets"},
]
