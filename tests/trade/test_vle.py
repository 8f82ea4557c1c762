"""Equilibria of ethanol and water: against printed points and two independent models."""

import math
from functools import cache

import CoolProp
import pytest
from CoolProp.CoolProp import PropsSI
from scipy.optimize import brentq, least_squares
from thermo.unifac import DOUFIP2016, DOUFSG, UNIFAC

from tests.trade.reference_files import read_csv
from tests.trade.still_runs import falls, strength_from_mole_fraction
from webapp.trade import vle
from webapp.trade.datafiles import load_data
from webapp.trade.errors import OutOfDomain

# Carey and Lewis 1932, as textbooks carry it (tests/trade/reference); the last row is the azeotrope.
POINTS = [(float(r["x_liquid_mol"]), float(r["y_vapour_mol"]), float(r["T_C"]), float(r["liquid_abv_20C_derived"]))
          for r in read_csv("vle_ethanol_water.csv")]
AZEOTROPE = POINTS[-1]


@pytest.mark.parametrize("point", POINTS, ids=lambda point: f"{point[0]}")
def test_measured_points(point: tuple[float, float, float, float]) -> None:
    liquid, vapour, temp_c, _ = point
    assert vle.vapour_mole_fraction(liquid) == pytest.approx(vapour, abs=0.006)
    # Below a mole fraction of 0.09 the measured temperatures lie above every model's, by up to 0.9 degC.
    assert vle._boiling_temp_c(liquid) == pytest.approx(temp_c, abs=0.15 if liquid > 0.09 else 0.6)


def azeotrope_mole_fraction() -> float:
    """Return where liquid and vapour are alike. [mol/mol]"""
    return float(brentq(lambda liquid: vle.vapour_mole_fraction(liquid) - liquid, 0.5, 1 - 1e-9, xtol=1e-12))


def test_the_azeotrope() -> None:
    assert azeotrope_mole_fraction() == pytest.approx(AZEOTROPE[0], abs=0.001)
    assert vle._boiling_temp_c(AZEOTROPE[0]) == pytest.approx(AZEOTROPE[2], abs=0.05)


@pytest.mark.parametrize("liquid", [0.001, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.35, 0.5, 0.7, 0.85])
def test_against_an_equation_of_state(liquid: float) -> None:
    # CoolProp's HEOS mixture of ethanol and water: no activity model, no Antoine.
    state = CoolProp.AbstractState("HEOS", "Ethanol&Water")
    state.set_mole_fractions([liquid, 1 - liquid])
    state.update(CoolProp.PQ_INPUTS, 101325, 0)
    assert vle.vapour_mole_fraction(liquid) == pytest.approx(state.mole_fractions_vapor()[0], abs=0.009, rel=0.0)
    assert vle._boiling_temp_c(liquid) == pytest.approx(state.T() - 273.15, abs=0.45)


@pytest.mark.parametrize("liquid", [0.01, 0.05, 0.1, 0.3, 0.5, 0.8])
def test_against_group_contributions(liquid: float) -> None:
    # Modified UNIFAC (Dortmund) of the library thermo with CoolProp's vapour pressures: nothing is fitted here.
    def pressures(kelvin: float) -> tuple[float, float]:
        gammas = UNIFAC.from_subgroups(
            T=kelvin, xs=[liquid, 1 - liquid], chemgroups=[{1: 1, 2: 1, 14: 1}, {16: 1}], version=1,
            interaction_data=DOUFIP2016, subgroups=DOUFSG,
        ).gammas()
        pure = [PropsSI("P", "T", kelvin, "Q", 0, name) for name in ("Ethanol", "Water")]
        return liquid * gammas[0] * pure[0], (1 - liquid) * gammas[1] * pure[1]

    kelvin = brentq(lambda k: sum(pressures(k)) - 101325, 345, 375)
    ethanol, water = pressures(kelvin)
    assert vle.vapour_mole_fraction(liquid) == pytest.approx(ethanol / (ethanol + water), abs=0.012)
    assert vle._boiling_temp_c(liquid) == pytest.approx(kelvin - 273.15, abs=0.5)


def test_pure_water_and_pure_ethanol_boil_where_they_do() -> None:
    # Water 99.97 degC on today's scale; ethanol 78.29 to 78.37 in handbooks (from memory), 78.42 by CoolProp.
    assert vle._boiling_temp_c(0) == pytest.approx(99.97, abs=0.05)
    assert vle._boiling_temp_c(1) == pytest.approx(PropsSI("T", "P", 101325, "Q", 0, "Ethanol") - 273.15, abs=0.15)
    assert vle.vapour_mole_fraction(0) == 0 and vle.vapour_mole_fraction(1) == 1


def test_the_coefficients_are_the_best_fit_to_the_points() -> None:
    data = load_data("vle")
    stored = [*data["tau_12"], *data["tau_21"]]

    def residuals(values: list[float]) -> list[float]:
        found = []
        for liquid, vapour, temp_c, _ in POINTS:
            boils, rises = bubble(liquid, values)
            found += [(rises - vapour) / (0.0003 if liquid == AZEOTROPE[0] else 0.003), (boils - temp_c) / 0.15]
        return found

    def bubble(x: float, values: list[float]) -> tuple[float, float]:
        """NRTL and Antoine written out anew, in numpy's own functions."""

        def pressures(temp_c: float) -> tuple[float, float]:
            t12, t21 = (values[i] + values[i + 1] / (temp_c + 273.15) for i in (0, 2))
            g12, g21 = math.exp(-0.3 * t12), math.exp(-0.3 * t21)
            w = 1 - x
            ln1 = w**2 * (t21 * (g21 / (x + w * g21)) ** 2 + t12 * g12 / (w + x * g12) ** 2)
            ln2 = x**2 * (t12 * (g12 / (w + x * g12)) ** 2 + t21 * g21 / (x + w * g21) ** 2)
            pure = [10 ** (a - b / (c + temp_c)) for a, b, c in data["antoine_log10_mmhg"]]
            return x * math.exp(ln1) * pure[0], w * math.exp(ln2) * pure[1]

        boils = brentq(lambda t: sum(pressures(t)) - 760, 70, 110, xtol=1e-10)
        ethanol, water = pressures(boils)
        return boils, ethanol / (ethanol + water)

    for liquid in (0.01, 0.1, 0.5, 0.9):
        boils, rises = bubble(liquid, stored)
        assert vle._boiling_temp_c(liquid) == pytest.approx(boils, abs=1e-7)
        assert vle.vapour_mole_fraction(liquid) == pytest.approx(rises, abs=1e-9)
    again = least_squares(residuals, [-5, 2000, 5, -2000], x_scale=[1, 300, 1, 300])
    assert sum(r * r for r in residuals(stored)) == pytest.approx(2 * again.cost, rel=1e-4)
    assert again.x == pytest.approx(stored, rel=0.02)


@cache
def _vapours() -> list[float]:
    return [vle.vapour_mole_fraction(i / 500) for i in range(501)]


def test_a_stronger_liquid_gives_a_stronger_vapour() -> None:
    assert falls(_vapours()[::-1])
    # Enriched below the azeotrope, never above it: a still cannot pass it.
    azeotrope = azeotrope_mole_fraction()
    assert all((y > i / 500) == (i / 500 < azeotrope) for i, y in enumerate(_vapours()) if 0 < i < 500)


@pytest.mark.parametrize("point", POINTS, ids=lambda point: f"{point[0]}")
def test_mole_fraction_and_strength(point: tuple[float, float, float, float]) -> None:
    # The strengths of the reference file were worked out with another program (to 0.1).
    assert strength_from_mole_fraction(point[0]) == pytest.approx(point[3], abs=0.06)


def test_own_exponential_and_logarithm() -> None:
    for i in range(-3000, 3000, 7):
        assert vle.exponential(i / 11) == pytest.approx(math.exp(i / 11), rel=2e-13)
    for value in (0.01, 0.3, 1, 2.7, 100):
        assert vle.logarithm(value) == pytest.approx(math.log(value), abs=1e-14)


def test_what_lies_outside_is_refused() -> None:
    for value in (-1e-6, 1.000001, float("nan")):
        with pytest.raises(OutOfDomain):
            vle.vapour_mole_fraction(value)
    with pytest.raises(OutOfDomain):
        vle.mole_fraction_from_strength(100.1)


def test_height_changes_the_equilibrium_by_less_than_the_points_scatter() -> None:
    # The model takes sea level. At 90 kPa (1000 m) CoolProp's vapour differs by less than the fit from its points.
    state = CoolProp.AbstractState("HEOS", "Ethanol&Water")
    for liquid in (0.01, 0.05, 0.2):
        state.set_mole_fractions([liquid, 1 - liquid])
        found = []
        for pressure in (101325, 89875):
            state.update(CoolProp.PQ_INPUTS, pressure, 0)
            found.append(state.mole_fractions_vapor()[0])
        assert abs(found[1] - found[0]) < 0.006
