"""The endpoint: what it says of small and large records, and what it will not take."""

import json
from math import degrees

import numpy as np
import pytest

from pycore.api import answer
from pycore.fields import parse
from pycore.record.endpoints import answer_findings
from pycore.record.requests import FindingsFields
from pycore.record.tally import EARLIER
from pycore.units import FOOT

PUTT = {"distance_m": 3.0, "stimp_ft": 10.0, "slope_percent": 2.0, "fall_deg": 90.0, "past_m": 0.3}
AIM_DEG = 5.954  # the read of PUTT


def reply(putts, **fields):
    return json.loads(answer(json.dumps({"ask": "findings", "putts": putts, **fields})))


def findings(putts, **fields):
    said = reply(putts, **fields)
    assert said["ok"], said
    return said["value"]


def one(i=0, **fields):
    return {
        "id": str(i),
        "at": f"2026-05-{1 + i // 24:02}T{i % 24:02}:00:00Z",
        **PUTT,
        "aim_deg": 6.5,
        "result": "holed",
        **fields,
    }


def grows(putts):
    """The share that is told while one waits never falls."""
    shares = list(answer_findings(parse(FindingsFields, {"putts": putts})))
    assert shares == sorted(shares)
    assert 0 <= shares[0] < shares[-1] <= 1


@pytest.fixture(scope="module")
def players_putts(invented, logged):
    return logged(invented, 0, False)


def test_an_empty_record_claims_nothing():
    said = findings([])
    assert said["costs"] == said["make"] == said["weeks"] == said["changes"] == []
    assert said["skills"]["start_line"]["n"] == 0
    assert "Not enough yet" in said["skills"]["start_line"]["words"]
    assert "presets" in said["skills"]["pace"]["words"]


def test_putts_that_tell_little_are_not_asked_for_by_the_thousand():
    short = findings([one(i, distance_m=1.0, aim_deg=6.0) for i in range(60)])["skills"]["start_line"]["words"]
    assert "Not enough yet" in short
    assert "Longer putts would tell more." in short
    few = findings([one(i, result={"x_m": 0.2 * i, "y_m": 0.1 * (-1) ** i}) for i in range(4)])["skills"]["pace"]["words"]
    assert "more putts would settle it" in few


def test_alignment_and_start_line_are_one_until_the_line_is_logged(invented, logged):
    joint, apart = findings(logged(invented, 1, False))["skills"], findings(logged(invented, 1, True))["skills"]
    assert joint["alignment"]["bias"] is None
    assert "Not told apart" in joint["alignment"]["words"]
    assert "How you line up is in this too" in joint["start_line"]["words"]
    alignment, *_ = invented.players[1]
    assert apart["alignment"]["bias"] == pytest.approx(degrees(alignment[0]), abs=0.2)
    assert apart["start_line"]["bias"] + apart["alignment"]["bias"] == pytest.approx(joint["start_line"]["bias"], abs=0.25)
    assert apart["start_line"]["sd"] < joint["start_line"]["sd"]


def test_putts_without_the_balls_line_count_beside_those_with_it(invented, logged):
    """Of a player who logs the line now and then: the others sharpen the start line, and only lines settle alignment."""
    every, some = logged(invented, 1, 1), logged(invented, 1, 10)
    lined = [putt for putt in some if "line_error_deg" in putt]
    whole, few = findings(some)["skills"], findings(lined)["skills"]
    assert (whole["start_line"]["n"], whole["alignment"]["n"]) == (len(some), len(lined))
    assert whole["start_line"]["bias_high"] - whole["start_line"]["bias_low"] < 0.8 * (
        few["start_line"]["bias_high"] - few["start_line"]["bias_low"]
    )
    assert whole["start_line"]["bias"] == pytest.approx(findings(every)["skills"]["start_line"]["bias"], abs=0.3)
    assert "more putts with the ball's line logged would settle it" in whole["start_line"]["words"]


def test_logging_the_balls_line_is_no_change(invented, logged):
    """Whoever begins to log it has not changed the start line by that."""
    never, always = logged(invented, 1, 0), logged(invented, 1, 1)
    putts = [{**putt, "at": f"2026-03-10T10:{i % 60:02}:00Z", "id": f"3-{i}"} for i, putt in enumerate(never[::2])]
    putts += [{**putt, "at": f"2026-06-10T10:{i % 60:02}:00Z", "id": f"6-{i}"} for i, putt in enumerate(always[1::2])]
    said = findings(putts)
    assert said["skills"]["alignment"]["n"] > 50
    changes = {(change["skill"], change["what"]): change for change in said["changes"]}
    assert ("alignment", "bias") not in changes
    assert not changes["start_line", "sd"]["beyond_chance"]


def test_words_name_the_stroke_by_the_hand():
    stops = [{"x_m": 0.35 + 0.02 * (i % 5), "y_m": 0.16 + 0.02 * (i % 3)} for i in range(40)]
    putts = [one(i, result=stop, aim_deg=AIM_DEG + 0.1, read="own") for i, stop in enumerate(stops)]
    assert "left, a pull: " in findings(putts)["skills"]["start_line"]["words"]
    assert "left, a push: " in findings(putts, handedness="left")["skills"]["start_line"]["words"]


def test_the_apps_own_read_tests_no_reading_but_a_felt_slope_does():
    read = json.loads(answer(json.dumps({"ask": "read", **PUTT})))["value"]["aim_deg"]
    assert findings([one(aim_deg=read, read="app")])["skills"]["reading"]["n"] == 0
    felt = findings([one(i, aim_deg=read, felt_percent=1.5) for i in range(30)])["skills"]["reading"]
    assert felt["n"] == 30
    assert felt["bias"] == pytest.approx(-0.25, abs=0.05)
    assert "too little break" in felt["words"]


def test_counts(players_putts):
    said = findings(players_putts)
    holed = sum(putt["result"] == "holed" for putt in players_putts)
    assert said["used"] == len(players_putts)
    assert sum(band["made"] for band in said["make"]) == sum(week["made"] for week in said["weeks"]) == holed
    assert said["leaves"]["misses"] == len(said["strikes"]) == len(players_putts) - holed
    short = sum(putt["result"] != "holed" and putt["result"]["x_m"] < 0 for putt in players_putts)
    assert said["leaves"]["short"] == short
    assert all(band["low"] <= band["made"] / band["tries"] <= band["high"] for band in said["make"])
    costs = [(not cost["lean"], -cost["putts_per_100"]) for cost in said["costs"]]
    assert costs == sorted(costs)


def test_a_change_is_called_only_where_there_is_one(invented, logged):
    def moved(putts, day):
        return [{**putt, "at": f"2026-0{day}-10T10:{i % 60:02}:00Z", "id": f"{day}-{i}"} for i, putt in enumerate(putts)]

    # one player twice, and one who became another
    a, b = logged(invented, 0, False), logged(invented, 2, False)
    said = findings(moved(a[::2], 3) + moved(a[1::2], 6))
    same, same_made = said["changes"], said["made_change"]
    other = findings(moved(a, 3) + moved(b, 6))["changes"]
    assert len(same) == 6
    assert same_made["low"] < 0 < same_made["high"]
    holed = [np.mean([putt["result"] == "holed" for putt in putts]) for putts in (a[::2], a[1::2])]
    assert [same_made["before"], same_made["now"]] == pytest.approx(holed)
    assert not any(change["beyond_chance"] for change in same)
    assert any(change["beyond_chance"] for change in other)
    assert np.ptp([invented.players[i][3][0] for i in (0, 2)]) > 0.1


@pytest.mark.parametrize(("since", "changes"), [(19, 0), (20, 6)])
def test_a_change_is_looked_for_from_twenty_putts_a_side_on(players_putts, since, changes):
    days = [("2026-03-10", 20), ("2026-06-10", since)]
    dated = [f"{day}T10:{i:02}:00Z" for day, count in days for i in range(count)]
    putts = [{**putt, "at": at} for putt, at in zip(players_putts, dated, strict=False)]
    assert len(findings(putts)["changes"]) == changes
    grows(putts)


def test_a_change_is_called_however_many_putts_there_are_since(invented, logged):
    """Whoever putts more in four weeks than the skills rest on had a stroke before, too."""
    before, now = logged(invented, 0, 0), [putt for i in (2, 5, 8, 11) for putt in logged(invented, i, 0)]
    putts = [{**putt, "at": f"2026-01-10T10:{i % 60:02}:00Z", "id": f"1-{i}"} for i, putt in enumerate(before)]
    putts += [{**putt, "at": f"2026-05-{1 + i % 28:02}T10:00:00Z", "id": f"5-{i}"} for i, putt in enumerate(now)]
    said = findings(putts)
    assert said["used"] == 500
    assert len(said["changes"]) == 6
    alone = findings(sorted(putts[: len(before)], key=lambda putt: putt["at"])[-EARLIER:])["skills"]
    assert {(c["skill"], c["what"]): c["before"] for c in said["changes"]}["pace", "bias"] == pytest.approx(
        alone["pace"]["bias"], abs=1e-9
    )


def test_more_made_is_called_beyond_chance_by_newcombes_interval():
    """56 of 70 against 48 of 80: Newcombe, Stat. Med. 17:873-890, 1998, table II, case a, method 10 (published)."""
    counts = [(3, 48, 80), (6, 56, 70)]
    putts = [
        one(id=f"{month}-{i}", at=f"2026-0{month}-10T10:00:00Z", result="holed" if i < made else {"x_m": 0.3, "y_m": 0.1})
        for month, made, tries in counts
        for i in range(tries)
    ]
    change = findings(putts)["made_change"]
    assert (change["before"], change["now"]) == (0.6, 0.8)
    assert (change["low"], change["high"]) == pytest.approx((0.0524, 0.3339), abs=5e-5)
    assert findings(putts[:90])["made_change"] is None


def test_a_putt_that_says_nothing_is_named():
    steep = {"slope_percent": 8.0, "fall_deg": 0.0, "stimp_ft": 14.0}
    said = findings([one(1), one(2, **steep)])
    assert said["used"] == 1
    assert [each["id"] for each in said["left_out"]] == ["2"]


def test_a_miss_over_the_hole_is_none():
    said = findings([one(1), one(2, result={"x_m": 0.01, "y_m": 0.0})])
    assert (said["used"], said["left_out"][0]["id"]) == (1, "2")
    assert "holed" in said["left_out"][0]["why"]


def test_a_week_is_one_of_the_players_own_days():
    """Monday morning in Sydney is Sunday night in Greenwich."""
    assert [week["monday"] for week in findings([one(at="2026-11-16T08:30:00+11:00")])["weeks"]] == ["2026-11-16"]


def test_a_bent_green_is_taken():
    stations = [{"at_m": 0, "slope_percent": 1, "fall_deg": 90}, {"at_m": 3, "slope_percent": 2, "fall_deg": 45}]
    bent = {
        key: value for key, value in one(result={"x_m": 0.3, "y_m": -0.2}).items() if key not in ("slope_percent", "fall_deg")
    }
    said = findings([{**bent, "stations": stations}, {**bent, "stations": stations, "result": "holed", "id": "h"}])
    assert said["used"] == 2


@pytest.mark.parametrize(
    ("change", "field"),
    [
        ({"result": "lipped"}, "putts[1].result"),
        ({"side": "left"}, "putts[1].side"),
        ({"result": {"x_m": 1}}, "putts[1].result.y_m"),
        ({"at": "last Tuesday"}, "putts[1].at"),
        ({"at": "0001-01-01T00:00:00Z"}, "putts[1].at"),
        ({"gate": "both"}, "putts[1].gate"),
        ({"line_error_deg": 90}, "putts[1].line_error_deg"),
        ({"stations": [{"at_m": 0, "slope_percent": 1, "fall_deg": 90}]}, "putts[1].stations"),
    ],
)
def test_refusals_name_the_putt(change, field):
    said = reply([one(), one(1, **change)])
    assert not said["ok"]
    assert said["field"] == field


@pytest.mark.parametrize(
    ("kind", "more"),
    [("counted", {"distance_m": 2, "result": "holed"}), ("heard", {"meant_m": 3, "rolls_m": [3]})],
)
def test_refusals_name_what_was_counted_or_heard_too(refused, kind, more):
    refusal = refused("findings", putts=[], **{kind: [{"at": "some evening", **more}]})
    assert refusal["field"] == f"{kind}[0].at"
    assert refusal["message"].startswith(f'{kind}[0]: at is "some evening"')


def test_the_opening_shown_is_the_window_of_that_putt():
    shown = findings([])["opening"]
    putt = {"distance_m": 3.0, "stimp_ft": 10.0, "slope_percent": 0.0, "fall_deg": 0.0, "past_m": 0.3}
    window = json.loads(answer(json.dumps({"ask": "window", **putt})))["value"]
    widest = max(high - low for _, low, high in window["edge"])
    assert max(left - right for _, right, left in shown) == pytest.approx(widest, rel=0.15)  # a dozen rows may miss the widest
    inside = [(right, left) for length, right, left in shown if abs(length) < 0.1]
    assert all(
        right < low < high < left for right, left in inside for low, high in [[0.3 * t for t in window["aim_tolerance_deg"]]]
    )


def test_greens_that_break_more_than_logged_are_told_from_the_misses(invented, logged):
    """A player's own reads, with the aim that was needed logged in their place: the bias of reading shows in the starts."""
    player = int(np.argmin(invented.players[:, 3, 0]))
    putts = [
        {**putt, "aim_deg": degrees(invented.needed[invented.which[player, int(putt["id"].split("-")[1])]]), "read": "app"}
        for putt in logged(invented, player, 0)
    ]
    reading = findings(putts)["skills"]["reading"]
    assert reading["bias_low"] < invented.players[player, 3, 0] < reading["bias_high"] < 0
    assert "The greens break more than you log" in reading["words"]
    assert "level" in reading["words"]
    # a putt that does not break tells nothing of it
    straight = {"slope_percent": 0, "aim_deg": 0, "read": "app", "result": "holed"}
    level = [{**putt, **straight, "id": f"level-{i}"} for i, putt in enumerate(putts[:20])]
    assert findings([*putts, *level])["skills"]["reading"]["n"] == reading["n"] == len(putts)


def test_the_share_done_grows_to_the_end(players_putts):
    grows(players_putts)


def test_the_tours_shares_stand_beside_the_players(published):
    """P: see the file; as many distances as a chart has room for."""
    shares = {row["distance_ft"]: row["tour"] for row in published("one_putt_share")}
    tour = next(row for row in findings([])["published"] if row["name"] == "tour")
    assert [(round(metres / FOOT, 6), share) for metres, share in tour["shares"]] == [
        (feet, shares[feet]) for feet in (2, 3, 5, 8, 10)
    ]
