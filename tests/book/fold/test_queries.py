"""The lists of the book's questions: which, in which order, and how many."""

from __future__ import annotations

import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from tests.book.conftest import F1, T1
from webapp.book.before.view import Query
from webapp.book.fold import queries
from webapp.book.opening import open_book
from webapp.book.record.store import Book
from webapp.kinds.expected import Suggestion
from webapp.kinds.message import message, to_json

SAID = message("unknown_person", code="XY")
WORDS = "The book knows nobody with the code XY. Add them, or amend."


@pytest.fixture(scope="module")
def opened(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Book]:
    with open_book(Path(tmp_path_factory.mktemp("queries")) / "book.db") as book:
        yield book


@pytest.fixture
def book(opened: Book) -> Book:
    with opened.write() as database:
        database.conn.execute("DELETE FROM queries")
    return opened


def put(book: Book, *rows: tuple[Any, ...]) -> None:
    """Put questions into the book: entry, name, weight, and what else is not as usual."""
    kept = json.dumps(to_json(SAID))
    with book.write() as database:
        for entry, name, weight, *more in rows:
            other = dict(zip(("mark", "at", "answer", "person"), more, strict=False))
            line = {"entry": entry, "name": name, "code": name.partition(":")[0], "weight": weight, "field": "",
                    "message": kept, "suggestions": "[]", "mark": F1, "kind": "gauge", "person": "NS",
                    "at": "2025-09-24T08:00:00Z", "answer": "", **other}
            places = ", ".join(f":{name}" for name in line)
            database.conn.execute(f"INSERT INTO queries ({', '.join(line)}) VALUES ({places})", line)


def names(listed: list[dict[str, Any]]) -> list[str]:
    return [one["id"] for one in listed]


def test_the_heaviest_come_first_then_the_newest_then_by_their_names(book: Book) -> None:
    put(book, ("e1", "b", "ask"), ("e1", "a", "ask"), ("e2", "a", "note"), ("e3", "a", "stop"),
        ("e4", "a", "ask", F1, "2025-09-24T09:00:00Z"), ("e5", "a", "stop", F1, "2025-09-24T07:00:00Z"),
        ("e0", "a", "ask"))
    assert names(queries.open_queries(book)) == ["e3:a", "e5:a", "e4:a", "e0:a", "e1:a", "e1:b"]
    assert names(queries.open_queries(book, limit=2)) == ["e3:a", "e5:a"]
    assert names(queries.open_queries(book, limit=0)) == ["e3:a"]
    assert names(queries.open_queries(book, weight="note")) == ["e2:a"]
    assert names(queries.open_queries(book, weight="ask", limit=1)) == ["e4:a"]


def test_open_ones_are_found_by_vessel_and_person(book: Book) -> None:
    put(book, ("e1", "a", "ask"), ("e2", "a", "ask", T1), ("e3", "a", "ask", F1, "2025-09-24T08:00:00Z", "", "JK"),
        ("e4", "a", "ask", F1, "2025-09-24T08:00:00Z", "a1"))
    assert names(queries.open_queries(book)) == ["e1:a", "e2:a", "e3:a"]
    assert names(queries.open_queries(book, mark=T1)) == ["e2:a"]
    assert names(queries.open_queries(book, person="JK")) == ["e3:a"]
    assert names(queries.open_queries(book, person="JK", mark=T1)) == []


def test_a_list_is_two_hundred_long_and_a_thousand_at_most(book: Book) -> None:
    put(book, *((f"e{n:04d}", "a", "ask") for n in range(1001)))
    assert len(queries.open_queries(book)) == 200
    assert len(queries.open_queries(book, limit=5000)) == queries.LIST_MOST == 1000


def test_an_entry_shows_answered_ones_too_with_their_answers(book: Book) -> None:
    put(book, ("e1", "b", "note"), ("e1", "a", "ask", F1, "2025-09-24T08:00:00Z", "a1"), ("e1", "c", "stop"),
        ("e1", "d", "ask"), ("e2", "a", "stop"))
    listed = queries.for_entry(book, "e1")
    assert [(one["id"], one["answer"]) for one in listed] == [
        ("e1:c", ""), ("e1:a", "a1"), ("e1:d", ""), ("e1:b", ""),
    ]
    assert listed[0] == {
        "id": "e1:c", "entry": "e1", "name": "c", "code": "c", "weight": "stop", "field": "", "words": WORDS,
        "message": to_json(SAID), "suggestions": [], "mark": F1, "kind": "gauge", "person": "NS",
        "at": "2025-09-24T08:00:00Z", "answer": "",
    }


def test_a_phone_that_asks_again_hears_what_is_open(book: Book) -> None:
    put(book, ("e1", "b", "note"), ("e1", "a", "ask", F1, "2025-09-24T08:00:00Z", "a1"), ("e1", "c", "stop"),
        ("e2", "x:temp", "ask"), ("e3", "a", "ask"))
    found = queries.still_open(book, ["e1", "e2", "e9"])
    assert {entry: names(listed) for entry, listed in found.items()} == {"e1": ["e1:c", "e1:b"], "e2": ["e2:x:temp"]}
    assert found["e2"] == [{"id": "e2:x:temp", "code": "x", "weight": "ask", "field": "", "words": WORDS,
                            "message": to_json(SAID), "suggestions": []}]


def test_a_question_travels_as_the_book_keeps_it(book: Book) -> None:
    """What a receipt says and what the book says later is one and the same."""
    slip = Suggestion("temp", "15.0", "degC", message("slip-point"))
    sent = queries.as_sent("e1", "x:temp", Query("x", "ask", "temp", SAID, suggestions=(slip,)))
    assert {name: sent[name] for name in ("id", "code", "weight", "field", "words", "message")} == {
        "id": "e1:x:temp", "code": "x", "weight": "ask", "field": "temp", "words": WORDS, "message": to_json(SAID),
    }
    (told,) = sent["suggestions"]
    assert (told["field"], told["raw"], told["unit"]) == ("temp", "15.0", "degC")


def test_marks_of_many_entries_are_read_in_one_statement(book: Book) -> None:
    """A statement of SQLite takes 999 parameters in old builds: the ids are one."""
    ids = [f"e{n:04d}" for n in range(1001)]
    put(book, *((ids[n], "a", "ask") for n in (0, 499, 500, 999, 1000)), (ids[0], "b", "note"),
        (ids[1], "a", "ask", F1, "2025-09-24T08:00:00Z", "a1"))
    asked: list[str] = []
    book.db.conn.set_trace_callback(asked.append)
    found = queries.queries_by_entry(book, iter(ids))
    book.db.conn.set_trace_callback(None)
    assert len(asked) == 1
    assert set(found) == {ids[n] for n in (0, 499, 500, 999, 1000)}
    assert sorted(found[ids[0]], key=str) == [
        {"entry": ids[0], "code": "a", "weight": "ask"}, {"entry": ids[0], "code": "b", "weight": "note"},
    ]
    assert queries.queries_by_entry(book, []) == {}


def test_open_ones_are_counted_by_weight(book: Book) -> None:
    assert queries.count_open(book) == {"stop": 0, "ask": 0, "note": 0}
    put(book, ("e1", "a", "ask"), ("e2", "a", "ask"), ("e3", "a", "stop"), ("e4", "a", "ask", F1, "", "a1"))
    assert queries.count_open(book) == {"stop": 1, "ask": 2, "note": 0}


def test_a_card_shows_the_newest_twenty_of_its_vessel_and_no_notes(book: Book) -> None:
    put(book, *((f"e{n:02d}", "a", "ask", F1, f"2025-09-24T08:{n:02d}:00Z") for n in range(22)), ("n1", "a", "note"),
        ("t1", "a", "stop", T1), ("s1", "a", "stop", F1, "2025-09-24T07:00:00Z"), ("d1", "a", "ask", F1, "", "a1"))
    listed = queries.for_card(book, F1)
    assert names(listed) == [f"e{n:02d}:a" for n in range(21, 1, -1)]
    assert names(queries.for_card(book, F1, 23)) == [*(f"e{n:02d}:a" for n in range(21, -1, -1)), "s1:a"]
    assert listed[0] == {
        "id": "e21:a", "entry": "e21", "kind": "gauge", "code": "a", "weight": "ask", "words": WORDS,
        "message": to_json(SAID), "at": "2025-09-24T08:21:00Z", "suggestions": [],
    }
    assert queries.count_by_mark(book, [F1, T1, "X"]) == {F1: 20, T1: 1, "X": 0}
    assert queries.count_by_mark(book, [F1], 50) == {F1: 23}
