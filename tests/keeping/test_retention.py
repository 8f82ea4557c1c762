"""Records are kept by the fill, never by date: nothing takes them out, whatever their age."""

import re
import sqlite3
from datetime import timedelta
from pathlib import Path

import pytest

from tests.book.conftest import NOW, fill_world, reading, send
from webapp.book.opening import open_book
from webapp.cli import main

PROGRAM = Path(__file__).parents[2] / "webapp"


@pytest.mark.parametrize("table", ["entries", "aside", "changes", "closes"])
def test_the_file_itself_lets_nothing_of_the_record_be_taken_out(tmp_path, table):
    with open_book(tmp_path / "book.sqlite") as book:
        fill_world(book)
        old = NOW - timedelta(days=365 * 30)
        send(book, reading(read_at=old, typed_at=old), {"id": "no entry"}, now=old)
        figures = "1, '1990-01', 'month', '', '', '', '{}', '', 1, 'OL', ''"
        with book.write() as database:
            database.conn.execute(f"INSERT INTO closes VALUES ({figures})")
        with pytest.raises(sqlite3.IntegrityError), book.write() as database:
            database.conn.execute(f"DELETE FROM {table}")
        assert book.one(f"SELECT count(*) AS n FROM {table}")["n"] > 0


def test_no_command_takes_records_out(tmp_path):
    """By its name or an option; and no line of the program deletes from the record."""
    for name, command in main.commands.items():
        options = " ".join(option for param in command.params for option in param.opts)
        assert not re.search(r"\b(purge|prune|older|before|expire|delete)\b", f"{name} {options}"), name
    # A table of the scheme temp is one connection's own scratch and in no file of the book (sqlite.org/tempfiles.html).
    record = "entries|aside|changes|closes|vessels|people|instruments|devices"
    found = [
        f"{path.relative_to(PROGRAM)}: {line.strip()}"
        for path in PROGRAM.rglob("*.py")
        for line in path.read_text("utf-8").splitlines()
        if re.search(rf"DELETE FROM ({record})\b", line)
        or re.search(r"DROP TABLE (?!flows\b|temp\.|IF EXISTS search_)", line)
    ]
    assert found == []
