"""Gzip for what every phone fetches alike: scripts, styles, shells, tables, cards. Never for a page with a token."""

from __future__ import annotations

import gzip
from functools import lru_cache

from flask import Response, request

from webapp.shipping import bp

_BYTES_LEAST = 512
_PATHS = (
    "/static/",
    "/shell/",
    "/data/",
    "/words/",
    "/joined/",
    "/sw.js",
    "/manifest.webmanifest",
    "/api/cards",
    "/api/openapi.json",
)
_TYPES = (
    "text/",
    "application/json",
    "application/manifest+json",
    "application/javascript",
    "application/wasm",
    "image/svg+xml",
)


@bp.after_app_request
def compress(response: Response) -> Response:
    """Return the response gzipped where the browser takes that and it is worth it."""
    if not request.path.startswith(_PATHS) or not (response.mimetype or "").startswith(_TYPES):
        return response
    response.vary.add("Accept-Encoding")
    if response.status_code != 200 or request.method == "HEAD" or not request.accept_encodings["gzip"]:
        return response
    if response.headers.get("Content-Encoding") or response.headers.get("Content-Range"):
        return response
    response.direct_passthrough = False  # files are streamed past us otherwise
    body = response.get_data()
    if len(body) < _BYTES_LEAST:
        return response
    is_same_for_all = not request.path.startswith("/api/")
    response.set_data(_packed(body) if is_same_for_all else gzip.compress(body, 5))
    response.headers["Content-Encoding"] = "gzip"
    etag, _ = response.get_etag()
    if etag:
        response.set_etag(etag, weak=True)
    return response


@lru_cache(maxsize=256)
def _packed(body: bytes) -> bytes:
    return gzip.compress(body, 9, mtime=0)
