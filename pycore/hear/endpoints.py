"""The endpoints of hearing: heard, on_beat, paces."""

from math import exp, hypot, sin
from typing import Any

from pycore.endpoint import Endpoint
from pycore.green.speed import deceleration
from pycore.hear import answers, beat, clicks, pace, putts, requests
from pycore.stats import intervals


def answer_heard(fields: requests.HeardFields) -> answers.HeardAnswer:
    """Putts from what the microphone heard."""
    friction = pace.FRICTION if fields.skid == "putted" else None
    sounds = putts.without_beat(clicks.find(fields.bands, fields.rate_hz))
    prior = _prior(fields)
    made, found = _made(sounds, fields.marks_m, prior, friction)
    floor = pace.both(prior, found)
    told = made if floor else []
    parts: dict[float, putts.Part] = {}
    for putt in told:
        parts[putt.strike.at] = "impact"
        parts |= {click.at: "arrival" for _, click in putt.met}
    stimp_ft, stimp_sd_ft = _stimp(found)
    return {
        "strokes": [_stroke(putt, fields.marks_m, floor, friction) for putt in told if floor],
        "stimp_ft": stimp_ft,
        "stimp_sd_ft": stimp_sd_ft,
        "heard": [{"at_s": each.at, "part": parts.get(each.at, "other")} for each in sounds],
        "left_out": [{"at_s": each.at, "reason": putts.why_left(each, told)} for each in sounds if each.at not in parts],
    }


def _prior(fields: requests.HeardFields) -> pace.Floor | None:
    if fields.stimp_ft is None:
        return None
    slowing = deceleration(fields.stimp_ft)
    return pace.Floor(slowing, slowing * fields.stimp_sd_ft / fields.stimp_ft)


def _made(
    sounds: list[clicks.Click], marks: tuple[float, ...], prior: pace.Floor | None, friction: float | None
) -> tuple[list[putts.Putt], pace.Floor | None]:
    """Putts, and the floor as they tell it; where it was not known before, it is heard first and the putts then anew."""
    made = putts.row(sounds, marks, prior, friction)
    found = pace.floor_of([putt.run(marks) for putt in made], friction)
    if prior is None and found:
        made = putts.row(sounds, marks, found, friction)
        found = pace.floor_of([putt.run(marks) for putt in made], friction) or found
    return made, found


def _stroke(putt: putts.Putt, marks: tuple[float, ...], floor: pace.Floor, friction: float | None) -> answers.HeardStroke:
    launch = pace.launch(putt.run(marks), floor, friction)
    return {
        "impact_s": putt.strike.at,
        "arrivals_s": [click.at for _, click in putt.met],
        "marks": [mark for mark, _ in putt.met],
        "launch_mps": launch.speed,
        "launch_sd_mps": launch.sd,
        "roll_m": launch.roll,
        "roll_sd_m": launch.roll_sd,
    }


def _stimp(found: pace.Floor | None) -> tuple[float | None, float | None]:
    if found is None:
        return None, None
    stimp_ft = deceleration(1.0) / found.slowing
    return stimp_ft, stimp_ft * found.sd / found.slowing


def answer_paces(fields: requests.PacesFields) -> answers.PacesAnswer:
    """Spread and lean of a row of putts."""
    errors = [roll / fields.meant_m - 1 for roll in fields.rolls_m]
    few = len(errors) < 2
    return {
        "errors": errors,
        "lean": None if few else _held(_shared(intervals.mean(errors), fields.roll_sd_m / fields.meant_m)),
        "spread": None if few else _held(intervals.spread_estimate(errors)),
    }


def answer_on_beat(fields: requests.OnBeatFields) -> answers.OnBeatAnswer:
    """How late the beat comes back, or how far off it each strike was."""
    sounds = clicks.find(fields.bands, fields.rate_hz)
    if fields.delay_s is None:
        found = beat.delay(sounds, fields.beats_s, requests.DELAY_S)
        late, sd, heard = found or (None, None, 0)
        return {"delay_s": late, "delay_sd_s": sd, "heard": heard, "strikes": [], "lean": None, "spread": None}
    struck = beat.offsets(sounds, fields.beats_s, fields.delay_s)
    offs = [*fields.earlier_s, *(off for _, _, off in struck)]
    few = len(offs) < 2
    return {
        "delay_s": fields.delay_s,
        "delay_sd_s": fields.delay_sd_s,
        "heard": 0,
        "strikes": [{"beat": i, "at_s": at, "off_s": off} for i, at, off in struck],
        "lean": None if few else _held(_shared(intervals.mean(offs), fields.delay_sd_s)),
        "spread": None if few else _held(intervals.spread_estimate(offs)),
    }


def _shared(mean: intervals.Estimate, sd: float) -> intervals.Estimate:
    """A mean whose values were all measured from a moment that is itself unsure."""
    low, high = (hypot(end - mean.value, intervals.Z * sd) for end in (mean.low, mean.high))
    return intervals.Estimate(mean.value, mean.value - low, mean.value + high)


def _held(found: intervals.Estimate) -> answers.Held:
    return {"value": found.value, "low": found.low, "high": found.high}


ENDPOINTS: dict[str, Endpoint[Any, Any]] = {
    "heard": Endpoint(requests.HeardFields, answer_heard),
    "on_beat": Endpoint(requests.OnBeatFields, answer_on_beat),
    "paces": Endpoint(requests.PacesFields, answer_paces),
}


def _clicked(at: float) -> float:
    """A strike and what it meets, 1.2 s apart, for the example."""
    return sum(0.2 * exp(-(at - since) / 0.004) for since in (1.0, 2.2) if at >= since) + 0.001 * (1 + 0.3 * sin(900 * at))


_BAND = [round(_clicked(i / 1000), 5) for i in range(3000)]
EXAMPLES: list[dict[str, Any]] = [
    {"ask": "heard", "bands": [_BAND] * 3, "marks_m": [1.5], "stimp_ft": 9.0, "stimp_sd_ft": 0.3, "skid": "putted"},
    {"ask": "heard", "bands": [_BAND] * 3, "marks_m": [0.8, 1.5], "stimp_ft": None},
    {"ask": "on_beat", "bands": [_BAND] * 3, "beats_s": [0.85, 2.05], "delay_s": 0.12, "earlier_s": [0.02]},
    {"ask": "paces", "rolls_m": [3.8, 4.1, 4.4], "meant_m": 4.0},
]
