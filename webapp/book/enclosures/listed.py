"""Enclosures as readers find them: of entries, of a vessel, of many vessels; newest first."""

from __future__ import annotations

import json
from collections.abc import Iterable
from typing import TypedDict

from webapp.book.record.enclosed import ADDED
from webapp.book.record.store import Book

LISTED_MOST = 60
LOOKED_AT_MOST = 1_000
_SELECT = """
SELECT n.sha256, n.entry, n.about, n.mark, e.book_no, e.kind, e.person, e.read_at, e.body,
coalesce(k.type, '') AS type, coalesce(k.size, 0) AS size, coalesce(k.arrived_at, '') AS arrived_at,
coalesce(f.standing, '') AS standing
FROM enclosed n JOIN entries e ON e.id = n.entry LEFT JOIN amendments a ON a.id = e.id
LEFT JOIN folded f ON f.root = coalesce(a.root, e.id) LEFT JOIN enclosures k ON k.sha256 = n.sha256
"""
_OF_ENTRIES = f"{_SELECT} WHERE n.about IN (SELECT value FROM json_each(?)) ORDER BY e.book_no, n.sha256"  # noqa: S608 -- fixed text
_OF_MARKS = f"""{_SELECT}
WHERE n.mark IN (SELECT value FROM json_each(?)) AND n.mark <> '' AND e.read_at >= ?
ORDER BY e.book_no DESC, n.sha256 LIMIT ?
"""  # noqa: S608 -- fixed text


class _Row(TypedDict):
    sha256: str
    entry: str
    about: str
    mark: str
    book_no: int
    kind: str
    person: str
    read_at: str
    body: str
    type: str
    size: int
    arrived_at: str
    standing: str


class Enclosed(TypedDict):
    """An enclosure, and the entry that names it. `type` is empty while its file has not come."""

    sha256: str
    entry: str
    about: str
    mark: str
    kind: str
    person: str
    read_at: str
    what: str
    type: str
    size: int
    arrived_at: str
    struck: bool


def of_entries(book: Book, ids: Iterable[str]) -> list[Enclosed]:
    """Return the enclosures of some entries: those they name, and those that were added to them, oldest first."""
    wanted = json.dumps(sorted(set(ids)))
    return [_read(row) for row in book.rows(_Row, _OF_ENTRIES, (wanted,))]


def of_marks(book: Book, marks: Iterable[str], most: int = LISTED_MOST, *, since: str = "") -> list[Enclosed]:
    """Return the enclosures of entries about some vessels that were read since a time, newest first, none struck."""
    wanted = json.dumps(sorted(set(marks) - {""}))
    rows = book.rows(_Row, _OF_MARKS, (wanted, since, most))
    return [one for one in map(_read, rows) if not one["struck"]]


def of_stays(book: Book, stays: Iterable[tuple[str, str, str]], most: int = LISTED_MOST) -> list[Enclosed]:
    """Return the enclosures of what stood in vessels, each (mark, since, until) by their days; until may be empty."""
    spans: dict[str, list[tuple[str, str]]] = {}
    for mark, since, until in stays:
        spans.setdefault(mark, []).append((since[:10], until[:10] or "~"))
    return [
        one for one in of_marks(book, spans, LOOKED_AT_MOST)
        if any(since <= one["read_at"][:10] <= until for since, until in spans[one["mark"]])
    ][:most]


def _read(row: _Row) -> Enclosed:
    said = json.loads(row["body"])["values"].get("what") or {} if row["kind"] == ADDED else {}
    return {
        "sha256": row["sha256"], "entry": row["entry"], "about": row["about"], "mark": row["mark"],
        "kind": row["kind"], "person": row["person"], "read_at": row["read_at"], "what": str(said.get("raw") or ""),
        "type": row["type"], "size": row["size"], "arrived_at": row["arrived_at"],
        "struck": row["standing"] == "struck",
    }
