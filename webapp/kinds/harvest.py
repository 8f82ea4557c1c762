"""What fruit promised: the yardstick that a ferment's alcohol is held against, this year and the years before."""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple

from webapp.kinds.state import Line, figure_in

MOST_L_KG = 0.65  # one kilogram of sugar gives at most 0.648 L of alcohol: C6H12O6 to 2 C2H5OH, 0.7893 kg/L
CLOSES = 12  # ferments of one material that the house's own custom is taken from
ENDED = 6  # ferments of one material whose fall tells how the next will end


class Promise(NamedTuple):
    """Loads of one fill together: by `sugar` or by `weight` of grain; net fruit and its sugar [kg], and what the sugar
    should give [L pure alcohol]; the last two are 0 where it goes by weight."""

    by: str
    kg: float
    sugar_kg: float = 0.0
    wanted_l: float = 0.0

    @property
    def most_l(self) -> float | None:
        """What no ferment of this sugar can exceed; None where it goes by weight. [L pure alcohol]"""
        return self.sugar_kg * MOST_L_KG if self.by == "sugar" else None

    @property
    def measure(self) -> float:
        """What a yield is divided by: litres that the sugar should give, or kilograms of grain."""
        return self.wanted_l if self.by == "sugar" else self.kg


def promise_of(loads: Iterable[Line], *, grain: bool) -> Promise | None:
    """Return the alcohol that these loads promised, or None where a weight or a sugar was not read."""
    kg = sugar_kg = wanted = 0.0
    for line in loads:
        net, potential = line["figures"].get("net"), line["figures"].get("potential")
        brix = figure_in(line["values"], "sugar")
        if grain:
            kg += net or 0.0
            continue
        if not net or net <= 0 or not brix or brix <= 0 or potential is None:
            return None
        kg, sugar_kg, wanted = kg + net, sugar_kg + net * brix / 100, wanted + potential
    if kg <= 0 or (not grain and wanted <= 0):
        return None
    return Promise("weight", kg) if grain else Promise("sugar", kg, sugar_kg, wanted)
