"""A file of a spreadsheet as tables of cells: CSV, XLSX or ODS, or a pasted text. Everything is bounded.

A workbook is unpacked by us first, a piece at a time and no further than MOST_UNPACKED, and packed anew: what is
read after that is no larger than it says it is.
"""

from __future__ import annotations

import csv
import io
import re
import zipfile
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date, datetime, time, timedelta

from webapp.kinds.message import Message, message

Cell = str | float | bool | date | datetime | time | timedelta
MOST_BYTES = 4_000_000
MOST_UNPACKED = 60_000_000
MOST_PARTS = 500
MOST_ROWS = 2_000
MOST_COLUMNS = 100
MOST_TABLES = 12
MOST_TEXT = 2_000
PIECE = 1 << 16
_FORMULA = re.compile(rb"<f[ >/]|table:formula=")
# A row or a cell of the open format may stand for many; an empty one has no type of value.
_REPEATED = re.compile(
    rb"<table:table-row(?P<row>[^>]*)>|<table:(?:covered-)?table-cell(?P<cell>[^>]*office:value-type[^>]*)>"
)
_PLACED = re.compile(rb'<c\b[^>]*\br="([A-Z]{1,3})(\d{1,7})"[^>/]*>')
_TIMES = re.compile(rb'number-(?:rows|columns)-repeated="(\d{1,9})"')
MOST_CELLS = 2_000_000
_DELIMITERS = "\t;,|"


class NoSheet(Exception):
    """What was given is no spreadsheet that can be read; `said` is the sentence for a person."""

    def __init__(self, said: Message) -> None:
        super().__init__(said.id)
        self.said = said


@dataclass(slots=True)
class Table:
    """One table of a file: its name, its rows of cells from the first on, and which cells are merged.

    Rows and columns count from 0. merged: (row, first column, last column) of each merged block.
    """

    name: str
    rows: list[list[Cell]]
    merged: list[tuple[int, int, int]] = field(default_factory=list)


@dataclass(slots=True)
class Workbook:
    """The tables of one file, and how many of its cells are formulas: their last values count."""

    tables: list[Table]
    formulas: int = 0


def read_workbook(name: str, content: bytes) -> Workbook:
    """Return the tables of a file by what it holds, whatever its name ends in. Raises NoSheet with a sentence."""
    if not content.strip():
        raise NoSheet(message("sheet-empty"))
    if len(content) > MOST_BYTES:
        raise NoSheet(message("sheet-too_large", most=MOST_BYTES // 1_000_000))
    if content.startswith(b"PK\x03\x04"):
        return _read_packed(content)
    if content.startswith(b"%PDF"):
        raise NoSheet(message("sheet-pdf"))
    if content.startswith(b"\xd0\xcf\x11\xe0"):
        raise NoSheet(message("sheet-old"))
    text = _text_of(content)
    return Workbook([_read_text(re.sub(r"\.\w{1,5}$", "", name), text)])


def _text_of(content: bytes) -> str:
    for encoding in ("utf-16",) if content[:2] in (b"\xff\xfe", b"\xfe\xff") else ("utf-8-sig", "cp1252"):
        try:
            text = content.decode(encoding)
        except UnicodeDecodeError:
            continue
        if any(character < " " and character not in "\t\r\n\f" for character in text):
            break
        return text
    raise NoSheet(message("sheet-unreadable"))


def _read_text(name: str, text: str) -> Table:
    lines = text.splitlines()
    if len(lines) > MOST_ROWS * 3:
        raise NoSheet(message("sheet-rows", rows=len(lines), most=MOST_ROWS))
    head = next((line for line in lines if line.strip()), "")
    delimiter = max(_DELIMITERS, key=head.count)
    try:
        rows = [list(row) for row in csv.reader(io.StringIO(text, newline=""), delimiter=delimiter)]
    except csv.Error as error:
        raise NoSheet(message("sheet-unreadable")) from error
    return _bounded(Table(name, [[cell.strip()[:MOST_TEXT] for cell in row] for row in rows]))


def _read_packed(content: bytes) -> Workbook:
    from python_calamine import CalamineError, CalamineWorkbook

    packed, formulas = _packed_anew(content)
    try:
        book = CalamineWorkbook.from_filelike(io.BytesIO(packed))
        tables = []
        for name in book.sheet_names[:MOST_TABLES]:
            sheet = book.get_sheet_by_name(name)
            if sheet.total_height > MOST_ROWS * 3:
                raise NoSheet(message("sheet-rows", rows=sheet.total_height, most=MOST_ROWS))
            if not sheet.height:
                continue
            rows = sheet.to_python(skip_empty_area=False)
            merged = [(one[0], one[1], other[1]) for one, other in sheet.merged_cell_ranges or ()]
            tables.append(_bounded(Table(name, [[_plain(cell) for cell in row] for row in rows], merged)))
    except CalamineError as error:
        raise NoSheet(message("sheet-unreadable")) from error
    if not any(table.rows for table in tables):
        raise NoSheet(message("sheet-empty"))
    return Workbook(tables, formulas)


def _plain(cell: Cell | int) -> Cell:
    if isinstance(cell, str):
        return cell.strip()[:MOST_TEXT]
    return float(cell) if isinstance(cell, int) and not isinstance(cell, bool) else cell


def _bounded(table: Table) -> Table:
    """Return the table without the empty rows at its end. Raises NoSheet where it is larger than we take."""
    while table.rows and not any(cell != "" for cell in table.rows[-1]):
        table.rows.pop()
    if len(table.rows) > MOST_ROWS + 20:
        raise NoSheet(message("sheet-rows", rows=len(table.rows), most=MOST_ROWS))
    widest = max((_width(row) for row in table.rows), default=0)
    if widest > MOST_COLUMNS:
        raise NoSheet(message("sheet-columns", columns=widest, most=MOST_COLUMNS))
    table.rows = [row[:widest] + [""] * (widest - len(row)) for row in table.rows]
    return table


def _width(row: Sequence[Cell]) -> int:
    return max((at + 1 for at, cell in enumerate(row) if cell != ""), default=0)


def _packed_anew(content: bytes) -> tuple[bytes, int]:
    """Return a workbook unpacked within bounds and packed without compression, and how many formulas it has."""
    made, left, formulas = io.BytesIO(), MOST_UNPACKED, 0
    try:
        with zipfile.ZipFile(io.BytesIO(content)) as given, zipfile.ZipFile(made, "w") as plain:
            parts = given.infolist()
            if len(parts) > MOST_PARTS:
                raise NoSheet(message("sheet-swollen", most=MOST_UNPACKED // 1_000_000))
            for part in parts:
                if part.is_dir() or not part.filename.endswith((".xml", ".rels", ".bin", "mimetype")):
                    continue  # pictures and the like: nobody reads them
                text = _unpacked(given, part, left)
                left -= len(text)
                if part.filename == "content.xml":
                    _refuse_repeats(text)
                elif "worksheets/" in part.filename:
                    _refuse_distance(text)
                formulas += len(_FORMULA.findall(text)) if "sheet" in part.filename or "content" in part.filename else 0
                plain.writestr(part.filename, text)
    except (zipfile.BadZipFile, NotImplementedError, RuntimeError, EOFError, OSError, ValueError) as error:
        raise NoSheet(message("sheet-unreadable")) from error
    return made.getvalue(), formulas


def _refuse_repeats(text: bytes) -> None:
    """Raise NoSheet where few rows and cells stand for more than anybody could read."""
    rows = cells = 0
    for found in _REPEATED.finditer(text):
        times = _TIMES.search(found["row"] if found["row"] is not None else found["cell"])
        many = int(times[1]) if times else 1
        if found["row"] is not None:
            rows = many
            continue
        cells += rows * many
        if cells > MOST_CELLS:
            raise NoSheet(message("sheet-swollen", most=MOST_UNPACKED // 1_000_000))


def _refuse_distance(text: bytes) -> None:
    """Raise NoSheet where one cell lies so far from the first that all between would fill the memory."""
    width = height = 0
    for letters, digits in _PLACED.findall(text):
        at = 0
        for letter in letters:
            at = at * 26 + letter - 64
        width, height = max(width, at), max(height, int(digits))
    if width * height > MOST_CELLS:
        raise NoSheet(message("sheet-rows", rows=height, most=MOST_ROWS) if height > MOST_ROWS else message(
            "sheet-columns", columns=width, most=MOST_COLUMNS))


def _unpacked(given: zipfile.ZipFile, part: zipfile.ZipInfo, most: int) -> bytes:
    made = bytearray()
    with given.open(part) as file:
        while piece := file.read(PIECE):
            made += piece
            if len(made) > most:
                raise NoSheet(message("sheet-swollen", most=MOST_UNPACKED // 1_000_000))
    return bytes(made)
