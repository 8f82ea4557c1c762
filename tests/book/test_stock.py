"""What each kind moves, in worked examples: flows between accounts, and what the vessels hold after them.

Densities and strengths are OIML R 22 (1975), worked out apart from this code; the bottling of K-26-03 and the run R-25-02
are invented, and stand here as arithmetic examples whose balances close.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest

from tests.book.conftest import C1, C2, F1, NOW, R1, R2, R3, S1, T1, T2, answer, entry, fruit, gauge, send, settled
from webapp.book import accounts, fold, registry
from webapp.book.cards import card
from webapp.book.queries import for_entry
from webapp.book.store import Book, open_book

CAN = "FE1"


class Told:
    """A book told line by line, ten minutes after one another; each line must be entered."""

    def __init__(self, book: Book) -> None:
        self.book, self.minutes, self.seq = book, 24 * 60, 0

    def say(self, make: Any, *args: Any, **more: Any) -> str:
        """Hand in one entry; return its id. A kind's name stands for an entry of it."""
        self.minutes -= 10
        self.seq += 1
        make, args = (entry, (make, *args)) if isinstance(make, str) else (make, args)
        one = make(*args, read_at=NOW - timedelta(minutes=self.minutes), seq=self.seq, **more)
        assert settled(send(self.book, one))[0] in ("entered", "queried"), send(self.book, one)
        standing = self.book.one("SELECT standing FROM folded WHERE entry = ?", (one["id"],))
        assert standing is None or standing["standing"] == "entered", for_entry(self.book, one["id"])
        assert accounts.verify(self.book) == []
        return str(one["id"])

    def flows(self, entry_id: str) -> list[tuple[str, str, float, float]]:
        """Return (source, target, litres of pure alcohol, kg) of the flows of an entry."""
        rows = self.book.query("SELECT * FROM flows WHERE entry = ? ORDER BY n", (entry_id,))
        return [(row["source"], row["target"], row["lpa_ul"] / 1e6, row["mass_g"] / 1e3) for row in rows]

    def holds(self, mark: str) -> Any:
        """Return what a vessel holds."""
        return fold.state(self.book, f"v:{mark}")["holds"]

    def sum_of(self, account: str) -> float:
        """Return the pure alcohol on an account. [L]"""
        return accounts.balances(self.book).get(account, (0, 0, 0))[0] / 1e6


@pytest.fixture
def told(book: Book) -> Iterator[Told]:
    registry.put_vessel(book, {"mark": C1, "tare_kg": 46.3, "place": "CELL-A1"}, "JK")
    registry.put_vessel(book, {"mark": C2, "tare_kg": 49.8, "place": "CELL-A6"}, "JK")
    yield Told(book)


def about(*flow: Any, rel: float = 1e-3, abs: float = 0.006) -> Any:
    """A flow as expected: accounts exactly, amounts about."""
    return (*flow[:2], pytest.approx(flow[2], rel=rel, abs=abs), pytest.approx(flow[3], rel=rel, abs=0.06))


# ---- fruit to spirit -------------------------------------------------------------------------------------------------


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
    ]  # fmt: skip
    held = told.holds(F1)
    assert (held["volume_l"], held["strength_pct"]) == (1600.0, pytest.approx(5.1))


def the_run(told: Told) -> tuple[str, dict[str, str]]:
    """Run R-25-02: 482 L of wash at 5.1 % with 14.9 L of feints at 28.8 %; the fermenter is closed at 1600 L."""
    told.say(fruit, F1, "1680")
    told.say("ferment_closed", F1, final_gravity="1.011 SG", volume="1600 L", wash_strength="5.1 pct_vol")
    told.say(gauge, R3, "14.9", "28.8")
    run = told.say("charge", S1, run_name="R-25-02", from_vessel=F1, wash="482 L", wash_strength="5.1 pct_vol",
                   feints="14.9 L", feints_strength="28.8 pct_vol", feints_from=R3, heads_to=R1, hearts_to=R2,
                   tails_to=R3)  # fmt: skip
    told.say("run_end", S1, reason="strength")
    parts = {}
    for part, mark, litres, pct in (("heads", R1, "1.4", "78.9"), ("hearts", R2, "32.3", "70.5"),
                                    ("tails", R3, "14.3", "28.2")):  # fmt: skip
        parts[part] = told.say("fraction_gauge", mark, still=S1, fraction=part, remnant="0 L",
                               remnant_strength="0 pct_vol", volume=f"{litres} L", temp="20 degC",
                               strength=f"{pct} pct_vol", goes_to="stays")  # fmt: skip
    parts["stillage"] = told.say("fraction_gauge", S1, still=S1, fraction="stillage", volume="449 L", temp="20 degC",
                                 strength="0.16 pct_vol", goes_to="drain")  # fmt: skip
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
                    volume="1.6 L", temp="20 degC", strength="78.9 pct_vol", goes_to="stays")  # fmt: skip
    flows = told.flows(late)
    assert [flow[:2] for flow in flows] == [("out:not_accounted", f"r:{run}"), (f"r:{run}", f"v:{R1}")]
    assert flows[1][2] == pytest.approx(0.2 * 0.789, abs=1e-5)


def test_a_remnant_is_not_of_the_run(told: Told) -> None:
    """10 L at 60 % stood in the receiver, the book had 9.9 L; 40 L at 66.0 % after: 26.4 - 6.0 = 20.4 L of the run."""
    told.say(gauge, R2, "9.9", "60.0")
    before = told.holds(R2)["fill"]
    run = told.say("charge", S1, from_vessel=F1, wash="450 L", wash_strength="6 pct_vol")
    part = told.say("fraction_gauge", R2, still=S1, fraction="hearts", remnant="10 L", remnant_strength="60 pct_vol",
                    volume="40 L", temp="20 degC", strength="66 pct_vol", goes_to="stays")  # fmt: skip
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
    ]  # fmt: skip
    assert told.holds(R2) is None


# ---- gauges, accounts, casks -----------------------------------------------------------------------------------------


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
                     strength="190 proof")  # fmt: skip
    rows = told.book.query("SELECT * FROM flows WHERE entry = ? ORDER BY n", (moved,))
    assert [(row["source_account"], row["target_account"]) for row in rows] == [
        ("processing", "production"), ("production", "storage")
    ]  # fmt: skip
    assert rows[0]["source"] == rows[0]["target"] == f"v:{T1}"
    proof_gallons = rows[1]["lpa_ul"] / 1e6 / 1.9018  # litres at 20 degC in a proof gallon, worked by OIML R 22
    # The tables count pounds in air, the book takes a net weight for mass: 0.12 % (docs/numbers.md).
    assert proof_gallons == pytest.approx(22650.8 / 2 / 1.0012, rel=3e-4)
    assert told.holds(T2)["distilled_pct"] == pytest.approx(told.holds(T1)["strength_pct"], abs=0.1)
    gone = told.say("account_move", T2, serial="8", from_account="storage", to_account="removed", purpose="tax_paid",
                    spirit="plum", distilling_strength="190 proof", net_weight="40500 lb", strength="190 proof")  # fmt: skip
    assert [flow[:2] for flow in told.flows(gone)] == [(f"v:{T2}", "out:removed")]
    assert told.holds(T2) is None


def fill(told: Told, mark: str, tare: str, gross: str, pct: str) -> str:
    return told.say("cask_fill", mark, from_vessel=T1, lot="L-01", what="plum", tare=f"{tare} kg", gross=f"{gross} kg",
                    temp="14 degC", strength=f"{pct} pct_vol", use="used", soaked="yes", place="CELL-A1")  # fmt: skip


def test_a_cask_fill_keeps_what_it_was_filled_with(told: Told) -> None:
    """160.1 kg at 59.7 %: 909.79 kg/m3, 175.97 L, 105.06 L of pure alcohol."""
    told.say(gauge, T1, "300", "59.7")
    filled = fill(told, C1, "46.3", "206.4", "59.7")
    assert told.flows(filled) == [about(f"v:{T1}", f"v:{C1}", 105.06, 160.1)]
    held = told.holds(C1)
    assert held["fill"] == filled
    assert {name: held[name] for name in ("lot", "what", "use", "tare_kg", "account")} == {
        "lot": "L-01", "what": "plum", "use": "used", "tare_kg": 46.3, "account": "storage"
    }  # fmt: skip
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
    assert told.flows(topped) == [about(f"v:{C2}", f"v:{C1}", 6.6, 10.0)]  # 10 kg / 0.90911 kg/L x 60 %
    assert told.holds(C1)["fill"] == one
    ages = [fold.state(told.book, f"v:{mark}")["holds"]["aged_since"] for mark in (C1, C2)]
    assert ages[0] == ages[1]
    recask = told.say("top_up", C1, work="recask", from_vessel=C2, net_weight="95 kg")
    assert [flow[:2] for flow in told.flows(recask)] == [(f"v:{C2}", f"v:{C1}"), (f"v:{C2}", "out:soakage")]
    assert told.holds(C2) is None
    fills = told.book.query("SELECT source_fill, target_fill FROM flows WHERE entry = ? AND target_fill <> ''", (recask,))
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
                     lab="Ostrey laboratory")  # fmt: skip
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
                     place="yard", manner="made unfit", withdrawn="no", watched_by="JK, TB")  # fmt: skip
    assert [flow[:3] for flow in told.flows(burnt)] == [(f"v:{R1}", "out:destroyed", pytest.approx(22.60, abs=0.005))]
    assert told.holds(R1) is None


# ---- blend and bottle ------------------------------------------------------------------------------------------------


def dumped(told: Told) -> tuple[str, str]:
    """The casks of K-26-03, filled as the regauge before found them."""
    told.say("gauge", C1, net_weight="160.1 kg", strength="59.7 pct_vol", purpose="opening", what="plum")
    told.say("gauge", C2, net_weight="182.5 kg", strength="60.5 pct_vol", purpose="opening", what="plum")
    one = told.say("dump", C1, gross="205.7 kg", empty="52.0 kg", temp="12 degC", strength="59.6 pct_vol", to_vessel=T1)
    two = told.say("dump", C2, gross="231.5 kg", empty="55.3 kg", temp="12 degC", strength="60.4 pct_vol", to_vessel=T1)
    return one, two


def test_a_dumped_cask_keeps_its_soakage_and_is_empty(told: Told) -> None:
    """C-001: gross 205.7, old tare 46.3, empty now 52.0: 153.7 kg at 59.6 % dumped, 100.66 L of pure alcohol; 5.7 kg kept."""
    one, two = dumped(told)
    assert told.flows(one) == [
        about(f"v:{C1}", "out:evaporation", 0.665, 0.7), about(f"v:{C1}", f"v:{T1}", 100.66, 153.7),
        about(f"v:{C1}", "out:soakage", 3.73, 5.7),
    ]  # fmt: skip
    assert told.flows(two)[1] == about(f"v:{C2}", f"v:{T1}", 117.18, 176.2)
    assert told.holds(C1) is None
    vat = told.holds(T1)
    # 168.9 and 194.0 L make 362.9 L of 60.0 %: 329.9 kg, 217.84 L of pure alcohol
    assert vat["mass_kg"] == pytest.approx(329.9)
    assert vat["lpa_l"] == pytest.approx(217.84, abs=0.02)
    assert vat["volume_l"] == pytest.approx(362.9, abs=0.1)
    assert (vat["fill"], vat["account"]) == (one, "processing")


def test_water_is_reckoned_by_mass_and_moves_no_alcohol(told: Told) -> None:
    """B10: 100 L of 60 % to 45 %: 34.36 kg of water, 133.33 L. By the volume rule 33.33 L, and the tank is too strong."""
    told.say(gauge, T1, "100", "60", purpose="opening")
    reduced = told.say("reduce", T1, target="45 pct_vol", water="34.36 kg", strength="45.0 pct_vol", temp="20 degC",
                       volume="133.3 L")  # fmt: skip
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
    line = fold.state(told.book, f"v:{T1}")["recent"]["reduce"][-1]
    assert line["entry"] == reduced
    assert line["figures"]["needed"] == pytest.approx(57.59, abs=0.01)


def test_the_contraction_that_was_forgotten(told: Told) -> None:
    """K-26-03: 121.0 kg of water by the volume rule: 45.4 % and 480.2 L; by mass 124.9 kg would have been right."""
    dumped(told)
    told.say("reduce", T1, target="45 pct_vol", water="121.0 kg")
    held = told.holds(T1)
    assert held["strength_pct"] == pytest.approx(45.4, abs=0.05)
    assert held["volume_l"] == pytest.approx(480.2, abs=0.3)
    assert held["lpa_l"] == pytest.approx(217.84, abs=0.02)
    told.say("reduce", T1, target="45 pct_vol", water="3.9 kg")
    assert told.holds(T1)["strength_pct"] == pytest.approx(45.0, abs=0.05)


def test_what_the_filter_keeps_is_booked_and_a_gain_is_not_netted(told: Told) -> None:
    """484.1 L at 45.0 % to 481.2 L at 45.0 %: 1.305 L of pure alcohol."""
    told.say(gauge, T1, "484.1", "45.0", purpose="opening")
    lost = told.say("chill_filter", T1, temp="-2 degC", sheets="K100", volume_before="484.1 L",
                    strength_before="45.0 pct_vol", volume_after="481.2 L", strength_after="45.0 pct_vol",
                    to_vessel=T2)  # fmt: skip
    assert told.flows(lost)[0] == about(f"v:{T1}", "out:filter_loss", 1.305, 2.72)
    assert told.flows(lost)[1][:3] == (f"v:{T1}", f"v:{T2}", pytest.approx(216.54))
    assert told.holds(T1) is None
    gain = told.say("chill_filter", T2, temp="-2 degC", sheets="K100", volume_before="481 L",
                    strength_before="45.0 pct_vol", volume_after="482 L", strength_after="45.0 pct_vol")  # fmt: skip
    assert told.flows(gain) == [about("out:gauge_difference", f"v:{T2}", 0.45, 0.94)]


def test_a_bottling_account_closes(told: Told) -> None:
    """481.2 L at 45.0 %: 959 filled, 2 broken, 957 good x 0.5 L, 0.7 L of samples, 1.0 L of heel and line."""
    told.say("bottling_gauge", T1, batch="K-26-03", volume="481.2 L", temp="20 degC", strength="45.0 pct_vol",
             label_strength="45 pct_vol")  # fmt: skip
    told.say("sample", T1, size="0.7 L", number="1 count", purpose="analysis", went="destroyed")
    told.say("bottle_check", T1, line="1", tested="6 count", fill_found="100.1 pct", strength_found="45 pct_vol",
             labels_right="yes")  # fmt: skip
    closed = told.say("bottling_close", T1, filled="959 count", broken="2 count", library="3 count",
                      bottle_size="0.5 L", per_case="6 count", case_from="1", case_to="159", odd_case="160R",
                      loss="1.0 L", tank_empty="yes")  # fmt: skip
    flows = told.flows(closed)
    assert [flow[:3] for flow in flows[:3]] == [
        (f"v:{T1}", "out:bottled", pytest.approx(957 * 0.5 * 0.45, abs=1e-3)),
        (f"v:{T1}", "out:spill", pytest.approx(0.45, abs=1e-5)),
        (f"v:{T1}", "out:filter_loss", pytest.approx(0.45, abs=1e-5)),
    ]
    assert sum(flow[2] for flow in flows[3:]) < 0.001  # what rounding leaves
    assert told.holds(T1) is None
    bottling = fold.state(told.book, f"b:{closed}")
    assert (bottling["good"], bottling["case_from"], bottling["case_to"], bottling["batch"]) == (957, "1", "159", "K-26-03")
    row = told.book.one("SELECT tank, batch, odd_case FROM bottlings WHERE id = ?", (closed,))
    assert row == {"tank": T1, "batch": "K-26-03", "odd_case": "160R"}


def test_hidden_strength_is_found_by_the_solids(told: Told) -> None:
    """27 CFR 30.32(b): 0.5 g in 100 mL hides 2.0 proof, about one per cent by volume; under 0.4 g nothing is added."""
    for solids, pct in (("500 mg_100mL", 46.0), ("300 mg_100mL", 45.0)):
        told.say("bottling_gauge", T1, batch="K", volume="100 L", temp="20 degC", strength="45.0 pct_vol",
                 label_strength="45 pct_vol", obscuration=solids)  # fmt: skip
        line = fold.state(told.book, f"v:{T1}")["recent"]["bottling_gauge"][-1]
        assert line["figures"]["true_strength"] == pytest.approx(pct, abs=0.02)
        assert told.holds(T1)["lpa_l"] == pytest.approx(pct, abs=0.02)


# ---- counts, checks, what moves nothing ------------------------------------------------------------------------------


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
    counted = told.say("stock_count", T1, found="here", volume="99.5 L", temp="20 degC", strength="60 pct_vol", signed="NS")
    assert told.flows(counted) == [about(f"v:{T1}", "out:gauge_difference", 0.3, 0.455)]
    told.say(gauge, C1, "200", "60", purpose="opening")
    missing = told.say("stock_count", C1, place="CELL-A1", found="nothing", signed="NS")
    assert [query["code"] for query in for_entry(told.book, missing)] == ["cask_missing"]
    assert told.flows(missing) == []


def test_an_instrument_remembers_its_last_good_check(told: Told) -> None:
    said = {"instrument": "TH-2", "against": "ice", "expected": "0 plain", "correction": "0 plain", "in_use": "yes"}
    told.say("instrument_check", found="0 plain", result="good", **said)
    good_at = fold.state(told.book, "i:TH-2")["last_good_at"]
    told.say("instrument_check", found="0.9 plain", result="failed", **said)
    state = fold.state(told.book, "i:TH-2")
    assert (state["last_good_at"], bool(state["failed_at"]), len(state["checks"])) == (good_at, True, 2)
    told.say("instrument_check", found="0 plain", result="good", **said)
    assert fold.state(told.book, "i:TH-2")["failed_at"] is None


def test_what_moves_nothing_is_remembered_with_its_vessel(told: Told) -> None:
    told.say(fruit, F1, "900")
    told.say("addition", F1, what="sugar", lot_no="S1", amount="20 kg", is_sugar="yes")
    assert told.holds(F1)["sugar_added"] is True
    told.say("cleaning", T1, agent="caustic 2 %, 20 min", rinse_ph="7.1 pH", entered="no")
    scores = {f"{part}_score": "7 count" for part in ("nose", "mouth", "wood", "fault")}
    told.say(gauge, C1, "200", "60", purpose="opening")
    told.say("tasting_note", C1, reduced_to="22 pct_vol", decision="hold", **scores)
    for mark, kind in ((F1, "addition"), (T1, "cleaning"), (C1, "tasting_note")):
        assert len(fold.state(told.book, f"v:{mark}")["recent"][kind]) == 1


def test_nobody_enters_a_vessel_without_a_permit(told: Told) -> None:
    one = entry("cleaning", T1, agent="water", rinse_ph="7 pH", entered="yes")
    assert settled(send(told.book, one)) == ["refused"]


# ---- never less than nothing -----------------------------------------------------------------------------------------


def test_more_taken_than_the_book_has_is_asked_about_and_booked_first(told: Told) -> None:
    told.say(gauge, T1, "100", "60", purpose="opening")
    filled = fill(told, C1, "46.3", "146.3", "60")  # 100 kg: 110.0 L, 66.0 L of pure alcohol
    assert "source_short" in [query["code"] for query in for_entry(told.book, filled)]
    assert told.flows(filled) == [
        about("out:gauge_difference", f"v:{T1}", 6.0, 9.09), about(f"v:{T1}", f"v:{C1}", 66.0, 100.0)
    ]  # fmt: skip
    assert told.holds(T1) is None


def test_out_of_a_vessel_the_book_has_nothing_in(told: Told) -> None:
    filled = fill(told, C1, "46.3", "146.3", "60")
    assert "source_empty" in [query["code"] for query in for_entry(told.book, filled)]
    assert told.flows(filled) == [about("out:not_accounted", f"v:{C1}", 66.0, 100.0)]


def test_a_book_of_before_is_folded_anew(tmp_path: Path, told: Told) -> None:
    """A book whose last step was `fold` gets its flows when it is opened."""
    told.say(gauge, T1, "100", "60", purpose="opening")
    with told.book.write() as database:
        database.executescript(
            "DELETE FROM migrations WHERE name = 'stock'; DROP TABLE bottlings; DROP TABLE flows; CREATE TABLE flows (n);"
        )
    with open_book(told.book.path) as again:
        assert accounts.balances(again)[f"v:{T1}"].lpa_ul == 60_000_000
        assert again.one("SELECT value FROM settings WHERE name = 'fold_anew'") is None
