"""Rewritings of the file by somebody who has it in hand: what `verify` finds, and what it cannot.

The list is the house's own, by what an insider could want; nothing outside the project has one.
"""

from __future__ import annotations

import sqlite3
from contextlib import closing

import pytest

from tests.book.conftest import C1, fruit, gauge, reading, send
from webapp.book import verification
from webapp.book.house import parties, people, registry
from webapp.book.record.store import Book


@pytest.fixture
def told(book: Book) -> Book:
    """A book with entries, a refused one, and changes of the registry."""
    send(book, fruit(), *[reading(seq=n) for n in range(2, 6)], gauge(seq=6))
    send(book, {"id": "x"}, {"id": "y"})
    people.put_person(book, {"code": "ZZ", "name": "Zita", "roles": ["hand"], "access": "floor"}, by="OL")
    registry.put_vessel(book, {"mark": C1, "tare_kg": 46.3}, by="OL")
    registry.put_vessel(book, {"mark": C1, "tare_kg": 46.5}, by="OL")
    registry.put_instrument(book, {"id": "TH-9", "sort": "thermometer", "title": "probe", "low": -10}, by="OL")
    parties.put_party(book, {"name": "Corner shop", "role": "customer"}, by="OL")
    return book


def rewrite(book: Book, *statements: str) -> None:
    """Change the file as any program may that opens it, the book's own fences taken down."""
    with closing(sqlite3.connect(book.path)) as conn:
        for (name,) in conn.execute("SELECT name FROM sqlite_master WHERE type = 'trigger'").fetchall():
            conn.execute(f"DROP TRIGGER {name}")
        for statement in statements:
            assert conn.execute(statement).rowcount, statement
        conn.commit()


def test_a_book_that_nobody_touched_is_whole(told: Book) -> None:
    assert verification.verify(told) == []


@pytest.mark.parametrize(("statement", "found"), [
    ("UPDATE people SET access = 'office' WHERE code = 'ZZ'", "The person ZZ is not as its changes say: access."),
    ("DELETE FROM people WHERE code = 'ZZ'", "The person ZZ is no longer in the registry"),
    (f"UPDATE vessels SET tare_kg = 40 WHERE mark = '{C1}'", "is not as its changes say: tare_kg."),
    ("UPDATE instruments SET low = 0 WHERE id = 'TH-9'", "The instrument TH-9 is not as its changes say: low."),
    ("UPDATE parties SET number = '1'", "The party Corner shop, customer is not as its changes say: number."),
    ("DELETE FROM changes WHERE no % 2", "The record of changes is not what it was"),
    ("UPDATE changes SET person = 'XX' WHERE no = 1", "The record of changes is not what it was"),
    ("DELETE FROM aside", "The record of refused and clashing entries is not what it was"),
    ("UPDATE aside SET problems = '[]' WHERE id = 'x'", "The record of refused and clashing entries is not"),
    ("UPDATE entries SET mark = '' WHERE book_no = 2", "Column mark of book number 2"),
    ("UPDATE entries SET role = 'x' WHERE book_no = 2", "Column role of book number 2"),
    ("DELETE FROM entries WHERE book_no = 3", "Book numbers 3 to 3 are missing."),
])
def test_a_rewriting_is_found(told: Book, statement: str, found: str) -> None:
    rewrite(told, statement)
    assert any(found in trouble for trouble in verification.verify(told)), verification.verify(told)
