"""The body of a request to the API: JSON, perhaps gzipped, never larger than it may be, never something odd."""

from __future__ import annotations

import json
import math
import zlib
from typing import Any

from flask import Request

from webapp.book.intake import BYTES_MOST


class BadBody(Exception):
    """A body that cannot be read. `status` is the answer's; the message says what to do."""

    def __init__(self, status: int, words: str) -> None:
        super().__init__(words)
        self.status = status


def read_json(request: Request) -> Any:
    """Return the JSON of the request.

    Numbers that JSON cannot mean (NaN, 1e999) come as text, so that they spoil their own entry and not the batch.
    """
    if request.mimetype != "application/json":
        raise BadBody(415, "Send JSON, with Content-Type: application/json.")
    body = _unpacked(request.get_data(cache=False), request.headers.get("Content-Encoding", "identity").lower().strip())
    try:
        return json.loads(body.decode("utf-8"), parse_float=_finite, parse_int=_whole, parse_constant=str)
    except (ValueError, RecursionError) as error:
        raise BadBody(400, "The body is no JSON. Send it as docs/hand-in.md says.") from error


def _unpacked(body: bytes, encoding: str) -> bytes:
    if encoding in ("", "identity"):
        unpacked = body
    elif encoding == "gzip":
        unpacked = _gunzip(body)
    else:
        raise BadBody(415, "Send the body as it is, or gzipped.")
    if len(unpacked) > BYTES_MOST:
        raise BadBody(413, f"A batch holds at most {BYTES_MOST // 1024} KB. Send half of it at a time.")
    return unpacked


def _gunzip(body: bytes) -> bytes:
    # Unpacked only as far as is allowed: a few KB can stand for gigabytes.
    unpacker = zlib.decompressobj(wbits=zlib.MAX_WBITS | 16)
    try:
        unpacked = unpacker.decompress(body, BYTES_MOST + 1)
    except zlib.error as error:
        raise BadBody(400, "The body is no whole gzip. Send it again.") from error
    if not unpacker.eof and len(unpacked) <= BYTES_MOST:
        raise BadBody(400, "The body is no whole gzip. Send it again.")
    return unpacked


def _finite(text: str) -> float | str:
    number = float(text)
    return number if math.isfinite(number) else text


def _whole(text: str) -> int | str:
    return int(text) if len(text) <= 20 else text
