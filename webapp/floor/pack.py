"""Each part of the floor in one answer: its text files, shortened and packed together. The first is the first install.

A hundred small files travel badly: each is compressed alone, and a slow network asks for each in turn. Together they
are less than half; and opened as one, they cost a start a fraction (webapp/floor/joined.py). The worker checks the hash
of the whole and puts each file into its cache under its own address; whatever it lacks later it takes from the same
pack again.
"""

from __future__ import annotations

import gzip
import hashlib
import json
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

import brotli
from flask import current_app

from webapp.access import headers
from webapp.floor import assets, joined
from webapp.floor.shells import shell
from webapp.floor.shorten import shorter_script, shorter_style
from webapp.places import STATIC_DIR

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

    def told(self, cache: str) -> dict[str, Any]:
        """Return what the worker must know of this part, which it keeps in a cache of this name."""
        return {"cache": cache, "pack": self.digest, "texts": self.texts, "files": self.beside}


def pack(name: str = assets.FLOOR) -> Pack:
    """Return one part of this version."""
    return packs()[name]


def packs() -> dict[str, Pack]:
    """Return the parts of this version by name."""
    made: dict[str, dict[str, Pack]] = current_app.extensions.setdefault("packs", {})
    version = assets.version()
    if version not in made:
        parts = {name: _pack(files) for name, files in assets.parts_of_floor().items()}
        made.clear()
        made[version] = parts
    return made[version]


def _pack(files: list[assets.Asset]) -> Pack:
    together = {f"/static/{name}": name for name in assets.joined_modules()}
    texts = [url for url, _ in files if _ending(url) in TYPES]
    parts = [
        [url, TYPES[_ending(url)], _shortened(url, joined.stand_in(together[url]) if url in together else _text(url))]
        for url in texts
    ]
    body = json.dumps({"headers": headers.fixed(), "parts": parts}, ensure_ascii=False, separators=(",", ":")).encode()
    beside = tuple(one for one in files if _ending(one[0]) not in TYPES)
    return Pack(body, hashlib.sha256(body).hexdigest(), tuple(texts), beside)


def _ending(url: str) -> str:
    return url.rpartition(".")[2] if "." in url else ""


def _text(url: str) -> str:
    if url in assets.joined_files():
        return assets.joined_files()[url].decode()
    if url.startswith("/static/"):
        return (STATIC_DIR / url.removeprefix("/static/")).read_text(encoding="utf-8")
    if url.startswith("/data/"):
        return assets.data_files()[url.removeprefix("/data/")].decode()
    if url == "/manifest.webmanifest":
        return assets.manifest().decode()
    return joined.with_joined((shell(url) or b"").decode())


def _shortened(url: str, text: str) -> str:
    if _ending(url) == "js":
        return shorter_script(text)
    return shorter_style(text) if _ending(url) == "css" else text


@lru_cache(maxsize=12)
def packed(body: bytes, encoding: str) -> bytes:
    """Return the body in a transfer encoding: `br`, `gzip`, or as it is."""
    if encoding == "br":
        return bytes(brotli.compress(body, quality=11))
    return gzip.compress(body, 9, mtime=0) if encoding == "gzip" else body
