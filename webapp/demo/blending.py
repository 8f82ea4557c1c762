"""The vatting K-26-03: two casks emptied, water, cold filter, two fills of the bottling tank, and the bottles."""

from __future__ import annotations

from datetime import timedelta

from webapp.demo.story import Draft, Values, day, figure, glass_values, load
from webapp.demo.told import Bottling, TankFill
from webapp.trade.density import density_from_strength
from webapp.trade.marks import make_mark


def drafts() -> list[Draft]:
    """Return all entries of the vatting, from the casks to the last case."""
    told: Bottling = load("bottling")
    return [*_dumps(told), *_waters(told), _filtered(told), _gauged(told), *_bottled(told)]


def _pct(value: float) -> tuple[str, str]:
    return figure(value, 1), "pct_vol"


def _dumps(told: Bottling) -> list[Draft]:
    found = []
    for line in told["dumps"]:
        values: Values = {
            "gross": (figure(line["gross_kg"], 1), "kg", "SC-2"), "empty": (figure(line["empty_kg"], 1), "kg", "SC-2"),
            **glass_values(line["strength_pct"], 15.0), "to_vessel": make_mark(told["tank"]),
        }
        found.append(Draft(day(*line["on"].split(" ")), "dump", line["cask"], "IM", values, key=f"dump:{line['cask']}"))
    return found


def _waters(told: Bottling) -> list[Draft]:
    """The water in two goes: the first was reckoned by volumes, as if they added; the second puts it right."""
    found = []
    for n, line in enumerate(told["waters"]):
        values: dict[str, str | tuple[str, ...]] = {
            "target": _pct(told["target_pct"]), "water": (figure(line["water_kg"], 1), "kg", "SC-2"),
        }
        if "rest_until" in line:
            values["rest_until"] = line["rest_until"]
        if "glass_pct" in line:
            values["glass"] = (figure(line["glass_pct"], 1), "pct_glass", "AH-2")
            values["temp"] = (figure(line["temp_c"], 1), "degC", "TH-1")
        elif "strength_pct" in line:
            values |= glass_values(line["strength_pct"], line["temp_c"])
        if "dip_20_l" in line:
            strength, temp_c = line.get("strength_pct", 45.4), line["temp_c"]
            shrunk = float(density_from_strength(strength, 20.0) / density_from_strength(strength, temp_c))
            values["volume"] = (figure(line["dip_20_l"] * shrunk, 1), "L")
        at = day(*line["on"].split(" "))
        found.append(Draft(at, "reduce", told["tank"], "IM", values, key=f"water:{told['batch']}:{n + 1}"))
    return found


def _filtered(told: Bottling) -> Draft:
    line = told["filter"]
    values: Values = {
        "temp": (figure(line["chilled_c"], 0), "degC", "TH-1"), "sheets": line["sheets"],
        "volume_before": (figure(line["before"][0], 1), "L"), "strength_before": _pct(line["before"][1]),
        "volume_after": (figure(line["after"][0], 1), "L"), "strength_after": _pct(line["after"][1]),
    }
    remark = "Both dips taken at 20 °C."
    return Draft(day(*line["on"].split(" ")), "chill_filter", told["tank"], "SD", values, key="filtered", remark=remark)


def _gauged(told: Bottling) -> Draft:
    line = told["gauge"]
    values: Values = {
        "batch": told["batch"], "volume": (figure(line["volume_l"], 1), "L"), "temp": ("20.0", "degC", "TH-1"),
        "strength": _pct(line["strength_pct"]), "label_strength": _pct(line["label_pct"]),
    }
    return Draft(day(*line["on"].split(" ")), "bottling_gauge", told["tank"], "SD", values, key="tank_gauge")


def _bottled(told: Bottling) -> list[Draft]:
    found = []
    for n, line in enumerate(told["tank_fills"]):
        found += [_pumped(told, line, n), *_checks(told, line), *_samples(told, line), _closed(told, line, n)]
    return found


def _pumped(told: Bottling, line: TankFill, n: int) -> Draft:
    """One fill of the bottling tank, which holds less than the batch."""
    values: Values = {
        "serial": f"B-26-{n + 1:02d}", "from_account": "processing", "to_account": "processing",
        "to_vessel": make_mark(told["bottling_tank"]), "purpose": "move", "spirit": told["what"],
        "distilling_strength": _pct(70.0), "volume": (figure(line["volume_l"], 1), "L"),
        "temp": ("20.0", "degC", "TH-1"), "strength": _pct(told["gauge"]["strength_pct"]),
    }
    return Draft(day(line["on"], line["from"]), "account_move", told["tank"], "SD", values, key=f"pumped:{n + 1}")


def _checks(told: Bottling, line: TankFill) -> list[Draft]:
    found = []
    for clock, fill_pct, strength_pct in line["checks"]:
        values: Values = {
            "line": "1", "tested": ("5", "count"), "bottle_size": (figure(told["bottle_l"], 2), "L"),
            "fill_found": (figure(fill_pct, 1), "pct"), "strength_found": _pct(strength_pct),
            "label_strength": _pct(told["gauge"]["label_pct"]), "labels_right": "yes",
        }
        found.append(Draft(day(line["on"], clock), "bottle_check", told["bottling_tank"], "SD", values))
    return found


def _samples(told: Bottling, line: TankFill) -> list[Draft]:
    if not line["samples_ml"]:
        return []
    values: Values = {
        "size": ("100", "mL"), "number": (f"{line['samples_ml'] // 100}", "count"), "purpose": "library",
        "went": "library",
    }
    return [Draft(day(line["on"], "14:10"), "sample", told["bottling_tank"], "SD", values)]


def _closed(told: Bottling, line: TankFill, n: int) -> Draft:
    first, last = line["cases"]
    values: Values = {
        "filled": (f"{line['filled']}", "count"), "broken": (f"{line['broken']}", "count"),
        "library": (f"{line['library']}", "count"),
        "bottle_size": (figure(told["bottle_l"], 2), "L"), "per_case": (f"{told['per_case']}", "count"),
        "case_from": f"{first}", "case_to": f"{last}", "odd_case": line["odd_case"], "lot_mark": told["lot_mark"],
        "loss": (figure(line["loss_l"], 1), "L"), "tank_empty": "yes",
    }
    at = day(line["on"], line["to"]) + timedelta(minutes=20)
    remark = "The rest of the first tank and of the second make up the odd case." if n else ""
    return Draft(at, "bottling_close", told["bottling_tank"], "SD", values, key=f"bottled:{n + 1}", remark=remark)
