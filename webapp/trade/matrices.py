"""Little linear algebra, in steps that phone and book take alike. ``static/trade/still/matrices.js`` is the same."""

from math import sqrt

Vector = list[float]
Matrix = list[list[float]]
LEAST = 1e-12  # a square that rounding has made less than nothing


def dot(one: Vector, other: Vector) -> float:
    """Return the sum of products, added one by one: Python's own sum() adds with more care than the phone's."""
    total = 0.0
    for i in range(len(one)):
        total += one[i] * other[i]
    return total


def solve(matrix: Matrix, values: Vector) -> Vector:
    """Return what a symmetric, positive matrix takes to the values (Cholesky)."""
    return _back(_lower(matrix), values)


def inverse(matrix: Matrix) -> Matrix:
    """Return the inverse of a symmetric, positive matrix."""
    lower, size = _lower(matrix), range(len(matrix))
    return [_back(lower, [1.0 if i == j else 0.0 for j in size]) for i in size]


def _lower(matrix: Matrix) -> Matrix:
    lower = [[0.0] * len(matrix) for _ in matrix]
    for i in range(len(matrix)):
        for j in range(i + 1):
            left = matrix[i][j]
            for k in range(j):
                left -= lower[i][k] * lower[j][k]
            lower[i][j] = sqrt(max(left, LEAST)) if i == j else left / lower[j][j]
    return lower


def _back(lower: Matrix, values: Vector) -> Vector:
    found: Vector = []
    for i in range(len(lower)):
        left = values[i]
        for k in range(i):
            left -= lower[i][k] * found[k]
        found.append(left / lower[i][i])
    for i in range(len(lower) - 1, -1, -1):
        left = found[i]
        for k in range(i + 1, len(lower)):
            left -= lower[k][i] * found[k]
        found[i] = left / lower[i][i]
    return found
