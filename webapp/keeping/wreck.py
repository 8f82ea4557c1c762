"""Reading what can be read of a damaged book: table by table from both ends, and number by number where a walk fails.

Only a copy is opened. What SQLite needs to open a file at all (its first page, its length) is mended in the copy where
that is known: a file that was cut off is filled up to the length that its head names (fileformat2.html of sqlite.org).
"""

from __future__ import annotations

import json
import sqlite3
import tempfile
from collections.abc import Iterator, Mapping, Sequence
from contextlib import closing, suppress
from dataclasses import dataclass, field
from itertools import zip_longest
from pathlib import Path
from typing import Any, TypeAlias

from webapp.book.fold import fold, unjudged
from webapp.book.house import proof
from webapp.book.record import heads, log, seals
from webapp.book.record.damage import examine
from webapp.book.record.errors import BookError
from webapp.book.record.rows import LogRow
from webapp.book.record.store import Book

Row: TypeAlias = dict[str, Any]
_BLOCK = 4096
_ROW_BYTES_LEAST = 200  # an id, three digests and the rest of a row of the log
_LENGTH_AT, _PAGE_SIZE_AT = slice(28, 32), slice(16, 18)
# What a row can raise that nobody wrote so: texts in the place of numbers, bytes that are no text.
_UNREADABLE = (ValueError, TypeError, LookupError, AttributeError, OverflowError)


@dataclass
class Table:
    """The rows of a table that could be read, by their key, and whether the walk came to its end."""

    rows: dict[tuple[object, ...], Row] = field(default_factory=dict)
    is_whole: bool = True


def copy_readable(path: Path, copy: Path) -> None:
    """Copy a file block by block; a block that the disk does not give is zeros in the copy. OSError if none opens."""
    with path.open("rb", buffering=0) as source, copy.open("wb") as target:
        length = source.seek(0, 2)
        for at in range(0, length, _BLOCK):
            source.seek(at)
            try:
                target.write(source.read(min(_BLOCK, length - at)))
            except OSError:
                target.write(bytes(min(_BLOCK, length - at)))
    with copy.open("r+b") as file:
        head = file.read(100)
        size = int.from_bytes(head[_PAGE_SIZE_AT], "big") or 1
        wanted = int.from_bytes(head[_LENGTH_AT], "big") * (65536 if size == 1 else size)
        if length < wanted <= max(64 * length, 2**20):  # a head that is damaged itself may name any length
            file.truncate(wanted)


def read_tables(copy: Path, known: Mapping[str, Sequence[str]]) -> dict[str, Table]:
    """Return of the tables of those names what can be read in a copy; none where it does not open at all.

    known: the columns of each, in the order of the program's own tables.
    """
    try:
        with closing(sqlite3.connect(copy)) as conn:
            conn.text_factory = lambda raw: raw.decode("utf-8", errors="replace")
            conn.execute("PRAGMA writable_schema = ON")  # a line of the schema that is damaged does not stop the rest
            tables = {name: _read(conn, name, columns, copy.stat().st_size) for name, columns in known.items()}
            return {name: table for name, table in tables.items() if table is not None}
    except (sqlite3.Error, *_UNREADABLE):
        return {}


def _read(conn: sqlite3.Connection, name: str, known: Sequence[str], file_bytes: int) -> Table | None:
    found = Table()
    try:
        about = conn.execute(f"PRAGMA table_info({name})").fetchall()
    except (sqlite3.Error, *_UNREADABLE):
        return None
    if not about:
        return None
    columns = _own_names([one[1] for one in about], known)
    keys = [one[0] for one in sorted(about, key=lambda one: one[5]) if one[5]]
    if not keys:
        return Table(is_whole=False)
    is_numbered = len(keys) == 1 and about[keys[0]][2] == "INTEGER"
    # By place: a name that is damaged may be no text at all, which ends the reading of the table.
    places = ", ".join(f"c{at}" for at in range(len(columns)))
    rows = f"WITH w ({places}) AS (SELECT * FROM {name} NOT INDEXED) SELECT * FROM w"  # noqa: S608
    for way in ("ASC", "DESC"):
        order = ", ".join(f"c{key} {way}" for key in keys)
        _take(conn, f"{rows} ORDER BY {order}", (), columns, keys, found)
        if found.is_whole:
            return found
    if is_numbered:
        most = max([key[0] for key in found.rows if isinstance(key[0], int)], default=0)
        for number in range(1, max(min(most, file_bytes), file_bytes // _ROW_BYTES_LEAST) + 1):
            if (number,) not in found.rows:
                _take(conn, f"{rows} WHERE c{keys[0]} = ?", (number,), columns, keys, found)
    return found


def _own_names(read: Sequence[str], known: Sequence[str]) -> list[str]:
    """Return the names of columns; one that nobody knows, in the place of one that is missing, is that one, damaged.

    No step of the tables of the record has moved or renamed a column: an older book has fewer at the end.
    """
    return [
        own if name not in known and own is not None and own not in read else name
        for name, own in zip_longest(read, known[:len(read)])
    ]


def _take(
    conn: sqlite3.Connection, sql: str, params: tuple[object, ...], columns: list[str], keys: list[int], found: Table
) -> None:
    try:
        cursor = conn.execute(sql, params)
    except (sqlite3.Error, *_UNREADABLE):
        found.is_whole = False
        return
    for values in _until_it_fails(cursor, found):
        if any(isinstance(value, str) and "\ufffd" in value for value in values):
            found.is_whole = False  # bytes that are no text
            continue
        found.rows.setdefault(tuple(values[key] for key in keys), dict(zip(columns, values, strict=True)))


def _until_it_fails(cursor: sqlite3.Cursor, found: Table) -> Iterator[tuple[Any, ...]]:
    while True:
        try:
            row = cursor.fetchone()
        except (sqlite3.Error, *_UNREADABLE):
            found.is_whole = False
            return
        if row is None:
            return
        yield row


def is_sound(row: Row) -> bool:
    """Return whether a row of the log says what was entered: by the digest of its body, and column by column."""
    try:
        return (
            isinstance(row["book_no"], int) and row["book_no"] > 0 and isinstance(row["skew_s"], float)
            and all(isinstance(row[name], str) for name in ("digest", "received_at", "via", "body", "id", "kind"))
            and log.sha256(row["body"]) == row["body_sha256"] and isinstance(json.loads(row["body"]), dict)
            and not log.find_strayed(as_log_row(row))
        )
    except _UNREADABLE:
        return False


def as_log_row(row: Row) -> LogRow:
    """Return a row that was read as a row of the log."""
    return row  # type: ignore[return-value]  # its columns are those of the table


def find_damage(path: Path) -> str:
    """Return what is wrong with a book's file, read page by page and digest by digest; "" where nothing is found.

    What is worked out of the entries is worked out anew in a copy beside it, and compared.
    """
    try:
        if wrong := examine(path, is_quick=False):
            return "; ".join(wrong)
        with Book(path) as book:
            heads.take_heads(book)  # each column of each list, by its name: a schema may be damaged and still read
            for row in book.query("SELECT name FROM sqlite_master WHERE sql LIKE '%USING fts5(%'"):
                book.query(f"SELECT rowid FROM {row['name']} WHERE {row['name']} MATCH 'a' LIMIT 1")  # noqa: S608
            if wrong := [*log.verify(book), *seals.verify(book), *proof.verify(book)]:
                return wrong[0]
        return "" if _follows(path) else "What is worked out of the entries is not what follows from them."
    except BookError as error:
        return str(error)
    except (sqlite3.Error, *_UNREADABLE) as error:
        return str(error) or type(error).__name__


def _follows(path: Path) -> bool:
    with tempfile.TemporaryDirectory(dir=path.parent, prefix=".look-") as folder:
        copy = Path(folder) / path.name
        with closing(sqlite3.connect(path)) as source, closing(sqlite3.connect(copy)) as target:
            source.backup(target)
        before = None
        with Book(copy) as book:
            # The dump has the last state of each key alone.
            try:
                for (body,) in book.db.conn.execute("SELECT body FROM states"):
                    json.loads(body)
            except (sqlite3.Error, *_UNREADABLE):
                return False
            with suppress(sqlite3.Error, *_UNREADABLE):
                unjudged.judge_all(book)
                before = fold.dump(book)
            try:
                fold.rebuild(book)
            except (sqlite3.Error, *_UNREADABLE):
                return True  # the entries have their digests: then it is no damage, but a fault of the program
            return fold.dump(book) == before
