"""The four skills behind a record: alignment, start line, pace and reading."""

from collections.abc import Sequence
from math import radians, sqrt

from pycore.putt.chance import AMATEUR, TOUR
from pycore.record.cost import Name
from pycore.record.logged import Evidence, apart, off_the_ball_line
from pycore.record.player import Belief, Skill, fit, fit_plain

APART = 10  # putts with the ball's line recorded, from which alignment is told from the stroke

# Spreads between the tour and the amateur preset. The bounds of a bias, and all of alignment and reading, are our own
# assumptions, wide enough that some twenty putts outweigh them
START_LINE = Belief(radians(1.5), sqrt(TOUR.start_line_sd * AMATEUR.start_line_sd), 0.6)
PACE = Belief(0.15, sqrt(TOUR.pace_sd * AMATEUR.pace_sd), 0.6)
ALIGNMENT = Belief(radians(1.5), radians(0.8), 0.8)
READING = Belief(0.5, 0.2, 0.8)


def skills(found: Sequence[Evidence]) -> dict[Name, Skill]:
    """The skills that these putts say something of.

    Start line and alignment are one, under the name of start line, until the ball's line is known for ``APART`` putts;
    from then on both rest on those putts alone.
    """
    strokes = fit(*apart([each.strike for each in found]), START_LINE, PACE)
    lines = [(each, line) for each in found if (line := each.logged.line_error) is not None]
    skills: dict[Name, Skill] = {}
    if len(lines) < APART:
        skills["start_line"] = strokes.start_line_skill()
    else:
        off_the_line = fit(*apart([off_the_ball_line(each) for each, _ in lines]), START_LINE, PACE)
        skills["start_line"] = off_the_line.start_line_skill()
        skills["alignment"] = fit_plain([line for _, line in lines], ALIGNMENT)
    skills["pace"] = strokes.pace_skill()
    read = [each.reading for each in found if each.reading is not None]
    if read:
        skills["reading"] = fit_plain(read, READING)
    return skills
