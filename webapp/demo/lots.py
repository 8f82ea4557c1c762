"""Spirit on its way from the still to the wood: hearts into a tank, the lot gauged, water, casks filled."""

from __future__ import annotations

from datetime import datetime, timedelta

from webapp.demo.story import Draft, Values, day, figure, glass_values, load, wobble
from webapp.demo.told import Cask, Lot, Run
from webapp.trade.alcoholometry import litres_from_mass, mass_from_litres
from webapp.trade.marks import make_mark


def drafts() -> list[Draft]:
    """Return the gauges, reductions and fills of all lots."""
    casks = {cask["base"]: cask for cask in load("casks")}
    return [draft for lot in load("lots") for draft in _lot(lot, casks)]


def hearts_move(run: Run, gauged: Draft, at: datetime) -> Draft:
    """Return the move of a run's hearts from their receiver into the lot's tank, by the gauge just made."""
    lot = next(lot for lot in load("lots") if run["batch"] in lot["batches"])
    read = {name: gauged.values[name] for name in ("volume", "glass", "temp")}
    values: Values = {
        "serial": f"M-{run['run'][2:]}", "from_account": "production", "to_account": "production",
        "to_vessel": make_mark(lot["tank"]), "purpose": "move", "spirit": lot["what"], "lot": lot["lot"],
        "distilling_strength": (figure(run["hearts"][1], 1), "pct_vol"), **read,
    }
    return Draft(at, "account_move", gauged.vessel, "BT", values, key=f"move:{run['run']}")


def _lot(lot: Lot, casks: dict[str, Cask]) -> list[Draft]:
    tank, strength = lot["tank"], lot["strength_pct"]
    fills = [casks[base] for base in lot["casks"]]
    target = fills[0]["fill"]["strength_pct"]
    eve = day(lot["filled_on"], "10:00") - timedelta(days=1)
    kept_l = lot["kept_clear_lpa_l"] / strength * 100
    kept_kg = round(kept_l * lot["net_kg"] / float(litres_from_mass(lot["net_kg"], strength)), 1)
    water_kg = (lot["net_kg"] - kept_kg) * (_by_mass(strength) / _by_mass(target) - 1)
    told = [
        _gauged(lot, day(lot["gauged_on"], "10:10")),
        _kept(lot, kept_kg, eve),
        Draft(eve + timedelta(minutes=40), "reduce", tank, "IM", {
            "target": (figure(target, 1), "pct_vol"), "water": (figure(water_kg, 2), "kg", "SC-2"),
            "rest_until": "tomorrow morning"}, key=f"water:{lot['lot']}"),
        Draft(day(lot["filled_on"], "09:20"), "reduce", tank, "IM", {
            "target": (figure(target, 1), "pct_vol"), "water": ("0", "kg"), **glass_values(target, 14.0)},
              key=f"rested:{lot['lot']}", remark="Rested over night."),
    ]
    at = day(lot["filled_on"], "10:00")
    for cask in fills:
        at += timedelta(minutes=25)
        told.append(_filled(lot, cask, at))
    gone: Values = {
        "volume": ("0", "L"), "temp": ("14.0", "degC", "TH-1"), "strength": ("0", "pct_vol"), "purpose": "stock",
    }
    told.append(Draft(at + timedelta(minutes=40), "gauge", tank, "PR", gone, key=f"emptied:{lot['lot']}",
                      remark="Drained and rinsed. What clung to hose and filter is gone."))
    return told


def _by_mass(strength_pct: float) -> float:
    """Return the share of alcohol by mass, but for a factor that is the same for all."""
    return strength_pct / float(mass_from_litres(1.0, strength_pct))


def _gauged(lot: Lot, at: datetime) -> Draft:
    """The production gauge: the whole lot by weight. From here on it is in storage."""
    values: Values = {
        "serial": f"G-{at:%y}-{lot['lot'][2:]}", "from_account": "production", "to_account": "storage",
        "purpose": "deposit", "spirit": lot["what"], "lot": lot["lot"],
        "distilling_strength": (figure(lot["strength_pct"], 1), "pct_vol"),
        "net_weight": (figure(lot["net_kg"], 1), "kg", "SC-2"),
        **glass_values(lot["strength_pct"], 14.5 + wobble(lot["lot"], 1.0)),
    }
    return Draft(at, "account_move", lot["tank"], "IM", values, key=f"lot:{lot['lot']}")


def _kept(lot: Lot, kept_kg: float, at: datetime) -> Draft:
    """The part of a lot that is never put into wood."""
    values: Values = {
        "serial": f"K-{at:%y}-{lot['lot'][2:]}", "from_account": "storage", "to_account": "storage",
        "to_vessel": make_mark(lot["kept_in"]), "purpose": "move", "spirit": f"{lot['what']}, kept clear",
        "lot": lot["lot"], "distilling_strength": (figure(lot["strength_pct"], 1), "pct_vol"),
        "net_weight": (figure(kept_kg, 1), "kg", "SC-2"), **glass_values(lot["strength_pct"], 14.0),
    }
    return Draft(at, "account_move", lot["tank"], "PR", values, key=f"kept:{lot['lot']}")


def _filled(lot: Lot, cask: Cask, at: datetime) -> Draft:
    fill, use = cask["fill"], {"new": "new", "used once": "used_once"}.get(cask["use"], "used")
    values: Values = {
        "from_vessel": make_mark(lot["tank"]), "lot": lot["lot"], "what": fill["what"],
        "tare": (figure(cask["tare_kg"], 1), "kg", "SC-2"),
        "gross": (figure(cask["tare_kg"] + fill["net_kg"], 1), "kg", "SC-2"),
        **glass_values(fill["strength_pct"], 14.0), "use": use, "soaked": "yes" if use == "new" else "no",
        "place": cask["place"], "tight": "yes",
    }
    return Draft(at, "cask_fill", cask["base"], "PR", values, key=f"fill:{cask['base']}")
