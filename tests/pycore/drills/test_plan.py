"""The planner, over thousands of sessions: to the minute, in order, with what is at hand, the same every time."""

from itertools import chain, combinations, product

import pytest

from pycore.drills.drill import Place, Thing, catalogue
from pycore.drills.plan import SKILLS, plan

THINGS: tuple[Thing, ...] = ("level_floor", "mirror", "laser", "ball", "balls", "hole", "string", "chalk")
HANDS = [frozenset(hand) for hand in chain(*(combinations(THINGS, n) for n in (0, 1, 2, 3, 8)))]
EVEN = dict.fromkeys(SKILLS, 1.0)
WEIGHTS = [EVEN, dict.fromkeys(SKILLS, 0.0), EVEN | {"pace": 5.0}, dict.fromkeys(SKILLS, 0.0) | {"start_line": 1.0}]
PLACES: tuple[Place, ...] = ("room", "green")
SESSIONS = list(product((10, 14, 15, 20, 25, 30, 47, 60), PLACES, HANDS, WEIGHTS[:2])) + list(
    product(range(10, 61), PLACES, HANDS[::12], WEIGHTS[2:])
)


def test_sessions_enough():
    assert len(SESSIONS) >= 2000


@pytest.mark.parametrize("part", range(4))
def test_every_session_holds_to_the_rules(part):
    drills = catalogue()
    for minutes, place, hand, weights in SESSIONS[part::4]:
        session = f"{minutes} min, {place}, {sorted(hand)}, {weights}"
        blocks = plan(minutes, place, hand, weights, drills)
        assert sum(block.minutes for block in blocks) == minutes, session
        assert [block.drill.role for block in blocks] == ["set_up", *["main"] * (len(blocks) - 2), "last"], session
        assert len(blocks) >= 3, session
        assert 2 <= blocks[0].minutes <= 3, session
        for block in blocks:
            assert set(block.drill.needs) <= hand, session
            assert place in block.drill.places, session
            assert block.drill.least <= block.minutes <= block.drill.most, session
            assert block.why, session
            for other in block.instead:
                assert set(other.needs) <= hand, session
                assert other.role == block.drill.role, session
        assert blocks == plan(minutes, place, hand, weights, tuple(reversed(drills))), session


def test_the_heaviest_skill_has_the_most_minutes():
    for skill in SKILLS:
        blocks = plan(45, "green", frozenset(THINGS), dict.fromkeys(SKILLS, 1.0) | {skill: 8.0}, catalogue())
        spent = {each: sum(b.minutes for b in blocks if b.drill.role == "main" and b.drill.skill == each) for each in SKILLS}
        assert max(spent, key=spent.__getitem__) == skill
        assert any(b.why.startswith("Needs work the most.") for b in blocks)


def test_even_weights_touch_every_skill():
    blocks = plan(40, "green", frozenset(THINGS), EVEN, catalogue())
    assert {block.drill.skill for block in blocks[1:-1]} == set(SKILLS)
    assert len({block.drill.id for block in blocks}) == len(blocks)
    assert not any(block.why.startswith("Needs") for block in blocks)


def test_the_door(engine_ask, refused):
    answer = engine_ask("plan", minutes=25, place="room", at_hand=["ball"], weights={"pace": 4})
    assert sum(block["minutes"] for block in answer["blocks"]) == 25
    assert refused("plan", minutes=5, place="room")["field"] == "minutes"
    assert refused("plan", minutes=20, place="moon")["field"] == "place"
    assert refused("plan", minutes=20, place="room", at_hand=["club"])["field"] == "at_hand[0]"
