"""The book's file: one SQLite database, many readers, one write door.

Reading threads have a connection each. All writes go through one connection behind one lock, in a transaction begun
with BEGIN IMMEDIATE: a deferred one fails with "database is locked" when another program wrote between its read and
its write. Two programs on one file are safe; SQLite's own lock and the busy timeout settle their turns.
"""

from __future__ import annotations

import sqlite3
import threading
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from pathlib import Path
from typing import Any, TypeVar, cast

from sqlite_utils import Database

from webapp.book.record.damage import BookDamaged, damage_said, is_damage
from webapp.book.record.errors import BookError
from webapp.book.record.line import Line
from webapp.book.record.memory import Memory

RowT = TypeVar("RowT")
BUSY_MS = 10_000
CACHE_KIB = 32_768
TOGETHER_MOST = 400  # entries of several hand-ins that are taken in one write,
TOGETHER_S = 0.2  # or as many as take so long, of processor time
_DISK = "The book cannot be written: {}. Make room on the server's disk, or look at its rights; then try again."
_NOT_READ = "The book cannot be read at this moment: {}. Make room on the server's disk, or look at it; then try again."
_OF_THE_DISK = (sqlite3.SQLITE_FULL, sqlite3.SQLITE_IOERR, sqlite3.SQLITE_READONLY, sqlite3.SQLITE_CANTOPEN)


class Book:
    """An open book. Use `open_book` (opening.py); close it when done, or use it as a context manager.

    `damage`: what was found wrong with its file while it was open; from then on nothing is written in it.
    """

    def __init__(self, path: Path) -> None:
        self.path = path
        self.memory = Memory()
        self.line: Line[Any] = Line(TOGETHER_MOST, TOGETHER_S)  # of hand-ins; only intake.py knows what stands in it
        self.damage = ""
        self.before_commit: Callable[[Book], None] | None = None  # the last thing in each write
        self._door = threading.RLock()
        self._inside = 0
        self._writer = _connect(path)
        self._data_version = -1
        self._readers: dict[threading.Thread, Database] = {}
        self._readers_lock = threading.Lock()
        self._closed = False

    @property
    def db(self) -> Database:
        """This thread's database: the writer inside `with book.write()`, else a reader of its own."""
        if self.is_writing:
            return self._writer
        thread = threading.current_thread()
        with self._readers_lock:
            if self._closed:
                raise BookError("The book is closed. Open it again.")
            if thread not in self._readers:
                self._close_left_behind()
                self._readers[thread] = _connect(self.path, read_only=True)
            return self._readers[thread]

    @property
    def is_writing(self) -> bool:
        """Whether this thread is inside `with book.write()`."""
        return bool(self._inside) and self._door_is_mine()

    @contextmanager
    def write(self) -> Iterator[Database]:
        """Open the one write door: all changes inside become durable together, or not at all. May be nested."""
        with self._door:
            if self._closed:
                raise BookError("The book is closed. Open it again.")
            if self._inside:
                yield self._writer
                return
            if self.damage:
                raise BookDamaged(self.damage)
            self._begin()
            self._inside = 1
            try:
                yield self._writer
                if self.before_commit:
                    self.before_commit(self)
                self._writer.conn.execute("COMMIT")
            except BaseException as error:
                # What is held in memory may speak of rows that are now undone.
                self.memory.clear()
                if self._writer.conn.in_transaction:
                    self._writer.conn.execute("ROLLBACK")
                if is_damage(error):
                    self.note_damage(error)
                    raise BookDamaged(error) from error
                if isinstance(error, sqlite3.OperationalError) and _is_of_the_disk(error):
                    raise BookError(_DISK.format(error)) from error
                raise
            finally:
                self._inside = 0

    def note_damage(self, why: object) -> None:
        """Keep that the file is damaged, and the first that was found of it."""
        self.damage = self.damage or str(why)

    def can_write(self, wait_s: float) -> bool:
        """Say whether the write door opens within this time [s]. Nothing is written."""
        if self.damage or not self._door.acquire(timeout=wait_s):
            return False
        try:
            if self._closed or self._inside:
                return not self._closed
            self._begin()
            self._writer.conn.execute("ROLLBACK")
            return True
        except BookError:
            return False
        finally:
            self._door.release()

    def query(self, sql: str, params: Sequence[object] | Mapping[str, object] = ()) -> list[dict[str, Any]]:
        """Return the rows of a SELECT as dicts."""
        try:
            cursor = self.db.conn.execute(sql, params)
            names = [column[0] for column in cursor.description]
            return [dict(zip(names, row, strict=True)) for row in cursor]
        except sqlite3.DatabaseError as error:
            if is_damage(error):
                self.note_damage(error)
                raise BookDamaged(error) from error
            if isinstance(error, sqlite3.OperationalError) and _is_of_the_disk(error):
                raise BookError(_NOT_READ.format(error)) from error
            raise

    def one(self, sql: str, params: Sequence[object] | Mapping[str, object] = ()) -> dict[str, Any] | None:
        """Return the first row of a SELECT, or None."""
        rows = self.query(sql, params)
        return rows[0] if rows else None

    def rows(self, of: type[RowT], sql: str, params: Sequence[object] | Mapping[str, object] = ()) -> list[RowT]:
        """Return the rows of a SELECT whose columns are those of a TypedDict."""
        return cast("list[RowT]", self.query(sql, params))  # whoever asks has set the columns beside the type

    def row(self, of: type[RowT], sql: str, params: Sequence[object] | Mapping[str, object] = ()) -> RowT | None:
        """Return the first row of a SELECT whose columns are those of a TypedDict, or None."""
        return cast("RowT | None", self.one(sql, params))  # as above

    def close(self) -> None:
        """Close every connection. Closing twice does no harm."""
        with self._door, self._readers_lock:
            if not self._closed:
                self._closed = True
                for database in [*self._readers.values(), self._writer]:
                    database.close()
                self._readers.clear()

    def __enter__(self) -> Book:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    def _begin(self) -> None:
        try:
            with damage_said():
                self._writer.conn.execute("BEGIN IMMEDIATE")
        except sqlite3.OperationalError as error:
            if "locked" in str(error) or "busy" in str(error):
                raise BookError("Another program is writing in the book. Try again in a moment.") from error
            raise BookError(_DISK.format(error)) from error
        # Changes only when somebody else wrote: then what is held in memory is old.
        data_version = self._writer.conn.execute("PRAGMA data_version").fetchone()[0]
        if data_version != self._data_version:
            self.memory.clear()
            self._data_version = data_version

    def _door_is_mine(self) -> bool:
        return bool(self._door._is_owned())  # type: ignore[attr-defined]

    def _close_left_behind(self) -> None:
        for thread in [thread for thread in self._readers if not thread.is_alive()]:
            self._readers.pop(thread).close()


def _is_of_the_disk(error: sqlite3.OperationalError) -> bool:
    # Extended codes have the plain one in their low byte. [sqlite.org/rescode.html]
    return (getattr(error, "sqlite_errorcode", 0) or 0) & 0xFF in _OF_THE_DISK


def _connect(path: Path, *, read_only: bool = False) -> Database:
    # One connection is used by one thread at a time; the write door sees to that for the writer.
    conn = sqlite3.connect(path, timeout=BUSY_MS / 1000, isolation_level=None, check_same_thread=False)
    try:
        conn.execute(f"PRAGMA busy_timeout = {BUSY_MS}")
        conn.execute("PRAGMA foreign_keys = ON")
        if read_only:
            conn.execute("PRAGMA query_only = ON")
        else:
            conn.execute("PRAGMA journal_mode = WAL")
            # NORMAL can lose the last commits when the power fails, after the phones have let go.
            conn.execute("PRAGMA synchronous = FULL")
            # On macOS a plain sync leaves commits in the memory of the drive; elsewhere this says nothing.
            conn.execute("PRAGMA fullfsync = ON")
            conn.execute("PRAGMA checkpoint_fullfsync = ON")
        conn.execute(f"PRAGMA cache_size = -{CACHE_KIB}")
        return Database(conn)
    except BaseException:
        conn.close()
        raise
