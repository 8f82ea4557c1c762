"""Files beside the book that must outlive a power cut: written aside, synced, then put in place under their name.

A rename is whole or not at all, but neither what a file holds nor its name is on the disk before each is synced: the
file by fsync(2), the name by fsync of its folder. Windows syncs no folders; there the file alone is.
"""

from __future__ import annotations

import os
import secrets
import sys
from pathlib import Path
from typing import IO


def write_whole(path: Path, content: bytes, mode: int = 0o600) -> None:
    """Write a file, or write it anew, whole or not at all; on the disk when this returns. OSError where it cannot be.

    It has its rights from its first moment, and what stood there before is left as it was until then.
    """
    draft = _write_aside(path, content, mode)
    try:
        draft.replace(path)
    except BaseException:
        draft.unlink(missing_ok=True)
        raise
    sync_folder(path.parent)


def write_once(path: Path, content: bytes, mode: int = 0o600) -> bool:
    """Write a file that nobody else has written yet; say whether it is ours. Of several at once the first stands."""
    draft = _write_aside(path, content, mode)
    try:
        os.link(draft, path)
    except FileExistsError:
        return False
    except OSError:  # a disk without links
        draft.replace(path)
    finally:
        draft.unlink(missing_ok=True)
    sync_folder(path.parent)
    return True


def sync_file(file: IO[bytes] | IO[str]) -> None:
    """Have what was written into an open file on the disk when this returns."""
    file.flush()
    if sys.platform == "darwin":
        import fcntl

        # There fsync alone leaves it in the memory of the drive. [fsync(2) of macOS]
        fcntl.fcntl(file.fileno(), fcntl.F_FULLFSYNC)
    else:
        os.fsync(file.fileno())


def sync_folder(folder: Path) -> None:
    """Have the names in a folder on the disk when this returns, where the system does that."""
    if sys.platform == "win32":
        return
    handle = os.open(folder, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)


def sync_below(folder: Path) -> None:
    """Have all files below a folder, and their names, on the disk when this returns."""
    for path in sorted(folder.rglob("*"), reverse=True):
        if path.is_dir():
            sync_folder(path)
        else:
            with path.open("rb+") as file:
                sync_file(file)
    sync_folder(folder)


def _write_aside(path: Path, content: bytes, mode: int) -> Path:
    draft = path.with_name(f"{path.name}.{secrets.token_hex(8)}.new")
    try:
        with os.fdopen(os.open(draft, os.O_WRONLY | os.O_CREAT | os.O_EXCL, mode), "wb") as file:
            file.write(content)
            sync_file(file)
    except BaseException:
        draft.unlink(missing_ok=True)
        raise
    return draft
