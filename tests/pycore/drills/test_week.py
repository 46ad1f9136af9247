"""A tournament week: speed and survey first, then long putts, then short ones; light the day before."""

import re

import pytest


@pytest.mark.parametrize("before", range(8))
def test_a_week_keeps_its_order(engine_ask, before):
    days = engine_ask("week", first_tee="2026-05-07T08:10", days_before=before)["days"]
    assert [day["left"] for day in days] == list(range(before, -1, -1))
    assert days[-1]["day"] == "2026-05-07"
    names = [session["name"] for day in days for session in day["sessions"]]
    assert names[-1] == "Warm-up"
    if before:
        assert names[0] == "Greens"
    if before >= 2:
        assert sum(session["minutes"] for session in days[-2]["sessions"]) == min(
            sum(session["minutes"] for session in day["sessions"]) for day in days[:-1]
        )
    if before >= 4:
        assert names.index("Greens") < names.index("Long putts") < names.index("Short putts")
    ids = [session["id"] for day in days for session in day["sessions"]]
    assert len(set(ids)) == len(ids)


def test_each_session_can_be_planned(engine_ask):
    for day in engine_ask("week", first_tee="2026-03-02", days_before=7)["days"]:
        for session in day["sessions"]:
            fields = {name: session[name] for name in ("minutes", "place", "weights")}
            assert sum(block["minutes"] for block in engine_ask("plan", **fields)["blocks"]) == session["minutes"]


def test_each_session_serves_what_it_is_for(engine_ask):
    """In tenths of the session, what it is most for and then what else: assumed, about half of it for its own skill."""
    served = {
        "Greens": {"reading": 4, "pace": 3},
        "Long putts": {"pace": 5},
        "Short putts": {"start_line": 4, "alignment": 3},
        "In the room": {"tempo": 4},
        "Light": {"tempo": 4},
        "Warm-up": {"pace": 4},
    }
    for day in engine_ask("week", first_tee="2026-03-02", days_before=7)["days"]:
        for session in day["sessions"]:
            weights, meant = session["weights"], served[session["name"]]
            assert {skill: round(10 * weights[skill] / sum(weights.values())) for skill in meant} == meant
            assert {weights[skill] for skill in weights.keys() - meant.keys()} == {1}


@pytest.mark.parametrize("before", [1, 7])
def test_each_session_says_why_in_a_sentence(engine_ask, before):
    for day in engine_ask("week", first_tee="2026-03-02", days_before=before)["days"]:
        for session in day["sessions"]:
            assert re.fullmatch(r"[A-Z][a-z' ]+([:,] [a-z ]+)*\.", session["why"])


def test_the_month_before(engine_ask):
    assert engine_ask("week", first_tee="2026-03-02", days_before=3)["days"][0]["day"] == "2026-02-27"


def test_what_is_no_day(refused):
    refusal = refused("week", first_tee="next Thursday", days_before=3)
    assert (refusal["code"], refusal["field"]) == ("bad_field", "first_tee")
    assert refused("week", first_tee="2026-03-02", days_before=8)["field"] == "days_before"
