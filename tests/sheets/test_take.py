"""Sheets into the book: looked over without a trace, put in as one, known again, taken back as one."""

from __future__ import annotations

import time

import pytest

from tests.sheets.conftest import STAMP, Hand, faults, of_whole
from tests.sheets.moving_house import codes, workbook
from webapp.book import verification
from webapp.book.fold.states import load_newest
from webapp.book.house import registry
from webapp.book.record import evidence
from webapp.book.record.errors import BookError
from webapp.kinds.key import vessel_key
from webapp.sheets.putting import take_back
from webapp.trade.marks import make_mark

# 163.6 kg at 60 % vol: 179.96 L by 909.11 kg/m3 (OIML R 22 at 20 °C), 107.97 L of pure alcohol.
CASKS = (
    "Cask no;Kind;Date in;Empty;Weight (kg);ABV;Pos;Size\n"
    "C-001;plum;21.11.2022;46,3;209,9;60,0;CELL-A1;225\n"
    "C-002;apple;2 Dec 2023;46.3 kg;462.7 lb;120 proof;CELL-A2;225\n"
)


def test_a_look_leaves_no_trace_and_says_what_a_put_then_does(hand: Hand) -> None:
    before = hand.count()
    look = hand.look(CASKS)
    assert hand.count() == before
    assert faults(look) == [] and of_whole(look) == []
    assert [row.mark for row in look.rows] == [make_mark("C001"), make_mark("C002")]
    assert look.rows[0].lpa_l == pytest.approx(108.10, abs=0.01)
    no, _ = hand.put(CASKS)
    assert no == 1
    held = load_newest(hand.book, vessel_key(make_mark("C001")))["holds"]
    assert held["lpa_l"] == pytest.approx(look.rows[0].lpa_l) and held["since"].startswith("2022-11-21")
    # 120 proof are 60 % vol at 20 °C within a tenth, 462.7 lb are 209.9 kg.
    other = load_newest(hand.book, vessel_key(make_mark("C002")))["holds"]
    assert other["lpa_l"] == pytest.approx(107.97, abs=0.3)
    assert verification.verify(hand.book) == []


def test_the_same_sheet_again_changes_nothing_in_any_order_of_rows_and_columns(hand: Hand) -> None:
    hand.put(CASKS)
    before = hand.count()
    no, look = hand.put(CASKS)
    assert (no, look.count("known"), hand.count()) == (None, 2, before)
    lines = [line.split(";") for line in CASKS.splitlines()]
    turned = "\n".join("\t".join(reversed(line)) for line in [lines[0], *reversed(lines[1:])])
    no, look = hand.put(turned)
    assert (no, look.count("known"), hand.count()) == (None, 2, before)
    look = hand.look(CASKS.replace("209,9", "208,9"))
    (row, column, weight, said), = faults(look)
    assert (row, column, weight) == (2, "code", "stop")
    assert said == "The opening stock of C-001 is in the book already, and says otherwise. Put it right on its page."


def test_a_sheet_is_taken_back_as_one_and_may_come_again(hand: Hand) -> None:
    no, _ = hand.put(CASKS)
    assert no
    assert take_back(hand.book, no, STAMP, "wrong year") == []
    for code in ("C001", "C002"):
        state = load_newest(hand.book, vessel_key(make_mark(code)))
        assert state is None or state["holds"] is None
        assert registry.vessel(hand.book, make_mark(code))["retired"]
    with pytest.raises(BookError, match="taken back already"):
        take_back(hand.book, no, STAMP, "again")
    again, look = hand.put(CASKS)
    assert (again, look.count("new")) == (2, 2)
    assert not registry.vessel(hand.book, make_mark("C001"))["retired"]
    assert verification.verify(hand.book) == []


def test_a_sheet_is_kept_as_it_came_and_a_changed_one_is_found(hand: Hand) -> None:
    no, _ = hand.put(CASKS, name="casks.csv")
    taking = evidence.load_taking(hand.book, no)
    assert taking and evidence.load_content(hand.book, taking["sha256"]) == CASKS.encode()
    body = hand.book.one("SELECT body FROM entries LIMIT 1")["body"]
    assert f"Row 2 of casks.csv, sheet {taking['sha256'][:16]}." in body  # so the chain of digests holds it too
    with hand.book.write() as database:
        database.conn.execute("DROP TRIGGER sheets_stay")
        database.conn.execute("UPDATE sheets SET content = 'QUJD'")
    assert verification.verify(hand.book) == [
        "The sheet casks.csv is not as it came: its digest is another. Restore a backup."]


def test_a_whole_house_moves_in_with_one_workbook(hand: Hand) -> None:
    look = hand.look(workbook())
    assert faults(look) == [] and of_whole(look) == []
    assert [(part.heads.target.name, part.count("new")) for part in look.parts if part.heads] == [
        ("vessels", 71), ("people", 6), ("instruments", 11), ("opening", 46)]
    hand.put(workbook())
    found = hand.count()
    assert (found["vessels"], found["people"], found["instruments"], found["entries"]) == (71, 7, 11, 46)
    assert hand.book.one("SELECT access FROM people WHERE code = 'IM'") == {"access": "distiller"}
    assert hand.book.one("SELECT unit, due_on FROM instruments WHERE id = 'TH-2'") == {
        "unit": "degC", "due_on": "2027-03-02"}


def test_two_hundred_casks_in_less_than_ten_seconds(hand: Hand) -> None:
    rows = [f"{code};plum;21.11.2022;46.3;209.9;60;225" for code in codes("C", 200, 3)]
    text = "\n".join(["Cask no;Kind;Date in;Empty;Weight;ABV;Size", *rows])
    begun = time.perf_counter()
    no, look = hand.put(text)
    assert no and look.count("new") == 200
    assert time.perf_counter() - begun < 10


def test_what_a_sheet_says_otherwise_than_the_book_is_left_to_a_person(hand: Hand) -> None:
    vessels = "Code,Sort,Capacity L\nT1,tank,500\nT2,tank,300\n"
    hand.put(vessels)
    look = hand.look(vessels.replace("500", "700"))
    (row, column, weight, said), = faults(look)
    assert (row, column, weight) == (2, "capacity_l", "stop")
    assert said.startswith("T1 is in the book already: 500 there, 700 here. Change it on its own page, or leave")
    look = hand.look(vessels.replace("500", "700"), left={(0, 2)})
    assert (look.count("left"), look.count("known"), faults(look)) == (1, 1, [])
    assert faults(hand.look("Cask no;Kind;Weight;ABV\nC-9;plum;200;60\n"))[0][3].startswith("No vessel is called C-9.")
    people = hand.look("Initials,Name,May\nOL,Orla L.,office\nNS,Noor S.,\n")
    assert [row.state for row in people.rows] == ["known", "new"]


def test_an_edit_beside_a_fault_counts_and_is_kept_with_the_sheet(hand: Hand) -> None:
    text = CASKS.replace("209,9", "2099")
    look = hand.look(text)
    (row, column, weight, _), *more = faults(look)
    assert (row, column, weight, more) == (2, "gross", "stop", [])
    assert look.rows[0].faults[0].offers[0].text == "209.9 kg"
    no, look = hand.put(text, edits={(0, 2, "gross"): "209.9 kg"})
    assert look.count("new") == 2
    assert evidence.load_taking(hand.book, no)["told"]["edits"] == [[0, 2, "gross", "209.9 kg"]]


def test_the_count_that_a_person_saw_is_the_count_that_goes_in(hand: Hand) -> None:
    from webapp.sheets.lookover import Told
    from webapp.sheets.putting import put_in

    before = hand.count()
    with pytest.raises(BookError, match="2 rows would go in, not 3"):
        put_in(hand.book, "x.csv", CASKS.encode(), Told(), STAMP, registry.site(hand.book), expected=3)
    assert hand.count() == before


def test_bottles_customers_and_growers_come_in_too(hand: Hand) -> None:
    goods = ("Batch,Spirit,Strength on the label,Bottle size,Bottles in a case,Cases,Bottled\n"
             "K-24-02,plum,45 %,70 cl,6,40,12 Mar 2024\n")
    no, look = hand.put(goods)
    assert no and look.rows[0].lpa_l == pytest.approx(75.6)  # 240 x 0.7 L x 45 %
    hand.put("Name,Role,Town\nCorner shop,buyer,Elderbridge\nHill orchard,grower,Upper Fold\n")
    assert [(row["name"], row["role"]) for row in hand.book.query("SELECT name, role FROM parties ORDER BY role")] == [
        ("Corner shop", "customer"), ("Hill orchard", "supplier")]
