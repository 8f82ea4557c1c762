"""Versions of states: what a vessel or run was after each entry that changed it.

A state is mostly what it was before plus one line. So a version is kept as the difference to the one before it,
and every WHOLE_EVERY-th as a whole. A difference is `{"=": value}`, `{"d": {key: difference}, "x": [keys gone]}` for
a mapping, or `{"a": [dropped, [added]]}` for a list that lost some at its head and gained some at its end.
"""

from __future__ import annotations

import json
import sqlite3
from bisect import bisect_left
from collections.abc import Iterable, Mapping
from itertools import groupby
from operator import itemgetter
from typing import Any, TypeVar, cast

from webapp.book.record.kept_json import from_text, to_text
from webapp.book.record.memory import ENDLESS, Course, Memory
from webapp.book.record.store import Book
from webapp.kinds.key import Key, KeyOf, vessel_key
from webapp.kinds.state import Fill, State

WHOLE_EVERY = 24
COURSES_MOST = 2_000  # states whose versions are in memory,
VERSIONS_MOST = 20_000  # their versions together,
COURSE_LONGEST = 4_000  # and those of one of them
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
    """All versions of all states, read and written in the order of the fold, inside one write.

    A version that was read or written stays in memory, within bounds, so that it is decoded once. That holds while a
    replay is under way: what it changes, it puts here; and what lies beyond it is what it was, until it is put too.
    """

    def __init__(self, book: Book) -> None:
        self._conn = book.db.conn
        self._memory: Memory = book.memory
        self._waiting: dict[tuple[str, str], Row | None] = {}  # what is to be written; None: taken out
        self._touches: list[tuple[str, str]] = []

    def before(self, key: Key, order_key: str) -> tuple[State | None, int]:
        """Return the state just before that place, and how many differences it is from a whole version.

        Never of a key whose change at an earlier place has not been followed up to this one: what the file holds of it
        hangs on the version that has changed.
        """
        course = self._course(key)
        at = _place_in(course, order_key)
        if course.reaches[at - 1] < order_key:
            at = self._read(course, key, order_key, at)
        return course.values[at - 1], course.depths[at - 1]

    def at(self, key: str, order_key: str, before: State | None) -> tuple[bool, State | None]:
        """Return whether a version stands at exactly that place, and the state there; `before`: the one before it."""
        course = self._course(key)
        at = _place_in(course, order_key)
        if at < len(course.places) and course.places[at] == order_key:
            return True, course.values[at]
        if course.reaches[at - 1] >= order_key or (key, order_key) in self._waiting:
            return False, before
        found = self._conn.execute(
            "SELECT whole, body FROM states WHERE key = ? AND order_key = ?", (key, order_key)
        ).fetchone()
        if found is None:
            return False, before
        body = from_text(found[1])
        return True, body if found[0] else apply_difference(before, body)

    def put(self, key: Key, order_key: str, old: State | None, depth: int, new: State | None) -> int:
        """Write the version at that place, as a difference to `old`; return its own depth."""
        whole = old is None or depth + 1 >= WHOLE_EVERY
        change = new if whole else difference(old, new) or {"d": {}}
        self._waiting[key, order_key] = (key, order_key, int(whole), to_text(change))
        own = 0 if whole else depth + 1
        self._hold(self._course(key), order_key, new, own)
        return own

    def drop(self, key: str, order_key: str) -> None:
        """Take out the version at that place."""
        self._waiting[key, order_key] = None
        course = self._course(key)
        at = _place_in(course, order_key)
        is_next = course.reaches[at - 1] >= order_key  # nothing lies between it and the one before
        if at < len(course.places) and course.places[at] == order_key:
            depth = course.depths[at]
            if is_next:
                course.reaches[at - 1] = max(course.reaches[at - 1], course.reaches[at])
            del course.places[at], course.values[at], course.depths[at], course.reaches[at]
            self._memory.versions -= 1
            if not depth:  # what hung on a whole version hangs on the one before it now
                _lengthen(course, at, course.depths[at - 1] + 1)
        if course.newest == order_key:
            self.flush()
            course.newest = course.places[at - 1] if is_next else self._newest(key)

    def touch(self, key: str, order_key: str) -> None:
        """Note that the entry at that place read or wrote the key."""
        course = self._course(key)
        self._touches.append((key, order_key))
        if course.last_touch < order_key:
            course.last_touch = order_key

    def untouch(self, key: str, order_key: str) -> None:
        """Take that note back."""
        self.flush()
        self._conn.execute("DELETE FROM touches WHERE key = ? AND order_key = ?", (key, order_key))

    def touched_after(self, key: str, order_key: str) -> str | None:
        """Return the place after that one of the next entry that reads or writes the key, or None."""
        if self._course(key).last_touch <= order_key:
            return None
        found = self._conn.execute(
            "SELECT order_key FROM touches WHERE key = ? AND order_key > ? ORDER BY order_key LIMIT 1", (key, order_key)
        ).fetchone()
        return found[0] if found else None

    def is_last(self, key: str, order_key: str) -> bool:
        """Say whether neither a version of the key nor a touch of it lies after that place."""
        course = self._course(key)
        return course.newest <= order_key and course.last_touch <= order_key

    def flush(self) -> None:
        """Write what waits."""
        if self._waiting:
            rows = [row for row in self._waiting.values() if row]
            gone = [place for place, row in self._waiting.items() if not row]
            self._conn.executemany("INSERT OR REPLACE INTO states VALUES (?, ?, ?, ?)", rows)
            self._conn.executemany("DELETE FROM states WHERE key = ? AND order_key = ?", gone)
            self._waiting.clear()
        if self._touches:
            self._conn.executemany("INSERT OR REPLACE INTO touches VALUES (?, ?)", self._touches)
            self._touches.clear()

    def _course(self, key: str) -> Course:
        courses = self._memory.courses
        if self._memory.versions >= VERSIONS_MOST:
            self._let_go()
        if key in courses:
            courses.move_to_end(key)
            return courses[key]
        if len(courses) >= COURSES_MOST:
            self._let_go()
        touch = self._conn.execute("SELECT max(order_key) FROM touches WHERE key = ?", (key,)).fetchone()[0]
        made = courses[key] = Course(self._newest(key), touch or "")
        if not made.newest:
            made.reaches[0] = ENDLESS
        return made

    def _newest(self, key: str) -> str:
        found = self._conn.execute("SELECT max(order_key) FROM states WHERE key = ?", (key,)).fetchone()[0]
        return found or ""

    def _let_go(self) -> None:
        """Let go the tenth part of memory that was not asked for the longest time."""
        self.flush()  # what waits is in memory, or it is in the file
        courses = self._memory.courses
        while len(courses) > COURSES_MOST * 9 // 10 or (courses and self._memory.versions > VERSIONS_MOST * 9 // 10):
            self._memory.versions -= len(courses.popitem(last=False)[1].places) - 1

    def _read(self, course: Course, key: str, order_key: str, at: int) -> int:
        """Read the versions up to that place from the last one that is in memory, or from the last whole one.

        Return how many stand before the place now. What waits to be written is in memory, so none of it is missed.
        """
        known = course.places[at - 1]
        is_held = at < len(course.places) and course.places[at] == order_key
        rows: list[tuple[str, int, str]] = []
        is_whole = False
        cursor = self._conn.execute(_BACK_TO, (key, order_key, known))
        try:
            for row in cursor:
                if (key, row[0]) in self._waiting or (is_held and row[0] == order_key):
                    continue
                rows.append(row)
                if row[1] and row[0] < order_key:
                    is_whole = True
                    break
        finally:
            cursor.close()
        value, depth = (None, 0) if is_whole else (course.values[at - 1], course.depths[at - 1])
        rows.reverse()
        if not is_whole:
            course.reaches[at - 1] = rows[0][0] if rows else order_key
        for n, (place, whole, body) in enumerate(rows):
            change = from_text(body)
            value, depth = (change, 0) if whole else (apply_difference(value, change), depth + 1)
            follows = rows[n + 1][0] if n + 1 < len(rows) else order_key
            course.places.insert(at, place)
            course.values.insert(at, value)
            course.depths.insert(at, depth)
            course.reaches.insert(at, ENDLESS if place == course.newest else follows)
            at += 1
        self._memory.versions += len(rows)
        if rows:
            self._bound(course, order_key)
        return _place_in(course, order_key)

    def _hold(self, course: Course, order_key: str, value: State | None, depth: int) -> None:
        """Keep a version that is written in memory."""
        places = course.places
        at = _place_in(course, order_key)
        if at < len(places) and places[at] == order_key:
            longer = depth - course.depths[at]
            course.values[at], course.depths[at] = value, depth
        else:
            longer = 1
            reach = max(course.reaches[at - 1], order_key)
            course.reaches[at - 1] = min(course.reaches[at - 1], order_key)
            if course.newest < order_key:
                course.newest, reach = order_key, ENDLESS
            places.insert(at, order_key)
            course.values.insert(at, value)
            course.depths.insert(at, depth)
            course.reaches.insert(at, reach)
            self._memory.versions += 1
        if longer > 0 and depth and at + 1 < len(places):
            _lengthen(course, at + 1, longer)
        self._bound(course, order_key)

    def _bound(self, course: Course, order_key: str) -> None:
        """Let half of a course go where it has become long: the half in which that place is not."""
        if len(course.places) > COURSE_LONGEST:
            self.flush()  # as above
            half = COURSE_LONGEST // 2
            is_early = order_key <= course.places[half]
            gone = slice(half + 1, None) if is_early else slice(1, half)
            self._memory.versions -= len(course.places[gone])
            for some in (course.places, course.values, course.depths, course.reaches):
                del some[gone]
            course.reaches[-1 if is_early else 0] = course.places[-1 if is_early else 0]


def _place_in(course: Course, order_key: str) -> int:
    """Return how many places of a course lie before that one."""
    return len(course.places) if course.places[-1] < order_key else bisect_left(course.places, order_key)


def _lengthen(course: Course, at: int, longer: int) -> None:
    """Add to the distance from a whole version of those that follow, up to the next whole one.

    Where that one is not in memory, some beyond it are held to be farther than they are: one is whole a little early.
    """
    depths = course.depths
    while at < len(depths) and depths[at]:
        depths[at] += longer
        at += 1


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
                value = from_text(body) if whole else apply_difference(value, from_text(body))
                at += 1
            if at:
                found[key, place] = value  # the key says which sort of state it is
    return found


_BACK_TO = (
    "SELECT order_key, whole, body FROM states WHERE key = ? AND order_key <= ? AND order_key > ? "
    "ORDER BY order_key DESC"
)

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
            changes.append(from_text(body))
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
