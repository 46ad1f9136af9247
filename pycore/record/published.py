"""Make shares that were published, to lay beside a player's own."""

from pycore.units import FOOT

TOUR_SOURCE = "M. Broadie, Every Shot Counts, 2014 (secondary)"
TOUR = [(feet * FOOT, share) for feet, share in ((2, 0.99), (3, 0.96), (5, 0.77), (8, 0.50), (10, 0.40))]

BERRY_SOURCE = "D. Berry 1996, in A. Gelman and D. Nolan, Teaching Statistics 24(3):93-95, 2002"
_BERRY = (
    (2, 1443, 1346), (3, 694, 577), (4, 455, 337), (5, 353, 208), (6, 272, 149), (7, 256, 136), (8, 240, 111),
    (9, 217, 69), (10, 200, 67), (11, 237, 75), (12, 202, 52), (13, 192, 46), (14, 174, 54), (15, 167, 28),
    (16, 201, 27), (17, 195, 31), (18, 191, 33), (19, 147, 20), (20, 152, 24),
)  # fmt: skip
BERRY = [(feet * FOOT, made / tries) for feet, tries, made in _BERRY]
