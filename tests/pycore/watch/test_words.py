"""How far is said as a player would say it."""

import pytest

from pycore.units import FOOT
from pycore.watch.words import _length


@pytest.mark.parametrize(
    ("feet", "said"),
    [(0.5, "6 inches"), (0.7, "8 inches"), (0.75, "a foot"), (1, "a foot"), (1.5, "a foot and a half"), (4, "4 feet")],
)
def test_a_length_is_said_to_half_a_foot_and_below_that_in_inches(feet, said):
    assert _length(feet * FOOT, "ft") == said


@pytest.mark.parametrize(("metres", "said"), [(0.4, "40 centimetres"), (1.26, "1.3 metres")])
def test_or_in_metres(metres, said):
    assert _length(metres, "m") == said
