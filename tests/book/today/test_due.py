"""What is due: asked just inside and just outside of each interval. Intervals: common practice, no source."""

from __future__ import annotations

from datetime import timedelta

import pytest

from tests.book.conftest import C1, F1, NOW, S1, T1, charge, entry, fruit, gauge, reading
from tests.book.today.conftest import ask, due_at, keys
from webapp.book.house import instruments, registry
from webapp.book.house.check_limits import set_check_limit
from webapp.book.today.due import phone_states

HOUR = timedelta(hours=1)
DAY = timedelta(days=1)
FALLING = ("1.060", "1.055", "1.048", "1.040")


def falling(days: float = 0.0, gravities=FALLING):
    """Readings a day apart; the last one so many days before NOW."""
    last = len(gravities) - 1
    return [reading(F1, gravity, read_at=NOW - DAY * (days + last - n), seq=10 + n)
            for n, gravity in enumerate(gravities)]


def test_a_ferment_is_to_be_read_after_the_houses_interval(book, hand):
    hand(fruit(F1, read_at=NOW - 5 * DAY), *falling())
    assert keys(due_at(book, NOW + 19 * HOUR)) == []
    found = due_at(book, NOW + 21 * HOUR)
    assert keys(found) == [("read", F1)] and found[0].days == pytest.approx(1 / 24)
    registry.set_site(book, {"due": {"ferment_h": 6}}, by="JK")
    assert keys(due_at(book, NOW + 7 * HOUR)) == [("read", F1)]


def test_a_ferment_that_was_never_read_is_due_from_its_filling_on(book, hand):
    hand(fruit(F1, read_at=NOW - DAY))
    assert [(one.key, one.last) for one in due_at(book, NOW)] == [("read", "")]


def test_a_ferment_that_has_ended_wants_its_close_and_then_a_still(book, hand):
    hand(fruit(F1, read_at=NOW - 9 * DAY), *falling(gravities=("1.060", "1.040", "1.020", "1.012", "1.012", "1.012")))
    assert keys(due_at(book, NOW + HOUR)) == [("close", F1)]
    hand(entry("ferment_closed", F1, NOW + 2 * HOUR, seq=30, final_gravity="1.012 SG", volume="800 L",
               wash_strength="6 pct_vol"))
    assert keys(due_at(book, NOW + 3 * HOUR)) == [("still", F1)]
    hand(charge(S1, F1, read_at=NOW + 4 * HOUR, seq=31))
    assert keys(due_at(book, NOW + 5 * HOUR)) == []


def test_a_ferment_that_does_not_move_is_stuck(book, hand):
    hand(fruit(F1, read_at=NOW - 9 * DAY), *falling(gravities=("1.060", "1.050", "1.040", "1.040", "1.040")))
    assert keys(due_at(book, NOW + HOUR)) == [("stuck", F1)]


def cask(years_ago: float, seq: int = 1):
    return entry("gauge", C1, NOW - years_ago * 365 * DAY, seq=seq, net_weight="150 kg", strength="61 pct_vol",
                 temp="20 degC", purpose="opening", what="plum")


def test_a_cask_is_to_be_regauged_a_year_after_its_last_gauge(book, hand):
    hand(cask(0.99))
    assert keys(due_at(book, NOW)) == []
    assert keys(due_at(book, NOW + 10 * DAY)) == [("regauge", C1)]
    hand(entry("cask_regauge", C1, NOW + 11 * DAY, seq=2, gross="194 kg", strength="60.8 pct_vol", temp="20 degC",
               condition="tight"))
    assert keys(due_at(book, NOW + 12 * DAY)) == []


def test_samples_and_tastings_are_due_where_the_house_says_how_often(book, hand):
    hand(cask(0.5))
    assert keys(due_at(book, NOW)) == []
    registry.set_site(book, {"due": {"sample_months": 3, "taste_months": 4, "regauge_months": 0}}, by="JK")
    assert keys(due_at(book, NOW)) == [("sample", C1), ("taste", C1)]


def test_a_tank_may_stand_for_a_month(book, hand):
    hand(gauge(T1, read_at=NOW, purpose="opening", what="plum"))
    assert keys(due_at(book, NOW + 29.9 * DAY)) == []
    found = due_at(book, NOW + 30.1 * DAY)
    assert keys(found) == [("stands", T1)] and found[0].days == pytest.approx(30.1)
    set_check_limit(book, "site", "", "stands_days", 40, by="JK")
    assert keys(due_at(book, NOW + 30.1 * DAY)) == []


def test_a_bottling_that_was_begun_waits_for_its_close(book, hand):
    hand(gauge(T1, read_at=NOW, strength="43.0", purpose="opening", what="plum"),
         entry("bottling_gauge", T1, NOW + HOUR, seq=2, batch="K-25-01", volume="400 L", strength="43 pct_vol",
               temp="20 degC", label_strength="43 pct_vol"))
    assert keys(due_at(book, NOW + 2 * DAY)) == []
    assert keys(due_at(book, NOW + 4 * DAY)) == [("bottling", T1)]
    assert keys(due_at(book, NOW + 40 * DAY)) == [("bottling", T1)], "it is not told twice"


def test_a_run_without_an_end_is_asked_for_after_a_day(book, hand):
    hand(charge(S1, F1, read_at=NOW))
    assert keys(due_at(book, NOW + 23 * HOUR)) == []
    assert [one.key for one in due_at(book, NOW + 25 * HOUR)] == ["open_run"]
    hand(entry("run_end", S1, NOW + 26 * HOUR, seq=2, reason="strength"))
    assert keys(due_at(book, NOW + 27 * HOUR)) == []


def check(hours: int, seq: int, result: str = "good", **more):
    return entry("instrument_check", "", NOW + hours * HOUR, seq=seq, instrument="TH-1", against="ice",
                 expected="0 plain", found="0.1 plain", correction="0 plain", result=result, **more)


def test_an_instrument_is_told_of_before_its_day_and_after_a_failed_check(book, hand):
    registry.put_instrument(book, {"id": "TH-1", "sort": "thermometer", "unit": "degC", "due_on": "2025-10-20"}, by="J")
    assert keys(due_at(book, NOW)) == [], "24 September: 26 days ahead"
    found = due_at(book, NOW + 13 * DAY)
    assert keys(found) == [("instrument", "TH-1")] and found[0].days == -13
    assert due_at(book, NOW + 28 * DAY)[0].days == 2
    hand(check(1, 1, result="failed", in_use="yes"))
    assert keys(due_at(book, NOW)) == [("failed", "TH-1")]
    hand(check(2, 2, result="failed", in_use="no"))
    assert keys(due_at(book, NOW)) == [], "it is out of use: nobody reads with it"


@pytest.mark.parametrize("until", [None, "2025-12-01", "2025-09-01"])
def test_the_standing_of_an_instrument_is_that_of_its_record(book, hand, until):
    """The record reads every check from the log; the page of the day only the newest state."""
    registry.put_instrument(book, {"id": "TH-1", "sort": "thermometer", "unit": "degC", "due_on": "2025-10-20"}, by="J")
    said = {"in_use": "until", "until": until} if until else {"in_use": "yes"}
    for n, result in enumerate(("good", "failed", "good")):
        hand(check(n + 1, n + 1, result=result, **said))
        rows = registry.instruments(book)
        for today in ("2025-09-24", "2025-10-21", "2025-12-02"):
            record = instruments.records(book, rows, today)[0]
            state = ask(book).checks["TH-1"]
            assert instruments.standing_word(rows[0], state, today) == (record.standing, record.due_on)


def test_a_phone_is_silent_or_misses_entries():
    phones = [
        {"id": "d-1", "name": "PH-1", "heard_at": (NOW - 35 * HOUR).isoformat(), "seen": [[1, 9]]},
        {"id": "d-2", "name": "PH-2", "heard_at": (NOW - 37 * HOUR).isoformat(), "seen": [[1, 9]]},
        {"id": "d-3", "name": "PH-3", "heard_at": NOW.isoformat(), "seen": [[2, 4], [7, 9]]},
        {"id": "d-4", "name": "PH-4", "heard_at": None, "seen": []},
    ]
    found = {one.name: (one.is_silent, one.missing) for one in phone_states(phones, {}, NOW)}
    assert found == {"PH-1": (False, 0), "PH-2": (True, 0), "PH-3": (False, 3), "PH-4": (True, 0)}
    assert next(one.name for one in phone_states(phones, {}, NOW)) == "PH-3", "what is missing comes first"
