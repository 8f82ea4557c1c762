"""The server reads its whole book by the clock, so that damage is found while backups from before it still exist.

At the start every page is read; once a day every index is held against its table, every link of the chain against its
digest, and the accounts against their sums. What is wrong with pages stops hand-ins (Book.damage); what is wrong with
digests or sums is told at the desk, and hand-ins go on: an entry more does no harm there.
"""

from __future__ import annotations

import json
import logging
import sqlite3
import threading
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import TypedDict

from webapp import signed_heads
from webapp.book import verification
from webapp.book.enclosures import shelf
from webapp.book.fold import unjudged
from webapp.book.record.clock import utc_text
from webapp.book.record.damage import BookDamaged, examine, is_damage
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book
from webapp.durable import write_whole
from webapp.keeping import witnesses
from webapp.keeping.schedule import read_plan
from webapp.signed_heads import SignedHead

STATUS_NAME = "scrub.json"
EVERY = timedelta(hours=24)
LATE = 3 * EVERY
QUICK_BYTES_MOST = 256 * 1024**2  # a file up to this size is read before the first request is answered
_LOOK_EVERY_S = 60.0
_KEPT_MOST = 5
_log = logging.getLogger("webapp")


class Status(TypedDict, total=False):
    """The last time that the whole book was read: when, and what was found."""

    ended_at: str
    troubles: list[str]


def start_scrubs(book: Book, data_dir: Path, stop: threading.Event | None = None) -> threading.Thread:
    """Read the pages of the book, then go on in a thread of its own until `stop` is set or the process ends."""
    ended = stop or threading.Event()
    is_small = book.path.stat().st_size <= QUICK_BYTES_MOST
    if is_small:
        examine_pages(book, is_quick=True)

    def look() -> None:
        if not is_small:
            examine_pages(book, is_quick=True)
        while not ended.is_set():
            try:
                run_due(book, data_dir, datetime.now(UTC))
            except Exception:  # one turn that fails must not be the last: the server goes on for months
                _log.exception("The book could not be read through.")
            ended.wait(_LOOK_EVERY_S)

    thread = threading.Thread(target=look, name="scrub", daemon=True)
    thread.start()
    return thread


def examine_pages(book: Book, *, is_quick: bool) -> list[str]:
    """Return the faults of the file's pages, and let nothing more be written where something is."""
    try:
        wrong = examine(book.path, is_quick=is_quick)
    except BookError as error:  # of the disk: it says so wherever something is written
        _log.warning("The book's pages were not read: %s", error)
        return []
    if wrong:
        book.note_damage("; ".join(wrong))
        _log.error("%s", BookDamaged(book.damage))
    return wrong


def run_due(book: Book, data_dir: Path, now: datetime) -> bool:
    """Read the whole book if that is due; say whether it was. `now` is aware."""
    status = read_status(data_dir)
    last = datetime.fromisoformat(status["ended_at"]) if status.get("ended_at") else None
    if last and timedelta(0) <= now - last < EVERY:
        return False
    try:
        if unjudged.count_left(book):
            return False  # until it is all judged again, sums do not yet say what they will
    except sqlite3.DatabaseError as error:
        if not is_damage(error):
            raise
        book.note_damage(error)  # the list itself is damaged: read on, and say so
    troubles = examine_pages(book, is_quick=False) or [*_verify(book, data_dir), *_read_enclosures(book)]
    note: Status = {"ended_at": utc_text(now), "troubles": troubles[:_KEPT_MOST]}
    write_whole(data_dir / STATUS_NAME, json.dumps(note).encode())
    return True


def _verify(book: Book, data_dir: Path) -> list[str]:
    """Return the proofs that fail, of one moment of the book: entries that come in meanwhile are not seen.

    It is held against the heads beside its backups too, and against those that witnesses gave back.
    """
    conn = book.db.conn
    conn.execute("BEGIN")
    try:
        return [*verification.verify_as_it_is(book), *signed_heads.compare(book, outside_heads(data_dir))]
    except BookDamaged as error:
        return [str(error)]
    except sqlite3.DatabaseError as error:
        book.note_damage(error)
        return [str(BookDamaged(error))]
    except ValueError as error:  # bytes that are no text, a text that is no JSON
        return [f"A line of the record cannot be read ({error})."]
    finally:
        conn.execute("ROLLBACK")


def _read_enclosures(book: Book) -> list[str]:
    """Return the pictures and papers that are lost or not as they came; what nobody goes on sending is let go."""
    try:
        shelf.sweep(book)
        return shelf.verify(book)
    except OSError as error:
        return [f"The pictures cannot be read: {error.strerror}. Look at the disk and its rights."]


def outside_heads(data_dir: Path) -> list[SignedHead]:
    """Return the heads beside the backups that bear the key of this folder, and those that witnesses gave back last."""
    plan, key = read_plan(data_dir), signed_heads.find_key(data_dir)
    beside = signed_heads.read_beside(plan.folder) if plan else []
    witnessed = [one for kept in witnesses.kept_heads(data_dir).values() for one in kept]
    return [one for one in [*beside, *witnessed] if one.key == key]


def read_status(data_dir: Path) -> Status:
    """Return when the book was last read through, and what was found; empty where it never was."""
    try:
        status: Status = json.loads((data_dir / STATUS_NAME).read_text("utf-8"))
        return status if isinstance(status, dict) else {}
    except (OSError, ValueError):
        return {}


def describe_trouble(book: Book, data_dir: Path) -> str:
    """Return the sentence that every page of the desk shows, or an empty text where nothing is wrong."""
    if book.damage:
        return str(BookDamaged(book.damage))
    troubles = read_status(data_dir).get("troubles")
    if not troubles:
        return ""
    return (
        f"When the book was read through, something did not hold: {troubles[0]} Keep this folder as it is, and compare "
        "with the last good backup: cellarslate rehearse."
    )
