"""The little linear algebra of the fit, by numpy."""

import numpy as np
import pytest

from webapp.trade.matrices import dot, inverse, solve


@pytest.mark.parametrize("size", [1, 3, 5])
def test_inverse_and_solution_of_positive_matrices(size: int) -> None:
    dice = np.random.default_rng(size)
    root = dice.normal(size=(size, size))
    matrix = root @ root.T + np.eye(size)
    values = list(dice.normal(size=size))
    assert np.array(inverse(matrix.tolist())) == pytest.approx(np.linalg.inv(matrix))
    assert solve(matrix.tolist(), values) == pytest.approx(np.linalg.solve(matrix, values))


def test_the_sum_of_products() -> None:
    assert dot([1.0, 2.0, 3.0], [4.0, -5.0, 6.0]) == 12.0
