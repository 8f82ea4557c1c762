"""The key that signs sessions: made once, kept beside the book, readable by its owner only."""

from __future__ import annotations

import os
import secrets
from pathlib import Path

KEY_BYTES = 32


def load_secret(data_dir: Path) -> bytes:
    """Return the signing key of this data folder, making it at the first start."""
    path = data_dir / "session.key"
    if not path.exists():
        fresh = path.with_suffix(f".{os.getpid()}")
        handle = os.open(fresh, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o600)
        with os.fdopen(handle, "wb") as file:
            file.write(secrets.token_bytes(KEY_BYTES))
        try:
            os.link(fresh, path)  # whoever comes first wins; the other process reads the winner's
        except FileExistsError:
            pass
        except OSError:  # a file system without links
            if not path.exists():
                fresh.replace(path)
        fresh.unlink(missing_ok=True)
    return path.read_bytes()
