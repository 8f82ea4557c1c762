"""Backups by the clock, made by the server itself: written, opened, verified, the oldest let go; a failure is said.

The folder is named once, at the desk or to `serve`, and kept beside the book. Once a week the newest backup is looked
at again where it lies: opened and verified if its key is at hand, else held against the digest that was noted of it.
"""

from __future__ import annotations

import hashlib
import json
import logging
import re
import shutil
import tempfile
import threading
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import TypedDict

from webapp.backups import restore_backup, write_with_heads
from webapp.book.house import journal
from webapp.book.record.clock import utc_text
from webapp.book.record.errors import BookError
from webapp.durable import write_whole
from webapp.sealed import is_sealed, recipient_of
from webapp.signed_heads import add_to

STATUS_NAME = "backups.json"
PLAN_NAME = "backup-plan.json"
REHEARSED_EVERY = timedelta(days=7)
_NAME = re.compile(r"book-(\d{8}T\d{6}Z)\.zip(?:\.age)?\Z")
_RETRY = timedelta(minutes=15)
_LOOK_EVERY_S = 60.0
_LEFT_S = 86_400.0
_log = logging.getLogger("webapp")


class Status(TypedDict, total=False):
    """The state of the backups: where, how often, the last good one, and a failure since."""

    folder: str
    every_h: float
    keep: int
    made_at: str
    entries: int
    file: str
    is_encrypted: bool
    sha256: str
    size: int
    rehearsed_at: str
    rehearsed: str
    not_held: str
    failed_at: str
    words: str


class _Kept(TypedDict, total=False):
    """A plan as it lies beside the book. elsewhere: backups are made another way, and nobody is asked."""

    folder: str
    every_h: float
    keep: int
    elsewhere: bool


@dataclass(frozen=True)
class Plan:
    """Where backups go, how often, how many are kept, and the file with the private key, where it is at hand."""

    folder: Path
    every: timedelta = timedelta(hours=24)
    keep: int = 14
    identity: Path | None = None


def keep_plan(data_dir: Path, plan: Plan | None, *, is_elsewhere: bool = False) -> None:
    """Keep the plan beside the book: from now on backups are made by it, after a new start too; None ends them."""
    kept: _Kept = {"elsewhere": is_elsewhere}
    if plan:
        kept |= {"folder": str(plan.folder), "every_h": plan.every / timedelta(hours=1), "keep": plan.keep}
    else:
        (data_dir / STATUS_NAME).unlink(missing_ok=True)  # nobody waits for those that nobody wants any more
    write_whole(data_dir / PLAN_NAME, json.dumps(kept).encode())


def read_plan(data_dir: Path) -> Plan | None:
    """Return the plan that is kept beside the book, or None where no folder is named."""
    kept = _read_kept(data_dir)
    try:
        folder = str(kept["folder"])
        every, keep = timedelta(hours=float(kept["every_h"])), max(1, int(kept["keep"]))
        return Plan(Path(folder), every, keep) if folder else None
    except (KeyError, TypeError, ValueError, OverflowError):
        return None


def is_asked(data_dir: Path) -> bool:
    """Say whether the office is to be asked for a folder: none is named, and nobody said that they go another way."""
    return read_plan(data_dir) is None and not read_status(data_dir) and not _read_kept(data_dir).get("elsewhere")


def check_folder(data_dir: Path, folder: Path) -> None:
    """See that backups can go into this folder. BookError says what is wrong with it."""
    if not folder.is_absolute():
        raise BookError("Type the whole path of the folder, such as /media/backup or D:\\backup.")
    if not folder.is_dir():
        raise BookError(f"There is no folder {folder} on the server. Make it there, or put in its disk.")
    if folder.resolve().is_relative_to(data_dir.resolve()):
        raise BookError("This folder lies in that of the book, and would be lost with it. Take one on another disk.")
    try:
        with tempfile.TemporaryFile(dir=folder):
            pass
    except OSError as error:
        raise BookError(f"The server may not write into {folder}: {error.strerror}. Change its rights.") from error


def start_backups(data_dir: Path, plan: Plan | None, stop: threading.Event | None = None) -> threading.Thread:
    """Look after the backups in a thread of its own, until `stop` is set or the process ends.

    With a plan that was given at the start, that one is kept; one that is named at the desk meanwhile takes its place.
    """
    ended = stop or threading.Event()
    if plan:
        keep_plan(data_dir, plan)

    def look() -> None:
        while not ended.is_set():
            try:
                if named := read_plan(data_dir):
                    with_key = replace(named, identity=plan.identity if plan else None)
                    run_due(data_dir, with_key, datetime.now(UTC))
                    rehearse_due(data_dir, with_key, datetime.now(UTC))
            except Exception:  # one turn that fails must not be the last: the server goes on for months
                _log.exception("The backup could not be looked after.")
            ended.wait(_LOOK_EVERY_S)

    thread = threading.Thread(target=look, name="backups", daemon=True)
    thread.start()
    return thread


def run_due(data_dir: Path, plan: Plan, now: datetime) -> bool:
    """Make a backup if one is due; say whether one was tried. `now` is aware. Never raises for a disk in trouble."""
    status = read_status(data_dir)
    failed_at = _time_of(status.get("failed_at"))
    if failed_at and timedelta(0) <= now - failed_at < _RETRY:
        return False
    every_h = plan.every.total_seconds() / 3600
    note: Status = {"folder": str(plan.folder), "every_h": every_h, "keep": plan.keep}
    try:
        # Of a clock that was ahead and was set back, those of then say nothing: they must neither keep backups away nor
        # have one made at every look.
        newest = max((when for when in map(_when, _backups(plan.folder)) if when <= now), default=None)
        if newest and now - newest < plan.every:
            return False
        _sweep(plan.folder, now)
        _sweep(data_dir, now)
        ending = ".zip.age" if recipient_of(data_dir) else ".zip"
        path = plan.folder / f"book-{now.astimezone(UTC):%Y%m%dT%H%M%SZ}{ending}"
        entry_count = _make(data_dir, path, plan.identity, now)
        note |= {"made_at": utc_text(now), "entries": entry_count, "file": path.name}
        note |= {"is_encrypted": is_sealed(path), "sha256": _digest(path), "size": path.stat().st_size}
        for name in ("rehearsed_at", "rehearsed"):
            if name in status:
                note[name] = status[name]
        # The one just made stays, although by its name it is not the last where the clock was ahead once.
        others = sorted(one for one in _backups(plan.folder) if one != path)
        for old in others[: max(0, len(others) - plan.keep + 1)]:
            old.unlink()
    except (BookError, OSError) as error:
        _log.warning("The backup failed: %s", error)
        note = {**status, **note, "failed_at": utc_text(now), "words": str(error)}
    _write_status(data_dir, note)
    return True


def rehearse_due(data_dir: Path, plan: Plan, now: datetime) -> bool:
    """Look at the newest backup again where it lies, once a week; say whether it was. `now` is aware. Never raises for
    a disk in trouble.

    With its private key at hand, or unencrypted, it is opened and verified; else its size and digest are held against
    those that were noted when it was made.
    """
    status = read_status(data_dir)
    made_at, last = _time_of(status.get("made_at")), _time_of(status.get("rehearsed_at"))
    if not made_at or "sha256" not in status or status.get("failed_at"):
        return False
    if timedelta(0) <= now - (last or made_at) < REHEARSED_EVERY:
        return False
    path = plan.folder / status["file"]
    note: Status = {**status, "rehearsed_at": utc_text(now)}
    note.pop("not_held", None)
    try:
        if path.stat().st_size != status["size"] or _digest(path) != status["sha256"]:
            raise BookError(f"{path.name} is no longer as it was written. Look at its disk, and make another backup.")
        note["rehearsed"] = "size and digest hold"
        if plan.identity or not status.get("is_encrypted"):
            _open(path, data_dir, plan.identity, status["entries"])
            note["rehearsed"] = "opened and verified"
    except (BookError, OSError) as error:
        _log.warning("The rehearsal of the backup failed: %s", error)
        note["not_held"] = str(error)
    _write_status(data_dir, note)
    return True


def read_status(data_dir: Path) -> Status:
    """Return the state of the backups: `made_at`, `entries`, `file` of the last good one; `failed_at` and `words` of a
    failure since.
    """
    try:
        status: Status = json.loads((data_dir / STATUS_NAME).read_text("utf-8"))
        return status if isinstance(status, dict) else {}
    except (OSError, ValueError):
        return {}


def describe_trouble(data_dir: Path, now: datetime) -> str:
    """Return a sentence for the office where backups by the clock fail or have stopped coming; else an empty text."""
    status = read_status(data_dir)
    last = status.get("made_at")
    since = f"The last good one is of {last[:16].replace('T', ' ')} UTC." if last else "There is none yet."
    if status.get("failed_at"):
        return f"The backup failed: {status.get('words')} {since}"
    if status.get("not_held"):
        return f"The newest backup does not hold: {status['not_held']}"
    made_at, every = _time_of(last), timedelta(hours=float(status.get("every_h", 24)))
    if made_at and now - made_at > 2 * every:
        hours = int((now - made_at).total_seconds() // 3600)
        long = f"{hours // 24} days" if hours >= 48 else f"{hours} hours"
        return f"No backup was made for {long}. {since} Look whether the server runs with --backup-to."
    return ""


def describe_backups(data_dir: Path) -> str:
    """Return a line for the settings page: the folder of the backups, when the last one was made and looked at."""
    status = read_status(data_dir)
    if not status:
        if plan := read_plan(data_dir):
            return f"To {plan.folder}: the first one comes within a minute."
        return "The server makes none by itself. Name a folder, or make them another way, daily."
    last = "none made yet"
    if status.get("made_at"):
        last = f"last {status['made_at'][:16].replace('T', ' ')} UTC, {status['entries']} entries, verified"
    if "is_encrypted" in status:
        last += ", encrypted" if status["is_encrypted"] else ", not encrypted"
    if status.get("rehearsed"):
        last += f"; looked at again {status['rehearsed_at'][:10]}: {status['rehearsed']}"
    return f"Every {status['every_h']:g} hours to {status['folder']}, {status['keep']} kept: {last}."


def _make(data_dir: Path, path: Path, identity: Path | None, now: datetime) -> int:
    """Write a backup and restore it into a folder that is thrown away.

    A backup that nobody has opened is only a hope. Of one that is encrypted, and whose key is not at hand, the archive
    is opened and verified before it is closed (webapp/backups.py).
    """
    path.parent.mkdir(parents=True, exist_ok=True)
    entry_count, signed = write_with_heads(data_dir, path, now)
    try:
        if identity or not is_sealed(path):
            _open(path, data_dir, identity, entry_count)
    except BaseException:
        path.unlink(missing_ok=True)
        raise
    add_to(path.parent, signed)  # outlives the backup, which is let go one day
    journal.note(data_dir, "backup", origin="clock", about=path.name)
    return entry_count


def _open(path: Path, data_dir: Path, identity: Path | None, entry_count: int) -> None:
    # A folder for passing files may be small, or memory; a plain copy of a closed one stays on the book's own disk.
    beside = data_dir if is_sealed(path) else path.parent
    with tempfile.TemporaryDirectory(dir=beside, prefix=".backup-") as scratch:
        # Without its pictures: each was held against its digest when it came, and is again by `verify` and `rehearse`.
        if restore_backup(path, Path(scratch) / "book", identity, with_enclosures=False) != entry_count:
            raise BookError(f"{path.name} does not hold what was written. Look at the disk.")


def _digest(path: Path) -> str:
    with path.open("rb") as file:
        return hashlib.file_digest(file, "sha256").hexdigest()


def _read_kept(data_dir: Path) -> _Kept:
    try:
        kept: _Kept = json.loads((data_dir / PLAN_NAME).read_text("utf-8"))
        return kept if isinstance(kept, dict) else {}
    except (OSError, ValueError):
        return {}


def _sweep(folder: Path, now: datetime) -> None:
    """Remove half-made backups that a killed server left in the folder: they hold keys."""
    for left in folder.glob(".backup-*") if folder.is_dir() else ():
        if now.timestamp() - left.stat().st_mtime > _LEFT_S:
            shutil.rmtree(left, ignore_errors=True)


def _backups(folder: Path) -> list[Path]:
    """Return the backups that this schedule made; nobody else's file is ever touched."""
    return [path for path in folder.glob("book-*.zip*") if _NAME.match(path.name)] if folder.is_dir() else []


def _when(path: Path) -> datetime:
    found = _NAME.match(path.name)
    assert found
    return datetime.strptime(found[1], "%Y%m%dT%H%M%SZ").replace(tzinfo=UTC)


def _time_of(stamp: str | None) -> datetime | None:
    try:
        return datetime.fromisoformat(stamp or "")
    except (TypeError, ValueError):
        return None


def _write_status(data_dir: Path, status: Status) -> None:
    try:
        write_whole(data_dir / STATUS_NAME, json.dumps(status).encode())
    except OSError as error:
        _log.warning("What came of the backup could not be noted: %s", error)
