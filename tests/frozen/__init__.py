"""Frozen books: what each version of the program has written, kept as it was, for every later version to open.

`python -m tests.frozen` freezes the version that is checked out, once, into a folder of its name. A folder holds

- book.sqlite.xz: a metric house with every kind of entry and nearly every question; said.json.xz: what it said then;
- backup.zip and backup-said.json.xz: a US house, as `cellarslate backup` wrote it, and what that book said;
- export.tar.xz: the metric house as `cellarslate export` wrote it;
- hand-in.json: a phone's batches as they were sent, the house they came to, and the answers;
- slate.json: that phone's slate as it was saved to a file, while all of it was waiting and when it was settled.
"""

from __future__ import annotations

import json
import lzma
import shutil
import tarfile
from pathlib import Path
from typing import Any

FROZEN_DIR = Path(__file__).parent
VERSIONS = sorted(folder.name for folder in FROZEN_DIR.iterdir() if (folder / "said.json.xz").is_file())


def read_json(version: str, name: str) -> Any:
    """Return what a JSON file of a frozen version says, packed or plain."""
    path = FROZEN_DIR / version / name
    raw = path.read_bytes()
    return json.loads(lzma.decompress(raw) if path.suffix == ".xz" else raw)


def thaw_book(version: str, path: Path) -> Path:
    """Write the metric house's book of a frozen version to a path; return it."""
    path.parent.mkdir(parents=True, exist_ok=True)
    with lzma.open(FROZEN_DIR / version / "book.sqlite.xz") as packed, path.open("wb") as file:
        shutil.copyfileobj(packed, file)
    return path


def thaw_backup(version: str, path: Path) -> Path:
    """Copy the US house's backup of a frozen version to a path; return it."""
    return Path(shutil.copy(FROZEN_DIR / version / "backup.zip", path))


def thaw_export(version: str, folder: Path) -> Path:
    """Unpack the export of a frozen version into a new folder; return it."""
    with tarfile.open(FROZEN_DIR / version / "export.tar.xz") as packed:
        packed.extractall(folder, filter="data")
    return folder
