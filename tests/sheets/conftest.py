"""A book with the office in it, and a hand that takes sheets."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest

from webapp.book.house import people, registry
from webapp.book.opening import open_book
from webapp.book.record.store import Book
from webapp.sheets.entering import Stamp
from webapp.sheets.judge import look_over
from webapp.sheets.lookover import Look, Told
from webapp.sheets.putting import put_in
from webapp.words import sentence

NOW = datetime(2026, 11, 29, 9, 0, tzinfo=UTC)
STAMP = Stamp("OL", "office", NOW)


class Hand:
    """Takes sheets into one book."""

    def __init__(self, book: Book) -> None:
        self.book = book

    def look(self, text: str | bytes, name: str = "sheet.csv", **told: Any) -> Look:
        content = text.encode() if isinstance(text, str) else text
        return look_over(self.book, name, content, Told(**told), STAMP, registry.site(self.book))

    def put(self, text: str | bytes, name: str = "sheet.csv", **told: Any) -> tuple[int | None, Look]:
        content = text.encode() if isinstance(text, str) else text
        return put_in(self.book, name, content, Told(**told), STAMP, registry.site(self.book))

    def count(self) -> dict[str, int]:
        """How many rows each table of the record has."""
        tables = ("entries", "vessels", "people", "instruments", "parties", "takings", "sheets", "changes")
        return {name: int(self.book.query(f"SELECT count(*) AS n FROM {name}")[0]["n"]) for name in tables}


@pytest.fixture
def hand(tmp_path: Path) -> Iterator[Hand]:
    with open_book(tmp_path / "book.sqlite") as book:
        people.put_person(book, {"code": "OL", "name": "Orla L.", "access": "office"}, by="OL")
        registry.set_site(book, {"units": "metric", "time_zone": "Europe/Vienna"}, by="OL")
        yield Hand(book)


def faults(look: Look) -> list[tuple[int, str, str, str]]:
    """Row, column, weight and sentence of all that does not fit."""
    return [(row.number, fault.column, fault.weight, sentence(fault.said))
            for row in look.rows for fault in row.faults]


def of_whole(look: Look) -> list[str]:
    """What is said of the tables as a whole."""
    return [sentence(said) for part in look.parts for said in (*part.faults, *part.asks)]
