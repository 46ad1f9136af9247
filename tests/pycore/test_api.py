"""The door, driven with what a person, a bug or an enemy may send."""

import json
import math
from typing import TypedDict

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import pycore.putt.endpoints as putt
from pycore import api
from pycore.api import MAX_REQUEST_CHARACTERS, answer, endpoints, examples
from pycore.endpoint import Endpoint
from pycore.putt.requests import PuttFields

PUTT = {"ask": "read", "distance_m": 3, "stimp_ft": 10, "slope_percent": 2, "fall_deg": 90, "past_m": 0.3}
GREEN = {name: PUTT[name] for name in ("ask", "distance_m", "stimp_ft", "past_m")}


def ask(request):
    return json.loads(answer(json.dumps(request)))


@pytest.mark.parametrize("request_", examples(), ids=lambda request: request["ask"])
def test_examples_are_answered_in_the_promised_form(request_):
    reply = ask(request_)
    assert reply["ok"]
    assert set(reply["value"]) == set(endpoints()[request_["ask"]].reply.__annotations__)


def test_every_endpoint_has_an_example():
    assert {example["ask"] for example in examples()} == set(endpoints())


def stations(*places):
    return [{"at_m": place, "slope_percent": 1, "fall_deg": 90} for place in places]


@pytest.mark.parametrize(
    ("request_", "code", "field"),
    [
        ({**PUTT, "distance_m": 0.1}, "bad_field", "distance_m"),
        ({**PUTT, "stimp_ft": 30}, "bad_field", "stimp_ft"),
        ({**PUTT, "fall": 3}, "unknown_field", "fall"),
        (GREEN, "missing_field", "slope_percent"),
        ({**GREEN, "slope_percent": 2}, "missing_field", "fall_deg"),
        ({**PUTT, "stations": stations(0)}, "bad_field", "stations"),
        ({**GREEN, "stations": stations(0, 2, 1)}, "bad_field", "stations[2].at_m"),
        ({**GREEN, "stations": stations(0, 3.5)}, "bad_field", "stations[1].at_m"),
        ({**GREEN, "stations": stations(*(i / 400 for i in range(1000)))}, "bad_field", "stations"),
        ({**PUTT, "ask": "tell"}, "unknown_ask", "ask"),
        ({**PUTT, "ask": None}, "unknown_ask", "ask"),
    ],
)
def test_refusals_name_the_field(request_, code, field):
    reply = ask(request_)
    assert not reply["ok"]
    assert (reply["code"], reply["field"]) == (code, field)


@pytest.mark.parametrize(
    ("request_", "value", "low", "high", "unit"),
    [
        ({**PUTT, "distance_m": 99}, 99, 0.3, 30, "m"),
        ({**GREEN, "stations": stations(0, 3.5)}, 3.5, 0.01, 3, "m"),
        ({**GREEN, "stations": stations(0, 0)}, 0, 0.01, 3, "m"),
        (GREEN, None, None, None, None),
        ({"ask": "gate", "gap_m": 0.041, "at_m": 1}, 0.041, 0.04267, 0.4, "m"),
        ({"ask": "ramp", "launch_mps": 2, "stimp_ft": 10, "trial": {"height_m": 0.02, "rolled_m": 9}}, 9, 0.1, 0.26, "m"),
        ({"ask": "find_tempo", "rates": [[i / 10, 0, 0, 0] for i in range(50)]}, 10, 15, None, "a second"),
    ],
)
def test_refusals_are_data(request_, value, low, high, unit):
    reply = ask(request_)
    assert set(reply) == {"ok", "code", "field", "value", "low", "high", "unit", "message"}
    assert [reply["value"], reply["low"], reply["high"], reply["unit"]] == [
        value, low, pytest.approx(high, abs=0.01) if high else high, unit
    ]  # fmt: skip


@pytest.mark.parametrize("text", ["", "{", "[]", "3", "null", '"read"', "[" * 100_000, '{"ask": "read"', "\x00", "1" * 5000])
def test_what_is_no_request(text):
    assert json.loads(answer(text))["code"] == "bad_json"


def test_ten_megabytes():
    assert json.loads(answer(" " * 10_000_000))["code"] == "too_large"
    assert len(answer(json.dumps({**PUTT, "x" * (MAX_REQUEST_CHARACTERS - 1000): 1}))) < 1000


def test_a_putt_that_runs_away_says_why():
    reply = ask({**PUTT, "slope_percent": 8, "fall_deg": 0})
    assert (reply["code"], reply["field"], reply["value"], reply["unit"]) == ("runs_away", "past_m", 0.3, "m")
    assert "no pace stops near the hole" in reply["message"]


@pytest.mark.parametrize("spread", [5e-324, 1e-300, 1e-12])
@pytest.mark.parametrize("name", ["start_line_sd_deg", "pace_sd_fraction", "slope_sd_percent"])
def test_a_spread_next_to_nothing_is_none(name, spread):
    player = {"start_line_sd_deg": 1, "pace_sd_fraction": 0.07}
    none, little = (ask({**PUTT, "ask": "window", "player": {**player, name: sd}}) for sd in (0, spread))
    assert little["value"]["make_probability"] == pytest.approx(none["value"]["make_probability"], abs=1e-6)


class Found(TypedDict):
    rows: list[dict[str, float]]


@pytest.mark.parametrize(
    ("found", "code", "field"),
    [
        ({"rows": [{"miss_m": 1.0}, {"miss_m": math.nan}]}, "not_finite", "rows[1].miss_m"),
        ({"rows": [{"miss_m": math.inf}]}, "not_finite", "rows[0].miss_m"),
        (None, "internal", None),
    ],
)
def test_no_answer_is_a_refusal_too(monkeypatch, found, code, field):
    def answer_read(fields: PuttFields) -> Found:
        return {"rows": [{"miss_m": 1 / 0}]} if found is None else found

    monkeypatch.setitem(putt.ENDPOINTS, "read", Endpoint(PuttFields, answer_read))
    reply = ask(PUTT)
    assert (reply["ok"], reply["code"], reply["field"]) == (False, code, field)


def test_an_engine_with_damaged_files_does_not_go_on_as_if_it_had_answered(monkeypatch):
    monkeypatch.setattr(api, "CAPABILITIES", ("gone",))
    with pytest.raises(ModuleNotFoundError):
        ask(PUTT)


def test_answers_hold_together():
    read, window = ask(PUTT)["value"], ask({**PUTT, "ask": "window"})["value"]
    assert read["aim_offset_m"] == pytest.approx(3 * math.tan(math.radians(read["aim_deg"])))
    assert window["launch_min_mps"] < read["launch_mps"] < window["launch_max_mps"]
    level = ask({**PUTT, "slope_percent": 0, "distance_m": read["plays_like_m"]})["value"]
    assert level["launch_mps"] == pytest.approx(read["launch_mps"])
    rolled = ask({**{name: PUTT[name] for name in ("distance_m", "stimp_ft", "slope_percent", "fall_deg")},
                  "ask": "roll", "launch_mps": read["launch_mps"], "aim_deg": read["aim_deg"]})["value"]  # fmt: skip
    assert rolled["holed"]
    assert [rolled["stop"]["x_m"], rolled["stop"]["y_m"]] == pytest.approx(read["path"][-1][1:3], abs=1e-5)


# What may stand in any field: numbers of every kind, and everything that is none
odd = st.one_of(
    st.floats(),
    st.floats(0, 12),
    st.integers(),
    st.none(),
    st.booleans(),
    st.text(max_size=5),
    st.lists(st.integers(), max_size=3),
    st.dictionaries(st.text(max_size=5), st.integers(), max_size=2),
)
putts = st.fixed_dictionaries(
    {
        "ask": st.sampled_from(["read", "sensitivity", "roll", "read", "window"]),
        "distance_m": st.floats(0.3, 30),
        "stimp_ft": st.floats(5, 15),
        "slope_percent": st.floats(0, 8),
        "fall_deg": st.floats(-360, 360),
    }
)
pace = st.fixed_dictionaries({"past_m": st.one_of(st.just(0), st.floats(0, 1))})
strike = st.fixed_dictionaries({"launch_mps": st.floats(0.05, 15), "aim_deg": st.floats(-180, 180)})
names = st.sampled_from(
    ["distance_m", "stimp_ft", "slope_percent", "fall_deg", "past_m", "stations", "player", "launch_mps", "aim_deg", "ask", "x"]
)


def check(request):
    text = answer(json.dumps(request))
    reply = json.loads(text, parse_constant=pytest.fail)
    assert reply["ok"] or reply["code"] not in ("internal", "not_finite")
    return reply


@settings(max_examples=700, deadline=None)
@given(putts, pace, strike, st.dictionaries(names, odd, max_size=2))
def test_no_input_breaks_the_door(putt, pace, strike, wrong):
    fitting = strike if putt["ask"] == "roll" else pace
    check({**putt, **fitting, **wrong})


@settings(max_examples=500, deadline=None)
@given(putts, pace, strike)
def test_every_putt_is_answered(putt, pace, strike):
    reply = check({**putt, **(strike if putt["ask"] == "roll" else pace)})
    assert reply["ok"] or reply["code"] in ("runs_away", "no_window")


@settings(max_examples=200, deadline=None)
@given(
    st.sampled_from(["read", "sensitivity"]),
    st.floats(0.5, 12),
    st.floats(5, 15),
    st.lists(st.tuples(st.floats(0, 8), st.floats(-360, 360)), min_size=1, max_size=5),
)
def test_every_green_of_stations_is_answered(name, distance, stimp, tilts):
    placed = [
        {"at_m": distance * i / len(tilts), "slope_percent": slope, "fall_deg": fall} for i, (slope, fall) in enumerate(tilts)
    ]
    reply = check({"ask": name, "distance_m": distance, "stimp_ft": stimp, "past_m": 0.3, "stations": placed})
    assert reply["ok"] or reply["code"] == "runs_away"


@settings(max_examples=300, deadline=None)
@given(st.text())
def test_no_text_breaks_the_door(text):
    assert not json.loads(answer(text))["ok"]
