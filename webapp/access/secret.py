"""The key that signs sessions: made once, kept beside the book, readable by its owner only."""

from __future__ import annotations

import secrets
from pathlib import Path

from webapp.durable import write_once

KEY_BYTES = 32


def load_secret(data_dir: Path) -> bytes:
    """Return the signing key of this data folder, making it at the first start."""
    path = data_dir / "session.key"
    if path.exists() and path.stat().st_size < KEY_BYTES:
        path.unlink()  # an earlier version wrote it without a sync, and the power failed
    if not path.exists():
        write_once(path, secrets.token_bytes(KEY_BYTES))  # whoever comes first wins; the other reads the winner's
    return path.read_bytes()
