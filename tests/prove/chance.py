"""Make probability against many strokes by numpy, on random putts on planes and stations, for tour and amateur."""

import math
import random

import numpy as np

from bench import crowd
from prove import Proof, Row
from pycore.green.surface import Station, Surface
from pycore.putt.chance import AMATEUR, TOUR, make_probability
from pycore.putt.putt import Putt
from pycore.putt.solve import Read, read
from pycore.putt.window import window

POINT = 0.01
SHORT = 3
STROKES = 16384  # Sobol points; they tell a share to a quarter of a point or so


def prove(cases: int = 60) -> Proof:
    chance = random.Random(14)
    off: list[float] = []
    while len(off) < cases:
        distance, slope, fall = chance.uniform(0.6, 12), chance.uniform(0, 4), chance.uniform(0, 360)
        stimp_ft, past = chance.uniform(8, 12), chance.uniform(0.1, 0.6)
        stations = [(0.0, slope, fall)]
        if len(off) % 3 == 2:
            places = (0, distance / 2, distance)
            stations = [(x, min(6, abs(slope + chance.gauss(0, 0.7))), fall + chance.gauss(0, 25)) for x in places]
        putt = Putt(distance, Surface(*(Station.measured(*each) for each in stations)), stimp_ft, past)
        found = read(putt)
        if not isinstance(found, Read):
            continue
        player = (TOUR, AMATEUR)[len(off) % 2]
        golfer = crowd.Golfer(player.start_line_sd, player.pace_sd, player.slope_sd)
        many = crowd.make_share(crowd.green(stations), stimp_ft, distance, past, golfer, STROKES, len(off))
        off.append(make_probability(putt, found, window(putt, found), player) - many)
        yield len(off) / cases
    return [
        Row("largest difference", max(map(abs, off)), high=POINT),
        Row("difference, rms", math.sqrt(float(np.mean(np.square(off))))),
    ]
