"""An entry against how its vessel was written of before, and against itself.

Limits are the house's own, common practice, no source; each is tried on both sides. What a glass shows at a
temperature: OIML R 22 by the product's own sums, whose tests stand in tests/trade.
"""

import pytest

from tests.book.checks.ledger import Ledger, codes, only
from tests.book.checks.test_beside import in_hearts, reading


def gauged(strength: str, temp: str, *, by_glass: bool = True) -> list:
    """Ask about a strength of T1, gauged twice before."""
    book = Ledger()
    for day in ("10", "11"):
        proved = {"glass": "58.0"} if by_glass else {"strength": "60.7"}
        book.enter("gauge", "T1", f"2026-08-{day} 08:00", volume="400", temp="12.0", **proved)
    return book.enter("gauge", "T1", "2026-08-12 08:00", volume="400", temp=temp, strength=strength)


def test_a_glass_in_the_box_of_the_corrected_strength_is_seen_by_how_the_vessel_was_read():
    query = only(gauged("59.4", "13.0"), "glass_habit")
    assert (query.weight, query.field) == ("ask", "strength")
    assert "T1 was read by glass until now" in query.words
    (offer,) = query.suggestions
    assert (offer.field, offer.raw) == ("glass", "59.4")
    assert [(box.field, box.raw) for box in offer.also] == [("strength", "")]
    assert "glass_habit" not in codes(gauged("60.7", "13.0", by_glass=False))  # it is read so here
    assert "glass_habit" not in codes(gauged("60.7", "20.3"))  # nothing to correct


def load(gross: str, tare: str, **more: str) -> list:
    """Ask about a second load of plums beside one of 1000 kg with 60 kg of bins."""
    book = Ledger()
    given = {"material": "plum", "grower_lot": "x", "temp": "15", "rot": "2", "sugar": "16.0 Bx"}
    book.enter("fruit_intake", "F1", "2025-09-10 07:00", gross="1000", tare="60", **given)
    return book.enter("fruit_intake", "F1", "2025-09-10 09:00", gross=gross, tare=tare, **{**given, **more})


@pytest.mark.parametrize(("tare", "asked"), [("6", False), ("4", True), ("74", False), ("95", True)])
def test_a_tare_is_such_a_part_of_the_gross_weight_as_at_the_load_before(tare: str, asked: bool):
    """6 % of the load before, a sixth and three times of it: 5 to 90 kg of 500 kg."""
    found = load("500", tare)
    assert ("tare_share" in codes(found)) is asked


def test_of_a_first_load_the_tare_is_a_small_part():
    book = Ledger()
    given = {"material": "plum", "grower_lot": "x", "temp": "15", "rot": "2"}
    query = only(book.enter("fruit_intake", "F1", "2025-09-10 07:00", gross="1000", tare="666", **given), "tare_share")
    assert query.words == "The tare is 67 % of the gross weight, above 30 %. Look at both."
    assert [one.raw for one in query.suggestions][:1] == ["66.6"]


def test_two_loads_of_one_fruit_are_about_as_sweet():
    assert codes(load("500", "30", sugar="12.0 Bx")) == []
    assert [one.raw for one in only(load("500", "30", sugar="11.0 Bx"), "sugar_unlike").suggestions]
    assert "sugar_unlike" not in codes(load("500", "30", sugar="11.0 Bx", material="pear"))


def test_pounds_beside_kilograms_are_asked_about_and_a_house_of_gallons_may_have_a_scale_in_kilograms():
    query = only(load("500", "66 lb"), "unit_odd")
    assert query.words == "Tare is typed in lb, beside kg in the same entry. Which unit was read?"
    assert [(one.raw, one.unit) for one in query.suggestions] == [("66", "kg")]
    us = Ledger(units="us")
    assert "unit_odd" not in codes(us.enter("gauge", "T1", "2026-08-10 08:00", volume="400 L", strength="60.7",
                                            temp="68 degF"))


def test_bottles_are_counted_whole():
    query = only(reading(in_hearts(), "10:40", "71.0", plates="0.30", vapour_temp="85.9"), "not_whole")
    assert query.words == "Plates in 0.30: these are counted whole. Look again."
    assert [one.raw for one in query.suggestions][:1] == ["3"]


def test_a_flow_is_held_against_those_since_the_cut():
    """12 L/h three times; the least spread is 6 %, and three and a half of it 21 %."""
    vapour = {"vapour_temp": "85.9"}
    assert codes(reading(in_hearts(), "10:40", "71.0", flow="14.5", **vapour)) == []
    assert codes(reading(in_hearts(), "10:40", "71.0", flow="14.6", **vapour)) == ["flow_jump"]
    query = only(reading(in_hearts(), "10:40", "71.0", flow="21.0", **vapour), "flow_jump")
    assert query.words.startswith("Flow 21.0 L/h, 12.0 L/h in the middle of the last 3 readings.")
    assert [one.raw for one in query.suggestions][:1] == ["12.0"]
    book = in_hearts()
    book.enter("cut", "S1", "2025-09-25 10:30", event="heat_changed")
    assert "flow_jump" not in codes(reading(book, "10:40", "71.0", flow="21.0"))


def test_vapour_is_held_against_this_very_run():
    """Where the readings of a run go together to a few tenths, one that is a degree and a half off does not."""
    def asked(vapour: str) -> list:
        return reading(in_hearts(), "10:40", "71.0", vapour_temp=vapour)

    assert codes(asked("85.9")) == []
    assert codes(asked("87.4")) == ["vapour_strength"]


def test_yeast_for_so_much_mash():
    """3 to 60 g for 100 kg: 48.6 to 972 g for 1620 kg."""
    def yeast(amount: str) -> list:
        book = Ledger()
        book.enter("fruit_intake", "F1", "2025-09-10 07:00", gross="1652", tare="32", material="plum", grower_lot="x",
                   temp="15", rot="2")
        return book.enter("addition", "F1", "2025-09-10 09:00", what="yeast", lot_no="Y4", amount=amount, is_sugar="no")

    assert codes(yeast("250 g")) == []
    query = only(yeast("250 kg"), "dose_off")
    assert query.words.startswith("250 kg of yeast for 1620 kg of mash; 49 to 972 g is usual for so much.")
    assert ("250", "g") in [(one.raw, one.unit) for one in query.suggestions]


def test_stock_is_gauged_where_the_book_has_some():
    book = Ledger()
    given = {"volume": "400", "strength": "60.7", "temp": "20"}
    assert "gauged_empty" in codes(book.enter("gauge", "T1", "2026-08-10 08:00", purpose="stock", **given))
    assert "gauged_empty" not in codes(book.enter("gauge", "T3", "2026-08-10 09:00", purpose="opening", volume="200",
                                                  strength="60.7", temp="20"))
    assert "gauged_empty" not in codes(book.enter("gauge", "T1", "2026-08-11 08:00", purpose="stock", **given))


def test_spirit_in_a_receiver_is_as_strong_as_it_came_off_the_still():
    def moved(said: str) -> list:
        book = Ledger()
        book.enter("gauge", "R2", "2026-08-10 08:00", volume="100", strength="70.0", temp="20")
        return book.enter("account_move", "R2", "2026-08-10 09:00", serial="1", from_account="production",
                          to_account="storage", to_vessel="T1", purpose="deposit", spirit="plum",
                          distilling_strength=said, volume="100", strength="70.0", temp="20")

    assert "distilled_off" not in codes(moved("71.0"))
    assert [one.raw for one in only(moved("80.0"), "distilled_off").suggestions][:1] == ["70.0"]


def test_a_dip_after_water_is_held_against_the_sum_by_mass():
    """34.4 kg bring 100 L of 60 % to 133.1 L of 45 %."""
    def measured(volume: str, water: str = "0") -> list:
        book = Ledger()
        book.enter("gauge", "T3", "2026-08-10 08:00", volume="100.0", strength="60.0", temp="20")
        assert codes(book.enter("reduce", "T3", "2026-08-10 09:00", target="45", water="34.4")) == []
        return book.enter("reduce", "T3", "2026-08-12 09:00", target="45", water=water, strength="45.0", temp="20",
                          volume=volume)

    assert codes(measured("133.1")) == []
    assert [one.raw for one in only(measured("33.1"), "dip_sum").suggestions][:1] == ["133.1"]
    assert "water_off" in codes(measured("133.1", water="34.4"))


def test_a_laboratory_finds_the_strength_of_the_vessel():
    def found(strength: str) -> list:
        book = Ledger()
        book.enter("gauge", "T1", "2026-08-10 08:00", volume="400", strength="42.0", temp="20")
        return book.enter("lab_certificate", "T1", "2026-08-16 08:00", laboratory="One", document="26-1",
                          taken_on="2026-08-11", strength=strength)

    assert "lab_off" not in codes(found("42.40"))
    assert [one.raw for one in only(found("24.00"), "lab_off").suggestions][:1] == ["42.00"]


def test_a_cask_is_moved_from_where_it_stands():
    def moved(place: str) -> list:
        return Ledger().enter("cask_move", "C4", "2026-08-10 08:00", from_place=place, to_place="CELL-B1")

    assert codes(moved("cell-a1")) == []
    assert only(moved("CELL-A2"), "place_from").words.startswith("C4 is moved from CELL-A2; by the book it stands at")


def test_typed_at_the_same_hour_of_another_day():
    book = Ledger()
    book.enter("fruit_intake", "F1", "2025-09-10 07:00", gross="1652", tare="32", material="plum", grower_lot="x",
               temp="15", rot="2")
    query = only(book.enter("ferment_reading", "F1", "2025-09-12 08:00", temp="16", gravity="1.060",
                            typed_min=24 * 60 + 3), "late")
    assert (query.weight, query.words) == ("ask", "Typed 24 h after it was read, at the same hour. Look at the day.")
    assert only(book.enter("ferment_reading", "F1", "2025-09-13 08:00", temp="16", gravity="1.059", typed_min=900),
                "late").weight == "note"
