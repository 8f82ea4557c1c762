"""Boiling ethanol and water at 101.325 kPa: which vapour rises from which liquid, and how hot.

Activity coefficients by the equation of two liquids (NRTL), fitted to measured points; coefficients and how they were
fitted: data/vle.json, tests/trade/test_vle.py. ``static/trade/still/vle.js`` is the same, step for step: only + - * /,
so ``exponential`` is its own.
"""

from webapp.trade.datafiles import load_data
from webapp.trade.density import mass_fraction_from_strength
from webapp.trade.numeric import check_range

EULER = 2.718281828459045
TERMS = 18  # of the series of e**f, |f| at most a half: the next is below 1e-22
STEPS = 60


def mole_fraction_from_strength(strength_pct: float) -> float:
    """Return the mole fraction of ethanol in spirit of a given strength.

    Parameters
    ----------
    strength_pct : float
        True strength. [% vol at 20 degC], 0 to 100

    Returns
    -------
    mole_fraction : float
        Moles of ethanol over moles of mixture. [mol/mol]

    Raises
    ------
    OutOfDomain
        If the strength is outside 0 to 100.

    Source
    ------
    OIML R 22 (1975) for the mass fraction; molar masses of data/vle.json.
    """
    molar, mass_fraction = load_data("vle")["molar_g_mol"], mass_fraction_from_strength(float(strength_pct))
    ethanol, water = mass_fraction / molar[0], (1.0 - mass_fraction) / molar[1]
    return float(ethanol / (ethanol + water))


def vapour_mole_fraction(liquid_mole_fraction: float) -> float:
    """Return the mole fraction of the vapour in equilibrium with a boiling liquid at 101.325 kPa.

    Parameters
    ----------
    liquid_mole_fraction : float
        Moles of ethanol over moles of liquid. [mol/mol], 0 to 1

    Returns
    -------
    vapour_fraction : float
        Moles of ethanol over moles of vapour. [mol/mol], within 0.006 of the measured points

    Raises
    ------
    OutOfDomain
        If the mole fraction is outside 0 to 1.

    Source
    ------
    Renon and Prausnitz 1968 (NRTL), fitted to Carey and Lewis 1932; Antoine's equation; the vapour is taken as an ideal
    gas. data/vle.json.
    """
    check_range("mole_fraction", float(liquid_mole_fraction), 0, 1, "mol_mol", "fraction_not_percent")
    ethanol, water = _partial_pressures(float(liquid_mole_fraction), _boiling_temp_c(float(liquid_mole_fraction)))
    return ethanol / (ethanol + water)


def exponential(x: float) -> float:
    """e to the power x by + - * / alone, so that phone and book agree to the last bit; x within 600 of nought."""
    whole = (x + 0.5) // 1.0
    part, power = x - whole, 1.0
    for i in range(TERMS, 0, -1):
        power = 1.0 + power * part / i
    base, count = EULER, whole
    if whole < 0.0:
        base, count = 1.0 / EULER, -whole
    while count >= 1.0:
        half = (count / 2.0) // 1.0
        if count - 2.0 * half == 1.0:
            power = power * base
        base, count = base * base, half
    return power


def logarithm(x: float) -> float:
    """The natural logarithm by + - * / alone, for x from 0.01 to 100: Newton's steps on the exponential."""
    found = 0.0
    for _ in range(STEPS):
        power = exponential(found)
        found += 2.0 * (x - power) / (x + power)
    return found


def _boiling_temp_c(x: float) -> float:
    """Return the temperature at which a liquid boils, by secant steps on the pressure. [degC]

    Within 0.6 of the measured points, 0.15 from a mole fraction of 0.09 on.
    """
    pressure = load_data("vle")["pressure_mmhg"]
    before, after = 78.0, 90.0
    miss = sum(_partial_pressures(x, before)) - pressure
    for _ in range(STEPS):
        ethanol, water = _partial_pressures(x, after)
        now = ethanol + water - pressure
        if now == miss or abs(after - before) < 1e-11:
            break
        before, after, miss = after, after - now * (after - before) / (now - miss), now
    return after


def _partial_pressures(x: float, temp_c: float) -> tuple[float, float]:
    """Return the pressures of ethanol and water over a liquid [mmHg]: Raoult's law with NRTL's activities."""
    data = load_data("vle")
    (a12, b12), (a21, b21), alpha = data["tau_12"], data["tau_21"], data["alpha"]
    kelvin, w = temp_c + 273.15, 1.0 - x
    tau_12, tau_21 = a12 + b12 / kelvin, a21 + b21 / kelvin
    g_12, g_21 = exponential(-alpha * tau_12), exponential(-alpha * tau_21)
    one, two = x + w * g_21, w + x * g_12
    ln_1 = w * w * (tau_21 * (g_21 / one) * (g_21 / one) + tau_12 * g_12 / (two * two))
    ln_2 = x * x * (tau_12 * (g_12 / two) * (g_12 / two) + tau_21 * g_21 / (one * one))
    return x * exponential(ln_1 + _ln_pure(0, temp_c)), w * exponential(ln_2 + _ln_pure(1, temp_c))


def _ln_pure(which: int, temp_c: float) -> float:
    a, b, c = load_data("vle")["antoine_log10_mmhg"][which]
    return float(2.302585092994046 * (a - b / (c + temp_c)))
