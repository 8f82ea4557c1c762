"""From what the instruments say to strength, litres at 20 °C and litres of pure alcohol (LPA)."""

from collections.abc import Sequence

import numpy as np
import numpy.typing as npt

from webapp.trade.datafiles import load_data
from webapp.trade.density import (
    check_liquid,
    coefficients_at,
    density_from_strength,
    mass_fraction_from_density,
    mass_fraction_from_strength,
    strength_from_mass_fraction,
)
from webapp.trade.errors import OutOfDomain, Shown
from webapp.trade.numeric import N, Number, as_number, check_range, fixed, invert, polynomial

GLASS_EXPANSION_PER_C = 25e-6  # soda-lime glass; OIML R 22, tables VIII and IX
MOST_LITRES = 1e9
MOST_KG = 1e9


def true_strength_from_glass(
    indication_pct: N, temp_c: N, alpha_per_c: float = GLASS_EXPANSION_PER_C
) -> N:
    """Return the strength of spirit from a glass alcoholometer's reading and the spirit's temperature.

    For instruments marked in % vol at 20 degC. A warm glass is larger and floats higher: that is included.

    Parameters
    ----------
    indication_pct : float or array
        What the glass shows, uncorrected. [% on the glass, made for 20 degC], 0 to 100
    temp_c : float or array
        Temperature of the spirit round the glass. [degC], -20 to 40
    alpha_per_c : float
        Cubic expansion of the glass; 10e-6 for borosilicate. [1/degC], 0 to 1e-4

    Returns
    -------
    strength_pct : float or array
        Strength by volume at 20 degC. [% vol], not rounded

    Raises
    ------
    OutOfDomain
        If no liquid mixture floats the glass at this mark: weak readings when warm (water itself shows 1.5 at
        30 degC), strong ones when cold, and mixtures that may be part ice.

    Notes
    -----
    The mark stands for density rho(indication, 20). At t the glass floats at that times (1 - alpha (t - 20)),
    from which the mass fraction is solved at t. At one temperature a reading has one answer.
    Expected error: that of the glass and the thermometer; 1 degC is worth about 0.35 % vol near 60 % vol.

    Source
    ------
    OIML R 22 (1975), tables VIII and IX; the glass term as Decree 141/1997 Sb., Annex 1, prints it: density times
    1 - beta (t - 20). Of 20 to 30e-6, 25e-6 fits 27 CFR 30.61 Table 1 best (docs/numbers.md).
    """
    indication_pct, temp_c = as_number(indication_pct), as_number(temp_c)
    _check_alpha(alpha_per_c)
    check_range("glass_reading", indication_pct, 0, 100, "pct", "check_glass_figure")
    check_range("temperature", temp_c, -20, 40, "degC", "check_thermometer")
    mark_density = polynomial(coefficients_at(20.0), mass_fraction_from_strength(indication_pct))
    density = mark_density * (1.0 - alpha_per_c * (temp_c - 20.0))
    coefficients = coefficients_at(temp_c)
    mass_fraction = invert(coefficients, density, 0.0, 1.0)
    beyond = np.isnan(mass_fraction)
    if np.any(beyond):
        _refuse_glass(indication_pct, temp_c, density, coefficients, beyond, alpha_per_c)
    check_liquid(mass_fraction, temp_c)
    return strength_from_mass_fraction(mass_fraction)


def glass_indication(strength_pct: N, temp_c: N, alpha_per_c: float = GLASS_EXPANSION_PER_C) -> N:
    """Return the reading of a glass alcoholometer in spirit of a given strength and temperature.

    Parameters
    ----------
    strength_pct : float or array
        Strength by volume at 20 degC. [% vol], 0 to 100
    temp_c : float or array
        Temperature of the spirit. [degC], -20 to 40
    alpha_per_c : float
        Cubic expansion of the glass. [1/degC], 0 to 1e-4

    Returns
    -------
    indication_pct : float or array
        Reading on a glass made for 20 degC. [% on the glass], not rounded

    Raises
    ------
    OutOfDomain
        If the glass would stand off its scale: below 0 in cold weak spirit, above 100 in warm strong spirit;
        and for mixtures that may be part ice.

    Source
    ------
    As true_strength_from_glass, turned round.
    """
    strength_pct, temp_c = as_number(strength_pct), as_number(temp_c)
    _check_alpha(alpha_per_c)
    mark_density = density_from_strength(strength_pct, temp_c) / (1.0 - alpha_per_c * (temp_c - 20.0))
    mass_fraction = invert(coefficients_at(20.0), mark_density, 0.0, 1.0)
    off = np.isnan(mass_fraction)
    if np.any(off):
        strength, temp = _first(off, strength_pct, temp_c)
        raise OutOfDomain(
            "glass_reading",
            float("nan"),
            0,
            100,
            "off_glass",
            figures={"temp": Shown(fixed(temp, 1), "degC"), "strength": Shown(fixed(strength, 2), "pct_vol")},
        )
    return strength_from_mass_fraction(mass_fraction)


def strength_from_density_meter(density_kg_m3: N, temp_c: N) -> N:
    """Return the strength of spirit from its true density at the temperature of the meter's cell.

    Parameters
    ----------
    density_kg_m3 : float or array
        True density, as an oscillating-tube meter gives it. [kg/m3], from that of ethanol to that of water
    temp_c : float or array
        Temperature at which the density holds. [degC], -20 to 40

    Returns
    -------
    strength_pct : float or array
        Strength by volume at 20 degC. [% vol], not rounded

    Raises
    ------
    OutOfDomain
        If no liquid mixture has this density at this temperature. Sugar and wood solids raise density and so
        hide strength; the sum cannot see them.

    Source
    ------
    OIML R 22 (1975), general formula, solved.
    """
    return strength_from_mass_fraction(mass_fraction_from_density(density_kg_m3, temp_c))


def volume_at_20(volume_l: N, strength_pct: N, temp_c: N) -> N:
    """Return the volume that spirit dipped at some temperature has at 20 degC.

    Parameters
    ----------
    volume_l : float or array
        Volume as dipped. [L at temp_c], 0 to 1e9
    strength_pct : float or array
        Strength by volume at 20 degC. [% vol], 0 to 100
    temp_c : float or array
        Temperature of the spirit when dipped. [degC], -20 to 40, and not below freezing_limit_c

    Returns
    -------
    volume_20_l : float or array
        Volume at 20 degC. [L at 20 degC], not rounded

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Notes
    -----
    volume * density(temp) / density(20): mass does not change. Growth of the vessel is not included (a steel
    tank: 36e-6 per degC, 0.05 % over 15 degC).

    Source
    ------
    OIML R 22 (1975), densities.
    """
    volume_l = _check_litres(volume_l)
    return volume_l * density_from_strength(strength_pct, temp_c) / density_from_strength(strength_pct, 20.0)


def litres_from_mass(net_kg: N, strength_pct: N, in_air: bool = False) -> N:
    """Return the volume at 20 degC of a net weight of spirit.

    Parameters
    ----------
    net_kg : float or array
        Net weight. [kg], 0 to 1e9
    strength_pct : float or array
        Strength by volume at 20 degC. [% vol], 0 to 100
    in_air : bool
        True if net_kg is what the scale showed and buoyancy is to be allowed for; False takes it for mass.
        [true or false], either. Air makes spirit about 0.12 % lighter on a scale.

    Returns
    -------
    volume_20_l : float or array
        Volume at 20 degC. [L at 20 degC], not rounded

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Source
    ------
    OIML R 22 (1975): density at 20 degC; air 1.2 kg/m3 and weights 8000 kg/m3 as its table XII (from memory).
    """
    net_kg = as_number(net_kg)
    check_range("net_weight", net_kg, 0, MOST_KG, "kg", "check_weights")
    density = density_from_strength(strength_pct, 20.0)
    return net_kg / (density * scale_share(density) if in_air else density) * 1000.0


def mass_from_litres(volume_20_l: N, strength_pct: N, in_air: bool = False) -> N:
    """Return the net weight of a volume of spirit at 20 degC.

    Parameters
    ----------
    volume_20_l : float or array
        Volume at 20 degC. [L at 20 degC], 0 to 1e9
    strength_pct : float or array
        Strength by volume at 20 degC. [% vol], 0 to 100
    in_air : bool
        True for what a scale in air would show, False for mass. [true or false], either

    Returns
    -------
    net_kg : float or array
        Net weight. [kg], not rounded

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Source
    ------
    As litres_from_mass.
    """
    volume_20_l = _check_litres(volume_20_l)
    density = density_from_strength(strength_pct, 20.0)
    return volume_20_l * (density * scale_share(density) if in_air else density) / 1000.0


def litres_pure_alcohol(volume_20_l: N, strength_pct: N) -> N:
    """Return the litres of pure alcohol (LPA) in a volume of spirit, both at 20 degC.

    Parameters
    ----------
    volume_20_l : float or array
        Volume at 20 degC. [L at 20 degC], 0 to 1e9
    strength_pct : float or array
        Strength by volume at 20 degC. [% vol], 0 to 100

    Returns
    -------
    lpa : float or array
        Pure alcohol. [L at 20 degC], not rounded

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Source
    ------
    The definition of strength by volume: OIML R 22 (1975), terms.
    """
    volume_20_l, strength_pct = _check_litres(volume_20_l), as_number(strength_pct)
    check_range("strength", strength_pct, 0, 100, "pct_vol", "check_figure")
    return volume_20_l * strength_pct / 100.0


def scale_share(density: N) -> N:
    """What a scale in air shows of a mass of this density: buoyancy of goods against that of weights."""
    data = load_data("spirit")
    air, weights = data["air_kg_m3"], data["weights_kg_m3"]
    return (1.0 - air / density) / (1.0 - air / weights)


def _check_litres(volume_l: N) -> N:
    volume_l = as_number(volume_l)
    check_range("volume", volume_l, 0, MOST_LITRES, "L", "check_dip")
    return volume_l


def _check_alpha(alpha_per_c: float) -> None:
    check_range("glass_expansion", float(alpha_per_c), 0, 1e-4, "per_degC", "soda_lime")


def _first(where: npt.NDArray[np.bool_], *values: Number) -> tuple[float, ...]:
    """The first element at which a check failed, of each value."""
    shape = np.shape(where)
    return tuple(float(np.broadcast_to(value, shape)[where][0]) for value in values)


def _refuse_glass(
    indication: Number, temp_c: Number, density: Number, coefficients: Sequence[Number], beyond: npt.NDArray[np.bool_],
    alpha_per_c: float,
) -> None:
    reading, temp, floats_at, least, most = _first(
        beyond, indication, temp_c, density, polynomial(coefficients, 1.0), polynomial(coefficients, 0.0)
    )
    is_weak = floats_at > most
    end = most if is_weak else least
    mark = invert(coefficients_at(20.0), end / (1.0 - alpha_per_c * (temp - 20.0)), 0.0, 1.0)
    limit = float(strength_from_mass_fraction(mark)) if mark == mark else float("nan")
    low, high = (limit, 100.0) if is_weak else (0.0, limit)
    # Rounded inwards, so that what the sentence allows is allowed.
    ends = (Shown(fixed(limit + 0.05, 1)), Shown("100")) if is_weak else (Shown("0"), Shown(fixed(limit - 0.05, 1)))
    raise OutOfDomain(
        "glass_reading",
        reading,
        low,
        high,
        "glass_too_weak" if is_weak else "glass_too_strong",
        figures={"reading": Shown(fixed(reading, 1)), "temp": Shown(fixed(temp, 1), "degC"),
                 "low": ends[0], "high": ends[1]},
    )
