"""The group's database: a connection a thread, every batch one transaction, durable before it is said."""

from __future__ import annotations

import threading
import time
from collections.abc import Iterator, Sequence
from contextlib import contextmanager, suppress
from typing import Any, TypeVar, cast

import psycopg
from psycopg.rows import DictRow, dict_row

from webapp.book.record.errors import BookError
from webapp.group import schema

RowT = TypeVar("RowT")
Params = Sequence[object] | dict[str, object]
CONNECT_S = 5
AWAY = "The group's database does not answer. Nothing is lost; try again in a moment."
_AWAY = (psycopg.OperationalError, psycopg.InterfaceError)


class GroupBusy(BookError):
    """The database does not answer now; whoever asked asks again."""


class Store:
    """An open group book. Each thread has a connection of its own; close it when done."""

    def __init__(self, url: str) -> None:
        self.url = url
        self._own = threading.local()
        self._all: dict[threading.Thread, psycopg.Connection[DictRow]] = {}
        self._lock = threading.Lock()

    @contextmanager
    def write(self) -> Iterator[psycopg.Connection[DictRow]]:
        """One transaction: everything inside becomes durable together, or not at all."""
        try:
            conn = self.connection()
            with conn.transaction():
                yield conn
        except _AWAY as error:
            self.drop()
            raise GroupBusy(AWAY) from error

    def query(self, text: str, params: Params = ()) -> list[dict[str, Any]]:
        """Return the rows of a SELECT as dicts."""
        for is_last in (False, True):
            try:
                return self.connection().execute(text.encode(), params).fetchall()
            except _AWAY as error:
                self.drop()  # the connection may be an old one: the database has been started anew since
                if is_last:
                    raise GroupBusy(AWAY) from error
        raise AssertionError("unreachable")

    def one(self, text: str, params: Params = ()) -> dict[str, Any] | None:
        """Return the first row of a SELECT, or None."""
        rows = self.query(text, params)
        return rows[0] if rows else None

    def rows(self, of: type[RowT], text: str, params: Params = ()) -> list[RowT]:
        """Return the rows of a SELECT whose columns are those of a TypedDict."""
        return cast("list[RowT]", self.query(text, params))  # whoever asks has set the columns beside the type

    def row(self, of: type[RowT], text: str, params: Params = ()) -> RowT | None:
        """Return the first row of a SELECT whose columns are those of a TypedDict, or None."""
        return cast("RowT | None", self.one(text, params))  # as above

    def connection(self) -> psycopg.Connection[DictRow]:
        """Return this thread's connection, made anew where it was lost."""
        conn: psycopg.Connection[DictRow] | None = getattr(self._own, "conn", None)
        if conn is None or conn.closed:
            try:
                conn = _connect(self.url)
            except _AWAY as error:
                raise GroupBusy(AWAY) from error
            self._own.conn = conn
            with self._lock:
                for thread in [thread for thread in self._all if not thread.is_alive()]:
                    self._all.pop(thread).close()
                self._all[threading.current_thread()] = conn
        return conn

    def drop(self) -> None:
        """Close this thread's connection. After a failure its state is unknown."""
        conn: psycopg.Connection[DictRow] | None = getattr(self._own, "conn", None)
        if conn is not None:
            with suppress(psycopg.Error):
                conn.close()
            self._own.conn = None

    def close(self) -> None:
        """Close every connection."""
        with self._lock:
            for conn in self._all.values():
                conn.close()
            self._all.clear()


def open_store(url: str, *, wait_s: float = 0.0) -> Store:
    """Open the group book at a PostgreSQL address, or begin one there. BookError says what is wrong.

    Where the database does not answer, it is tried again for so many seconds: it may be starting too.
    """
    store, until = Store(url), time.monotonic() + wait_s
    try:
        while True:
            try:
                schema.bring_up_to_date(store.connection())
                break
            except (*_AWAY, GroupBusy):
                if time.monotonic() >= until:
                    raise
                store.drop()
                time.sleep(0.2)
    except (psycopg.Error, GroupBusy) as error:
        store.close()
        why = str(error.__cause__ or error).strip().splitlines()[0]
        raise BookError(
            f"The group's database cannot be opened: {why}. Look at --database and at PostgreSQL itself."
        ) from error
    except BaseException:
        store.close()
        raise
    return store


def _connect(url: str) -> psycopg.Connection[DictRow]:
    # synchronous_commit is the default; said here, since a server may be set otherwise and a receipt is a promise.
    return psycopg.connect(
        url, autocommit=True, row_factory=dict_row, connect_timeout=CONNECT_S, application_name="cellarslate",
        options="-c synchronous_commit=on -c client_encoding=UTF8",
    )
