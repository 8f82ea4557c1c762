"""A charge against its still, its vessel and the charges before it. Limits are common practice, no source."""

import pytest

from tests.book.checks.ledger import Ledger, codes, only

FRUIT = {"gross": "1652", "tare": "32", "material": "plum", "grower_lot": "x", "temp": "15", "rot": "2"}


def charged(wash: str, *before: str, **more: str) -> list:
    """Ask about a charge of S1, which holds 650 L, out of a ferment of 1550 L."""
    book = Ledger()
    book.enter("fruit_intake", "F1", "2025-09-10 07:00", **FRUIT)
    book.enter("ferment_closed", "F1", "2025-09-24 18:00", final_gravity="1.011", volume="1550", wash_strength="5.1",
               method="lab")
    for day, one in enumerate((*before, wash), 25):
        name = f"R-{day}"
        asked = book.enter("charge", "S1", f"2025-09-{day} 08:00", run_name=name, from_vessel="F1", wash=one,
                           wash_strength="5.1", **more)
        book.enter("run_end", "S1", f"2025-09-{day} 13:00", reason="time")
    return asked


def test_a_still_is_charged_with_a_fifth_of_what_it_holds_at_least():
    assert "charge_low" not in codes(charged("131"))
    query = only(charged("48.2"), "charge_low")
    assert query.words == "48 L in S1, which holds 650 L: so little burns dry. Look at the dip."
    assert "482.0" in [one.raw for one in query.suggestions]


@pytest.mark.parametrize(("wash", "asked"), [("482", False), ("470", False), ("248", True), ("428", False)])
def test_wash_is_about_that_of_the_charges_before(wash: str, asked: bool):
    """Two charges of 482 L; the least spread is 12 %, three and a half of it 42 %: from 280 L on. 428 is within 12 %,
    where no digits are looked for."""
    assert ("charge_unlike" in codes(charged(wash, "482", "482"))) is asked


def test_what_the_key_beside_explains_is_asked_about_sooner():
    """284 L is 41 % below 482, within three and a half spreads; but 1550 - 2 x 482 = 586 L are left, and 5 stands above
    2: about 584 were meant."""
    query = only(charged("284", "482", "482"), "charge_unlike")
    assert [one.raw for one in query.suggestions] == ["584.0"]
    assert "charge_unlike" not in codes(charged("300", "482", "482"))


def test_feints_that_are_named_are_measured():
    query = only(charged("482", feints_from="R3"), "feints_unread")
    assert (query.weight, query.field) == ("ask", "feints")


def feints(litres: str) -> list:
    book = Ledger()
    book.enter("fruit_intake", "F1", "2025-09-10 07:00", **FRUIT)
    book.enter("ferment_closed", "F1", "2025-09-24 18:00", final_gravity="1.011", volume="1550", wash_strength="5.1",
               method="lab")
    book.enter("gauge", "R3", "2025-09-24 19:00", volume="26.3", strength="38.0", temp="20")
    return book.enter("charge", "S1", "2025-09-25 08:00", run_name="R-1", from_vessel="F1", wash="482",
                      wash_strength="5.1", feints=litres, feints_strength="38.0", feints_from="R3")


def test_less_feints_than_there_are_is_asked_about_where_a_slip_explains_it():
    assert codes(feints("26.3")) == []
    assert codes(feints("13.0")) == []  # half of them, as a house may
    query = only(feints("23.6"), "feints_part")
    assert query.words.startswith("23.6 L of feints, and 26.3 L stand in R3 by the book.")
    assert [one.raw for one in query.suggestions][:1] == ["26.3"]
