"""The packed scripts and sheets, made before the program ships: by esbuild, and compressed by Brotli.

They lie in the folder `built` with the digests of what they were made from (webapp/shipping/build.py). Where a source
has changed since, nothing here is used: a phone then gets the sources as they are written.
"""

from __future__ import annotations

import hashlib
import json
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path

FOLDER = Path(__file__).with_name("built")
TEXTS, PACKS = "texts.json", "packs.json"


@dataclass(frozen=True)
class Texts:
    """The packed scripts and sheets, and what they were made from."""

    sources: dict[str, str]  # SHA-256 of each script and sheet, by its name below static
    joined: tuple[str, ...]  # the modules that lie in the joined script, by name
    texts: dict[str, str]  # what stands at each address once it is packed
    digest: str  # SHA-256 of all this


NOTHING = Texts({}, (), {}, "")


def texts() -> Texts:
    """Return the packed scripts and sheets as they lie in the folder, whether their sources have changed or not."""
    path = FOLDER / TEXTS
    return _texts(path, path.stat().st_mtime_ns)


@lru_cache(maxsize=1)
def _texts(path: Path, _mtime_ns: int) -> Texts:
    whole = path.read_bytes()
    kept = json.loads(whole)
    return Texts(kept["sources"], tuple(kept["joined"]), kept["texts"], hashlib.sha256(whole).hexdigest())


def compressed(part: str, digest: str) -> bytes | None:
    """Return a part of the floor compressed by Brotli; None where the part of this digest has not been compressed."""
    path = FOLDER / PACKS
    return _compressed(path, path.stat().st_mtime_ns, part, digest)


@lru_cache(maxsize=8)
def _compressed(path: Path, _mtime_ns: int, part: str, digest: str) -> bytes | None:
    kept = json.loads(path.read_text("utf-8")).get(part, {})
    if kept.get("body") != digest:
        return None
    packed = path.with_name(f"{part}.br").read_bytes()
    # A file of another version beside this list, as a merge can leave it, would make a phone's install fail.
    return packed if hashlib.sha256(packed).hexdigest() == kept["packed"] else None
