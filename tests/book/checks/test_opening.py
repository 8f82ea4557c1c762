"""What is asked about opening stock. Common practice, no source, where a rule of the trade is asserted: wood gives no
alcohol, and nothing lies in wood before its fruit was picked.
"""

import pytest

from tests.book.checks.ledger import Ledger, codes, only

DAY = "2026-05-02 09:00"
# 163.6 kg at 60 % vol are 179.96 L at 909.11 kg/m3 (OIML R 22 at 20 °C), 180.17 L in air: 108.10 L of pure alcohol.
CASK = {"spirit": "plum", "gross": "213.6", "tare": "50.0", "strength": "60", "filled_on": "2022-11-21"}


def opened(book: Ledger, vessel: str = "C1", at: str = DAY, **values: str):
    return book.enter("opening", vessel, at, **(CASK | values))


def test_a_cask_as_the_papers_have_it_is_quiet_and_comes_in_from_outside():
    book = Ledger()
    assert opened(book, filled_volume="205", filled_strength="62.5", harvest="2022", papers="cask book 2") == []
    (source, target, reason, lpa), *more = book.flows
    assert (source, target[:4], reason, more) == ("out:opening", "v:C1", "opening", [])
    assert lpa == pytest.approx(108.10, abs=0.01)
    held = book.states[target]["holds"]
    assert held["account"] == "storage" and held["since"] == held["aged_since"] == "2022-11-21T12:00:00Z"
    assert held["filled_lpa_l"] == pytest.approx(128.125)  # 205 x 62.5 %
    assert (held["by_papers"], held["opened_at"]) == ("cask book 2", "2026-05-02T07:00:00Z")


def test_an_empty_vessel_wants_a_quantity_and_a_quantity_its_empty_weight():
    query = only(Ledger().enter("opening", "C1", DAY, spirit="plum", filled_on="2022-11-21"), "opening_nothing")
    assert query.weight == "stop"
    book = Ledger()
    assert book.enter("opening", "T1", DAY, spirit="plum", volume="145", strength="62.5") == []
    assert book.flows[0][3] == pytest.approx(90.625)  # no temperature: litres at 20 °C
    tank = {"spirit": "plum", "gross": "500", "strength": "60"}
    assert only(Ledger().enter("opening", "T1", DAY, **tank), "opening_no_tare").weight == "stop"
    assert Ledger().enter("opening", "C1", DAY, **(tank | {"gross": "209.9"})) == []  # as the cask is listed


def held_in(book: Ledger, vessel: str):
    return next(state for key, state in book.states.items() if key.startswith(f"v:{vessel}-"))["holds"]


def test_an_empty_weight_that_is_typed_needs_none_that_is_listed():
    assert Ledger().enter("opening", "T1", DAY, spirit="plum", gross="500", tare="100", strength="60") == []


def test_what_the_registry_says_of_the_wood_and_the_place_that_is_typed_go_along():
    book = Ledger()
    assert opened(book, place="LOFT-J1") == []
    assert held_in(book, "C1")["use"] == "used"
    assert next(state for key, state in book.states.items() if key.startswith("v:C1"))["place"] == "LOFT-J1"


def test_a_tank_is_in_no_wood_and_a_day_of_today_is_no_later_than_its_reading():
    book = Ledger()
    tank = {"spirit": "plum", "volume": "145", "strength": "60", "filled_on": "2026-01-10"}
    assert book.enter("opening", "T1", DAY, **tank) == []
    assert held_in(book, "T1")["since"] == "2026-01-10T12:00:00Z"
    assert held_in(book, "T1").get("aged_since") is None
    book = Ledger()
    assert opened(book, filled_on=DAY[:10]) == []
    assert held_in(book, "C1")["since"] == held_in(book, "C1")["aged_since"] == "2026-05-02T07:00:00Z"


def test_a_mash_is_no_opening_stock():
    book = Ledger()
    load = {"gross": "900", "tare": "60", "material": "plum", "grower_lot": "G4", "temp": "14", "rot": "1",
            "batch": "B-1"}
    assert book.enter("fruit_intake", "F1", "2026-05-01 09:00", **load) == []
    past = {"spirit": "plum", "volume": "800", "strength": "60"}
    assert codes(book.enter("opening", "F1", DAY, **past)) == ["opening_seen"]


def test_fuller_than_a_vessel_can_be_stops_and_offers_the_point():
    query = only(opened(Ledger(), gross="2099"), "over_capacity")
    assert (query.weight, query.field, query.suggestions[0].raw) == ("stop", "gross", "209.9")
    assert codes(opened(Ledger(), filled_volume="240", filled_strength="60")) == ["opening_overfilled"]
    assert opened(Ledger(), filled_volume="229", filled_strength="60") == []
    # A cask holds a little more than its rated size, a tank does not.
    tank = {"spirit": "plum", "volume": "290", "strength": "60", "filled_strength": "60", "filled_on": "2026-01-01"}
    assert codes(Ledger().enter("opening", "T3", DAY, **tank, filled_volume="303")) == [
        "over_working_level", "opening_overfilled"]


def test_days_that_cannot_be():
    assert only(opened(Ledger(), filled_on="2026-05-03"), "opening_to_come").weight == "stop"
    assert opened(Ledger(), filled_on="2026-05-02") == []
    assert only(opened(Ledger(), filled_on="1922-11-21"), "opening_long_ago").weight == "ask"
    assert opened(Ledger(), filled_on="1966-11-21") == []
    query = only(opened(Ledger(), harvest="2023"), "opening_before_fruit")
    assert (query.weight, query.field) == ("stop", "filled_on")
    query = only(opened(Ledger(), harvest="2022", aged_since="2021-12-01"), "opening_before_fruit")
    assert query.field == "aged_since"
    # A part that was poured in later may be younger than the fill.
    assert opened(Ledger(), harvest="2021", aged_since="2024-12-01") == []


def test_more_than_at_the_fill():
    query = only(opened(Ledger(), filled_volume="170", filled_strength="60"), "opening_grew")  # 102 at the fill
    assert (query.weight, query.field) == ("ask", "filled_volume")
    assert only(opened(Ledger(), filled_lpa="106"), "opening_grew").field == "filled_lpa"
    assert opened(Ledger(), filled_lpa="107.1") == []  # within the 1 % that a gauge may pretend


def test_a_strength_far_from_that_at_the_fill_offers_the_digits_swapped():
    """1.5 % vol and 1.2 for each of 3.4 years between: common practice, no source."""
    query = only(opened(Ledger(), strength="16.9", filled_strength="62.5"), "opening_drift")
    assert (query.weight, query.field, query.suggestions[0].raw) == ("ask", "strength", "61.9")
    assert opened(Ledger(), strength="57.0", filled_strength="62.5") == []


def test_what_a_plain_gauge_opened_gets_its_past_and_keeps_its_stock():
    book = Ledger()
    gauge = {"net_weight": "163.6", "strength": "60", "temp": "20", "purpose": "opening"}
    assert book.enter("gauge", "C1", "2025-05-02 09:00", **gauge) == []
    before = dict(next(iter(book.states[key] for key in book.states if key.startswith("v:C1")))["holds"])
    past = {"spirit": "plum", "filled_on": "2022-11-21", "filled_lpa": "128.1", "papers": "folio 7"}
    assert book.enter("opening", "C1", DAY, **past) == []
    assert book.flows == []
    assert book.enter("opening", "C1", "2026-05-02 09:30", **past, to_account="processing") == []
    assert held_in(book, "C1")["account"] == "processing"  # as it says
    assert book.enter("opening", "C1", "2026-05-02 09:40", **past, to_account="storage") == []
    book.flows = []
    held = next(book.states[key] for key in book.states if key.startswith("v:C1"))["holds"]
    assert book.flows == []
    assert (held["lpa_ul"], held["fill"]) == (before["lpa_ul"], before["fill"])
    assert (held["since"], held["by_papers"]) == ("2022-11-21T12:00:00Z", "folio 7")
    # The amount may stand there once more; another one is asked about and moves nothing.
    assert opened(book, at="2026-05-02 10:00") == []
    query = only(opened(book, at="2026-05-02 11:00", gross="200.0"), "opening_again")
    assert query.weight == "ask" and book.flows == []


def test_what_this_book_has_seen_filled_is_no_opening_stock():
    book = Ledger()
    assert book.enter("gauge", "T1", "2026-01-02 08:00", volume="400", strength="60", temp="20") == []
    fill = {"from_vessel": "T1", "lot": "L-1", "tare": "50", "gross": "213.6", "temp": "20", "strength": "60",
            "use": "used", "soaked": "yes", "place": "CELL-A1"}
    assert book.enter("cask_fill", "C1", "2026-01-02 10:00", **fill) == []
    assert only(opened(book, tare="50", gross="213.6"), "opening_seen").weight == "stop"


def test_a_mix_with_a_part_of_papers_is_known_by_papers():
    book = Ledger()
    assert opened(book, "C1", papers="cask book 2") == []
    assert opened(book, "N1", tare="50", gross="213.6", filled_on="2024-01-10") == []
    emptied = {"strength": "60", "temp": "20", "to_vessel": "T1", "tare": "46.3"}
    assert book.enter("dump", "C1", "2026-05-03 09:00", gross="213.6", empty="55.0", **_without(emptied, "tare")) == []
    assert book.enter("dump", "N1", "2026-05-03 10:00", gross="213.6", empty="55.0", **_without(emptied, "tare")) == []
    held = next(book.states[key] for key in book.states if key.startswith("v:T1"))["holds"]
    assert (held["aged_since"], held["by_papers"]) == ("2024-01-10T12:00:00Z", "cask book 2")


def _without(values: dict, name: str) -> dict:
    return {key: value for key, value in values.items() if key != name}


BOTTLES = {"batch": "K-22-01", "spirit": "plum", "strength": "45", "bottle_size": "0.5", "per_case": "6", "cases": "20",
           "bottles": "3", "case_from": "1", "case_to": "20"}


def test_bottles_that_stood_in_the_store():
    book = Ledger()
    assert book.enter("opening_goods", "", DAY, **BOTTLES, bottled_on="2023-03-01") == []
    assert book.flows == [("out:opening", "b:e1", "opening", pytest.approx(27.675))]  # 123 x 0.5 L x 45 %
    assert book.states["b:e1"]["at"] == "2023-03-01T12:00:00Z"
    assert book.enter("dispatch", "", "2026-05-03 09:00", batch="K-22-01", why="sample", bottles="3") == []
    assert book.states["b:e1"]["on_hand"] == 120
    query = only(book.enter("opening_goods", "", "2026-05-03 10:00", **BOTTLES), "opening_goods_again")
    assert query.weight == "ask"
    assert book.enter("opening_goods", "", "2026-05-03 10:00", **BOTTLES | {"case_from": "30", "case_to": "49"}) == []
    assert codes(book.enter("opening_goods", "", DAY, **BOTTLES | {"batch": "X"}, bottled_on="2027-01-01")) == [
        "opening_to_come"]


MOVE = {"serial": "1", "purpose": "move", "spirit": "plum", "distilling_strength": "70", "temp": "20", "strength": "60"}


def test_a_move_never_changes_the_account_of_what_stays_without_a_question():
    """29 L out of 145: the other 116 change their account too, and a person is asked."""
    book = Ledger()
    assert book.enter("opening", "T1", DAY, spirit="plum", volume="145", strength="60", to_account="processing") == []
    move = {**MOVE, "from_account": "storage", "to_account": "storage", "to_vessel": "T3", "volume": "29"}
    query = only(book.enter("account_move", "T1", "2026-05-03 09:00", **move), "account_other")
    assert (query.weight, query.field) == ("ask", "from_account")
    assert query.words == (
        "By the book T1 holds 87.0 L of pure alcohol in processing. Moved as storage, all of it stands in storage now, "
        "not only the 17.4 that move. Was that declared?"
    )


def test_a_move_never_pulls_what_it_joins_into_its_account_without_a_question():
    book = Ledger()
    assert book.enter("opening", "T1", DAY, spirit="plum", volume="145", strength="60", to_account="processing") == []
    assert book.enter("opening", "T3", DAY, spirit="plum", volume="100", strength="60", to_account="storage") == []
    move = {**MOVE, "from_account": "storage", "to_account": "storage", "to_vessel": "T1", "volume": "29"}
    query = only(book.enter("account_move", "T3", "2026-05-03 09:00", **move), "account_joined")
    assert (query.weight, query.field) == ("ask", "to_account")
    assert query.words.startswith("87.0 L of pure alcohol in T1 stand in processing by the book.")
    book = Ledger()
    assert book.enter("opening", "T3", DAY, spirit="plum", volume="100", strength="60", to_account="storage") == []
    assert book.enter("account_move", "T3", "2026-05-03 09:00", **move) == []  # nothing stands there
    gone = {**MOVE, "from_account": "storage", "to_account": "removed", "to_whom": "Another Still", "volume": "5",
            "serial": "2"}
    assert book.enter("account_move", "T3", "2026-05-03 09:30", **gone, to_vessel="T1") == []  # it joins nothing
    same = {**MOVE, "from_account": "storage", "to_account": "processing", "volume": "66", "serial": "3"}
    assert book.enter("account_move", "T3", "2026-05-03 10:00", **same) == []  # that is what the entry declares
    got = {"consignor": "Another Still", "document": "7", "purpose": "in_bond", "spirit": "plum", "seals": "yes",
           "declared_volume": "20", "declared_strength": "60", "volume": "20", "strength": "60", "temp": "20"}
    asked = book.enter("receipt", "T3", "2026-05-03 11:00", **got, to_account="storage")
    assert codes(asked) == ["account_joined"]


@pytest.mark.parametrize(("units", "strength", "is_asked"), [
    ("metric", "37.5", False), ("metric", "37.4", True), ("us", "40.0", False), ("us", "39.9", True),
])
def test_a_cask_of_spirit_too_weak_to_bottle_is_asked_about(units: str, strength: str, is_asked: bool):
    """Fruit spirit is bottled at 37.5 % vol at least (Regulation (EU) 2019/787, Annex I), brandy at 40 (27 CFR 5.145).
    """
    asked = opened(Ledger(units=units), strength=strength)
    assert ("opening_weak" in [one.code for one in asked]) is is_asked


def test_proof_typed_as_per_cent_is_offered_for_a_weak_cask():
    query = only(opened(Ledger(), strength="31.9"), "opening_weak")
    assert query.words == "31.9 % in a cask: below 37.5 % none is bottled. Look at the glass and its unit."


def test_the_empty_weight_on_the_papers_is_that_of_the_cask():
    assert only(opened(Ledger(), tare="45.0", gross="208.6"), "tare_off").weight == "ask"


def test_a_cask_that_is_taken_in_stands_where_it_is_listed():
    given = {"gross": "209.9", "tare": "46.3"}
    assert only(opened(Ledger(), "C4", place="LOFT-J1", **given), "place_differs").weight == "ask"
    assert opened(Ledger(), "C4", place="CELL-A1", **given) == []
