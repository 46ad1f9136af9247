"""What a correction teaches about the next."""

import pytest

from pycore.putt.strike import Slopes


def test_what_was_learnt_explains_the_change_and_leaves_the_rest():
    """Broyden's two conditions: the last change comes out, and a correction across it is answered as before."""
    before = Slopes(complex(0.1, 2.4), complex(1.9, -0.2))
    after = before.learnt(0.03, -0.02, complex(-0.05, 0.09))
    assert 0.03 * after.by_aim - 0.02 * after.by_launch == pytest.approx(complex(-0.05, 0.09))
    assert 0.02 * after.by_aim + 0.03 * after.by_launch == pytest.approx(0.02 * before.by_aim + 0.03 * before.by_launch)
