"""The endpoint of rounds."""

from collections.abc import Sequence
from datetime import date, timedelta

from pycore.record import answers, requests
from pycore.record.published import TOUR_SOURCE
from pycore.record.rounds import First, Hole, by_distance, firsts, gained, misses, turned
from pycore.stats.intervals import wilson

RECENT = timedelta(days=28)
SOURCES = {
    "tour": f"{TOUR_SOURCE}: 2 less the share of one putt plus that of three. Straight lines between its distances; "
    "three-putts fall to none at 3 ft; beyond 60 ft the last slope goes on.",
    "amateur": f"{TOUR_SOURCE}, 90-shooters to 30 ft (from memory). Their three-putts are taken as twice the tour's, and "
    "beyond 30 ft they hole in proportion to the tour: assumed. Straight lines between its distances.",
}


def answer_rounds(fields: requests.RoundsFields) -> answers.RoundsAnswer:
    """Putts gained, round by round and over all."""
    rounds = fields.counted()
    putts = [firsts(holes, fields.against) for holes in rounds]
    return {
        "rounds": [
            {"id": given.id, "holes": [_hole(each) for each in own], **_putted(holes, own)}
            for given, holes, own in zip(fields.rounds, rounds, putts, strict=True)
        ],
        "all": _putted([hole for holes in rounds for hole in holes], [each for own in putts for each in own]),
        "changes": _changes(fields, putts),
        "against": fields.against,
        "source": SOURCES[fields.against],
    }


def _changes(fields: requests.RoundsFields, putts: Sequence[Sequence[First]]) -> list[answers.RoundChangeAnswer]:
    days = [each.day() for each in fields.rounds]
    since = max(days, default=date.max) - RECENT
    before, now = (
        [each for own, day in zip(putts, days, strict=True) if (day >= since) == late for each in own] for late in (False, True)
    )
    bands = {(low, high): inside for low, high, inside in by_distance(now)}
    pairs = [
        ((None, None), before, now),
        *(((low, high), inside, bands.get((low, high), [])) for low, high, inside in by_distance(before)),
    ]
    found = [(ends, turned(was, is_now)) for ends, was, is_now in pairs]
    return [
        {
            "from_m": low,
            "to_m": high,
            "before": turn.before,
            "now": turn.now,
            "low": turn.more.low,
            "high": turn.more.high,
            "beyond_chance": turn.beyond_chance,
        }
        for (low, high), turn in found
        if turn
    ]


def _putted(holes: Sequence[Hole], putts: Sequence[First]) -> answers.PuttedAnswer:
    found = gained(putts)
    return {
        "putts": sum(each.taken for each in putts),
        "expected_putts": sum(each.expected.putts for each in putts),
        "gained": found.value,
        "gained_low": found.low,
        "gained_high": found.high,
        "finished": sum(hole.finished for hole in holes),
        "unfinished": sum(not hole.finished for hole in holes),
        "from_off_the_green": sum(not hole.putts for hole in holes),
        "bands": [_band(*band) for band in by_distance(putts)],
        "leaves": _leaves(holes),
    }


def _band(low: float, high: float, putts: Sequence[First]) -> answers.RoundBandAnswer:
    n, found = len(putts), gained(putts)
    one, three = sum(each.taken == 1 for each in putts), sum(each.taken > 2 for each in putts)
    (one_low, one_high), (three_low, three_high) = wilson(one, n), wilson(three, n)
    return {
        "from_m": low,
        "to_m": high,
        "mean_m": sum(each.distance for each in putts) / n,
        "holes": n,
        "putts": sum(each.taken for each in putts),
        "expected_putts": sum(each.expected.putts for each in putts),
        "gained": found.value,
        "gained_low": found.low,
        "gained_high": found.high,
        "one_putts": one,
        "one_low": one_low,
        "one_high": one_high,
        "one_published": sum(each.expected.one for each in putts) / n,
        "three_putts": three,
        "three_low": three_low,
        "three_high": three_high,
        "three_published": sum(each.expected.three for each in putts) / n,
    }


def _leaves(holes: Sequence[Hole]) -> answers.RoundLeavesAnswer:
    missed = misses(holes)
    return {
        "misses": len(missed),
        "short": sum(putt.length == "short" for putt in missed),
        "long": sum(putt.length == "long" for putt in missed),
        "left": sum(putt.side == "left" for putt in missed),
        "right": sum(putt.side == "right" for putt in missed),
        "low": sum(putt.high is False for putt in missed),
        "high": sum(putt.high is True for putt in missed),
    }


def _hole(first: First) -> answers.HoleAnswer:
    return {
        "hole": first.hole,
        "distance_m": first.distance,
        "putts": first.taken,
        "expected_putts": first.expected.putts,
        "gained": first.gained,
    }
