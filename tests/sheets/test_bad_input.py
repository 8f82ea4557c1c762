"""Sheets that are none, or not as they should be: a sentence for each, and nothing written."""

from __future__ import annotations

import io
import zipfile
from collections.abc import Callable

import pytest
from xlsxwriter import Workbook

from tests.sheets.conftest import Hand, faults, of_whole
from webapp.sheets.cells import day_order
from webapp.sheets.lookover import LEFT
from webapp.sheets.reading import MOST_BYTES, MOST_UNPACKED, NoSheet, read_workbook
from webapp.sheets.targets import ALL
from webapp.sheets.templates import csv_template, workbook_template
from webapp.words import sentence

HEADS = "Cask no,Kind,Date in,Empty,Weight,ABV,Size\n"


def xlsx(write: Callable[[Workbook], None]) -> bytes:
    made = io.BytesIO()
    with Workbook(made, {"in_memory": True}) as book:
        write(book)
    return made.getvalue()


def packed(*parts: tuple[str, bytes]) -> bytes:
    made = io.BytesIO()
    with zipfile.ZipFile(made, "w", zipfile.ZIP_DEFLATED) as file:
        for name, content in parts:
            file.writestr(name, content)
    return made.getvalue()


@pytest.mark.parametrize(
    ("content", "words"),
    [
        (b"", "There is nothing in this file."),
        (b" \n\n", "There is nothing in this file."),
        (b"%PDF-1.7 and so on", "This is a PDF, whatever its name says."),
        (b"\xd0\xcf\x11\xe0" + bytes(600), "This is a workbook of an older make."),
        (bytes(range(256)) * 4, "This is no spreadsheet that can be read."),
        (b"PK\x03\x04" + bytes(300), "This is no spreadsheet that can be read."),
        (packed(("word/document.xml", b"<x/>")), "This is no spreadsheet that can be read."),
        (b"a,b\n" * (MOST_BYTES // 4 + 1), "This file is larger than 4 MB."),
        (HEADS.encode() + b"C1,plum,,,,,\n" * 100_000, "100001 rows are too many at once: at most 2000."),
        (b",".join(b"h%d" % n for n in range(150)) + b"\n1\n", "150 columns are too many: at most 100."),
    ],
)
def test_what_is_no_sheet_gets_a_sentence(content: bytes, words: str) -> None:
    with pytest.raises(NoSheet) as error:
        read_workbook("casks.xlsx", content)
    assert sentence(error.value.said).startswith(words)


def test_a_bomb_is_not_unpacked_beyond_its_bound() -> None:
    bomb = packed(("xl/worksheets/sheet1.xml", bytes(MOST_UNPACKED + 10)))
    assert len(bomb) < 100_000
    with pytest.raises(NoSheet) as error:
        read_workbook("casks.xlsx", bomb)
    assert sentence(error.value.said).startswith("This workbook unpacks to more than 60 MB.")


def test_one_cell_at_the_far_end_does_not_fill_the_memory() -> None:
    def write(book: Workbook) -> None:
        sheet = book.add_worksheet("Far")
        sheet.write(0, 0, "Code")
        sheet.write(1_048_575, 16_383, "far")

    with pytest.raises(NoSheet) as error:
        read_workbook("far.xlsx", xlsx(write))
    assert sentence(error.value.said).startswith("1048576 rows are too many at once: at most 2000.")


def test_a_bomb_that_lies_about_its_size_is_no_sheet() -> None:
    bomb = packed(("xl/worksheets/sheet1.xml", bytes(1_000_000)))
    size = (1_000_000).to_bytes(4, "little")
    with pytest.raises(NoSheet):
        read_workbook("casks.xlsx", bomb.replace(size, (10).to_bytes(4, "little")))


def test_formulas_are_taken_by_their_last_value_and_said(hand: Hand) -> None:
    def write(book: Workbook) -> None:
        sheet = book.add_worksheet("Casks")
        for n, row in enumerate([HEADS.strip().split(","), ["C1", "plum", "2022-11-21", 46.3, "", 60, 225]]):
            sheet.write_row(n, 0, row)
        sheet.write_formula(1, 4, "=200+9.9", None, 209.9)

    look = hand.look(xlsx(write))
    assert (look.formulas, look.count("new")) == (1, 1)
    assert look.rows[0].raw("gross") == "209.9"
    text = HEADS + "C1,plum,2022-11-21,46.3,=200+9.9,60,225\nC2,plum,2022-11-21,46.3,#REF!,60,225\n"
    assert [said for *_, said in faults(hand.look(text))] == [
        "=200+9.9 is a formula without a value. Put the value there.",
        "#REF! is a formula without a value. Put the value there."]


def test_merged_heads_and_two_columns_of_one_meaning_are_said(hand: Hand) -> None:
    def write(book: Workbook) -> None:
        sheet = book.add_worksheet("Casks")
        sheet.write_row(0, 0, ["Cask no", "Kind"])
        sheet.merge_range(0, 2, 0, 3, "Weight")
        sheet.write_row(1, 0, ["C1", "plum", 46.3, 209.9])

    (said,) = of_whole(hand.look(xlsx(write)))
    assert said == "Heads in row 1 are merged. Split them, with one head over each column."
    look = hand.look("Cask no,Kind,Weight,Gross mass,ABV\nC1,plum,209.9,210,60\n")
    assert of_whole(look) == ['Two columns mean the same, Gross weight: "Weight" and "Gross mass". '
                              "Say which it is, and what the other is."]
    assert look.count("stop") == 1
    told = hand.look("Cask no,Kind,Weight,Gross mass,ABV,Size\nC1,plum,209.9,210,60,225\n", columns={0: {3: LEFT}})
    assert of_whole(told) == []
    assert of_whole(hand.look("Weather,Mood\nfine,good\n")) == [
        "No row of this table looks like heads. Put one head over each column, as in the template."]
    assert of_whole(hand.look("Cask no,ABV,Weight,Empty\nC1,60,209,46\n")) == [
        "A column is missing: Kind of spirit. Say which it is, or add it to the sheet."]


def test_the_order_of_day_and_month_is_asked_and_not_guessed(hand: Hand) -> None:
    assert day_order(["5/3/2022", "13/3/2022"]) == "dmy"
    assert day_order(["5/3/2022", "5/13/2022"]) == "mdy"
    assert day_order(["5/3/2022", "6/4/2022"]) == "?"
    assert day_order(["5.3.2022", "2022-03-05", ""]) == ""  # with points the day is first
    text = HEADS + "C1,plum,5/3/2022,46.3,209.9,60,225\nC2,plum,7/7/2022,46.3,209.9,60,225\n"
    look = hand.look(text)
    assert of_whole(look) == ["Days such as 5/3/2022: is the day first or the month? Say which."]
    assert [(row, said) for row, _, _, said in faults(look)] == [
        (2, "5/3/2022: which is the day, and which the month?")]
    for order, day in (("dmy", "2022-03-05"), ("mdy", "2022-05-03")):
        assert hand.look(text, orders={0: order}).rows[0].raw("filled_on") == day


@pytest.mark.parametrize(
    ("row", "column", "words"),
    [
        ("C1,plum,31 Feb 2024,46.3,209.9,60,225", "filled_on", "February 2024 has 29 days."),
        ("C1,plum,soon,46.3,209.9,60,225", "filled_on", "soon is no day."),
        ("C1,plum,2030-01-01,46.3,209.9,60,225", "filled_on", "1 January 2030 is after 29 November 2026"),
        ("C1,plum,2022-11-21,46.3,full,60,225", "gross", "full is no figure."),
        ("C1,plum,2022-11-21,46.3,209 miles,60,225", "gross", "209 miles: this column is in kg or lb."),
        ("C1,plum,2022-11-21,46.3,2099,60,225", "gross", "2260.6 L does not fit into C1, which holds 229.5 L."),
        ("C1,,2022-11-21,46.3,209.9,60,225", "spirit", "Kind of spirit is missing."),
        (",plum,2022-11-21,46.3,209.9,60,225", "code", "Vessel is missing."),
        ("C_1,plum,2022-11-21,46.3,209.9,60,225", "code", "A code is made of the letters A to Z"),
        ("C1,plum,2022-11-21,46.3,209.9,,225", "glass", "Type the glass reading and its temperature"),
    ],
)
def test_a_fault_is_said_at_its_row_and_column_and_nothing_is_written(
    hand: Hand, row: str, column: str, words: str
) -> None:
    before = hand.count()
    (number, at, weight, said), *_ = faults(hand.look(HEADS + row + "\n"))
    assert (number, at, weight) == (2, column, "stop")
    assert said.startswith(words)
    no, _ = hand.put(HEADS + row + "\n")
    assert (no, hand.count()) == (None, before)


def test_a_day_that_no_month_has_offers_the_days_that_it_may_be(hand: Hand) -> None:
    look = hand.look(HEADS + "C1,plum,31 Feb 2024,46.3,209.9,60,225\n")
    assert [offer.text for offer in look.rows[0].faults[0].offers] == ["31 Jan 2024", "29 Feb 2024"]
    assert hand.look(HEADS + "C1,plum,31 Feb 2024,46.3,209.9,60,225\n",
                     edits={(0, 2, "filled_on"): "29 Feb 2024"}).rows[0].raw("filled_on") == "2024-02-29"


@pytest.mark.parametrize(
    ("codes", "offered"),
    [
        ("C-005 C-005 C-007", ["C-006"]), ("C-005 C-005", ["C-006"]), ("C-009 C-009 C-011", ["C-010"]),
        ("C-005 C-005 C-006", []), ("C-005 C-006 C-005 C-007", []), ("C-006 C-005 C-005", []), ("Oak Oak", []),
    ],
)
def test_a_name_that_stands_twice_is_offered_as_the_one_that_is_left_out(
    hand: Hand, codes: str, offered: list[str]
) -> None:
    look = hand.look(HEADS + "".join(f"{code},plum,2022-11-21,46.3,209.9,60,225\n" for code in codes.split()))
    twice = [fault for row in look.rows for fault in row.faults if "stands in row" in sentence(fault.said)]
    assert [offer.text for offer in twice[-1].offers] == offered


def test_what_stands_twice_what_is_none_of_these_and_what_is_still_to_come(hand: Hand) -> None:
    row = "C1,plum,2022-11-21,46.3,209.9,60,225\n"
    assert faults(hand.look(HEADS + row + row)) == [(3, "code", "stop", "C1 stands in row 2 already.")]
    assert of_whole(hand.look(HEADS)) == ["There are heads, and no row below them."]
    look = hand.look("Code,Sort,Capacity\nX1,bucket,20\nX2,barrel,\"2,410.5\"\n")
    assert [said for *_, said in faults(look)] == [
        "bucket is none of these: fermenter, still, receiver, tank, cask, can, place.",
        "2,410.5: Type one point or comma, once, before the decimals: 1234.5 or 1234,5."]
    look = hand.look("Cask no,Kind,Weight,ABV,Size,Gauged on\nC1,plum,209,60,225,2027-01-05\n")
    assert next((at, said) for _, at, _, said in faults(look)) == ("read_on", "5 January 2027 is still to come.")
    look = hand.look("Number,Type,Unit\nTH-1,thermometer,cubits\n")
    assert [at for _, at, _, _ in faults(look)] == ["unit"]


def test_the_templates_are_read_as_what_they_are_in_both_systems_of_units(hand: Hand) -> None:
    for is_us in (False, True):
        for target in ALL:
            (part,) = hand.look(csv_template(target, is_us=is_us), name=f"{target.name}.csv").parts
            assert part.heads and part.heads.target is target
            assert [head.column for head in part.heads.heads] == list(target.columns), target.name
            assert part.faults == []
        parts = read_workbook("x.xlsx", workbook_template(is_us=is_us)).tables
        assert [table.name for table in parts] == [target.title for target in ALL]
