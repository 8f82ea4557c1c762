"""Fruit, additions, the ferments day by day, and the wash measured at their end."""

from __future__ import annotations

from datetime import datetime, timedelta

from webapp.demo.story import Draft, Values, day, figure, gravity, load
from webapp.demo.told import Ferment, Run


def drafts() -> list[Draft]:
    """Return the intakes, additions, readings and closings of the year."""
    told, runs = [], load("runs")["runs"]
    for ferment in load("ferments"):
        told.append(intake(ferment))
        told += readings(ferment)
        told += [closed(ferment), *_lees(ferment, runs)]
    return told + _additions()


def intake(ferment: Ferment) -> Draft:
    """Return the entry of one load over the yard scale."""
    values: dict[str, str | tuple[str, ...]] = {
        "gross": (figure(ferment["gross_kg"], 1), "kg", "SC-1"),
        "tare": (figure(ferment["tare_kg"], 1), "kg", "SC-1"),
        "material": ferment["material"],
        "grower_lot": f"{ferment['grower']}, {ferment['delivery']}",
        "batch": ferment["batch"],
        "temp": (figure(ferment["temp_c"], 1), "degC", "TH-1"),
        "rot": (figure(ferment["rot_pct"], 0), "pct"),
    }
    if ferment["variety"]:
        values["variety"] = ferment["variety"]
    if ferment["brix"]:
        values["sugar"] = (figure(ferment["brix"], 1), "Bx")
    if ferment["ph"]:
        values["ph"] = (figure(ferment["ph"], 2), "pH")
    at = day(*ferment["at"].split(" "))
    return Draft(at, "fruit_intake", ferment["vessel"], ferment["by"], values, key=f"intake:{ferment['batch']}")


def readings(ferment: Ferment) -> list[Draft]:
    """Return the readings of one ferment: hours after the fruit on the day it is set, then on the morning round."""
    told, number = [], int(ferment["vessel"][1:])
    set_at = day(*ferment["at"].split(" "))
    for days, sg, temp_c, ph in ferment["readings"]:
        at = set_at.replace(hour=8, minute=0) + timedelta(days=days, minutes=4 * number)
        if days == 0:
            at = set_at + timedelta(hours=3)
        values: Values = {
            "temp": (figure(temp_c, 1), "degC", "TH-2" if at.year == 2025 else "TH-1"),
            "gravity": (gravity(sg), "SG", "SG-1"),
            "ph": (figure(ph, 2), "pH"),
        }
        key = f"ferment:{ferment['batch']}:{days:g}"
        told.append(Draft(at, "ferment_reading", ferment["vessel"], "NS", values, key=key))
    return told


def closed(ferment: Ferment) -> Draft:
    """Return the entry that ends a ferment: wash by dip, strength by a distilled sample."""
    days, final_gravity = ferment["readings"][-1][:2]
    at = day(*ferment["at"].split(" ")).replace(hour=15, minute=int(ferment["vessel"][1:])) + timedelta(days=days)
    values: Values = {
        "final_gravity": (gravity(final_gravity), "SG", "SG-1"),
        "volume": (figure(ferment["wash_l"], 0), "L"),
        "wash_strength": (figure(ferment["wash_strength_pct"], 1), "pct_vol"),
        "method": "lab",
    }
    return Draft(at, "ferment_closed", ferment["vessel"], "NS", values, key=f"closed:{ferment['batch']}")


def _lees(ferment: Ferment, runs: list[Run]) -> list[Draft]:
    """Skins and lees that would not pump, drained after the last run of the ferment."""
    charged = [run for run in runs if run["batch"] == ferment["batch"] and "from" not in run]
    rest = ferment["wash_l"] - sum(run["wash_l"] for run in charged)
    if rest < 1:
        return []
    values: Values = {
        "cause": "spill", "whole": "yes", "reckoned": "reckoned", "found": "Noor S., cellar hand; told Ilka M.",
        "done": "cleaned",
    }
    at = day(charged[-1]["on"], "16:40")
    remark = f"About {rest:.0f} L of lees and skins that would not pump: drained and rinsed."
    return [Draft(at, "loss", ferment["vessel"], "NS", values, key=f"lees:{ferment['batch']}", remark=remark)]


def _additions() -> list[Draft]:
    """Enzyme and yeast on the day the fruit came, and the additions of demo_data/cellar.json."""
    told = []
    for ferment in load("ferments"):
        set_at = day(*ferment["at"].split(" "))
        grams = round(ferment["wash_l"] * 0.25)
        told += [
            _addition(set_at + timedelta(minutes=90), ferment["vessel"], "NS", "enzyme", "enzyme, drum E-14",
                      (f"{grams / 5:.0f}", "g")),
            _addition(set_at + timedelta(hours=5), ferment["vessel"], "NS", "yeast", "yeast, packet 25-107",
                      (f"{grams}", "g")),
        ]
    for line in load("cellar")["additions"]:
        at = day(*line["on"].split(" "))
        amount = (line["amount"][0], line["amount"][1])
        told.append(_addition(at, line["vessel"], line["person"], line["what"], line["lot_no"], amount))
    return told


def _addition(at: datetime, vessel: str, person: str, what: str, lot_no: str, amount: tuple[str, str]) -> Draft:
    values: Values = {"what": what, "lot_no": lot_no, "amount": amount, "is_sugar": "no"}
    return Draft(at, "addition", vessel, person, values, key=f"addition:{vessel}:{at:%Y%m%d%H%M}")
