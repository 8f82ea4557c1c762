"""Figures too neat to have been read each time."""

from __future__ import annotations

from collections.abc import Iterable

from webapp.book.checks.limits import limit
from webapp.book.checks.words import typed
from webapp.book.view import Query, View
from webapp.kinds.read import Read

LOOKED_AT = ("temp", "glass", "strength", "vapour_temp")


def too_neat(read: Read, view: View) -> Iterable[Query]:
    """The same temperature or strength, to its last figure, so many times running on one vessel."""
    count = round(limit("neat_count", view))
    before = view.recent(read.mark, read.kind.name)[-(count - 1) :] if read.mark and count > 1 else ()
    if len(before) < count - 1:
        return
    for name in LOOKED_AT:
        now, spec = read.values.get(name), read.kind.field(name)
        if spec is not None and now is not None and all(line["values"].get(name) == now for line in before):
            words = f"{spec.label} {typed(read, name)}, {count} times running. Is it read each time?"
            yield Query("too_neat", "note", name, words)
