"""What blend and bottle, count and check move, in worked examples; and never less than nothing.

Densities and strengths are OIML R 22 (1975), worked out apart from this code; the run R-25-02 and the bottling K-26-03
are invented and stand here as arithmetic examples whose balances close.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.book.conftest import C1, C2, F1, T1, T2, answer, entry, fruit, gauge, send, settled
from tests.book.told import Told, about, fill, start
from webapp.book.cards import card
from webapp.book.fold import fold
from webapp.book.fold.queries import for_entry
from webapp.book.opening import open_book
from webapp.book.periods import accounts
from webapp.book.record.store import Book


@pytest.fixture
def told(book: Book) -> Told:
    return start(book)


def dumped(told: Told) -> tuple[str, str]:
    """The casks of K-26-03, filled as the regauge before found them."""
    told.say("gauge", C1, net_weight="160.1 kg", strength="59.7 pct_vol", purpose="opening", what="plum")
    told.say("gauge", C2, net_weight="182.5 kg", strength="60.5 pct_vol", purpose="opening", what="plum")
    one = told.say("dump", C1, gross="205.7 kg", empty="52.0 kg", temp="12 degC", strength="59.6 pct_vol", to_vessel=T1)
    two = told.say("dump", C2, gross="231.5 kg", empty="55.3 kg", temp="12 degC", strength="60.4 pct_vol", to_vessel=T1)
    return one, two


def test_a_dumped_cask_keeps_its_soakage_and_is_empty(told: Told) -> None:
    """C-001: gross 205.7, old tare 46.3, empty now 52.0: 153.7 kg at 59.6 % dumped, 5.7 kg kept. What the scale shows
    is 0.117 % short of the mass (1.2 kg/m3 of air, OIML R 111): 153.88 kg, 100.78 L pure.
    """
    one, two = dumped(told)
    assert told.flows(one) == [
        about(f"v:{C1}", "out:evaporation", 0.665, 0.7), about(f"v:{C1}", f"v:{T1}", 100.78, 153.88),
        about(f"v:{C1}", "out:soakage", 3.74, 5.71),
    ]
    assert told.flows(two)[1] == about(f"v:{C2}", f"v:{T1}", 117.32, 176.41)
    assert told.holds(C1) is None
    vat = told.holds(T1)
    # 169.1 and 194.2 L make 363.3 L of 60.0 %: 330.29 kg, 218.10 L of pure alcohol
    assert vat["mass_kg"] == pytest.approx(330.29, abs=0.01)
    assert vat["lpa_l"] == pytest.approx(218.10, abs=0.02)
    assert vat["volume_l"] == pytest.approx(363.3, abs=0.1)
    assert (vat["fill"], vat["account"]) == (one, "processing")


def test_water_is_reckoned_by_mass_and_moves_no_alcohol(told: Told) -> None:
    """B10: 100 L of 60 % to 45 %: 34.36 kg of water, 133.33 L. 33.33 L by the volume rule leave it too strong."""
    told.say(gauge, T1, "100", "60", purpose="opening")
    reduced = told.say("reduce", T1, target="45 pct_vol", water="34.36 kg", strength="45.0 pct_vol", temp="20 degC",
                       volume="133.3 L")
    assert told.flows(reduced) == [about("out:water", f"v:{T1}", 0.0, 34.36)]
    held = told.holds(T1)
    assert held["lpa_l"] == 60.0
    assert held["volume_l"] == pytest.approx(133.33, abs=0.01)
    assert held["strength_pct"] == pytest.approx(45.0, abs=0.005)
    assert held["reduced"]["planned_pct"] == pytest.approx(45.0, abs=0.005)
    assert held["reduced"]["measured_l"] == 133.3
    told.say(gauge, T1, "100", "60")
    told.say("reduce", T1, target="45 pct_vol", water_volume="33.33 L")
    assert told.holds(T1)["strength_pct"] > 45.2


def test_70_to_45_needs_57_59_kg(told: Told) -> None:
    told.say(gauge, T1, "100", "70", purpose="opening")
    reduced = told.say("reduce", T1, target="45 pct_vol", water="0 kg")
    line = fold.load_state(told.book, f"v:{T1}")["recent"]["reduce"][-1]
    assert line["entry"] == reduced
    assert line["figures"]["needed"] == pytest.approx(57.59, abs=0.01)


def test_the_contraction_that_was_forgotten(told: Told) -> None:
    """K-26-03: 121.0 kg of water by the volume rule: 45.4 % and 480.7 L; by mass 125.1 kg would have been right."""
    dumped(told)
    told.say("reduce", T1, target="45 pct_vol", water="121.0 kg")
    held = told.holds(T1)
    assert held["strength_pct"] == pytest.approx(45.4, abs=0.05)
    assert held["volume_l"] == pytest.approx(480.7, abs=0.3)
    assert held["lpa_l"] == pytest.approx(218.10, abs=0.02)
    told.say("reduce", T1, target="45 pct_vol", water="4.1 kg")
    assert told.holds(T1)["strength_pct"] == pytest.approx(45.0, abs=0.05)


def test_what_the_filter_keeps_is_booked_and_a_gain_is_not_netted(told: Told) -> None:
    """484.1 L at 45.0 % to 481.2 L at 45.0 %: 1.305 L of pure alcohol."""
    told.say(gauge, T1, "484.1", "45.0", purpose="opening")
    lost = told.say("chill_filter", T1, temp="-2 degC", sheets="K100", volume_before="484.1 L",
                    strength_before="45.0 pct_vol", volume_after="481.2 L", strength_after="45.0 pct_vol",
                    to_vessel=T2)
    assert told.flows(lost)[0] == about(f"v:{T1}", "out:filter_loss", 1.305, 2.72)
    assert told.flows(lost)[1][:3] == (f"v:{T1}", f"v:{T2}", pytest.approx(216.54))
    assert told.holds(T1) is None
    gain = told.say("chill_filter", T2, temp="-2 degC", sheets="K100", volume_before="481 L",
                    strength_before="45.0 pct_vol", volume_after="482 L", strength_after="45.0 pct_vol")
    assert told.flows(gain) == [about("out:gauge_difference", f"v:{T2}", 0.45, 0.94)]


def test_a_bottling_account_closes(told: Told) -> None:
    """481.2 L at 45.0 %: 959 filled, 2 broken, 957 good x 0.5 L, 0.7 L of samples, 1.0 L of heel and line."""
    told.say("bottling_gauge", T1, batch="K-26-03", volume="481.2 L", temp="20 degC", strength="45.0 pct_vol",
             label_strength="45 pct_vol")
    told.say("sample", T1, size="0.7 L", number="1 count", purpose="analysis", went="destroyed")
    told.say("bottle_check", T1, line="1", tested="6 count", fill_found="100.1 pct", strength_found="45 pct_vol",
             labels_right="yes")
    closed = told.say("bottling_close", T1, filled="959 count", broken="2 count", library="3 count",
                      bottle_size="0.5 L", per_case="6 count", case_from="1", case_to="159", odd_case="160R",
                      loss="1.0 L", tank_empty="yes")
    flows = told.flows(closed)
    assert [flow[:3] for flow in flows[:3]] == [
        (f"v:{T1}", f"b:{closed}", pytest.approx(957 * 0.5 * 0.45, abs=1e-3)),
        (f"v:{T1}", "out:spill", pytest.approx(0.45, abs=1e-5)),
        (f"v:{T1}", "out:filter_loss", pytest.approx(0.45, abs=1e-5)),
    ]
    assert sum(flow[2] for flow in flows[3:]) < 0.001  # what rounding leaves
    assert told.holds(T1) is None
    bottling = fold.load_state(told.book, f"b:{closed}")
    assert (bottling["good"], bottling["case_from"], bottling["case_to"], bottling["batch"]) == (957, "1", "159",
                                                                                                 "K-26-03")
    row = told.book.one("SELECT tank, batch, odd_case FROM bottlings WHERE id = ?", (closed,))
    assert row == {"tank": T1, "batch": "K-26-03", "odd_case": "160R"}


def test_hidden_strength_is_found_by_the_solids(told: Told) -> None:
    """27 CFR 30.32(b): 0.5 g in 100 mL hides 2.0 proof, about one per cent by volume; under 0.4 g nothing is added."""
    for solids, pct in (("500 mg_100mL", 46.0), ("300 mg_100mL", 45.0)):
        told.say("bottling_gauge", T1, batch="K", volume="100 L", temp="20 degC", strength="45.0 pct_vol",
                 label_strength="45 pct_vol", obscuration=solids)
        line = fold.load_state(told.book, f"v:{T1}")["recent"]["bottling_gauge"][-1]
        assert line["figures"]["true_strength"] == pytest.approx(pct, abs=0.02)
        assert told.holds(T1)["lpa_l"] == pytest.approx(pct, abs=0.02)


def test_two_casks_that_changed_places_are_a_swap_and_no_shortage(told: Told) -> None:
    for mark in (C1, C2):
        told.say(gauge, mark, "200", "60", purpose="opening")
    first = told.say("stock_count", C1, place="CELL-A6", found="here", signed="NS, gauger")
    assert [query["code"] for query in for_entry(told.book, first)] == ["place_differs"]
    second = told.say("stock_count", C2, place="CELL-A1", found="here", signed="NS, gauger")
    (query,) = for_entry(told.book, second)
    assert query["code"] == "places_swapped"
    assert "changed places" in query["words"]
    assert [(card(told.book, mark) or {})["place"] for mark in (C1, C2)] == ["CELL-A1", "CELL-A6"]  # not yet
    told.say(answer, second, "stands", "places_swapped")
    assert [(card(told.book, mark) or {})["place"] for mark in (C1, C2)] == ["CELL-A6", "CELL-A1"]
    assert told.flows(first) == told.flows(second) == []
    assert [told.holds(mark)["lpa_l"] for mark in (C1, C2)] == [120.0, 120.0]


def test_a_counted_tank_is_measured_and_a_missing_cask_is_asked_about(told: Told) -> None:
    told.say(gauge, T1, "100", "60", purpose="opening")
    counted = told.say("stock_count", T1, found="here", volume="99.5 L", temp="20 degC", strength="60 pct_vol",
                       signed="NS")
    assert told.flows(counted) == [about(f"v:{T1}", "out:gauge_difference", 0.3, 0.455)]
    empty = {"found": "here", "net_weight": "0 kg", "strength": "0 pct_vol", "signed": "NS"}  # as a round says it
    emptied = told.say("stock_count", T1, **empty)
    assert told.flows(emptied) == [about(f"v:{T1}", "out:gauge_difference", 59.7, 90.5)]
    assert fold.load_state(told.book, f"v:{T1}")["holds"] is None
    again = told.say("stock_count", T1, **empty)
    assert (told.flows(again), for_entry(told.book, again)) == ([], [])
    told.say(gauge, C1, "200", "60", purpose="opening")
    missing = told.say("stock_count", C1, place="CELL-A1", found="nothing", signed="NS")
    assert [query["code"] for query in for_entry(told.book, missing)] == ["cask_missing"]
    assert told.flows(missing) == []


def test_an_instrument_remembers_its_last_good_check(told: Told) -> None:
    said = {"instrument": "TH-2", "against": "ice", "expected": "0 plain", "correction": "0 plain", "in_use": "yes"}
    told.say("instrument_check", found="0 plain", result="good", **said)
    good_at = fold.load_state(told.book, "i:TH-2")["last_good_at"]
    told.say("instrument_check", found="0.9 plain", result="failed", **said)
    state = fold.load_state(told.book, "i:TH-2")
    assert (state["last_good_at"], bool(state["failed_at"]), len(state["checks"])) == (good_at, True, 2)
    told.say("instrument_check", found="0 plain", result="good", **said)
    assert fold.load_state(told.book, "i:TH-2")["failed_at"] is None


def test_what_moves_nothing_is_remembered_with_its_vessel(told: Told) -> None:
    told.say(fruit, F1, "900")
    told.say("addition", F1, what="sugar", lot_no="S1", amount="20 kg", is_sugar="yes")
    assert told.holds(F1)["sugar_added"] is True
    told.say("cleaning", T1, agent="caustic 2 %, 20 min", rinse_ph="7.1 pH", entered="no")
    scores = {f"{part}_score": "7 count" for part in ("nose", "mouth", "wood", "fault")}
    told.say(gauge, C1, "200", "60", purpose="opening")
    told.say("tasting_note", C1, reduced_to="22 pct_vol", decision="hold", **scores)
    for mark, kind in ((F1, "addition"), (T1, "cleaning"), (C1, "tasting_note")):
        assert len(fold.load_state(told.book, f"v:{mark}")["recent"][kind]) == 1


def test_nobody_enters_a_vessel_without_a_permit(told: Told) -> None:
    one = entry("cleaning", T1, agent="water", rinse_ph="7 pH", entered="yes")
    assert settled(send(told.book, one)) == ["refused"]


def test_more_taken_than_the_book_has_is_asked_about_and_booked_first(told: Told) -> None:
    told.say(gauge, T1, "100", "60", purpose="opening")
    filled = fill(told, C1, "46.3", "146.3", "60")  # 100 kg in air: 110.1 L, 66.08 L of pure alcohol
    assert "stock_short" in [query["code"] for query in for_entry(told.book, filled)]
    assert told.flows(filled) == [
        about("out:gauge_difference", f"v:{T1}", 6.08, 9.21), about(f"v:{T1}", f"v:{C1}", 66.08, 100.12)
    ]
    assert told.holds(T1) is None


def test_out_of_a_vessel_the_book_has_nothing_in(told: Told) -> None:
    filled = fill(told, C1, "46.3", "146.3", "60")
    assert "from_nothing" in [query["code"] for query in for_entry(told.book, filled)]
    assert told.flows(filled) == [about("out:not_accounted", f"v:{C1}", 66.08, 100.12)]


def test_a_book_of_before_is_folded_anew(tmp_path: Path, told: Told) -> None:
    """A book whose last step was `fold` gets its flows when it is opened."""
    told.say(gauge, T1, "100", "60", purpose="opening")
    with told.book.write() as database:
        database.executescript(
            "DELETE FROM migrations WHERE name IN ('stock', 'goods'); DROP TABLE bottlings; DROP TABLE fills; "
            "DROP TABLE dispatches; DROP TABLE month_sums; DROP TABLE flows; CREATE TABLE flows (n);"
        )
    with open_book(told.book.path) as again:
        assert accounts.balances(again)[f"v:{T1}"].lpa_ul == 60_000_000
        assert again.one("SELECT value FROM settings WHERE name = 'fold_anew'") is None
