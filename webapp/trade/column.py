"""A still in the course of its run: sections that hold liquid, over a pot that empties.

Each section sends up vapour nearer to equilibrium with its liquid by a share of a full stage (Murphree 1925), under
constant molar overflow (McCabe and Thiele 1925); what it holds follows by the balance of its ethanol, solved implicitly
step by step of distillate. The pot is one equilibrium stage, and its ethanol is what was charged less what has run off
and what the sections hold. No heat loss, no wash solids. ``static/trade/still/column.js`` is the same, step for step.
"""

from functools import cache
from math import sqrt
from typing import NamedTuple

from webapp.trade.batch import Pot
from webapp.trade.vle import mole_fraction_from_strength, vapour_mole_fraction

LINE = 240  # points of the equilibrium line, closer together where the liquid is weak
FILLS = 10  # steps of the filling
MOLES_A_LITRE = 30.0  # of what sections hold, about: the unit of the filling
WATER_ML, MORE_ML = 18.07, 40.3  # molar volume of a liquid: that of water, and by how much ethanol's is more [mL/mol]
LEAST_MOLES = 0.05  # of the charge, that a pot keeps; and a trace of its ethanol, so that a search can come back
TRACE = 1e-6


class Make(NamedTuple):
    """How a still is made and begins: sections above the pot, share of a full stage each gives, litres each holds,
    and how many times over their liquid has risen as vapour, at total reflux, before the first drop.
    """

    sections: int
    efficiency: float
    held_l: float
    filled: float


class Tables(NamedTuple):
    """Vapour [mol/mol] and strength [% vol] over liquid, at squares of even steps, with the slopes between them."""

    liquids: list[float]
    vapours: list[float]
    vapour_slopes: list[float]
    strengths: list[float]
    strength_slopes: list[float]


class Column:
    """A still as it stands at a moment of its run.

    Source: as the module. Steps are of the first order: at a sixtieth of a run a strength may be 8 % vol off where it
    falls steepest (an integrator's answer), which the drift of the fit takes up.
    """

    def __init__(self, charge: Pot, make: Make) -> None:
        """Fill the sections with condensate of the pot's vapour, and run at total reflux as ``make`` says."""
        self.make, self.tables = make, tables()
        self.ethanol_mol, self.all_mol = charge.ethanol_mol, charge.ethanol_mol + charge.water_mol
        first = self._vapour(self.ethanol_mol / self.all_mol)
        self.liquids = [first] * make.sections
        self.held_mol = [make.held_l * 1000.0 / (WATER_ML + MORE_ML * first)] * make.sections
        self.top = first
        through = make.filled * (make.held_l * make.sections * MOLES_A_LITRE) / FILLS
        for _ in range(FILLS):
            self.step(0.0, 0.0, through, through)

    def step(self, ethanol_off: float, all_off: float, rising: float, falling: float) -> None:
        """Move on to when so much has run off since the first drop, with so much vapour and reflux meanwhile. [mol]"""
        held = held_ethanol = 0.0
        liquids, held_mol, make = self.liquids, self.held_mol, self.make
        for k in range(make.sections):
            held_ethanol += held_mol[k] * liquids[k]
            held += held_mol[k]
        ethanol = max(self.ethanol_mol - ethanol_off - held_ethanol, self.ethanol_mol * TRACE)
        rest = max(self.all_mol - all_off - held, self.all_mol * LEAST_MOLES)
        vapour = self._vapour(min(ethanol / rest, 1.0))
        _, vapours, slopes, _, _ = self.tables
        grid, share = self.tables.liquids, make.efficiency
        for k in range(make.sections):
            liquid = liquids[k]
            above = liquids[k + 1] if k + 1 < make.sections else self.top
            i = min(int(sqrt(liquid) * LINE), LINE - 1)
            steep = slopes[i]
            over = vapours[i] + steep * (liquid - grid[i])
            gained = rising * share * (vapour - over) + falling * (above - liquid)
            then = min(max(liquid + gained / (held_mol[k] + falling + rising * share * steep), 0.0), 1.0)
            vapour = vapour + share * (over + steep * (then - liquid) - vapour)
            liquids[k] = then
            held_mol[k] = make.held_l * 1000.0 / (WATER_ML + MORE_ML * then)
        self.top = min(max(vapour, 0.0), 1.0)

    def stand(self, sections: int) -> None:
        """Put sections in below the helm or take them out, until so many stand.

        One that is put in begins with the stream's own liquid, out of what the pot held; one that is taken out
        drains into the pot.
        """
        while len(self.liquids) > max(sections, 1):
            self.liquids.pop()
            self.held_mol.pop()
        while len(self.liquids) < sections:
            self.liquids.append(self.top)
            self.held_mol.append(self.make.held_l * 1000.0 / (WATER_ML + MORE_ML * self.top))
        self.make = self.make._replace(sections=len(self.liquids))

    @property
    def strength_pct(self) -> float:
        """Strength of the stream. [% vol at 20 degC]"""
        i = min(int(sqrt(self.top) * LINE), LINE - 1)
        return self.tables.strengths[i] + self.tables.strength_slopes[i] * (self.top - self.tables.liquids[i])

    def _vapour(self, liquid: float) -> float:
        i = min(int(sqrt(liquid) * LINE), LINE - 1)
        return self.tables.vapours[i] + self.tables.vapour_slopes[i] * (liquid - self.tables.liquids[i])


@cache
def tables() -> Tables:
    """Return the equilibrium line and the strengths beside it. [mol/mol, % vol]"""
    liquids = [(i / LINE) * (i / LINE) for i in range(LINE + 1)]
    vapours = [vapour_mole_fraction(x) if 0.0 < x < 1.0 else x for x in liquids]
    streams = [mole_fraction_from_strength(float(pct)) for pct in range(101)]
    strengths, k = [], 0
    for x in liquids:
        while k < 99 and streams[k + 1] < x:
            k += 1
        strengths.append(k + (x - streams[k]) / (streams[k + 1] - streams[k]))
    return Tables(liquids, vapours, _slopes(liquids, vapours), strengths, _slopes(liquids, strengths))


def _slopes(xs: list[float], ys: list[float]) -> list[float]:
    return [(ys[i + 1] - ys[i]) / (xs[i + 1] - xs[i]) for i in range(LINE)]
