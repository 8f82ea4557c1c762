"""A small file beside the book for what begins anew at a restore: who is signed in where, open invitations,
and the keys of tools that read.

It has a door of its own, so that a look at the desk never waits for the book's one write door. No backup holds it.
"""

from __future__ import annotations

import logging
import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

FILE_NAME = "doors.sqlite"
_WAIT_S = 5.0
_TABLES = """
CREATE TABLE IF NOT EXISTS sessions (
  session_sha256 TEXT PRIMARY KEY, person TEXT NOT NULL, began_at TEXT NOT NULL, seen_at TEXT NOT NULL,
  origin TEXT NOT NULL, browser TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS invitations (
  token_sha256 TEXT PRIMARY KEY, person TEXT NOT NULL, made_by TEXT NOT NULL, until TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS reading_keys (
  no INTEGER PRIMARY KEY AUTOINCREMENT, key_sha256 TEXT NOT NULL UNIQUE, name TEXT NOT NULL, scopes TEXT NOT NULL,
  made_by TEXT NOT NULL, made_at TEXT NOT NULL, until TEXT NOT NULL, used_at TEXT NOT NULL
) STRICT;
CREATE TABLE IF NOT EXISTS used_challenges (challenge_sha256 TEXT PRIMARY KEY, at TEXT NOT NULL) STRICT, WITHOUT ROWID;
"""


@contextmanager
def opened(data_dir: Path) -> Iterator[sqlite3.Connection]:
    """Open the file for one transaction. One that is no database any more is put aside, and a new one begins."""
    path = data_dir / FILE_NAME
    try:
        conn = _connect(path)
    except sqlite3.DatabaseError as error:
        if isinstance(error, sqlite3.OperationalError):
            raise
        logging.getLogger(__name__).exception("%s is damaged and was put aside.", FILE_NAME)
        path.replace(path.with_suffix(".damaged"))
        conn = _connect(path)
    with closing(conn), conn:
        conn.execute("BEGIN IMMEDIATE")
        yield conn


def _connect(path: Path) -> sqlite3.Connection:
    if not path.exists():
        path.touch(mode=0o600)
    conn = sqlite3.connect(path, timeout=_WAIT_S, isolation_level=None)
    try:
        conn.executescript(_TABLES)
    except sqlite3.Error:
        conn.close()
        raise
    return conn
