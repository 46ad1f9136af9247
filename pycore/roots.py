"""Zeros and peaks of a function of one variable."""

from collections.abc import Callable
from itertools import count

from pycore.errors import BracketError

Function = Callable[[float], float]

PATIENCE = 30  # interpolations, after which rounding is taken to have made the function too rough for them


def zero(f: Function, a: float, b: float, fa: float, fb: float, tolerance: float) -> float:
    """Where ``f`` is zero between ``a`` and ``b``, whose values ``fa`` and ``fb`` differ in sign.

    Inverse quadratic interpolation where it is safe, halving where it is not; the result is within ``tolerance`` of a
    change of sign. Reference: T. R. Chandrupatla, Adv. Eng. Softw. 28(3):145-149, 1997.

    Raises
    ------
    BracketError : where they do not differ in sign, so that nothing says that there is a zero.
    """
    if fa == 0 or fb == 0:
        return b if fa else a
    if not (fa < 0 < fb or fb < 0 < fa):
        raise BracketError(f"{fa:g} at {a:g} and {fb:g} at {b:g}")
    c, fc = a, fa
    share = 0.5
    for attempt in count():
        x = a + share * (b - a)
        fx = f(x)
        if (fx > 0) == (fa > 0):
            c, fc, a, fa = a, fa, x, fx
        else:
            c, fc, b, fb, a, fa = b, fb, a, fa, x, fx
        best = a if abs(fa) < abs(fb) else b
        limit = tolerance / abs(b - a) if b != a else 1.0
        if limit > 0.5 or fa == 0 or fb == 0:
            return best
        xi = (a - b) / (c - b)
        phi = (fa - fb) / (fc - fb)
        if attempt < PATIENCE and 1 - (1 - xi) ** 0.5 < phi < xi**0.5:
            share = fa / (fb - fa) * fc / (fb - fc) + (c - a) / (b - a) * fa / (fc - fa) * fb / (fc - fb)
            share = min(1 - limit, max(limit, share))
        else:
            share = 0.5
    raise AssertionError("counting never ends")


def glance(f: Function, x: float, step: float, tolerance: float) -> float | None:
    """A zero of ``f`` near ``x`` with ``f`` falling through it, by six secants at most; None where they do not settle."""
    before, x = x, x - step
    f_before, fx = f(before), f(x)
    for _ in range(6):
        if fx == f_before:
            return None
        rate = (fx - f_before) / (x - before)
        before, f_before = x, fx
        x -= fx / rate
        if abs(x - before) < tolerance:
            return x if rate < 0 else None
        if not 0 < x < 1:
            return None
        fx = f(x)
    return None


def peak(f: Function, x: float, step: float, enough: float, tolerance: float) -> tuple[float, float]:
    """The highest value of ``f`` near ``x``, and where it is: ``(x, value)``.

    Climbs in growing steps from ``x``, then lays parabolas through the best three points; returns at once where a value
    above ``enough`` is met, and otherwise when the points are ``tolerance`` apart or the parabola moves no more.
    """
    fx = f(x)
    if fx > enough:
        return x, fx
    left, right = x - step, x + step
    fleft, fright = f(left), f(right)
    for _ in range(40):
        if fx >= fleft and fx >= fright:
            break
        step *= 2
        if fright > fleft:
            left, fleft, x, fx = x, fx, right, fright
            right = x + step
            fright = f(right)
        else:
            right, fright, x, fx = x, fx, left, fleft
            left = x - step
            fleft = f(left)
    for _ in range(20):
        if fx > enough or right - left < tolerance:
            break
        bend = (fleft - fx) / (left - x) - (fright - fx) / (right - x)
        slope = (fleft - fx) / (left - x) * (x - right) - (fright - fx) / (right - x) * (x - left)
        t = x - slope / (2 * bend) if bend else x
        wider = 1 if right - x > x - left else -1
        if not left < t < right:
            t = (x + (right if wider > 0 else left)) / 2
        elif abs(t - x) < tolerance / 4:
            # the parabola has settled: what lies close by shows whether it is the peak
            t = x + wider * tolerance / 3
        ft = f(t)
        if ft > fx:
            if t > x:
                left, fleft = x, fx
            else:
                right, fright = x, fx
            x, fx = t, ft
        elif t > x:
            right, fright = t, ft
        else:
            left, fleft = t, ft
    return x, fx
