"""What a law allows a cask, as a rate in logarithms: held against a stock that is counted month by month."""

import math

import pytest

from webapp.book.cellar.allowances import CHOICES, allowance_of, load_laws


def test_a_cask_that_loses_what_is_allowed_loses_that_of_its_stock_as_the_law_counts_it() -> None:
    """4 % of the year's average stock (AlkStV, section 13); 0.35 % a month of the stock on its last day (annex 4)."""
    german, czech = (allowance_of({"loss_allowance": law}, 225.0) for law in ("de", "cz"))
    assert german and czech
    days = [100 * math.exp(-german.rate_pct / 100 * day / 3650) for day in range(3651)]
    assert (days[0] - days[-1]) / (sum(days) / len(days)) == pytest.approx(0.04, rel=1e-4)
    month_end = 100 * math.exp(-czech.rate_pct / 1200)
    assert (100 - month_end) / month_end == pytest.approx(0.0035)
    # Twelve months come to 4.2 % (0.35 times twelve): two laws agree on about 4 % a year.
    assert czech.rate_pct == pytest.approx(4.2, abs=0.02) and german.rate_pct == 4.0


def test_a_large_cask_is_allowed_less_and_no_law_says_nothing() -> None:
    large, small = (allowance_of({"loss_allowance": "cz"}, size) for size in (301.0, 300.0))
    assert large and small and large.words.startswith("0.2 % a month") and small.words.startswith("0.35 % a month")
    assert allowance_of({}, 225.0) is None is allowance_of({"loss_allowance": "xx"}, 225.0)
    assert {name for name, _ in CHOICES} == {"", *load_laws()}
    assert all(law["read_at"] for law in load_laws().values())
