"""The endpoints of practice: drills, plan, gate, ball_line, eyes, shim, week."""

from dataclasses import replace
from math import atan2, degrees, radians, tan
from typing import Any

from pycore.constants import BALL_RADIUS
from pycore.drills import answers, requests, week
from pycore.drills.drill import Drill, catalogue
from pycore.drills.gate import Gate, gap_for, share_of_holed
from pycore.drills.plan import SKILLS, plan
from pycore.endpoint import Endpoint
from pycore.errors import Refusal
from pycore.fields import Range, outside
from pycore.putt import chance
from pycore.putt.doubt import Doubt, meant
from pycore.putt.requests import PlayerFields
from pycore.putt.solve import NoPutt, read
from pycore.putt.window import window
from pycore.units import FOOT, slope_from_percent

SHIMS = 1.0, 2.0, 3.0  # %; slopes that greens have where holes are cut


def answer_drills(fields: requests.DrillsFields) -> answers.DrillsAnswer:
    """All drills."""
    return {"drills": [_card(drill) for drill in catalogue()]}


def _card(drill: Drill) -> answers.DrillCard:
    return {
        "id": drill.id,
        "name": drill.name,
        "skill": drill.skill,
        "role": drill.role,
        "why": drill.why,
        "needs": list(drill.needs),
        "bring": drill.bring,
        "places": list(drill.places),
        "least": drill.least,
        "most": drill.most,
        "picture": drill.picture,
        "setup": list(drill.setup),
        "cues": list(drill.cues),
        "good": drill.good,
        "bad": drill.bad,
        "cautions": list(drill.cautions),
        "watched": drill.watched,
    }


def answer_plan(fields: requests.PlanFields) -> answers.PlanAnswer:
    """A session."""
    weights = {skill: getattr(fields.weights, skill) for skill in SKILLS}
    blocks = plan(fields.minutes, fields.place, frozenset(fields.at_hand), weights, catalogue())
    return {
        "blocks": [
            {
                "drill": block.drill.id,
                "minutes": block.minutes,
                "why": block.why,
                "instead": [drill.id for drill in block.instead],
            }
            for block in blocks
        ]
    }


def answer_gate(fields: requests.GateFields) -> answers.GateAnswer:
    """Which starts pass a gate."""
    if fields.gap_m <= fields.ball_m:
        limit = Range(fields.ball_m, requests.WIDEST_GAP, "m")
        raise outside("gap_m", fields.gap_m, limit, "a ball passes a gap that is wider than it")
    post = BALL_RADIUS if fields.posts == "balls" else 0.0
    gate = Gate(fields.gap_m, fields.at_m, fields.ball_m / 2, post)
    player = _player(fields.player)
    return {
        "passes_deg": degrees(gate.half_angle),
        "share_of_holed": share_of_holed(gate.half_angle, fields.stimp_ft, player),
        "matching_gap_m": gap_for(player.start_line_sd, fields.at_m, fields.ball_m / 2, post),
    }


def answer_ball_line(fields: requests.BallLineFields) -> answers.BallLineAnswer:
    """What a line on the ball that is off costs."""
    putt, player, off = fields.putt(), _player(fields.player), radians(fields.off_deg)
    found = read(putt)
    holes = None if isinstance(found, NoPutt) else window(putt, found)
    if isinstance(found, NoPutt) or holes is None:
        raise Refusal("no_window", "there is no start that holes this putt, so no line to be off", "past_m")
    strikes = meant(putt, found, Doubt(player.slope_sd), player.pace_sd)
    make, left, right = (
        chance.made_of(strikes, found, holes, replace(player, start_line_bias=player.start_line_bias + bias))
        for bias in (0.0, off, -off)
    )
    return {
        "at_foot_m": FOOT * tan(off),
        "at_hole_m": putt.distance * tan(off),
        "make": make,
        "make_left": left,
        "make_right": right,
    }


def answer_eyes(fields: requests.EyesFields) -> answers.EyesAnswer:
    """How eyes beside the ball line turn it: what they take for straight runs from below them to the hole."""
    return {"turned_deg": -degrees(atan2(fields.left_m, fields.distance_m)), "at_hole_m": -fields.left_m}


def answer_week(fields: requests.TournamentFields) -> answers.TournamentAnswer:
    """What to practise on the days before a first round."""
    days = week.week(fields.day(), fields.days_before)
    return {
        "days": [
            {
                "day": day.isoformat(),
                "left": fields.days_before - since,
                "sessions": [
                    {
                        "id": f"{day.isoformat()} {session.name}",
                        "name": session.name,
                        "place": session.place,
                        "minutes": session.minutes,
                        "weights": {
                            "alignment": session.weights["alignment"],
                            "start_line": session.weights["start_line"],
                            "pace": session.weights["pace"],
                            "reading": session.weights["reading"],
                            "tempo": session.weights["tempo"],
                        },
                        "why": session.why,
                    }
                    for session in sessions
                ],
            }
            for since, (day, sessions) in enumerate(days)
        ]
    }


def answer_shim(fields: requests.ShimFields) -> answers.ShimAnswer:
    """What thickness under one foot makes a slope: rise over run, the run being how far apart the feet are."""
    return {"shims": [{"slope_percent": p, "thickness_m": slope_from_percent(p) * fields.apart_m} for p in SHIMS]}


def _player(given: PlayerFields | None) -> chance.Player:
    return given.player() if given else chance.TOUR


ENDPOINTS: dict[str, Endpoint[Any, Any]] = {
    "drills": Endpoint(requests.DrillsFields, answer_drills),
    "plan": Endpoint(requests.PlanFields, answer_plan),
    "gate": Endpoint(requests.GateFields, answer_gate),
    "ball_line": Endpoint(requests.BallLineFields, answer_ball_line),
    "eyes": Endpoint(requests.EyesFields, answer_eyes),
    "shim": Endpoint(requests.ShimFields, answer_shim),
    "week": Endpoint(requests.TournamentFields, answer_week),
}
EXAMPLES: list[dict[str, Any]] = [
    {"ask": "drills"},
    {"ask": "plan", "minutes": 20, "place": "room"},
    {"ask": "gate", "gap_m": 0.055, "at_m": 0.3048},
    {"ask": "ball_line", "distance_m": 2.53, "stimp_ft": 10, "slope_percent": 2, "fall_deg": 90, "past_m": 0.3048},
    {"ask": "eyes", "left_m": 0.02, "distance_m": 3},
    {"ask": "shim", "apart_m": 0.3},
    {"ask": "week", "first_tee": "2026-05-07T08:10", "days_before": 4},
]
