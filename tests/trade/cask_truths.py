"""Casks whose loss is known: groups of casks by size and place, each cask with a rate of its own, years that differ."""

import random
from dataclasses import dataclass


@dataclass(frozen=True)
class Cask:
    group: str
    capacity_l: float
    gauges: list[dict[str, float]]  # what the house has gauged
    later: dict[str, float]  # what truly stands in it later on
    true_rate: float


def warehouse(seed: int, count: int = 40, years_ahead: float = 2.0) -> list[Cask]:
    """Return casks of two sizes in a damp cellar and a dry loft, gauged once a year for one to four years."""
    chance = random.Random(seed)
    usual = {f"{size} {place}": (base + (1.0 if place == "loft" else 0.0) + chance.gauss(0, 0.4))
             for size, base in (("200", 2.6), ("50", 5.5)) for place in ("cellar", "loft")}
    return [_cask(chance, usual, years_ahead) for _ in range(count)]


def _cask(chance: random.Random, usual: dict[str, float], ahead: float) -> Cask:
    group = chance.choice(list(usual))
    size = float(group.split()[0])
    rate = max(usual[group] + chance.gauss(0, 0.6), 0.3)
    drift = (0.4 if group.endswith("loft") else -0.5) + chance.gauss(0, 0.15)
    lpa, strength, gauges = size * 0.6, 60.0 + chance.gauss(0, 1), []
    followed = chance.choice([1, 2, 3, 4])
    for year in range(followed + 1):
        gauges.append({"years": float(year), "lpa": lpa * (1 + chance.gauss(0, 0.003)),
                       "strength_pct": strength + chance.gauss(0, 0.1), "drawn_l": 0.0})
        if year < followed:
            lpa, strength = _year(chance, lpa, strength, rate, drift, 1.0)
    for _ in range(int(ahead)):
        lpa, strength = _year(chance, lpa, strength, rate, drift, 1.0)
    return Cask(group, size, gauges, {"lpa": lpa, "strength_pct": strength}, rate)


def _year(
    chance: random.Random, lpa: float, strength: float, rate: float, drift: float, years: float
) -> tuple[float, float]:
    lost = rate * years + chance.gauss(0, 0.5) * years**0.5
    return lpa * (1 - lost / 100), strength + drift * years + chance.gauss(0, 0.12) * years**0.5


