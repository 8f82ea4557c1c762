"""Each part of the floor in one answer: its text files, packed together. The first is the first install.

A hundred small files travel badly: each is compressed alone, and a slow network asks for each in turn. Together they
are less than half; and opened as one, they cost a start a fraction (webapp/shipping/joined.py). Scripts and sheets were
packed before the program shipped (webapp/shipping/built.py); shells and tables are put beside them here. The worker
checks the hash of the whole and puts each file into its cache under its own address; whatever it lacks later it takes
from the same pack again.
"""

from __future__ import annotations

import gzip
import hashlib
import json
from dataclasses import dataclass
from functools import lru_cache

from flask import current_app

from webapp.access import headers
from webapp.places import STATIC_DIR
from webapp.shipping import assets, built, joined
from webapp.shipping.built import Texts
from webapp.shipping.shells import shell

TYPES = {
    "js": "text/javascript; charset=utf-8",
    "css": "text/css; charset=utf-8",
    "svg": "image/svg+xml; charset=utf-8",
    "json": "application/json",
    "webmanifest": "application/manifest+json",
    "": "text/html; charset=utf-8",
}


@dataclass(frozen=True)
class Pack:
    """One part of the floor as it travels: JSON bytes with `headers` for all and `parts` of [address, type, text]."""

    body: bytes
    digest: str  # SHA-256 of the body, in hex
    texts: tuple[str, ...]  # the addresses of what lies in it
    beside: tuple[assets.Asset, ...]  # what is no text, and comes by its own address

    def describe_for_worker(self, cache: str) -> dict[str, object]:
        """Return the worker's description of this part, which it keeps in a cache of this name."""
        return {"cache": cache, "pack": self.digest, "texts": self.texts, "files": self.beside}


def pack(name: str = assets.FLOOR) -> Pack:
    """Return one part of this version."""
    return packs()[name]


def packs() -> dict[str, Pack]:
    """Return the parts of this version by name."""
    made: dict[str, dict[str, Pack]] = current_app.extensions.setdefault("packs", {})
    version = assets.version()
    if version not in made:
        parts = {name: _pack(name, files) for name, files in assets.parts_of_floor().items()}
        made.clear()
        made[version] = parts
    return made[version]


def _pack(name: str, files: list[assets.Asset]) -> Pack:
    language = assets.language_of(name)
    texts, packed = [url for url, _ in files if _ending(url) in TYPES], assets.packed_texts()
    parts = [[url, TYPES[_ending(url)], _text(url, packed, language)] for url in texts]
    told = {"headers": headers.fixed_headers(), "parts": parts}
    body = json.dumps(told, ensure_ascii=False, separators=(",", ":")).encode()
    beside = tuple(one for one in files if _ending(one[0]) not in TYPES)
    return Pack(body, hashlib.sha256(body).hexdigest(), tuple(texts), beside)


def _ending(url: str) -> str:
    return url.rpartition(".")[2] if "." in url else ""


def _text(url: str, packed: Texts, language: str) -> str:
    if url in packed.texts:
        return packed.texts[url]
    if url.startswith("/static/"):
        return (STATIC_DIR / url.removeprefix("/static/")).read_text(encoding="utf-8")
    if url.startswith("/data/"):
        return assets.data_files()[url.removeprefix("/data/")].decode()
    if url.startswith("/words/"):
        return (assets.words_file(url.removeprefix("/words/").removesuffix(".json")) or b"").decode()
    if url == assets.MANIFEST:
        return assets.manifest(language).decode()
    page = (shell(url, language) or b"").decode()
    return joined.with_joined(page, packed.joined, language) if packed.joined else page


def encodings(name: str) -> dict[str, bytes]:
    """Return the answer that holds a part, in each transfer encoding that there is, the best first."""
    body, digest = pack(name).body, pack(name).digest
    best = built.compressed(name, digest)
    return {**({"br": best} if best else {}), "gzip": _gzipped(body), "": body}


@lru_cache(maxsize=32)
def _gzipped(body: bytes) -> bytes:
    return gzip.compress(body, 9, mtime=0)
