"""Who came in, who was sent away, what left the house: a journal beside the book, each line bound to the one before.

It has a file of its own, so that a crowd at the door never waits for the book's one write door, nor the book for it.
Lines are only added; after KEPT_DAYS the oldest go, and what is left still hangs together from its first line on.
"""

from __future__ import annotations

import hashlib
import json
import logging
import sqlite3
from collections.abc import Iterator
from contextlib import closing
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import TypedDict

from webapp.book.record.errors import BookError

FILE_NAME = "access.sqlite"
KEPT_DAYS = 400
_PRUNED_EVERY = 200  # lines
_WAIT_S = 5.0
_ABOUT_MOST = 200

# Each sort of line, and how the desk says it.
SORTS = {
    "signed_in": "signed in",
    "not_signed_in": "wrong code, password or passkey",
    "sent_away": "too many tries",
    "signed_out": "signed out",
    "again": "password or passkey once more",
    "session_ended": "session ended",
    "invited": "invitation made",
    "password": "own password set",
    "passkey": "passkey added or ended",
    "let_in": "phone let in",
    "phone_key": "key of a phone",
    "not_let_in": "phone not let in",
    "wrong_pin": "wrong PIN on a phone",
    "shut_out": "phone shut out",
    "reading_key": "key of a tool made or ended",
    "person": "person changed",
    "took_out": "data taken out",
    "backup": "backup written",
    "restored": "restored from a backup",
    "refused": "write refused",
    "lost_head": "book is not as it was shown",
    "not_shown": "page refused",
}

_TABLE = """
CREATE TABLE IF NOT EXISTS journal (
  n INTEGER PRIMARY KEY, at TEXT NOT NULL, sort TEXT NOT NULL, who TEXT NOT NULL, origin TEXT NOT NULL,
  about TEXT NOT NULL, digest TEXT NOT NULL
) STRICT;
CREATE TRIGGER IF NOT EXISTS journal_stays BEFORE UPDATE ON journal BEGIN SELECT RAISE(ABORT, 'lines stay'); END;
"""
_COLUMNS = "n, at, sort, who, origin, about, digest"


class CannotRead(BookError):
    """The journal's file is damaged; `str(error)` says what to do. The book is another file."""


class Line(TypedDict):
    """A line of the journal. `origin`: the network address it came from, or where it was done; `about`: what it was."""

    n: int
    at: str
    sort: str
    who: str
    origin: str
    about: str
    digest: str


def note(data_dir: Path, sort: str, who: str = "", origin: str = "", about: str = "") -> None:
    """Add a line, now. A journal that cannot be written is told to the server's log and keeps nobody out."""
    assert sort in SORTS
    try:
        with closing(_open(data_dir)) as conn, conn:
            conn.execute("BEGIN IMMEDIATE")
            last = conn.execute("SELECT n, digest FROM journal ORDER BY n DESC LIMIT 1").fetchone() or (0, "")
            # Where it was left, if that is further: what was cut off its end stays missing.
            left_at = conn.execute("PRAGMA user_version").fetchone()[0]
            told = (max(last[0], left_at) + 1, datetime.now(UTC).isoformat(timespec="milliseconds"), sort, who, origin,
                    about[:_ABOUT_MOST])
            conn.execute(f"INSERT INTO journal ({_COLUMNS}) VALUES (?, ?, ?, ?, ?, ?, ?)",  # noqa: S608 -- our names
                         (*told, _digest(last[1], told)))
            conn.execute(f"PRAGMA user_version = {told[0]}")
            if told[0] % _PRUNED_EVERY == 0:
                oldest = (datetime.now(UTC) - timedelta(days=KEPT_DAYS)).isoformat()
                conn.execute("DELETE FROM journal WHERE at < ?", (oldest,))
    except (sqlite3.Error, OSError) as error:
        logging.getLogger(__name__).warning("The journal of access could not be written (%s): %s %s", error, sort, who)


def lines(data_dir: Path, *, most: int = 200, sort: str = "", who: str = "") -> list[Line]:
    """Return the newest lines, newest first; of one sort or one person where they are named."""
    return list(_read(data_dir, "WHERE (? = '' OR sort = ?) AND (? = '' OR who = ?) ORDER BY n DESC LIMIT ?",
                      (sort, sort, who, who, most)))


def all_lines(data_dir: Path) -> Iterator[Line]:
    """Yield every line, oldest first."""
    yield from _read(data_dir, "ORDER BY n", ())


def verify(data_dir: Path) -> list[str]:
    """Return a sentence for each place where the journal does not hang together.

    Its first line is taken as it stands; lines cut off its end are missed by the number that it was left at.
    """
    try:
        left_at = _left_at(data_dir)  # first: the server may go on meanwhile
        every = list(all_lines(data_dir))
    except CannotRead as error:
        return [str(error)]
    wrong: list[str] = []
    before = None
    for line in every:
        if before is not None:
            told = (line["n"], line["at"], line["sort"], line["who"], line["origin"], line["about"])
            if line["n"] != before["n"] + 1:
                wrong.append(f"The journal of access lacks the lines between {before['n']} and {line['n']}.")
            elif line["digest"] != _digest(before["digest"], told):
                wrong.append(f"Line {line['n']} of the journal of access is not as it was written.")
        before = line
    if left_at > (before["n"] if before else 0):
        wrong.append(f"The journal of access was left at line {left_at}, and lacks lines at its end.")
    return wrong


def _left_at(data_dir: Path) -> int:
    """Return the number of the last line that was written; 0 where no version that notes it wrote one."""
    if not (data_dir / FILE_NAME).is_file():
        return 0
    try:
        with closing(_open(data_dir)) as conn:
            return int(conn.execute("PRAGMA user_version").fetchone()[0])
    except sqlite3.DatabaseError:
        return 0  # reading its lines says so


def _open(data_dir: Path) -> sqlite3.Connection:
    path = data_dir / FILE_NAME
    if not path.exists():
        path.touch(mode=0o600)
    conn = sqlite3.connect(path, timeout=_WAIT_S, isolation_level=None)
    conn.executescript(_TABLE)
    return conn


def _read(data_dir: Path, which: str, values: tuple[object, ...]) -> Iterator[Line]:
    if not (data_dir / FILE_NAME).is_file():
        return
    try:
        with closing(_open(data_dir)) as conn:
            for n, at, sort, who, origin, about, digest in conn.execute(
                f"SELECT {_COLUMNS} FROM journal {which}", values  # noqa: S608 -- written in this file
            ):
                yield {"n": n, "at": at, "sort": sort, "who": who, "origin": origin, "about": about, "digest": digest}
    except sqlite3.DatabaseError as error:
        raise CannotRead(
            f"The journal of access cannot be read ({error}). Keep {FILE_NAME} aside and a new one begins; the book is "
            "another file."
        ) from error


def _digest(before: str, told: tuple[object, ...]) -> str:
    return hashlib.sha256(json.dumps([before, *told], ensure_ascii=True).encode()).hexdigest()
