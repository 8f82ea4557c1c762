"""Versions of states: what a vessel or run was after each entry that changed it.

A state is mostly what it was before plus one line. So a version is kept as the difference to the one before it,
and every WHOLE_EVERY-th as a whole. A difference is `{"=": value}`, `{"d": {key: difference}, "x": [keys gone]}` for
a mapping, or `{"a": [dropped, [added]]}` for a list that lost some at its head and gained some at its end.
"""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Iterable, Mapping
from itertools import groupby
from operator import itemgetter
from typing import Any, TypeVar, cast

from webapp.book.record.memory import Memory, Tail
from webapp.book.record.store import Book
from webapp.kinds.key import Key, KeyOf, vessel_key
from webapp.kinds.state import Fill, State

WHOLE_EVERY = 24
TAILS_MOST = 2_000
NEWEST = "~"  # sorts after every place in the order of the fold
Row = tuple[str, str, int, str]
S = TypeVar("S", bound=State)


def difference(old: object, new: object) -> dict[str, Any] | None:
    """Return the changes that make new out of old, or None where they are equal."""
    if old is new or (old == new and type(old) is type(new)):
        return None
    if isinstance(old, Mapping) and isinstance(new, Mapping):
        inner = {k: d for k, v in new.items() if (d := _at(old, k, v))}
        gone = [k for k in old if k not in new]
        return {"d": inner, "x": gone} if gone else {"d": inner}
    if isinstance(old, list) and isinstance(new, list) and old:
        for dropped in (0, 1):
            kept = len(old) - dropped
            if kept <= len(new) and new[:kept] == old[dropped:]:
                return {"a": [dropped, new[kept:]]}
    return {"=": new}


def _at(old: Mapping[str, object], key: str, new: object) -> dict[str, object] | None:
    return difference(old[key], new) if key in old else {"=": new}


def apply_difference(old: Any, change: Mapping[str, Any]) -> Any:
    """Return old with the difference applied; old itself stays as it is, and unchanged parts are shared."""
    if "=" in change:
        return change["="]
    if "a" in change:
        dropped, added = change["a"]
        return [*old[dropped:], *added]
    gone = set(change.get("x", ()))
    new = {k: v for k, v in old.items() if k not in gone}
    for key, inner in change["d"].items():
        new[key] = apply_difference(old.get(key), inner)
    return new


class Versions:
    """All versions of all states, read and written in the order of the fold, inside one write."""

    def __init__(self, book: Book) -> None:
        self._conn = book.db.conn
        self._memory: Memory = book.memory
        self._waiting: dict[tuple[str, str], Row] = {}
        self._touches: list[tuple[str, str]] = []

    def before(self, key: Key, order_key: str) -> tuple[State | None, int]:
        """Return the state just before that place, and how many differences it is from a whole version."""
        tail = self.tail(key)
        if tail.order_key < order_key:
            if not tail.is_loaded:
                # Only now: while a replay is under way, newer versions may still hang on one that has changed.
                self.flush()
                tail.value, tail.depth = _load(self._conn, key, order_key)
                tail.is_loaded = True
            return tail.value, tail.depth
        self.flush()
        return _load(self._conn, key, order_key)

    def row(self, key: str, order_key: str) -> Row | None:
        """Return the version written at exactly that place."""
        if (key, order_key) in self._waiting:
            return self._waiting[key, order_key]
        found: Row | None = self._conn.execute(
            "SELECT key, order_key, whole, body FROM states WHERE key = ? AND order_key = ?", (key, order_key)
        ).fetchone()
        return found

    def put(self, key: Key, order_key: str, old: State | None, depth: int, new: State | None) -> int:
        """Write the version at that place, as a difference to `old`; return its own depth."""
        whole = old is None or depth + 1 >= WHOLE_EVERY
        change = new if whole else difference(old, new) or {"d": {}}
        self._waiting[key, order_key] = (key, order_key, int(whole), json.dumps(change, ensure_ascii=False))
        own = 0 if whole else depth + 1
        tail = self.tail(key)
        if tail.order_key <= order_key:
            tail.order_key, tail.value, tail.depth, tail.is_loaded = order_key, new, own, True
        return own

    def drop(self, key: str, order_key: str) -> None:
        """Take out the version at that place."""
        self.flush()
        self._conn.execute("DELETE FROM states WHERE key = ? AND order_key = ?", (key, order_key))
        if self.tail(key).order_key == order_key:
            self._memory.tails.pop(key)

    def touch(self, key: str, order_key: str) -> None:
        """Note that the entry at that place read or wrote the key."""
        tail = self.tail(key)
        self._touches.append((key, order_key))
        if tail.last_touch < order_key:
            tail.last_touch = order_key

    def untouch(self, key: str, order_key: str) -> None:
        """Take that note back."""
        self.flush()
        self._conn.execute("DELETE FROM touches WHERE key = ? AND order_key = ?", (key, order_key))

    def touched_after(self, key: str, order_key: str) -> str | None:
        """Return the place after that one of the next entry that reads or writes the key, or None."""
        if self.tail(key).last_touch <= order_key:
            return None
        found = self._conn.execute(
            "SELECT order_key FROM touches WHERE key = ? AND order_key > ? ORDER BY order_key LIMIT 1", (key, order_key)
        ).fetchone()
        return found[0] if found else None

    def tail(self, key: str) -> Tail:
        """Return the newest version of a key, from memory if it is there."""
        tails = self._memory.tails
        if key in tails:
            return tails[key]
        self.flush()
        if len(tails) >= TAILS_MOST:
            for _ in range(TAILS_MOST // 10):
                tails.popitem(last=False)
        newest = self._conn.execute(
            "SELECT order_key FROM states WHERE key = ? ORDER BY order_key DESC LIMIT 1", (key,)
        ).fetchone()
        touch = self._conn.execute("SELECT max(order_key) FROM touches WHERE key = ?", (key,)).fetchone()[0]
        tails[key] = Tail(newest[0] if newest else "", touch or "")
        return tails[key]

    def flush(self) -> None:
        """Write what waits."""
        if self._waiting:
            self._conn.executemany("INSERT OR REPLACE INTO states VALUES (?, ?, ?, ?)", self._waiting.values())
            self._waiting.clear()
        if self._touches:
            self._conn.executemany("INSERT OR REPLACE INTO touches VALUES (?, ?)", self._touches)
            self._touches.clear()


def load_newest(book: Book, key: KeyOf[S]) -> S | None:
    """Return the newest state of a key as the file has it, or None."""
    return cast("S | None", _load(book.db.conn, key, None)[0])  # the key says which sort of state it is


def load_fill(book: Book, mark: str) -> Fill | None:
    """Return the fill in a vessel now, or None."""
    state = load_newest(book, vessel_key(mark))
    return state["holds"] if state else None


def load_before(book: Book, key: KeyOf[S], order_key: str) -> S | None:
    """Return the state of a key just before a place in the order of the fold, or None."""
    return cast("S | None", _load(book.db.conn, key, order_key)[0])  # the key says which sort of state it is


def load_newest_of(book: Book, keys: Iterable[KeyOf[S]]) -> dict[str, S | None]:
    """Return the newest state of each key in one statement; a key without a state is left out."""
    found = load_before_each(book, ((key, NEWEST) for key in keys))
    return {key: state for (key, _), state in found.items()}


def load_before_each(book: Book, places: Iterable[tuple[KeyOf[S], str]]) -> dict[tuple[str, str], S | None]:
    """Return the states of keys just before places in the order of the fold, by (key, place), in one statement.

    Each version is read once, however many places lie after it. Where a key had no state yet, it is left out.
    """
    wanted = sorted(set(places))
    if not wanted:
        return {}
    versions: dict[str, list[tuple[str, int, str]]] = {}
    for key, order_key, whole, body in book.db.conn.execute(_BEFORE_EACH, (json.dumps(wanted),)):
        versions.setdefault(key, []).append((order_key, whole, body))
    found: dict[tuple[str, str], S | None] = {}
    for key, group in groupby(wanted, key=itemgetter(0)):
        rows, at = versions.get(key, []), 0
        value: Any = None
        for _, place in group:
            while at < len(rows) and rows[at][0] < place:
                _, whole, body = rows[at]
                value = json.loads(body) if whole else apply_difference(value, json.loads(body))
                at += 1
            if at:
                found[key, place] = value  # the key says which sort of state it is
    return found


# The places come as JSON: one parameter, however many there are. Of each, the versions from the last whole one on;
# the inner SELECT names them without their bodies, so that what two places share is read once.
_BEFORE_EACH = """
SELECT key, order_key, whole, body FROM states WHERE (key, order_key) IN (
    SELECT s.key, s.order_key FROM json_each(?) p CROSS JOIN states s
    ON s.key = json_extract(p.value, '$[0]') AND s.order_key < json_extract(p.value, '$[1]')
    AND s.order_key >= (
        SELECT w.order_key FROM states w WHERE w.key = json_extract(p.value, '$[0]') AND w.whole
        AND w.order_key < json_extract(p.value, '$[1]') ORDER BY w.order_key DESC LIMIT 1
    )
) ORDER BY key, order_key
"""


def load_fills(book: Book, marks: Iterable[str]) -> dict[str, Fill | None]:
    """Return the fill in each of these vessels now, or None, in one statement."""
    wanted = list(marks)
    states = load_newest_of(book, (vessel_key(mark) for mark in wanted))
    found = {mark: states.get(vessel_key(mark)) for mark in wanted}
    return {mark: state["holds"] if state else None for mark, state in found.items()}


def _load(conn: sqlite3.Connection, key: str, before: str | None) -> tuple[State | None, int]:
    """Return the state before a place (or the newest), and its depth: the last whole version and what came after."""
    sql = "SELECT whole, body FROM states WHERE key = ? {} ORDER BY order_key DESC"
    cursor = (
        conn.execute(sql.format(""), (key,))
        if before is None
        else conn.execute(sql.format("AND order_key < ?"), (key, before))
    )
    changes: list[Any] = []
    try:
        for whole, body in cursor:
            changes.append(json.loads(body))
            if whole:
                break
    finally:
        cursor.close()
    if not changes:
        return None, 0
    value = changes.pop()
    depth = len(changes)
    while changes:
        value = apply_difference(value, changes.pop())
    return value, depth
