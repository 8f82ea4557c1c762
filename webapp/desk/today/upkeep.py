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
from webapp.words.desk import say

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
        return Tile(
            "note", say("desk-upkeep-not_by_itself"), say("desk-upkeep-backup"),
            say("desk-upkeep-this_server_makes_none_by"), href,
        )
    if trouble or not made:
        word = say("desk-upkeep-failed") if status.get("failed_at") else say("desk-upkeep-old")
        return Tile("stop", word, say("desk-upkeep-backup"), trouble or say("desk-upkeep-none_made_yet"), href)
    age = clock.long((now - datetime.fromisoformat(made)).total_seconds() / 86_400)
    more = say(
        "desk-upkeep-opened_and_verified_entries", near=clock.near(made, now.timestamp()),
        status=f"{status.get('entries', 0):,}",
    )
    return Tile("entered", say("desk-upkeep-made"), say("desk-upkeep-backup_old", age=age), more, href)


def scrub_tile(data_dir: Path, now: datetime, href: str) -> Tile:
    """Return when the server last read its whole book through, and whether all held."""
    status = scrub.read_status(data_dir)
    ended_at = status.get("ended_at")
    if not ended_at:
        return Tile(
            "note", say("desk-common-not_yet"), say("desk-upkeep-read_through"),
            say("desk-upkeep-the_server_reads_the_whole"), href,
        )
    if troubles := status.get("troubles"):
        return Tile("stop", say("desk-upkeep-does_not_hold"), say("desk-upkeep-read_through"), troubles[0], href)
    age = now - datetime.fromisoformat(ended_at)
    more = say("desk-upkeep-every_page_and_every_digest", near=clock.near(ended_at, now.timestamp()))
    if age > scrub.LATE:
        return Tile("ask", say("desk-upkeep-late"), say("desk-upkeep-read_through"), more, href)
    return Tile("entered", say("desk-upkeep-holds"), say("desk-upkeep-read_through"), more, href)


def disk_tile(data_dir: Path, site: SiteSettings, href: str) -> Tile:
    """Return the room that is left on the disk of the book."""
    free_gb = shutil.disk_usage(data_dir).free / GB
    least = site_limit("disk_free_gb", site)
    said = say("desk-upkeep-disk_free", said=f"{free_gb:,.0f} GB" if free_gb >= 10 else f"{free_gb:.1f} GB")
    if free_gb < least:
        more = say("desk-upkeep-less_than_gb_a_full", least=f"{least:g}")
        return Tile("stop", say("desk-upkeep-nearly_full"), said, more, href)
    return Tile("entered", say("desk-upkeep-room"), said, say("desk-upkeep-where_the_book_lies"), href)
