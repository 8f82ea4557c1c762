"""Heads that were noted outside the book, against a book whose own triggers somebody has taken out.

The rows are put in plainly: what is tested is that no column of them can be changed, not what they mean.
"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from webapp.book.opening import open_book
from webapp.book.record import heads
from webapp.book.record.store import Book

LISTS = ("entries", "aside", "changes", "closes", "takings")
ROWS = 7


@pytest.fixture
def kept(tmp_path: Path) -> Iterator[Book]:
    with open_book(tmp_path / "book.db") as book, book.write() as database:
        conn = database.conn
        for name in LISTS:
            conn.execute(f"DROP TRIGGER {name}_{'stays' if name == 'aside' else 'stay'}")
            conn.execute(f"DROP TRIGGER {name}_{'remains' if name == 'aside' else 'remain'}")
            for no in range(1, ROWS + 1):
                _add(book, name, no)
        yield book


def _columns(book: Book, name: str) -> list[tuple[str, str]]:
    return [(row[1], row[2]) for row in book.db.conn.execute(f"PRAGMA table_info({name})")]


def _add(book: Book, name: str, no: int) -> None:
    made = [f"{column} {no}" if kind == "TEXT" else no for column, kind in _columns(book, name)]
    book.db.conn.execute(f"INSERT INTO {name} VALUES ({', '.join('?' * len(made))})", made)


@pytest.mark.parametrize("name", LISTS)
def test_every_column_of_every_list_is_held(kept: Book, name: str) -> None:
    noted = heads.take_heads(kept)
    assert heads.compare(kept, noted) == []
    for column, kind in _columns(kept, name):
        key = "book_no" if name == "entries" else "no"
        kept.db.conn.execute("SAVEPOINT before")
        value = "other" if kind == "TEXT" else 99
        kept.db.conn.execute(f"UPDATE {name} SET {column} = ? WHERE {key} = 4", (value,))
        assert heads.compare(kept, noted) == [f"The first {ROWS} of {name} are not those that were noted."], column
        kept.db.conn.execute("ROLLBACK TO before")
    assert heads.compare(kept, noted) == []


@pytest.mark.parametrize("name", LISTS)
def test_what_is_cut_off_or_taken_out_is_found_and_growth_is_not(kept: Book, name: str) -> None:
    noted = heads.take_heads(kept)
    _add(kept, name, ROWS + 1)
    assert heads.compare(kept, heads.read_heads("\n".join(f"noted: {head}." for head in noted))) == []
    key = "book_no" if name == "entries" else "no"
    kept.db.conn.execute(f"DELETE FROM {name} WHERE {key} = 2")
    assert heads.compare(kept, noted) == [f"The first {ROWS} of {name} are not those that were noted."]
    kept.db.conn.execute(f"DELETE FROM {name} WHERE {key} > 5")
    assert heads.compare(kept, noted) == [f"Of {name}, {ROWS} were noted, and the book has only 4."]
