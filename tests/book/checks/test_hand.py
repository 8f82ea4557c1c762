"""Checks of who logged an entry, and of how long it took to come. Limits: common practice, no source."""

import pytest

from tests.book.checks.ledger import Ledger, codes, only

NOTE = {"text": "F1 smells of pears."}
AT = "2026-05-11 10:00"


@pytest.mark.parametrize(("findings", "asked"), [
    ("", []), ("s", []), ("sp", []), ("sP", []), ("p", []),
    ("u", ["hand_unsigned"]), ("sn", ["hand_not_shown"]), ("sf", ["hand_second"]), ("spw", ["hand_witness"]),
    ("unw", ["hand_unsigned", "hand_not_shown", "hand_witness"]),
])
def test_what_was_found_at_the_hand_in_is_asked_about(findings, asked):
    found = Ledger().enter("shift_note", "F1", AT, via=f"phone d-7f3k2m9q {findings}".rstrip(), **NOTE)
    assert codes(found) == asked
    assert all(one.weight == "ask" for one in found)


def test_what_comes_another_way_is_not_asked_about():
    """A device may be called anything; only the third word has findings."""
    for via in ("", "page", "page SUN", "sheet", "demo", "phone", "phone d-unfwunfw"):
        assert Ledger().enter("shift_note", "F1", AT, via=via, after_h=9999, **NOTE) == [] or via.startswith("phone")


def test_an_entry_that_took_days_to_come_is_shown_and_one_that_took_a_month_is_asked_about():
    book, via = Ledger(), "phone d-7f3k2m9q s"
    assert book.enter("shift_note", "F1", AT, via=via, after_h=71.9, **NOTE) == []
    shown = only(book.enter("shift_note", "F1", AT, via=via, after_h=72.1, **NOTE), "received")
    assert (shown.weight, shown.words) == ("note", "Handed in 3 days after it was typed.")
    assert only(book.enter("shift_note", "F1", AT, via="phone", after_h=743, **NOTE), "received").weight == "note"
    asked = only(book.enter("shift_note", "F1", AT, via=via, after_h=745, **NOTE), "received")
    assert (asked.weight, asked.words) == ("ask", "Handed in 31 days after it was typed.")
