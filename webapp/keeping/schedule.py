"""Backups by the clock, made by the server itself: written, opened, verified, the oldest let go; a failure is said."""

from __future__ import annotations

import json
import logging
import re
import shutil
import tempfile
import threading
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import TypedDict

from webapp.backups import restore_backup, write_backup
from webapp.book.house import journal
from webapp.book.record.clock import utc_text
from webapp.book.record.errors import BookError

STATUS_NAME = "backups.json"
_NAME = re.compile(r"book-(\d{8}T\d{6}Z)\.zip\Z")
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
    failed_at: str
    words: str


@dataclass(frozen=True)
class Plan:
    """Where backups go, how often, and how many are kept."""

    folder: Path
    every: timedelta = timedelta(hours=24)
    keep: int = 14


def start_backups(data_dir: Path, plan: Plan, stop: threading.Event | None = None) -> threading.Thread:
    """Look after the backups in a thread of its own, until `stop` is set or the process ends."""
    ended = stop or threading.Event()

    def look() -> None:
        while not ended.is_set():
            try:
                run_due(data_dir, plan, datetime.now(UTC))
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
        newest = max((_when(path) for path in _backups(plan.folder)), default=None)
        # A clock that was set back must not keep backups away.
        if newest and timedelta(0) <= now - newest < plan.every:
            return False
        _sweep(plan.folder, now)
        path = plan.folder / f"book-{now.astimezone(UTC):%Y%m%dT%H%M%SZ}.zip"
        entry_count = _make(data_dir, path)
        note |= {"made_at": utc_text(now), "entries": entry_count, "file": path.name}
        for old in sorted(_backups(plan.folder))[: -plan.keep]:
            old.unlink()
    except (BookError, OSError) as error:
        _log.warning("The backup failed: %s", error)
        note = {**status, **note, "failed_at": utc_text(now), "words": str(error)}
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
    made_at, every = _time_of(last), timedelta(hours=float(status.get("every_h", 24)))
    if made_at and now - made_at > 2 * every:
        hours = int((now - made_at).total_seconds() // 3600)
        long = f"{hours // 24} days" if hours >= 48 else f"{hours} hours"
        return f"No backup was made for {long}. {since} Look whether the server runs with --backup-to."
    return ""


def describe_backups(data_dir: Path) -> str:
    """Return a line for the settings page: the folder of the backups, and when the last one was made."""
    status = read_status(data_dir)
    if not status:
        return "The server makes none by itself. Start it with --backup-to, or make them another way, daily."
    last = "none made yet"
    if status.get("made_at"):
        last = f"last {status['made_at'][:16].replace('T', ' ')} UTC, {status['entries']} entries, verified"
    return f"Every {status['every_h']:g} hours to {status['folder']}, {status['keep']} kept: {last}."


def _make(data_dir: Path, path: Path) -> int:
    """Write a backup and restore it into a folder that is thrown away.

    A backup that nobody has opened is only a hope.
    """
    path.parent.mkdir(parents=True, exist_ok=True)
    entry_count = write_backup(data_dir, path)
    try:
        # Beside the backup: a folder for passing files may be small, or memory.
        with tempfile.TemporaryDirectory(dir=path.parent, prefix=".backup-") as scratch:
            if restore_backup(path, Path(scratch) / "book") != entry_count:
                raise BookError(f"{path.name} does not hold what was written. Look at the disk.")
    except BaseException:
        path.unlink(missing_ok=True)
        raise
    journal.note(data_dir, "backup", origin="clock", about=path.name)
    return entry_count


def _sweep(folder: Path, now: datetime) -> None:
    """Remove half-made backups that a killed server left in the folder: they hold keys."""
    for left in folder.glob(".backup-*") if folder.is_dir() else ():
        if now.timestamp() - left.stat().st_mtime > _LEFT_S:
            shutil.rmtree(left, ignore_errors=True)


def _backups(folder: Path) -> list[Path]:
    """Return the backups that this schedule made; nobody else's file is ever touched."""
    return [path for path in folder.glob("book-*.zip") if _NAME.match(path.name)] if folder.is_dir() else []


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
    fresh = data_dir / f"{STATUS_NAME}.new"
    try:
        fresh.write_text(json.dumps(status), "utf-8")
        fresh.replace(data_dir / STATUS_NAME)
    except OSError as error:
        _log.warning("What came of the backup could not be noted: %s", error)
