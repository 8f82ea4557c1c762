"""The small numerical pieces by themselves: against numpy and decimal arithmetic, one number and many alike."""

from decimal import ROUND_HALF_UP, Decimal

import numpy as np
import pytest

from tests.trade.refusal_words import words_of
from webapp.trade.errors import OutOfDomain
from webapp.trade.numeric import as_number, brief, check_range, fixed, interpolate, invert, polynomial, round_half_up

RISING, FALLING = (1.0, 2.0, 0.5, 0.25), (3.0, -1.0, -0.5, -0.25)


@pytest.mark.parametrize("coefficients", [RISING, FALLING])
def test_inverting_a_polynomial_gives_back_what_went_in(coefficients: tuple[float, ...]) -> None:
    xs = np.linspace(0.0, 2.0, 41)
    values = np.polynomial.polynomial.polyval(xs, coefficients)
    assert polynomial(coefficients, xs) == pytest.approx(values, rel=1e-14)
    assert invert(coefficients, values, 0.0, 2.0) == pytest.approx(xs, abs=1e-10)
    for x, value in zip(xs, values, strict=True):
        one = invert(coefficients, float(value), 0.0, 2.0)
        assert isinstance(one, float)
        assert one == pytest.approx(x, abs=1e-10)


@pytest.mark.parametrize("coefficients", [RISING, FALLING])
def test_what_a_polynomial_never_reaches_has_no_inverse(coefficients: tuple[float, ...]) -> None:
    ends = [polynomial(coefficients, x) for x in (0.0, 2.0)]
    span = abs(ends[1] - ends[0])
    for beyond in (min(ends) - 1e-3 * span, max(ends) + 1e-3 * span):
        assert np.isnan(invert(coefficients, beyond, 0.0, 2.0))
        assert np.isnan(invert(coefficients, np.array([beyond]), 0.0, 2.0)).all()
    # A target that rounding puts past an end is that end.
    for end, x in zip(ends, (0.0, 2.0), strict=True):
        for nudge in (-1e-11 * span, 1e-11 * span):
            assert invert(coefficients, end + nudge, 0.0, 2.0) == pytest.approx(x, abs=1e-9)
            assert invert(coefficients, np.array([end + nudge]), 0.0, 2.0)[0] == pytest.approx(x, abs=1e-9)
        for nudge in (-1e-9 * span, 1e-9 * span):
            inside = min(ends) <= end + nudge <= max(ends)
            assert np.isnan(invert(coefficients, end + nudge, 0.0, 2.0)) != inside
            assert np.isnan(invert(coefficients, np.array([end + nudge]), 0.0, 2.0)[0]) != inside


def test_a_flat_beginning_is_found_by_halving() -> None:
    """x^3 has no slope at nought: Newton's step from there leads nowhere."""
    cubes = (0.0, 0.0, 0.0, 1.0)
    for x in (0.0, 1e-3, 0.2, 0.9, 1.0):
        assert invert(cubes, x**3, 0.0, 1.0) == pytest.approx(x, abs=1e-6)
        assert invert(cubes, np.array([x**3]), 0.0, 1.0)[0] == pytest.approx(x, abs=1e-6)


def test_rows_of_coefficients_are_inverted_each_for_itself() -> None:
    rows = [np.array([1.0, 3.0]), np.array([2.0, -1.0]), np.array([0.5, -0.5])]
    targets = [float(polynomial([row[i] for row in rows], 0.7)) for i in range(2)]
    assert invert(rows, np.array(targets), 0.0, 2.0) == pytest.approx([0.7, 0.7], abs=1e-10)
    assert invert(rows, 1.0, 0.0, 2.0).shape == (2,)


def test_between_points_lies_the_line_and_beyond_them_the_end() -> None:
    xs, ys = [0.0, 1.0, 4.0], [2.0, 5.0, -1.0]
    for x in (-3.0, 0.0, 0.25, 1.0, 2.5, 3.999, 4.0, 9.0):
        assert interpolate(x, xs, ys) == pytest.approx(np.interp(x, xs, ys)), x
    assert interpolate(np.array([0.5, 5.0]), xs, ys) == pytest.approx([3.5, -1.0])


@pytest.mark.parametrize("text", ["1185.05", "0.05", "0.15", "2.5", "-2.5", "-0.05", "99.949", "1.005", "0", "-0.04"])
def test_a_five_goes_up_away_from_nothing_as_on_paper(text: str) -> None:
    """27 CFR 30.23 and 30.64 round the figure on paper; decimal arithmetic does too."""
    for decimals in (0, 1, 2):
        paper = Decimal(text).quantize(Decimal(1).scaleb(-decimals), ROUND_HALF_UP)
        assert round_half_up(float(text), decimals) == float(paper)
        assert round_half_up(np.array([float(text)]), decimals)[0] == float(paper)
        assert fixed(float(text), decimals) == f"{float(paper) + 0.0:.{decimals}f}"
    assert str(round_half_up(-0.04, 1)) == "0.0", "no minus before nothing"


def test_figures_for_a_sentence() -> None:
    assert [brief(x) for x in (100.0, 0.5, 1.17874, 0.000001, 20.10, 1e6, -3.25, 0.000005)] == [
        "100", "0.5", "1.17874", "0", "20.1", "1000000", "-3.25", "0.00001",
    ]
    assert [fixed(x, 1) for x in (float("nan"), float("inf"), -float("inf"))] == ["no number"] * 3


def test_a_range_allows_its_ends_and_refuses_the_first_figure_outside() -> None:
    check_range("strength", 0.0, 0, 100, "pct_vol", "check_glass")
    check_range("strength", 100.0, 0, 100, "pct_vol", "check_glass")
    check_range("strength", np.array([0.0, 100.0]), 0, 100, "pct_vol", "check_glass")
    for value, first in ((100.5, 100.5), (np.array([5.0, -0.25, 200.0]), -0.25)):
        with pytest.raises(OutOfDomain) as refused:
            check_range("strength", value, 0, 100, "pct_vol", "check_glass")
        assert words_of(refused.value) == f"Strength {brief(first)} % vol is outside 0 to 100 % vol. Check the glass."
        assert (refused.value.what, refused.value.value, refused.value.low, refused.value.high) == (
            "strength", first, 0, 100,
        )
    with pytest.raises(OutOfDomain):
        check_range("strength", float("nan"), 0, 100, "pct_vol", "check_glass")
    with pytest.raises(OutOfDomain):
        check_range("strength", np.array([1.0, np.nan]), 0, 100, "pct_vol", "check_glass")


def test_one_number_stays_a_number_and_several_become_an_array() -> None:
    for one in (3, 3.0, np.float64(3), np.array(3)):
        assert isinstance(as_number(one), float) and as_number(one) == 3.0
    several = as_number([1, 2])
    assert several.dtype == float and several.tolist() == [1.0, 2.0]
