"""The stroke's endpoints: tempo, stroke_length, find_tempo, arc."""

from math import degrees, radians, sqrt
from typing import Any

from pycore.endpoint import Endpoint
from pycore.errors import Refusal
from pycore.green.speed import deceleration
from pycore.stroke import answers, arc, length, motion, requests, strokes, turning
from pycore.stroke.pendulum import Swing
from pycore.stroke.tempo import PENDULUM_RATIO

SLOWEST_RATE = 15.0  # samples a second; below that a forward swing has four or fewer
ARC_STEPS = 30  # points of a drawn arc
TAPPED_SD = 0.02, 0.02, 0.02  # s; how far a person's taps at start, top and ball are off alike: an assumption


def answer_tempo(fields: requests.TempoFields) -> answers.TempoAnswer:
    """Every event of a row of strokes."""
    tempo = fields.tempo()
    return {
        "cycle_s": tempo.cycle,
        "lead_s": tempo.lead,
        "total_s": tempo.lead + tempo.strokes * tempo.cycle,
        "back_s": tempo.swing.back,
        "forward_s": tempo.swing.forward,
        "interpolated": fields.ratio != PENDULUM_RATIO,
        "events": [{"at_s": t, "kind": kind, "stroke": stroke} for t, kind, stroke in tempo.events()],
        "curve": tempo.curve(),
    }


def answer_stroke_length(fields: requests.StrokeLengthFields) -> answers.StrokeLengthAnswer:
    """How far back for a launch speed."""
    launches = [sqrt(2 * deceleration(stroke.stimp_ft) * stroke.roll_m) for stroke in fields.strokes]
    fitted = length.fit([stroke.backswing_m for stroke in fields.strokes], launches)
    backswing = fitted.at(fields.launch_mps)
    if backswing <= 0:
        least, message = -fitted.start / fitted.slope, "the strokes say nothing of a putt so short; add shorter ones"
        raise Refusal("no_length", message, "launch_mps", fields.launch_mps, least, None, "m/s")
    return {
        "backswing_m": backswing,
        "residual_m": fitted.residual,
        "within": fitted.slowest <= fields.launch_mps <= fitted.fastest,
    }


def answer_find_tempo(fields: requests.FindTempoFields) -> answers.FindTempoAnswer:
    """The tempo of strokes that were made."""
    if fields.taps_s is not None:
        made, unused = strokes.from_taps(fields.taps_s)
    else:
        made, unused = motion.find(turning.about_main_axis(_turning(fields)))
    if not made:
        why = f"; {len(unused)} moves were unlike one or cut off" if unused else ""
        raise Refusal("no_strokes", f"no stroke could be made out{why}; pause a second or more between strokes")
    swings = [each.swing for each in made]
    low, high = strokes.ratio_interval(made, *(TAPPED_SD if fields.taps_s is not None else motion.KNOWN_SD)) or (None, None)
    return {
        "by": "motion" if fields.taps_s is None else "taps",
        "strokes": [
            {
                "at_s": each.start,
                "back_s": each.swing.back,
                "forward_s": each.swing.forward,
                "ratio": _ratio(each.swing),
                "pause_s": each.pause,
                "press_deg": degrees(each.press),
            }
            for each in made
        ],
        "unused": [{"from_s": part.since, "to_s": part.until, "reason": part.reason} for part in unused],
        "ratio": strokes.middle(map(_ratio, swings)),
        "back_s": strokes.middle(swing.back for swing in swings),
        "forward_s": strokes.middle(swing.forward for swing in swings),
        "ratio_low": low,
        "ratio_high": high,
        "ratio_sd": strokes.spread([_ratio(swing) for swing in swings]),
        "back_sd_s": strokes.spread([swing.back for swing in swings]),
        "forward_sd_s": strokes.spread([swing.forward for swing in swings]),
    }


def _turning(fields: requests.FindTempoFields) -> turning.Turning:
    samples = fields.rates or fields.angles or ()
    rate = (len(samples) - 1) / (samples[-1][0] - samples[0][0])
    if rate < SLOWEST_RATE:
        name = "rates" if fields.rates else "angles"
        message = f"{name} come {rate:.1f} times a second; it takes {SLOWEST_RATE:g} or more"
        raise Refusal("too_slow", message, name, rate, SLOWEST_RATE, None, "a second")
    rows = [(t, a, b, c) for t, a, b, c in samples]
    if fields.angles:
        return turning.from_angles(rows)
    return [(t, (radians(a), radians(b), radians(c))) for t, a, b, c in rows]


def _ratio(swing: Swing) -> float:
    return swing.back / swing.forward


def answer_arc(fields: requests.ArcFields) -> answers.ArcAnswer:
    """The way of the putter's head on the floor."""
    lie, radius = radians(fields.lie_deg), fields.length_m + fields.above_grip_m
    places = [arc.arc(lie, radius, fields.reach_m * i / ARC_STEPS) for i in range(ARC_STEPS + 1)]
    return {
        "radius_m": radius,
        "points": [
            {"along_m": place.along, "inside_m": place.inside, "rise_m": place.rise, "turn_deg": degrees(place.turn)}
            for place in places
        ],
    }


ENDPOINTS: dict[str, Endpoint[Any, Any]] = {
    "tempo": Endpoint(requests.TempoFields, answer_tempo),
    "stroke_length": Endpoint(requests.StrokeLengthFields, answer_stroke_length),
    "find_tempo": Endpoint(requests.FindTempoFields, answer_find_tempo),
    "arc": Endpoint(requests.ArcFields, answer_arc),
}


def _swung(at: float) -> float:
    """A rate as a phone would tell it, for the example."""
    swing = Swing(0.6, 0.3)
    return 60 * swing.rate(at % 3) if at % 3 < swing.finish else 0.0


def _turned(at: float) -> float:
    """An angle likewise: after the swing the phone rests, and goes back to where the ball is."""
    swing, since = Swing(0.6, 0.3), at % 4
    return 20 * (swing.position(since) if since < swing.finish else max(0.0, min(1.0, 2.7 - since)))


_OWN = [{"backswing_m": 0.1, "roll_m": 1.0, "stimp_ft": 10}, {"backswing_m": 0.2, "roll_m": 4.0, "stimp_ft": 10}]
EXAMPLES: list[dict[str, Any]] = [
    {"ask": "tempo", "forward_s": 0.3},
    {"ask": "stroke_length", "strokes": [*_OWN, {"backswing_m": 0.31, "roll_m": 9.0, "stimp_ft": 10}], "launch_mps": 2},
    {"ask": "find_tempo", "taps_s": [0, 0.6, 0.9, 4, 4.6, 4.9]},
    {"ask": "find_tempo", "rates": [[i / 30, _swung(i / 30), 0, 0] for i in range(60, 260)]},
    {"ask": "find_tempo", "angles": [[i / 30, 0, 80 + _turned(i / 30), 0] for i in range(30, 200)]},
    {"ask": "arc", "lie_deg": 70, "length_m": 0.86},
]
