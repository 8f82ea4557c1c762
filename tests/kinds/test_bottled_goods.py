"""What bottled goods do to the stock: whose bottles they are, what leaves them, what comes back. Amounts are arithmetic
on bottles: number x size x strength. Common practice, no source, where a rule of the trade is asserted.
"""

import pytest

from tests.book.checks.bottled import DAY, bottle, come_in, count, out, state
from tests.book.checks.ledger import Ledger
from webapp.kinds.effects import goods
from webapp.trade.marks import make_mark

T1, T3 = make_mark("T1"), make_mark("T3")


@pytest.mark.parametrize(
    ("text", "case"),
    [
        ("159", ("", 159)), ("K26-0159", ("k26-", 159)), (" Box  7 ", ("box", 7)), ("60R", ("", 60)),
        ("60 r", ("", 60)), ("A1B2", ("a1b", 2)), ("Ä9", ("ä", 9)), ("", None), (None, None), ("box", None),
        ("7 x", None), ("60RR", None), ("9" * 12, ("", 999_999_999_999)), ("1" * 13, ("1", 111_111_111_111)),
    ],
)
def test_a_case_is_what_stands_before_its_number_and_the_number(text, case):
    assert goods.case_of(text) == case


def facts(**more):
    return {"case_from": "A10", "case_to": "A19", "odd_case": "A20R", "size_l": 0.5, "strength_pct": 45.0, **more}


@pytest.mark.parametrize(
    ("text", "is_one"),
    [("A10", True), ("a 19", True), ("A9", False), ("A20", False), ("A20R", True), (" a20r ", True), ("B10", False),
     ("10", False), ("", False), (None, False)],
)
def test_a_case_of_a_bottling_lies_between_its_first_and_its_last(text, is_one):
    assert goods.holds_case(text, facts()) is is_one


def test_a_bottling_without_numbers_has_no_case_and_one_without_an_odd_case_has_none():
    assert not goods.holds_case("A10", facts(case_from=None))
    assert not goods.holds_case("A10", facts(case_to=None))
    for odd in (None, "", " "):
        assert not goods.is_odd_case("", facts(odd_case=odd))
        assert not goods.is_odd_case(None, facts(odd_case=odd))


def test_a_bottling_is_a_stock_of_its_own_under_its_batch_and_its_lot_mark():
    book = Ledger()
    root = bottle(book, volume="179", broken="2", reworked="4", library="3", case_to="58", odd_case="59R")
    kept = state(book, root)
    assert (kept["filled"], kept["broken"], kept["reworked"], kept["library"]) == (360, 2, 4, 3)
    assert kept["good"] == kept["on_hand"] == 354
    assert (kept["entry"], kept["tank"], kept["fill"], kept["at"]) == (root, T1, "e1", "2025-10-02T06:00:00Z")
    assert (kept["what"], kept["batch"], kept["lot_mark"]) == ("spirit", "K-26-03", "K2603")
    assert (kept["size_l"], kept["per_case"], kept["case_from"], kept["case_to"]) == (0.5, 6, "1", "58")
    assert (kept["strength_pct"], kept["label_strength_pct"], kept["odd_case"]) == (pytest.approx(45.0), 45.0, "59R")
    assert kept["gone"] == [] and "counted" not in kept
    # 354 x 0.5 L x 45 %, and two broken ones; 1 L of heel and line.
    assert kept["lpa_ul"] == kept["bottled_ul"] == 79_650_000
    assert kept["volume_ml"] == 177_000
    assert [flow for flow in book.flows if flow[2] != "more_than_booked"][:3] == [
        (f"v:{T1}", f"b:{root}", "354 bottles", 79.65), (f"v:{T1}", "out:spill", "broken", 0.45),
        (f"v:{T1}", "out:filter_loss", "heel_and_line", 0.45),
    ]
    assert book.states["l:k2603"] == book.states["l:k-26-03"] == {"bottlings": [root]}


def test_what_is_left_of_a_tank_that_is_called_empty_is_a_difference():
    # 183 - 180 - 1 = 2 L at 45 %
    book = Ledger()
    bottle(book, volume="183")
    source, target, reason, lpa = book.flows[-1]
    assert (source, target, reason, lpa) == (f"v:{T1}", "out:gauge_difference", "bottling_close", pytest.approx(0.9))
    assert book.states[f"v:{T1}"]["holds"] is None
    book = Ledger()
    bottle(book, volume="183", tank_empty="no")
    assert book.states[f"v:{T1}"]["holds"]["lpa_l"] == pytest.approx(0.9)


def test_more_broken_and_reworked_than_filled_is_no_bottle_less_than_none():
    book = Ledger()
    bottle(book)
    close = {"filled": "3", "broken": "2", "reworked": "2", "bottle_size": "0.5", "per_case": "6", "lot_mark": "Q",
             "loss": "0"}
    book.enter("bottling_gauge", "T1", f"{DAY} 09:00", batch="Q", volume="100", temp="20", strength="45",
               label_strength="45")
    book.enter("bottling_close", "T1", f"{DAY} 09:30", case_from="1", case_to="1", tank_empty="no", **close)
    assert state(book, f"e{book.count}")["good"] == 0


def test_a_name_remembers_its_last_forty_bottlings():
    """A bound, so that a name of every day does not grow for ever."""
    book = Ledger()
    roots = []
    for n in range(41):
        come_in(book, case_from=str(n * 20 + 1), case_to=str(n * 20 + 20))
        roots.append(f"e{book.count}")
    assert book.states["l:k2603"] == {"bottlings": roots[1:]}


@pytest.mark.parametrize(
    ("why", "where"),
    [("tax_paid", "out:removed"), ("in_bond", "out:removed"), ("export", "out:removed"), ("sample", "out:sample"),
     ("broken", "out:spill"), ("destroyed", "out:destroyed"), ("missing", "out:shortage")],
)
def test_each_reason_has_its_account(why, where):
    book = Ledger()
    root = bottle(book)
    more = {"to_whom": "Noor S., gauger"} if why == "destroyed" else {}
    assert out(book, why, bottles="4", **more) == []
    assert book.flows == [(f"b:{root}", where, why, 0.9)]
    assert state(book, root)["on_hand"] == 356


def test_a_removal_keeps_what_a_recall_needs():
    book = Ledger()
    root = bottle(book)
    out(book, "tax_paid", cases="20", bottles="3", case_from="1", case_to="20")
    assert book.states[f"o:e{book.count}"] == {
        "entry": f"e{book.count}", "bottling": root, "at": "2025-10-02T08:00:00Z", "why": "tax_paid", "bottles": 123,
        "cases": 20, "document": "D-1", "to_whom": "Corner shop", "case_from": "1", "case_to": "20",
    }
    assert state(book, root)["gone"] == [["", 1, 20]]
    out(book, bottles="2")
    assert book.states[f"o:e{book.count}"] == {
        "entry": f"e{book.count}", "bottling": root, "at": "2025-10-02T08:00:00Z", "why": "sample", "bottles": 2,
        "cases": 0, "document": "", "to_whom": "", "case_from": "", "case_to": "",
    }
    assert state(book, root)["gone"] == [["", 1, 20]]


def test_a_removal_of_what_nobody_knows_moves_nothing_even_if_it_is_let_stand():
    book = Ledger()
    kept = dict(book.states)
    assert [query.code for query in out(book, bottles="4")] == ["unknown_bottling"]
    assert book.flows == []
    assert {key for key in book.states if key not in kept and key[:2] in ("b:", "o:", "l:")} == set()


def test_of_two_bottlings_of_a_name_it_is_the_one_that_has_the_case():
    book = Ledger()
    one = bottle(book)
    two = bottle(book, 61, at="09:00")
    out(book, bottles="2", case_from="61")
    assert (state(book, one)["on_hand"], state(book, two)["on_hand"]) == (360, 358)
    out(book, bottles="3", case_from="60")
    assert (state(book, one)["on_hand"], state(book, two)["on_hand"]) == (357, 358)
    # With one of that name alone no case is needed, and a wrong one does not make it another.
    alone = Ledger()
    root = bottle(alone)
    assert [query.code for query in out(alone, bottles="2", case_from="99")] == ["other_case"]
    assert state(alone, root)["on_hand"] == 358


def test_a_third_of_the_bottles_is_a_third_of_the_stock_and_the_last_takes_what_rounding_left():
    """0.7 L at 37.5 %: 262 500 uL a bottle; mass does not divide by 7."""
    book = Ledger()
    come_in(book, bottle_size="0.7", strength="37.5", per_case="7", cases="1", case_from="1", case_to="1")
    root = f"e{book.count}"
    whole = state(book, root)["mass_g"]
    for left in range(6, -1, -1):
        out(book, bottles="1")
        kept = state(book, root)
        assert (kept["on_hand"], kept["lpa_ul"]) == (left, left * 262_500)
        assert whole * left / 7 <= kept["mass_g"] < whole * left / 7 + 7, "rounded down with each bottle"
    assert (state(book, root)["mass_g"], state(book, root)["volume_ml"]) == (0, 0)


def test_more_than_there_are_come_from_overage_first_and_never_leave_less_than_none():
    book = Ledger()
    root = bottle(book)
    out(book, bottles="364")
    assert book.flows == [
        ("out:overage", f"b:{root}", "more_than_booked", 0.9), (f"b:{root}", "out:sample", "sample", 81.9),
    ]
    kept = state(book, root)
    assert (kept["on_hand"], kept["lpa_ul"], kept["mass_g"]) == (0, 0, 0)


def test_what_comes_back_is_stock_again_and_its_cases_are_here():
    book = Ledger()
    root = bottle(book)
    out(book, cases="30", case_from="11", case_to="40")
    out(book, "returned", cases="10", case_from="21", case_to="30")
    assert book.flows == [("out:returned", f"b:{root}", "returned", 13.5)]
    kept = state(book, root)
    assert (kept["on_hand"], kept["lpa_ul"]) == (240, 54_000_000)
    assert kept["gone"] == [["", 11, 20], ["", 31, 40]]
    out(book, "returned", cases="1", case_from="40")
    assert state(book, root)["gone"] == [["", 11, 20], ["", 31, 39]]
    out(book, "returned", bottles="1")
    assert state(book, root)["gone"] == [["", 11, 20], ["", 31, 39]]


@pytest.mark.parametrize(
    ("taken", "gone"),
    [
        ([("1", "5"), ("6", "9")], [["", 1, 9]]), ([("6", "9"), ("1", "5")], [["", 1, 9]]),
        ([("1", "4"), ("6", "9")], [["", 1, 4], ["", 6, 9]]), ([("6", "9"), ("1", "4")], [["", 6, 9], ["", 1, 4]]),
        ([("1", "2"), ("8", "9"), ("3", "7")], [["", 1, 9]]), ([("1", "9"), ("3", "4")], [["", 1, 9]]),
        ([("3", "4"), ("1", "9")], [["", 1, 9]]),
    ],
)
def test_ranges_of_cases_join_where_they_touch(taken, gone):
    book = Ledger()
    root = bottle(book)
    for first, last in taken:
        out(book, cases=str(int(last) - int(first) + 1), case_from=first, case_to=last)
    assert state(book, root)["gone"] == gone


@pytest.mark.parametrize(
    ("first", "last", "gone"),
    [
        ("10", "20", []), ("9", "21", []), ("10", "14", [["a", 15, 20]]), ("15", "20", [["a", 10, 14]]),
        ("1", "9", [["a", 10, 20]]), ("21", "30", [["a", 10, 20]]), ("20", "20", [["a", 10, 19]]),
    ],
)
def test_ranges_of_cases_are_cut_by_what_comes_back(first, last, gone):
    here = ("a", int(first), int(last))
    assert goods._without([["a", 10, 20]], here) == gone
    assert goods._without([["b", 10, 20], ["a", 10, 20]], here) == [["b", 10, 20], *gone]
    assert goods._with([["b", 10, 20]], ("a", 10, 20)) == [["b", 10, 20], ["a", 10, 20]]


def test_a_very_long_list_of_cases_lets_the_oldest_go():
    gone = []
    for n in range(202):
        gone = goods._with(gone, ("", 2 * n, 2 * n))
    assert gone == [["", 2 * n, 2 * n] for n in range(2, 202)]


def test_bottles_poured_back_begin_a_fill_that_knows_what_it_is():
    book = Ledger()
    root = bottle(book)
    out(book, "dumped_back", bottles="40", to_vessel="T3")
    assert book.flows == [(f"b:{root}", f"v:{T3}", "dumped_back", 9.0)]
    held = book.states[f"v:{T3}"]["holds"]
    assert (held["what"], held["name"], held["account"], held["lpa_l"]) == ("spirit", "K-26-03", "processing", 9.0)
    out(book, "dumped_back", bottles="4", to_vessel="T3")
    held = book.states[f"v:{T3}"]["holds"]
    assert (held["name"], held["lpa_l"], held["fill"]) == ("K-26-03", 9.9, f"e{book.count - 1}")


def test_bottles_of_another_house_poured_into_a_tank_stay_what_they_are():
    book = Ledger()
    come_in(book)
    out(book, "dumped_back", bottles="40", to_vessel="T3")
    assert book.states[f"v:{T3}"]["holds"]["what"] == "kirsch"


def test_a_tank_that_takes_bottles_is_as_young_as_they_are():
    """Bottles have no age in wood: what they are poured into has none any more. Common practice, no source."""
    book = Ledger()
    bottle(book)
    book.enter("gauge", "T3", f"{DAY} 09:30", volume="100", strength="45", temp="20")
    book.states[f"v:{T3}"]["holds"]["aged_since"] = "2020-01-01T00:00:00Z"
    out(book, "dumped_back", bottles="4", to_vessel="T3")
    assert book.states[f"v:{T3}"]["holds"]["aged_since"] is None


def test_what_comes_in_is_a_bottling_of_its_own():
    """120 x 0.5 L x 45 % = 27 L as declared; 5 short are 1.125 L lost on the way, never netted."""
    book = Ledger()
    come_in(book, short="5")
    root = f"e{book.count}"
    assert book.flows == [
        ("out:received", f"b:{root}", "in_bond", 27.0), (f"b:{root}", "out:transit", "transit", 1.125),
    ]
    kept = state(book, root)
    assert {name: kept[name] for name in ("good", "filled", "on_hand", "broken", "reworked", "library")} == {
        "good": 120, "filled": 120, "on_hand": 115, "broken": 0, "reworked": 0, "library": 0,
    }
    assert {name: kept[name] for name in ("entry", "tank", "fill", "what", "batch", "lot_mark", "odd_case")} == {
        "entry": root, "tank": "", "fill": "", "what": "kirsch", "batch": "K2603", "lot_mark": "", "odd_case": None,
    }
    assert {name: kept[name] for name in ("strength_pct", "label_strength_pct", "size_l", "per_case")} == {
        "strength_pct": 45.0, "label_strength_pct": 45.0, "size_l": 0.5, "per_case": 6.0,
    }
    assert (kept["consignor"], kept["document"], kept["case_from"], kept["case_to"], kept["at"]) == (
        "Northhill", "D-7", "1", "20", "2025-10-02T07:00:00Z",
    )
    assert (kept["lpa_ul"], kept["bottled_ul"], kept["gone"]) == (25_875_000, 27_000_000, [])
    assert book.states["l:k2603"] == {"bottlings": [root]}


def test_of_what_comes_in_no_more_can_be_missing_than_was_declared():
    book = Ledger()
    come_in(book, short="121")
    kept = state(book, f"e{book.count}")
    assert (kept["on_hand"], kept["lpa_ul"]) == (0, 0)


def test_cases_of_which_nobody_knows_how_many_they_hold_count_for_no_bottle():
    book = Ledger()
    given = {"consignor": "Northhill", "document": "D-7", "batch": "K2603", "spirit": "kirsch", "strength": "45",
             "bottle_size": "0.5", "bottles": "60", "seals": "yes"}
    book.enter("goods_receipt", "", f"{DAY} 09:00", **given)
    out(book, cases="3", bottles="2")
    assert state(book, "e1")["on_hand"] == 58


def test_whole_cases_and_loose_bottles_are_counted_together():
    book = Ledger()
    come_in(book, cases="2", bottles="5", per_case="12", case_from="1", case_to="2")
    assert state(book, f"e{book.count}")["good"] == 29


@pytest.mark.parametrize(
    ("cases", "bottles", "flow", "left"),
    [
        ("59", "4", ("b:e2", "out:shortage", "count", 0.45), 358),
        ("60", "3", ("out:overage", "b:e2", "count", 0.675), 363),
        ("60", "0", None, 360), ("0", "0", ("b:e2", "out:shortage", "count", 81.0), 0),
    ],
)
def test_a_count_is_what_is_there(cases, bottles, flow, left):
    book = Ledger()
    root = bottle(book)
    count(book, cases=cases, bottles=bottles)
    assert book.flows == ([flow] if flow else [])
    kept = state(book, root)
    assert kept["on_hand"] == left and kept["lpa_ul"] == left * 225_000
    assert kept["counted"] == {"at": "2025-10-02T09:00:00Z", "bottles": left, "entry": f"e{book.count}"}
    if not left:
        assert (kept["mass_g"], kept["volume_ml"]) == (0, 0)


def test_a_count_of_what_nobody_knows_moves_nothing():
    book = Ledger()
    count(book, cases="1")
    assert book.flows == [] and not any(key[:2] == "b:" for key in book.states)
