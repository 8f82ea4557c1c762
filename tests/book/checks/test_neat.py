"""Figures too neat to have been read: on one vessel, and from vessel to vessel. Common practice, no source."""

import pytest

from tests.book.checks.ledger import Ledger, codes, only

CASKS = ("C1", "C3", "C4", "C5", "N1", "N2", "N3", "N4", "N5", "C2", "T1", "T3")


def round_of(book, many, *, temp="12.0", start_min=0, step_min=4, person="NS"):
    """One gauge after the other; return what was asked of each."""
    asked = []
    for n, vessel in enumerate(CASKS[:many]):
        minute = start_min + n * step_min
        clock = f"2026-05-12 {8 + minute // 60:02d}:{minute % 60:02d}"
        asked.append(book.enter("gauge", vessel, clock, person=person, net_weight=f"{20 + n / 10}",
                                strength=f"{55 + n / 10:.1f}", temp=temp))
    return asked


def test_ten_vessels_at_one_temperature_are_noted_once():
    asked = round_of(Ledger(), 12)
    assert [codes(each) for each in asked] == [[]] * 9 + [["neat_round"]] + [[]] * 2
    query = only(asked[9], "neat_round")
    assert (query.weight, query.field) == ("note", "temp")
    assert query.words == "Spirit temperature 12.0 °C on 10 vessels running. Is it read on each?"


@pytest.mark.parametrize("more", [{"step_min": 61}, {"temp": None}])
def test_pauses_and_other_figures_begin_a_new_round(more):
    book = Ledger()
    if more.get("temp", "") is None:
        asked = round_of(book, 6) + round_of(book, 6, temp="12.1", start_min=40)
    else:
        asked = round_of(book, 10, **more)
    assert not any(codes(each) for each in asked)


def test_one_vessel_again_and_again_is_no_round():
    book = Ledger()
    for minute in range(12):
        at = f"2026-05-12 08:{minute * 4:02d}"
        asked = book.enter("gauge", "T1", at, net_weight=f"{20 + minute}", strength="55.0", temp="12.0")
        assert "neat_round" not in codes(asked)


def test_two_people_have_a_round_each():
    book = Ledger()
    assert not any(codes(each) for each in [*round_of(book, 6), *round_of(book, 6, person="PR", start_min=25)]
                   if "neat_round" in codes(each))


def test_a_house_may_set_its_own_number():
    asked = round_of(Ledger(checks={"neat_count": 3}), 3)
    assert codes(asked[2]) == ["neat_round"]


def test_the_same_temperature_ten_times_on_one_still():
    book = Ledger()
    for minute in range(10):
        asked = book.enter("run_reading", "S1", f"2025-09-24 08:{minute * 5:02d}", glass=f"{70 - minute}", temp="16.0")
    query = next(query for query in asked if query.code == "too_neat")
    assert query.words.endswith("10 times running. Is it read each time?")
