"""What readers say of opening stock: its age and year by papers, its loss since the fill, and where its trace ends."""

from __future__ import annotations

import math
from datetime import UTC, datetime

import pytest

from tests.book.conftest import C1, C2, T1
from tests.book.told import Told, fill, start
from webapp.book import cards
from webapp.book.cellar import casks
from webapp.book.cellar.years import by_kind_and_year
from webapp.book.goods import goods
from webapp.book.lineage import lineage
from webapp.book.lineage.names import names_of
from webapp.book.record.store import Book
from webapp.book.vats.sources import sources
from webapp.book.vats.sum import Draw, make_vat

NOW = datetime(2025, 9, 24, 12, 0, tzinfo=UTC)


@pytest.fixture
def told(book: Book) -> Told:
    return start(book)


def opened(told: Told, mark: str = C1, **more: str) -> str:
    """163.6 kg at 60 % vol: 179.96 L by 909.11 kg/m3 (OIML R 22), 107.97 L of pure alcohol."""
    return told.say("opening", mark, **{"spirit": "plum", "lot": "L-22", "net_weight": "163.6 kg",
                                        "strength": "60 pct_vol", **more})


def test_age_year_and_loss_are_said_by_papers(told: Told) -> None:
    opened(told, filled_on="2021-09-24", filled_lpa="120 LPA", filled_strength="62.5 pct_vol", papers="folio-2")
    opened(told, C2)
    found = {cask.row["mark"]: cask for cask in casks.casks(told.book)}
    assert found[C1].age_years(NOW) == pytest.approx(4.0, abs=0.01)
    assert (found[C1].papers, found[C2].papers, found[C2].age_years(NOW)) == ("folio-2", "", None)
    lost = found[C1].rates["fill"]
    assert lost and lost["lpa_pct_year"] == pytest.approx(math.log(120 / 108.10) * 100 / 4, rel=0.002)
    rows = [(row.year, row.casks, row.by_papers) for row in by_kind_and_year(told.book)]
    assert rows == [("", 1, 0), ("2021", 1, 1)]


def test_a_vat_says_whose_age_only_papers_know(told: Told) -> None:
    told.say("gauge", T1, volume="400 L", temp="20 degC", strength="62 pct_vol")
    fill(told, C2, "49.8", "220", "62")
    opened(told, filled_on="2021-09-24")
    found = {source.mark: source for source in sources(told.book, NOW)}
    assert found[C1].years == pytest.approx(4.0, abs=0.01) and found[C1].papers == ""
    assert found[C2].papers is None
    vat = make_vat([Draw(found[C1], 100.0), Draw(found[C2], 50.0)], None)
    assert vat and [source.mark for source in vat.by_papers] == [C1]


def test_a_trace_ends_before_this_book(told: Told) -> None:
    entry_id = opened(told, filled_on="2021-09-24", papers="folio-2", origin="still")
    told.say("dump", C1, gross="209.9 kg", empty="50 kg", strength="60 pct_vol", temp="20 degC", to_vessel=T1)
    subject = lineage.find_subject(told.book, T1)
    assert subject
    traced = lineage.trace_subject(told.book, subject)
    assert list(traced.origin.leaves) == [f"o:{entry_id}"]
    node = traced.nodes[f"o:{entry_id}"]
    assert node.name == "before this book began"
    assert node.words == f"plum, L-22, still, {C1}, filled 2021-09-24, by papers: folio-2"


def test_bottles_from_before_this_book_are_on_hand_and_traced(told: Told) -> None:
    entry_id = told.say("opening_goods", batch="K-22", spirit="plum", strength="45 pct_vol", bottle_size="0.5 L",
                        per_case="6 count", cases="20 count", bottled_on="2023-03-01", papers="list-4")
    one = goods.bottling(told.book, entry_id)
    assert one and (one["on_hand"], one["cases"], one["opened"]) == (120, 20, True)
    assert told.sum_of(f"b:{entry_id}") == pytest.approx(27.0)  # 120 x 0.5 L x 45 %
    node = names_of(told.book, [f"b:{entry_id}"], {})[f"b:{entry_id}"]
    assert node.sort == "goods" and node.words.endswith("from before this book, list-4")


def test_a_form_for_opening_stock_is_offered_until_the_vessel_has_a_past(told: Told) -> None:
    def offers(mark: str) -> bool:
        card = cards.card(told.book, mark)
        assert card
        return "opening" in card["forms"]

    assert offers(C1)
    told.say("gauge", C1, net_weight="163.6 kg", strength="60 pct_vol", temp="20 degC", purpose="opening")
    assert offers(C1)  # what a plain gauge has opened can be completed
    opened(told, filled_on="2021-09-24")
    assert not offers(C1)
    told.say("gauge", T1, volume="400 L", temp="20 degC", strength="62 pct_vol")
    assert not offers(T1)
