"""What putts tell of start, roll and alignment together, and what a gate adds."""

from math import inf, radians

import numpy as np
import pytest

from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.putt.solve import solve
from pycore.record.findings import ALIGNMENT, BREAK, PACE, START_LINE, TILT
from pycore.record.opening import opening
from pycore.record.player import Holed, Miss, fit, fit_with_lines


@pytest.fixture(scope="module")
def window():
    """The opening of a putt of 3 m over 2 %."""
    found = Putt(3.0, Surface(Station.measured(0.0, 2.0, 70.0)), 10.0, 0.3)
    return opening(found, solve(found))


def test_putts_without_the_balls_line_sharpen_those_with_it():
    """Of the 200 the start is known to the sum of both errors, of the 20 to each."""
    rng = np.random.default_rng(5)
    lines, stroke = rng.normal(0.006, 0.01, 220), rng.normal(-0.004, 0.016, 220)
    rolls = rng.normal(0.02, 0.07, 220)
    priors = [START_LINE, PACE, BREAK, TILT, ALIGNMENT]
    unlined = [Miss(*each) for each in zip((lines + stroke)[20:], rolls[20:], strict=True)]
    lined = [Miss(*each) for each in zip(stroke[:20], rolls[:20], strict=True)]
    few, all_of_them = (fit_with_lines((some, []), (lined, []), lines[:20].tolist(), priors) for some in ([], unlined))
    for skill, truth in ((0, (-0.004, 0.016)), (1, (0.02, 0.07)), (4, (0.006, 0.01))):
        sharp, blunt = all_of_them.skill(skill), few.skill(skill)
        for of, ends in enumerate((sharp.bias, sharp.sd)):
            assert ends.low < truth[of] < ends.high
        assert sharp.bias.high - sharp.bias.low < blunt.bias.high - blunt.bias.low


def test_a_gate_that_is_touched_tells_the_side_of_a_holed_putt(window):
    untold, left = (
        fit(([], [Holed(window, 0.0, *gate)] * 20), [START_LINE, PACE, BREAK, TILT]).skill(0).bias for gate in ((), (0.0, inf))
    )
    assert left.low > untold.low
    assert left.low > 0


def test_a_record_that_cannot_be_is_no_news(window):
    """A putt meant 40 degrees aside and holed all the same was not logged as it was."""
    good = [Miss(*each) for each in np.random.default_rng(3).normal([0.01, 0.02], [0.02, 0.07], (40, 2))]
    honest = fit((good, []), [START_LINE, PACE, BREAK, TILT]).skill(0).bias
    odd = fit((good, [Holed(window, radians(40.0))]), [START_LINE, PACE, BREAK, TILT]).skill(0).bias
    assert odd.value == pytest.approx(honest.value, abs=radians(0.01))
