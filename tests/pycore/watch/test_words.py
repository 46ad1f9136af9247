"""How far is said as a player would say it."""

import pytest

from pycore.units import FOOT
from pycore.watch.outcome import Outcome
from pycore.watch.words import _length, words


@pytest.mark.parametrize(
    ("feet", "said"),
    [(0.5, "6 inches"), (0.7, "8 inches"), (0.75, "a foot"), (1, "a foot"), (1.5, "a foot and a half"), (4, "4 feet")],
)
def test_a_length_is_said_to_half_a_foot_and_below_that_in_inches(feet, said):
    assert _length(feet * FOOT, "ft") == said


@pytest.mark.parametrize(("metres", "said"), [(0.4, "40 centimetres"), (1.26, "1.3 metres")])
def test_or_in_metres(metres, said):
    assert _length(metres, "m") == said


@pytest.mark.parametrize(
    ("start_deg", "came", "said"),
    [
        (0.5, Outcome("missed", (3.0 + 1.5 * FOOT, 0.0, 0.05)), "Half a degree left, a foot and a half past."),
        (-1.5, Outcome("missed", (3.0 - FOOT, -2 * FOOT, 0.05)), "A degree and a half right, a foot short, 2 feet right."),
        (0.2, Outcome("missed", (3.0, 4 * FOOT, 0.05)), "A shade left, 4 feet left."),
        (-2.0, Outcome("missed", (3.05, 0.05, 0.05)), "2 degrees right, at the edge."),
        (0.1, Outcome("holed", None), "On line, holed."),
        (None, Outcome("missed", None), "Missed."),
        (1.0, Outcome("unseen", None), "A degree left, the end was not seen."),
    ],
)
def test_start_and_result_are_one_sentence(start_deg, came, said):
    assert words(start_deg, came, 3.0, "ft") == said
