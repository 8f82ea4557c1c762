"""Checks of clocks, late typing, order of time, and the same reading twice. Limits: common practice, no source."""

from tests.book.checks.ledger import Ledger, codes, only

NOTE = {"text": "F1 smells of pears."}


def reading(book: Ledger, at: str, **more):
    return book.enter("run_reading", "S1", at, **{"glass": "70.0", "temp": "15.0", **more})


def running() -> Ledger:
    book = Ledger()
    book.enter("fruit_intake", "F1", "2025-09-04 10:40", gross="1652", tare="32", material="plum", grower_lot="x",
               temp="21.4", rot="2")
    book.enter("charge", "S1", "2025-09-25 08:05", from_vessel="F1", wash="482", wash_strength="5.1")
    return book


def test_a_clock_a_little_off_is_a_note_and_right_is_silence():
    book = Ledger()
    assert book.enter("shift_note", "F1", "2026-05-11 10:00", skew_s=50, **NOTE) == []
    query = only(book.enter("shift_note", "F1", "2026-05-11 10:05", skew_s=-200, **NOTE), "clock")
    assert query.weight == "note"
    assert query.words == "This phone's clock was 3 min slow when it handed this in."


def test_a_clock_far_off_is_asked_about_once_for_each_size_of_error():
    book = Ledger()
    query = only(book.enter("shift_note", "F1", "2026-05-11 09:00", skew_s=-3660.4, **NOTE), "clock")
    assert query.weight == "ask"
    assert query.words == (
        "This phone's clock was 1 h 1 min slow when it handed this in. "
        "By that clock it was read on 2026-05-11 at 09:00; "
        "the book takes it in order as 2026-05-11 10:01; both are kept. "
        "Set the clock right, and say whether the day is right."
    )
    assert book.enter("shift_note", "F1", "2026-05-11 09:10", skew_s=-3661.9, **NOTE) == []
    assert codes(book.enter("shift_note", "F1", "2026-05-11 09:20", skew_s=-90060, **NOTE)) == ["clock"]
    assert codes(book.enter("shift_note", "F1", "2026-05-13 09:20", skew_s=-3660, **NOTE)) == ["clock"]
    assert book.enter("shift_note", "F1", "2026-05-14 09:20", skew_s=0.3, **NOTE) == []
    assert codes(book.enter("shift_note", "F1", "2026-05-15 09:20", skew_s=-3660, **NOTE)) == ["clock"]


def test_each_phone_has_its_own_clock():
    book = Ledger()
    book.enter("shift_note", "F1", "2026-05-11 09:00", skew_s=900, **NOTE)
    assert codes(book.enter("shift_note", "F1", "2026-05-11 09:01", skew_s=900, device="d-2", **NOTE)) == ["clock"]


def test_typed_late_is_a_note():
    query = only(reading(running(), "2025-09-25 09:00", typed_min=130), "late")
    assert query.weight == "note"
    assert query.words == "Typed 2 h 10 min after it was read."
    assert reading(running(), "2025-09-25 09:00", typed_min=29) == []


def test_read_after_it_was_typed_cannot_be():
    query = only(reading(running(), "2025-09-25 09:00", typed_min=-300), "time_order")
    assert query.weight == "stop"
    assert query.words.startswith("Read 5 h after it was typed: that cannot be.")
    assert reading(running(), "2025-09-25 09:00", typed_min=-4) == []


def test_the_same_figures_minutes_apart():
    book = running()
    reading(book, "2025-09-25 09:00")
    query = only(reading(book, "2025-09-25 09:04", person="PR"), "twice")
    assert query.weight == "ask"
    assert query.words == (
        "The same figures stand at 09:00 (4 min before, by Noor S.). Is it one reading, entered twice?"
    )


def test_near_figures_and_later_ones_are_not_twice():
    book = running()
    reading(book, "2025-09-25 09:00")
    assert reading(book, "2025-09-25 09:04", glass="69.8") == []
    assert reading(book, "2025-09-25 09:15", glass="69.8") == []


def test_two_loads_alike_but_for_their_lot_are_not_twice():
    book = Ledger()
    for at, lot in (("10:40", "A"), ("10:45", "B")):
        assert book.enter("fruit_intake", "F1", f"2025-09-04 {at}", gross="452", tare="32", material="plum",
                          grower_lot=lot, temp="21.4", rot="2") == []


def test_too_much_fruit_for_the_fermenter():
    book = Ledger()
    load = {"tare": "32", "material": "plum", "grower_lot": "x", "temp": "21", "rot": "1"}
    assert book.enter("fruit_intake", "F1", "2025-09-04 09:00", gross="1652", **load) == []
    query = only(book.enter("fruit_intake", "F1", "2025-09-04 10:40", gross="300", **load), "over_working_level")
    assert query.words == (
        "1888 kg of fruit (with 1620 kg already in it, about 1798 L of mash) is above the working level of F1, 1700 L. "
        "Look again."
    )
    query = only(book.enter("fruit_intake", "F1", "2025-09-04 12:00", gross="952", **load), "over_capacity")
    assert query.weight == "stop"
