"""An instrument that is due or failed its check, and every reading that a failed check casts doubt on."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import Any

import pytest

from tests.book.checks.ledger import Ledger
from tests.book.conftest import F1, NOW, answer, entry, send, settled, values_of
from webapp.book.fold import fold
from webapp.book.fold.queries import for_entry
from webapp.book.house import instruments, registry
from webapp.book.record.store import Book


class Bench:
    """Readings with TH-2 and checks of it, hours before now."""

    def __init__(self, book: Book) -> None:
        self.book, self.seq = book, 0
        registry.put_instrument(
            book, {"id": "TH-2", "sort": "thermometer", "unit": "degC", "due_on": "2026-02-18"}, "JK"
        )

    def send(self, one: dict[str, Any], now: datetime = NOW) -> str:
        assert settled(send(self.book, one, now=now))[0] in ("entered", "queried")
        return str(one["id"])

    def read(self, hours: float, temp: str = "15.0", instrument: str = "TH-2", now: datetime = NOW) -> str:
        self.seq += 1
        values = values_of(gravity="1.050 SG", temp=f"{temp} degC")
        values["temp"]["instrument"] = instrument
        return self.send(
            entry("ferment_reading", F1, now - timedelta(hours=hours), seq=self.seq, values=values), now
        )

    def check(self, hours: float, found: str, result: str, in_use: str = "yes", **more: Any) -> str:
        self.seq += 1
        return self.send(
            entry("instrument_check", "", NOW - timedelta(hours=hours), seq=self.seq, instrument="TH-2", against="ice",
                  expected="0 plain", found=f"{found} plain", result=result, in_use=in_use,
                  **{"correction": "0 plain", **more})
        )

    def said(self, entry_id: str, code: str) -> list[tuple[str, str]]:
        return [(q["weight"], q["words"]) for q in for_entry(self.book, entry_id) if q["code"] == code]

    def doubted(self, check: str) -> list[str]:
        record = instruments.record(self.book, "TH-2", "2026-03-02")
        assert record
        rows, n = instruments.in_doubt(self.book, record, check)
        assert n == len(rows)
        return [row["id"] for row in rows]


@pytest.fixture
def bench(book: Book) -> Bench:
    return Bench(book)


def test_a_failed_check_lists_what_was_read_since_the_last_good_one(bench: Bench) -> None:
    """The probe of the invented house: 0.9 too high in ice."""
    bench.read(70)
    bench.check(60, "0.0", "good")
    doubtful = [bench.read(50), bench.read(40, "15.4")]
    bench.read(45, instrument="TH-1")
    failed = bench.check(30, "0.9", "failed", in_use="no")
    assert bench.doubted(failed) == doubtful[::-1]
    ((weight, words),) = bench.said(failed, "instrument_failed")
    assert weight == "ask"
    assert words.startswith(
        "TH-2 shows 0.9 too high in ice. Every reading with it since its last good check on 22 Sept"
    )
    record = instruments.record(bench.book, "TH-2", "2025-09-24")
    assert record and record.standing == "out of use" and record.readings == 3
    assert record.failed and (record.failed.doubtful, record.failed.off) == (2, 0.9)


def test_a_reading_after_a_failed_check_is_asked_about_until_it_is_good_again(bench: Bench) -> None:
    """It showed 0.9 too much of ice, so what it shows as 15.0 is offered as 14.1."""
    bench.check(60, "0.9", "failed")
    asked = bench.read(50)
    bench.check(40, "0.0", "good")
    (weight, words), *more = bench.said(asked, "instrument")
    assert (weight, more) == ("ask", [])
    assert words == (
        "TH-2 failed its check on 22 September 2025: by it 15.0 °C would be 14.1 °C. Read it again with another."
    )
    (query,) = [one for one in for_entry(bench.book, asked) if one["code"] == "instrument"]
    assert [(one["field"], one["raw"], one["unit"]) for one in query["suggestions"]] == [("temp", "14.1", "degC")]
    assert bench.said(bench.read(30), "instrument") == []


def test_a_failed_instrument_that_is_put_right_is_noted(bench: Bench) -> None:
    bench.check(60, "0.9", "failed", correction="-0.9 plain")
    assert [weight for weight, _ in bench.said(bench.read(50), "instrument")] == ["note"]


def test_a_late_reading_joins_the_list_and_a_struck_one_leaves_it(bench: Bench) -> None:
    bench.check(60, "0.0", "good")
    first = bench.read(50)
    failed = bench.check(30, "0.9", "failed")
    late = bench.read(35, "15.2")
    assert bench.doubted(failed) == [late, first]
    bench.seq += 1
    bench.send(answer(first, "struck", read_at=NOW, seq=bench.seq))
    assert bench.doubted(failed) == [late]
    # A good check that arrives late, between the two, clears what was before it.
    bench.check(40, "0.0", "good")
    assert bench.doubted(failed) == [late]
    bench.check(32, "0.0", "good")
    assert bench.doubted(failed) == []


def test_an_instrument_that_is_due_is_noted_on_what_is_read_with_it(bench: Bench) -> None:
    spring = datetime.fromisoformat("2026-03-01T12:00:00+00:00")
    assert bench.said(bench.read(5), "instrument") == []
    due = bench.read(1, "15.4", now=spring)
    assert bench.said(due, "instrument") == [("note", "TH-2 was due for a check on 2026-02-18. Check it.")]
    record = instruments.record(bench.book, "TH-2", "2026-03-01")
    assert record and record.standing == "due"
    registry.put_instrument(bench.book, {"id": "TH-2", "due_on": "2026-08-18"}, "JK")
    assert bench.said(due, "instrument") == []


def test_in_use_until_a_day_is_due_after_it(bench: Bench) -> None:
    bench.check(60, "0.0", "good", in_use="until", until="2025-09-23")
    assert bench.said(bench.read(30), "instrument") == []
    assert "was due for a check on 2025-09-23" in bench.said(bench.read(1, "15.3"), "instrument")[0][1]


def test_a_check_of_an_unknown_instrument_is_asked_about(bench: Bench) -> None:
    bench.seq += 1
    one = entry("instrument_check", "", NOW, seq=bench.seq, instrument="TH-9", against="ice", expected="0 plain",
                found="0 plain", correction="0 plain", result="good", in_use="yes")
    assert bench.said(bench.send(one), "unknown_instrument")[0][1].startswith("The book knows no instrument TH-9.")
    assert instruments.record(bench.book, "TH-9", "2026-01-01") is None


def test_the_same_whatever_the_order_of_arrival(bench: Bench) -> None:
    failed = bench.check(30, "0.9", "failed")
    bench.check(60, "0.0", "good")
    bench.read(50)
    before = fold.dump(bench.book)
    fold.rebuild(bench.book)
    assert fold.dump(bench.book) == before
    assert len(bench.doubted(failed)) == 1


def test_a_check_called_good_that_leaves_the_instrument_off_is_asked_about():
    """What it shows with its correction is what it should show: the meaning of a correction (JCGM 200:2012, 2.53)."""
    book = Ledger()
    given = {"instrument": "AH-1", "against": "liquid", "result": "good", "in_use": "yes"}
    for expected, found, add, is_asked in (("62.0", "62.1", "0", False), ("62.0", "60.5", "1.5", False),
                                           ("62.0", "26.0", "0", True), ("26.0", "62.1", "0", True),
                                           ("62.0", "60.5", "-1.5", True), ("62.0", "62.7", "0", True)):
        asked = book.enter("instrument_check", "", "2026-05-13 10:00", expected=expected, found=found, correction=add,
                           **given)
        assert ("check_left" in [query.code for query in asked]) is is_asked, (expected, found, add)
    asked = book.enter("instrument_check", "", "2026-05-13 10:00", expected="62.0", found="26.0", correction="0",
                       **given)
    query = next(query for query in asked if query.code == "check_left")
    assert ("found", "62") in [(one.field, one.raw.rstrip("0").rstrip(".")) for one in query.suggestions]
    failed = book.enter("instrument_check", "", "2026-05-13 10:00", expected="62.0", found="26.0", correction="0",
                        **{**given, "result": "failed"})
    assert "check_left" not in [query.code for query in failed]
