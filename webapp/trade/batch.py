"""What is in a pot and what leaves it, in moles. ``static/trade/still/batch.js`` is the same, step for step."""

from functools import cache
from typing import NamedTuple

from webapp.trade.datafiles import load_data
from webapp.trade.density import density_from_strength
from webapp.trade.numeric import check_range

STRONGEST = 97  # [% vol]: just below the azeotrope, 97.2


class Pot(NamedTuple):
    """What is in the pot: moles of ethanol and of water."""

    ethanol_mol: float
    water_mol: float

    @property
    def mole_fraction(self) -> float:
        return self.ethanol_mol / (self.ethanol_mol + self.water_mol)


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


@cache
def _moles_a_litre() -> list[tuple[float, float]]:
    return [moles_in(1.0, float(i)) for i in range(STRONGEST + 1)]
