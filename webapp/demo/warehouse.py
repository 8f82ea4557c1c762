"""Casks: opening stock from the papers, and the regauge of two Mays."""

from __future__ import annotations

from datetime import datetime, timedelta

from webapp.demo.story import Draft, Values, day, figure, glass_values, load, wobble
from webapp.demo.told import Cask, CaskFill, Regauge

BOOK_BEGAN = "2025-05-02"
SEASON_BEGAN = "2025-09-01"  # what was filled before is opening stock


def drafts() -> list[Draft]:
    """Return the opening stock and the regauges."""
    casks = load("casks")
    return [*_opening(casks), *_regauges(casks)]


def _opening(casks: list[Cask]) -> list[Draft]:
    told, typed = [], day(BOOK_BEGAN, "09:00")
    for cask in casks:
        fill = cask.get("fill")
        if not fill or fill["on"] >= SEASON_BEGAN:
            continue
        typed += timedelta(minutes=1)
        values: Values = {**_weighed(fill), "filled_on": fill["on"], "origin": "own still",
                          "papers": f"cask book 2, folio {int(cask['base'][1:])}"}
        told.append(Draft(day(fill["on"], "11:00"), "opening", cask["base"], "OL", values, typed=typed,
                          key=f"opening:{cask['base']}"))
    return told


def _weighed(fill: CaskFill) -> dict[str, str | tuple[str, ...]]:
    """Net weight and strength as the cask book had them, worked out at that time."""
    return {
        "spirit": fill["what"],
        "net_weight": (figure(fill["net_kg"], 1), "kg", "SC-2"),
        "strength": (figure(fill["strength_pct"], 1), "pct_vol"),
    }


def _regauges(casks: list[Cask]) -> list[Draft]:
    told = []
    at_of: dict[str, datetime] = {}
    for cask in casks:
        for line in cask.get("regauges", ()):
            at = at_of[line["on"]] = at_of.get(line["on"], day(line["on"], "08:50")) + timedelta(minutes=6)
            told.append(regauge(cask, line, at))
    return told


def regauge(cask: Cask, line: Regauge, at: datetime, person: str = "PR", phone: str = "") -> Draft:
    """Return the regauge of one cask: gross weight, glass and temperature as they were read where it lies."""
    temp_c = (10.5 if cask["place"].startswith("CELL") else 14.5) + wobble(cask["base"] + line["on"], 0.6)
    values: Values = {
        "gross": (figure(line["gross_kg"], 1), "kg", "SC-2"),
        **glass_values(line["strength_pct"], temp_c),
        "condition": "tight",
    }
    key = f"regauge:{cask['base']}:{line['on'][:4]}"
    return Draft(at, "cask_regauge", cask["base"], person, values, key=key, phone=phone)
