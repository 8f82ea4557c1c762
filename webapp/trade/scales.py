"""Scales of gravity: Brix, Plato, Oechsle and KMW by hydrometer or refractometer, from specific gravity and back."""

from typing import Literal

import numpy as np

from webapp.trade.datafiles import load_data
from webapp.trade.numeric import N, as_number, check_range, invert, polynomial

KMW_LINEAR, KMW_SQUARE = 4.54, 0.022  # degrees Oechsle of a degree KMW and of its square; from memory


def brix_from_gravity(gravity: N) -> N:
    """Return degrees Brix of a hydrometer from specific gravity.

    Below 1.000 there is no sugar scale; hydrometers marked below zero follow the same line (common
    practice, no source), so readings there are taken to 0.980.

    Parameters
    ----------
    gravity : float or array
        Apparent specific gravity 20/20 degC. [1], 0.98 to 1.17874

    Returns
    -------
    brix : float or array
        [degBx by hydrometer]

    Raises
    ------
    OutOfDomain
        Outside the range.

    Source
    ------
    Cubic fitted to the table of NBS Circular 440, rms 0.0009 Bx; read in an encyclopaedia.
    """
    return polynomial(load_data("sugar")["brix"], check_gravity(gravity))


def gravity_from_brix(brix: N) -> N:
    """Return specific gravity from degrees Brix of a hydrometer.

    Parameters
    ----------
    brix : float or array
        What a Brix hydrometer shows. [degBx by hydrometer], -5.3 to 40

    Returns
    -------
    gravity : float or array
        Apparent specific gravity 20/20 degC. [1]

    Raises
    ------
    OutOfDomain
        Outside the range.

    Source
    ------
    As brix_from_gravity, solved.
    """
    return _invert_scale(brix, "brix", "gravity", "brix", "Bx")


def plato_from_gravity(gravity: N) -> N:
    """Return degrees Plato from specific gravity.

    Parameters
    ----------
    gravity : float or array
        Apparent specific gravity 20/20 degC. [1], 0.98 to 1.13

    Returns
    -------
    plato : float or array
        [degP]

    Raises
    ------
    OutOfDomain
        Outside the range (the end of the table it was fitted to is from memory).

    Source
    ------
    Cubic fitted to the ASBC table; read in an encyclopaedia, not in the table.
    """
    gravity = as_number(gravity)
    low, high = load_data("sugar")["plato_gravity"]
    check_range("gravity", gravity, low, high, "SG", "check_scale")
    return polynomial(load_data("sugar")["plato"], gravity)


def gravity_from_plato(plato: N) -> N:
    """Return specific gravity from degrees Plato.

    Parameters
    ----------
    plato : float or array
        Extract. [degP], -5.3 to 30

    Returns
    -------
    gravity : float or array
        Apparent specific gravity 20/20 degC. [1]

    Raises
    ------
    OutOfDomain
        Outside the range.

    Source
    ------
    As plato_from_gravity, solved.
    """
    return _invert_scale(plato, "plato", "plato_gravity", "plato", "degP")


def oechsle_from_gravity(gravity: N) -> N:
    """Return degrees Oechsle from specific gravity.

    Parameters
    ----------
    gravity : float or array
        Apparent specific gravity 20/20 degC. [1], 0.98 to 1.17874

    Returns
    -------
    oechsle : float or array
        [degOe]

    Raises
    ------
    OutOfDomain
        Outside the range.

    Source
    ------
    The definition: thousandths above 1 of the gravity 20/20 (common practice, no source).
    """
    return (check_gravity(gravity) - 1.0) * 1000.0


def gravity_from_kmw(kmw: N) -> N:
    """Return specific gravity from degrees of the Klosterneuburg must scale (KMW).

    Parameters
    ----------
    kmw : float or array
        What a KMW hydrometer shows. [degrees KMW], -4.5 to 33.8

    Returns
    -------
    gravity : float or array
        Apparent specific gravity 20/20 degC. [1]

    Raises
    ------
    OutOfDomain
        Outside the range.

    Source
    ------
    degrees Oechsle = KMW (4.54 + 0.022 KMW), from memory; it gives the seven pairs of Austrian wine law (from memory
    too) to their whole degrees: tests/trade/test_scales.py.
    """
    kmw = as_number(kmw)
    low, high = load_data("sugar")["gravity"]
    check_range("sugar", kmw, _kmw(low), _kmw(high), "KMW", "check_scale")
    return 1.0 + kmw * (KMW_LINEAR + KMW_SQUARE * kmw) / 1000.0


def kmw_from_gravity(gravity: N) -> N:
    """Return degrees of the Klosterneuburg must scale (KMW) from specific gravity.

    Parameters
    ----------
    gravity : float or array
        Apparent specific gravity 20/20 degC. [1], 0.98 to 1.17874

    Returns
    -------
    kmw : float or array
        [degrees KMW]

    Raises
    ------
    OutOfDomain
        Outside the range.

    Source
    ------
    As gravity_from_kmw, solved.
    """
    return _kmw(check_gravity(gravity))


def brix_from_oechsle(oechsle: N) -> N:
    """Return degrees Brix of a refractometer from degrees Oechsle of a refractometer.

    Parameters
    ----------
    oechsle : float or array
        What the refractometer shows in juice without alcohol. [degOe by refractometer], -20 to 178.74

    Returns
    -------
    brix : float or array
        [degBx by refractometer]

    Raises
    ------
    OutOfDomain
        Outside the range.

    Source
    ------
    A refractometer's scales go by the gravity of the sucrose solution that bends light alike (common practice, no
    source): brix_from_gravity. By grape must (OIV Oeno 21/2004, table II) the same degrees Oechsle are up to 0.34 Bx
    less: tests/trade/test_scales.py.
    """
    return brix_from_gravity(1.0 + as_number(oechsle) / 1000.0)


def oechsle_from_brix(brix: N) -> N:
    """Return degrees Oechsle of a refractometer from degrees Brix of a refractometer.

    Parameters
    ----------
    brix : float or array
        [degBx by refractometer], -5.3 to 40

    Returns
    -------
    oechsle : float or array
        [degOe by refractometer]

    Raises
    ------
    OutOfDomain
        Outside the range.

    Source
    ------
    As brix_from_oechsle, the other way.
    """
    return oechsle_from_gravity(gravity_from_brix(brix))


def brix_from_kmw(kmw: N) -> N:
    """Return degrees Brix of a refractometer from degrees KMW of a refractometer.

    Parameters
    ----------
    kmw : float or array
        What the refractometer shows in juice without alcohol. [degrees KMW by refractometer], -4.5 to 33.8

    Returns
    -------
    brix : float or array
        [degBx by refractometer]

    Raises
    ------
    OutOfDomain
        Outside the range.

    Source
    ------
    As brix_from_oechsle and gravity_from_kmw.
    """
    return brix_from_gravity(gravity_from_kmw(kmw))


def kmw_from_brix(brix: N) -> N:
    """Return degrees KMW of a refractometer from degrees Brix of a refractometer.

    Parameters
    ----------
    brix : float or array
        [degBx by refractometer], -5.3 to 40

    Returns
    -------
    kmw : float or array
        [degrees KMW by refractometer]

    Raises
    ------
    OutOfDomain
        Outside the range.

    Source
    ------
    As brix_from_kmw, the other way.
    """
    return kmw_from_gravity(gravity_from_brix(brix))


def _kmw(gravity: N) -> N:
    oechsle = (gravity - 1.0) * 1000.0
    root: N = np.sqrt(KMW_LINEAR * KMW_LINEAR + 4.0 * KMW_SQUARE * oechsle)
    return as_number((root - KMW_LINEAR) / (2.0 * KMW_SQUARE))


def check_gravity(gravity: N) -> N:
    gravity = as_number(gravity)
    low, high = load_data("sugar")["gravity"]
    check_range("gravity", gravity, low, high, "SG", "check_scale")
    return gravity


def _invert_scale(
    value: N, scale: Literal["brix", "plato"], limits: Literal["gravity", "plato_gravity"], what: str, unit: str
) -> N:
    coefficients, (low, high) = load_data("sugar")[scale], load_data("sugar")[limits]
    value = as_number(value)
    least, most = polynomial(coefficients, low), polynomial(coefficients, high)
    check_range(what, value, least, most, unit, "check_scale")
    return invert(coefficients, value, low, high)
