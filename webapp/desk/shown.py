"""How the desk shows entries, times and figures. Read once from the book's row, for every page alike."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import replace

import webapp.kinds
from webapp.access import current
from webapp.book.fold import row_reader
from webapp.book.record.store import Book
from webapp.desk.blueprint import local_time
from webapp.desk.figures import off_by
from webapp.kinds.read import Read, read_entry
from webapp.trade import units
from webapp.trade.uncertainty import Uncertain
from webapp.words.catalogue import ENGLISH
from webapp.words.kindwords import kind_in
from webapp.words.language import language
from webapp.words.lines import label_in, shown_in, summary_in


class LineRow(row_reader.PlacedRow):
    """What of a row of the log a line of a list needs; a page may show whatever else it holds."""

    read_at: str


def entry_line(book: Book, row: LineRow) -> dict[str, object]:
    """Return an entry as a line of a list: its title, its summary, times by the house's clock."""
    return entry_lines(book, [row])[0]


def entry_lines(book: Book, rows: Sequence[LineRow]) -> list[dict[str, object]]:
    """Return each entry as a line of a list, all of them read together."""
    reads = row_reader.read_all_as_folded(book, rows)
    return [line_of(row, read) for row, read in zip(rows, reads, strict=True)]


def typed_lines(rows: Sequence[LineRow]) -> list[dict[str, object]]:
    """Return each entry as a line by what was typed alone: figures that want the vessel's facts are left out.

    Nothing is asked of the book: for long lists on papers, beside what was worked out from the same entries.
    """
    kinds = [webapp.kinds.get(row["kind"]) for row in rows]
    return [
        line_of(row, read_entry(kind, json.loads(row["body"]), {}) if kind else None)
        for row, kind in zip(rows, kinds, strict=True)
    ]


def line_of(row: LineRow, read: Read | None) -> dict[str, object]:
    """Return an entry that is read already as a line of a list."""
    read = spoken(read) if read else None
    kind = read.kind if read else None
    return {
        **row,
        "title": kind.title if kind else row["kind"],
        "icon": kind.icon if kind else "note",
        "summary": summary_in(read, current.house) if read else "",
        "read_local": local_time(row["read_at"]),
    }


def spoken(read: Read) -> Read:
    """Return an entry with the words of its kind in the language that is read."""
    return read if language() == ENGLISH else replace(read, kind=kind_in(read.kind, language()))


def fields_of(read: Read) -> list[dict[str, str]]:
    """Return the rows of an entry's page: label, as read, instrument; computed figures after them, apart."""
    read = spoken(read)
    return [
        {
            "label": spec.label, "shown": read.shown(spec.name),
            "instrument": read.raw(spec.name).get("instrument", ""), "corrected": _corrected(read, spec.name),
        }
        for spec in read.kind.fields
        if read.raw(spec.name)
    ]


def _corrected(read: Read, name: str) -> str:
    """Return a reading after its correction, in the unit typed; empty where there was none."""
    add, unit = read.corrected.get(name), read.raw(name).get("unit", "")
    if not add:
        return ""
    spec = read.kind.field(name)
    decimals = (spec.decimals if spec and spec.decimals is not None else 1) + 1
    return f"{units.parse_number(read.raw(name)['raw']) + add:.{decimals}f} {units.symbol(unit)} ({add:+.{decimals}f})"


def figures_of(read: Read, uncertain: Mapping[str, Uncertain] | None = None) -> list[dict[str, str]]:
    """Return the computed figures of an entry with label and unit, and how far each may be off where that is known."""
    read = spoken(read)
    seen: dict[str, dict[str, str]] = {}
    known = uncertain or {}
    for figure in read.kind.figures:
        if figure.name in read.figures:
            label = label_in(figure.label, figure.unit, current.house)
            off = off_by(known[figure.name], figure.unit, figure.decimals) if figure.name in known else ""
            shown = shown_in(read, figure.name, current.house)
            seen.setdefault(figure.name, {"label": label, "shown": shown, "off": off})
    return list(seen.values())
