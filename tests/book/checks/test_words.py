"""Figures, times and spans in what is asked: as they were read, or rounded as they were worked out."""

import pytest

from webapp.book.checks import words
from webapp.kinds.message import Figure, Span


@pytest.mark.parametrize(
    ("seconds", "parts"),
    [
        (0, ((0, "s"),)), (40.4, ((40, "s"),)), (119, ((119, "s"),)), (120, ((2, "min"),)), (-300, ((5, "min"),)),
        (59.4 * 60, ((59, "min"),)), (59.6 * 60, ((1, "h"),)), (3600, ((1, "h"),)), (3660, ((1, "h"), (1, "min"))),
        (7260, ((2, "h"), (1, "min"))), (47 * 3600 + 59 * 60, ((47, "h"), (59, "min"))), (48 * 3600, ((2, "days"),)),
        (60 * 3600 + 1, ((3, "days"),)), (3 * 86_400, ((3, "days"),)),
    ],
)
def test_a_span_has_two_parts_at_most(seconds: float, parts: tuple):
    assert words.time_span(seconds) == Span(parts)


@pytest.mark.parametrize(
    ("value", "decimals", "text"),
    [
        (1.031, 3, "1.031"), (1.0315, 3, "1.0315"), (1.03, 3, "1.030"), (12.0, 1, "12.0"), (12.05, 1, "12.05"),
        (12.051, 1, "12.1"), (7.0, 0, "7"), (7.5, 0, "7.5"), (7.25, 0, "7"), (-3.5, 1, "-3.5"), (0.0, 2, "0.00"),
    ],
)
def test_a_figure_that_was_read_keeps_one_decimal_more_where_one_more_was_read(value: float, decimals: int, text: str):
    """1.0315 was read between two marks of a saccharometer; 12.051 was read on no glass, it is a sum."""
    assert words.figure_text(value, decimals) == text
    assert words.figure(value, decimals, "SG") == Figure(text, "SG")


@pytest.mark.parametrize(
    ("value", "decimals", "text"), [(12.05, 1, "12.1"), (12.04, 1, "12.0"), (2.675, 2, "2.67"), (99.96, 1, "100.0")]
)
def test_a_figure_that_was_worked_out_is_rounded(value: float, decimals: int, text: str):
    if value == 12.05:
        text = f"{round(12.05, 1):.1f}"  # half of a binary fraction: as Python rounds
    assert words.rounded_text(value, decimals) == text
    assert words.rounded(value, decimals, "L") == Figure(text, "L")


def test_a_huge_figure_is_short():
    """Somebody typed a telephone number: it is repeated, and does not fill the page."""
    for say in (words.figure_text, words.rounded_text):
        assert say(1e30, 1) == "1e+30"
        assert say(-1e30, 2) == "-1e+30"
        assert "e" not in say(123_456.0, 1)
        assert say(float("inf"), 1) == "inf"
