"""Results of a laboratory: one unit for each substance, how far laboratories differ, and what that means at a limit.

Nothing here measures composition: no density, no glass and no refractometer tells methanol from ethanol.
"""

from typing import Literal

from webapp.trade.density import density_from_strength
from webapp.trade.numeric import N, as_number, check_range

Verdict = Literal["within", "not_safely", "outside"]
ONE_SIDED_95 = 1.645  # standard normal distribution: 95 % lie below
METHANOL_KG_M3 = 791.8  # at 20 degC; from memory, handbooks
# Strength below which a result by litre of drink says nothing by litre of pure alcohol.
LEAST_PCT = 1.0


def per_pure_alcohol(found: N, unit: str, strength_pct: N) -> N:
    """Return a result of a laboratory by hectolitre of pure alcohol.

    Parameters
    ----------
    found : float or array
        What the certificate prints. [the given unit], 0 to 1e7
    unit : str
        g_hL_pa, mg_L, mg_kg or pct_methanol. [text], any of these
    strength_pct : float or array
        True strength of the sample. [% vol at 20 degC], 1 to 100; of no weight for g_hL_pa

    Returns
    -------
    found : float or array
        [g/hL of 100 % vol alcohol]

    Raises
    ------
    OutOfDomain
        Outside these ranges.
    TypeError
        If the unit is none of these.

    Source
    ------
    g/hL = 10 mg/L / % vol by the definition of the units; by mass with the density of the sample, Regulation (EC)
    No 2870/2000, Annex III.2, 9.2; methanol by volume with 791.8 kg/m3 (from memory).
    """
    found = _check_found(found)
    if unit == "g_hL_pa":
        return found
    strength_pct = as_number(strength_pct)
    check_range("strength", strength_pct, LEAST_PCT, 100, "pct_vol", "check_strengths")
    if unit == "mg_L":
        return 10.0 * found / strength_pct
    if unit == "mg_kg":
        return found * density_from_strength(strength_pct, 20.0) / (100.0 * strength_pct)
    if unit == "pct_methanol":
        return found * (METHANOL_KG_M3 * 100.0) / strength_pct
    raise TypeError(f"{unit} is no unit of a substance in spirit")


def per_litre(found: N, unit: str, strength_pct: N) -> N:
    """Return a result of a laboratory by litre of the drink.

    Parameters
    ----------
    found : float or array
        What the certificate prints. [the given unit], 0 to 1e7
    unit : str
        mg_L, mg_kg or g_hL_pa. [text], any of these
    strength_pct : float or array
        True strength of the sample. [% vol at 20 degC], 1 to 100; of no weight for mg_L

    Returns
    -------
    found : float or array
        [mg/L]

    Raises
    ------
    OutOfDomain
        Outside these ranges.
    TypeError
        If the unit is none of these.

    Source
    ------
    As per_pure_alcohol, the other way.
    """
    found = _check_found(found)
    if unit == "mg_L":
        return found
    strength_pct = as_number(strength_pct)
    check_range("strength", strength_pct, LEAST_PCT, 100, "pct_vol", "check_strengths")
    if unit == "mg_kg":
        return found * density_from_strength(strength_pct, 20.0) / 1000.0
    if unit == "g_hL_pa":
        return found * strength_pct / 10.0
    raise TypeError(f"{unit} is no unit of a substance in spirit")


def methanol_by_volume(methanol_g_hl: N, strength_pct: N) -> N:
    """Return methanol as a share of the drink by volume.

    Parameters
    ----------
    methanol_g_hl : float or array
        [g/hL of 100 % vol alcohol], 0 to 1e7
    strength_pct : float or array
        True strength of the sample. [% vol at 20 degC], 1 to 100

    Returns
    -------
    methanol_pct : float or array
        [% vol methanol in the drink]

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Source
    ------
    As per_pure_alcohol, the other way.
    """
    methanol_g_hl, strength_pct = _check_found(methanol_g_hl), as_number(strength_pct)
    check_range("strength", strength_pct, LEAST_PCT, 100, "pct_vol", "check_strengths")
    return methanol_g_hl * strength_pct / (METHANOL_KG_M3 * 100.0)


def usual_spread_pct(mass_fraction: float) -> float:
    """Return how far laboratories usually differ, where no trial of the method is at hand.

    Parameters
    ----------
    mass_fraction : float
        Mass of the substance in a mass of the sample. [kg/kg], 1e-12 to 1

    Returns
    -------
    spread_pct : float
        Relative standard deviation between laboratories. [%]

    Raises
    ------
    OutOfDomain
        Outside the range.

    Source
    ------
    W. Horwitz's curve, 2 C^-0.1505 (from memory; by it 1 g/kg is 5.7 %, 1 mg/kg 16 %).
    """
    check_range("mass_fraction", mass_fraction, 1e-12, 1, "kg_kg", "fraction_not_percent")
    return float(2.0 * mass_fraction**-0.1505)


def verdict_at_most(found: float, spread: float, limit: float) -> Verdict:
    """Return how a result stands to a limit from above.

    Parameters
    ----------
    found : float
        The result, or the least that the method finds where nothing was found. [unit of the limit], any finite
    spread : float
        Its standard deviation between laboratories, or its standard uncertainty where that is wider. [same], 0 to any
    limit : float
        The most that is allowed. [same], any finite

    Returns
    -------
    verdict : str
        [one of three words] `outside` above the limit, `not_safely` where another laboratory finds more than the limit
        in more than one case of twenty, else `within`.

    Source
    ------
    The house's own rule: a one-sided 95 % bound of the normal distribution, 1.645 standard deviations.
    """
    if not found <= limit:
        return "outside"
    return "within" if found + ONE_SIDED_95 * spread <= limit else "not_safely"


def verdict_at_least(found: float, spread: float, limit: float) -> Verdict:
    """Return how a result stands to a limit from below.

    Parameters
    ----------
    found : float
        The result. [unit of the limit], any finite
    spread : float
        As in verdict_at_most. [same], 0 to any
    limit : float
        The least that is asked. [same], any finite

    Returns
    -------
    verdict : str
        [one of three words] As verdict_at_most, turned round.

    Source
    ------
    As verdict_at_most.
    """
    if not found >= limit:
        return "outside"
    return "within" if found - ONE_SIDED_95 * spread >= limit else "not_safely"


def _check_found(found: N) -> N:
    found = as_number(found)
    check_range("result", found, 0, 1e7, "", "check_figure")
    return found
