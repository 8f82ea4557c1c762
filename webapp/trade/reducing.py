"""Sums of reducing: how much water a tank takes, what it reads afterwards, what the mix shrinks and warms by.

Everything goes by mass: masses add, volumes do not. ``static/trade/reducing.js`` is the twin.
"""

from webapp.trade.alcoholometry import glass_indication, litres_from_mass
from webapp.trade.density import density_from_mass_fraction, mass_fraction_from_strength, strength_from_mass_fraction
from webapp.trade.errors import OutOfDomain
from webapp.trade.numeric import check_range, interpolate

# Enthalpy of mixing of ethanol and water at 25 degC [J/mol] by mole fraction of ethanol: Larkin 1975. Heat capacity of
# the mix [J/(g K)] by mass fraction: that of the parts, and how Larkin's enthalpy changes with temperature.
MOLE_FRACTIONS = [
    0.0, 0.01, 0.02, 0.03, 0.04, 0.05, 0.06, 0.08, 0.1, 0.12, 0.15,
    0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 1.0,
]
MIXING_J_MOL = [
    0.0, -175.0, -308.0, -414.0, -501.0, -572.0, -630.0, -715.0, -768.0, -797.0, -810.0,
    -783.0, -727.0, -666.0, -554.0, -463.0, -383.0, -307.0, -239.0, -164.0, -102.0, 0.0,
]
MASS_FRACTIONS = [0.0, 0.025, 0.05, 0.075, 0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0]
HEAT_J_G_K = [4.18, 4.32, 4.42, 4.49, 4.53, 4.56, 4.54, 4.47, 4.38, 4.15, 3.9, 3.66, 3.41, 3.14, 2.81, 2.43]
ETHANOL_G_MOL = 46.07
WATER_G_MOL = 18.015


def water_to_target_kg(net_kg: float, strength_pct: float, target_pct: float) -> float:
    """Return the water that brings spirit to a lower strength.

    Parameters
    ----------
    net_kg : float
        Spirit in the tank. [kg], 0 to 1e9
    strength_pct : float
        Its true strength. [% vol at 20 degC], above 0 to 100
    target_pct : float
        Strength wanted. [% vol at 20 degC], above 0 to strength_pct

    Returns
    -------
    water_kg : float
        Water by weight. [kg], not rounded

    Raises
    ------
    OutOfDomain
        If the target is not above nothing, or above the strength: water cannot come out.

    Notes
    -----
    net (p1 / p2 - 1), p the mass fractions of ethanol: the ethanol's mass stays what it was.

    Source
    ------
    Balance of mass with OIML R 22 (1975) for the mass fractions; 27 CFR 30.64 and 30.66 do the same in pounds.
    """
    check_range("net_weight", float(net_kg), 0, 1e9, "kg", "gauge_first")
    if not 0 < target_pct <= strength_pct:
        raise OutOfDomain("target", target_pct, 0, strength_pct, "target_too_strong")
    return net_kg * (mass_fraction_from_strength(strength_pct) / mass_fraction_from_strength(target_pct) - 1.0)


def strength_with_water(net_kg: float, strength_pct: float, water_kg: float) -> float:
    """Return the strength of spirit after water has gone in.

    Parameters
    ----------
    net_kg : float
        Spirit in the tank before. [kg], 0.001 to 1e9
    strength_pct : float
        Its true strength. [% vol at 20 degC], 0 to 100
    water_kg : float
        Water that goes in. [kg], 0 to 1e9

    Returns
    -------
    strength_pct : float
        True strength of the mix. [% vol at 20 degC], not rounded

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Source
    ------
    As water_to_target_kg, turned round.
    """
    return strength_from_mass_fraction(_mixed_fraction(net_kg, strength_pct, water_kg))


def dip_with_water_l(net_kg: float, strength_pct: float, water_kg: float, temp_c: float) -> float:
    """Return what a dip should show after water has gone in.

    Parameters
    ----------
    net_kg : float
        Spirit in the tank before. [kg], 0.001 to 1e9
    strength_pct : float
        Its true strength. [% vol at 20 degC], 0 to 100
    water_kg : float
        Water that goes in. [kg], 0 to 1e9
    temp_c : float
        Temperature of the mix when it is dipped. [degC], -20 to 40, and not below its freezing limit

    Returns
    -------
    volume_l : float
        Volume of the mix. [L at temp_c], not rounded

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Source
    ------
    Balance of mass; density of the mix at its temperature by OIML R 22 (1975).
    """
    fraction = _mixed_fraction(net_kg, strength_pct, water_kg)
    return (net_kg + water_kg) / density_from_mass_fraction(fraction, temp_c) * 1000.0


def glass_with_water(net_kg: float, strength_pct: float, water_kg: float, temp_c: float) -> float:
    """Return what a glass alcoholometer should show after water has gone in and the tank has rested.

    Parameters
    ----------
    net_kg : float
        Spirit in the tank before. [kg], 0.001 to 1e9
    strength_pct : float
        Its true strength. [% vol at 20 degC], 0 to 100
    water_kg : float
        Water that goes in. [kg], 0 to 1e9
    temp_c : float
        Temperature of the mix when it is read. [degC], -20 to 40

    Returns
    -------
    indication_pct : float
        Reading on a glass made for 20 degC. [% on the glass], not rounded

    Raises
    ------
    OutOfDomain
        Outside these ranges, or if the glass would stand off its scale.

    Source
    ------
    As strength_with_water and alcoholometry.glass_indication.
    """
    return glass_indication(strength_with_water(net_kg, strength_pct, water_kg), temp_c)


def water_volume_l(water_kg: float, temp_c: float) -> float:
    """Return the volume of a weight of plain water at its temperature, for those who measure it by the can.

    Parameters
    ----------
    water_kg : float
        Water. [kg], 0 to 1e9
    temp_c : float
        Its temperature. [degC], 0 to 40

    Returns
    -------
    volume_l : float
        Volume. [L at temp_c], not rounded

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Source
    ------
    Density of water as OIML R 22 (1975), terms A of its formula.
    """
    check_range("water", float(water_kg), 0, 1e9, "kg", "check_figure")
    check_range("water_temperature", float(temp_c), 0, 40, "degC", "read_water_again")
    return water_kg / density_from_mass_fraction(0.0, temp_c) * 1000.0


def shrinkage_l(net_kg: float, strength_pct: float, water_kg: float) -> float:
    """Return by how much the mix is less than spirit and water were apart. It is no loss: pure alcohol stays.

    Parameters
    ----------
    net_kg : float
        Spirit before. [kg], 0.001 to 1e9
    strength_pct : float
        Its true strength. [% vol at 20 degC], 0 to 100
    water_kg : float
        Water that goes in. [kg], 0 to 1e9

    Returns
    -------
    shrinkage_l : float
        Volumes apart less the volume of the mix. [L at 20 degC], not rounded

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Source
    ------
    Densities of OIML R 22 (1975). 27 CFR 30.66 Table 6 prints the same as alcohol and water that make 100.
    """
    mixed = dip_with_water_l(net_kg, strength_pct, water_kg, 20.0)
    return litres_from_mass(net_kg, strength_pct) + litres_from_mass(water_kg, 0.0) - mixed


def mixed_temp_c(net_kg: float, strength_pct: float, temp_c: float, water_kg: float, water_temp_c: float) -> float:
    """Return about how warm the tank is just after the water went in: mixing gives heat.

    Parameters
    ----------
    net_kg : float
        Spirit before. [kg], 0.001 to 1e9
    strength_pct : float
        Its true strength. [% vol at 20 degC], 0 to 100
    temp_c : float
        Its temperature. [degC], -20 to 40
    water_kg : float
        Water that goes in. [kg], 0 to 1e9
    water_temp_c : float
        The water's temperature. [degC], 0 to 40

    Returns
    -------
    mixed_temp_c : float
        Temperature with no heat lost to tank and room. [degC], expected error a third of the rise

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Notes
    -----
    Balance of heat: both heat capacities, and the enthalpy of mixing of the mix less that of the spirit. The tank
    takes some of it: what is read is a little cooler.

    Source
    ------
    J. A. Larkin, J. Chem. Thermodynamics 7 (1975) 137, doi 10.1016/0021-9614(75)90261-X: enthalpy of mixing, and from
    its change with temperature the heat capacity of mixing (coefficients read in two copies, not in the
    article); heat capacities of water and ethanol by CoolProp 8.0.0, whose own mixture gives two thirds of the rise.
    """
    check_range("temperature", float(temp_c), -20, 40, "degC", "read_spirit_again")
    check_range("water_temperature", float(water_temp_c), 0, 40, "degC", "read_water_again")
    before = mass_fraction_from_strength(strength_pct)
    after = _mixed_fraction(net_kg, strength_pct, water_kg)
    given = net_kg * _mixing_j_g(before) - (net_kg + water_kg) * _mixing_j_g(after)
    spirit, water = net_kg * interpolate(before, MASS_FRACTIONS, HEAT_J_G_K), water_kg * HEAT_J_G_K[0]
    taken = (net_kg + water_kg) * interpolate(after, MASS_FRACTIONS, HEAT_J_G_K)
    return (spirit * temp_c + water * water_temp_c) / (spirit + water) + given / taken


def _mixed_fraction(net_kg: float, strength_pct: float, water_kg: float) -> float:
    check_range("net_weight", float(net_kg), 1e-3, 1e9, "kg", "gauge_first")
    check_range("water", float(water_kg), 0, 1e9, "kg", "check_figure")
    return mass_fraction_from_strength(strength_pct) * net_kg / (net_kg + water_kg)


def _mixing_j_g(mass_fraction: float) -> float:
    """Enthalpy of mixing of a gram of the mix. [J/g]"""
    ethanol, water = mass_fraction / ETHANOL_G_MOL, (1.0 - mass_fraction) / WATER_G_MOL
    moles = ethanol + water
    return interpolate(ethanol / moles, MOLE_FRACTIONS, MIXING_J_MOL) * moles
