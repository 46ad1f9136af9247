"""Symmetric systems of equations by Cholesky's factor: what a regression asks for, and no more.

Matrices are lists of rows; of a symmetric one, and of a factor, a row goes up to the diagonal and no further.
"""

from collections.abc import Sequence
from math import sqrt, sumprod

Row = list[float]


def cholesky(matrix: Sequence[Row]) -> list[Row]:
    """The lower factor L of a symmetric positive matrix: L L^T.

    Raises
    ------
    ValueError : where the matrix is not positive.
    """
    below: list[Row] = []  # the diagonal
    diagonal: Row = []
    for given in matrix:
        row: Row = []
        for value, other, own in zip(given, below, diagonal, strict=False):
            row.append((value - sumprod(row, other)) / own)
        diagonal.append(sqrt(given[-1] - sumprod(row, row)))
        below.append(row)
    return [[*row, own] for row, own in zip(below, diagonal, strict=True)]


def forward(factor: Sequence[Row], right: Sequence[float]) -> Row:
    """The x of L x = ``right``."""
    x: Row = []
    for row, value in zip(factor, right, strict=True):
        x.append((value - sumprod(x, row[:-1])) / row[-1])
    return x


def backward(factor: Sequence[Row], right: Sequence[float]) -> Row:
    """The x of L^T x = ``right``."""
    x = list(right)
    for i in range(len(x) - 1, -1, -1):
        row = factor[i]
        x[i] = value = x[i] / row[i]
        for j in range(i):
            x[j] -= value * row[j]
    return x


def inverse(factor: Sequence[Row]) -> list[Row]:
    """The inverse of L L^T, whole rows."""
    size = len(factor)
    columns = []  # of the inverse of L, from its diagonal down
    for j in range(size):
        column = [1 / factor[j][j]]
        for i in range(j + 1, size):
            row = factor[i]
            column.append(-sumprod(column, row[j:i]) / row[i])
        columns.append(column)
    result = [[0.0] * size for _ in range(size)]
    for i, own in enumerate(columns):
        for j in range(i + 1):
            result[i][j] = result[j][i] = sumprod(own, columns[j][i - j :])
    return result
