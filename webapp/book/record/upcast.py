"""Entries of older kind versions, brought to the shape of today. The record itself stays as it came."""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache

import webapp.kinds
from webapp.kinds.entry import Entry
from webapp.trade.marks import BadMark, parse_mark

# (kind, version) -> the step that makes an entry of the next version from it. None has been needed yet.
STEPS: dict[tuple[str, int], Callable[[Entry], Entry]] = {}


def upcast(entry: Entry) -> Entry:
    """Return the entry as the fold reads it: of its kind's version of today, its mark in stored form."""
    kind = webapp.kinds.get(entry["kind"])
    version = entry["kind_version"]
    while kind and version < kind.version:
        step = STEPS.get((kind.name, version))
        entry = step(entry) if step else entry
        version += 1
    return {**entry, "kind_version": version, "mark": stored_mark(entry.get("mark") or "") or ""}


@lru_cache(maxsize=4096)
def stored_mark(text: str) -> str | None:
    """Return the mark in stored form, an empty text for none, or None where it is no mark."""
    if not text.strip():
        return ""
    try:
        return parse_mark(text)
    except BadMark:
        return None
