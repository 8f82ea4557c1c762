"""A small year for the trace: three loads, two runs with feints carried over, three casks, a vat, a bottling."""

from __future__ import annotations

from typing import Any

from webapp.book.house import registry
from webapp.trade.marks import make_mark

F1, F2, S1, R1, R2, R3, C1, C2, C3, T1, T2 = (
    make_mark(base) for base in ("F1", "F2", "S1", "R1", "R2", "R3", "C001", "C002", "C003", "T1", "T2")
)
GROWERS = ("Ostrey Farm, lot 4", "Hallow Bank, lot 1", "Ostrey Farm, lot 9")


def kg(value: float) -> tuple[str, str]:
    return f"{value}", "kg"


def litres(value: float) -> tuple[str, str]:
    return f"{value}", "L"


def pct(value: float) -> tuple[str, str]:
    return f"{value}", "pct_vol"


WARM = ("20", "degC")


def tell(house: Any) -> dict[str, str]:
    """Log it all into a house of tests/desk/conftest.py; return the ids by what they are."""
    for mark, sort in ((F2, "fermenter"), (T1, "tank"), (T2, "tank")):
        registry.put_vessel(house.book, {"mark": mark, "sort": sort, "capacity_l": 2000}, by="OL")
    for mark in (C2, C3):
        registry.put_vessel(house.book, {"mark": mark, "sort": "cask", "capacity_l": 200, "tare_kg": 46.3}, by="OL")
    minutes = iter(range(0, 100_000, 400))

    def say(kind: str, mark: str, /, **values: Any) -> str:
        result = house.log(kind, mark, next(minutes), **values)
        standing = house.book.one("SELECT standing FROM folded WHERE entry = ?", (result["id"],))
        assert standing and standing["standing"] == "entered", (kind, result)
        return str(result["id"])

    def load(mark: str, gross: float, grower: str, batch: str) -> str:
        return say("fruit_intake", mark, gross=kg(gross), tare=kg(60), material="plum", grower_lot=grower, batch=batch,
                   sugar=("14", "Bx"), temp=("14", "degC"), rot=("1", "pct"))

    ids = {"one": load(F1, 900, GROWERS[0], "B-25-01"), "two": load(F1, 480, GROWERS[1], "B-25-01"),
           "three": load(F2, 1260, GROWERS[2], "B-25-02")}
    for mark in (F1, F2):
        say("ferment_closed", mark, final_gravity=("1.005", "SG"), volume=litres(1100), wash_strength=pct(6.0))

    def distil(name: str, source: str, **feints: Any) -> str:
        run = say("charge", S1, run_name=name, from_vessel=source, wash=litres(1000), wash_strength=pct(6.0), **feints)
        for fraction, mark, volume, strength in (("heads", R1, 2, 75), ("hearts", R2, 60, 68), ("tails", R3, 30, 38)):
            say("fraction_gauge", mark, still=S1, fraction=fraction, remnant=litres(0), remnant_strength=pct(0),
                volume=litres(volume), temp=WARM, strength=pct(strength),
                goes_to="destroyed" if fraction == "heads" else "stays")
        say("run_end", S1, reason="strength")
        say("account_move", R2, serial=name, from_account="production", to_account="storage", to_vessel=T1,
            purpose="deposit", spirit="plum", distilling_strength=pct(70), volume=litres(60), temp=WARM,
            strength=pct(68))
        return run

    def cask(mark: str, gross: float) -> str:
        return say("cask_fill", mark, from_vessel=T1, lot="L-01", what="plum", tare=kg(46.3), gross=kg(gross),
                   temp=WARM, strength=pct(68), use="used", soaked="yes", place="CELL-A1", tight="yes")

    ids["run1"] = distil("R-25-01", F1)
    ids["cask1"] = cask(C1, 86.3)
    ids["run2"] = distil("R-25-02", F2, feints=litres(30), feints_strength=pct(38), feints_from=R3)
    ids["cask2"] = cask(C2, 96.3)
    ids["opening"] = say("gauge", C3, net_weight=kg(60), temp=WARM, strength=pct(60), purpose="opening", what="plum")
    for name, mark, gross, strength in (("dump1", C1, 85.3, 67.0), ("dump2", C2, 95.3, 67.0), ("dump3", C3, 106.3, 60)):
        ids[name] = say("dump", mark, gross=kg(gross), empty=kg(48.3), temp=WARM, strength=pct(strength),
                        to_vessel=T2)
    say("reduce", T2, target=pct(45), water=kg(70))
    say("bottling_gauge", T2, batch="K-26-03", volume=litres(230), temp=WARM, strength=pct(45), label_strength=pct(45))
    ids["bottled"] = say(
        "bottling_close", T2, filled=("440", "count"), broken=("0", "count"), reworked=("0", "count"),
        library=("2", "count"), per_case=("6", "count"), bottle_size=litres(0.5), case_from="101", case_to="173",
        odd_case="174R", lot_mark="L2603", loss=litres(1), tank_empty="yes",
    )
    return ids
