"""Templates of sheets: one of each with an example, in the units of the house, as CSV; all together as one workbook."""

from __future__ import annotations

import csv
import io

from webapp.sheets.targets import ALL, Column, Target
from webapp.sheets.unitwords import unit_of_house
from webapp.trade import units
from webapp.trade.errors import OutOfDomain


def head_of(column: Column, *, is_us: bool) -> str:
    """Return the head of a column, with the unit of the house behind it."""
    unit = _unit(column, is_us=is_us)
    return f"{column.label} ({unit})" if unit else column.label


def csv_template(target: Target, *, is_us: bool) -> str:
    """Return a sheet with its heads and one example row. [CSV, comma between]"""
    made = io.StringIO()
    writer = csv.writer(made, lineterminator="\r\n")
    writer.writerow(head_of(column, is_us=is_us) for column in target.columns)
    writer.writerow(_example(column, is_us=is_us) for column in target.columns)
    return made.getvalue()


def workbook_template(*, is_us: bool) -> bytes:
    """Return a workbook with a table for each sort of sheet, heads only, and one of examples. [XLSX]"""
    from xlsxwriter import Workbook

    made = io.BytesIO()
    with Workbook(made, {"in_memory": True}) as book:
        bold = book.add_format({"bold": True, "text_wrap": True, "valign": "top"})
        for target in ALL:
            sheet = book.add_worksheet(target.title)
            for at, column in enumerate(target.columns):
                sheet.write_string(0, at, head_of(column, is_us=is_us), bold)
                sheet.set_column(at, at, max(10, min(len(column.label) + 2, 22)))
                comment = _says(column)
                if comment:
                    sheet.write_comment(0, at, comment)
            sheet.freeze_panes(1, 1)
    return made.getvalue()


def _says(column: Column) -> str:
    """Return the form of a column's cells, in a line."""
    parts = ["Needed." if column.required else "May stay empty."]
    if column.choices:
        parts.append("One of: " + ", ".join(words[0] for _, words in column.choices) + ".")
    if column.sort == "date":
        parts.append("A day, such as 2022-11-21.")
    if column.example:
        parts.append(f"Such as {column.example}.")
    return " ".join(parts)


def _unit(column: Column, *, is_us: bool) -> str:
    return units.symbol(unit_of_house(column.units, is_us=is_us)) if column.units else ""


def _example(column: Column, *, is_us: bool) -> str:
    """Return the example of a column in the unit of the house."""
    if not column.example or column.sort != "number" or not is_us:
        return column.example
    unit = unit_of_house(column.units, is_us=True)
    try:
        return f"{float(units.from_canonical(float(column.example), unit)):.1f}" if unit else column.example
    except OutOfDomain:
        return column.example
