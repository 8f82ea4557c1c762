"""What the book needs of its computer: a folder to write in, room, a right clock, a backup that comes."""

from __future__ import annotations

import os
import shutil
from datetime import UTC, datetime, timedelta
from pathlib import Path
from statistics import median

import webapp.book.limits  # noqa: F401 - declares them all
from webapp.book.before.limits import site_limit
from webapp.book.house.devices import report_devices
from webapp.book.house.registry import site
from webapp.book.record import log
from webapp.book.record.store import Book
from webapp.doctor.finding import Finding, bad, look, well
from webapp.keeping import schedule
from webapp.keeping.folder_lock import AlreadyServed, hold_folder

_GB = 1e9
# Phones take their time from their network. Where most of them say otherwise, this computer is wrong. [s]
_CLOCK_OFF_S = 60.0
# A phone that has not been heard for this long says nothing of the clock of today.
_HEARD = timedelta(days=2)


def is_served(data_dir: Path) -> bool:
    """Say whether a server has the book in this folder open. Raise OSError where nothing can be written there."""
    try:
        hold_folder(data_dir).close()
    except AlreadyServed:
        return True
    return False


def look_at_folder(data_dir: Path) -> Finding:
    """Judge whether the folder of the book can be written in, and by others than its owner."""
    if not os.access(data_dir, os.W_OK):
        return bad("folder", f"This user can write nothing in {data_dir}.", "Run this as the user whose book it is.")
    if os.name == "posix" and data_dir.stat().st_mode & 0o077:
        return look("folder", f"Others on this computer may look into {data_dir}.", f"chmod 700 {data_dir}")
    return well("folder", str(data_dir))


def look_at_disk(book: Book, data_dir: Path) -> Finding:
    """Judge the room on the disk of the book, by the house's limit."""
    free, least = shutil.disk_usage(data_dir).free / _GB, site_limit("disk_free_gb", site(book))
    if free < least:
        step = "Make room: on a full disk phones cannot hand in."
        return bad("disk", f"{free:.1f} GB are free, less than {least:g}.", step)
    return well("disk", f"{free:,.1f} GB are free.")


def look_at_book(book: Book) -> Finding:
    """Say what the book holds. Its chain is `verify`'s to walk."""
    entry_count, digest = log.load_head(book)
    words = f"{entry_count:,} entries, last digest {digest[:12]}. `cellarslate verify` walks the whole chain."
    return well("book", words)


def look_at_clock(book: Book, now: datetime) -> Finding:
    """Judge this computer's clock by the clocks of the phones that were heard in the last two days."""
    heard_since = now.astimezone(UTC) - _HEARD
    skews = [
        row["skew_s"] for row in report_devices(book)
        if row["skew_s"] is not None and row["heard_at"] and datetime.fromisoformat(row["heard_at"]) >= heard_since
    ]
    if not skews:
        return well("clock", f"{now:%Y-%m-%d %H:%M} here. No phone was heard lately that it could be held against.")
    off_s = median(skews)
    if abs(off_s) >= _CLOCK_OFF_S:
        # A phone's skew is its clock less ours.
        way = "behind" if off_s > 0 else "ahead"
        step = "Let the system set its time from the network, and look at the time zone."
        return bad("clock", f"By {len(skews)} phones this computer is {abs(off_s):.0f} s {way}.", step)
    return well("clock", f"Within {abs(off_s):.0f} s of {len(skews)} phones.")


def look_at_backups(data_dir: Path, now: datetime) -> Finding:
    """Judge the backups by the clock."""
    step = "cellarslate serve --backup-to FOLDER, on another disk. Keep one away from the house."
    if not schedule.read_status(data_dir):
        return look("backup", "The server makes none by itself.", step)
    if trouble := schedule.describe_trouble(data_dir, now):
        return bad("backup", trouble, step)
    return well("backup", schedule.describe_backups(data_dir))
