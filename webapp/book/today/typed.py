"""The line of an entry for a page that reads many: as a list shows it, else the figures as they were typed."""

from __future__ import annotations

from webapp.kinds.entry import Entry
from webapp.kinds.read import Read
from webapp.kinds.spec import Kind
from webapp.kinds.state import Line
from webapp.words.houseunits import House
from webapp.words.lines import summary_in

TYPED_MOST = 3
_DASH = "\u2013"  # stands in a line where a figure is not known


def line_words(kind: Kind | None, entry: Entry | None, line: Line | None, house: House) -> str:
    """Return the one line of an entry. line: as its vessel remembers it, with what was worked out; None where it does
    not: then the figures that were typed tell it.
    """
    if kind is None or entry is None:
        return ""
    read = Read(entry, kind, line["values"] if line else {}, line["figures"] if line else {}, ())
    said = summary_in(read, house) if kind.summary else ""
    if line and _DASH not in said:
        return said
    typed = [read.shown(one.name) for one in kind.fields if one.units and _is_figure(read.raw(one.name).get("raw", ""))]
    known = said if _DASH not in said else ""
    if any(letter.isdigit() for letter in known) or not typed:
        return known
    return ", ".join([*([known] if known else []), *typed[:TYPED_MOST]])


def _is_figure(raw: str) -> bool:
    """Whether a figure was typed that is more than nothing."""
    return any(digit in raw for digit in "123456789")
