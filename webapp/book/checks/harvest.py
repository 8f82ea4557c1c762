"""What a ferment gave against the sugar that came over the scale. Flat rates of a tax are averages, not this fruit."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any

from webapp.book.checks.limits import is_grain, limit
from webapp.book.checks.words import about, plain
from webapp.book.view import Query, View
from webapp.kinds.read import Read

MOST_L_KG = 0.65  # one kilogram of sugar gives at most 0.648 L of alcohol: C6H12O6 to 2 C2H5OH, 0.7893 kg/L


def ferment_yield(read: Read, view: View) -> Iterable[Query]:
    """Pure alcohol in the wash, far above or below what the fruit's sugar should have given."""
    made, held = read.figures.get("wash_lpa"), view.state(read.mark)["holds"]
    if made is None or made <= 0 or not held:
        return
    loads = [line for line in view.recent(read.mark, "fruit_intake") if line["at"] >= held["since"]]
    wanted, most, told = _of_sugar(loads, view) if not is_grain(held.get("material")) else _of_grain(loads, view)
    if not wanted:
        return
    share = made / wanted * 100
    if most and made > most:
        words = (
            f"{about(made)} L pure alcohol in the wash, {told}: all of its sugar could not give more than "
            f"{about(most)} L. Look at the strength, the dip and the weights; was sugar added?"
        )
        yield Query("ferment_yield", "ask", "wash_strength", words)
    elif not limit("yield_low_pct", view) <= share <= limit("yield_high_pct", view):
        side = "much" if share > 100 else "little"
        low, high = (plain(limit(name, view), 0) for name in ("yield_low_pct", "yield_high_pct"))
        words = (
            f"{about(made)} L pure alcohol in the wash, {told}: about {about(wanted)} L could be expected. That is "
            f"{side}: {plain(round(share), 0)} %, where {low} to {high} % is usual. Look at strength, dip and weights."
        )
        yield Query("ferment_yield", "ask", "wash_strength", words)


def _of_sugar(loads: list[Mapping[str, Any]], view: View) -> tuple[float, float, str]:
    """Return litres of pure alcohol expected and possible from loads whose sugar was read; (0, 0, "") else."""
    kg = sugar_kg = wanted = 0.0
    for line in loads:
        net, brix, potential = line["figures"].get("net"), line["values"].get("sugar"), line["figures"].get("potential")
        if not net or net <= 0 or not brix or brix <= 0 or potential is None:
            return 0.0, 0.0, ""
        kg, sugar_kg, wanted = kg + net, sugar_kg + net * brix / 100, wanted + potential
    if not kg:
        return 0.0, 0.0, ""
    return wanted, sugar_kg * MOST_L_KG, f"from {plain(round(kg), 0)} kg of fruit at {about(sugar_kg / kg * 100)} °Bx"


def _of_grain(loads: list[Mapping[str, Any]], view: View) -> tuple[float, float, str]:
    kg = sum(line["figures"].get("net") or 0.0 for line in loads)
    return kg * limit("grain_l_100kg", view) / 100, 0.0, f"from {plain(round(kg), 0)} kg of grain"
