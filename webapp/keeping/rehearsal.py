"""The rehearsal of a restore: everything but the restore itself, and what it would cost."""

from __future__ import annotations

import tempfile
from pathlib import Path
from typing import TypedDict

from webapp.backups import BOOK_NAME, restore_backup
from webapp.book import verification
from webapp.book.enclosures import shelf
from webapp.book.intake import book_id
from webapp.book.opening import open_book
from webapp.book.record import log
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book

NAMED_MOST = 10


_ROWS = "SELECT id, device, received_at FROM entries"


class _Row(TypedDict):
    id: str
    device: str
    received_at: str


def rehearse(file_path: Path, data_dir: Path, identity: Path | None = None) -> list[str]:
    """Restore a backup into a folder that is thrown away, verify it, and compare it with the live book, if there is
    one. `identity`: the file with the private key, for a backup that is encrypted.

    Returns lines for a person. Raises BookError with a sentence where the backup does not hold. The live book is read
    only, and may be in use.
    """
    with tempfile.TemporaryDirectory(prefix="cellarslate-rehearsal-") as scratch:
        restored = Path(scratch) / "book"
        restore_backup(file_path, restored, identity)
        with open_book(restored / BOOK_NAME) as backup:
            troubles = verification.verify(backup)
            if troubles:
                raise BookError(f"The backup can be restored, but it is not whole. {troubles[0]}")
            entry_count, digest = log.load_head(backup)
            lines = [
                f"{file_path.name} can be restored: {entry_count} entries, the chain holds, the accounts add up.",
                f"Last digest: {digest}",
                *shelf.verify(backup)[:NAMED_MOST],
            ]
            if not (data_dir / BOOK_NAME).is_file():
                return [*lines, f"There is no book in {data_dir} to compare it with."]
            with open_book(data_dir / BOOK_NAME) as live:
                return lines + _compare(backup, live)


def _compare(backup: Book, live: Book) -> list[str]:
    if book_id(backup) != book_id(live):
        return ["It is of another book than the one here. Nothing of the two was compared."]
    entry_count, digest = log.load_head(backup)
    same = live.one("SELECT digest FROM entries WHERE book_no = ?", (entry_count,))
    if entry_count and (same is None or same["digest"] != digest):
        return [
            "Its entries are not the first of the book here: one of the two was restored from a backup before.",
            *_entries_lost(live.rows(_Row, f"{_ROWS} ORDER BY book_no"), _ids(backup)),
        ]
    after = live.rows(_Row, f"{_ROWS} WHERE book_no > ? ORDER BY book_no", (entry_count,))
    return _entries_lost(after, set()) + _desk_lost(backup, live)


def _ids(book: Book) -> set[str]:
    return {row["id"] for row in book.query("SELECT id FROM entries")}


def _entries_lost(rows: list[_Row], had: set[str]) -> list[str]:
    lost = [row for row in rows if row["id"] not in had]
    if not lost:
        return ["It holds every entry of the book here."]
    by_device: dict[str, int] = {}
    for row in lost:
        by_device[row["device"]] = by_device.get(row["device"], 0) + 1
    named = sorted(by_device.items(), key=lambda one: -one[1])
    shown = ", ".join(f"{count} of {device}" for device, count in named[:NAMED_MOST])
    more = f", and of {len(named) - NAMED_MOST} more" if len(named) > NAMED_MOST else ""
    return [
        f"It lacks {len(lost)} entries, received since {lost[0]['received_at']}: {shown}{more}.",
        "Phones keep what they handed in for 30 days and bring it again; what was typed at the desk, or on a phone"
        " that is lost, would be gone. Export it first: cellarslate export.",
    ]


def _desk_lost(backup: Book, live: Book) -> list[str]:
    """Return lines about the rows of the registry and the closed periods that the backup lacks."""
    last = {b: (b.one("SELECT coalesce(max(no), 0) AS n FROM changes") or {})["n"] for b in (backup, live)}
    lines = []
    if last[live] > last[backup]:
        whats = live.query(
            "SELECT what, count(*) AS n FROM changes WHERE no > ? GROUP BY what ORDER BY what", (last[backup],)
        )
        shown = ", ".join(f"{row['n']} of {row['what']}" for row in whats)
        lines.append(f"It lacks {last[live] - last[backup]} changes at the desk: {shown}. Nobody brings these again.")
    had = {row["month"] for row in backup.query("SELECT month FROM closes")}
    months = [row["month"] for row in live.query("SELECT month FROM closes ORDER BY month") if row["month"] not in had]
    if months:
        lines.append(f"It lacks the close of {', '.join(months)}: sign again after a restore.")
    return lines
