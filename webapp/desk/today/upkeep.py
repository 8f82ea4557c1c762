"""The state of the server's own keeping: backup, disk and book, for the foot of the day's page."""

from __future__ import annotations

import shutil
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from webapp.book.before.limits import site_limit
from webapp.desk.today import clock
from webapp.keeping import schedule, scrub
from webapp.kinds.rows import SiteSettings

GB = 1e9


@dataclass(frozen=True, slots=True)
class Tile:
    """A tile of the foot. weight: entered, ask, stop or note, with its word."""

    weight: str
    word: str
    name: str
    more: str
    href: str


def backup_tile(data_dir: Path, now: datetime, href: str) -> Tile:
    """Return the state of the backups by the clock."""
    status, trouble = schedule.read_status(data_dir), schedule.describe_trouble(data_dir, now)
    made = status.get("made_at")
    if not status:
        return Tile("note", "not by itself", "Backup", "This server makes none by itself.", href)
    if trouble or not made:
        return Tile("stop", "failed" if status.get("failed_at") else "old", "Backup", trouble or "None made yet.", href)
    age = clock.long((now - datetime.fromisoformat(made)).total_seconds() / 86_400)
    more = f"{clock.near(made, now.timestamp())}, opened and verified: {status.get('entries', 0):,} entries"
    return Tile("entered", "made", f"Backup {age} old", more, href)


def scrub_tile(data_dir: Path, now: datetime, href: str) -> Tile:
    """Return when the server last read its whole book through, and whether all held."""
    status = scrub.read_status(data_dir)
    ended_at = status.get("ended_at")
    if not ended_at:
        return Tile("note", "not yet", "Read through", "The server reads the whole book once a day.", href)
    if troubles := status.get("troubles"):
        return Tile("stop", "does not hold", "Read through", troubles[0], href)
    age = now - datetime.fromisoformat(ended_at)
    more = f"{clock.near(ended_at, now.timestamp())}, every page and every digest"
    if age > scrub.LATE:
        return Tile("ask", "late", "Read through", more, href)
    return Tile("entered", "holds", "Read through", more, href)


def disk_tile(data_dir: Path, site: SiteSettings, href: str) -> Tile:
    """Return the room that is left on the disk of the book."""
    free_gb = shutil.disk_usage(data_dir).free / GB
    least = site_limit("disk_free_gb", site)
    said = f"{free_gb:,.0f} GB" if free_gb >= 10 else f"{free_gb:.1f} GB"
    if free_gb < least:
        more = f"Less than {least:g} GB. A full disk keeps hand-ins waiting on the phones."
        return Tile("stop", "nearly full", f"Disk {said} free", more, href)
    return Tile("entered", "room", f"Disk {said} free", "where the book lies", href)
