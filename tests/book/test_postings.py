"""What the page of an entry says of its movements: sums by hand, and the balance before and after."""

from __future__ import annotations

import pytest

from tests.book.conftest import C1, T1
from tests.book.told import Told, fill, start
from webapp.book.periods.postings import Postings, load_postings
from webapp.book.record.store import Book


@pytest.fixture
def told(book: Book) -> Told:
    return start(book)


def of(told: Told, entry_id: str) -> Postings:
    row = told.book.one("SELECT order_key FROM folded WHERE entry = ?", (entry_id,))
    return load_postings(told.book, entry_id, row["order_key"])


def test_each_movement_has_both_sides_its_account_and_its_reason(told: Told) -> None:
    """400 L at 62 % are 248 L of pure alcohol; what the cask takes is missing in the tank, to the microlitre."""
    gauge = told.say("gauge", T1, volume="400 L", temp="20 degC", strength="62 pct_vol")
    found = of(told, gauge)
    (line,) = found.lines
    assert (line.source, line.target, line.target_mark, line.account) == (
        "gain found by a gauge", T1.partition("-")[0], T1, "processing")
    assert line.lpa_ul == 248_000_000
    assert [(one.before_ul, one.after_ul) for one in found.balances] == [(0, 248_000_000)]
    filled = of(told, fill(told, C1, "46.3", "220", "62"))
    (line,) = [one for one in filled.lines if one.source_mark == T1 and one.target_mark == C1]
    assert (line.account, line.reason) == ("processing to storage", "cask fill")
    held = {one.mark: one for one in filled.balances}
    assert held[T1].before_ul - held[T1].after_ul == held[C1].after_ul == line.lpa_ul


def test_an_entry_without_spirit_moves_nothing(told: Told) -> None:
    assert of(told, told.say("cleaning", T1, agent="water", rinse_ph="7 pH", entered="no")) == Postings([], [])
