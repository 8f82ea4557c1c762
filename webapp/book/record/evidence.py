"""Sheets that came into the book: each kept as it came, with its digest, and what of it was put in or taken back."""

from __future__ import annotations

import base64
import binascii
import hashlib
import json
from collections.abc import Mapping, Sequence
from typing import TypedDict

from webapp.book.record.store import Book

LISTED_MOST = 200


class PutRow(TypedDict):
    """One row that was put in: its table and its number there, what it became, and the entry, if it is one."""

    table: str
    row: int
    target: str
    key: str
    entry: str


class Taking(TypedDict):
    """One time that a sheet was put in, and when it was taken back, if it was."""

    no: int
    sha256: str
    name: str
    size: int
    at: str
    person: str
    told: dict[str, object]
    rows: list[PutRow]
    back_at: str | None
    back_by: str | None
    reason: str | None


class _Row(TypedDict):
    no: int
    sha256: str
    name: str
    size: int
    at: str
    person: str
    told: str
    rows: str
    back_at: str | None
    back_by: str | None
    reason: str | None


_TAKINGS = (
    "SELECT t.no, t.sha256, s.name, s.size, t.at, t.person, t.told, t.rows, b.at AS back_at, b.person AS back_by, "
    "b.reason FROM takings t JOIN sheets s ON s.sha256 = t.sha256 LEFT JOIN taken_back b ON b.taking = t.no "
)


def digest_of(content: bytes) -> str:
    """Return the SHA-256 of a sheet. [64 hexadecimal digits]"""
    return hashlib.sha256(content).hexdigest()


def keep_taking(
    book: Book, name: str, content: bytes, rows: Sequence[PutRow], *, told: Mapping[str, object], person: str, at: str
) -> int:
    """Keep a sheet and what of it was put in; return the number of this taking. Inside a write only."""
    sha, text = digest_of(content), base64.b64encode(content).decode()
    conn = book.db.conn
    conn.execute("INSERT OR IGNORE INTO sheets VALUES (?, ?, ?, ?, ?)", (sha, name[:200], len(content), text, at))
    made = conn.execute(
        "INSERT INTO takings (sha256, at, person, told, rows) VALUES (?, ?, ?, ?, ?)",
        (sha, at, person, json.dumps(told), json.dumps(rows)),
    )
    return int(made.lastrowid or 0)


def note_taken_back(book: Book, no: int, *, person: str, reason: str, at: str) -> None:
    """Note that a sheet was taken back. Inside a write only."""
    book.db.conn.execute("INSERT INTO taken_back VALUES (?, ?, ?, ?)", (no, at, person, reason))


def load_takings(book: Book) -> list[Taking]:
    """Return the sheets that were put in, the newest first; at most LISTED_MOST of them."""
    rows = book.rows(_Row, f"{_TAKINGS} ORDER BY t.no DESC LIMIT ?", (LISTED_MOST,))
    return [_taking(row) for row in rows]


def load_taking(book: Book, no: int) -> Taking | None:
    """Return one taking, or None."""
    row = book.row(_Row, f"{_TAKINGS} WHERE t.no = ?", (no,))
    return _taking(row) if row else None


def load_content(book: Book, sha: str) -> bytes | None:
    """Return a sheet as it came, or None."""
    row = book.one("SELECT content FROM sheets WHERE sha256 = ?", (sha,))
    return base64.b64decode(row["content"]) if row else None


def _taking(row: _Row) -> Taking:
    return {**row, "told": json.loads(row["told"]), "rows": json.loads(row["rows"])}


def verify(book: Book) -> list[str]:
    """Return a sentence for each sheet that is not as it came, and for each of its entries that the book has not."""
    troubles = []
    for row in book.db.conn.execute("SELECT sha256, name, content FROM sheets ORDER BY sha256"):
        if not _is_as_it_came(row[2], row[0]):
            troubles.append(f"The sheet {row[1]} is not as it came: its digest is another. Restore a backup.")
    lost = book.query(
        "SELECT t.no, j.value ->> 'row' AS row FROM takings t, json_each(t.rows) j "
        "WHERE j.value ->> 'entry' <> '' AND NOT EXISTS (SELECT 1 FROM entries e WHERE e.id = j.value ->> 'entry') "
        "ORDER BY t.no LIMIT 20"
    )
    troubles += [f"Row {row['row']} of sheet {row['no']} says it is in the book, and is not." for row in lost]
    without = book.query("SELECT no FROM takings WHERE sha256 NOT IN (SELECT sha256 FROM sheets) ORDER BY no LIMIT 20")
    return troubles + [f"The file of sheet {row['no']} is missing. Restore a backup." for row in without]


def _is_as_it_came(content: str, sha: str) -> bool:
    try:
        return digest_of(base64.b64decode(content, validate=True)) == sha
    except binascii.Error:
        return False
