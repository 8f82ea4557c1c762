"""Fruit in, and the ferments day by day."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

from webapp.demo.story import Draft, Values, day, figure, gravity, load


def drafts() -> list[Draft]:
    """Return the intakes and ferment readings of the year."""
    told = []
    for ferment in load("ferments"):
        told.append(intake(ferment))
        told += readings(ferment)
    return told


def intake(ferment: dict[str, Any]) -> Draft:
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


def readings(ferment: dict[str, Any]) -> list[Draft]:
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
