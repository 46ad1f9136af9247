"""The record's endpoints: findings and rounds."""

from collections.abc import Callable, Generator, Mapping, Sequence
from datetime import date, timedelta
from math import degrees
from typing import Any, Literal

from pycore.endpoint import Endpoint
from pycore.record import answers, doubts, published, requests, tally, words
from pycore.record.cost import Cost, costs
from pycore.record.findings import lines_suffice, skills
from pycore.record.fixed_set import EXAMPLE_M, LENGTHS_M, SLOPE_PERCENT, Name, example
from pycore.record.logged import Evidence, Tallied, evidence
from pycore.record.player import Coarse, Miss, Skill
from pycore.record.round_answers import answer_rounds
from pycore.record.tally import Share

LATEST = 500  # putts; the skills are those of now, and an answer stays within a breath
STEP = 5  # putts, after which the share done is told
READ_IN, STRUCK, FITTED, COUNTED = 0.4, 0.7, 0.8, 0.95  # shares of the time that it takes, about

UNITS: Mapping[Name, tuple[Callable[[float], float], Literal["degrees", "of the roll", "of the break"]]] = {
    "alignment": (degrees, "degrees"),
    "start_line": (degrees, "degrees"),
    "pace": (float, "of the roll"),
    "reading": (float, "of the break"),
}


def answer_findings(fields: requests.FindingsFields) -> Generator[float, None, answers.FindingsAnswer]:
    """What a record of putts says of its player."""
    yield READ_IN
    putts = fields.logged()
    counted = fields.tallied(putts)
    latest = putts[-LATEST:]
    earlier = tally.wanted_before(putts[:-LATEST], latest)
    step = doubts.step(latest)
    said = []
    for i, putt in enumerate([*earlier, *latest]):
        if i % STEP == 0:
            yield READ_IN + (STRUCK - READ_IN) * (i + 1) / (len(earlier) + len(latest) + 1)
        said.append((putt, evidence(putt, step)))
    before, found = (
        [each for _, each in some if isinstance(each, Evidence)] for some in (said[: len(earlier)], said[len(earlier) :])
    )
    yield STRUCK
    unlogged = doubts.missing(latest)
    known = {} if unlogged else (yield from skills(found, lines_suffice(found), STRUCK, fields.by_ear(LATEST)))
    yield FITTED
    cost = costs(known, fields.against) if found and not unlogged else {}
    yield (FITTED + COUNTED) / 2
    changes = []
    if putts and not unlogged:
        changes = yield from tally.changes(before, found, known, putts[-1].at, (FITTED + COUNTED) / 2)
    yield COUNTED

    def skill(name: Name) -> answers.SkillAnswer:
        if unlogged:
            return _skill(name, None, words.unlogged(unlogged))
        lines = known["alignment"].n if "alignment" in known else 0
        of = known.get(name)
        return _skill(name, of, words.words(name, of, fields.handedness, lines) if of else words.NOTHING[name])

    return {
        "used": len(found),
        "caution": words.unlogged(unlogged) if unlogged else None,
        "skills": {
            "alignment": skill("alignment"),
            "start_line": skill("start_line"),
            "pace": skill("pace"),
            "reading": skill("reading"),
        },
        "costs": [_cost(name, each) for name, each in cost.items()],
        "cost_set": {"from_m": min(LENGTHS_M), "to_m": max(LENGTHS_M), "slope_percent": SLOPE_PERCENT},
        "make": [_band(*band) for band in tally.by_distance(counted, fields.against)],
        "published": [
            {"name": "tour", "source": published.TOUR_SOURCE, "shares": published.TOUR},
            {"name": "1995", "source": published.BERRY_SOURCE, "shares": published.BERRY},
        ],
        "leaves": _leaves(counted),
        "seasons": [_season(*season) for season in tally.by_quarter(counted, fields.against)],
        "weeks": [_week(*week) for week in tally.by_week(counted)],
        "changes": [_change(change) for change in changes],
        "made_change": _made_change(counted),
        "strikes": [(degrees(e.strike.start), e.strike.length) for e in found if isinstance(e.strike, Miss | Coarse)],
        "opening": [(row.length, degrees(row.low), degrees(row.high)) for row in example()],
        "opening_m": EXAMPLE_M,
        "left_out": [{"id": putt.id, "why": why} for putt, why in said[len(earlier) :] if isinstance(why, str)],
    }


def _skill(name: Name, skill: Skill | None, said: str) -> answers.SkillAnswer:
    turn, unit = UNITS[name]
    if skill is None:
        return {
            "bias": None,
            "bias_low": None,
            "bias_high": None,
            "sd": None,
            "sd_low": None,
            "sd_high": None,
            "unit": unit,
            "n": 0,
            "words": said,
        }
    return {
        "bias": turn(skill.bias.value),
        "bias_low": turn(skill.bias.low),
        "bias_high": turn(skill.bias.high),
        "sd": None if skill.untold else turn(skill.sd.value),
        "sd_low": None if skill.untold else turn(skill.sd.low),
        "sd_high": None if skill.untold else turn(skill.sd.high),
        "unit": unit,
        "n": skill.n,
        "words": said,
    }


def _cost(name: Name, cost: Cost) -> answers.CostAnswer:
    putts = cost.putts
    return {"skill": name, "putts_per_100": putts.value, "low": putts.low, "high": putts.high, "lean": cost.lean}


def _band(from_m: float, to_m: float, group: tally.Group) -> answers.BandAnswer:
    low, high = group.share.interval
    return {
        "from_m": from_m,
        "to_m": to_m,
        "mean_m": group.mean,
        "tries": group.share.tries,
        "made": group.share.made,
        "low": low,
        "high": high,
        "usual": group.usual,
    }


def _season(first: date, group: tally.Group) -> answers.SeasonAnswer:
    low, high = group.share.interval
    after = date(first.year, first.month + 3, 1) if first.month < 10 else date(first.year + 1, 1, 1)
    return {
        "from_day": first.isoformat(),
        "to_day": (after - timedelta(days=1)).isoformat(),
        "tries": group.share.tries,
        "made": group.share.made,
        "low": low,
        "high": high,
        "usual": group.usual,
        "gained_low": 100 * (low - group.usual),
        "gained_high": 100 * (high - group.usual),
    }


def _week(monday: date, share: Share) -> answers.WeekAnswer:
    low, high = share.interval
    return {"monday": monday.isoformat(), "tries": share.tries, "made": share.made, "low": low, "high": high}


def _leaves(putts: Sequence[Tallied]) -> answers.LeavesAnswer:
    short, beyond = tally.leaves(putts)
    low, high = short.interval
    return {
        "misses": short.tries,
        "short": short.made,
        "short_low": low,
        "short_high": high,
        "beyond_m": beyond.value if beyond else None,
        "beyond_low_m": beyond.low if beyond else None,
        "beyond_high_m": beyond.high if beyond else None,
    }


def _change(change: tally.Change) -> answers.ChangeAnswer:
    turn, _ = UNITS[change.skill]
    return {
        "skill": change.skill,
        "what": change.what,
        "before": turn(change.before.value),
        "now": turn(change.now.value),
        "beyond_chance": change.beyond_chance,
    }


def _made_change(putts: Sequence[Tallied]) -> answers.MadeChangeAnswer | None:
    found = tally.made_change(putts, putts[-1].at) if putts else None
    if not found:
        return None
    before, now, (low, high) = found
    return {"before": before.made / before.tries, "now": now.made / now.tries, "low": low, "high": high}


ENDPOINTS: dict[str, Endpoint[Any, Any]] = {
    "findings": Endpoint(requests.FindingsFields, answer_findings),
    "rounds": Endpoint(requests.RoundsFields, answer_rounds),
}

_PUTT = {"distance_m": 3.0, "stimp_ft": 10, "slope_percent": 2, "fall_deg": 90, "past_m": 0.3, "aim_deg": 6.0}
EXAMPLES: list[dict[str, Any]] = [
    {
        "ask": "findings",
        "putts": [
            {"id": "a", "at": "2026-05-03T17:30:00Z", **_PUTT, "result": "holed", "gate": "left"},
            {"id": "b", "at": "2026-05-03T17:31:00Z", **_PUTT, "result": {"x_m": 0.4, "y_m": -0.2}, "read": "own"},
            {"id": "c", "at": "2026-05-03T17:32:00Z", **_PUTT, "result": {"x_m": -0.1, "y_m": 0.1}, "line_error_deg": 0.5},
        ],
        "heard": [{"at": "2026-05-03T18:00:00Z", "meant_m": 4.0, "rolls_m": [3.8, 4.1, 4.4], "roll_sd_m": 0.2}],
        "handedness": "right",
    },
    {"ask": "findings", "putts": []},
    {
        "ask": "rounds",
        "rounds": [
            {
                "id": "r",
                "at": "2026-05-03",
                "holes": [
                    {
                        "hole": 1,
                        "putts": [
                            {"distance_m": 6.1, "result": "missed", "side": "left", "length": "short", "fall_deg": 90},
                            {"distance_m": None, "result": "holed"},
                        ],
                    },
                    {"hole": 2, "putts": []},
                ],
            }
        ],
        "against": "tour",
    },
]
