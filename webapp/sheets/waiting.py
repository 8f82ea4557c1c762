"""Sheets that somebody looks over and has not put in yet: files beside the book, the oldest given up first."""

from __future__ import annotations

import os
import re
from pathlib import Path

from webapp.book.record.evidence import digest_of
from webapp.durable import write_whole

FOLDER = "sheets-waiting"
MOST = 20
_SHA = re.compile(r"[0-9a-f]{64}\Z")


def keep_waiting(data_dir: Path, content: bytes) -> str:
    """Keep a file until it is put in; return its digest, by which it is found again. [64 hexadecimal digits]"""
    folder, sha = data_dir / FOLDER, digest_of(content)
    folder.mkdir(mode=0o700, exist_ok=True)
    path = folder / sha
    if path.exists():
        os.utime(path)
        return sha
    write_whole(path, content)
    oldest = sorted((one for one in folder.iterdir() if one.is_file()), key=lambda one: one.stat().st_mtime)
    for one in oldest[:-MOST]:
        one.unlink(missing_ok=True)
    return sha


def load_waiting(data_dir: Path, sha: str) -> bytes | None:
    """Return a file that waits, or None where it was given up, or never came."""
    if not _SHA.match(sha):
        return None
    try:
        content = (data_dir / FOLDER / sha).read_bytes()
    except OSError:
        return None
    return content if digest_of(content) == sha else None
