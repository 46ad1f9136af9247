"""The planner, over thousands of sessions: each rule by its name, and the same plan every time."""

from collections import Counter
from itertools import chain, combinations, permutations, product

import pytest

from pycore.drills.drill import Place, Thing, catalogue
from pycore.drills.plan import SKILLS, plan

PLACES: tuple[Place, ...] = ("room", "green")
THINGS: tuple[Thing, ...] = ("level_floor", "mirror", "laser", "ball", "balls", "hole", "string", "chalk")
HANDS = [frozenset(hand) for hand in chain(*(combinations(THINGS, n) for n in (0, 1, 2, 3, 8)))]
EVEN = dict.fromkeys(SKILLS, 1.0)
NONE = dict.fromkeys(SKILLS, 0.0)
WEIGHTS = [EVEN, NONE, EVEN | {"pace": 5.0}, NONE | {"start_line": 1.0}, EVEN | {"reading": 0.0, "tempo": 0.0}]
SESSIONS = list(product((10, 13, 15, 20, 26, 30, 47, 60), PLACES, HANDS, WEIGHTS)) + list(
    product(range(10, 61), PLACES, HANDS[::12], WEIGHTS)
)


@pytest.fixture(scope="module")
def planned():
    """Every session with its plan, and what each skill takes."""
    drills = catalogue()
    sessions = []
    for minutes, place, hand, weights in SESSIONS:
        blocks = plan(minutes, place, hand, weights, drills)
        told = f"{minutes} min, {place}, {sorted(hand)}, {weights}: {[(b.drill.id, b.minutes) for b in blocks]}"
        sessions.append((minutes, place, hand, weights, blocks, told))
    return sessions


def test_sessions_enough():
    assert len(SESSIONS) >= 5000


def test_to_the_minute(planned):
    for minutes, _, _, _, blocks, told in planned:
        assert sum(block.minutes for block in blocks) == minutes, told
        assert all(block.drill.least <= block.minutes <= block.drill.most for block in blocks), told


def test_set_up_first_and_the_putt_that_must_drop_last(planned):
    for _, _, _, _, blocks, told in planned:
        assert [block.drill.role for block in blocks] == ["set_up", *["main"] * (len(blocks) - 2), "last"], told
        assert len(blocks) >= 3, told
        assert all(2 <= end.minutes <= 3 for end in (blocks[0], blocks[-1])), told


def test_with_what_is_at_hand_where_one_is(planned):
    for _, place, hand, _, blocks, told in planned:
        for drill in (*(block.drill for block in blocks), *(other for block in blocks for other in block.instead)):
            assert set(drill.needs) <= hand, told
            assert place in drill.places, told


def test_no_skill_takes_more_than_two_fifths_unless_it_needs_work_the_most(planned):
    for minutes, _, _, weights, blocks, told in planned:
        spent: Counter[str] = Counter()
        for block in blocks:
            spent[block.drill.skill] += block.minutes
        heaviest = max(weights, key=weights.__getitem__) if len(set(weights.values())) > 1 else None
        if weights == WEIGHTS[-1]:
            heaviest = None  # three share that
        assert all(time <= 0.4 * minutes for skill, time in spent.items() if skill != heaviest), told


def test_no_drill_comes_twice_nor_by_a_swap(planned):
    for _, _, _, _, blocks, told in planned:
        ids = [block.drill.id for block in blocks]
        assert len(set(ids)) == len(ids), told
        for block in blocks:
            assert not {other.id for other in block.instead} & set(ids), told
            assert all(other.role == block.drill.role for other in block.instead), told
            if block.drill.role == "main":
                assert all(other.skill == block.drill.skill for other in block.instead), told


def test_the_tempo_is_in_every_plan_of_twenty_minutes(planned):
    for minutes, _, _, _, blocks, told in planned:
        if minutes >= 20:
            assert "tempo" in {block.drill.id for block in blocks}, told


def test_every_block_says_why(planned):
    assert all(block.why for _, _, _, _, blocks, _ in planned for block in blocks)


def test_the_same_question_has_the_same_plan(planned):
    backwards = tuple(reversed(catalogue()))
    for minutes, place, hand, weights, blocks, told in planned[::7]:
        assert blocks == plan(minutes, place, hand, weights, backwards), told


def test_the_heaviest_skill_has_the_most_minutes():
    for skill in SKILLS:
        blocks = plan(45, "green", frozenset(THINGS), dict.fromkeys(SKILLS, 1.0) | {skill: 8.0}, catalogue())
        spent = {each: sum(b.minutes for b in blocks if b.drill.role == "main" and b.drill.skill == each) for each in SKILLS}
        assert max(spent, key=spent.__getitem__) == skill
        assert any(b.why.startswith("Needs work the most.") for b in blocks)


def test_even_weights_touch_every_skill():
    blocks = plan(40, "green", frozenset(THINGS), EVEN, catalogue())
    assert {block.drill.skill for block in blocks[1:-1]} == set(SKILLS)
    assert not any(block.why.startswith("Needs") for block in blocks)


def sainte_lague(weights, seats):
    """How many of ``seats`` each has by the highest quotients of 1, 3, 5 and so on (Sainte-Lague 1910)."""
    quotients = sorted(((weight / (2 * k + 1), name) for name, weight in weights.items() for k in range(seats)), reverse=True)
    return Counter(name for _, name in quotients[:seats])


@pytest.mark.parametrize("minutes", [20, 33, 47, 60])
def test_skills_have_blocks_by_their_weights(minutes):
    weights = dict(zip(SKILLS, (2.2, 1.9, 1.7, 1.4, 1.1), strict=True))
    main = plan(minutes, "green", frozenset(THINGS), weights, catalogue())[1:-1]
    expected = sainte_lague(weights, len(main))
    if not expected["tempo"]:
        # which is in every plan from twenty minutes on, whatever it weighs
        expected = sainte_lague(weights, len(main) - 1) + Counter(tempo=1)
    assert Counter(block.drill.skill for block in main) == expected
    assert len(main) == round((minutes - 6) / 6)


def test_set_up_and_the_last_putt_take_three_minutes_from_a_quarter_of_an_hour_on():
    ends = {
        minutes: (blocks[0].minutes, blocks[-1].minutes)
        for minutes in (14, 15)
        for blocks in [plan(minutes, "green", frozenset(THINGS), EVEN, catalogue())]
    }
    assert ends == {14: (2, 2), 15: (3, 3)}


@pytest.mark.parametrize("place", PLACES)
@pytest.mark.parametrize("minutes", [10, 23, 41, 60])
@pytest.mark.parametrize("hand", [frozenset(), frozenset[Thing]({"ball", "mirror", "string"}), frozenset(THINGS)])
def test_what_could_be_done_instead_fits_the_minutes_and_nothing_that_fits_is_missing(minutes, place, hand):
    drills = catalogue()
    blocks = plan(minutes, place, hand, EVEN, drills)
    for block in blocks:
        mine = block.drill
        fits = {
            other.id
            for other in drills
            if other.id not in {each.drill.id for each in blocks}
            # of its own skill, so that no skill's share grows
            and (mine.role != "main" or other.skill == mine.skill)
            and other.role == mine.role
            and place in other.places
            and set(other.needs) <= hand
            # set-up and the last putt have their minutes whatever is done in them
            if mine.role != "main" or other.least <= block.minutes <= other.most
        }
        assert {other.id for other in block.instead} == fits
        same = [other.skill == mine.skill for other in block.instead]
        assert same == sorted(same, reverse=True)


@pytest.mark.parametrize("minutes", [13, 24, 38, 60])
@pytest.mark.parametrize("hand", [frozenset(), frozenset(THINGS)])
def test_minutes_go_where_there_are_fewest(minutes, hand):
    blocks = plan(minutes, "green", hand, EVEN, catalogue())
    spent = {each: sum(b.minutes for b in blocks if b.drill.skill == each) for each in SKILLS}
    for a, b in permutations(blocks[1:-1], 2):
        if a.minutes > b.minutes + 1:
            full = spent[b.drill.skill] + 1 > 0.4 * minutes
            assert full or a.minutes == a.drill.least or b.minutes == b.drill.most


def test_the_most_of_what_is_at_hand_is_made():
    drills = catalogue()
    for place, hand in product(PLACES, HANDS[::5]):
        blocks = plan(20, place, hand, EVEN, drills)
        for end in (blocks[0].drill, blocks[-1].drill):
            fitting = [len(e.needs) for e in drills if e.role == end.role and place in e.places and set(e.needs) <= hand]
            assert len(end.needs) == max(fitting)


def test_no_drill_comes_again_while_a_fresh_one_of_its_skill_is_there():
    drills = catalogue()
    for minutes, weights in product((30, 60), WEIGHTS):
        main = [block.drill for block in plan(minutes, "green", frozenset(THINGS), weights, drills)[1:-1]]
        for skill in SKILLS:
            done = Counter(drill.id for drill in main if drill.skill == skill)
            there = sum(drill.role == "main" and drill.skill == skill and "green" in drill.places for drill in drills)
            assert max(done.values(), default=0) <= -(-done.total() // there)


def test_only_the_main_drills_of_the_heaviest_skill_need_work_the_most():
    blocks = plan(45, "green", frozenset(THINGS), EVEN | {"pace": 2.0}, catalogue())
    for block in blocks:
        most = block.drill.role == "main" and block.drill.skill == "pace"
        assert block.why == ("Needs work the most. " if most else "") + block.drill.why


def test_a_room_without_gear_has_start_line_pace_reading_and_tempo():
    blocks = plan(30, "room", frozenset(), EVEN, catalogue())
    assert {block.drill.skill for block in blocks[1:-1]} == {"start_line", "pace", "reading", "tempo"}


def test_the_door(engine_ask, refused):
    answer = engine_ask("plan", minutes=25, place="room", at_hand=["ball"], weights={"pace": 4})
    assert sum(block["minutes"] for block in answer["blocks"]) == 25
    assert refused("plan", minutes=5, place="room")["field"] == "minutes"
    assert refused("plan", minutes=20, place="moon")["field"] == "place"
    assert refused("plan", minutes=20, place="room", at_hand=["club"])["field"] == "at_hand[0]"
