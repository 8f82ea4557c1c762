"""The mixed-integer programme of a vat: kilograms drawn of each source, and whether it is drawn. Solved by HiGHS.

Everything is linear in mass: at one strength, the vat's volume is its ethanol over that strength's mass fraction and
density, and the water is what is left. So contraction is in it, and no sum is near enough only.

The search ends by its work, counted in branches, never by a clock: the same wish gives the same vat on any machine.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from webapp.book.vats.sum import Source
from webapp.book.vats.wish import LOT_SHARE, MUST, SHARE, STRENGTH, WHOLE, Wish
from webapp.trade.alcoholometry import litres_from_mass
from webapp.trade.density import mass_fraction_from_strength

if TYPE_CHECKING:
    from highspy import Highs, highs_linear_expression, highs_var

LEAST_DRAW_KG = 1.0  # less is not worth a hose
# Branches that a search may take, all vessels of all branches together; and no fewer than so many.
EFFORT, BRANCHES_LEAST = 200_000, 100
FEASIBLE = 2  # what HiGHS calls a solution that keeps every limit


class Impossible(Exception):
    """No choice keeps all limits: proven."""


class NotFound(Exception):
    """No choice was found with this work; none is ruled out."""


@dataclass(frozen=True, slots=True)
class Sought:
    """What a search came to. value: of the choice found; bound: no choice is below it; in the unit that is sought."""

    value: float
    bound: float
    is_proven: bool


class Programme:
    """A wish as a programme. kept: the parts of the wish that are to be kept, all others are let go."""

    def __init__(self, sources: Sequence[Source], wish: Wish, kept: Collection[str], effort: int = EFFORT) -> None:
        import highspy  # 20 MB of memory: loaded for the first vat, and by no other page

        self.sources, self.wish, self.kept = sources, wish, kept
        self.highspy = highspy
        self.highs: Highs = highspy.Highs()
        for name, value in (
            ("output_flag", False), ("threads", 1), ("mip_rel_gap", 0.0),
            ("mip_max_nodes", max(effort // len(sources), min(effort, BRANCHES_LEAST))),
            ("mip_feasibility_tolerance", 1e-9), ("primal_feasibility_tolerance", 1e-9),
        ):
            self.highs.setOptionValue(name, value)
        self.drawn = [self.highs.addVariable(0, one.usable_kg) for one in sources]
        self.taken = [
            self.highs.addVariable(float(MUST + one.mark in kept), 1, type=highspy.HighsVarType.kInteger)
            for one in sources
        ]
        self.highs.addConstr(self.highs.qsum(self.taken) >= 1)
        self._tie()
        # A variable of its own: in sums, each share would name every vessel, and 2,000 of them 4,000,000 figures.
        self.ethanol: highs_var = self.highs.addVariable(0, highspy.kHighsInf)
        self.highs.addConstr(self._sum([one.fraction for one in sources], self.drawn) - self.ethanol == 0)
        self._limit_shares()
        self.volume = self._volume()

    def is_possible(self) -> bool:
        """Say whether any choice keeps what is kept. NotFound where the work did not suffice to tell."""
        try:
            self.seek(0.0 * self.ethanol)
        except Impossible:
            return False
        return True

    def kilograms(self) -> list[float]:
        """Return the kilograms of each source in the choice found last."""
        found = list(self.highs.getSolution().col_value)[: len(self.sources)]
        return [0.0 if kg < LEAST_DRAW_KG / 2 else kg for kg in found]

    def apart(self, volume_l: float) -> highs_linear_expression:
        """Return the litres that the vat is off a volume, either way."""
        off: highs_var = self.highs.addVariable(0, self.highspy.kHighsInf)
        self.highs.addConstr(self.volume + off >= volume_l)
        self.highs.addConstr(self.volume - off <= volume_l)
        apart: highs_linear_expression = 1.0 * off
        return apart

    def above(self, amount: highs_linear_expression, enough: float) -> highs_linear_expression:
        """Return by how much an amount is above what is enough; nothing where it is not."""
        excess: highs_var = self.highs.addVariable(0, self.highspy.kHighsInf)
        self.highs.addConstr(amount - excess <= enough)
        above: highs_linear_expression = 1.0 * excess
        return above

    def keep(self, amount: highs_linear_expression, most: float) -> None:
        """Keep an amount at or below what it may be from here on."""
        self.highs.addConstr(amount <= most)

    def seek(self, least: highs_linear_expression, gap: float = 1e-6, share: float = 0.0) -> Sought:
        """Make a sum as small as can be, until no choice is better by the gap, or by that share of the sum.

        Impossible where no choice keeps all limits, NotFound where the work did not suffice to find one.
        """
        self.highs.setOptionValue("mip_abs_gap", gap)
        self.highs.setOptionValue("mip_rel_gap", share)
        self.highs.minimize(least)
        status, statuses = self.highs.getModelStatus(), self.highspy.HighsModelStatus
        if status in (statuses.kInfeasible, statuses.kUnboundedOrInfeasible):
            raise Impossible
        info = self.highs.getInfo()
        if info.primal_solution_status != FEASIBLE:
            raise NotFound
        bound = info.mip_dual_bound if abs(info.mip_dual_bound) < self.highspy.kHighsInf else -float("inf")
        return Sought(float(self.highs.val(least)), bound, status == statuses.kOptimal)

    def aim(self) -> highs_linear_expression:
        """Return the quantity that the aim makes small: vessels, or kilograms of ethanol times their years."""
        if self.wish.aim == "fewest":
            return self._sum([1.0] * len(self.sources), self.taken)
        sign = 1.0 if self.wish.aim == "oldest_stays" else -1.0
        return self._sum([sign * one.fraction * (one.years or 0.0) for one in self.sources], self.drawn)

    def _tie(self) -> None:
        """Tie kilograms to yes or no: all of a whole cask, of any other vessel at least what is worth a hose."""
        for one, kg, yes in zip(self.sources, self.drawn, self.taken, strict=True):
            self.highs.addConstr(kg - one.usable_kg * yes <= 0)
            is_whole = one.is_whole and WHOLE in self.kept
            least = one.usable_kg if is_whole else min(LEAST_DRAW_KG, one.usable_kg)
            self.highs.addConstr(kg - least * yes >= 0)

    def _limit_shares(self) -> None:
        if SHARE in self.kept:
            for one, kg in zip(self.sources, self.drawn, strict=True):
                self.highs.addConstr(one.fraction * kg - self.wish.share_most_pct / 100.0 * self.ethanol <= 0)
        if LOT_SHARE in self.kept:
            lots: dict[str, list[int]] = defaultdict(list)
            for n, one in enumerate(self.sources):
                lots[one.lot].append(n)
            for members in (members for lot, members in lots.items() if lot):
                part = self._sum([self.sources[n].fraction for n in members], [self.drawn[n] for n in members])
                self.highs.addConstr(part - self.wish.lot_most_pct / 100.0 * self.ethanol <= 0)

    def _volume(self) -> highs_linear_expression:
        """Return litres of the vat over kilograms drawn: exact at a target strength, without one a plain sum."""
        target = self.wish.strength_pct
        if target is None:
            per_kg = [float(litres_from_mass(1.0, one.strength_pct)) for one in self.sources]
            return self._sum(per_kg, self.drawn)
        fraction = float(mass_fraction_from_strength(target))
        if STRENGTH in self.kept:
            spare = self._sum([one.fraction / fraction - 1.0 for one in self.sources], self.drawn)
            self.highs.addConstr(spare >= 0)  # the water: it cannot come out
        litres: highs_linear_expression = float(litres_from_mass(1.0 / fraction, target)) * self.ethanol
        return litres

    def _sum(self, factors: Sequence[float], variables: Sequence[highs_var]) -> highs_linear_expression:
        return self.highs.qsum(factor * variable for factor, variable in zip(factors, variables, strict=True))
