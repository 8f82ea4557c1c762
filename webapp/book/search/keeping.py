"""The index of the search, kept up at the end of each write and within it; what an older book has, in slices.

New entries are those above the last that was indexed. What else has a name stands on the list `search_due`, put there
by triggers. A write indexes the newest of that list, so that its own rows are among them; the rest is left to slices.
"""

from __future__ import annotations

import json
import logging
import sqlite3
import time
from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING, TypedDict, cast

from webapp.book.record.search_tables import FULL_TEXT, FULL_TEXT_NAMES, SOURCES, key_in
from webapp.book.record.store import Book
from webapp.book.search.folding import index_words
from webapp.book.search.lines import Line, line_of_entry, may_have_words, remarks_of
from webapp.book.search.sources import load_lines

if TYPE_CHECKING:
    from webapp.kinds.entry import Entry

VERSION = 1  # counted up where words are folded otherwise: the index of each book is then made anew
DUE_MOST = 500  # things that one write indexes
NEW_MOST = 2_000  # entries that the first write of a book indexes
ROWS_AT_ONCE = 1_000
SLICE_S = 0.2
SLICE_ENTRIES = 500
SHADOWS = ("data", "idx", "content", "docsize", "config")  # tables of FTS5 itself (sqlite.org/fts5.html, section 9)
TIES_MOST = 10_000  # lines of one sort, order and hash
_CORRUPT = sqlite3.SQLITE_CORRUPT
_log = logging.getLogger("webapp")


class _EntryRow(TypedDict):
    book_no: int
    id: str
    kind: str
    body: str


class State(TypedDict):
    """How far the index is: without entries above `above` and up to `below`. `due`: the last thing on the list."""

    above: int
    below: int
    version: int
    last: int
    due: int


_STATE = """
SELECT max(value) FILTER (WHERE name = 'above') AS above, max(value) FILTER (WHERE name = 'below') AS below,
max(value) FILTER (WHERE name = 'version') AS version,
coalesce((SELECT max(book_no) FROM entries), 0) AS last, coalesce((SELECT max(no) FROM search_due), 0) AS due
FROM search_state
"""


def load_state(book: Book) -> State:
    """Return the progress of the index."""
    row = book.row(State, _STATE)
    assert row
    return row


def prepare(book: Book) -> None:
    """Have the index kept up from now on; where it is of other rules, begin it anew. Inside the write that opens."""
    if load_state(book)["version"] != VERSION:
        begin_anew(book)
    book.before_commit = keep_up


def begin_anew(book: Book) -> None:
    """Empty the index and note everything as still to be indexed. Inside a write."""
    conn = book.db.conn
    for name in FULL_TEXT_NAMES:
        _drop(conn, name)
    for sql in FULL_TEXT:
        conn.execute(sql)
    conn.execute("DELETE FROM search_names")
    conn.execute("DELETE FROM search_due")
    for sort, (table, key, _) in SOURCES.items():
        conn.execute(f"INSERT INTO search_due (sort, key) SELECT '{sort}', {key_in(key, 't')} FROM {table} t")  # noqa: S608
    last = load_state(book)["last"]
    _set(book, above=last, below=last, version=VERSION)


def _drop(conn: sqlite3.Connection, name: str) -> None:
    """Drop a table of the index, though it is so damaged that SQLite can no longer open it to drop it."""
    try:
        conn.execute(f"DROP TABLE IF EXISTS search_{name}")
    except sqlite3.DatabaseError:
        conn.execute("PRAGMA writable_schema = ON")
        conn.execute("DELETE FROM sqlite_master WHERE name = ?", (f"search_{name}",))
        conn.execute("PRAGMA writable_schema = RESET")
        for shadow in SHADOWS:
            conn.execute(f"DROP TABLE IF EXISTS search_{name}_{shadow}")


def keep_up(book: Book) -> None:
    """Index what this write has put in. A damaged index is begun anew later, and never holds up the write."""
    conn = book.db.conn
    state = load_state(book)
    if state["version"] != VERSION or not (state["due"] or state["last"] > state["above"]):
        return
    conn.execute("SAVEPOINT search")
    try:
        if state["above"] == 0 and state["last"] > NEW_MOST:  # a whole log was taken in
            _set(book, above=state["last"], below=state["last"])
        elif state["last"] > state["above"]:
            _index_entries(book, state["above"], state["last"])
            _set(book, above=state["last"])
        if state["due"]:
            _index_due(book, DUE_MOST)
    except sqlite3.DatabaseError as error:
        if (getattr(error, "sqlite_errorcode", 0) or 0) & 0xFF != _CORRUPT:
            raise
        _log.exception("the index of the search is damaged and will be made anew")
        conn.execute("ROLLBACK TO search")
        _set(book, version=0)
    conn.execute("RELEASE search")


def index_slice(book: Book) -> bool:
    """Index some of what an older book has, in a write of its own; return whether anything is left."""
    if not is_behind(book):
        return False
    with book.write():
        state = load_state(book)
        if state["version"] != VERSION:
            begin_anew(book)
            return True
        until = time.monotonic() + SLICE_S
        while state["due"] and time.monotonic() < until:
            _index_due(book, DUE_MOST)
            state = load_state(book)
        below = state["below"]
        while below > 0 and time.monotonic() < until:
            start = max(0, below - SLICE_ENTRIES)
            _index_entries(book, start, below)
            below = start
        _set(book, below=below)
        return is_behind(book)


def is_behind(book: Book) -> bool:
    """Say whether something in the book cannot be found yet."""
    state = load_state(book)
    return bool(state["version"] != VERSION or state["due"] or state["below"] > 0)


def index_all(book: Book, pause_s: float = 0.0) -> None:
    """Index all that is left, slice by slice, with a pause [s] between them where others wait for the book."""
    while index_slice(book):
        time.sleep(pause_s)


def rebuild(book: Book) -> None:
    """Throw the index away and make it again."""
    with book.write():
        begin_anew(book)
    index_all(book)
    with book.write() as database:
        database.table("search_names").optimize()


def _index_entries(book: Book, after: int, last: int) -> None:
    """Index the entries with these book numbers: more than `after`, up to `last`."""
    sql = "SELECT book_no, id, kind, body FROM entries WHERE book_no > ? AND book_no <= ? ORDER BY book_no LIMIT ?"
    while rows := book.rows(_EntryRow, sql, (after, last, ROWS_AT_ONCE)):
        lines: list[Line] = []
        remarks: list[tuple[int, str]] = []
        for row in rows:
            if not may_have_words(row["kind"], row["body"]):
                continue
            entry = cast("Entry", json.loads(row["body"]))  # intake has let it in as one
            line = line_of_entry(row["id"], entry)
            if line:
                lines.append(line)
            if texts := remarks_of(entry, line):
                remarks.append((row["book_no"], index_words(entry.get("mark") or "", *texts)))
        # In the order of their numbers: FTS5 writes out what it holds whenever a number goes down.
        book.db.conn.executemany("INSERT INTO search_remarks (rowid, words) VALUES (?, ?)", remarks)
        _put_lines(book, lines, [])
        after = rows[-1]["book_no"]


def _index_due(book: Book, most: int) -> None:
    """Index the newest things on the list, each as it is now, and take them off."""
    conn = book.db.conn
    rows = conn.execute("SELECT no, sort, key FROM search_due ORDER BY no DESC LIMIT ?", (most,)).fetchall()
    due: dict[str, set[str]] = {}
    for _, sort, key in rows:
        due.setdefault(sort, set()).add(key)
    lines = [line for sort, keys in due.items() for line in load_lines(book, sort, sorted(keys))]
    _put_lines(book, lines, [(sort, key) for sort, keys in due.items() for key in keys])
    conn.execute("DELETE FROM search_due WHERE no >= ?", (rows[-1][0],))


def _put_lines(book: Book, lines: Sequence[Line], looked_at: Iterable[tuple[str, str]]) -> None:
    """Put lines into the index, in place of what stood there under these keys. What has not changed stays."""
    conn = book.db.conn
    fresh = {(line.sort, line.key): line for line in lines}
    pairs = json.dumps(list(looked_at) or list(fresh))
    was = conn.execute(
        "SELECT n.id, n.sort, n.key, n.name, n.facts, n.words FROM json_each(?) w CROSS JOIN search_names n "
        "ON n.sort = w.value ->> 0 AND n.key = w.value ->> 1 ORDER BY n.id", (pairs,),
    ).fetchall()
    gone = []
    for row_id, sort, key, name, facts, words in was:
        line = fresh.get((sort, key))
        if line and line.words == words and line.id <= row_id < line.id + TIES_MOST:
            if line.name != name or line.facts != json.loads(facts):
                told = (line.name, json.dumps(line.facts), row_id)
                conn.execute("UPDATE search_names SET name = ?, facts = ? WHERE id = ?", told)
            del fresh[sort, key]
        else:
            gone.append((row_id, words))
    conn.executemany("INSERT INTO search_names_fts (search_names_fts, rowid, words) VALUES ('delete', ?, ?)", gone)
    conn.executemany("DELETE FROM search_names WHERE id = ?", [(row_id,) for row_id, _ in gone])
    for line in sorted(fresh.values(), key=lambda line: line.id):
        row_id = _put_name(book, line)
        conn.execute("INSERT INTO search_names_fts (rowid, words) VALUES (?, ?)", (row_id, line.words))


def _put_name(book: Book, line: Line) -> int:
    """Put a line into its table and return its id: its own, or the next one that is free."""
    told = (line.sort, line.key, line.name, json.dumps(line.facts), line.words)
    for row_id in range(line.id, line.id + TIES_MOST):
        sql = "INSERT INTO search_names VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT (id) DO NOTHING"
        if book.db.conn.execute(sql, (row_id, *told)).rowcount:
            return row_id
    raise AssertionError("as many lines of one second cannot have the same hash")


def _set(book: Book, **values: int) -> None:
    lines = [(value, name) for name, value in values.items()]
    book.db.conn.executemany("UPDATE search_state SET value = ? WHERE name = ?", lines)
