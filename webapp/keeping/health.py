"""Whether a book can be worked with: what a monitor asks every minute. Looked at anew at most every few seconds."""

from __future__ import annotations

import contextlib
import os
import shutil
import sqlite3
import threading
import time
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from pathlib import Path

from webapp.book.fold import unjudged
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book
from webapp.book.search import keeping as search
from webapp.keeping import schedule, scrub, witnesses

KEPT_S = 5.0  # an answer serves everybody who asks within this time
DOOR_WAIT_S = 3.0  # longer than any slice of work stands in the write door
FREE_LEAST = 500 * 1024**2  # [bytes]; below this, or below the size of the book, somebody should look
PROBE = b"\0" * 4096
OK, LOOK, DOWN, BEHIND = "ok", "look", "down", "behind"


@dataclass(frozen=True)
class Health:
    """The state of a book. `checks`: a word for each thing that was looked at; figures are for who may sign in.

    status: `ok`; `look`, where somebody should look at it soon; `down`, where entries cannot be kept.
    """

    status: str
    checks: dict[str, str]
    figures: dict[str, float | int | None] = field(default_factory=dict)


class Watch:
    """Looks after one book, at most once every KEPT_S however often it is asked."""

    def __init__(self, book: Book, data_dir: Path, clock: Callable[[], float] = time.monotonic) -> None:
        self._book, self._data_dir, self._clock = book, data_dir, clock
        self._lock = threading.Lock()
        self._last: Health | None = None
        self._until = 0.0

    def look(self) -> Health:
        """Return the health of the book; of one moment for all who ask together."""
        with self._lock:
            if self._last is None or self._clock() >= self._until:
                self._last = look_at(self._book, self._data_dir, datetime.now(UTC))
                self._until = self._clock() + KEPT_S
            return self._last


def look_at(book: Book, data_dir: Path, now: datetime) -> Health:
    """Return the health of a book and its folder. Never raises for a book or disk in trouble; `now` is aware."""
    figures: dict[str, float | int | None] = {}
    disk, figures["disk_free_mb"] = _look_at_disk(data_dir, book.path)
    backup, figures["backup_age_h"] = _look_at_backup(data_dir, now)
    scrubbed, figures["scrub_age_h"] = _look_at_scrub(book, data_dir, now)
    checks = {"book": _look_at_book(book), "scrub": scrubbed, "disk": disk, "backup": backup, "judging": "unknown",
              "search": "unknown", "witnesses": OK}
    if checks["book"] == OK:
        with contextlib.suppress(BookError, sqlite3.Error):
            figures["entries_to_judge"] = unjudged.count_left(book)
            checks["judging"] = BEHIND if figures["entries_to_judge"] else OK
            checks["search"] = BEHIND if search.is_behind(book) else OK
            checks["witnesses"] = "failed" if witnesses.unsettled(book, data_dir) else OK
    is_down = DOWN in (checks["book"], disk)
    needs_look = disk == LOOK or backup in ("failed", "late") or scrubbed in ("failed", "late")
    needs_look = needs_look or checks["witnesses"] == "failed"
    return Health(DOWN if is_down else LOOK if needs_look else OK, checks, figures)


def _look_at_book(book: Book) -> str:
    """Say whether the book can be read and its write door opens."""
    try:
        book.one("SELECT digest FROM entries ORDER BY book_no DESC LIMIT 1")
        return OK if book.can_write(DOOR_WAIT_S) else DOWN
    except (BookError, sqlite3.Error):
        return DOWN


def _look_at_disk(data_dir: Path, book_path: Path) -> tuple[str, int | None]:
    """Say whether the disk takes a file, and the room that is left on it. [MB]"""
    probe = data_dir / f".health-{os.getpid()}"
    try:
        free = shutil.disk_usage(data_dir).free
        probe.write_bytes(PROBE)
        probe.unlink()
        return LOOK if free < max(FREE_LEAST, book_path.stat().st_size) else OK, free // 10**6
    except OSError:
        with contextlib.suppress(OSError):
            probe.unlink()
        return DOWN, None


def _look_at_backup(data_dir: Path, now: datetime) -> tuple[str, float | None]:
    """Return the state of the backups by the clock, and the age of the last good one. [h]

    States: `ok`, `late` (none for two turns), `failed`, `none` (the server makes none: they may be made otherwise).
    """
    status = schedule.read_status(data_dir)
    if not status:
        return "none", None
    made_at = status.get("made_at")
    age = now - datetime.fromisoformat(made_at) if made_at else None
    hours = round(age / timedelta(hours=1), 1) if age is not None else None
    if status.get("failed_at") or status.get("not_held"):
        return "failed", hours
    is_late = hours is not None and hours > 2 * float(status.get("every_h", 24))
    return "late" if is_late else OK, hours


def _look_at_scrub(book: Book, data_dir: Path, now: datetime) -> tuple[str, float | None]:
    """Return the findings of the last reading of the whole book, and how long ago that was. [h]

    States: `ok`, `failed` (something did not hold), `late` (not for days), `none` (not yet).
    """
    status = scrub.read_status(data_dir)
    ended_at = status.get("ended_at")
    age = now - datetime.fromisoformat(ended_at) if ended_at else None
    hours = round(age / timedelta(hours=1), 1) if age is not None else None
    if book.damage or status.get("troubles"):
        return "failed", hours
    if age is None:
        return "none", None
    return "late" if age > scrub.LATE else OK, hours
