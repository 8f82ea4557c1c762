"""US gauging by weight and volume: Table 6 gravities, gallons, reduction, obscuration (27 CFR part 30).

The constants are the rule's own. For proof against % vol and proof gallons against LPA see proof.py.
"""

from webapp.trade.datafiles import load_data
from webapp.trade.numeric import N, as_number, check_range, interpolate, round_half_up

PROOFS = tuple(float(proof) for proof in range(201))
MOST_POUNDS = 1e9


def gravity_of_proof(proof: N, in_air: bool = True) -> N:
    """Return the specific gravity of spirit at 60 degF by Table 6, straight lines between whole proofs.

    Parameters
    ----------
    proof : float or array
        True proof at 60 degF. [proof], 0 to 200
    in_air : bool
        True for gravity in air (weighing), False in vacuo. [true or false], either

    Returns
    -------
    gravity : float or array
        Specific gravity 60/60 degF. [1]

    Raises
    ------
    OutOfDomain
        If proof is outside 0 to 200.

    Source
    ------
    27 CFR 30.66, Table 6 (a copy; 46 proof in vacuo breaks the column and is kept as printed).
    """
    proof = _check_proof(proof)
    return interpolate(proof, PROOFS, load_data("gauging")["gravity_air" if in_air else "gravity_vacuum"])


def pounds_per_wine_gallon(proof: N) -> N:
    """Return the weight of a wine gallon (Table 5).

    Parameters
    ----------
    proof : float or array
        True proof at 60 degF. [proof], 0 to 200

    Returns
    -------
    pounds : float or array
        Pounds in air a wine gallon. [lb/gal], to five decimals

    Raises
    ------
    OutOfDomain
        If proof is outside 0 to 200.

    Source
    ------
    27 CFR 30.65: 8.32823 lb (21.161) times gravity in air.
    """
    return round_half_up(_pounds_per_gallon(proof), 5)


def wine_gallons_per_pound(proof: N) -> N:
    """Return the wine gallons in a pound of spirit (Table 4).

    Parameters
    ----------
    proof : float or array
        True proof at 60 degF. [proof], 0 to 200

    Returns
    -------
    gallons : float or array
        Wine gallons at 60 degF a pound in air. [gal/lb], to five decimals

    Raises
    ------
    OutOfDomain
        If proof is outside 0 to 200.

    Source
    ------
    27 CFR 30.64, Table 4, as 1/(8.32823 * gravity in air): gives every figure of it seen, to the last digit.
    """
    return round_half_up(1.0 / _pounds_per_gallon(proof), 5)


def proof_gallons_per_pound(proof: N) -> N:
    """Return the proof gallons in a pound of spirit (Table 4).

    Parameters
    ----------
    proof : float or array
        True proof at 60 degF. [proof], 0 to 200

    Returns
    -------
    gallons : float or array
        Proof gallons a pound in air. [proof gal/lb], to five decimals

    Raises
    ------
    OutOfDomain
        If proof is outside 0 to 200.

    Source
    ------
    27 CFR 30.64, Table 4, as the rounded wine gallons a pound times proof/100: only so does the printed
    example of 302.58 proof gallons in 1000 lb of 200 proof come out.
    """
    return round_half_up(wine_gallons_per_pound(proof) * as_number(proof) / 100.0, 5)


def wine_gallons_from_pounds(net_lb: N, proof: N) -> N:
    """Return the wine gallons in a net weight of spirit, rounded as prescribed.

    Parameters
    ----------
    net_lb : float or array
        Net weight in air. [lb], 0 to 1e9
    proof : float or array
        True proof at 60 degF. [proof], 0 to 200

    Returns
    -------
    gallons : float or array
        Wine gallons at 60 degF. [gal], to 0.1, hundredths of 5 and over going up

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Source
    ------
    27 CFR 30.64.
    """
    return round_half_up(_check_pounds(net_lb) * wine_gallons_per_pound(proof), 1)


def proof_gallons_from_pounds(net_lb: N, proof: N) -> N:
    """Return the proof gallons in a net weight of spirit, rounded as prescribed.

    Parameters
    ----------
    net_lb : float or array
        Net weight in air. [lb], 0 to 1e9
    proof : float or array
        True proof at 60 degF. [proof], 0 to 200

    Returns
    -------
    gallons : float or array
        Proof gallons. [proof gal], to 0.1, hundredths of 5 and over going up

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Source
    ------
    27 CFR 30.64.
    """
    return round_half_up(_check_pounds(net_lb) * proof_gallons_per_pound(proof), 1)


def proof_gallons_from_wine_gallons(wine_gallons: N, proof: N) -> N:
    """Return the proof gallons in a volume of spirit at 60 degF, rounded as prescribed.

    Parameters
    ----------
    wine_gallons : float or array
        Volume at 60 degF. [gal], 0 to 1e9
    proof : float or array
        True proof at 60 degF. [proof], 0 to 200

    Returns
    -------
    gallons : float or array
        Proof gallons. [proof gal], to 0.1, hundredths of 5 and over going up

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Source
    ------
    27 CFR 30.51.
    """
    return round_half_up(_check_gallons(wine_gallons) * _check_proof(proof) / 100.0, 1)


def obscuration_proof(solids_g_100ml: N, proof: N) -> N:
    """Return the proof that dissolved solids hide.

    For spirit of 80 to 100 proof with up to 0.6 g of solids in 100 mL. The rule adds it from 0.4 g on; below
    that the hydrometer's proof may stand.

    Parameters
    ----------
    solids_g_100ml : float or array
        Residue after evaporation. [g/100 mL], 0 to 0.6
    proof : float or array
        Proof as the hydrometer has it, taken to a tenth. [proof at 60 degF], 80 to 100

    Returns
    -------
    proof : float or array
        To be added to the proof found. [proof], not rounded

    Raises
    ------
    OutOfDomain
        Over 0.6 g/100 mL, under 80 proof or over 100: distil the sample and take the proof of the distillate.

    Source
    ------
    27 CFR 30.32(b): 0.1 g of solids in 100 mL hides 0.4 proof; limits 30.31.
    """
    solids_g_100ml = as_number(solids_g_100ml)
    check_range(
        "solids", solids_g_100ml, 0, 0.6, "g_100mL", "distil_sample"
    )
    check_range("proof", round_half_up(as_number(proof), 1), 80, 100, "proof", "distil_sample")
    return solids_g_100ml * 4.0


def _pounds_per_gallon(proof: N) -> N:
    return load_data("gauging")["water_lb_per_gallon"] * gravity_of_proof(proof)


def _check_proof(proof: N) -> N:
    proof = as_number(proof)
    check_range("proof", proof, 0, 200, "proof", "check_figure")
    return proof


def _check_pounds(net_lb: N) -> N:
    net_lb = as_number(net_lb)
    check_range("net_weight", net_lb, 0, MOST_POUNDS, "lb", "check_weights")
    return net_lb


def _check_gallons(gallons: N) -> N:
    gallons = as_number(gallons)
    check_range("volume", gallons, 0, 1e9, "gal", "check_dip")
    return gallons
