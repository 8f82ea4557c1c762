"""A batch still: the strength that runs off as the pot loses its alcohol.

The pot is one equilibrium stage. Above it stand SECTIONS equal steps, each of the same share of a full stage, under a
constant reflux (constant molar overflow, McCabe and Thiele 1925); the pot empties by Rayleigh's balance (1902).
No hold-up, no heat loss, no wash solids. ``static/trade/still/batch.js`` is the same, step for step.
"""

from collections.abc import Callable
from functools import cache
from typing import NamedTuple

from webapp.trade.datafiles import load_data
from webapp.trade.density import density_from_strength
from webapp.trade.errors import OutOfDomain
from webapp.trade.numeric import check_range
from webapp.trade.vle import mole_fraction_from_strength, vapour_mole_fraction

SECTIONS = 6
LINE = 240  # points of the equilibrium line, closer together where the liquid is weak
STRONGEST = 97  # [% vol]: just below the azeotrope, 97.2
Extra = Callable[[float, float], float]
LEAST_SHARE = 0.02  # of the liquid in the column to the vapour: with none there is nothing to step on


class Pot(NamedTuple):
    """What is in the pot: moles of ethanol and of water."""

    ethanol_mol: float
    water_mol: float

    @property
    def mole_fraction(self) -> float:
        return self.ethanol_mol / (self.ethanol_mol + self.water_mol)


class Moment(NamedTuple):
    """The stream after some distillate: litres and litres of pure alcohol off so far, strength [% vol], the pot."""

    volume_l: float
    lpa: float
    strength_pct: float
    pot: Pot


def charge_pot(volume_l: float, lpa: float) -> Pot:
    """Return the moles in a pot from what was charged, all of it taken as ethanol and water.

    Parameters
    ----------
    volume_l : float
        Litres charged, feints and all. [L at 20 degC], above 0, at most 1e6
    lpa : float
        Pure alcohol in it. [L at 20 degC], above 0, at most volume_l

    Returns
    -------
    pot : Pot
        Moles of ethanol and of water. [mol]

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Source
    ------
    OIML R 22 (1975); sugar and solids of the wash are left out (a forecast learns its pot from the run).
    """
    check_range("charge", float(volume_l), 1e-3, 1e6, "L", "check_charge")
    check_range("pure_alcohol_charged", float(lpa), 1e-6, float(volume_l), "L", "check_charge_strength")
    ethanol, water = moles_in(volume_l, 100.0 * lpa / volume_l)
    return Pot(ethanol, water)


def moles_in(volume_l: float, strength_pct: float) -> tuple[float, float]:
    """Return the moles of ethanol and of water in some spirit.

    Parameters
    ----------
    volume_l : float
        Litres. [L at 20 degC], any
    strength_pct : float
        True strength. [% vol at 20 degC], 0 to 100

    Returns
    -------
    moles : tuple of float
        Ethanol, water. [mol]

    Raises
    ------
    OutOfDomain
        If the strength is outside 0 to 100.

    Source
    ------
    OIML R 22 (1975): litres of pure ethanol weigh 0.7892391 kg each.
    """
    molar, pure = load_data("vle")["molar_g_mol"], float(density_from_strength(100.0, 20.0))
    ethanol_g_l = strength_pct / 100.0 * pure
    water_g_l = float(density_from_strength(float(strength_pct), 20.0)) - ethanol_g_l
    return volume_l * ethanol_g_l / molar[0], volume_l * water_g_l / molar[1]


class Column:
    """The strength that a still gives from each pot, for its stages and reflux: at most 97 % vol.

    Stages count the pot: 1 is a bare pot, 7 the most of this model. Reflux is the moles that flow back for each that
    runs off, 0 to 50; below 0.02 it makes no difference. Solved to 0.15 below 91 % vol, to 0.5 above.

    Source: McCabe and Thiele 1925, constant molar overflow; each section gives the same share of a full stage (Murphree
    1925). Equilibrium: webapp/trade/vle.py.
    """

    def __init__(self, stages: float, reflux: float) -> None:
        self.pots = _pots(stages, reflux)

    def strength_pct(self, pot_mole_fraction: float) -> float:
        """Return the strength of the stream [% vol] over a pot [mol/mol]; the strongest has no higher."""
        i = _below(self.pots, pot_mole_fraction)
        low, high = self.pots[i], self.pots[i + 1]
        share = (pot_mole_fraction - low) / (high - low) if high > low else 0.0
        return i + min(max(share, 0.0), 1.0)


def run_down(pot: Pot, column: Column, off_l: float, steps: int, extra: Extra | None = None) -> list[Moment]:
    """Return the stream, in equal steps of distillate, as a pot empties.

    Parameters
    ----------
    pot : Pot
        What is in it at the beginning. [mol], any amounts above 0
    column : Column
        The still. [object], any
    off_l : float
        Litres of distillate to run off. [L at 20 degC], above 0
    steps : int
        How many steps. [1], from 1
    extra : callable or None
        From litres and litres of pure alcohol off so far, what the stream reads above the model. [% vol], any

    Returns
    -------
    moments : list of Moment
        The begin and the end of each step: litres, litres of pure alcohol, strength. [L, L, % vol]; shorter if the
        pot is spent before

    Raises
    ------
    OutOfDomain
        If there is nothing to run off.

    Source
    ------
    Rayleigh 1902: what leaves is what the pot loses; midpoint steps.
    """
    if not off_l > 0 or steps < 1:
        raise OutOfDomain("distillate", off_l, 0, None, "no_distillate")

    def stream(there: Pot, off: float, lpa_off: float) -> float:
        more = extra(off, lpa_off) if extra else 0.0
        return min(max(column.strength_pct(there.mole_fraction) + more, 0.0), float(STRONGEST))

    step_l, lpa, strength = off_l / steps, 0.0, stream(pot, 0.0, 0.0)
    found = [Moment(0.0, 0.0, strength, pot)]
    for i in range(1, steps + 1):
        half = _without(pot, step_l / 2, strength)
        if half is None:
            break
        middle = stream(half, (i - 0.5) * step_l, lpa + step_l / 2 * strength / 100.0)
        after = _without(pot, step_l, middle)
        if after is None:
            break
        pot, lpa = after, lpa + step_l * middle / 100.0
        strength = stream(pot, i * step_l, lpa)
        found.append(Moment(i * step_l, lpa, strength, pot))
    return found


def stream_moles(volume_l: float, strength_pct: float) -> tuple[float, float]:
    """Return moles_in, read between whole percents of a table: what every step asks.

    Parameters
    ----------
    volume_l : float
        Litres. [L at 20 degC], any
    strength_pct : float
        True strength. [% vol at 20 degC], 0 to 97; beyond, the end

    Returns
    -------
    moles : tuple of float
        Ethanol, water. [mol], within 0.03 % of moles_in

    Source
    ------
    As moles_in.
    """
    table = _moles_a_litre()
    strength_pct = min(max(strength_pct, 0.0), float(STRONGEST))
    i = min(int(strength_pct), STRONGEST - 1)
    share, (ethanol, water), (more, less) = strength_pct - i, table[i], table[i + 1]
    return volume_l * (ethanol + share * (more - ethanol)), volume_l * (water + share * (less - water))


def _without(pot: Pot, volume_l: float, strength_pct: float) -> Pot | None:
    ethanol, water = stream_moles(volume_l, strength_pct)
    left = Pot(pot.ethanol_mol - ethanol, pot.water_mol - water)
    return left if left.ethanol_mol > 0 and left.water_mol > 0 else None


@cache
def _moles_a_litre() -> list[tuple[float, float]]:
    return [moles_in(1.0, float(i)) for i in range(STRONGEST + 1)]


@cache
def _line() -> tuple[list[float], list[float]]:
    """Return the equilibrium line: liquid and vapour [mol/mol]."""
    liquids = [(i / LINE) * (i / LINE) for i in range(LINE + 1)]
    return liquids, [vapour_mole_fraction(x) if 0.0 < x < 1.0 else x for x in liquids]


@cache
def _streams() -> list[float]:
    """Return the mole fraction of each whole percent."""
    return [mole_fraction_from_strength(float(i)) for i in range(STRONGEST + 1)]


def _pots(stages: float, reflux: float) -> list[float]:
    """Return the pot [mol/mol] that gives each whole percent from 0 to STRONGEST: down the column, step by step."""
    share = (stages - 1.0) / SECTIONS
    back = max(reflux / (reflux + 1.0), LEAST_SHARE)
    liquids, vapours = _line()
    pots, last = [0.0], len(liquids) - 2
    # A section sends up y = rising + share * (vapour over its liquid - rising), and what rises into it has the liquid
    # back: rising = back * liquid + (1 - back) * stream. Both in one: a line that rises with the liquid.
    slope = (1.0 - share) * back
    meets = [slope * x + share * y for x, y in zip(liquids, vapours, strict=True)]
    for stream in _streams()[1:]:
        fixed = (1.0 - back) * stream
        vapour = stream
        for _ in range(SECTIONS):
            wanted = vapour - (1.0 - share) * fixed
            i = min(_below(meets, wanted), last)
            span = meets[i + 1] - meets[i]
            liquid = liquids[i] + (wanted - meets[i]) / span * (liquids[i + 1] - liquids[i])
            vapour = back * liquid + fixed
        i = min(_below(vapours, vapour), last)
        span = vapours[i + 1] - vapours[i]
        pots.append(liquids[i] + (vapour - vapours[i]) / span * (liquids[i + 1] - liquids[i]))
    return pots


def _below(rising: list[float], value: float) -> int:
    """Return the place of the last entry not above the value, but never the very last entry."""
    low, high = 0, len(rising) - 1
    while high - low > 1:
        middle = (low + high) // 2
        if rising[middle] <= value:
            low = middle
        else:
            high = middle
    return low
