"""The command: it looks, it puts in when it is told to, and a sheet is in exports and backups as it came."""

from __future__ import annotations

import io
import zipfile
from pathlib import Path

import pytest
from click.testing import CliRunner

from tests.sheets.conftest import Hand
from webapp.backups import BOOK_NAME
from webapp.book.house import people
from webapp.book.opening import open_book
from webapp.book.record import evidence
from webapp.cli import main
from webapp.keeping.export import export_book
from webapp.keeping.take_in import take_in
from webapp.sheets.reading import NoSheet, read_workbook

SHEET = "Code;Sort;Capacity\nT1;vat;500\nT2;tank;300\nT2;tank;300\n"


def test_a_look_writes_nothing_and_a_put_goes_through_export_and_import(tmp_path: Path) -> None:
    data, sheet = tmp_path / "data", tmp_path / "tanks.csv"
    sheet.write_text(SHEET, "utf-8")
    data.mkdir()
    with open_book(data / BOOK_NAME) as book:
        people.put_person(book, {"code": "OL", "name": "Orla L.", "access": "office"}, by="OL")
    run = CliRunner()
    said = run.invoke(main, ["take-sheet", str(sheet), "--data", str(data)])
    assert said.exit_code == 0
    assert "Vessels: 2 fit, 1 do not fit." in said.output
    assert "stop row 4, “Code”: T2 stands in row 3 already." in said.output
    assert "Nothing was written." in said.output
    assert run.invoke(main, ["take-sheet", str(sheet), "--data", str(data), "--put"]).exit_code == 2
    said = run.invoke(main, ["take-sheet", str(sheet), "--data", str(data), "--put", "--by", "ol"])
    assert said.output.endswith("Put in as sheet 1. It can be taken back as a whole at the desk.\n")
    said = run.invoke(main, ["take-sheet", str(sheet), "--data", str(data), "--put", "--by", "OL"])
    assert said.output.endswith("Nothing in this sheet is new. Nothing was changed.\n")
    assert run.invoke(main, ["take-sheet", str(tmp_path / "none.csv"), "--data", str(data)]).exit_code == 2
    export_book(data / BOOK_NAME, tmp_path / "export")
    take_in(tmp_path / "export", tmp_path / "again")
    with open_book(tmp_path / "again" / BOOK_NAME) as book:
        (taking,) = evidence.load_takings(book)
        assert evidence.load_content(book, taking["sha256"]) == SHEET.encode()
        assert [row["key"][:2] for row in taking["rows"]] == ["T1", "T2"]


NAMES = " ".join(f'xmlns:{name}="urn:oasis:names:tc:opendocument:xmlns:{name}:1.0"' for name in
                 ("office", "table", "text"))


def open_document(rows: str) -> bytes:
    """A table as OpenDocument 1.3, part 3, has it: office:value and office:date-value are the values of a cell."""
    table = f'<table:table table:name="Casks">{rows}</table:table>'
    body = f"<office:body><office:spreadsheet>{table}</office:spreadsheet></office:body>"
    made = io.BytesIO()
    with zipfile.ZipFile(made, "w") as file:
        file.writestr("mimetype", "application/vnd.oasis.opendocument.spreadsheet")
        file.writestr("content.xml", f"<office:document-content {NAMES}>{body}</office:document-content>")
        file.writestr("META-INF/manifest.xml", f"<manifest:manifest {NAMES.replace('office', 'manifest')}/>")
    return made.getvalue()


def test_a_sheet_of_the_open_document_format(hand: Hand) -> None:
    heads = "".join(_cell("string", text=head) for head in (
        "Cask no", "Kind", "Filled on", "Weight kg", "Empty kg", "ABV", "Size"))
    values = _cell("string", text="C1") + _cell("string", text="plum") + _cell("date", 'office:date-value="2022-11-21"')
    values += "".join(_cell("float", f'office:value="{figure}"') for figure in (209.9, 46.3, 60, 225))
    rest = '<table:table-cell table:number-columns-repeated="16377"/>'
    rows = f"<table:table-row>{heads}{rest}</table:table-row><table:table-row>{values}{rest}</table:table-row>"
    end = f'<table:table-row table:number-rows-repeated="1048574">{rest}</table:table-row>'  # as office programs do
    look = hand.look(open_document(rows + end), name="x.ods")
    assert [(row.state, row.raw("filled_on"), round(row.lpa_l or 0, 2)) for row in look.rows] == [
        ("new", "2022-11-21", 108.1)]  # 163.6 kg weighed in air at 909.11 kg/m3 (OIML R 111, R 22), 60 % vol


def test_a_cell_that_stands_for_millions_is_refused_before_it_is_spread_out() -> None:
    wide = _cell("string", 'table:number-columns-repeated="16384"', "x")
    row = f'<table:table-row table:number-rows-repeated="1000">{wide}</table:table-row>'
    with pytest.raises(NoSheet) as error:
        read_workbook("x.ods", open_document(row))
    assert error.value.said.id == "sheet-swollen"


def _cell(sort: str, value: str = "", text: str = "") -> str:
    return f'<table:table-cell office:value-type="{sort}" {value}><text:p>{text}</text:p></table:table-cell>'
