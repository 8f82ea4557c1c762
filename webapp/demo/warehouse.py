"""Casks and tanks: opening stock from the papers, lots gauged, casks filled, and the regauge of two Mays."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import Any

from webapp.demo.story import Draft, Values, day, figure, glass_values, load, wobble
from webapp.trade.alcoholometry import litres_from_mass

BOOK_BEGAN = "2025-05-02"
SEASON_BEGAN = "2025-09-01"  # what was filled before is opening stock


def drafts() -> list[Draft]:
    """Return all entries about casks, tanks and what is kept clear."""
    casks = load("casks")
    return [*_opening(casks), *_lots(), *_fills(casks), *_regauges(casks), *_heads_counted()]


def _opening(casks: list[dict[str, Any]]) -> list[Draft]:
    told, typed = [], day(BOOK_BEGAN, "09:00")
    for cask in casks:
        fill = cask.get("fill")
        if not fill or fill["on"] >= SEASON_BEGAN:
            continue
        typed += timedelta(minutes=1)
        values: Values = {**_weighed(fill), "purpose": "opening"}
        remark = "From the cask book, filled before this book began."
        told.append(Draft(day(fill["on"], "11:00"), "gauge", cask["base"], "OL", values, typed=typed, remark=remark,
                          key=f"opening:{cask['base']}"))  # fmt: skip
    return told


def _weighed(fill: dict[str, Any]) -> dict[str, str | tuple[str, ...]]:
    """What the cask book says: net weight and a strength that was worked out then."""
    return {
        "what": fill["what"],
        "net_weight": (figure(fill["net_kg"], 1), "kg", "SC-2"),
        "strength": (figure(fill["strength_pct"], 1), "pct_vol"),
    }


def _lots() -> list[Draft]:
    told = []
    for lot in load("lots"):
        at = day(lot["gauged_on"], "10:10")
        values: Values = {
            "what": f"{lot['what']}, {lot['lot']}",
            "net_weight": (figure(lot["net_kg"], 1), "kg", "SC-2"),
            **glass_values(lot["strength_pct"], 14.5 + wobble(lot["lot"], 1.0)),
            "purpose": "stock",
        }
        told.append(Draft(at, "gauge", lot["tank"], "IM", values, key=f"lot:{lot['lot']}"))
        told += _emptied(lot)
    return told


def _emptied(lot: dict[str, Any]) -> list[Draft]:
    """After the casks are filled: the tank is empty, the rest is kept clear in a can."""
    at = day(lot["filled_on"], "15:30")
    strength, litres = lot["strength_pct"], lot["kept_clear_lpa_l"] / lot["strength_pct"] * 100
    kilograms = litres * lot["net_kg"] / float(litres_from_mass(lot["net_kg"], strength))
    kept: Values = {
        "what": f"{lot['what']}, {lot['lot']}, kept clear",
        "net_weight": (figure(kilograms, 1), "kg", "SC-2"),
        **glass_values(strength, 14.0),
        "purpose": "stock",
    }
    gone: Values = {
        "volume": ("0", "L"), "temp": ("14.0", "degC", "TH-1"), "strength": ("0", "pct_vol"), "purpose": "move",
    }  # fmt: skip
    return [
        Draft(at, "gauge", lot["kept_in"], "PR", kept, key=f"kept:{lot['lot']}"),
        Draft(at + timedelta(minutes=6), "gauge", lot["tank"], "PR", gone, remark="Empty. Casks are filled."),
    ]


def _fills(casks: list[dict[str, Any]]) -> list[Draft]:
    told = []
    begun: dict[str, datetime] = {}
    lot_of = {base: lot for lot in load("lots") for base in lot["casks"]}
    for cask in casks:
        fill = cask.get("fill")
        if not fill or fill["on"] < SEASON_BEGAN:
            continue
        at = begun[fill["on"]] = begun.get(fill["on"], day(fill["on"], "10:00")) + timedelta(minutes=25)
        lot = lot_of[cask["base"]]
        values: Values = {
            "what": f"{fill['what']}, {lot['lot']}",
            "net_weight": (figure(fill["net_kg"], 1), "kg", "SC-2"),
            **glass_values(fill["strength_pct"], 14.0),
            "purpose": "other",
        }
        remark = f"Filled from {lot['tank']}."
        told.append(Draft(at, "gauge", cask["base"], "PR", values, key=f"fill:{cask['base']}", remark=remark))
    return told


def _regauges(casks: list[dict[str, Any]]) -> list[Draft]:
    told = []
    at_of: dict[str, datetime] = {}
    for cask in casks:
        for line in cask.get("regauges", ()):
            at = at_of[line["on"]] = at_of.get(line["on"], day(line["on"], "08:50")) + timedelta(minutes=6)
            told.append(regauge(cask, line, at))
    return told


def regauge(cask: dict[str, Any], line: dict[str, Any], at: datetime, person: str = "PR", phone: str = "") -> Draft:
    """Return the regauge of one cask: gross weight, glass and temperature as they were read where it lies."""
    temp_c = (10.5 if cask["place"].startswith("CELL") else 14.5) + wobble(cask["base"] + line["on"], 0.6)
    values: Values = {
        "gross": (figure(line["gross_kg"], 1), "kg", "SC-2"),
        **glass_values(line["strength_pct"], temp_c),
        "condition": "tight",
    }
    key = f"regauge:{cask['base']}:{line['on'][:4]}"
    return Draft(at, "cask_regauge", cask["base"], person, values, key=key, phone=phone)


def _heads_counted() -> list[Draft]:
    """The heads of the season before they were destroyed."""
    values: Values = {
        "what": "heads of the season", "volume": ("23.2", "L"), **glass_values(78.9, 11.0), "purpose": "stock",
    }  # fmt: skip
    remark = "Counted before they are made unfit and used to clean drains, IM and OL present."
    gone: Values = {"volume": ("0", "L"), "temp": ("11.0", "degC", "TH-1"), "strength": ("0", "pct_vol")}
    return [
        Draft(day("2026-02-10", "14:00"), "gauge", "R1", "IM", values, key="heads_counted", remark=remark),
        Draft(day("2026-02-10", "14:25"), "gauge", "R1", "IM", gone, remark="Empty and rinsed."),
    ]
