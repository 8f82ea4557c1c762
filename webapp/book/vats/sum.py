"""A vat as it would come out: draws by weight, water, strength and volume, exact by mass. Pure sums, no choice.

Pure alcohol and mass are added; the volume of the mix follows from both (OIML R 22), so its shrinking is in it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from webapp.trade.alcoholometry import litres_from_mass
from webapp.trade.density import mass_fraction_from_strength, strength_from_mass_fraction
from webapp.trade.reducing import shrinkage_l

WEIGHED_KG = 0.1  # what a floor scale shows; a draw and the water are rounded to it


@dataclass(frozen=True, slots=True)
class Source:
    """A cask or tank that may go into a vat: what the book has in it, and how it may be drawn."""

    mark: str
    name: str
    mass_kg: float
    strength_pct: float
    what: str = ""
    lot: str = ""
    place: str = ""
    years: float | None = None  # its youngest part in wood; None where a part never was, or nobody knows
    is_least: bool = False  # the book knows only that it is at least so old
    papers: str | None = None  # where only papers say its age: which; None where this book has seen it
    leave_kg: float = 0.0  # what wood or heel keeps
    is_whole: bool = False  # all of it or nothing

    @property
    def usable_kg(self) -> float:
        """What can be drawn, as a scale shows it. [kg], 0 or more"""
        return max(to_scale(self.mass_kg - self.leave_kg), 0.0)

    @property
    def fraction(self) -> float:
        """Mass fraction of ethanol. [kg/kg], 0 to 1"""
        return float(mass_fraction_from_strength(self.strength_pct))


@dataclass(frozen=True, slots=True)
class Draw:
    """So much out of one source."""

    source: Source
    kg: float

    @property
    def ethanol_kg(self) -> float:
        """Ethanol in it. [kg], 0 or more"""
        return self.kg * self.source.fraction

    @property
    def volume_l(self) -> float:
        """Its volume. [L at 20 degC], 0 or more"""
        return float(litres_from_mass(self.kg, self.source.strength_pct))

    @property
    def lpa_l(self) -> float:
        """Pure alcohol in it. [L], 0 or more"""
        return self.volume_l * self.source.strength_pct / 100.0


@dataclass(frozen=True, slots=True)
class Vat:
    """What draws and water make."""

    draws: tuple[Draw, ...]
    water_kg: float
    before_pct: float  # strength of the mix without water [% vol]
    before_l: float
    strength_pct: float
    volume_l: float
    mass_kg: float
    lpa_l: float
    shrinks_l: float  # volumes apart less the volume of the vat: no loss
    years: float | None  # of the youngest part; None where a part never was in wood

    @property
    def by_papers(self) -> tuple[Source, ...]:
        """The sources whose age only papers say."""
        return tuple(one.source for one in self.draws if one.source.papers is not None and one.source.years is not None)

    def share_pct(self, draw: Draw) -> float:
        """Return a draw's share of the vat's pure alcohol. [%], 0 to 100"""
        whole = sum(one.ethanol_kg for one in self.draws)
        return draw.ethanol_kg / whole * 100.0 if whole else 0.0


def make_vat(draws: Sequence[Draw], target_pct: float | None) -> Vat | None:
    """Return the vat of these draws, reduced to the target [% vol] where the mix is stronger; None of nothing."""
    used = tuple(draw for draw in draws if draw.kg > 0)
    mass = sum(draw.kg for draw in used)
    if mass <= 0:
        return None
    ethanol = sum(draw.ethanol_kg for draw in used)
    before = float(strength_from_mass_fraction(min(ethanol / mass, 1.0)))
    water = 0.0
    if target_pct:
        water = max(to_scale(ethanol / float(mass_fraction_from_strength(target_pct)) - mass), 0.0)
    strength = float(strength_from_mass_fraction(min(ethanol / (mass + water), 1.0)))
    volume = float(litres_from_mass(mass + water, strength))
    before_l = float(litres_from_mass(mass, before))
    apart = sum(draw.volume_l for draw in used) - before_l
    ages = [draw.source.years for draw in used]
    return Vat(
        draws=used, water_kg=water, before_pct=before, before_l=before_l, strength_pct=strength, volume_l=volume,
        mass_kg=mass + water, lpa_l=volume * strength / 100.0,
        shrinks_l=apart + float(shrinkage_l(mass, before, water)),
        years=None if None in ages else min(age for age in ages if age is not None),
    )


def to_scale(kg: float) -> float:
    """Return a weight as the scale shows it. [kg], any"""
    return round(round(kg / WEIGHED_KG) * WEIGHED_KG, 3)
