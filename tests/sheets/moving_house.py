"""A house that moves in: one workbook of 71 vessels, 6 people, 11 instruments and 46 full casks and tanks. Invented."""

from __future__ import annotations

import io
from datetime import date

from xlsxwriter import Workbook

from webapp.trade.marks import BadMark, make_mark

SPIRITS = ("apple", "pear", "plum", "cherry", "quince")
PEOPLE = (("NS", "Noor S.", "cellar hand", "floor"), ("PR", "Pavel R.", "gauger", "floor"),
          ("IM", "Ilka M.", "distiller", "distiller"), ("BT", "Bram T.", "still hand", "floor"),
          ("WK", "Wanda K.", "warehouse hand", "floor"), ("JK", "Jun K.", "blender", "distiller"))


def codes(prefix: str, count: int, width: int) -> list[str]:
    """The first codes that marks can be made of."""
    found: list[str] = []
    number = 0
    while len(found) < count:
        number += 1
        try:
            make_mark(f"{prefix}{number:0{width}}")
        except BadMark:
            continue
        found.append(f"{prefix}{number:0{width}}")
    return found


def workbook() -> bytes:
    """The workbook, as a spreadsheet program would write it. [XLSX]"""
    made = io.BytesIO()
    casks, tanks = codes("C", 44, 3), codes("T", 8, 1)
    with Workbook(made, {"in_memory": True}) as book:
        day = book.add_format({"num_format": "dd/mm/yyyy"})
        rows: list[tuple[object, ...]] = [
            ("Vessel no", "Type", "Location", "Capacity L", "Empty kg", "Wood"),
            *((code, "barrel", f"CELL-A{n}", 225, 46.3, "oak") for n, code in enumerate(casks, 1)),
            *((code, "tank", "HALL", 1000) for code in tanks),
            *((code, "fermenter", "YARD", 2000) for code in codes("F", 8, 1)),
            *((code, "receiver", "STILL", 150) for code in codes("R", 6, 1)),
            ("S1", "pot still", "STILL", 600), ("S2", "pot still", "STILL", 300), ("K1", "can", "STORE", 30),
            ("K2", "can", "STORE", 30), ("P1", "bottle store", "STORE"),
        ]
        _write(book, "Vessels", rows)
        _write(book, "Staff", [("Initials", "Name", "Role", "Access"), *PEOPLE])
        sheet = _write(book, "Instruments", [
            ("No", "Kind", "Description", "From", "To", "Unit", "Due"),
            *((f"TH-{n}", "thermometer", "glass", 0, 40, "°C") for n in range(1, 12)),
        ])
        for n in range(1, 12):
            sheet.write_datetime(n, 6, date(2027, 3, n), day)
        sheet = _write(book, "Casks and tanks", [
            ("Cask no", "Kind", "Empty kg", "Weight kg", "Litres", "ABV", "Litres at fill", "ABV at fill", "Cask book",
             "Date in"),
            *((code, SPIRITS[n % 5], 46.3, round(204 + n * 0.37, 1), "", round(58 + n * 0.09, 1), 205, 62.5,
               f"book 2, folio {n}") for n, code in enumerate(casks[:42], 1)),
            *((code, SPIRITS[n], "", "", 145 + n * 50, 60 + n) for n, code in enumerate(tanks[:4])),
        ])
        for n in range(42):
            sheet.write_datetime(n + 1, 9, date(2021 + n % 3, 1 + n % 12, 1 + n % 27), day)
    return made.getvalue()


def _write(book: Workbook, name: str, rows: list[tuple[object, ...]]) -> Workbook:
    sheet = book.add_worksheet(name)
    for n, row in enumerate(rows):
        for at, cell in enumerate(row):
            if cell != "":
                sheet.write(n, at, cell)
    return sheet
