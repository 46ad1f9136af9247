"""The putts that faults are weighed on, by hand."""

import pytest

from pycore.record.fixed_set import example


def test_the_putts_are_meant_to_finish_a_foot_past():
    """D: at 10 ft a roll of v runs v^2 / 1.0988. Of 3.3 m meant, one that stops at the near edge has 2.946, and one that is
    at the hole with Penner's 1.63 m/s has 3 + 1.63^2 / 1.0988 = 5.418. The outermost rows lie at cos(pi / 24) of that."""
    shortest, longest = 2.946 / 3.3 - 1, 5.418 / 3.3 - 1
    middle, half = (longest + shortest) / 2, (longest - shortest) / 2
    rows = example()
    assert (rows[0].length, rows[-1].length) == pytest.approx((middle - 0.99144 * half, middle + 0.99144 * half), abs=0.004)
