"""Which casks and tanks make the vat that is wanted, solved exactly with HiGHS.

Everything is linear in mass: at one strength, the vat's volume is its ethanol over that strength's mass fraction and
density, and the water is what is left. So contraction is in it, and no sum is near enough only. Whether a source goes
in is yes or no (a mixed-integer programme). Wishes are met one after the other, each kept while the next is sought:

1. as near the volume as can be, or as much as can be where no volume is wanted;
2. the aim: fewest vessels, oldest stays, oldest first;
3. nearer the volume again, as far as the aim allows.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from webapp.book.before.limits import Limit, declare
from webapp.book.vats.sum import Draw, Source, Vat, make_vat, to_scale
from webapp.trade.alcoholometry import litres_from_mass
from webapp.trade.density import mass_fraction_from_strength

if TYPE_CHECKING:
    from highspy import Highs, highs_linear_expression, highs_var

LIMITS = declare(
    Limit(
        "vat_youngest_years", 2, "years", "Youngest part of a planned vat, in wood for at least",
        "a rule of the house, not of the law: fruit brandy stands at least two years in oak",
    ),
)

AIMS = ("fewest", "oldest_stays", "oldest_first")
SOURCES_MOST = 200
SECONDS_MOST = 10.0  # for all wishes together
NEAR_SHARE = 0.0005  # of the volume: nearer than any dip can tell, and quick to prove
LEAST_DRAW_KG = 1.0  # less is not worth a hose
SLACK_L = 0.01  # by how much a later wish may move the volume of an earlier one
PROVEN_L = 0.1  # where as much as can be is wanted


@dataclass(frozen=True, slots=True)
class Wish:
    """What the vat should be. Shares are of its pure alcohol."""

    strength_pct: float | None = None  # None: as the spirit comes, no water
    volume_l: float | None = None  # None: as much as they give
    within_pct: float = 2.0  # the volume may be off by this for the aim's sake
    share_most_pct: float = 100.0  # of any one vessel
    lot_most_pct: float = 100.0  # of any one lot
    always: frozenset[str] = frozenset()  # marks that go in whatever else does
    aim: str = "fewest"


class NoVat(Exception):
    """No choice of these sources makes such a vat; the words say why and what to change."""


def solve(sources: Sequence[Source], wish: Wish) -> Vat:
    """Return the vat that meets the wish best. NoVat says why there is none."""
    usable = [source for source in sources if source.usable_kg >= LEAST_DRAW_KG and source.fraction > 0]
    if not usable:
        raise NoVat("None of these vessels has spirit to spare. Pick others, or leave less behind.")
    if len(usable) > SOURCES_MOST:
        raise NoVat(f"{len(usable)} vessels are too many at once. Narrow the list to {SOURCES_MOST}.")
    kilograms = _Programme(usable, wish).run()
    made = make_vat([_rounded(one, kg) for one, kg in zip(usable, kilograms, strict=True)], wish.strength_pct)
    if made is None:
        raise NoVat(_why_none(usable, wish))
    return made


def _rounded(source: Source, kg: float) -> Draw:
    return Draw(source, min(to_scale(kg), source.usable_kg))


class _Programme:
    """The mixed-integer programme: kilograms drawn of each source, and whether it is drawn at all."""

    def __init__(self, sources: Sequence[Source], wish: Wish) -> None:
        import highspy  # 20 MB of memory: loaded for the first vat, and by no other page

        self.sources, self.wish = sources, wish
        self.highspy = highspy
        self.highs: Highs = highspy.Highs()
        for name, value in (
            ("output_flag", False), ("threads", 1), ("time_limit", SECONDS_MOST), ("mip_rel_gap", 0.0),
            ("mip_feasibility_tolerance", 1e-9), ("primal_feasibility_tolerance", 1e-9),
        ):
            self.highs.setOptionValue(name, value)
        self.drawn = [self.highs.addVariable(0, one.usable_kg) for one in sources]
        self.taken = [
            self.highs.addVariable(float(one.mark in wish.always), 1, type=highspy.HighsVarType.kInteger)
            for one in sources
        ]
        self._tie()
        self.ethanol = self._sum([one.fraction for one in sources], self.drawn)
        self._limit_shares()
        self.volume = self._volume()

    def run(self) -> list[float]:
        """Return the kilograms of each source; all nothing where none fits."""
        volume = self.wish.volume_l
        if volume is None:
            missed, nearer = -self.volume, PROVEN_L
            self._seek(missed, gap=PROVEN_L)
            allowed = self._value(missed) + PROVEN_L
        else:
            missed = 1.0 * self._apart(volume)
            enough, nearer = volume * max(self.wish.within_pct / 100.0, NEAR_SHARE), volume * NEAR_SHARE
            # What is within is right: so the search ends with the first such vat, and elsewhere goes on to the nearest.
            excess = self.highs.addVariable(0, self.highspy.kHighsInf)
            self.highs.addConstr(missed - excess <= enough)
            self._seek(1.0 * excess, gap=nearer)
            allowed = enough + self._value(1.0 * excess) + SLACK_L
        if self._value(self.volume) <= 0:
            return [0.0] * len(self.sources)
        self.highs.addConstr(missed <= allowed)
        aim = self._aim()
        self._seek(aim)
        best = self._value(aim)
        self.highs.addConstr(aim <= best + max(1e-6, abs(best) * 1e-6))
        self._seek(missed, gap=min(nearer, PROVEN_L))
        found = list(self.highs.getSolution().col_value)[: len(self.sources)]
        return [0.0 if kg < LEAST_DRAW_KG / 2 else kg for kg in found]

    def _apart(self, volume_l: float) -> highs_var:
        """Return the litres that the vat is off a volume, either way."""
        off: highs_var = self.highs.addVariable(0, self.highspy.kHighsInf)
        self.highs.addConstr(self.volume + off >= volume_l)
        self.highs.addConstr(self.volume - off <= volume_l)
        return off

    def _tie(self) -> None:
        """Tie kilograms to yes or no: all of a whole cask, of any other vessel at least what is worth a hose."""
        for one, kg, yes in zip(self.sources, self.drawn, self.taken, strict=True):
            self.highs.addConstr(kg - one.usable_kg * yes <= 0)
            least = one.usable_kg if one.is_whole else min(LEAST_DRAW_KG, one.usable_kg)
            self.highs.addConstr(kg - least * yes >= 0)

    def _limit_shares(self) -> None:
        lots: dict[str, list[int]] = defaultdict(list)
        for n, one in enumerate(self.sources):
            lots[one.lot].append(n)
        groups = [([n], self.wish.share_most_pct) for n in range(len(self.sources))]
        groups += [(members, self.wish.lot_most_pct) for lot, members in lots.items() if lot]
        for members, most_pct in groups:
            if most_pct < 100.0:
                part = self._sum([self.sources[n].fraction for n in members], [self.drawn[n] for n in members])
                self.highs.addConstr(part - most_pct / 100.0 * self.ethanol <= 0)

    def _volume(self) -> highs_linear_expression:
        """Return litres of the vat over kilograms drawn: exact at a target strength, without one a plain sum."""
        target = self.wish.strength_pct
        if target is None:
            per_kg = [float(litres_from_mass(1.0, one.strength_pct)) for one in self.sources]
            return self._sum(per_kg, self.drawn)
        fraction = float(mass_fraction_from_strength(target))
        spare = self._sum([one.fraction / fraction - 1.0 for one in self.sources], self.drawn)
        self.highs.addConstr(spare >= 0)  # the water: it cannot come out
        litres: highs_linear_expression = float(litres_from_mass(1.0 / fraction, target)) * self.ethanol
        return litres

    def _aim(self) -> highs_linear_expression:
        if self.wish.aim == "fewest":
            return self._sum([1.0] * len(self.sources), self.taken)
        sign = 1.0 if self.wish.aim == "oldest_stays" else -1.0
        return self._sum([sign * one.fraction * (one.years or 0.0) for one in self.sources], self.drawn)

    def _sum(self, factors: Sequence[float], variables: Sequence[highs_var]) -> highs_linear_expression:
        return self.highs.qsum(factor * variable for factor, variable in zip(factors, variables, strict=True))

    def _seek(self, least: highs_linear_expression, gap: float = 1e-6) -> None:
        """Make a sum as small as can be, proven to within the gap."""
        self.highs.setOptionValue("mip_abs_gap", gap)
        self.highs.minimize(least)
        status, statuses = self.highs.getModelStatus(), self.highspy.HighsModelStatus
        if status == statuses.kTimeLimit and self.highs.getInfo().primal_solution_status != 2:
            raise NoVat("This takes too long to work out. Pick fewer vessels, or let more of them be drawn in part.")
        if status not in (statuses.kOptimal, statuses.kTimeLimit):
            raise NoVat(_why_none(self.sources, self.wish))

    def _value(self, expression: highs_linear_expression) -> float:
        return float(self.highs.val(expression))


def _why_none(sources: Sequence[Source], wish: Wish) -> str:
    """Return the reason why these sources make no such vat, the likeliest first."""
    target = wish.strength_pct
    if target and all(one.strength_pct < target for one in sources):
        strongest = max(one.strength_pct for one in sources)
        return f"The strongest of them has {strongest:.1f} % vol; water makes it weaker only. Ask for less than that."
    if wish.share_most_pct * len(sources) < 100.0:
        return (
            f"{len(sources)} vessels of at most {wish.share_most_pct:g} % each cannot make a whole. "
            "Pick more of them, or allow a larger share."
        )
    lots = {one.lot for one in sources if one.lot}
    if lots and wish.lot_most_pct * len(lots) < 100.0 and all(one.lot for one in sources):
        return (
            f"{len(lots)} lots of at most {wish.lot_most_pct:g} % each cannot make a whole. "
            "Pick more lots, or allow a larger share."
        )
    if wish.always:
        return "With the vessels that must go in, no such vat comes out. Let one of them go, or change the limits."
    return (
        "No choice of these keeps all limits. Let casks be drawn in part, allow a larger share, or pick more."
    )
