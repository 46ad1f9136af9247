"""From where a ball stopped back to how it was struck."""

from cmath import phase
from dataclasses import replace
from math import exp, inf
from typing import NamedTuple

from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.putt.solve import solve

CLOSE = 1e-5  # m; how near to the stop a strike on a bent green has to end
NUDGE = 1e-4  # rad, and share of the speed
LARGEST = 0.2  # rad plus share of the speed; the largest correction at a time
MOST_CORRECTIONS = 12
STEEPEST = 0.9  # of rho; the steepest plane from which the search on a bent green starts


class Strike(NamedTuple):
    """Launch speed (m/s) and start direction (rad) of a ball."""

    launch: float
    aim: float


def strike_to(putt: Putt, x: float, y: float) -> Strike | None:
    """The strike after which the ball stops at x, y (m) from where it lay, hole covered; None where no ball stops there.

    On a plane a stop is a hole that the ball reaches with its last breath, so the read's own solution serves; on a bent
    green Newton's corrections in two dimensions follow, from the plane that is most like it.
    """
    stop = complex(x, y)
    if isinstance(putt.surface, Surface) and putt.surface.is_plane:
        return _on_plane(putt, putt.surface.stations[0], stop)
    mean = putt.surface.mean(abs(stop))
    guess = _on_plane(putt, replace(mean, slope=min(mean.slope, STEEPEST * putt.rho)), stop)
    return _corrected(putt, guess, stop) if guess else None


def _on_plane(putt: Putt, plane: Station, stop: complex) -> Strike | None:
    turned = Surface(replace(plane, downhill=plane.downhill - phase(stop)))
    found = solve(Putt(abs(stop), turned, putt.stimp_ft, 0.0))
    return Strike(found.launch, found.aim + phase(stop)) if found else None


def _corrected(putt: Putt, strike: Strike, stop: complex) -> Strike | None:
    for _ in range(MOST_CORRECTIONS):
        off = _off(putt, strike, stop)
        if off is None or abs(off) < CLOSE:
            return None if off is None else strike
        turned, harder = _off(putt, _moved(strike, NUDGE, 0.0), stop), _off(putt, _moved(strike, 0.0, NUDGE), stop)
        if turned is None or harder is None:
            return None
        by_aim, by_launch = (turned - off) / NUDGE, (harder - off) / NUDGE
        area = _cross(by_aim, by_launch)
        if not area:
            return None
        d_aim, d_launch = _cross(by_launch, off) / area, -_cross(by_aim, off) / area
        damping = min(1.0, LARGEST / (abs(d_aim) + abs(d_launch)))
        strike = _moved(strike, damping * d_aim, damping * d_launch)
    return None


def _off(putt: Putt, strike: Strike, stop: complex) -> complex | None:
    roll = putt.roll(*strike)
    if roll.runs_away:
        return None
    end = roll.at(inf)
    return complex(end.x, end.y) - stop


def _moved(strike: Strike, d_aim: float, d_launch: float) -> Strike:
    return Strike(strike.launch * exp(d_launch), strike.aim + d_aim)


def _cross(a: complex, b: complex) -> float:
    return (a.conjugate() * b).imag
