"""A reading in the row it stands in: what is left out, plates that nobody moved, a strength that leaves its row.

Vapour temperatures at a strength: webapp/trade/still.py, whose tests stand in tests/trade. Limits are common practice,
no source; each is tried on both sides.
"""

import pytest

from tests.book.checks.ledger import Ledger, codes, only
from tests.book.checks.test_beside import DAY, in_hearts, reading


def test_a_figure_that_each_reading_of_the_run_had_is_missed():
    query = only(reading(in_hearts(), "10:40", "71.0"), "row_gap")
    assert (query.weight, query.field) == ("ask", "vapour_temp")
    assert query.words == (
        "Vapour temperature stands in each of the last 3 lines and not in this one. "
        "Type it, or say that it was not read."
    )
    book = in_hearts()
    reading(book, "10:30", "71.5")  # the row is broken, so the next is not asked
    assert codes(reading(book, "10:40", "71.0")) == []


def test_a_run_that_ends_without_a_glass_is_asked_and_an_event_without_a_reading_is_not():
    book = in_hearts()
    assert codes(book.enter("cut", "S1", f"{DAY} 10:40", event="hearts_cut", receiver="R3")) == []
    book = in_hearts()
    ended = book.enter("run_end", "S1", f"{DAY} 10:40", reason="strength", vapour_temp="86.0", flow="12.0")
    assert [one.field for one in ended if one.code == "row_gap"] == ["strength"]
    dipped = in_hearts().enter("run_reading", "S1", f"{DAY} 10:40", dip="20", vapour_temp="85.9", flow="12.0")
    assert "row_gap" not in codes(dipped)  # a dip is a reading of its own


def test_of_other_kinds_two_lines_make_a_row():
    def checked(times: int, **last: str) -> list:
        book = Ledger()
        given = {"line": "1", "tested": "6", "fill_found": "100", "strength_found": "40.0", "labels_right": "yes"}
        book.enter("bottling_gauge", "T1", "2025-09-11 08:00", volume="400", strength="40.0", temp="20", batch="K-1",
                   label_strength="40")
        for hour in range(times):
            book.enter("bottle_check", "T1", f"2025-09-11 {10 + hour}:00", fill_least="99.8", **given)
        return book.enter("bottle_check", "T1", "2025-09-11 14:00", **given, **last)

    assert [(one.code, one.field) for one in checked(2)] == [("row_gap", "fill_least")]
    assert codes(checked(1)) == []
    assert codes(checked(2, fill_least="99.7")) == []


def with_plates(plates: str, *, event: str = "") -> list:
    book = in_hearts()
    for at, pct, vapour in (("10:30", "71.5", "85.7"), ("10:40", "71.0", "85.9")):
        reading(book, at, pct, vapour_temp=vapour, plates="3")
    if event:
        book.enter("cut", "S1", f"{DAY} 10:45", event=event)
    return reading(book, "10:50", "70.5", vapour_temp="86.0", plates=plates)


def test_plates_stay_until_somebody_moves_one():
    assert codes(with_plates("3")) == []
    query = only(with_plates("8"), "plates_moved")
    assert query.words == (
        "Plates 8, and 3 at 10:40; none is logged as taken in or out since. Look again, or log the change."
    )
    assert [one.raw for one in query.suggestions][:1] == ["3"]
    assert codes(with_plates("2", event="plate_out")) == []
    assert "plates_moved" in codes(with_plates("3", event="plate_out"))


@pytest.mark.parametrize(("pct", "vapour", "asked"), [
    ("71.0", "85.9", False),
    ("68.5", "87.2", False),  # it plunges, and the vapour with it
    ("68.5", "86.0", True),  # it plunges, and the vapour is that of 71 %
])
def test_a_strength_out_of_its_row_needs_the_vapour_for_a_witness(pct: str, vapour: str, asked: bool):
    found = reading(in_hearts(), "10:40", pct, vapour_temp=vapour)
    assert ("strength_row" in codes(found) or "vapour_strength" in codes(found)) is asked, found


def test_a_strength_out_of_its_row_offers_the_digits():
    query = only(reading(in_hearts(), "10:40", "68.5", vapour_temp="86.6"), "strength_row")
    assert query.words.startswith("True strength 68.5 %; by the readings before it would be ")
    assert query.field == "strength"
