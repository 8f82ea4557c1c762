"""All that phones and the book depend on, looked at in one go."""

from __future__ import annotations

from datetime import datetime
from pathlib import Path

from webapp.backups import BOOK_NAME
from webapp.cli_parts import open_at
from webapp.doctor import keeping, network
from webapp.doctor.finding import Finding, Weight, bad


def examine(data_dir: Path, url: str | None, now: datetime) -> list[Finding]:
    """Return all findings about the site in this folder, served last at `url`, at `now` (aware)."""
    if not (data_dir / BOOK_NAME).is_file():
        step = "Name its folder with --data, or begin one: cellarslate set-up."
        return [bad("folder", f"There is no book in {data_dir}.", step)]
    folder = keeping.look_at_folder(data_dir)
    if folder.weight is Weight.BAD:
        return [folder]
    own, served = network.own_addresses(), keeping.is_served(data_dir)
    with open_at(data_dir) as book:
        kept = [
            keeping.look_at_book(book), keeping.look_at_disk(book, data_dir), keeping.look_at_backups(data_dir, now),
            keeping.look_at_clock(book, now.astimezone()),
        ]
    return [
        folder, *kept, network.look_at_addresses(own), *network.look_at_url(url, own),
        *network.look_at_port(url, served), *network.look_at_certificate(url, data_dir, served, now),
    ]
