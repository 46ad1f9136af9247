"""Quantities that several requests ask for: unit, range and meaning of each, once."""

from typing import Annotated

from pycore.fields import Doc, Range

# A putt and its green
Distance = Annotated[float, Range(0.3, 30.0, "m"), Doc("distance", "from the ball to the hole's centre")]
Stimp = Annotated[float, Range(5.0, 15.0, "ft"), Doc("green speed", "feet on the Stimpmeter")]
Slope = Annotated[float, Range(0.0, 8.0, "%"), Doc("slope", "rise over run, down the fall line")]
Fall = Annotated[
    float,
    Range(-360.0, 360.0, "degrees"),
    Doc("falls", "where the green runs down to, clockwise from the line: 0 straight downhill, 90 to the right, 180 uphill"),
]
Past = Annotated[float, Range(0.0, 1.0, "m"), Doc("pace", "how far past the hole's centre the ball would roll, hole covered")]

# A strike and a stroke
Launch = Annotated[float, Range(0.05, 15.0, "m/s"), Doc("launch speed", "of the ball as it begins to roll")]

# A floor under the feet or the phone
Tilt = Annotated[float, Range(0.0, 20.0, "%"), Doc("slope", "rise over run, where it is steepest")]
