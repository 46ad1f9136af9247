"""Constants of the ball, the hole and the green: value, unit, source."""

GRAVITY = 9.80665  # m/s2; standard gravity, CGPM 1901
ROLLING = 5 / 7  # share of a force that speeds up a sphere rolling without slip; textbook mechanics
BALL_RADIUS = 0.04267 / 2  # m; Equipment Rules (R&A/USGA): diameter not less than 42.67 mm
HOLE_RADIUS = 0.054  # m; Rules of Golf, Definitions: diameter 108 mm
STIMPMETER_SPEED = 1.83  # m/s; speed at which a ball leaves the bar: Holmes 1991, Penner 2002
FLAGSTICK = 2.13  # m; height of a flagstick: 7 ft, common practice (the Rules give none), from memory
CAPTURE_SPEED = 1.63  # m/s; fastest ball that a level hole takes on its centre: Penner 2002, Eq. 23
