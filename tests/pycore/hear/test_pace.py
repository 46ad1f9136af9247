"""What a floor's slowing is known to, from putts that were heard to meet two marks."""

import pytest

from pycore.hear.pace import Run, floor_of


def test_what_chance_leaves_unsure_goes_down_with_the_number_of_putts():
    """The variance of a mean of n alike is one n-th of one's; what marks leave unsure is common to all of them."""
    launch, slowing = 2.0, 0.55
    run = Run(tuple((launch * t - slowing * t * t / 2, t) for t in (0.5, 2.0)))
    one, two, three = (floor_of([run] * n, None) for n in (1, 2, 3))
    assert [one.slowing, two.slowing, three.slowing] == pytest.approx([slowing] * 3, rel=1e-3)
    assert (one.sd**2 - three.sd**2) / (one.sd**2 - two.sd**2) == pytest.approx((1 - 1 / 3) / (1 - 1 / 2))
