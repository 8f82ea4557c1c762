"""Between the two worlds: % vol and litres at 20 °C, proof and gallons at 60 °F, through mass of alcohol.

Proof is not twice % vol: both scales take volumes at their own temperature (45 % vol is 89.87 proof), and a
litre of alcohol at 20 °C is less alcohol than a litre at 60 °F.
"""

from functools import cache

from webapp.trade.datafiles import load_data
from webapp.trade.density import (
    PROOF_TEMP_C,
    coefficients_at,
    density_from_strength,
    mass_fraction_at,
    mass_fraction_from_strength,
    strength_from_mass_fraction,
    volume_share_at,
)
from webapp.trade.gauging import proof_gallons_per_pound, wine_gallons_per_pound
from webapp.trade.numeric import N, as_number, check_range, polynomial, round_half_up

MOST_POUNDS = 1e8


def strength_from_proof(proof: N) -> N:
    """Return % vol at 20 degC from true proof at 60 degF.

    Parameters
    ----------
    proof : float or array
        True proof at 60 degF. [proof], 0 to 200

    Returns
    -------
    strength_pct : float or array
        Strength by volume at 20 degC. [% vol], not rounded; at most 0.08 above half the proof

    Raises
    ------
    OutOfDomain
        If proof is outside 0 to 200.

    Source
    ------
    27 CFR 30.11 (definition of proof); OIML R 22 (1975), densities at 60 degF and 20 degC.
    """
    return strength_from_mass_fraction(mass_fraction_at(proof, PROOF_TEMP_C, "proof", "proof", 200.0))


def proof_from_strength(strength_pct: N) -> N:
    """Return true proof at 60 degF from % vol at 20 degC.

    Parameters
    ----------
    strength_pct : float or array
        Strength by volume at 20 degC. [% vol], 0 to 100

    Returns
    -------
    proof : float or array
        True proof at 60 degF. [proof], not rounded

    Raises
    ------
    OutOfDomain
        If the strength is outside 0 to 100.

    Source
    ------
    As strength_from_proof.
    """
    return volume_share_at(mass_fraction_from_strength(strength_pct), PROOF_TEMP_C, 200.0)


@cache
def lpa_per_proof_gallon() -> float:
    """Return the litres of pure alcohol at 20 degC in one proof gallon: 1.9018, computed.

    Returns
    -------
    lpa : float
        Half a gallon of alcohol at 60 degF, taken to 20 degC. [L at 20 degC]

    Source
    ------
    27 CFR 30.11 (a proof gallon holds half a gallon of alcohol at 60 degF); OIML R 22 (1975), densities.
    """
    ethanol_60f, ethanol_20c = (polynomial(coefficients_at(temp), 1.0) for temp in (PROOF_TEMP_C, 20.0))
    return float(load_data("gauging")["us_gallon_l"] / 2.0 * (ethanol_60f / ethanol_20c))


def proof_gallons_from_lpa(lpa: N) -> N:
    """Return proof gallons from litres of pure alcohol at 20 degC.

    Parameters
    ----------
    lpa : float or array
        Pure alcohol. [L at 20 degC], -1e9 to 1e9 (differences may be negative)

    Returns
    -------
    proof_gallons : float or array
        The same mass of alcohol. [proof gal], not rounded

    Raises
    ------
    OutOfDomain
        Outside the range.

    Source
    ------
    As lpa_per_proof_gallon.
    """
    lpa = as_number(lpa)
    check_range("pure_alcohol", lpa, -1e9, 1e9, "LPA", "check_figure")
    return lpa / lpa_per_proof_gallon()


def lpa_from_proof_gallons(proof_gallons: N) -> N:
    """Return litres of pure alcohol at 20 degC from proof gallons.

    Parameters
    ----------
    proof_gallons : float or array
        Proof gallons. [proof gal], -1e9 to 1e9 (differences may be negative)

    Returns
    -------
    lpa : float or array
        The same mass of alcohol. [L at 20 degC], not rounded

    Raises
    ------
    OutOfDomain
        Outside the range.

    Source
    ------
    As lpa_per_proof_gallon.
    """
    proof_gallons = as_number(proof_gallons)
    check_range("proof_gallons", proof_gallons, -1e9, 1e9, "proof_gal", "check_figure")
    return proof_gallons * lpa_per_proof_gallon()


def volume_60f_from_20c(volume_20_l: N, strength_pct: N) -> N:
    """Return the volume at 60 degF of spirit whose volume at 20 degC is known.

    Parameters
    ----------
    volume_20_l : float or array
        Volume at 20 degC. [L at 20 degC], 0 to 1e9
    strength_pct : float or array
        Strength by volume at 20 degC. [% vol], 0 to 100

    Returns
    -------
    volume_60f_l : float or array
        Volume at 60 degF. [L at 60 degF], not rounded

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Source
    ------
    OIML R 22 (1975), densities.
    """
    return _check_litres(volume_20_l) * _growth_60f_to_20c(strength_pct, inverse=True)


def volume_20c_from_60f(volume_60f_l: N, strength_pct: N) -> N:
    """Return the volume at 20 degC of spirit whose volume at 60 degF is known.

    Parameters
    ----------
    volume_60f_l : float or array
        Volume at 60 degF. [L at 60 degF], 0 to 1e9
    strength_pct : float or array
        Strength by volume at 20 degC. [% vol], 0 to 100

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
    OIML R 22 (1975), densities.
    """
    return _check_litres(volume_60f_l) * _growth_60f_to_20c(strength_pct, inverse=False)


def litres_from_pounds(net_lb: N, strength_pct: N) -> N:
    """Return the litres at 20 degC of spirit weighed under the US gauging rule.

    Parameters
    ----------
    net_lb : float or array
        Net weight as the scale in air shows it. [lb], 0 to 1e8
    strength_pct : float or array
        Strength by volume at 20 degC. [% vol], 0 to 100; taken as proof to the nearest tenth

    Returns
    -------
    volume_20_l : float or array
        The wine gallons of Table 4, taken to 20 degC. [L at 20 degC], not rounded

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Source
    ------
    27 CFR 30.64 (Table 4, for weights in air), 30.23 (proof to a tenth); the way to 20 degC as volume_20c_from_60f.
    """
    gallons = _check_pounds(net_lb) * wine_gallons_per_pound(_gauged_proof(strength_pct))
    return volume_20c_from_60f(gallons * load_data("gauging")["us_gallon_l"], strength_pct)


def lpa_from_pounds(net_lb: N, strength_pct: N) -> N:
    """Return the litres of pure alcohol at 20 degC in spirit weighed under the US gauging rule.

    Parameters
    ----------
    net_lb : float or array
        Net weight as the scale in air shows it. [lb], 0 to 1e8
    strength_pct : float or array
        Strength by volume at 20 degC. [% vol], 0 to 100; taken as proof to the nearest tenth

    Returns
    -------
    lpa : float or array
        The proof gallons of Table 4, before they are rounded to a tenth, as litres. [L at 20 degC], not rounded

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Source
    ------
    27 CFR 30.64 (Table 4), 30.23; lpa_per_proof_gallon.
    """
    proof_gallons = _check_pounds(net_lb) * proof_gallons_per_pound(_gauged_proof(strength_pct))
    return lpa_from_proof_gallons(proof_gallons)


def _gauged_proof(strength_pct: N) -> N:
    """Proof as it is gauged, to the nearest tenth: Table 4 runs in tenths."""
    return round_half_up(proof_from_strength(strength_pct), 1)


def _check_pounds(net_lb: N) -> N:
    net_lb = as_number(net_lb)
    check_range("net_weight", net_lb, 0, MOST_POUNDS, "lb", "check_weights")
    return net_lb


def _growth_60f_to_20c(strength_pct: N, inverse: bool) -> N:
    at_60f, at_20c = (
        density_from_strength(strength_pct, PROOF_TEMP_C),
        density_from_strength(strength_pct, 20.0),
    )
    return at_20c / at_60f if inverse else at_60f / at_20c


def _check_litres(volume_l: N) -> N:
    volume_l = as_number(volume_l)
    check_range("volume", volume_l, 0, 1e9, "L", "check_figure")
    return volume_l
