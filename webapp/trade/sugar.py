"""The alcohol that sugar has made or may make."""

import numpy as np

from webapp.trade.datafiles import load_data
from webapp.trade.errors import OutOfDomain
from webapp.trade.numeric import N, as_number, check_range, polynomial
from webapp.trade.scales import check_gravity

WATER_20C_KG_L = 0.99820123  # OIML R 22, A1


def potential_alcohol_from_brix(brix: N) -> N:
    """Return the alcohol that a juice may make, from its sugar by refractometer.

    Parameters
    ----------
    brix : float or array
        Refractometer reading of unfermented juice. [degBx by refractometer], 10 to 30

    Returns
    -------
    potential_pct : float or array
        Potential alcohol. [% vol], by 16.83 g of sugar in a litre for each % vol

    Raises
    ------
    OutOfDomain
        Outside the table.

    Notes
    -----
    The table is for grape must; other fruit holds more sorbitol and acid, so the true figure is lower.
    A quadratic stands for the table: within 0.04 g/L of every row read; 15.5 to 28.6 were not read.

    Source
    ------
    French order of 14 September 2011 (EFII1125161A), annex IV, after OIV Oeno 21/2004, table II.
    """
    brix, data = as_number(brix), load_data("sugar")
    least, most = data["must_brix"]
    check_range(
        "sugar",
        brix,
        least,
        most,
        "Bx",
        "table_ends",
    )
    return polynomial(data["must_sugar_from_brix"], brix) / data["sugar_g_l_per_pct"]


def potential_alcohol_from_gravity(gravity: N) -> N:
    """Return the alcohol that a juice may make, from its gravity.

    Parameters
    ----------
    gravity : float or array
        Specific gravity 20/20 degC of unfermented juice. [1], 1.04098 to 1.13072

    Returns
    -------
    potential_pct : float or array
        Potential alcohol. [% vol], by 16.83 g of sugar in a litre for each % vol

    Raises
    ------
    OutOfDomain
        Outside the table.

    Notes
    -----
    As potential_alcohol_from_brix; here the quadratic is within 0.15 g/L of every row, 0.01 % vol.

    Source
    ------
    As potential_alcohol_from_brix, by the table's density at 20 degC; water 0.99820123 kg/L (OIML R 22).
    """
    data = load_data("sugar")
    density = as_number(gravity) * WATER_20C_KG_L
    least, most = data["must_density_kg_l"]
    check_range(
        "density",
        density,
        least,
        most,
        "kg_L",
        "table_ends",
    )
    return polynomial(data["must_sugar_from_density"], density - 1.0) / data["sugar_g_l_per_pct"]


def alcohol_from_gravity_fall(original_gravity: N, gravity: N, juice_share: N) -> N:
    """Return the alcohol that a ferment has made so far, from the fall of its gravity.

    Parameters
    ----------
    original_gravity : float or array
        Specific gravity 20/20 degC when set. [1], 0.98 to 1.17874
    gravity : float or array
        Specific gravity now. [1], 0.98 to original_gravity
    juice_share : float or array
        Litres of juice in a litre of mash; 0.75 to 0.9 for whole fruit. [L/L], above 0, up to 1

    Returns
    -------
    strength_pct : float or array
        Alcohol of the mash. [% vol], expected error 0.5

    Raises
    ------
    OutOfDomain
        Outside these ranges, or if gravity has risen.

    Source
    ------
    Common practice, no source: 131 % vol for each unit of gravity lost.
    """
    original_gravity, gravity = check_gravity(original_gravity), check_gravity(gravity)
    juice_share = _check_share(juice_share)
    if np.any(gravity > original_gravity):
        raise OutOfDomain(
            "gravity",
            float(np.max(gravity)),
            0.98,
            float(np.min(original_gravity)),
            "gravity_above_start",
        )
    return (original_gravity - gravity) * load_data("sugar")["alcohol_per_gravity"] * juice_share


def presumptive_lpa(
    fruit_kg: N, brix: N, juice_share: N, unfermentable_brix: float = 3.5
) -> N:
    """Return the litres of pure alcohol that fruit should give, from its sugar.

    Parameters
    ----------
    fruit_kg : float or array
        Net fruit. [kg], 0 to 1e9
    brix : float or array
        Refractometer reading of its juice. [degBx by refractometer], 0 to 40
    juice_share : float or array
        Kilograms of juice in a kilogram of fruit. [kg/kg], above 0, up to 1
    unfermentable_brix : float or array
        Part of the reading that is not fermentable sugar. [degBx], 0 to 10; 3 to 5 usual

    Returns
    -------
    lpa : float or array
        Pure alcohol to expect. [L at 20 degC], expected error 10 %; zero where all is unfermentable

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Source
    ------
    Common practice, no source: 0.61 L from a kilogram of sugar (0.648 at most, from molar masses).
    """
    fruit_kg, brix, unfermentable = as_number(fruit_kg), as_number(brix), as_number(unfermentable_brix)
    check_range("fruit", fruit_kg, 0, 1e9, "kg", "check_weights")
    check_range("sugar", brix, 0, 40, "Bx", "check_scale")
    check_range("unfermentable_part", unfermentable, 0, 10, "Bx", "usual_unfermentable")
    fermentable = brix - unfermentable
    if isinstance(fermentable, float):
        fermentable = fermentable * float(fermentable > 0)
    else:
        fermentable = fermentable * (fermentable > 0).astype(np.float64)
    return (
        fruit_kg * _check_share(juice_share) * fermentable / 100.0 * load_data("sugar")["litres_per_kg_sugar"]
    )


def _check_share(juice_share: N) -> N:
    juice_share = as_number(juice_share)
    check_range("juice_share", juice_share, 1e-6, 1, "of_one", "usual_juice_share")
    return juice_share
