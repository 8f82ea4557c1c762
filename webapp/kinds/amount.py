"""An amount of spirit or mash in whole microlitres, millilitres and grams, and what its volume and weight say of it."""

from __future__ import annotations

from functools import lru_cache
from typing import NamedTuple, TypedDict

from webapp.trade.alcoholometry import litres_from_mass, mass_from_litres
from webapp.trade.density import density_from_mass_fraction
from webapp.trade.proof import litres_from_pounds, lpa_from_pounds
from webapp.trade.units import from_canonical

MOST = 1e9


class Amount(NamedTuple):
    """So much at once: pure alcohol [uL at 20 degC], volume [mL at 20 degC], mass [g]. Whole, may be negative."""

    lpa_ul: int = 0
    volume_ml: int = 0
    mass_g: int = 0

    def less(self, other: Amount) -> Amount:
        """Return the remainder after another amount is taken away."""
        return Amount(*(a - b for a, b in zip(self, other, strict=True)))

    def above_nothing(self) -> Amount:
        """Return it without its negative parts."""
        return Amount(*(max(part, 0) for part in self))

    def share(self, part: int, whole: int) -> Amount:
        """Return part/whole of it, rounded down, all of it at most."""
        return self if part >= whole else Amount(*(each * max(part, 0) // whole for each in self))


class Stock(TypedDict):
    """What is booked in a vessel, a run or the bottles of a bottling: the sum of its flows, kept by stock.py alone."""

    lpa_ul: int
    volume_ml: int
    mass_g: int


def amount_of(lpa_l: float | None, volume_l: float | None, mass_kg: float | None) -> Amount:
    """Return litres, litres and kilograms as an amount; what is not known counts for nothing."""
    return Amount(
        round((lpa_l or 0.0) * 1_000_000), round((volume_l or 0.0) * 1_000), round((mass_kg or 0.0) * 1_000)
    )


def spirit_of(volume_20_l: float | None, strength_pct: float | None, mass_kg: float | None = None) -> Amount:
    """Return spirit of a volume at 20 degC and a strength; its mass by OIML R 22 where it was not weighed."""
    # A figure that cannot be may stand all the same, because somebody said so: the sums below must answer.
    volume, strength = _within(volume_20_l, MOST), _within(strength_pct, 100.0)
    mass = float(mass_from_litres(volume, strength)) if mass_kg is None else _within(mass_kg, MOST)
    return amount_of(volume * strength / 100.0, volume, mass)


def _within(value: float | None, most: float) -> float:
    return min(max(value or 0.0, 0.0), most)


def weighed_amount(net_kg: float | None, strength_pct: float | None, unit: str | None = "kg") -> Amount:
    """Return spirit of a net weight, as the balance showed it, and a strength.

    What was weighed in pounds goes by 27 CFR 30.64, all else by OIML R 22 with the buoyancy of air. Its mass is that of
    its volume, a little more than the balance shows.
    """
    net, strength = _within(net_kg, MOST / 25), _within(strength_pct, 100.0)
    if unit != "lb":
        return spirit_of(float(litres_from_mass(net, strength, in_air=True)), strength)
    pounds = float(from_canonical(net, "lb"))
    amount = spirit_of(float(litres_from_pounds(pounds, strength)), strength)
    return amount._replace(lpa_ul=round(float(lpa_from_pounds(pounds, strength)) * 1_000_000))


def scale_kg(held: Stock) -> float:
    """Return the reading of a scale in air for the spirit in a stock. [kg]; its mass is some 0.1 % more"""
    volume_l = spirit_volume_ml(held["lpa_ul"], held["mass_g"]) / 1000.0
    strength = min(held["lpa_ul"] / volume_l / 10_000.0, 100.0) if volume_l else 0.0
    return float(mass_from_litres(volume_l, strength, in_air=True))


@lru_cache(maxsize=4096)
def spirit_volume_ml(lpa_ul: int, mass_g: int) -> int:
    """Return the volume at 20 degC of spirit by its pure alcohol and mass. [mL], 0 or more; OIML R 22."""
    if mass_g <= 0:
        return 0
    ethanol_g = lpa_ul * 1e-6 * float(density_from_mass_fraction(1.0, 20.0))
    return round(mass_g / float(density_from_mass_fraction(min(ethanol_g / mass_g, 1.0), 20.0)) * 1000.0)
