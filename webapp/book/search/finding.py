"""What answers to a text: things that have a name, by sort, and entries whose words hold it.

The cost is bounded: of each sort only the first that answer are read, newest or earliest in the alphabet first, and
they are put in order here.
"""

from __future__ import annotations

import json
from collections.abc import Collection
from dataclasses import dataclass, field
from typing import TypedDict

from webapp.book.record import log
from webapp.book.record.rows import Logged
from webapp.book.record.store import Book
from webapp.book.search.folding import Wanted
from webapp.book.search.lines import SORTS, Facts, first_id, last_id, line_of_entry, remarks_of

LOOKED_AT = 40  # of each sort
BOOK_NO_DIGITS = 12


class _NameRow(TypedDict):
    id: int
    sort: str
    key: str
    name: str
    facts: str
    root: str | None
    standing: str | None


@dataclass(frozen=True, slots=True)
class Hit:
    """A thing that answers. `key` is that of its sort: mark, id, code; of a run or load `root` names it.

    `state`: entered, stopped, struck or amended, where it is an entry that gave the name; else empty.
    """

    sort: str
    key: str
    name: str
    facts: Facts
    is_exact: bool
    root: str = ""
    state: str = ""


@dataclass(frozen=True, slots=True)
class Said:
    """An entry whose own words answer, with those words; none where it answers by its book number."""

    row: Logged
    texts: list[str]


@dataclass(slots=True)
class Found:
    """All that answers, by sort in the order of SORTS, and entries, newest first. `more`: sorts with more than that."""

    hits: dict[str, list[Hit]] = field(default_factory=dict)
    said: list[Said] = field(default_factory=list)
    more: set[str] = field(default_factory=set)

    @property
    def exact_vessel(self) -> Hit | None:
        """The one vessel that is called just so."""
        called = [hit for hit in self.hits.get("vessel", []) if hit.is_exact]
        return called[0] if len(called) == 1 else None


def find(
    book: Book, wanted: Wanted, *, hidden: Collection[str] = (), only: str | None = None, most: int = 8
) -> Found:
    """Return the hits, at most `most` of each sort, without the hidden sorts; `only` one sort, or `entry`."""
    found = Found()
    if not wanted:
        return found
    sorts = [sort for sort in SORTS if sort not in hidden and only in (None, sort)]
    looked_at = max(most + 1, LOOKED_AT)
    if sorts:
        _find_names(book, wanted, sorts, looked_at, found)
    for sort, hits in found.hits.items():
        if len(hits) > most:
            found.more.add(sort)
            del hits[most:]
    if only in (None, "entry"):
        found.said = _find_said(book, wanted, most + 1)
        if len(found.said) > most:
            found.more.add("entry")
            del found.said[most:]
    return found


def _find_names(book: Book, wanted: Wanted, sorts: Collection[str], most: int, found: Found) -> None:
    # Each sort by itself, and first what has the whole as a word: so a thousand others cannot hide it.
    part = (
        "SELECT rowid FROM (SELECT rowid FROM search_names_fts WHERE search_names_fts MATCH :{} "
        "AND rowid BETWEEN {} AND {} ORDER BY rowid DESC LIMIT :most)"
    )
    parts = [part.format(way, first_id(sort), last_id(sort)) for sort in sorts for way in ("exact", "broad")]
    rows = book.rows(
        _NameRow,
        f"WITH hit(id) AS ({' UNION '.join(parts)}) "  # noqa: S608
        "SELECT n.id, n.sort, n.key, n.name, n.facts, coalesce(a.root, f.root) AS root, "
        "CASE WHEN f.entry = n.key THEN f.standing WHEN f.root IS NOT NULL THEN 'amended' END AS standing "
        "FROM hit CROSS JOIN search_names n USING (id) LEFT JOIN amendments a ON a.id = n.key "
        "LEFT JOIN folded f ON f.root = coalesce(a.root, n.key)",
        {"exact": wanted.exact, "broad": wanted.broad, "most": most},
    )
    hits = [(row["id"], _hit(row, wanted)) for row in rows]
    for sort in sorts:
        own = sorted((pair for pair in hits if pair[1].sort == sort), key=lambda pair: _rank(pair[1], pair[0], wanted))
        if own:
            found.hits[sort] = [hit for _, hit in own]


def _hit(row: _NameRow, wanted: Wanted) -> Hit:
    facts: Facts = json.loads(row["facts"])
    also = row["key"] if row["sort"] in ("vessel", "person") else facts.get("lot") or facts.get("lot_mark") or ""
    is_exact = wanted.is_called(row["name"], also)
    is_entry = row["sort"] in ("run", "load", "paper")
    state = (row["standing"] or "entered") if is_entry else ""
    return Hit(row["sort"], row["key"], row["name"], facts, is_exact, row["root"] or row["key"], state)


def _rank(hit: Hit, row_id: int, wanted: Wanted) -> tuple[object, ...]:
    """Return the sorting key of a hit: exact ones first, those in use before others, then as they come."""
    is_out = bool(hit.facts.get("retired")) or hit.state in ("struck", "amended")
    by_name = (len(hit.name), hit.name) if hit.sort == "vessel" else (0, "")
    return (not hit.is_exact, is_out, *by_name, -row_id)


def _find_said(book: Book, wanted: Wanted, most: int) -> list[Said]:
    asked = int(wanted.text) if wanted.text.isdecimal() and len(wanted.text) <= BOOK_NO_DIGITS else 0
    ids = book.db.conn.execute(_SAID, {"broad": wanted.broad, "most": most, "asked": asked}).fetchall()
    rows = log.get_all(book, (row[0] for row in ids)).values() if ids else ()
    said = [Said(row, words_of(row)) for row in rows]
    said.sort(key=lambda one: (one.row["book_no"] != asked, -one.row["book_no"]))
    return said[:most]


_SAID = """
SELECT e.id FROM (SELECT rowid FROM search_remarks WHERE search_remarks MATCH :broad ORDER BY rowid DESC LIMIT :most) h
CROSS JOIN entries e ON e.book_no = h.rowid UNION SELECT id FROM entries WHERE book_no = :asked
"""


def words_of(row: Logged) -> list[str]:
    """Return the free words of an entry."""
    entry = row["entry"]
    return remarks_of(entry, line_of_entry(row["id"], entry))
