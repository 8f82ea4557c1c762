"""A stock count against the places of the book. Common practice, no source: a swap is a swap, and no shortage."""

import pytest

from tests.book.checks.ledger import Ledger, only
from webapp.trade.marks import make_mark

DAY = "2025-10-02"


def count(book: Ledger, vessel: str, place: str = "", found: str = "here", at: str = "10:00", **more: str):
    given = {"place": place} if place else {}
    return book.enter("stock_count", vessel, f"{DAY} {at}", found=found, signed="Noor S., cellar hand", **given, **more)


def place_of(book: Ledger, vessel: str) -> str | None:
    state = book.states.get(f"v:{make_mark(vessel)}")
    return state["place"] if state else None


def test_a_cask_at_its_place_is_quiet_and_one_without_a_place_said_too():
    assert count(Ledger(), "C4", "CELL-A1") == []
    assert count(Ledger(), "C4") == []


def test_a_cask_at_another_place_is_asked_about_and_stays_where_the_book_has_it():
    book = Ledger()
    query = only(count(book, "C4", "CELL-B2"), "place_differs")
    assert (query.weight, query.field) == ("ask", "place")
    assert query.words == (
        "C4 was found at CELL-B2; the book has it at CELL-A1. If it is there, say that it stands. "
        "Count what stands there too."
    )
    assert place_of(book, "C4") is None, "until somebody says that it stands"


def test_a_cask_that_the_book_has_no_place_for():
    query = only(count(Ledger(), "C1", "CELL-B2"), "place_differs")
    assert query.words.startswith("C1 was found at CELL-B2; the book has no place for it.")


def test_a_place_that_is_only_a_blank_is_none():
    assert count(Ledger(), "C4", "  ") == []


def test_two_casks_that_changed_places():
    book = Ledger()
    assert only(count(book, "C4", "LOFT-J1"), "place_differs").field == "place"
    query = only(count(book, "C5", "CELL-A1", at="10:05"), "places_swapped")
    assert (query.weight, query.field) == ("ask", "place")
    assert query.words == (
        "C5 was found at CELL-A1 and C4 at LOFT-J1: they have changed places, nothing is short. If that is so, say "
        "that it stands, and the book has them so."
    )


def test_three_that_went_round_are_no_pair():
    book = Ledger()
    count(book, "C4", "LOFT-J1")
    assert only(count(book, "C5", "CELL-B2", at="10:05"), "place_differs").words.startswith("C5 was found at CELL-B2")


@pytest.mark.parametrize(("kilograms", "words"), [("160", "C4 was not found, 103.7 L of pure alcohol by the book."),
                                                  ("", "C4 was not found. Look for it now.")])
def test_nothing_where_a_cask_should_be(kilograms: str, words: str):
    """160 kg at 59 % vol: 911.3 kg/m3 by OIML R 22 (1975), so 175.8 L in air and 103.7 L of pure alcohol."""
    book = Ledger()
    if kilograms:
        assert book.enter("gauge", "C4", f"{DAY} 08:00", net_weight=kilograms, strength="59", temp="12") == []
    query = only(count(book, "C4", "CELL-A1", "nothing"), "cask_missing")
    assert (query.weight, query.field) == ("ask", "found")
    assert query.words.startswith(words)
    assert book.flows == [], "it is looked for first"


def test_nothing_is_missing_where_no_vessel_is_named():
    assert count(Ledger(), "", "CELL-A1", "nothing") == []
    assert count(Ledger(), "", "CELL-A1") == []


def test_a_vessel_that_the_book_does_not_know():
    query = only(count(Ledger(), "", "CELL-B2", "unknown", label="C 99, pear"), "not_in_book")
    assert (query.weight, query.field) == ("ask", "label")
    assert query.words.startswith('Not in the book: "C 99, pear" at CELL-B2. Weigh it')
    query = only(count(Ledger(), "", "", "unknown", label="x" * 61), "not_in_book")
    assert query.words.startswith(f'Not in the book: "{"x" * 60}". Weigh it')
