"""Density of ethanol-water mixtures by OIML R 22, its inverses, and where the mixture begins to freeze."""

from collections.abc import Sequence
from functools import cache, lru_cache

import numpy as np

from webapp.trade.datafiles import load_data
from webapp.trade.errors import OutOfDomain, Shown
from webapp.trade.numeric import N, Number, as_number, check_range, fixed, interpolate, invert, polynomial

# Coefficients that are kept: the temperatures of a day to a tenth of a degree, and those that an inverse tries.
TEMPERATURES_KEPT = 4096


def density_from_mass_fraction(mass_fraction: N, temp_c: N) -> N:
    """Return the true density of an ethanol-water mixture.

    Parameters
    ----------
    mass_fraction : float or array
        Mass of ethanol over mass of mixture. [kg/kg], 0 to 1
    temp_c : float or array
        Temperature of the mixture. [degC], -20 to 40, and not below freezing_limit_c

    Returns
    -------
    density_kg_m3 : float or array
        True density, in vacuo. [kg/m3]

    Raises
    ------
    OutOfDomain
        Outside these ranges, or where the mixture may be part ice. No extrapolation.

    Notes
    -----
    The formula is in IPTS-68; on ITS-90 a temperature differs by at most 0.01 degC here, 0.01 kg/m3.
    At every temperature of the range density falls strictly as the mass fraction grows, so the inverses
    have one answer (tests/trade/test_density.py). It does not fall everywhere with temperature.

    Source
    ------
    OIML R 22 (1975), International alcoholometric tables, general formula; coefficients in data/spirit.json.
    """
    mass_fraction, temp_c = as_number(mass_fraction), as_number(temp_c)
    check_range("mass_fraction", mass_fraction, 0, 1, "kg_kg", "fraction_not_percent")
    check_liquid(mass_fraction, temp_c)
    return polynomial(coefficients_at(temp_c), mass_fraction)


def density_from_strength(strength_pct: N, temp_c: N) -> N:
    """Return the true density of spirit of a given strength.

    Parameters
    ----------
    strength_pct : float or array
        Alcoholic strength by volume at 20 degC. [% vol], 0 to 100
    temp_c : float or array
        Temperature of the spirit. [degC], -20 to 40, and not below freezing_limit_c

    Returns
    -------
    density_kg_m3 : float or array
        True density, in vacuo. [kg/m3]

    Raises
    ------
    OutOfDomain
        As density_from_mass_fraction.

    Source
    ------
    OIML R 22 (1975), as density_from_mass_fraction.
    """
    return density_from_mass_fraction(mass_fraction_from_strength(strength_pct), temp_c)


def mass_fraction_from_density(density_kg_m3: N, temp_c: N) -> N:
    """Return the mass fraction of ethanol that has a given density at a given temperature.

    Parameters
    ----------
    density_kg_m3 : float or array
        True density at temp_c. [kg/m3], from that of ethanol (772.1 at 40 degC) to that of water
    temp_c : float or array
        Temperature at which the density was taken. [degC], -20 to 40

    Returns
    -------
    mass_fraction : float or array
        Mass of ethanol over mass of mixture. [kg/kg], solved to rounding

    Raises
    ------
    OutOfDomain
        If no liquid mixture has this density at this temperature.

    Source
    ------
    OIML R 22 (1975), general formula, solved by Newton's steps inside a bracket.
    """
    density_kg_m3, temp_c = as_number(density_kg_m3), as_number(temp_c)
    _check_temp(temp_c)
    coefficients = coefficients_at(temp_c)
    mass_fraction = invert(coefficients, density_kg_m3, 0.0, 1.0)
    if np.any(np.isnan(mass_fraction)):
        _refuse_density(density_kg_m3, coefficients, mass_fraction)
    check_liquid(mass_fraction, temp_c)
    return mass_fraction


def mass_fraction_from_strength(strength_pct: N) -> N:
    """Return the mass fraction of ethanol in spirit of a given strength.

    Parameters
    ----------
    strength_pct : float or array
        Alcoholic strength by volume at 20 degC. [% vol], 0 to 100

    Returns
    -------
    mass_fraction : float or array
        Mass of ethanol over mass of mixture. [kg/kg]

    Raises
    ------
    OutOfDomain
        If the strength is outside 0 to 100.

    Source
    ------
    OIML R 22 (1975): strength = mass fraction * density of mixture / density of ethanol, all at 20 degC. The
    formula's own 789.2391 kg/m3 is taken for ethanol, so that pure ethanol is 100 % vol exactly.
    """
    return mass_fraction_at(strength_pct, 20.0, "strength", "pct_vol", 100.0)


def strength_from_mass_fraction(mass_fraction: N) -> N:
    """Return the strength of spirit with a given mass fraction of ethanol.

    Parameters
    ----------
    mass_fraction : float or array
        Mass of ethanol over mass of mixture. [kg/kg], 0 to 1

    Returns
    -------
    strength_pct : float or array
        Alcoholic strength by volume at 20 degC. [% vol]

    Raises
    ------
    OutOfDomain
        If the mass fraction is outside 0 to 1.

    Source
    ------
    As mass_fraction_from_strength.
    """
    mass_fraction = as_number(mass_fraction)
    check_range("mass_fraction", mass_fraction, 0, 1, "kg_kg", "fraction_not_percent")
    return volume_share_at(mass_fraction, 20.0, 100.0)


def freezing_limit_c(mass_fraction: N) -> N:
    """Return the temperature below which the sums refuse a mixture because it may be part ice.

    Parameters
    ----------
    mass_fraction : float or array
        Mass of ethanol over mass of mixture. [kg/kg], 0 to 1

    Returns
    -------
    temp_c : float or array
        Limit. [degC], 0 down to -20.7; above 0.31 kg/kg nothing freezes within the range of the formula.

    Raises
    ------
    OutOfDomain
        If the mass fraction is outside 0 to 1.

    Notes
    -----
    On the safe side: the published freezing curve raised by 0.4 degC and capped at 0. Straight lines
    between points of 0.02 kg/kg; against the curve they are out by less than 0.02 degC.

    Source
    ------
    A. Melinder, Properties of Secondary Working Fluids for Indirect Systems, IIR 2010, as carried by the
    library CoolProp 8.0.0 (INCOMP::MEA); the book itself not seen.
    """
    mass_fraction = as_number(mass_fraction)
    check_range("mass_fraction", mass_fraction, 0, 1, "kg_kg", "fraction_not_percent")
    data = load_data("spirit")
    return interpolate(mass_fraction, data["freezing_mass_fraction"], data["freezing_limit_c"])


def coefficients_at(temp_c: N) -> tuple[N, ...]:
    """Return the twelve coefficients of density against mass fraction at one temperature (not checked)."""
    if isinstance(temp_c, float):
        return _coefficients_of_one(temp_c) if temp_c in (20.0, PROOF_TEMP_C) else _coefficients(temp_c)
    return _coefficients(temp_c)


PROOF_TEMP_C = 140 / 9  # 60 degF


def volume_share_at(mass_fraction: N, temp_c: float, whole: float) -> N:
    """Return strength by volume at a reference temperature, on a scale where pure ethanol is ``whole``."""
    coefficients = coefficients_at(temp_c)
    return whole * (mass_fraction * polynomial(coefficients, mass_fraction) / polynomial(coefficients, 1.0))


def mass_fraction_at(strength: N, temp_c: float, what: str, unit: str, whole: float) -> N:
    """Return the mass fraction from strength by volume at a reference temperature."""
    strength = as_number(strength)
    check_range(what, strength, 0, whole, unit, "check_figure")
    if isinstance(strength, float) and strength:  # 0.0 and -0.0 are one key, and may have answers written otherwise
        return _mass_fraction_of_one(strength, temp_c, whole)
    coefficients: tuple[float, ...] = coefficients_at(temp_c)
    return invert((0.0, *coefficients), strength / whole * polynomial(coefficients, 1.0), 0.0, 1.0)


# One strength is asked for at both densities of a sum, and for each slip that an entry is tried with.
@lru_cache(maxsize=TEMPERATURES_KEPT)
def _mass_fraction_of_one(strength: float, temp_c: float, whole: float) -> float:
    coefficients: tuple[float, ...] = coefficients_at(temp_c)
    return invert((0.0, *coefficients), strength / whole * polynomial(coefficients, 1.0), 0.0, 1.0)


@lru_cache(maxsize=TEMPERATURES_KEPT)
def _coefficients_of_one(temp_c: float) -> tuple[float, ...]:
    return _coefficients(temp_c)


def _coefficients(temp_c: N) -> tuple[N, ...]:
    data = load_data("spirit")
    warmer: N = temp_c - 20.0  # (t - 20) of the formula
    terms: list[N] = [data["A"][0] + warmer * polynomial(data["B"], warmer)]  # of water
    terms += [polynomial(row, warmer) for row in _rows()]
    return tuple(terms)


@cache
def _rows() -> tuple[tuple[float, ...], ...]:
    """The formula's terms turned round: for each power of the mass fraction, a polynomial in t - 20."""
    data = load_data("spirit")
    return tuple(
        (data["A"][power], *(terms[power - 1] for terms in data["C"] if power <= len(terms)))
        for power in range(1, len(data["A"]))
    )


def _check_temp(temp_c: Number) -> None:
    low, high = load_data("spirit")["temp_c"]
    check_range("temperature", temp_c, low, high, "degC", "check_thermometer")


def check_liquid(mass_fraction: Number, temp_c: Number) -> None:
    """Raise OutOfDomain where the temperature is outside the formula or the mixture may be part ice."""
    _check_temp(temp_c)
    if temp_c >= 0 if isinstance(temp_c, float) else np.all(temp_c >= 0):
        return
    limit = freezing_limit_c(mass_fraction)
    if not np.any(temp_c < limit):
        return
    frozen = np.broadcast_to(temp_c < limit, np.broadcast_shapes(np.shape(temp_c), np.shape(limit)))
    first_temp = float(np.broadcast_to(temp_c, frozen.shape)[frozen][0])
    first_limit = float(np.broadcast_to(limit, frozen.shape)[frozen][0])
    above = fixed(first_limit + 0.05, 1)  # rounded to the warm side
    raise OutOfDomain(
        "temperature",
        first_temp,
        first_limit,
        load_data("spirit")["temp_c"][1],
        "part_ice",
        figures={"temp": Shown(fixed(first_temp, 1), "degC"), "above": Shown(above, "degC")},
    )


def _refuse_density(density_kg_m3: Number, coefficients: Sequence[Number], mass_fraction: Number) -> None:
    most, least = polynomial(coefficients, 0.0), polynomial(coefficients, 1.0)
    nowhere = np.isnan(mass_fraction)
    value, low, high = (float(np.broadcast_to(x, nowhere.shape)[nowhere][0]) for x in (density_kg_m3, least, most))
    raise OutOfDomain(
        "density",
        value,
        low,
        high,
        "no_such_density",
        figures={"density": Shown(fixed(value, 2), "kg_m3"), "ethanol": Shown(fixed(low, 2), "kg_m3"),
                 "water": Shown(fixed(high, 2), "kg_m3")},
    )
