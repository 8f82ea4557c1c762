"""The fold: from the log to states, flows and queries, brought up to date entry by entry.

Entries have their place by order key (when they were read). A new, amended, struck or answered entry is worked out at
its place; a key whose state right after that place is not what it was makes the next entry that touches the key be
worked out again, and so on until the state is the same as before. So a late entry costs what it changes, and the result
is what folding all entries in their order would give (`rebuild`, and the tests).

What a change of the registry concerns waits in the table `unjudged` and is worked out a slice at a time (unjudged.py);
entries are folded in between. So does what follows from late entries, where it is much.
"""

from __future__ import annotations

import json
from collections.abc import Callable

from webapp.book.fold import differences, families, judgings
from webapp.book.fold.evaluate import Outcome
from webapp.book.fold.families import Fresh
from webapp.book.fold.replay import Replay, Slice
from webapp.book.fold.states import load_newest
from webapp.book.record.enclosed import note_enclosed
from webapp.book.record.log import canonical, root_of
from webapp.book.record.rows import NotedRow
from webapp.book.record.store import Book
from webapp.kinds.entry import Entry
from webapp.kinds.key import stored_key
from webapp.kinds.state import State

ANEW_TOGETHER = 5_000  # entries that are folded in one write where the book is folded anew
Progress = Callable[[int, int], None]
DERIVED = ("amendments", "answers", "folded", "touches", "states", "flows", "queries", "runs", "bottlings", "fills",
           "dispatches", "month_sums", "placings", "unjudged", "seams", "enclosed")


def note_entry(book: Book, row: NotedRow, entry: Entry) -> None:
    """Note a new entry for the next `settle`, inside a write."""
    book.memory.dirty_roots |= families.note_family(book, row, entry)
    if entry.get("enclosed"):
        note_enclosed(book, entry)


def note_clash(book: Book, entry_id: str) -> None:
    """Note that another body came under an id, inside a write: a person has to look."""
    book.memory.dirty_roots.add(root_of(book, entry_id))


def settle(book: Book, fresh: Fresh | None = None, *, in_part: bool = False) -> dict[str, Outcome]:
    """Fold what is dirty, inside a write. Return what came of each entry that was worked out, by its id.

    in_part: what is dirty is worked out, and what follows from it for a fraction of a second; the rest of that goes on
    the list (unjudged.py).
    """
    memory = book.memory
    if not memory.dirty_roots:
        return {}
    if fresh:
        fresh.find_alone(book)
    replay = Replay(book, fresh, in_part=in_part)
    for root in memory.dirty_roots:
        replay.plan(root)
    memory.dirty_roots.clear()
    return replay.run()


def settle_slice(book: Book) -> None:
    """Work out again some of what is unjudged, inside a write: the earliest, for a fraction of a second."""
    Slice(book).run()


def rebuild(book: Book, progress: Progress | None = None) -> None:
    """Throw the fold away and make it again from the log. progress: told how many entries are folded, and of how many.

    Inside a write all of it is one with that write. Else each slice of it is durable by itself, and whoever opens a
    book in which it was broken off goes on with it: what is left stands on the list of what is to be judged.
    """
    with book.write():
        # What is compared is held by the connection alone: where a judging is under way, all is one write.
        watch = differences.keep_fold(book)
        many = _begin_anew(book)
        if watch:
            _fold_listed(book, many, progress)
            differences.compare_fold(book, watch)
            judgings.end_judging(book)
    if not watch:
        _fold_listed(book, many, progress)


def _begin_anew(book: Book) -> int:
    """Throw the fold away, note the ties of families and pictures, and list all; return how many. Inside a write."""
    conn = book.db.conn
    for table in DERIVED:
        conn.execute(f"DELETE FROM {table}")  # noqa: S608
    book.memory.clear()
    for entry_id, kind, typed_at, person, skew_s, body in conn.execute(_TIED):
        row: NotedRow = {"id": entry_id, "kind": kind, "typed_at": typed_at, "person": person, "skew_s": skew_s}
        entry = json.loads(body)
        families.note_family(book, row, entry)
        if entry.get("enclosed"):
            note_enclosed(book, entry)
    places = ((place,) for place, _ in families.walk_places(book))
    conn.executemany("INSERT OR IGNORE INTO unjudged VALUES (?)", places)
    return int(conn.execute("SELECT count(*) FROM unjudged").fetchone()[0])


_TIED = (
    "SELECT id, kind, typed_at, person, skew_s, body FROM entries WHERE kind = 'answer' OR body ->> 'amends' <> '' "
    "OR body ->> 'enclosed' IS NOT NULL ORDER BY book_no"
)


def _fold_listed(book: Book, many: int, progress: Progress | None) -> None:
    """Work off the list in long slices."""
    left = many
    while left:
        with book.write() as database:
            Slice(book, ANEW_TOGETHER).run()
            left = database.conn.execute("SELECT count(*) FROM unjudged").fetchone()[0]
        if progress:
            progress(many - min(left, many), many)


def load_state(book: Book, key: str) -> State | None:
    """Return the newest state of a key (kinds/state.py), or None."""
    return load_newest(book, stored_key(key))


def dump(book: Book) -> bytes:
    """Return the whole fold as canonical bytes: equal folds give equal bytes, however the entries arrived."""
    keys = [row["key"] for row in book.query("SELECT DISTINCT key FROM states ORDER BY key")]
    whole = {
        "states": {key: load_newest(book, stored_key(key)) for key in keys},
        "flows": book.query("SELECT * FROM flows ORDER BY entry, n"),
        "queries": book.query("SELECT * FROM queries ORDER BY entry, name"),
        "standing": book.query("SELECT root, entry, order_key, mark, standing FROM folded ORDER BY root"),
        "runs": book.query("SELECT * FROM runs ORDER BY id"),
        "fills": book.query("SELECT * FROM fills ORDER BY id"),
        "dispatches": book.query("SELECT * FROM dispatches ORDER BY id"),
        "month_sums": book.query("SELECT * FROM month_sums ORDER BY month, a, b, reason, sort"),
        "bottlings": book.query("SELECT * FROM bottlings ORDER BY id"),
        "placings": book.query("SELECT * FROM placings ORDER BY entry, mark"),
    }
    return canonical(whole).encode()
