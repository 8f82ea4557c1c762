"""Lists say what they are asked for, and cost what they show, not what the book holds."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest

from tests.book.conftest import F1, NOW, T1, answer, charge, entry, fruit, gauge, reading, send, settled
from webapp.book import cards
from webapp.book.cellar import ferments
from webapp.book.fold import fold, queries, row_reader, states
from webapp.book.record import counters, log
from webapp.book.record.store import Book
from webapp.book.still import runs

HOUR = timedelta(hours=1)


@pytest.fixture
def busy(book: Book) -> Book:
    """A book with some of everything."""
    send(book, fruit(read_at=NOW - 50 * HOUR), *[reading(seq=n, read_at=NOW - (20 - n) * HOUR) for n in range(2, 8)])
    send(book, one := gauge(strength="98.5", seq=8, person="TB"), gauge(volume="410", amends=one["id"], seq=9))
    send(book, charge(seq=10), entry("shift_note", values={"text": {"raw": "hm"}}, seq=11), device="d-one")
    send(book, answer(one["id"], "stands", seq=1, device="d-two"), now=NOW + 24 * HOUR, device="d-two")
    return book


def test_entries_are_found_by_what_they_are(busy: Book) -> None:
    def found(**by: Any) -> list[int]:
        return [row["book_no"] for row in log.find_entries(busy, **by)]

    assert found() == list(range(12, 0, -1))
    assert found(limit=3, before=10) == [9, 8, 7]
    assert found(kind="gauge") == [9, 8]
    assert found(mark=F1, limit=2) == [7, 6]
    assert found(person="TB") == [8]
    assert found(device="d-two") == [12]
    assert found(since="2025-09-25") == [12]
    assert found(until="2025-09-25", kind="answer") == []
    assert set(found(weight="any")) >= set(found(weight="ask"))
    assert [row["standing"] for row in log.find_entries(busy, mark=T1)] == ["entered", "amended"]


def test_queries_are_listed_by_weight_vessel_and_person(busy: Book) -> None:
    send(busy, heavy := gauge(strength="98.9", seq=20, read_at=NOW - HOUR, person="JK"))
    listed = queries.open_queries(busy)
    assert [q["weight"] for q in listed] == sorted((q["weight"] for q in listed), key=("stop", "ask").index)
    assert {q["entry"] for q in queries.open_queries(busy, weight="stop", person="JK", mark=T1)} == {heavy["id"]}
    assert queries.count_open(busy)["stop"] == len(queries.open_queries(busy, weight="stop"))


@pytest.mark.parametrize(
    "read",
    [
        lambda book: log.load_entry(book, "x"),
        lambda book: log.find_entries(book),
        lambda book: log.find_entries(book, mark=F1),
        lambda book: log.find_entries(book, kind="gauge", before=9),
        lambda book: log.find_entries(book, weight="ask", device="d-one"),
        lambda book: log.get_all(book, ["x", "y"]),
        lambda book: row_reader.read_all_as_folded(book, log.find_entries(book)),
        lambda book: states.load_fills(book, [F1, T1]),
        lambda book: queries.count_by_mark(book, [F1, T1]),
        lambda book: ferments.ferment(book, log.find_entries(book, kind="fruit_intake")[0]["id"]),
        lambda book: log.load_family(book, log.find_entries(book, kind="gauge")[0]["id"]),
        lambda book: queries.for_card(book, F1),
        lambda book: queries.for_entry(book, "x"),
        lambda book: queries.count_open(book),
        lambda book: queries.open_queries(book),
        lambda book: cards.cards_since(book, 3),
        lambda book: cards.card(book, F1),
        lambda book: runs.runs(book),
        lambda book: runs.runs(book, still="x", what="plum"),
        lambda book: counters.report_seen(book, "d-one"),
        lambda book: fold.load_state(book, f"v:{F1}"),
    ],
)
def test_no_list_walks_the_whole_book(busy: Book, read: Any) -> None:
    """Asked of SQLite itself: no scan of a table that grows with the book, but along an index up to the limit."""
    asked: list[str] = []
    busy.db.conn.set_trace_callback(asked.append)
    read(busy)
    busy.db.conn.set_trace_callback(None)
    assert asked
    for sql in asked:
        plan = [row["detail"] for row in busy.query(f"EXPLAIN QUERY PLAN {sql}")]
        # What a part of the statement has made is as long as that part, whose own steps stand in the plan as well.
        made = {step.split()[1] for step in plan if step.startswith(("CO-ROUTINE", "MATERIALIZE"))}
        own = [step for step in plan if not (step.startswith("SCAN") and step.split()[1] in made)]
        assert not any(walks(step, sql) for step in own), (sql, plan)


def walks(step: str, sql: str) -> bool:
    """Whether a step of a plan costs more the more the book holds."""
    if "AUTOMATIC" in step:
        return True
    if step.startswith("SCAN") and "VIRTUAL TABLE" in step:
        return False  # json_each over a list that was handed in: as long as what was asked for
    small = any(step.startswith(f"SCAN {table}") for table in ("site", "limits", "people", "instruments"))
    # Along the order of the list itself, with nothing to pass over on the way to its limit.
    to_its_limit = " DESC LIMIT" in sql and (
        "INDEX runs_started" in step or (step == "SCAN e" and "WHERE 1 ORDER" in sql)
    )
    return step.startswith("SCAN") and not (small or to_its_limit or "queries_open" in step)


def test_a_fault_of_ours_in_one_entry_is_a_stop_query_and_nothing_more(
    book: Book, monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    from webapp.book import checks

    sound = checks.questions

    def faulty(read: Any, view: Any) -> Any:
        if read.kind.name == "gauge":
            raise ZeroDivisionError("ours")
        return sound(read, view)

    monkeypatch.setattr(checks, "questions", faulty)
    bad = gauge(seq=2)
    given = send(book, fruit(), bad, reading(seq=3))
    assert [settled(given)[0], settled(given)[1]] == ["entered", "queried"]
    assert [q["code"] for q in given["results"][1]["queries"]] == ["not_worked_out"]
    assert "could not be worked out" in caplog.text
    monkeypatch.undo()
    fold.rebuild(book)  # as after an update of the program
    assert queries.for_entry(book, bad["id"]) == []
    caplog.clear()
