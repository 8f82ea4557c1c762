"""The first install in one answer: every text file of a version, shortened and packed together.

A hundred small files travel badly: each is compressed alone, and a slow network asks for each in turn. Together they
are less than half; and opened as one, they cost a start a fraction (webapp/floor/joined.py). The worker checks the hash
of the whole and puts each part into its cache under its own address; whatever it lacks later it fetches by that
address, unshortened.
"""

from __future__ import annotations

import gzip
import hashlib
import json
from functools import lru_cache

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


def pack() -> tuple[bytes, str]:
    """Return the pack as JSON bytes, and its SHA-256 in hex: `headers` for all, `parts` of [address, type, text]."""
    made: dict[str, tuple[bytes, str]] = current_app.extensions.setdefault("packs", {})
    version = assets.version()
    if version not in made:
        made.clear()
        made[version] = _pack()
    return made[version]


def _pack() -> tuple[bytes, str]:
    together = {f"/static/{name}": name for name in assets.joined_modules()}
    parts = [
        [url, TYPES[ending], _shortened(ending, joined.stand_in(together[url]) if url in together else _text(url))]
        for url, _ in assets.assets()
        if (ending := url.rpartition(".")[2] if "." in url else "") in TYPES
    ]
    body = json.dumps({"headers": headers.fixed(), "parts": parts}, ensure_ascii=False, separators=(",", ":")).encode()
    return body, hashlib.sha256(body).hexdigest()


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


def _shortened(ending: str, text: str) -> str:
    if ending == "js":
        return shorter_script(text)
    return shorter_style(text) if ending == "css" else text


@lru_cache(maxsize=4)
def packed(body: bytes, encoding: str) -> bytes:
    """Return the body in a transfer encoding: `br`, `gzip`, or as it is."""
    if encoding == "br":
        return bytes(brotli.compress(body, quality=11))
    return gzip.compress(body, 9, mtime=0) if encoding == "gzip" else body
