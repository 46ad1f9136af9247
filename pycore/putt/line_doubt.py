"""How sure a read on a surveyed green is: what the survey leaves open along the ball's path, carried to aim and pace.

To first order the aim and the launch are weighted sums of what the tilt is off by along the path. A tilt across the path,
dg_n over a length dl, turns the ball by G dg_n dl / v^2 and so moves it at the hole by that times the way left. A tilt along
it changes what the ball has to bring, and so its speed before, and so what the tilt that is known does to it. G = (5/7) g.
That the moved ball meets another tilt is left out: it is of second order. Equations of motion: Penner 2002.
"""

from cmath import rect
from dataclasses import dataclass
from itertools import pairwise

from pycore.constants import GRAVITY, ROLLING
from pycore.green.survey import Survey
from pycore.green.surveyed import Surveyed
from pycore.putt.putt import Putt
from pycore.putt.solve import Read

PIECES = 12  # of the path
PULL = ROLLING * GRAVITY


@dataclass(frozen=True)
class Spread:
    """Standard deviations of the aim (rad) and of the launch speed (as a fraction of it)."""

    aim: float
    launch: float


def spread(putt: Putt, found: Read, green: Surveyed, survey: Survey) -> Spread:
    """What ``survey``, of which ``green`` is made, leaves open of the read ``found``."""
    roll = found.roll
    left = roll.share_left(putt.finish(roll).s)
    states = [roll.at(roll.s_left(1 - (1 - left) * i / PIECES)) for i in range(PIECES + 1)]
    places, across, along = [], [], []
    by_speed = 0.0  # what a square of the speed more along a piece moves the ball at the hole, summed from the ball on
    for one, other in pairwise(states):
        x, y = (one.x + other.x) / 2, (one.y + other.y) / 2
        length = abs(complex(other.x - one.x, other.y - one.y))
        squared = (one.speed**2 + other.speed**2) / 2
        way = rect(1.0, (one.heading + other.heading) / 2)
        fall = complex(*putt.surface.downhill(x, y)) * way.conjugate()
        lever = PULL * length / squared * (putt.distance - x)
        by_speed += lever * fall.imag / squared
        places.append(green.ball + complex(x, y) * green.line)
        across.append((lever * 1j + 2 * PULL * length * by_speed) * way * green.line)
        along.append(PULL * length * way * green.line)
    # what lies past the hole asks for speed too
    way = rect(1.0, found.hole.heading) * green.line
    places.append(green.ball + complex(found.hole.x, found.hole.y) * green.line)
    across.append(2 * PULL * putt.past * by_speed * way)
    along.append(PULL * putt.past * way)
    (_, aside), (_, more) = survey.tell(places, across, along)
    return Spread(aside**0.5 / putt.distance, more**0.5 / found.launch**2)
