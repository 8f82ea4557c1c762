"""Papers that people sign: what each says, on which page, with what is open; and that it is letters and shapes only.

The symbol on a paper is read back by zxing, the pages by PDFium: neither is ours.
"""

from __future__ import annotations

from typing import Any

import pypdfium2
import pytest
import zxingcpp

from tests.desk.conftest import C1, F1, R1, R2, S1, House
from tests.desk.test_hostile_print import MARKUP, Teller, letters_of
from tests.desk.trace_world import tell
from webapp.book.house import registry
from webapp.book.record import log

A4, LETTER = (595, 842), (612, 792)  # [pt], ISO 216 and ANSI Y14.1
WARM = {"temp": ("20", "degC")}


def paper(house: House, path: str, code: str = "NS") -> bytes:
    answer = house.client(code).get(f"/desk{path}")
    assert (answer.status_code, answer.mimetype) == (200, "application/pdf"), answer.text[:300]
    return bytes(answer.data)


def a_run(house: House, *, ended: bool) -> str:
    charge = house.log("charge", S1, 0, run_name="R-25-02", from_vessel=F1, wash=("482", "L"),
                       wash_strength=("5.1", "pct_vol"))
    house.log("run_reading", S1, 60, glass=("78.6", "pct_glass"), temp=("16.2", "degC"))
    house.log("cut", S1, 75, event="heads_cut", receiver=R2, reason="nose", glass=("77.5", "pct_glass"),
              temp=("15.4", "degC"))
    house.log("run_reading", S1, 140, glass=("66.0", "pct_glass"), temp=("16.2", "degC"))
    house.log("cut", S1, 220, event="hearts_cut", receiver=R1, reason="nose", glass=("56.5", "pct_glass"),
              temp=("16.3", "degC"))
    if ended:
        house.log("run_end", S1, 240, reason="strength")
        house.log("fraction_gauge", R2, 300, still=S1, fraction="hearts", volume=("20", "L"),
                  strength=("70", "pct_vol"), goes_to="stays", **WARM)
    return str(charge["id"])


@pytest.fixture
def papers(house: House) -> dict[str, str]:
    """The address of each paper, over a house that has something for it to say."""
    registry.put_vessel(house.book, {"mark": C1, "sort": "cask", "place": "CELL-A1"}, by="OL")
    house.log("fruit_intake", F1, -600, gross=("1700", "kg"), tare=("9", "kg"), material="pear",
              grower_lot="Ostrey Farm", sugar=("12.9", "Bx"), temp=("15", "degC"), rot=("1", "pct"))
    house.log("ferment_reading", F1, -300, temp=("14.0", "degC"), gravity=("1.049", "SG"))
    house.log("gauge", C1, -100, what="plum", net_weight=("168.0", "kg"), strength=("61.0", "pct_vol"),
              purpose="opening", **WARM)
    gauge = house.log("cask_regauge", C1, -50, gross=("226.4", "kg"), strength=("95.7", "pct_vol"), condition="tight",
                      **WARM)
    run = a_run(house, ended=True)
    fill = house.book.one("SELECT id FROM fills WHERE mark = ?", (F1,))
    assert fill
    return {
        "count": "/cellar/count.pdf", "gauge": f"/entries/{gauge['id']}.pdf", "run": f"/runs/{run}.pdf",
        "ferment": f"/cellar/ferments/{fill['id']}.pdf", "passport": f"/trace/{run}.pdf",
    }


NAMES = ("count", "gauge", "run", "ferment", "passport")


@pytest.mark.parametrize("name", NAMES)
def test_a_paper_says_whose_it_is_when_by_whom_of_which_book(
    house: House, papers: dict[str, str], name: str
) -> None:
    body = paper(house, papers[name])
    said = letters_of(body)
    number, digest = log.load_head(house.book)
    assert "Tarrowdene Orchard Stills" in said and "Printed 20" in said and "by NS" in said
    assert f"book up to no. {number}, chain {digest[:12]}" in said
    document = pypdfium2.PdfDocument(body)
    for at, page in enumerate(document, 1):
        assert f"page {at} of {len(document)}" in page.get_textpage().get_text_range()
        assert tuple(round(side) for side in page.get_size()) == A4
    assert "Signature" in said and "Date and time" in said
    assert all(char.isprintable() for char in said)


@pytest.mark.parametrize("name", NAMES)
def test_its_symbol_is_the_address_of_its_page(house: House, papers: dict[str, str], name: str) -> None:
    picture = pypdfium2.PdfDocument(paper(house, papers[name]))[0].render(scale=200 / 72).to_pil()
    (address,) = {found.text for found in zxingcpp.read_barcodes(picture)}
    page = house.client("NS").get(address.removeprefix("http://localhost"))
    assert page.status_code == 200, address
    own = papers[name].removesuffix(".pdf")
    assert address.endswith("/desk/cellar/map" if name == "count" else own)
    assert f'href="/desk{papers[name].split("?")[0]}' in page.text or name == "passport", "the page leads to its paper"


def test_a_count_sheet_is_blind_and_in_the_order_of_places(house: House, papers: dict[str, str]) -> None:
    for base, place in (("C002", "CELL-A10"), ("C003", "CELL-A9")):
        registry.put_vessel(house.book, {"mark": base_mark(base), "sort": "cask", "place": place}, by="OL")
    house.log("cask_move", base_mark("C002"), 400, from_place="CELL-A10", to_place="LOFT-K1")
    said = letters_of(paper(house, papers["count"]))
    assert "plum" not in said and "61" not in said and "168" not in said, "no figure of the book"
    assert said.index("CELL-A1 ") < said.index("CELL-A9 ") < said.index("CELL-A10 ") < said.index("LOFT-K1 ")
    assert "225 L (59 gal)" in said and "local code" in said
    one = letters_of(paper(house, "/cellar/count.pdf?room=loft"))
    assert "LOFT-K1" in one and "CELL-A9" not in one
    assert house.client("NS").get("/desk/cellar/count.pdf?room=nowhere").status_code == 404


def base_mark(base: str) -> str:
    from webapp.trade.marks import make_mark

    return make_mark(base)


def test_a_gauge_record_prints_what_is_open_as_open(house: House, papers: dict[str, str]) -> None:
    said = letters_of(paper(house, papers["gauge"]))
    assert "Still open" in said and "stop" in said and "a cask cannot gain" in said
    assert "CELL-A1" in said and "226.4 kg" in said and "Nothing moves until the question is answered." in said
    closed = house.log("gauge", R1, 500, what="plum", volume=("10", "L"), strength=("61.0", "pct_vol"),
                       purpose="opening", **WARM)
    said = letters_of(paper(house, f"/entries/{closed['id']}.pdf"))
    assert "The book asks nothing about this." in said and "What it moved" in said and "6.10" in said


def test_a_run_sheet_has_its_minutes_its_cuts_its_balance_and_cautions(
    house: House, papers: dict[str, str]
) -> None:
    said = letters_of(paper(house, papers["run"]))
    assert "heads cut" in said and "hearts cut" in said and "hearts 07:15" in said and "not accounted for" in said
    assert "never leave a running still" in said and "cannot see methanol" in said and "local code" in said
    assert "go on here" not in said


def test_the_sheet_of_a_run_under_way_has_room_to_go_on(house: House, filled: Any) -> None:
    run = a_run(house, ended=False)
    odd = house.log("run_reading", S1, 230, glass=("95.0", "pct_glass"), temp=("16.2", "degC"))
    assert odd["settled"] == "queried"
    said = letters_of(paper(house, f"/runs/{run}.pdf"))
    assert "Still open" in said and odd["queries"][0]["words"].split(".")[0] in said
    assert "Under way when printed: go on here, and log it." in said and "None gauged yet." in said


def test_a_passport_leads_back_to_the_fruit_and_wants_its_papers(house: House, papers: dict[str, str]) -> None:
    said = letters_of(paper(house, papers["passport"]))
    assert "Ostrey Farm" in said and "Papers and certificates" in said and "Laboratory certificate" in said


def test_a_us_house_has_its_units_on_letter(house: House, papers: dict[str, str]) -> None:
    registry.set_site(house.book, {"units": "us", "accounts": "us"}, by="OL")
    for name in NAMES:
        body = paper(house, papers[name])
        said = letters_of(body)
        assert tuple(round(side) for side in pypdfium2.PdfDocument(body)[0].get_size()) == LETTER
        assert "LPA" not in said and "pure alcohol, L" not in said, name
    assert "True proof" in letters_of(paper(house, papers["run"]))


def test_papers_show_hostile_names_as_letters(house: House) -> None:
    told = tell(Teller(house))
    registry.set_site(house.book, {"name": MARKUP}, by="OL")
    for row in registry.vessels(house.book):
        registry.put_vessel(house.book, {"mark": row["mark"], "title": MARKUP, "place": MARKUP[:60]}, by="OL")
    fill = house.book.one("SELECT id FROM fills WHERE mark = ?", (F1,))
    assert fill
    for path in (f"/trace/{told['bottled']}.pdf", f"/runs/{told['run2']}.pdf", "/cellar/count.pdf",
                 f"/entries/{told['one']}.pdf", f"/cellar/ferments/{fill['id']}.pdf"):
        said = letters_of(paper(house, path))
        assert "<font size=40>big</font>" in said.replace("\ufffe", ""), path


def test_what_the_book_has_not_is_no_paper(house: House) -> None:
    client = house.client("NS")
    for path in ("entries/x.pdf", "runs/x.pdf", "cellar/ferments/x.pdf", "bottlings.pdf?batch=x", "trace/x.pdf",
                 "cellar/count.pdf?room=x"):
        assert client.get(f"/desk/{path}").status_code == 404, path
