"""From where a ball stopped back to how it was struck."""

from cmath import phase
from dataclasses import replace
from math import inf

from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.putt.solve import solve
from pycore.putt.strike import Slopes, Strike, corrected

STEEPEST = 0.9  # of rho; the steepest plane from which the search on a bent green starts


def strike_to(putt: Putt, x: float, y: float, slopes: Slopes | None = None) -> Strike | None:
    """The strike after which the ball stops at x, y (m) from where it lay, hole covered; None where no ball stops there.

    On a plane a stop is a hole that the ball reaches with its last breath, so the read's own solution serves; on a bent
    green corrections follow, from the plane that is most like it; ``slopes`` are those of a like strike.
    """
    stop = complex(x, y)
    if isinstance(putt.surface, Surface) and putt.surface.is_plane:
        return _on_plane(putt, putt.surface.stations[0], stop)
    mean = putt.surface.mean(abs(stop))
    guess = _on_plane(putt, replace(mean, slope=min(mean.slope, STEEPEST * putt.rho)), stop)

    def miss(strike: Strike) -> complex | None:
        roll = putt.roll(strike.launch, strike.aim)
        if roll.runs_away:
            return None
        end = roll.at(inf)
        return complex(end.x, end.y) - stop

    return corrected(guess._replace(slopes=slopes), miss, putt.exactness) if guess else None


def _on_plane(putt: Putt, plane: Station, stop: complex) -> Strike | None:
    turned = Surface(replace(plane, downhill=plane.downhill - phase(stop)))
    found = solve(Putt(abs(stop), turned, putt.stimp_ft, 0.0))
    return Strike(found.launch, found.aim + phase(stop)) if found else None
