"""What a coach would say: no fault where the interval holds none, the hand's own word, and every caveat."""

from math import radians

import pytest

from pycore.record.fixed_set import Name
from pycore.record.player import Skill
from pycore.record.words import words
from pycore.stats.intervals import Estimate

NO_LEAN = "no lean that shows"
SPREAD = Estimate(1.0, 0.9, 1.1)


def skill(value, low, high, n=40, shrinkage=0.0, logged=False):
    return Skill(Estimate(value, low, high), SPREAD, n, shrinkage, logged)


def angle(value, low, high, **other):
    return skill(radians(value), radians(low), radians(high), **other)


@pytest.mark.parametrize(
    ("name", "found", "hand", "said"),
    [
        ("start_line", angle(0.5, 0.25, 0.74), "right", "You start it 0.5 degrees left, a pull: 0.2 to 0.7."),
        ("start_line", angle(-0.5, -0.75, -0.24), "right", "You start it 0.5 degrees right, a push: 0.2 to 0.8."),
        ("start_line", angle(0.5, 0.25, 0.74), "left", "You start it 0.5 degrees left, a push: 0.2 to 0.7."),
        ("start_line", angle(-0.5, -0.75, -0.24), "left", "You start it 0.5 degrees right, a pull: 0.2 to 0.8."),
        ("alignment", angle(0.5, 0.25, 0.74), "right", "You line it up 0.5 degrees left: 0.2 to 0.7."),
        ("alignment", angle(-1.0, -1.3, -0.7), "left", "You line it up 1.0 degrees right: 0.7 to 1.3."),
        ("pace", skill(0.04, 0.01, 0.07), "right", "You roll it 4 % long: 1 to 7."),
        ("pace", skill(-0.04, -0.07, -0.01), "right", "You roll it 4 % short: 1 to 7."),
        ("reading", skill(0.2, 0.1, 0.3), "right", "You allow 20 % too much break: 10 to 30."),
        ("reading", skill(-0.2, -0.3, -0.1), "left", "You allow 20 % too little break: 10 to 30."),
    ],
)
def test_a_fault_beyond_chance_has_its_side(name, found, hand, said):
    assert words(name, found, hand, 20) == said


@pytest.mark.parametrize(
    ("name", "found", "said"),
    [
        (
            "alignment",
            angle(0.1, -0.19, 0.39),
            f"You line it up with {NO_LEAN}: between 0.2 degrees right and 0.4 degrees left.",
        ),
        (
            "start_line",
            angle(0.0, -0.29, 0.29),
            f"You start it with {NO_LEAN}: between 0.3 degrees right and 0.3 degrees left.",
        ),
        ("pace", skill(0.0, -0.029, 0.031), "Your pace is neither long nor short: between 3 % short and 3 % long."),
        ("reading", skill(0.0, -0.1, 0.1), "You allow the right break: between 10 % too little break and 10 % too much break."),
        # an end that touches nothing is no fault
        ("pace", skill(0.02, 0.0, 0.04), "Your pace is neither long nor short: between 0 % short and 4 % long."),
        ("pace", skill(-0.02, -0.04, 0.0), "Your pace is neither long nor short: between 4 % short and 0 % short."),
    ],
)
def test_within_chance_no_fault_is_named(name, found, said):
    assert words(name, found, "right", 20) == said


@pytest.mark.parametrize(
    ("name", "found", "lines", "more"),
    [
        # twice as wide as is enough: four times the putts, three times more; rounded up to fives
        ("pace", skill(0.0, -0.06, 0.06, n=40), 20, "About 120 more putts would settle it."),
        ("pace", skill(0.0, -0.06, 0.06, n=41), 20, "About 125 more putts would settle it."),
        ("pace", skill(0.0, -0.06, 0.06, n=0), 20, "About 5 more putts would settle it."),
        ("reading", skill(0.0, -0.2, 0.2, n=10), 20, "About 30 more putts would settle it."),
        ("pace", skill(0.0, -0.06, 0.06, n=166), 20, "About 500 more putts would settle it."),
        ("pace", skill(0.0, -0.06, 0.06, n=167), 20, "Longer putts would tell more."),
        # of angles only putts with the ball's line count
        ("alignment", angle(0.0, -0.6, 0.6, n=40), 15, "About 45 more putts with the ball's line logged would settle it."),
        ("start_line", angle(0.0, -0.6, 0.6, n=40), 15, "About 45 more putts with the ball's line logged would settle it."),
        (
            "start_line",
            angle(0.0, -0.6, 0.6, n=40),
            0,
            "About 120 more putts would settle it. How you line up is in this too.",
        ),
    ],
)
def test_how_many_more_would_settle_it(name, found, lines, more):
    said = words(name, found, "right", lines)
    assert said.startswith("Not enough yet: between ")
    assert said.endswith(f". {more}")


def test_what_is_just_enough_and_what_is_not():
    name: Name
    for name, half, scale in (
        ("alignment", 0.3, radians(1)),
        ("start_line", 0.3, radians(1)),
        ("pace", 3, 0.01),
        ("reading", 10, 0.01),
    ):
        enough, more = (
            words(name, skill(0.0, -wide * half * scale, wide * half * scale), "right", 20) for wide in (0.999, 1.001)
        )
        assert not enough.startswith("Not enough")
        assert more.startswith("Not enough yet")


@pytest.mark.parametrize(
    ("name", "caveat"),
    [
        ("alignment", "With so few putts the finding leans on what is usual."),
        ("start_line", "With so few putts the finding leans on the tour and amateur presets."),
        ("pace", "With so few putts the finding leans on the tour and amateur presets."),
        ("reading", "With so few putts the finding leans on what is usual."),
    ],
)
def test_what_leans_on_the_presets_says_so_from_a_tenth_on(name, caveat):
    leaning, own = (words(name, skill(0.2, 0.1, 0.3, shrinkage=share), "right", 20) for share in (0.101, 0.1))
    assert leaning.endswith(caveat)
    assert "leans" not in own


@pytest.mark.parametrize("name", ["alignment", "pace", "reading"])
def test_only_the_start_line_has_how_you_line_up_in_it(name):
    assert "line up is in" not in words(name, skill(0.2, 0.1, 0.3), "right", 0)


@pytest.mark.parametrize(
    ("found", "said"),
    [
        (
            skill(-0.2, -0.31, -0.12, logged=True),
            "The greens break more than you log: 20 %, 12 to 31. You may allow too little, or the slopes are logged too low: ",
        ),
        (
            skill(0.2, 0.12, 0.31, logged=True),
            "The greens break less than you log: 20 %, 12 to 31. You may allow too much, or the slopes are logged too high: ",
        ),
        (skill(0.05, -0.1, 0.2, logged=True), "The greens break as you log them: -20 to 10 % more."),
    ],
)
def test_where_whose_read_it_was_is_not_known_neither_is_blamed(found, said):
    assert words("reading", found, "right", 20).startswith(said)
    assert "You allow" not in words("reading", found, "right", 20)
