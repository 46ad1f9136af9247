"""The engine's read in CPython against SciPy shooting the same putt, speed and answer."""

import time
from collections.abc import Callable
from functools import partial
from math import tan
from statistics import median

from bench.independent import Green, shoot
from bench.row import Row, milliseconds
from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.putt.solve import Read, read

PUTTS = [(distance, stimp) for distance in (2.0, 3.0, 5.0) for stimp in (9.0, 11.0)]
PAST = 0.3
PLANE = [(0.0, 2.0, 60.0)]
STATIONS = [(0.0, 1.0, 60.0), (1.0, 2.0, 90.0), (2.0, 2.5, 120.0)]
KINDS = (  # what, stations, at least so many times faster, within so many metres at the hole
    ("plane read", PLANE, 200, 1e-4),
    ("station read", STATIONS, 5, 5e-4),
)


def rows() -> list[Row]:
    result = []
    for what, stations, faster, within in KINDS:
        ours, theirs, apart = [], [], 0.0
        for distance, stimp in PUTTS:
            putt = Putt(distance, Surface(*(Station.measured(*station) for station in stations)), stimp, PAST)
            found = read(putt)
            assert isinstance(found, Read)
            green = Green(stimp, stations)
            aim = shoot(green, distance, PAST)[1]
            apart = max(apart, distance * abs(tan(found.aim) - tan(aim)))
            ours.append(_seconds(partial(read, putt), 20))
            theirs.append(_seconds(partial(shoot, green, distance, PAST), 1))
        mine, other = median(ours), median(theirs)
        result.append(Row(f"{what} in CPython", milliseconds(mine), f"SciPy {milliseconds(other)}", mine / other, 1 / faster))
        result.append(Row(f"{what}, aim at the hole", f"{apart * 1e3:.4f} mm", f"limit {within * 1e3:g} mm", apart / within, 1))
    return result


def _seconds(call: Callable[[], object], times: int) -> float:
    taken = []
    for _ in range(times):
        start = time.perf_counter()
        call()
        taken.append(time.perf_counter() - start)
    return min(taken)
