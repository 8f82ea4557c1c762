"""Freeze the version that is checked out: `python -m tests.frozen`. Once for each version, just before its release."""

from __future__ import annotations

import json
import lzma
import sys
import tarfile
import tempfile
from pathlib import Path
from typing import Any

from tests.frozen import FROZEN_DIR, phone, story
from tests.frozen.said import said
from tests.frozen.told_checks import History, histories
from webapp import __version__
from webapp.access import secret
from webapp.backups import BOOK_NAME, write_backup
from webapp.book.fold import unjudged
from webapp.book.opening import open_book
from webapp.book.record.backup import backup as copy_book
from webapp.book.record.store import Book
from webapp.keeping.export import export_book


def main() -> None:
    """Write the folder of this version."""
    folder = FROZEN_DIR / __version__
    if folder.exists():
        sys.exit(f"{__version__} is frozen already, in {folder}. A frozen book is never made again.")
    with tempfile.TemporaryDirectory() as scratch_name:
        scratch = Path(scratch_name)
        made = scratch / "frozen"
        made.mkdir()
        told = histories()
        asked = _freeze_metric(scratch, made, told) | _freeze_us(scratch, made)
        sent, slate = phone.record(scratch / "phone-world")
        _write_json(made / "hand-in.json", sent)
        _write_json(made / "slate.json", slate)
        made.rename(folder)
    size = sum(file.stat().st_size for file in folder.iterdir())
    print(f"{folder}: {len(asked)} codes of questions, {size:,} bytes.")


def _freeze_metric(scratch: Path, made: Path, told: list[History]) -> set[str]:
    data_dir = scratch / "metric"
    with open_book(data_dir / BOOK_NAME) as book:
        story.furnish(book, "metric")
        story.tell_season(book, seed=1, size=170)
        story.tell_rest(book)
        with open_book(scratch / "all.sqlite") as every:
            chosen = story.choose(told, _codes(book), every)
        story.tell_checks(book, chosen)
        unjudged.judge_all(book)
        copy_book(book, scratch / "copy.sqlite")
        _write_json(made / "said.json.xz", said(book))
        asked = _codes(book)
    (made / "book.sqlite.xz").write_bytes(lzma.compress((scratch / "copy.sqlite").read_bytes(), preset=9))
    export_book(data_dir / BOOK_NAME, scratch / "export")
    with tarfile.open(made / "export.tar.xz", "w:xz") as packed:
        packed.add(scratch / "export", ".")
    return asked


def _freeze_us(scratch: Path, made: Path) -> set[str]:
    data_dir = scratch / "us"
    with open_book(data_dir / BOOK_NAME) as book:
        story.furnish(book, "us")
        story.tell_season(book, seed=10, size=40)
        story.tell_rest(book)
        unjudged.judge_all(book)
        _write_json(made / "backup-said.json.xz", said(book))
        asked = _codes(book)
    secret.load_secret(data_dir)
    write_backup(data_dir, made / "backup.zip")
    return asked


def _codes(book: Book) -> set[str]:
    return {row["code"] for row in book.query("SELECT DISTINCT code FROM queries")}


def _write_json(path: Path, content: Any) -> None:
    text = json.dumps(content, indent=1, ensure_ascii=False) + "\n"
    path.write_bytes(lzma.compress(text.encode(), preset=9) if path.suffix == ".xz" else text.encode())


if __name__ == "__main__":
    main()
