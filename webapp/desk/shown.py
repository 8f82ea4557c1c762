"""How the desk shows entries, times and figures. Read once from the book's row, for every page alike."""

from __future__ import annotations

from collections.abc import Sequence

from webapp.access import current
from webapp.book.fold import row_reader
from webapp.book.record.store import Book
from webapp.desk.blueprint import local_time
from webapp.kinds.read import Read
from webapp.trade import units
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


def line_of(row: LineRow, read: Read | None) -> dict[str, object]:
    """Return an entry that is read already as a line of a list."""
    kind = read.kind if read else None
    return {
        **row,
        "title": kind.title if kind else row["kind"],
        "icon": kind.icon if kind else "note",
        "summary": summary_in(read, current.house) if read else "",
        "read_local": local_time(row["read_at"]),
    }


def fields_of(read: Read) -> list[dict[str, str]]:
    """Return the rows of an entry's page: label, as read, instrument; computed figures after them, apart."""
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


def figures_of(read: Read) -> list[dict[str, str]]:
    """Return the computed figures of an entry with label and unit."""
    seen: dict[str, dict[str, str]] = {}
    for figure in read.kind.figures:
        if figure.name in read.figures:
            label = label_in(figure.label, figure.unit, current.house)
            seen.setdefault(figure.name, {"label": label, "shown": shown_in(read, figure.name, current.house)})
    return list(seen.values())
