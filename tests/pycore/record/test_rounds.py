"""Rounds: putts gained on the published expectation, what is left out, and how misses leave."""

import json

import numpy as np
import pytest
from scipy.stats import t as student

from pycore.api import answer
from pycore.record.rounds import PRIOR_PUTTS

FOOT = 0.3048


def reply(rounds, **fields):
    return json.loads(answer(json.dumps({"ask": "rounds", "rounds": rounds, **fields})))


def counted(rounds, **fields):
    said = reply(rounds, **fields)
    assert said["ok"], said
    return said["value"]


def hole(number, feet, *results, **known):
    putts = [
        {"distance_m": feet * FOOT if not i else None, "result": result, **(known if result == "missed" else {})}
        for i, result in enumerate(results)
    ]
    return {"hole": number, "putts": putts}


def played(*holes, name="a"):
    return {"id": name, "at": "2026-05-03T17:30:00Z", "holes": list(holes)}


@pytest.mark.parametrize(
    ("feet", "putts"),
    # 10, 20, 30, 40 and 50 ft: M. Broadie, Every Shot Counts, 2014 (published, secondary, and derived from it by 2 - one-putt
    # + three-putt share); between and beyond: straight lines, by hand
    [(10, 1.61), (20, 1.87), (30, 1.98), (40, 2.06), (50, 2.14), (25, 1.925), (6.5, 1.385), (3, 1.04), (70, 2.28)],
)
def test_gained_is_the_published_expectation_less_the_putts(feet, putts):
    said = counted([played(hole(1, feet, "missed", "holed"))])
    assert said["all"]["expected_putts"] == pytest.approx(putts, abs=0.006)
    assert said["all"]["gained"] == said["rounds"][0]["gained"] == pytest.approx(putts - 2, abs=0.006)


def test_of_one_putt_the_published_spread_alone_is_known():
    """Its interval is Student's t (SciPy) of the putts that the spread counts for, times that spread: of 10 ft 40 in 100 are
    holed with one putt and 1 takes three (M. Broadie, Every Shot Counts, 2014)."""
    said = counted([played(hole(1, 10, "holed"))])["all"]
    putts, shares = np.array([1, 2, 3]), np.array([0.40, 0.59, 0.01])
    reach = student.ppf(0.975, PRIOR_PUTTS) * (shares @ putts**2 - (shares @ putts) ** 2) ** 0.5
    assert said["gained_high"] - said["gained"] == pytest.approx(reach, rel=1e-3)


def test_against_the_amateur_the_same_putts_gain_more():
    holes = [hole(1, 10, "holed"), hole(2, 10, "missed", "holed")]
    tour, amateur = (counted([played(*holes)], against=against)["all"]["gained"] for against in ("tour", "amateur"))
    assert tour == pytest.approx(2 * 1.61 - 3)
    assert amateur > tour + 0.3


def test_what_is_not_finished_is_left_out_and_counted():
    said = counted([played(hole(1, 12, "missed"), hole(2, 4, "holed"), {"hole": 3, "putts": []})])
    (of,) = said["rounds"]
    assert (of["putts"], of["finished"], of["unfinished"], of["from_off_the_green"]) == (1, 2, 1, 1)
    assert [each["hole"] for each in of["holes"]] == [2]
    assert of["leaves"]["misses"] == 1


def test_all_is_the_rounds_together():
    a = played(hole(1, 5, "holed"), hole(2, 35, "missed", "missed", "holed"), name="a")
    b = played(hole(1, 5, "missed", "holed"), name="b")
    said = counted([b, a])
    assert [each["id"] for each in said["rounds"]] == ["b", "a"]
    for name in ("putts", "expected_putts", "gained"):
        assert said["all"][name] == pytest.approx(sum(each[name] for each in said["rounds"]))
    assert sum(band["gained"] for band in said["all"]["bands"]) == pytest.approx(said["all"]["gained"])
    far = said["all"]["bands"][-1]
    assert (far["three_putts"], far["one_putts"], far["holes"]) == (1, 0, 1)
    assert far["three_published"] == pytest.approx(0.075)  # between 5 and 10 %
    far = counted([played(hole(1, 40, "holed"), hole(2, 50, "holed"))])["all"]["bands"][-1]
    assert far["holes"] == 2
    assert far["three_published"] == pytest.approx((0.10 + 0.17) / 2)  # the mean of its putts
    assert counted([])["all"]["gained"] == 0


def test_misses_leave_high_or_low_where_the_fall_is_known():
    right = {"side": "right", "length": "short"}
    said = counted(
        [
            played(
                hole(1, 12, "missed", "holed", **right, fall_deg=90),  # falls right: right is low
                hole(2, 12, "missed", "holed", **right, fall_deg=-90),
                hole(3, 12, "missed", "holed", **right, fall_deg=0),
                hole(4, 12, "missed", "holed", side=None, length=None),
            )
        ]
    )
    assert said["all"]["leaves"] == {"misses": 4, "short": 3, "long": 0, "left": 0, "right": 3, "low": 1, "high": 1}


def test_the_interval_of_gained_holds_what_such_players_gain():
    """Players who putt as published: numpy deals one, two or three putts; nothing is gained, nineteen times in twenty."""
    rng = np.random.default_rng(20261126)
    held = []
    for _ in range(300):
        holes = []
        for i in range(18):
            feet, one, three = ((5, 0.77, 0.00286), (10, 0.40, 0.01), (30, 0.07, 0.05))[rng.integers(3)]
            taken = 1 + (rng.random() > one) if rng.random() > three else 3
            holes.append(hole(i + 1, feet, *["missed"] * (taken - 1), "holed"))
        gained = counted([played(*holes)])["all"]
        held.append(gained["gained_low"] <= 0 <= gained["gained_high"])
    assert 0.92 <= np.mean(held) <= 0.98


@pytest.mark.parametrize(
    ("holes", "field"),
    [
        ([{"hole": 1, "putts": [{"distance_m": None, "result": "holed"}]}], "rounds[0].holes[0].putts[0].distance_m"),
        ([hole(1, 5, "holed", "holed")], "rounds[0].holes[0].putts[0].result"),
        ([hole(0, 5, "holed")], "rounds[0].holes[0].hole"),
        ([hole(1, 500, "holed")], "rounds[0].holes[0].putts[0].distance_m"),
        ([hole(1, 5, "missed", "holed", side="up")], "rounds[0].holes[0].putts[0].side"),
    ],
)
def test_refusals_name_the_place(holes, field):
    said = reply([played(*holes)])
    assert (said["ok"], said["field"]) == (False, field)
    assert reply([{**played(), "at": "the 3rd of May"}])["field"] == "rounds[0].at"


def a_round(rng, at, one, name):
    """Eighteen first putts of 10 ft; never three putts."""
    holes = [hole(i + 1, 10, *["missed"] * int(rng.random() > one), "holed") for i in range(18)]
    return {**played(*holes, name=name), "at": at}


@pytest.mark.parametrize(("day", "late"), [("2026-04-03", True), ("2026-04-02", False)])
def test_the_last_four_weeks_are_twenty_eight_days(day, late):
    """A bad round 28 days before the last one is among the last; one of a day earlier is among those before."""
    rng = np.random.default_rng(3)
    rounds = [a_round(rng, at, one, at) for at, one in (("2026-01-01", 1.0), (day, 0.0), ("2026-05-01", 1.0))]
    change = counted(rounds)["changes"][0]
    assert (change["now"] < change["before"]) == late


def test_a_change_of_season_is_called_where_there_is_one():
    """Players who hole 40 % all the time, and such as hole 75 % in the last four weeks; numpy deals the putts."""
    rng = np.random.default_rng(20261127)
    called: dict[float, list[bool]] = {}
    for now in (0.40, 0.75):
        for _ in range(60):
            days = [f"2026-0{1 + i // 4}-{1 + 7 * (i % 4):02}" for i in range(16)]
            rounds = [a_round(rng, day, now if day >= "2026-04-01" else 0.40, day) for day in days]
            changes = counted(rounds)["changes"]
            assert [each["from_m"] for each in changes] == [None, pytest.approx(8 * 0.3048)]
            called.setdefault(now, []).append(any(each["beyond_chance"] for each in changes))
    assert np.mean(called[0.40]) <= 0.05
    assert np.mean(called[0.75]) >= 0.80
