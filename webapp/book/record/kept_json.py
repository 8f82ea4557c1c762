"""JSON as the book keeps what it has worked out: nobody but the book reads it, and no digest goes over it.

What is hashed or dumped has its own text (`log.canonical`).
"""

from __future__ import annotations

import json
from typing import Any

import orjson


def to_text(value: object) -> str:
    """Return JSON without blanks. What the quick way does not know, a number beyond 64 bits, goes the slow one."""
    try:
        return orjson.dumps(value).decode()
    except TypeError:
        return json.dumps(value, ensure_ascii=False, separators=(",", ":"))


def from_text(text: str) -> Any:
    """Return the value of a JSON text, whichever program wrote it."""
    try:
        return orjson.loads(text)
    except orjson.JSONDecodeError:
        return json.loads(text)
