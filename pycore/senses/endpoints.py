"""The senses' endpoints: level, floor, feel, felt, look."""

from math import atan2, degrees, radians
from typing import Any

from pycore.endpoint import Endpoint
from pycore.errors import Refusal
from pycore.senses import answers, requests
from pycore.senses import feel as feet
from pycore.senses import level as phone
from pycore.senses import look as eye
from pycore.stats.intervals import Estimate
from pycore.units import percent_from_slope, slope_from_percent

TURNS = (0.0, 90.0, 180.0, 270.0)  # degrees clockwise, of the phone that is zeroed by turning
EYE_LINE = 0.005  # m; an eye line this far off is about a quarter of a ball's radius; assumed good enough
CURVE = (0.5, 1.0, 1.5, 2.0, 2.5, 3.0, 3.5, 4.0)  # per cent felt


def answer_level(fields: requests.LevelFields) -> answers.LevelAnswer:
    """The phone as a level."""
    for i, reading in enumerate(fields.readings):
        if reading.turned_deg not in TURNS:
            name = f"readings[{i}].turned_deg"
            message = f"{name} is {reading.turned_deg:g}; it takes 0, 90, 180 or 270"
            raise Refusal("bad_field", message, name, reading.turned_deg, unit="degrees")
    readings = [
        phone.Reading(radians(each.beta_deg), radians(each.gamma_deg), radians(each.turned_deg), each.weight_s)
        for each in fields.readings
    ]
    bias = (radians(fields.bias_deg[0]), radians(fields.bias_deg[1])) if fields.bias_deg else None
    try:
        found = phone.level(readings, bias, fields.bias_age_days)
    except Refusal as refusal:
        raise refusal.about("readings") from None
    positions = len({reading.turned_deg for reading in fields.readings})
    return {
        "slope_percent": percent_from_slope(abs(found.downhill)),
        "fall_deg": degrees(atan2(found.downhill.real, found.downhill.imag)) % 360,
        "bias_deg": (degrees(found.bias[0]), degrees(found.bias[1])),
        "slope_sd_percent": percent_from_slope(found.sd),
        "check": {
            "positions": positions,
            "apart_percent": None if found.disagreement is None else percent_from_slope(found.disagreement),
        },
        "zeroed": positions > 1 or bias is not None,
    }


def answer_floor(fields: requests.FloorFields) -> answers.FloorAnswer:
    """Whether a floor is level enough."""
    shift = fields.eye_m * slope_from_percent(fields.slope_percent)
    sd = fields.eye_m * slope_from_percent(fields.slope_sd_percent)
    unsure = abs(shift - EYE_LINE) < 2 * sd
    return {
        "shift_m": shift,
        "shift_sd_m": sd,
        "verdict": "unsure" if unsure else "level" if shift < EYE_LINE else "tilted",
    }


def answer_feel(fields: requests.FeelFields) -> answers.FeelAnswer:
    """What the trials say of feet or eye."""
    trials = fields.known()
    kinds: dict[answers.Kind, list[feet.Trial]] = {
        **{fall: [trial for trial in trials if trial.fall == fall] for fall in feet.FALLS},
        "small": [trial for trial in trials if trial.measured < feet.STEEP],
        "large": [trial for trial in trials if trial.measured >= feet.STEEP],
    }
    pairs = [feet.sides(trials, *pair) for pair in feet.OPPOSITE]
    return {
        "sd_percent": feet.uncorrected(trials) if trials else None,
        "groups": [
            {
                "kind": kind,
                "trials": group.trials,
                "bias": _estimate(group.bias),
                "spread": _estimate(group.spread),
                "more": group.more,
            }
            for kind, group in ((kind, feet.group(own)) for kind, own in kinds.items())
        ],
        "sides": [
            {
                "one": pair.one,
                "other": pair.other,
                "difference": _estimate(pair.difference),
                "differs": pair.differs,
                "more": pair.more,
            }
            for pair in pairs
        ],
        "curves": [
            {"fall": fall, "points": [(felt, feet.corrected(line, felt), line.sd(felt)) for felt in CURVE]}
            for fall, line in ((fall, feet.correction(trials, fall)) for fall in feet.FALLS)
        ],
    }


def answer_felt(fields: requests.FeltFields) -> answers.FeltAnswer:
    """A felt slope, corrected."""
    trials = fields.known()
    line = feet.correction(trials, fields.fall)
    likely = feet.corrected(line, fields.felt_percent)
    return {
        "slope_percent": likely,
        "slope_sd_percent": line.sd(fields.felt_percent),
        "correction_percent": likely - fields.felt_percent,
        "trials": sum(trial.fall == fields.fall for trial in trials),
    }


def answer_look(fields: requests.LookFields) -> answers.LookAnswer:
    """A green to guess from."""
    seen = eye.look(fields.case)
    return {
        "slope_percent": seen.slope_percent,
        "fall": seen.fall,
        "grid": seen.grid,
        "ball": seen.ball,
        "hole": seen.hole,
        "flag": seen.flag,
    }


def _estimate(found: Estimate | None) -> answers.EstimateAnswer | None:
    return {"value": found.value, "low": found.low, "high": found.high} if found else None


ENDPOINTS: dict[str, Endpoint[Any, Any]] = {
    "level": Endpoint(requests.LevelFields, answer_level),
    "floor": Endpoint(requests.FloorFields, answer_floor),
    "feel": Endpoint(requests.FeelFields, answer_feel),
    "felt": Endpoint(requests.FeltFields, answer_felt),
    "look": Endpoint(requests.LookFields, answer_look),
}

_TRIALS = [
    {"felt_percent": 1.5, "measured_percent": 2.1, "fall": "right"},
    {"felt_percent": 1.0, "measured_percent": 1.2, "fall": "right"},
    {"felt_percent": 2.5, "measured_percent": 2.2, "fall": "left"},
    {"felt_percent": 3.0, "measured_percent": 2.4, "fall": "left"},
]
EXAMPLES: list[dict[str, Any]] = [
    {
        "ask": "level",
        "readings": [
            {"beta_deg": -0.9, "gamma_deg": 0.8, "turned_deg": 0, "weight_s": 2},
            {"beta_deg": 1.3, "gamma_deg": -0.2, "turned_deg": 180, "weight_s": 2},
        ],
    },
    {"ask": "level", "readings": [{"beta_deg": 1, "gamma_deg": 0, "turned_deg": 0, "weight_s": 2}], "bias_deg": [0.2, 0.1]},
    {
        "ask": "level",
        "readings": [{"beta_deg": 1, "gamma_deg": 0, "turned_deg": 0, "weight_s": 2}],
        "bias_deg": [0.2, 0.1],
        "bias_age_days": 1,
    },
    {"ask": "floor", "slope_percent": 0.3, "slope_sd_percent": 0.05, "eye_m": 1.5},
    {"ask": "feel", "trials": _TRIALS},
    {"ask": "felt", "trials": _TRIALS, "felt_percent": 2, "fall": "right"},
    {"ask": "look", "case": 7},
]
