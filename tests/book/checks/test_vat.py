"""A planned vat: every draw names a vessel of the book and a weight, and none more than stands there."""

import pytest

from tests.book.checks.ledger import Ledger, codes, only
from webapp.trade.marks import make_mark

DAY = "2025-10-02"
C1, C4 = make_mark("C1"), make_mark("C4")


def filled() -> Ledger:
    """Return a book with 160 kg in a cask."""
    book = Ledger()
    assert book.enter("gauge", "C4", f"{DAY} 08:00", net_weight="160", strength="60", temp="12") == []
    return book


def plan(book: Ledger, draws: str):
    return book.enter("vat_plan", "T1", f"{DAY} 10:00", name="V1", draws=draws, target="45")


@pytest.mark.parametrize("kilograms", ["0", "100", "160", "160.05", "160,05 kg"])
def test_as_much_as_stands_there_can_be_planned(kilograms: str):
    """50 g more than the book has is rounding of the sheet. Common practice, no source."""
    assert plan(filled(), f"{C4} {kilograms}") == []


def test_more_than_stands_there_is_asked_about_with_both_weights():
    query = only(plan(filled(), f"{C4} 160.5"), "vat_short")  # 160 kg on the scale are 160.19 kg of mass
    assert (query.weight, query.field) == ("ask", "draws")
    assert query.words == "160.5 kg planned out of C4, 160.2 kg by the book. Plan it again."
    # Twice from one cask is the sum of both.
    assert only(plan(filled(), f"{C4} 100; {C4} 60.5"), "vat_short").words.startswith("160.5 kg planned out of C4")
    # Out of an empty one nothing can be planned; the first is named alone.
    query = only(plan(filled(), f"{C1} 1; {C4} 200"), "vat_short")
    assert query.words.startswith("1.0 kg planned out of C1, 0.0 kg by the book.")


def test_what_the_instruments_leave_open_can_be_planned():
    """Gross and tare by class III, e 0.1 kg: 0.15 and 0.05 kg (Directive 2014/31/EU), each read to 0.1: 2 u = 0.20 kg.

    A tank of 1000 L: 2 mm of 1 m2 and 0.3 % of 300 L (JCGM 100, 4.3.7): 2 u = 2.53 L, of 0.909 kg each.
    """
    assert plan(filled(), f"{C4} 160.35") == []
    for kilograms, asked in (("274.5", []), ("275.5", ["vat_short"])):
        book = Ledger()
        book.enter("gauge", "T1", f"{DAY} 08:00", volume="300", strength="60", temp="20")  # 272.7 kg
        assert codes(book.enter("vat_plan", "T4", f"{DAY} 10:00", name="V1", draws=f"{make_mark('T1')} {kilograms}",
                                target="45")) == asked, kilograms


def test_a_vessel_that_is_not_in_the_book_is_named():
    stranger = make_mark("Z9")
    query = only(plan(filled(), f"{stranger} 10; {C4} 200"), "vat_vessel")
    assert (query.weight, query.field) == ("ask", "draws")
    assert query.words == f"No vessel {stranger} is in the book. Look at the mark again."


@pytest.mark.parametrize("part", ["two casks", f"{C4} many", f"{C4}", "12.5", f"{C4} 1 lb", f"{C4} 12345678"])
def test_a_part_that_nobody_can_read_is_repeated_and_the_rest_is_looked_at(part: str):
    asked = plan(filled(), f"{part}; {C4} 200")
    assert codes(asked) == ["vat_draws", "vat_short"]
    assert (asked[0].weight, asked[0].field) == ("ask", "draws")
    assert asked[0].words.startswith(f"“{part}” names no vessel with a weight.")


def test_the_first_of_several_parts_is_repeated_up_to_forty_characters():
    (query,) = plan(filled(), f"{'x' * 41}; y y")
    assert query.words.startswith(f"“{'x' * 40}” names no")


def test_lines_and_empty_parts_are_legible():
    assert plan(filled(), f"\n {C4} 100 kg ;;\n{C4.lower()}   60\n") == []
