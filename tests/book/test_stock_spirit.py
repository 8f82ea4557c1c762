"""What fruit, ferment, run, gauge and cask move, in worked examples.

Densities and strengths are OIML R 22 (1975), worked out apart from this code; the run R-25-02 and the bottling K-26-03
are invented and stand here as arithmetic examples whose balances close.
"""

from __future__ import annotations

import json

import pytest

from tests.book.conftest import C1, C2, F1, R1, R2, R3, S1, T1, T2, fruit, gauge
from tests.book.told import Told, about, fill, start
from webapp.book.cards import card
from webapp.book.fold import fold
from webapp.book.house import registry
from webapp.book.record.store import Book


@pytest.fixture
def told(book: Book) -> Told:
    return start(book)


def test_fruit_is_mass_from_the_grower(told: Told) -> None:
    first = told.say(fruit, F1, "1680")  # 1620 kg net
    assert told.flows(first) == [("out:grower", f"v:{F1}", 0.0, 1620.0)]
    told.say(fruit, F1, "160")
    held = told.holds(F1)
    assert (held["fill"], held["mass_kg"], held["lpa_l"], held["account"]) == (first, 1720.0, None, "production")
    assert len(held["sources"]) == 2


def test_a_closed_ferment_is_in_the_book_and_loses_gas(told: Told) -> None:
    """1600 L at 5.1 % hold 81.6 L of pure alcohol. By weight: 1620 kg of fruit, 1600 L of SG 1.011 are 1617.6 kg."""
    told.say(fruit, F1, "1680")
    closed = told.say("ferment_closed", F1, final_gravity="1.011 SG", volume="1600 L", wash_strength="5.1 pct_vol")
    assert told.flows(closed) == [
        about(f"v:{F1}", "out:fermented", 0, 2.4), about("out:fermented", f"v:{F1}", 81.6, 0)
    ]
    held = told.holds(F1)
    assert (held["volume_l"], held["strength_pct"]) == (1600.0, pytest.approx(5.1))


def the_run(told: Told) -> tuple[str, dict[str, str]]:
    """Run R-25-02: 482 L of wash at 5.1 % with 14.9 L of feints at 28.8 %; the fermenter is closed at 1600 L."""
    told.say(fruit, F1, "1680")
    told.say("ferment_closed", F1, final_gravity="1.011 SG", volume="1600 L", wash_strength="5.1 pct_vol")
    told.say(gauge, R3, "14.9", "28.8")
    run = told.say("charge", S1, run_name="R-25-02", from_vessel=F1, wash="482 L", wash_strength="5.1 pct_vol",
                   feints="14.9 L", feints_strength="28.8 pct_vol", feints_from=R3, heads_to=R1, hearts_to=R2,
                   tails_to=R3)
    told.say("run_end", S1, reason="strength")
    parts = {}
    for part, mark, litres, pct in (("heads", R1, "1.4", "78.9"), ("hearts", R2, "32.3", "70.5"),
                                    ("tails", R3, "14.3", "28.2")):
        parts[part] = told.say("fraction_gauge", mark, still=S1, fraction=part, remnant="0 L",
                               remnant_strength="0 pct_vol", volume=f"{litres} L", temp="20 degC",
                               strength=f"{pct} pct_vol", goes_to="stays")
    parts["stillage"] = told.say("fraction_gauge", S1, still=S1, fraction="stillage", volume="449 L", temp="20 degC",
                                 strength="0.16 pct_vol", goes_to="drain")
    return run, parts


def test_a_run_gives_back_what_went_in(told: Told) -> None:
    """24.582 + 4.291 = 28.873 in; 1.105 + 22.772 + 4.033 + 0.718 = 28.628 out; 0.245 not accounted for, 0.85 %."""
    run, parts = the_run(told)
    flows = told.flows(run)
    assert [flow[:2] for flow in flows] == [(f"v:{F1}", f"r:{run}"), (f"v:{R3}", f"r:{run}")]
    assert [flow[2] for flow in flows] == pytest.approx([24.582, 4.2912], abs=1e-6)
    assert flows[0][3] == pytest.approx(1617.6 * 482 / 1600, abs=0.01)  # its share of the mash
    assert told.flows(parts["hearts"]) == [about(f"r:{run}", f"v:{R2}", 22.7715, 28.53)]
    assert told.flows(parts["stillage"])[0][:3] == (f"r:{run}", "out:stillage", pytest.approx(0.7184))
    assert told.sum_of(f"r:{run}") == 0
    assert told.sum_of("out:not_accounted") == pytest.approx(0.2458, abs=0.001)
    # The feints can was emptied by the charge, and holds a new fill now.
    assert told.holds(R3)["fill"] == parts["tails"]
    assert told.holds(F1)["volume_l"] == pytest.approx(1118)
    assert told.holds(F1)["charged"]


def test_a_fraction_gauged_after_the_stillage_comes_back_from_what_was_not_accounted_for(told: Told) -> None:
    run, _ = the_run(told)
    late = told.say("fraction_gauge", R1, still=S1, fraction="heads", remnant="1.4 L", remnant_strength="78.9 pct_vol",
                    volume="1.6 L", temp="20 degC", strength="78.9 pct_vol", goes_to="stays")
    flows = told.flows(late)
    assert [flow[:2] for flow in flows] == [("out:not_accounted", f"r:{run}"), (f"r:{run}", f"v:{R1}")]
    assert flows[1][2] == pytest.approx(0.2 * 0.789, abs=1e-5)


def test_a_remnant_is_not_of_the_run(told: Told) -> None:
    """10 L at 60 % stood in the receiver, the book had 9.9 L; 40 L at 66.0 % after: 26.4 - 6.0 = 20.4 L of the run."""
    told.say(gauge, R2, "9.9", "60.0")
    before = told.holds(R2)["fill"]
    run = told.say("charge", S1, from_vessel=F1, wash="450 L", wash_strength="6 pct_vol")
    part = told.say("fraction_gauge", R2, still=S1, fraction="hearts", remnant="10 L", remnant_strength="60 pct_vol",
                    volume="40 L", temp="20 degC", strength="66 pct_vol", goes_to="stays")
    flows = told.flows(part)
    assert flows[0] == about("out:gauge_difference", f"v:{R2}", 0.06, 0.09)
    assert flows[1][:3] == (f"r:{run}", f"v:{R2}", pytest.approx(20.4))
    held = told.holds(R2)
    assert (held["fill"], held["lpa_l"]) == (before, pytest.approx(26.4))


def test_low_wines_of_three_runs_are_charged_and_the_receiver_is_empty(told: Told) -> None:
    """140.5 L at 24.1 % are 33.86 L of pure alcohol; a charge of 140.6 L read a little high leaves nothing behind."""
    told.say(gauge, R2, "140.5", "24.1")
    run = told.say("charge", S1, from_vessel=R2, wash="140.6 L", wash_strength="24.1 pct_vol")
    assert told.flows(run) == [
        about("out:gauge_difference", f"v:{R2}", 0.0241, 0.097), about(f"v:{R2}", f"r:{run}", 33.8846, 136.22)
    ]
    assert told.holds(R2) is None


def test_a_gauge_sets_the_stock_and_books_the_difference(told: Told) -> None:
    """100 L at 60 % weigh 90.911 kg (909.11 kg/m3)."""
    first = told.say(gauge, T1, "100", "60.0", purpose="opening")
    assert told.flows(first) == [about("out:opening", f"v:{T1}", 60.0, 90.911)]
    second = told.say(gauge, T1, "99", "60.0")
    assert told.flows(second) == [about(f"v:{T1}", "out:gauge_difference", 0.6, 0.909)]
    third = told.say(gauge, T1, "0", "0")
    assert told.flows(third) == [about(f"v:{T1}", "out:gauge_difference", 59.4, 90.0)]
    assert told.holds(T1) is None


def test_a_move_between_accounts_names_both(told: Told) -> None:
    """81000 lb at 190 proof are 22650.8 proof gallons (27 CFR 30.64); half of it goes to storage in another tank."""
    registry.put_vessel(told.book, {"mark": T1, "capacity_l": 60000}, "JK")
    registry.put_vessel(told.book, {"mark": T2, "capacity_l": 60000}, "JK")
    told.say("gauge", T1, net_weight="81000 lb", strength="190 proof")
    moved = told.say("account_move", T1, serial="7", from_account="production", to_account="storage", to_vessel=T2,
                     purpose="deposit", spirit="plum", distilling_strength="190 proof", net_weight="40500 lb",
                     strength="190 proof")
    rows = told.book.query("SELECT * FROM flows WHERE entry = ? ORDER BY n", (moved,))
    assert [(row["source_account"], row["target_account"]) for row in rows] == [
        ("processing", "production"), ("production", "storage")
    ]
    assert rows[0]["source"] == rows[0]["target"] == f"v:{T1}"
    proof_gallons = rows[1]["lpa_ul"] / 1e6 / 1.9018  # litres at 20 degC in a proof gallon, worked by OIML R 22
    assert proof_gallons == pytest.approx(22650.84 / 2, rel=2e-5)
    assert told.holds(T2)["distilled_pct"] == pytest.approx(told.holds(T1)["strength_pct"], abs=0.1)
    gone = told.say("account_move", T2, serial="8", from_account="storage", to_account="removed", purpose="tax_paid",
                    spirit="plum", distilling_strength="190 proof", net_weight="40500 lb",
                    strength="190 proof")
    assert [flow[:2] for flow in told.flows(gone)] == [(f"v:{T2}", "out:removed")]
    assert told.holds(T2) is None


def test_pounds_go_by_the_gauging_rule_and_kilograms_by_mass(told: Told) -> None:
    """500 lb at 120 proof are 78.88 proof gallons (27 CFR 30.64); the record keeps the pounds. 226.796 kg of the same
    are 78.88 by OIML R 22 in air too, and 78.79 if the air is left out.
    """
    by_pounds = told.say("gauge", T1, net_weight="500 lb", strength="120 proof", purpose="opening")
    assert told.flows(by_pounds)[0][2] == pytest.approx(78.88 * 1.9018, abs=0.003)
    kept = told.book.query("SELECT body FROM entries WHERE id = ?", (by_pounds,))[0]["body"]
    assert json.loads(kept)["values"]["net_weight"] == {"raw": "500", "unit": "lb"}
    by_kilograms = told.say("gauge", T2, net_weight="226.796185 kg", strength="120 proof", purpose="opening")
    assert told.flows(by_kilograms)[0][2] == pytest.approx(78.8794 * 1.9018, abs=0.003)
    cask = fill(told, C1, "46.3", "206.4", "59.7")
    grown = told.say("cask_regauge", C1, gross="455 lb", strength="59.7 pct_vol", temp="12 degC", condition="tight")
    assert told.flows(cask)[0][2] - told.flows(grown)[0][2] == pytest.approx(  # 455 lb are 206.3845 kg
        (455 * 0.45359237 - 46.3) * 0.6570, abs=0.03)
    poured = told.say("top_up", C1, work="top_up", from_vessel=T2, net_weight="10 lb")
    assert told.flows(poured)[0][2] == pytest.approx(10 * 0.15776 * 1.9018, abs=0.001)


def test_a_part_by_weight_is_weighed_in_air(told: Told) -> None:
    """10 kg on the scale are 10.0118 kg of spirit of 60 %: 1.2 kg/m3 of air (OIML R 111), 909.11 and 8000 kg/m3."""
    told.say(gauge, T1, "500", "60", purpose="opening")
    lost = told.say("loss", T1, cause="spill", net_weight="10 kg", found="JK", done="nothing")
    assert told.flows(lost) == [about(f"v:{T1}", "out:spill", 6.607, 10.012)]


def test_a_weight_without_a_strength_is_no_volume(told: Told) -> None:
    """Nobody knows what stood there, nor how strong it was: what is left is what the scale showed."""
    lost = told.say("loss", T1, cause="spill", net_weight="10 kg", found="JK", done="nothing")
    (_, _, pure, mass), *more = told.flows(lost)
    assert (pure, mass, more) == (0, 10.0, [])


def test_a_cask_fill_keeps_what_it_was_filled_with(told: Told) -> None:
    """160.1 kg at 59.7 %, in air: 909.79 kg/m3, 176.18 L, 105.18 L of pure alcohol, 160.29 kg of mass."""
    told.say(gauge, T1, "300", "59.7")
    filled = fill(told, C1, "46.3", "206.4", "59.7")
    assert told.flows(filled) == [about(f"v:{T1}", f"v:{C1}", 105.18, 160.29)]
    held = told.holds(C1)
    assert held["fill"] == filled
    assert {name: held[name] for name in ("lot", "what", "use", "tare_kg", "account")} == {
        "lot": "L-01", "what": "plum", "use": "used", "tare_kg": 46.3, "account": "storage"
    }
    assert held["fill_strength_pct"] == 59.7
    shown = card(told.book, C1)
    assert shown is not None
    assert (shown["place"], shown["holds"]["lot"], shown["context"]["tare_kg"]) == ("CELL-A1", "L-01", 46.3)
    again = told.say("cask_regauge", C1, gross="205.4 kg", strength="59.5 pct_vol", temp="12 degC", condition="tight")
    assert [flow[:2] for flow in told.flows(again)] == [(f"v:{C1}", "out:evaporation")]
    leak = told.say("cask_regauge", C1, gross="190 kg", strength="59.5 pct_vol", temp="12 degC", condition="leaking")
    assert [flow[:2] for flow in told.flows(leak)] == [(f"v:{C1}", "out:leak")]
    assert told.holds(C1)["fill"] == filled


def test_a_cask_is_topped_up_and_is_as_young_as_its_youngest_part(told: Told) -> None:
    told.say(gauge, T1, "500", "60")
    one = fill(told, C1, "46.3", "150", "60")
    two = fill(told, C2, "49.8", "160", "60")
    topped = told.say("top_up", C1, work="top_up", from_vessel=C2, net_weight="10 kg")
    assert told.flows(topped) == [about(f"v:{C2}", f"v:{C1}", 6.608, 10.012)]  # 10 kg x 1.00117 / 0.90911 kg/L x 60 %
    assert told.holds(C1)["fill"] == one
    ages = [fold.load_state(told.book, f"v:{mark}")["holds"]["aged_since"] for mark in (C1, C2)]
    assert ages[0] == ages[1]
    recask = told.say("top_up", C1, work="recask", from_vessel=C2, net_weight="95 kg")
    assert [flow[:2] for flow in told.flows(recask)] == [(f"v:{C2}", f"v:{C1}"), (f"v:{C2}", "out:soakage")]
    assert told.holds(C2) is None
    fills = told.book.query("SELECT source_fill, target_fill FROM flows WHERE entry = ? AND target_fill <> ''",
                            (recask,))
    assert fills == [{"source_fill": two, "target_fill": one}]


def test_a_moved_cask_has_another_place_and_the_same_stock(told: Told) -> None:
    told.say(gauge, C1, "200", "60", purpose="opening")
    moved = told.say("cask_move", C1, from_place="CELL-A1", to_place="LOFT-J6")
    assert told.flows(moved) == []
    assert (card(told.book, C1) or {})["place"] == "LOFT-J6"


def test_a_sample_leaves_at_the_strength_of_its_vessel(told: Told) -> None:
    """3 x 0.1 L at 60 %: 0.18 L of pure alcohol, 0.273 kg."""
    told.say(gauge, C1, "200", "60", purpose="opening")
    taken = told.say("sample", C1, size="100 mL", number="3 count", purpose="analysis", went="outside_lab",
                     lab="Ostrey laboratory")
    assert told.flows(taken) == [about(f"v:{C1}", "out:sample", 0.18, 0.273)]
    back = told.say("sample", C1, size="100 mL", number="1 count", purpose="tasting", went="returned")
    assert told.flows(back) == []


def test_losses_and_destruction_leave_by_their_own_accounts(told: Told) -> None:
    told.say(gauge, T1, "100", "60", purpose="opening")
    spilt = told.say("loss", T1, cause="spill", volume="5 L", found="NS, told JK", done="cleaned")
    assert told.flows(spilt) == [about(f"v:{T1}", "out:spill", 3.0, 4.546)]
    told.say(gauge, C1, "200", "60", purpose="opening")
    gone = told.say("loss", C1, cause="theft", whole="yes", found="NS, told JK", done="reported")
    assert told.flows(gone) == [about(f"v:{C1}", "out:missing", 120.0, 181.82)]
    assert told.holds(C1) is None
    told.say(gauge, R1, "28.5", "79.3", purpose="opening")  # heads of the season: 22.6 L of pure alcohol
    burnt = told.say("destruction", R1, what="heads", volume="28.5 L", temp="20 degC", strength="79.3 pct_vol",
                     place="yard", manner="made unfit", withdrawn="no", watched_by="JK, TB")
    assert [flow[:3] for flow in told.flows(burnt)] == [(f"v:{R1}", "out:destroyed", pytest.approx(22.60, abs=0.005))]
    assert told.holds(R1) is None
