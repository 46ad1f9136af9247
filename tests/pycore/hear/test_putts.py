"""Which sounds are a putt, of sounds put there by hand."""

import pytest

from pycore.hear.clicks import Click
from pycore.hear.pace import Floor
from pycore.hear.putts import row
from tests.sounds import slowing, time_to


def click(at):
    return Click(at, (0.3, 0.3, 0.3), round(1000 * at), 60.0, "click", strike=True)


@pytest.mark.parametrize(("gap", "second", "met"), [(0.06, 1.60, []), (0.08, 1.63, [[0, 1]])])
def test_sounds_60_ms_apart_are_one_mark_that_rattles(gap, second, met):
    """Either could be a ball of 1.9 m/s that meets the second mark, by its moments."""
    sounds = [click(1.0), click(1.8), click(1.8 + gap)]
    assert [[mark for mark, _ in putt.met] for putt in row(sounds, (1.5, second), None, None)] == met


def test_a_ball_that_the_floor_would_just_have_stopped_may_have_met_the_mark():
    """It runs 3.05 m at 9.3 ft, which at the 9 ft told are 2.95: short of the mark at 3, by less than floors differ."""
    launch = (2 * slowing(9.3) * 3.05) ** 0.5
    marks = (1.4, 3.0)
    sounds = [click(1.0), *(click(1.0 + time_to(mark, launch, 9.3)) for mark in marks)]
    (putt,) = row(sounds, marks, Floor(slowing(9.0), 0.0), None)
    assert [mark for mark, _ in putt.met] == [0, 1]


@pytest.mark.parametrize(
    ("slower", "sd", "met"),
    [(1.06, 0.0, [0, 1]), (0.8, 0.0, [0, 1]), (1.3, 0.0, [0]), (0.6, 0.0, [0]), (1.3, 0.1, [0, 1]), (1.6, 0.1, [0])],
)
def test_a_second_mark_is_met_when_floors_differ_so_much_and_no_more(slower, sd, met):
    """By how much the floor slows the ball more than told. From putt to putt it may be a few times 6 % (a lane's nap and
    wear; assumed), and as much more as it is not known."""
    marks = (1.4, 3.0)
    told = slowing(9.0)
    sounds = [click(1.0), *(click(1.0 + time_to(mark, 2.6, 9.0 / slower)) for mark in marks)]
    (putt,) = row(sounds, marks, Floor(told, sd * told), None)
    assert [mark for mark, _ in putt.met] == met


@pytest.mark.parametrize(("launch", "met"), [(2.0, 1), (5.8, 1), (6.4, 0), (9.0, 0)])
def test_nothing_that_is_faster_than_a_putt_of_30_m_is_one(launch, met):
    """Such a putt leaves at 5.7 m/s on a green of 10 ft: v^2 = 2 a S."""
    assert (2 * slowing(10) * 30) ** 0.5 == pytest.approx(5.7, abs=0.1)
    sounds = [click(1.0), click(1.0 + time_to(1.5, launch, 10))]
    assert len(row(sounds, (1.5,), Floor(slowing(10), 0.0), None)) == met


@pytest.mark.parametrize(("late", "met"), [(0.0, [0, 1, 2]), (-0.35, [0, 1])])
def test_a_third_sound_too_soon_for_a_ball_that_slows_is_not_its_mark(late, met):
    marks = (1.0, 2.0, 3.0)
    times = [time_to(mark, 2.6, 9.0) for mark in marks]
    sounds = [click(1.0), *(click(1.0 + each) for each in (*times[:2], times[2] + late))]
    (putt,) = row(sounds, marks, None, None)
    assert [mark for mark, _ in putt.met] == met
