"""A file looked over: every row as it would stand, and every fault by row and column. Nothing is written here."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import datetime

from webapp.book.house.registry import zone
from webapp.book.record.evidence import digest_of
from webapp.book.record.store import Book
from webapp.kinds.message import Day, Message, message
from webapp.kinds.rows import SiteSettings
from webapp.sheets.cells import BadCell, Said, day_order, read_cell
from webapp.sheets.heads import Head, Heads, find_heads
from webapp.sheets.reading import MOST_ROWS, Cell, NoSheet, Table, read_workbook
from webapp.sheets.targets import ALL, Column

NEW, KNOWN, STOP, ASK, LEFT = "new", "known", "stop", "ask", "left"


@dataclass(frozen=True, slots=True)
class Offer:
    """What may be done about a fault with one press: the words on it, and the text that its cell then has."""

    words: str
    text: str


@dataclass(slots=True)
class Fault:
    """What does not fit in a row: at which column (empty for the row), how heavy, in words, with offers."""

    column: str
    weight: str
    said: Message
    offers: tuple[Offer, ...] = ()


@dataclass(slots=True)
class Row:
    """One row of a table as it would stand. number: as the sheet counts them, from 1; said: by name of its column."""

    number: int
    said: dict[str, Said]
    state: str = NEW
    faults: list[Fault] = field(default_factory=list)
    mark: str = ""
    key: str = ""
    entry_id: str = ""
    lpa_l: float | None = None
    makes_vessel: bool = False  # its vessel comes into the book with it

    def raw(self, name: str) -> str:
        """Return the text of a column, or an empty one."""
        return self.said[name].raw if name in self.said else ""

    def stop(self, column: str, said: Message, offers: Sequence[Offer] = ()) -> None:
        """Note why this row cannot go into the book."""
        self.faults.append(Fault(column, STOP, said, tuple(offers)))
        self.state = STOP


@dataclass(slots=True)
class Part:
    """One table of the file: its heads, its rows, and what does not fit of it as a whole."""

    at: int
    name: str
    heads: Heads | None
    rows: list[Row] = field(default_factory=list)
    faults: list[Message] = field(default_factory=list)
    asks: list[Message] = field(default_factory=list)  # what a person must say before all of its rows can fit
    order: str = ""  # of day and month, where days stand in digits; "?" where a person must say
    cells: list[list[Cell]] = field(default_factory=list)

    def count(self, *states: str) -> int:
        """Return the number of rows in one of these states."""
        return sum(row.state in states for row in self.rows)

    @property
    def columns(self) -> list[tuple[Head, Column]]:
        """The heads that were taken, with their columns, in the order of the sheet."""
        return [(head, head.column) for head in self.heads.heads if head.column] if self.heads else []


@dataclass(slots=True)
class Told:
    """What a person has said about a file: by table, what its rows are, its columns, the order of its days; edits.

    edits: by (table, row, column), the text that stands there instead. left: rows that stay out, (table, row).
    """

    targets: dict[int, str] = field(default_factory=dict)
    columns: dict[int, dict[int, str]] = field(default_factory=dict)
    orders: dict[int, str] = field(default_factory=dict)
    edits: dict[tuple[int, int, str], str] = field(default_factory=dict)
    left: set[tuple[int, int]] = field(default_factory=set)

    def as_json(self) -> dict[str, object]:
        """Return it as it is kept with the sheet."""
        return {
            "targets": self.targets, "columns": self.columns, "orders": self.orders,
            "edits": [[*where, text] for where, text in sorted(self.edits.items())], "left": sorted(self.left),
        }


@dataclass(slots=True)
class Look:
    """A file looked over. parts: in the order in which they go into the book."""

    name: str
    content: bytes
    parts: list[Part]
    formulas: int
    told: Told

    @property
    def sha256(self) -> str:
        """The digest of the file. [64 hexadecimal digits]"""
        return digest_of(self.content)

    @property
    def rows(self) -> list[Row]:
        """The rows of all its tables."""
        return [row for part in self.parts for row in part.rows]

    @property
    def fitting(self) -> list[tuple[Part, Row]]:
        """The rows that would go into the book."""
        return [(part, row) for part in self.parts for row in part.rows if row.state in (NEW, ASK)]

    def count(self, *states: str) -> int:
        """Return the number of rows in one of these states."""
        return sum(part.count(*states) for part in self.parts)


def read_parts(book: Book, name: str, content: bytes, told: Told, site: SiteSettings, now: datetime) -> Look:
    """Return a file with its rows read by their columns; what the book says of them comes after (judge.py).

    Raises NoSheet where the file as a whole is none.
    """
    workbook = read_workbook(name, content)
    is_us = site.get("units") == "us"
    today = now.astimezone(zone(book)).date().isoformat()
    parts = [
        _read_part(at, table, told, today, is_us=is_us)
        for at, table in enumerate(workbook.tables) if any(cell != "" for row in table.rows for cell in row)
    ]
    if sum(len(part.rows) for part in parts) > MOST_ROWS:
        raise NoSheet(message("sheet-rows", rows=sum(len(part.rows) for part in parts), most=MOST_ROWS))
    order = {target.name: n for n, target in enumerate(ALL)}
    parts.sort(key=lambda part: (order[part.heads.target.name] if part.heads else len(ALL), part.at))
    return Look(name, content, parts, workbook.formulas, told)


def _read_part(at: int, table: Table, told: Told, today: str, *, is_us: bool) -> Part:
    heads = find_heads(table, target=told.targets.get(at, ""), told=told.columns.get(at))
    part = Part(at, table.name, heads, cells=table.rows)
    if heads is None:
        part.faults.append(message("sheet-no_heads"))
        return part
    part.faults += heads.faults
    numbered = enumerate(table.rows[heads.row + 1 :], heads.row + 2)
    body = [(number, cells) for number, cells in numbered if any(cell != "" for cell in cells)]
    if not body:
        part.faults.append(message("sheet-no_rows"))
    days = [head.at for head, column in part.columns if column.sort == "date"]
    part.order = told.orders.get(at) or day_order(cells[n] for _, cells in body for n in days)
    if part.order == "?":
        example = next(str(cells[n]) for _, cells in body for n in days if day_order([cells[n]]) == "?")
        part.asks.append(message("sheet-order", example=example))
    edits = {where[1:]: text for where, text in told.edits.items() if where[0] == at}
    for number, cells in body:
        row = _read_row(part, number, cells, edits, is_us=is_us)
        if (at, number) in told.left:
            row.state, row.faults = LEFT, []
        _find_future(row, today)
        part.rows.append(row)
    return part


def _read_row(
    part: Part, number: int, cells: Sequence[Cell], edits: Mapping[tuple[int, str], str], *, is_us: bool
) -> Row:
    row = Row(number, {})
    order = part.order if part.order != "?" else ""
    for head, column in part.columns:
        cell = edits.get((number, column.name), cells[head.at])
        try:
            said = read_cell(column, cell, unit=head.unit, is_us=is_us, order=order)
        except BadCell as error:
            row.said[column.name] = Said(str(cell)[:60])
            row.stop(column.name, error.said, [Offer(text, text) for text in error.offers])
            continue
        if said is not None:
            row.said[column.name] = said
        elif column.required:
            row.stop(column.name, message("sheet-missing", label=column.label))
    return row


def _find_future(row: Row, today: str) -> None:
    if row.state != LEFT and row.raw("read_on") > today and not any(f.column == "read_on" for f in row.faults):
        row.stop("read_on", message("sheet-to_come", day=Day(row.raw("read_on"))))
