"""What phones and the group saw of the book: each keeps the signed heads that it was given last, and gives them back.

A head that comes back and that the book no longer has was true once: somebody rewrote the file, or restored an older
one. It is kept beside the book with its signature, told at the desk and in `/health`, until the office says why.
"""

from __future__ import annotations

import json
import logging
import sqlite3
import threading
from collections import OrderedDict
from collections.abc import Iterable, Mapping
from datetime import UTC, datetime
from pathlib import Path
from typing import TypedDict

from webapp import signed_heads
from webapp.book.house import journal
from webapp.book.intake import book_id
from webapp.book.record.changes import note_change
from webapp.book.record.clock import utc_text
from webapp.book.record.errors import BookError
from webapp.book.record.heads import Growing, find_lost
from webapp.book.record.store import Book
from webapp.durable import sync_file, write_whole
from webapp.signed_heads import SignedHead

KNOWN_NAME = "witnesses.json"
LOST_NAME = "lost-heads.jsonl"
GROUP = "group"
LINES_MOST = 10
LINE_MOST = 600  # characters
LOOK_EVERY_S = 60.0
_WITNESSES_MOST = 500
_PENDING_MOST = 2_000
_SOUND_MOST = 20_000
_LOST_BYTES_MOST = 2_000_000
_KEY, _SETTLED = "key of heads", "lost heads"  # what changes call them
_log = logging.getLogger("webapp")


class Known(TypedDict):
    """The last heads that a witness gave back and the book still has, by list, as lines; and when it did."""

    at: str
    lines: dict[str, str]


class Lost(TypedDict):
    """A head that a witness gave back and the book no longer has. `words`: how the two differ."""

    at: str
    who: str
    words: str
    line: str


class Witnesses:
    """The witnesses of one open book. Gives out no heads until `look` has read the book once."""

    def __init__(self, book: Book, data_dir: Path) -> None:
        self._book, self._data_dir = book, data_dir
        self._known = read_known(data_dir)
        self._growing: Growing | None = None
        self._given: dict[str, SignedHead] = {}  # by list: an unchanged list keeps its head
        self._sound: OrderedDict[str, None] = OrderedDict()  # lines of heads that the book has
        self._pending: dict[tuple[str, str], SignedHead] = {}
        self._lock = threading.Lock()
        self._is_changed = False

    def start(self, stop: threading.Event | None = None) -> threading.Thread:
        """Look in a thread of its own, until `stop` is set or the process ends."""
        ended = stop or threading.Event()

        def look() -> None:
            while not ended.is_set():
                try:
                    self.look(datetime.now(UTC))
                except (BookError, OSError, sqlite3.Error) as error:
                    _log.warning("The heads of the book could not be looked at: %s", error)
                except Exception:  # one turn that fails must not be the last: the server goes on for months
                    _log.exception("The heads of the book could not be looked at.")
                ended.wait(LOOK_EVERY_S)

        thread = threading.Thread(target=look, name="witnesses", daemon=True)
        thread.start()
        return thread

    def give(self, now: datetime) -> list[str]:
        """Return what `sign_now` does, a line each."""
        return [one.line() for one in self.sign_now(now)]

    def sign_now(self, now: datetime) -> list[SignedHead]:
        """Return the signed heads of the book as it is now; none before the first look. `now` is aware."""
        with self._lock:
            if self._growing is None or self._book.damage:
                return []
            taken = self._growing.go_on(self._book)
            fresh = [head for head in taken if head.name not in self._given or self._given[head.name].head != head]
            for one in signed_heads.sign(self._data_dir, book_id(self._book), fresh, now) if fresh else ():
                self._given[one.head.name] = one
                self._note_sound(one.line())
            return list(self._given.values())

    def take(self, who: str, lines: object, now: datetime) -> None:
        """Take the heads that a witness gives back. What is no signed head of this book is no head."""
        with self._lock:
            for line in lines[:LINES_MOST] if isinstance(lines, list) else ():
                if not isinstance(line, str) or len(line) > LINE_MOST:
                    continue
                for one in signed_heads.read_signed(line):
                    if line in self._sound:
                        self._note_known(who, one, now)
                    elif len(self._pending) < _PENDING_MOST:
                        self._pending[who, line] = one

    def look(self, now: datetime) -> list[Lost]:
        """Hold what witnesses gave back against the book, keep both, and return what it no longer has."""
        if self._growing is None:
            self._begin()
        with self._lock:
            pending, self._pending = self._pending, {}
        keys = _ensure_key(self._book, self._data_dir, now)
        name = book_id(self._book)
        sound = {of: one for of, one in pending.items() if one.book == name and one.key in keys and one.is_signed()}
        lost = find_lost(self._book, {one.head for one in sound.values()}) if sound else {}
        found: list[Lost] = []
        with self._lock:
            for (who, line), one in sound.items():
                if one.head in lost:
                    found.append({"at": utc_text(now), "who": who, "words": lost[one.head], "line": line})
                else:
                    self._note_sound(line)
                    self._note_known(who, one, now)
            known: dict[str, Known] | None = (
                {who: {"at": one["at"], "lines": one["lines"]} for who, one in self._known.items()}
                if self._is_changed else None
            )
            self._is_changed = False
        if known is not None:
            _write_known(self._data_dir, known)
        return _keep_lost(self._data_dir, found)

    def _begin(self) -> None:
        """Read the whole book once; the heads that witnesses are known to have are looked at on the way."""
        kept = kept_heads(self._data_dir)
        sizes: dict[str, list[int]] = {}
        for one in (one for signed in kept.values() for one in signed):
            sizes.setdefault(one.head.name, []).append(one.head.size)
        growing = Growing(sizes)
        growing.go_on(self._book)
        with self._lock:
            for who, signed in kept.items():
                for one in signed:
                    if growing.roots[one.head.name].get(one.head.size) == one.head.root:
                        self._note_sound(one.line())
                    else:
                        self._pending[who, one.line()] = one
            self._growing = growing

    def _note_sound(self, line: str) -> None:
        self._sound[line] = None
        if len(self._sound) > _SOUND_MOST:
            self._sound.popitem(last=False)

    def _note_known(self, who: str, one: SignedHead, now: datetime) -> None:
        if who not in self._known and len(self._known) >= _WITNESSES_MOST:
            return
        kept = self._known.setdefault(who, {"at": "", "lines": {}})
        kept["at"], kept["lines"] = utc_text(now), {**kept["lines"], one.head.name: one.line()}
        self._is_changed = True


def read_known(data_dir: Path) -> dict[str, Known]:
    """Return by witness what it gave back last; nothing where the file is missing or no longer readable."""
    try:
        told = json.loads((data_dir / KNOWN_NAME).read_text("utf-8"))
        return {str(who): {"at": str(one["at"]), "lines": {str(n): str(line) for n, line in one["lines"].items()}}
                for who, one in told.items()}
    except (OSError, ValueError, LookupError, TypeError, AttributeError):
        return {}


def kept_heads(data_dir: Path) -> dict[str, list[SignedHead]]:
    """Return by witness the signed heads that it gave back last."""
    known = read_known(data_dir)
    return {who: signed_heads.read_signed("\n".join(one["lines"].values())) for who, one in known.items()}


def read_lost(data_dir: Path) -> list[Lost]:
    """Return every head that was found lost, oldest first."""
    try:
        text = (data_dir / LOST_NAME).read_text("utf-8")
    except (FileNotFoundError, UnicodeDecodeError):
        return []
    found: list[Lost] = []
    for line in text.splitlines():
        try:
            told = json.loads(line)
            found.append({"at": str(told["at"]), "who": str(told["who"]), "words": str(told["words"]),
                          "line": str(told["line"])})
        except (ValueError, LookupError, TypeError):  # half a line, as a power cut leaves it
            continue
    return found


def unsettled(book: Book, data_dir: Path) -> list[Lost]:
    """Return the lost heads that the office has said nothing about yet: those made after its last word."""
    lost = read_lost(data_dir)
    if not lost:
        return []
    row = book.one("SELECT max(at) AS at FROM changes WHERE what = ?", (_SETTLED,))
    until = (row["at"] if row else None) or ""
    return [one for one in lost if _time_of(one) > until]


def settle(book: Book, by: str, reason: str, now: datetime) -> None:
    """Note why the book lacks heads that witnesses had until now. BookError where no reason is given."""
    if not reason.strip():
        raise BookError("Say why the book lacks what was noted, such as: restored from the backup of Monday.")
    with book.write():
        note_change(book, by, _SETTLED, "", None, {"reason": reason.strip()[:200]}, now)


def describe_trouble(book: Book, data_dir: Path) -> str:
    """Return the sentence for the desk's pages where a witness knows what the book has not, else an empty text."""
    lost = unsettled(book, data_dir)
    if not lost:
        return ""
    who = name_witnesses(book, [lost[0]["who"]])[lost[0]["who"]]
    more = f" {len(lost)} such heads are listed." if len(lost) > 1 else ""
    return (f"{who} was shown a book on {_time_of(lost[0])[:16].replace('T', ' ')} UTC that this one is no longer: "
            f"{lost[0]['words']}{more} It was restored from an older backup, or somebody changed its file.")


def name_witnesses(book: Book, known: Iterable[str]) -> dict[str, str]:
    """Return how each witness is named in a sentence, in one statement."""
    known = list(known)
    rows = book.query("SELECT id, name FROM devices WHERE id IN (SELECT value FROM json_each(?))", (json.dumps(known),))
    names = {row["id"]: row["name"] for row in rows}
    return {who: "The group" if who == GROUP else f"The phone {names.get(who, who)}" for who in known}


def _time_of(lost: Lost) -> str:
    """Return when the head was made, not when it came back: phones come by for weeks."""
    signed = signed_heads.read_signed(lost["line"])
    return signed[0].time if signed else lost["at"]


def _ensure_key(book: Book, data_dir: Path, now: datetime) -> set[str]:
    """Return the public keys that the record names, this folder's among them: it is noted where it is new."""
    signed_heads.sign(data_dir, "", [], now)  # makes the key where there is none
    own = signed_heads.find_key(data_dir)
    keys = {str(row["key"]) for row in book.query("SELECT key FROM changes WHERE what = ?", (_KEY,))}
    if own not in keys and not book.damage:
        with book.write():
            note_change(book, "", _KEY, own, None, {"since": utc_text(now)}, now)
    return keys | {own}


def _write_known(data_dir: Path, known: Mapping[str, Known]) -> None:
    write_whole(data_dir / KNOWN_NAME, json.dumps(known).encode())


def _keep_lost(data_dir: Path, found: list[Lost]) -> list[Lost]:
    """Add what was not yet kept to the file of lost heads; return that."""
    had = {(one["who"], one["line"]) for one in read_lost(data_dir)} if found else set()
    fresh = [one for one in found if (one["who"], one["line"]) not in had]
    path = data_dir / LOST_NAME
    if not fresh or (path.exists() and path.stat().st_size > _LOST_BYTES_MOST):
        return fresh
    with path.open("ab") as file:
        file.write(b"\n" if file.tell() else b"")
        file.writelines(json.dumps(one).encode("ascii") + b"\n" for one in fresh)
        sync_file(file)
    for one in fresh:
        journal.note(data_dir, "lost_head", origin=one["who"], about=one["words"])
    return fresh
