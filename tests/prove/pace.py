"""Putts in the mean that a pace takes, against putting out many times by numpy: putts on planes, for tour and amateur."""

import math
import random

import numpy as np

from bench import crowd
from prove import Proof, Row
from pycore.green.surface import Station, Surface
from pycore.putt import pace
from pycore.putt.chance import AMATEUR, TOUR
from pycore.putt.putt import Putt

PUTTS = 0.01
SHORT = 1
STROKES, FEW = 16384, 1024  # Sobol points; of the short form
HABIT = 0.3048  # m past the hole; where second putts are meant to run, as in the engine
NEAREST = 0.2  # m; from nearer a putt counts as one from here
MOST = 3  # putts that may miss; the next counts as holed


def putting_out(
    slope: complex, stimp_ft: float, distance: float, past: float, golfer: crowd.Golfer, seed: int, strokes: int
) -> float:
    """Putts in the mean until the ball is in the hole, each read and struck anew from where the last one stopped."""
    ahead = np.full(strokes, distance, complex)  # from ball to hole, of the balls that are not holed yet
    putts = 0.0
    for again in range(MOST):
        away = np.maximum(np.abs(ahead), NEAREST)
        way = ahead / np.abs(ahead)
        tilt = slope * way.conjugate()  # as seen along each ball's own line

        def green(place: crowd.Places, tilt: crowd.Places = tilt) -> crowd.Places:
            return np.broadcast_to(tilt, place.shape)

        along, across, line, length = crowd.normals(strokes, 4, seed + 100 * again)[:, : ahead.size]
        misread = golfer.tilt * (along + 1j * across)
        launch, aim = crowd.read(green, stimp_ft, away, HABIT if again else past, misread)
        launch = launch * np.sqrt(np.maximum(0.01, 1 + golfer.pace * length))
        rolls = crowd.roll(green, stimp_ft, away, (launch, aim + golfer.line * line))
        putts += ahead.size / strokes
        ahead = ((away - rolls.rest) * way)[~rolls.holed]
    return putts + ahead.size / strokes


def finished(costs: object) -> list[pace.Cost]:
    while True:
        try:
            next(costs)  # type: ignore[call-overload]
        except StopIteration as done:
            return list(done.value)


def prove(cases: int = 12) -> Proof:
    chance = random.Random(14)
    strokes = STROKES if cases > SHORT else FEW
    off: list[float] = []
    while len(off) < cases:
        distance, slope, fall = chance.uniform(1.5, 12), chance.uniform(0, 3), chance.uniform(0, 360)
        player = (TOUR, AMATEUR)[len(off) % 2]
        green = Surface(Station.measured(0.0, slope, fall))
        found = finished(pace.costs(Putt(distance, green, 11.0, pace.PASTS[0]), player))
        told = found[chance.randrange(1, len(found))]
        golfer = crowd.Golfer(player.start_line_sd, player.pace_sd, player.slope_sd)
        tilt = slope / 100 * np.exp(-1j * np.radians(fall))
        off.append(told.putts - putting_out(complex(tilt), 11.0, distance, told.past, golfer, len(off), strokes))
        yield len(off) / cases
    return [
        Row("largest difference, putts", max(map(abs, off)), high=PUTTS),
        Row("difference, rms", math.sqrt(float(np.mean(np.square(off))))),
        Row("difference, mean", float(np.mean(off))),
    ]
