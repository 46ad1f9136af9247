"""A green's relief baked to a grid: heights whose gradient is continuous, cheap to ask for at any place.

In each cell the drop is the bicubic with the drop, its two derivatives and their mixed one at the four corners (Hermite's
form), so the downhill vector is everywhere the gradient of one height field, and continuous; the derivatives are those that
make it bend without a jump. The outermost lines of the grid lie far out and on a plane, which goes on beyond them.
"""

from bisect import bisect_right
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from functools import cached_property

type Corner = tuple[float, float, float, float]
"""Drop (m), its derivatives along x and y, and the mixed one, 1/m."""

END = (-25 / 12, 4.0, -3.0, 4 / 3, -1 / 4)  # weights of five values for the slope at the first, times their step
FAR = 8.0  # m; from the baked part to where the plane begins


@dataclass(frozen=True, eq=False)
class Relief:
    """``xs`` and ``ys``: the grid's lines; ``corners[i][j]`` at xs[i], ys[j]; ``plane``: downhill vector beyond."""

    xs: Sequence[float]
    ys: Sequence[float]
    corners: Sequence[Sequence[Corner]]
    plane: complex
    cells: dict[tuple[int, int], tuple[float, ...]] = field(default_factory=dict)

    def at(self, x: float, y: float) -> tuple[float, float, float]:
        """Drop (m) and downhill vector at a place."""
        i, j = bisect_right(self.xs, x) - 1, bisect_right(self.ys, y) - 1
        if not (0 <= i < len(self.xs) - 1 and 0 <= j < len(self.ys) - 1):
            corner = self.corners[0][0][0]
            gx, gy = self.plane.real, self.plane.imag
            return corner + gx * (x - self.xs[0]) + gy * (y - self.ys[0]), gx, gy
        cell = self.cells.get((i, j)) or self._cell(i, j)
        a0, a1, a2, a3, b0, b1, b2, b3, c0, c1, c2, c3, d0, d1, d2, d3, wide, high = cell
        u, v = (x - self.xs[i]) / wide, (y - self.ys[j]) / high
        # cubics in v, then one in u
        a = a0 + v * (a1 + v * (a2 + v * a3))
        b = b0 + v * (b1 + v * (b2 + v * b3))
        c = c0 + v * (c1 + v * (c2 + v * c3))
        d = d0 + v * (d1 + v * (d2 + v * d3))
        a_v = a1 + v * (2 * a2 + v * 3 * a3)
        b_v = b1 + v * (2 * b2 + v * 3 * b3)
        c_v = c1 + v * (2 * c2 + v * 3 * c3)
        d_v = d1 + v * (2 * d2 + v * 3 * d3)
        return (
            a + u * (b + u * (c + u * d)),
            (b + u * (2 * c + u * 3 * d)) / wide,
            (a_v + u * (b_v + u * (c_v + u * d_v))) / high,
        )

    def downhill(
        self, origin: complex, line: complex, share: float, plane: complex
    ) -> Callable[[float, float], tuple[float, float]]:
        """The downhill vector by place, both in axes that begin at ``origin`` on the map and go along ``line`` (of length 1):
        ``share`` of the relief's, and that of ``plane``.

        A roll asks for it a thousand times: so what does not hang on the place is worked out here, and the rest is of plain
        numbers.
        """
        rows, columns = len(self.xs) - 3, len(self.ys) - 3  # cells of the inner grid
        low = complex(self.xs[1], self.ys[1])
        wide, high = self.xs[2] - self.xs[1], self.ys[2] - self.ys[1]
        u0, v0 = (origin - low).real / wide, (origin - low).imag / high
        right, up, along, left = share * line.real, share * line.imag, plane.real, plane.imag
        ux, uy, vx, vy = line.real / wide, line.imag / wide, line.imag / high, line.real / high
        cells: list[list[tuple[float, ...] | None]] = self.slopes

        def downhill(x: float, y: float) -> tuple[float, float]:
            u, v = u0 + x * ux - y * uy, v0 + x * vx + y * vy
            if 0 <= u < rows and 0 <= v < columns:
                i, j = int(u), int(v)
                (b0, b1, b2, b3, c0, c1, c2, c3, d0, d1, d2, d3, e0, e1, e2, f0, f1, f2, g0, g1, g2, h0, h1, h2) = cells[i][
                    j
                ] or self._slopes(i, j)
                u -= i
                v -= j
                # cubics in v, then a parabola in u; parabolas in v, then a cubic in u
                gx = (
                    b0
                    + v * (b1 + v * (b2 + v * b3))
                    + u * (c0 + v * (c1 + v * (c2 + v * c3)) + u * (d0 + v * (d1 + v * (d2 + v * d3))))
                )
                gy = (
                    e0
                    + v * (e1 + v * e2)
                    + u * (f0 + v * (f1 + v * f2) + u * (g0 + v * (g1 + v * g2) + u * (h0 + v * (h1 + v * h2))))
                )
            else:
                place = origin + complex(x, y) * line
                _, gx, gy = self.at(place.real, place.imag)
            return along + gx * right + gy * up, left + gy * right - gx * up

        return downhill

    @cached_property
    def slopes(self) -> list[list[tuple[float, ...] | None]]:
        """Coefficients of the downhill vector in each cell of the inner grid, once it has been asked for."""
        return [[None] * (len(self.ys) - 3) for _ in range(len(self.xs) - 3)]

    def _slopes(self, i: int, j: int) -> tuple[float, ...]:
        """Coefficients of the downhill vector in a cell of the inner grid: derivatives of its bicubic."""
        *cubics, wide, high = self.cells.get((i + 1, j + 1)) or self._cell(i + 1, j + 1)
        by_x = [power * value / wide for power in (1, 2, 3) for value in cubics[4 * power : 4 * power + 4]]
        by_y = [power * cubics[4 * k + power] / high for k in range(4) for power in (1, 2, 3)]
        made = self.slopes[i][j] = (*by_x, *by_y)
        return made

    def _cell(self, i: int, j: int) -> tuple[float, ...]:
        """Coefficients of a cell's bicubic, and its sides."""
        wide, high = self.xs[i + 1] - self.xs[i], self.ys[j + 1] - self.ys[j]
        rows = []
        for near, mixed in ((0, 2), (1, 3)):  # the drop and its y-derivative; the x-derivative and the mixed one
            scale = wide if near else 1.0
            for k in (i, i + 1):
                low, top = self.corners[k][j], self.corners[k][j + 1]
                rows.append(_cubic(scale * low[near], scale * high * low[mixed], scale * top[near], scale * high * top[mixed]))
        low_, top_, low_x, top_x = rows
        columns = [_cubic(*values) for values in zip(low_, low_x, top_, top_x, strict=True)]
        cell = (*(column[power] for power in range(4) for column in columns), wide, high)
        self.cells[i, j] = cell
        return cell


def _cubic(value: float, slope: float, end: float, end_slope: float) -> tuple[float, float, float, float]:
    """Coefficients of the cubic over 0 to 1 with these values and slopes."""
    return value, slope, 3 * (end - value) - 2 * slope - end_slope, 2 * (value - end) + slope + end_slope


def bake(drop: Callable[[complex], float], low: complex, high: complex, step: float, plane: complex) -> Relief:
    """The relief of ``drop`` over the box from ``low`` to ``high``, its cells about ``step`` wide: a bicubic spline."""
    xs, ys = (_lines(*ends, step) for ends in ((low.real, high.real), (low.imag, high.imag)))
    inner = [[drop(complex(x, y)) for y in ys] for x in xs]
    by_y = [_slopes(column, ys[1] - ys[0]) for column in inner]
    by_x, mixed = (
        [list(row) for row in zip(*(_slopes(row, xs[1] - xs[0]) for row in zip(*values, strict=True)), strict=True)]
        for values in (inner, by_y)
    )
    ends = [column[i] - _on(plane, x, ys[i]) for column, x in ((inner[0], xs[0]), (inner[-1], xs[-1])) for i in (0, -1)]
    offset = sum(ends) / len(ends)
    xs, ys = [xs[0] - FAR, *xs, xs[-1] + FAR], [ys[0] - FAR, *ys, ys[-1] + FAR]

    def corner(i: int, j: int) -> Corner:
        if 0 < i < len(xs) - 1 and 0 < j < len(ys) - 1:
            return inner[i - 1][j - 1], by_x[i - 1][j - 1], by_y[i - 1][j - 1], mixed[i - 1][j - 1]
        return offset + _on(plane, xs[i], ys[j]), plane.real, plane.imag, 0.0

    return Relief(xs, ys, [[corner(i, j) for j in range(len(ys))] for i in range(len(xs))], plane)


def _slopes(values: Sequence[float], step: float) -> list[float]:
    """Slopes of the cubic spline through values a step apart, its ends as five values tell them (to the fourth order).

    C. de Boor, A Practical Guide to Splines, 1978, ch. IV: m[i-1] + 4 m[i] + m[i+1] = 3 (f[i+1] - f[i-1]) / step.
    """
    first, last = (sum(w * f for w, f in zip(END, some, strict=False)) / step for some in (values, values[::-1]))
    slopes, ahead = [first], [0.0]
    for before, after in zip(values, values[2:], strict=False):
        pivot = 4 - ahead[-1]
        slopes.append((3 * (after - before) / step - slopes[-1]) / pivot)
        ahead.append(1 / pivot)
    slopes.append(-last)
    for i in range(len(values) - 2, 0, -1):
        slopes[i] -= ahead[i] * slopes[i + 1]
    return slopes


def _on(plane: complex, x: float, y: float) -> float:
    return plane.real * x + plane.imag * y


def _lines(low: float, high: float, step: float) -> list[float]:
    cells = max(len(END) - 1, round((high - low) / step))
    return [low + (high - low) * i / cells for i in range(cells + 1)]
